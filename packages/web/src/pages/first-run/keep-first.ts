import type { PlantId } from "@sillwood/bench/book";
import type { FourFacts } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import type { Engine } from "../../engine/client.ts";
import type { Words } from "../../words/words.ts";
import type { PlantsSeen } from "../answers/seen.ts";

interface Keeping {
  readonly facts: FourFacts;
  readonly number: number;
  readonly benches: PlantsSeen["benches"];
  readonly words: Words["firstRun"];
}

/** What KEEP THIS PLANT writes. A second plant for the same window joins the first one's bench on a spot of its own. */
export async function keepFirst(
  engine: Engine,
  { facts, number, benches, words }: Keeping,
): Promise<{ readonly drafts: readonly Draft[]; readonly plant: PlantId }> {
  const [plant, bench, spot] = (await engine.ask("ids", { n: 3 })) as [string, string, string];
  const name = benchName(facts, words);
  const there = benches.find((one) => one.name === name);
  const ids = { plant: plant as PlantId, bench, spot };
  if (!there)
    return {
      plant: ids.plant,
      drafts: await engine.ask("first drafts", { facts, ids, number, benchName: name }),
    };
  const free = there.rows.find(({ plants }) => plants.length === 0)?.spot;
  const drafts = await engine.ask("first drafts", {
    facts,
    ids,
    number,
    benchName: name,
    spot: free ?? spot,
  });
  return { plant: ids.plant, drafts: free ? drafts : [await withSpot(engine, there.id, spot), ...drafts] };
}

function benchName({ place }: FourFacts, words: Words["firstRun"]): string {
  if (place === "outdoors") return words.outdoorBench;
  if (place === "unknown") return words.bench;
  return words.windowBench(words.compass[Math.round(place.window_deg / 45) % 8] ?? "");
}

/** The bench laid again with one more spot at its end: all that it was, and one place more. */
async function withSpot(engine: Engine, bench: string, spot: string): Promise<Draft> {
  const { benches } = await engine.ask("benches", {});
  const was = benches.find(({ id }) => id === bench);
  if (!was) throw new Error("the bench is gone");
  return {
    kind: "bench.laid",
    on: [bench],
    data: {
      name: was.name,
      place: was.place,
      outdoors: was.outdoors,
      order_n: was.order_n,
      ...(was.quarantine ? { quarantine: true } : {}),
      ...(was.windowFaces_deg === undefined ? {} : { windowFaces_deg: was.windowFaces_deg }),
      spots: [
        ...was.spots.map(({ id, name }) => ({ id, name })),
        { id: spot, name: `${was.spots.length + 1}` },
      ],
    },
  };
}

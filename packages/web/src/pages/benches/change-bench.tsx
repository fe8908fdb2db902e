import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import type { BenchSeen } from "../answers/seen.ts";
import { Choices } from "../fields/choices.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TextField } from "../fields/text-field.tsx";
import { Compass } from "../first-run/compass.tsx";
import styles from "../pages.module.css";

/** A bench said anew: its name, its window, more spots, and whether it is kept apart. */
export function ChangeBench() {
  const id = useParams()["bench"];
  const { benches: words } = useWords();
  const { value: seen, error } = useAsk("benches", {});
  const bench = seen?.benches.find((one) => one.id === id);
  if (!bench)
    return (
      <Frame where={words.title}>
        {seen ? <p className="serif">{words.noSuchBench}</p> : <ReadingNote error={error} />}
      </Frame>
    );
  return <Filled key={bench.id} bench={bench} />;
}

function Filled({ bench }: { readonly bench: BenchSeen }) {
  const { benches: words, fields } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const [name, setName] = useState(bench.name);
  const [faces, setFaces] = useState(bench.windowFaces_deg);
  const [spots_n, setSpots] = useState<number | undefined | null>(bench.spots.length);
  const [where, setWhere] = useState<"indoors" | "outdoors" | "quarantine">(
    bench.quarantine ? "quarantine" : bench.outdoors ? "outdoors" : "indoors",
  );
  // A spot on which a pot stands is not taken away with the board under it.
  const least_n = bench.spots.reduce((last_n, { plants }, i) => (plants.length > 0 ? i + 1 : last_n), 1);
  const isWhole = name.trim() !== "" && typeof spots_n === "number";
  const keep = async () => {
    if (typeof spots_n !== "number") return;
    const kept = bench.spots.slice(0, spots_n).map(({ id, name: said }) => ({ id, name: said }));
    const ids = await engine.ask("ids", { n: Math.max(0, spots_n - kept.length) });
    const more = ids.map((id, i) => ({ id, name: `${kept.length + i + 1}` }));
    const written = await write(engine, [
      {
        kind: "bench.laid",
        on: [bench.id],
        data: {
          name: name.trim(),
          place: bench.place,
          outdoors: where === "outdoors",
          order_n: bench.order_n,
          spots: [...kept, ...more],
          ...(where === "quarantine" ? { quarantine: true } : {}),
          ...(faces === undefined || where === "outdoors" ? {} : { windowFaces_deg: faces }),
        },
      },
    ]);
    if ("kept" in written) go(`/bench/${bench.id}`);
  };
  return (
    <Frame
      where={words.changeTitle(bench.name)}
      keys={
        <Key main shut={!isWhole} onPress={() => void keep()}>
          {isWhole ? words.keepBench : words.keepBenchShut}
        </Key>
      }
    >
      <div className={styles["form"]}>
        <TextField label={fields.names["name"] ?? ""} value={name} onType={setName} />
        <NumberField
          label={words.howManySpots}
          range={{ unit: "", min: least_n, max: 200, whole: true }}
          value={spots_n ?? undefined}
          onValue={setSpots}
        />
        <Choices
          legend={words.where}
          options={[
            { value: "indoors", said: words.indoors },
            { value: "outdoors", said: words.outdoors },
            { value: "quarantine", said: words.quarantine },
          ]}
          value={where}
          onChoose={setWhere}
        />
        {where !== "outdoors" && (
          <Compass
            legend={words.windowFaces}
            value={faces}
            onlyDirections
            onChoose={(place) => typeof place === "number" && setFaces(place)}
          />
        )}
      </div>
    </Frame>
  );
}

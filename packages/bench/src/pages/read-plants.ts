import type { PlantId } from "../book/entry.ts";
import type { Draft } from "../round/pages.ts";
import { cellNumber } from "./cells.ts";
import type { Desk } from "./desk.ts";
import type { ListOptions, Note, ReadResult, Row } from "./list-rows.ts";

/** Rows of plants: benches and cultivars that are not in the book yet are laid and described with them. */
export function readPlants(
  desk: Desk,
  rows: readonly Row[],
  note: Note,
  { newId, bench }: ListOptions,
): ReadResult {
  const { places, batches } = desk.ledger.house();
  const benches = new Map(
    [...places.benches.values()].map((one) => [
      one.name.toLowerCase(),
      { id: one.id, name: one.name, spots: one.spots.map(({ id, name }) => ({ id, name })) },
    ]),
  );
  const laid = new Set<string>();
  const cultivars = new Map([...batches.cultivars.values()].map(({ id, name }) => [name.toLowerCase(), id]));
  const numbers = new Set(desk.ledger.plants().flatMap((plant) => desk.facts(plant)?.number ?? []));
  const drafts: Draft[] = [];
  const firstRows: string[] = [];
  const plants: Draft[] = [];
  const plantLines: number[] = [];
  for (const { line, cell } of rows) {
    const number = cell("number") === "" ? undefined : cellNumber(cell("number"));
    if (number === null) note(line, "number", `“${cell("number")}” is not a number`);
    if (typeof number === "number" && numbers.has(number))
      note(line, "number", `${number} is already given to a plant`);
    if (typeof number === "number") numbers.add(number);
    const habit = cell("habit").toLowerCase() || "unknown";
    const medium = cell("medium").toLowerCase() || "unknown";
    const pot = readPot(line, cell, note);
    const benchName = cell("bench") || (bench ? desk.say.name(bench) : "");
    const spot = benchName ? spotFor(benches, laid, benchName, cell("spot"), newId) : undefined;
    let cultivar: string | undefined;
    if (cell("cultivar")) {
      cultivar = cultivars.get(cell("cultivar").toLowerCase());
      if (!cultivar) {
        cultivar = newId();
        cultivars.set(cell("cultivar").toLowerCase(), cultivar);
        drafts.push({ kind: "cultivar.described", on: [cultivar], data: { name: cell("cultivar"), habit } });
      }
    }
    const draft: Draft = {
      kind: "plant.brought",
      on: [newId() as PlantId],
      data: {
        habit,
        medium,
        ...(typeof number === "number" ? { number } : {}),
        ...(pot ? { pot } : {}),
        ...(spot ? { spot } : {}),
        ...(cultivar ? { cultivar } : {}),
        ...(cell("sownOn") ? { sownOn: cell("sownOn") } : {}),
      } as Draft["data"],
    };
    plants.push(draft);
    plantLines.push(line);
    firstRows.push(
      desk.say.list([
        `${number ?? "no number"}`,
        cell("cultivar") || habit,
        ...(benchName ? [`${benchName} ${cell("spot")}`.trim()] : []),
      ]),
    );
  }
  const benchDrafts: Draft[] = [...benches.values()]
    .filter(({ id }) => laid.has(id))
    .map(({ id, name, spots }, i) => {
      const known = places.benches.get(id);
      const data = known
        ? { ...known, spots }
        : { name, place: "shelf", outdoors: false, order_n: places.benches.size + i, spots };
      const { id: _id, ...rest } = data as typeof data & { id?: string };
      return { kind: "bench.laid", on: [id], data: rest as unknown as Draft["data"] };
    });
  const before = [...benchDrafts, ...drafts];
  return {
    drafts: [...before, ...plants],
    lines: [...before.map(() => 1), ...plantLines],
    firstRows,
    files: [],
  };
}

function readPot(line: number, cell: Row["cell"], note: Note) {
  const top = cell("top_cm");
  const depth = cell("depth_cm");
  if (!top && !depth) return undefined;
  const [top_cm, depth_cm] = [cellNumber(top), cellNumber(depth)];
  if (top_cm === null) note(line, "top_cm", `pot width is “${top}”; expected 2 to 100 cm`);
  if (depth_cm === null) note(line, "depth_cm", `pot depth is “${depth}”; expected 2 to 60 cm`);
  return top_cm === null || depth_cm === null ? undefined : { form: "round", top_cm, depth_cm };
}

function spotFor(
  benches: Map<string, { id: string; name: string; spots: { id: string; name: string }[] }>,
  laid: Set<string>,
  benchName: string,
  spotName: string,
  newId: () => string,
): string {
  let bench = benches.get(benchName.toLowerCase());
  if (!bench) {
    bench = { id: newId(), name: benchName, spots: [] };
    benches.set(benchName.toLowerCase(), bench);
    laid.add(bench.id);
  }
  const name = spotName || `${bench.spots.length + 1}`;
  const known = bench.spots.find((spot) => spot.name.toLowerCase() === name.toLowerCase());
  if (known) return known.id;
  const spot = { id: newId(), name };
  bench.spots.push(spot);
  laid.add(bench.id);
  return spot.id;
}

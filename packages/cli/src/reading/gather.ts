import { createHash } from "node:crypto";
import type { PlantId } from "@sillwood/bench/book";
import { type ListKind, type ListPreview, readList } from "@sillwood/bench/pages";
import { addDays } from "@sillwood/bench/places";
import type { Draft } from "@sillwood/bench/round";
import type { NewFile, Writing } from "../book/session.ts";
import { type Call, textOption } from "../command.ts";
import { TAIL_n } from "../entering/wrote.ts";
import { dataError, type Trouble, UsageError } from "../errors.ts";
import { findThing } from "../typed/find-thing.ts";
import { type Cells, canonicalCells, foreignColumns } from "./canonical-cells.ts";
import { climateColumns, climateOf, foreignSaid } from "./climate.ts";

/** A list as it would stand in the book. */
export interface Gathered {
  readonly list: ListPreview;
  readonly mapping: Readonly<Record<string, string>>;
  readonly unmapped: readonly string[];
  readonly drafts: readonly Draft[];
  readonly files: readonly NewFile[];
  readonly troubles: readonly Trouble[];
  /** Worth knowing, though nothing is wrong. */
  readonly notes: readonly string[];
}

/** Reads a list with its columns named, its units turned into ours, and, beside weights, the air and light of the same rows. */
export function gather(
  call: Call,
  kind: ListKind,
  cells: Cells,
  typedMapping: Readonly<Record<string, string>>,
  writing: Writing,
): Gathered {
  const { desk, newId, calendar } = writing;
  const plant = plantOption(call, kind, writing);
  const whole = plant === undefined ? cells : withNumber(cells, desk.numberOf(plant));
  const bench = benchOption(call, writing) ?? (plant && benchOfPlant(plant, writing));
  const own: Readonly<Record<string, string>> = plant === undefined ? {} : { number: NUMBER };
  const recognised = readList(desk, kind, whole, { newId }).mapping;
  const foreign = Object.entries(foreignColumns(recognised)).filter(
    ([ours]) => typedMapping[ours] === undefined,
  );
  const mapping: Readonly<Record<string, string>> = {
    ...Object.fromEntries(
      Object.entries(recognised).filter(([ours]) => !foreign.some(([one]) => one === ours)),
    ),
    ...own,
    ...typedMapping,
  };
  const canonical = canonicalCells(whole, mapping, call.units);
  const list = readList(desk, kind, canonical, { newId, mapping, ...(bench ? { bench } : {}) });
  const troubles = list.problems.map(
    ({ line, column, message }): Trouble => ({ path: column, line, column, message }),
  );
  const files = list.files.map(({ draft, text }) => ({ draft, file: seriesFile(text) }));
  const drafts = list.drafts.map((draft, i) => named(draft, files.find((one) => one.draft === i)?.file));
  const notes = [
    ...foreign.map(([ours, unit]) => foreignSaid(recognised[ours] ?? ours, unit)),
    ...(plant === undefined ? [] : olderThanPlant(plant, bench, drafts, writing)),
  ];
  const gathered: Gathered = {
    list,
    mapping,
    unmapped: list.unmapped.filter((name) => name !== NUMBER),
    drafts,
    files: files.map(({ file }) => file),
    troubles,
    notes,
  };
  if (kind !== "weighings" || mapping["at"] === undefined) return gathered;
  const found = climateColumns(desk, unmappedOnly(whole, mapping), newId);
  if (Object.keys(found).length === 0) return gathered;
  const stood = bench === undefined ? undefined : desk.ledger.house().places.benches.get(bench);
  if (!stood)
    return {
      ...gathered,
      notes: [
        ...notes,
        `${Object.values(found).join(", ")}: say on which bench with --bench to read them too.`,
      ],
    };
  const climate = climateOf(whole, found, {
    desk,
    calendar,
    bench: stood,
    units: call.units,
    at: mapping["at"],
    newId,
  });
  const series = climate.files.map(({ draft, text }) => ({ draft, file: seriesFile(text) }));
  const theirs = new Set(Object.values(climate.read));
  return {
    ...gathered,
    mapping: { ...mapping, ...climate.read },
    unmapped: gathered.unmapped.filter((name) => !theirs.has(name)),
    // Air and light first: the weights are understood by them.
    drafts: [
      ...climate.drafts.map((draft, i) => named(draft, series.find((one) => one.draft === i)?.file)),
      ...drafts,
    ],
    files: [...series.map(({ file }) => file), ...gathered.files],
    troubles: [
      ...troubles,
      ...climate.troubles.filter((one) => !troubles.some((other) => sameProblem(one, other))),
    ],
    notes: [...notes, ...climate.notes],
  };
}

/** A bad date is found once with the weights and once with the air. */
const sameProblem = (a: Trouble, b: Trouble): boolean => a.line === b.line && a.column === b.column;

/** Name of the column that `--plant` adds; no file of people has it. */
const NUMBER = "plant named by --plant";

const withNumber = (cells: Cells, number: string): Cells =>
  cells.map((row, i) =>
    i === 0 ? [NUMBER, ...row] : row.every((cell) => cell.trim() === "") ? row : [number, ...row],
  );

/** The columns that the weighings have not taken; their names are blanked, so that places stay. */
const unmappedOnly = (cells: Cells, mapping: Readonly<Record<string, string>>): Cells => {
  const taken = new Set(Object.entries(mapping).flatMap(([ours, theirs]) => (ours === "at" ? [] : [theirs])));
  return cells.map((row, i) => (i === 0 ? row.map((name) => (taken.has(name.trim()) ? "" : name)) : row));
};

const named = (draft: Draft, file: NewFile | undefined): Draft =>
  file ? { ...draft, files: [file.hash] } : draft;

function seriesFile(text: string): NewFile {
  const bytes = new TextEncoder().encode(text);
  return { hash: createHash("sha256").update(bytes).digest("hex"), type: "text/csv", bytes };
}

function plantOption(call: Call, kind: ListKind, { desk }: Writing): PlantId | undefined {
  const word = textOption(call, "plant");
  if (word === undefined) return undefined;
  if (kind !== "weighings") throw new UsageError(`--plant is for weighings; ${kind} names none.`);
  const found = findThing(desk, "plant", word);
  if ("wrong" in found) throw dataError("plant", found.wrong, word);
  return found.id as PlantId;
}

function benchOption(call: Call, { desk }: Writing): string | undefined {
  const word = textOption(call, "bench");
  if (word === undefined) return undefined;
  const found = findThing(desk, "bench", word);
  if ("wrong" in found) throw dataError("bench", found.wrong, word);
  return found.id;
}

const benchOfPlant = (plant: PlantId, { desk }: Writing): string | undefined =>
  desk.ledger.house().places.benchOfSpot.get(desk.facts(plant)?.spot ?? "");

/** Weights from before the plant or its bench came into the book are kept, but the pot was not known then. */
function olderThanPlant(
  plant: PlantId,
  bench: string | undefined,
  drafts: readonly Draft[],
  { desk, ledger }: Writing,
): readonly string[] {
  const first_ms = Math.min(...drafts.flatMap(({ at_ms }) => at_ms ?? []));
  const founders = [...ledger.records()].flatMap(({ acting }) =>
    acting &&
    acting.at_ms > first_ms &&
    ((acting.kind === "plant.brought" && acting.on.includes(plant)) ||
      (acting.kind === "bench.laid" && bench !== undefined && acting.on.includes(bench)))
      ? [acting]
      : [],
  );
  if (founders.length === 0) return [];
  const names = founders.map(({ on }) => desk.say.name(on[0] as string)).join(", ");
  const ids = founders.map(({ id }) => id.slice(-TAIL_n)).join(" ");
  const date = addDays(ledger.calendar.dateOf(first_ms), -1);
  return [
    `The file starts before ${names} came into the book. If it stood so from the start: sillwood book correct ${ids} when=${date}`,
  ];
}

import type { Json } from "@sillwood/bench/book";
import { type Desk, readList } from "@sillwood/bench/pages";
import type { Bench, Calendar } from "@sillwood/bench/places";
import type { Draft } from "@sillwood/bench/round";
import type { UnitSystem } from "@sillwood/bench/words";
import { instantOf } from "../book/when.ts";
import type { Trouble } from "../errors.ts";
import { type Cells, canonicalCells, foreignColumns } from "./canonical-cells.ts";
import { headerUnit } from "./header-unit.ts";

export interface Climate {
  readonly drafts: readonly Draft[];
  /** Texts of series parts, by the place of the draft that names each. */
  readonly files: readonly { readonly draft: number; readonly text: string }[];
  readonly troubles: readonly Trouble[];
  readonly notes: readonly string[];
  /** Columns of the file that were read, and as what. */
  readonly read: Readonly<Record<string, string>>;
}

export interface ClimateOptions {
  readonly desk: Desk;
  readonly calendar: Calendar;
  readonly bench: Bench;
  readonly units: UnitSystem;
  /** Column of the instants. */
  readonly at: string;
  newId(): string;
}

const HOUR_ms = 3_600_000;
/** Readings at least so dense make a logger's series; sparser ones are the air and light as written that day (our choice). */
const DENSE_ms = 3 * HOUR_ms;
const LIGHT = "ppfd_umol_m2_s";

/** Which columns of a list of weighings tell of air and light, ours to theirs. */
export function climateColumns(
  desk: Desk,
  cells: Cells,
  newId: () => string,
): Readonly<Record<string, string>> {
  const { mapping } = readList(desk, "logger", cells, { newId });
  const found = Object.entries(mapping).filter(([ours]) => ours !== "at");
  const dli = cells[0]?.find((name) => /^dli\b|^dli_/i.test(name.trim()));
  if (dli !== undefined && mapping[LIGHT] === undefined) found.push([LIGHT, dli.trim()]);
  return Object.fromEntries(found);
}

/** The air and light beside a series of weights, as entries about the bench on which the pot stood. */
export function climateOf(
  cells: Cells,
  found: Readonly<Record<string, string>>,
  options: ClimateOptions,
): Climate {
  const { desk, calendar, bench, at, units, newId } = options;
  const header = (cells[0] ?? []).map((name) => name.trim());
  const light = found[LIGHT];
  const isDaily = light !== undefined && dailyLight(light, typicalGap_ms(cells, header.indexOf(at), options));
  const { [LIGHT]: _light, ...without } = found;
  const foreign = isDaily ? undefined : foreignColumns(found)[LIGHT];
  const mapping = isDaily || foreign !== undefined ? without : found;
  const notes = foreign === undefined ? [] : [foreignSaid(light ?? "", foreign)];
  const canonical = canonicalCells(cells, { ...mapping, at }, units);
  const read = { ...mapping, ...(isDaily ? { dli_mol_m2_d: light } : {}) };
  if (!isDaily && typicalGap_ms(cells, header.indexOf(at), options) <= DENSE_ms) {
    const list = readList(desk, "logger", canonical, {
      newId,
      bench: bench.id,
      mapping: { ...mapping, at },
    });
    const troubles = list.problems.map(
      ({ line, column, message }): Trouble => ({ path: column, line, column, message }),
    );
    return { drafts: list.drafts, files: list.files, troubles, read, notes };
  }
  const drafts: Draft[] = [];
  const troubles: Trouble[] = [];
  for (const [i, row] of canonical.entries()) {
    const at_ms = i === 0 ? undefined : instantOf(row[header.indexOf(at)] ?? "", calendar, desk.now_ms);
    if (at_ms === undefined) continue;
    const value = (ours: string, theirs: string | undefined, min: number, max: number) => {
      const text = theirs === undefined ? "" : (row[header.indexOf(theirs)] ?? "").trim();
      if (text === "") return undefined;
      const typed = Number(text.replace(",", ".").replace("−", "-"));
      const share =
        ours === "humidity_frac" && typed > 1.05 && typed <= 105 ? Math.min(1, typed / 100) : typed;
      if (share >= min && share <= max) return share;
      const message = `${theirs} is ${JSON.stringify(text.slice(0, 40))}; expected ${min} to ${max}`;
      troubles.push({ path: ours, message, line: i + 1, column: theirs ?? ours, value: text.slice(0, 40) });
      return undefined;
    };
    const air_C = value("air_C", mapping["air_C"], -10, 50);
    const humidity_frac = value("humidity_frac", mapping["humidity_frac"], 0.05, 1);
    const dli_mol_m2_d = isDaily ? value("dli_mol_m2_d", light, 0, 70) : undefined;
    const add = (kind: string, data: Json) => drafts.push({ kind, on: [bench.id], data, at_ms });
    if (air_C !== undefined)
      add("bench.air", {
        dayAir_C: air_C,
        nightAir_C: air_C,
        ...(humidity_frac === undefined ? {} : { humidity_frac }),
      });
    if (dli_mol_m2_d !== undefined) add("bench.lit", { dli_mol_m2_d, light: lightOf(bench) });
  }
  return { drafts, files: [], troubles, read, notes };
}

/** Why a column of light was left. */
export const foreignSaid = (theirs: string, unit: string): string =>
  `${theirs} is not read: ${unit} can't be turned into µmol/m²s here. Light is read in µmol/m²s, or as a day's mol/m².`;

const lightOf = (bench: Bench) => (bench.outdoors ? "sun" : bench.place === "shelf" ? "lamp" : "window");

/** A column of light without a unit is a day's sum where rows come about once a day. */
function dailyLight(header: string, gap_ms: number): boolean {
  const named = headerUnit(header, "umol_m2_s");
  if ("other" in named) return named.other === "mol/m² a day";
  return named.unit === undefined && !/ppfd|par|[uµμ]mol/i.test(header) && gap_ms > DENSE_ms;
}

/** The middle gap between neighbouring rows. */
function typicalGap_ms(cells: Cells, column: number, { calendar, desk }: ClimateOptions): number {
  const instants = cells
    .slice(1)
    .flatMap((row) => instantOf(row[column] ?? "", calendar, desk.now_ms) ?? [])
    .sort((a, b) => a - b);
  const gaps = instants
    .slice(1)
    .map((at_ms, i) => at_ms - (instants[i] as number))
    .filter((gap_ms) => gap_ms > 0)
    .sort((a, b) => a - b);
  return gaps[Math.floor(gaps.length / 2)] ?? Number.POSITIVE_INFINITY;
}

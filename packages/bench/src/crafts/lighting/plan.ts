import type { EntryId } from "../../book/entry.ts";
import type { StandsData, WindowData } from "../../places/light/kinds.ts";
import { lampsAt } from "../../places/light/lamp-light.ts";
import { placeOfSpot } from "../../places/light/layout.ts";
import { inForceByNumber } from "../../places/light/said.ts";
import { compassSaid, lightSentences } from "../../places/light/sentences.ts";
import { panesOf } from "../../places/light/windows.ts";
import type { Bench, From, Places } from "../../places/places.ts";
import type { World } from "../craft.ts";
import type { BenchLight, Contours, LampDrawn, WindowDrawn } from "./page-shape.ts";
import { usualDate } from "./usual-date.ts";
import { lightPageWords } from "./words-page.ts";

const MARGIN_m = 0.12;
const LEAST_DEPTH_m = 0.5;
/** A grid so fine that height lines bend smoothly over a sill, so coarse that a phone draws it in a blink. */
const COLUMNS_n = 9;
const ROWS_n = 5;
const LEVELS_n = 5;
const STEPS_mol = [0.5, 1, 2, 5, 10, 20];

/** The windows of a bench as drawn: said, or guessed from the direction alone. */
export function windowsDrawn({ places, now_ms, say }: World, bench: Bench): readonly WindowDrawn[] {
  const said = inForceByNumber(places.light.windows.get(bench.id), ({ window_n = 1 }) => window_n, now_ms);
  // What one of its spots sees through each pane gives the usual values back where nobody measured them.
  const middle = bench.spots[Math.floor(bench.spots.length / 2)]?.id ?? bench.id;
  const words = lightPageWords(say);
  return panesOf(places, bench, middle, now_ms).map((pane, i) => {
    const data: WindowData | undefined = said[i]?.data;
    const width_m = pane.right_m - pane.left_m;
    const height_m = pane.top_m - pane.bottom_m;
    const drawn = {
      faces_deg: pane.faces_deg,
      width_m,
      height_m,
      glazing: pane.glazing,
    };
    return {
      window_n: data?.window_n ?? i + 1,
      said: data
        ? lightSentences(say).window(data)
        : words.page.guessedWindow(compassSaid(pane.faces_deg, say.language)),
      facesSaid: compassSaid(pane.faces_deg, say.language),
      ...drawn,
      sill_m: pane.bottom_m,
      opposite_deg: pane.opposite_deg,
      recess_m: pane.recess_m,
      veil: pane.veil,
      origin: data ? "measured" : "assumed",
    };
  });
}

export function lampsDrawn({ places, now_ms, say }: World, bench: Bench): readonly LampDrawn[] {
  return lampsAt(places, bench.id, now_ms).map(({ data, lamp }, i) => ({
    lamp_n: data.lamp_n ?? i + 1,
    said: lightSentences(say).lamp(data),
    form: data.form,
    source: data.source,
    above_m: data.above_m,
    along_m: lamp.x_m,
    fromGlass_m: lamp.y_m,
    ...(data.length_m === undefined ? {} : { length_m: data.length_m }),
    ...(data.width_m === undefined ? {} : { width_m: data.width_m }),
    power_W: data.power_W,
    origin: data.efficacy_umol_J === undefined ? "learned" : "measured",
  }));
}

/** What the plan must show: pots, lamps, and the width of the glass. */
export function planOf(
  { places, now_ms }: World,
  bench: Bench,
  windows: readonly WindowDrawn[],
  lamps: readonly LampDrawn[],
): BenchLight["plan"] {
  const spots = bench.spots.map(({ id }) => placeOfSpot(places, id, now_ms));
  const across = [
    ...spots.map(({ along_m }) => along_m),
    ...lamps.flatMap(({ along_m, length_m = 0 }) => [along_m - length_m / 2, along_m + length_m / 2]),
    ...windows.slice(0, 1).flatMap(({ width_m }) => [-width_m / 2, width_m / 2]),
  ];
  const deep = [
    ...spots.map(({ fromGlass_m }) => fromGlass_m),
    ...lamps.map(({ fromGlass_m }) => fromGlass_m),
  ];
  return {
    left_m: Math.min(0, ...across) - MARGIN_m,
    right_m: Math.max(0, ...across) + MARGIN_m,
    near_m: 0,
    far_m: Math.max(LEAST_DEPTH_m, ...deep.map((each) => each + MARGIN_m)),
  };
}

/** The light over the bench on a grid in a month, as if a pot stood at each of its points. */
export function contoursOf(
  world: World,
  bench: Bench,
  plan: BenchLight["plan"],
  date: string,
): Contours | undefined {
  const { places, now_ms, calendar } = world;
  if (
    bench.outdoors ||
    !(
      places.light.windows.has(bench.id) ||
      places.light.lamps.has(bench.id) ||
      bench.windowFaces_deg !== undefined
    )
  )
    return undefined;
  const spread = (from: number, to: number, n: number) =>
    Array.from({ length: n }, (_, i) => from + ((to - from) * i) / (n - 1));
  const along_m = spread(plan.left_m, plan.right_m, COLUMNS_n);
  // No leaf stands in the glass.
  const fromGlass_m = spread(Math.max(0.06, plan.near_m), plan.far_m, ROWS_n);
  const points = fromGlass_m.flatMap((row, r) =>
    along_m.map((column, c) => ({ id: gridId(r, c), row, column })),
  );
  const airAt = world.airIn(withPoints(places, bench, points, now_ms));
  const usual = usualDate(calendar.dateOf(now_ms), date);
  const light_mol_m2_d = fromGlass_m.map((_, r) =>
    along_m.map((_, c) => airAt(gridId(r, c), usual).dli_mol_m2_d),
  );
  return { along_m, fromGlass_m, light_mol_m2_d, levels_mol_m2_d: levelsOf(light_mol_m2_d.flat()) };
}

const gridId = (row: number, column: number) => `grid:${row}:${column}`;

/** The same places with spots at the points of the grid. */
function withPoints(
  places: Places,
  bench: Bench,
  points: readonly { readonly id: string; readonly row: number; readonly column: number }[],
  at_ms: number,
): Places {
  const stands = new Map<string, readonly From<StandsData>[]>(places.light.stands);
  const benchOfSpot = new Map(places.benchOfSpot);
  for (const { id, row, column } of points) {
    const data = {
      along_m: Math.max(-6, Math.min(6, column)),
      fromGlass_m: Math.max(0.02, Math.min(6, row)),
    };
    stands.set(id, [{ at_ms, data, entry: id as EntryId }]);
    benchOfSpot.set(id, bench.id);
  }
  return { ...places, benchOfSpot, light: { ...places.light, stands } };
}

/** Round values between dullest and brightest, at most five. */
function levelsOf(values: readonly number[]): readonly number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const step = STEPS_mol.find((each) => (high - low) / each <= LEVELS_n) ?? 20;
  const levels: number[] = [];
  for (let level = Math.ceil(low / step) * step; level <= high; level += step) levels.push(level);
  return levels;
}

import type { EntryId } from "../../book/entry.ts";
import type { Origin } from "../../working/working.ts";
import { type Bench, type From, inForceAt, type Places } from "../places.ts";
import type { PairData, WindowData } from "./kinds.ts";
import { placeOfSpot } from "./layout.ts";
import { inForceByNumber } from "./said.ts";
import { pairRead } from "./sentences.ts";

/** One pane of glass as a spot sees it: its edges from the foot of the leaf on the glass. */
export interface Pane {
  readonly faces_deg: number;
  readonly left_m: number;
  readonly right_m: number;
  readonly bottom_m: number;
  readonly top_m: number;
  readonly fromGlass_m: number;
  readonly recess_m: number;
  readonly glazing: WindowData["glazing"];
  /** As printed on the label; the usual of that glazing when undefined. */
  readonly visible_frac?: number;
  readonly veil: NonNullable<WindowData["veil"]>;
  readonly opposite_deg: number;
  readonly origin: Origin;
  /** Relative sd of the light through it from not knowing glass, distance and what stands opposite. */
  readonly sd_frac: number;
}

/** A window nobody measured: its size, its glass, what stands opposite. @source our assumption */
const USUAL_WINDOW = {
  width_m: 1.2,
  height_m: 1.4,
  sill_m: 0,
  glazing: "double",
  veil: "none",
  opposite_deg: 12,
  recess_m: 0.1,
} as const;

/**
 * Relative sd of window light: a window of which only the direction is known; one that was measured and where the pot stands
 * was not; one where both were. Beside glass, sky and distance (0.17 together) stands what nobody measures: roofs by eye to a third, a
 * compass by eighths of the circle, a house to one side, a balcony, bars, screens and dirt.
 *
 * @source sun-light sheet section 11 (split and sky 15 %, glass 5 %, distance 5 to 15 %); the rest is our assumption
 */
const SD = { assumed: 0.6, drawn: 0.4, measured: 0.3 } as const;

/**
 * Share of a window's light that what nobody is asked for leaves: bars and dirt take from a twentieth to a third, a house to one side or a
 * balcony something more where there is one. None of it ever adds light, so a window taken clear and free is read too bright.
 *
 * @source our assumption
 */
export const UNASKED_LEFT_frac = 0.9;

/** A window nobody measured, in each of the four directions: what a place may have of which not even the direction is known. */
export const windowsAllRound: readonly (readonly Pane[])[] = [0, 90, 180, 270].map((faces_deg) => [
  paneOf({ ...USUAL_WINDOW, faces_deg }, 0, 0.25, "assumed", SD.assumed),
]);

/** The panes of a bench as seen from one of its spots at an instant; none where nobody said that there is a window. */
export function panesOf(places: Places, bench: Bench, spot: string, at_ms: number): readonly Pane[] {
  const stands = placeOfSpot(places, spot, at_ms);
  const said = inForceByNumber(places.light.windows.get(bench.id), ({ window_n = 1 }) => window_n, at_ms);
  if (said.length === 0)
    return bench.windowFaces_deg === undefined
      ? []
      : [
          paneOf(
            { ...USUAL_WINDOW, faces_deg: bench.windowFaces_deg },
            // Where along a window of unknown size a pot stands is not known either: before its middle.
            stands.measured ? stands.along_m : 0,
            stands.fromGlass_m,
            "assumed",
            SD.assumed,
          ),
        ];
  return said.map(({ data }) =>
    paneOf(
      data,
      stands.measured ? stands.along_m : held(stands.along_m, data.width_m),
      stands.fromGlass_m,
      stands.measured ? "measured" : "learned",
      stands.measured ? SD.measured : SD.drawn,
    ),
  );
}

/** Pots in a row that nobody measured stand before the glass, not beside it. */
const held = (along_m: number, width_m: number) =>
  Math.max(-0.45 * width_m, Math.min(0.45 * width_m, along_m));

function paneOf(
  data: WindowData,
  along_m: number,
  fromGlass_m: number,
  origin: Origin,
  sd_frac: number,
): Pane {
  const bottom_m = data.sill_m ?? 0;
  return {
    faces_deg: data.faces_deg,
    left_m: -data.width_m / 2 - along_m,
    right_m: data.width_m / 2 - along_m,
    bottom_m,
    top_m: bottom_m + data.height_m,
    fromGlass_m,
    recess_m: data.recess_m ?? USUAL_WINDOW.recess_m,
    glazing: data.glazing,
    ...(data.visible_frac === undefined ? {} : { visible_frac: data.visible_frac }),
    veil: data.veil ?? "none",
    opposite_deg: data.opposite_deg ?? USUAL_WINDOW.opposite_deg,
    origin,
    sd_frac,
  };
}

/** Light read inside and outside at one spot, and how sure it makes the share of the sky that gets there. */
export interface ReadPair {
  readonly entry: EntryId;
  readonly spot: string;
  readonly at_ms: number;
  readonly ratio_frac: number;
  /** sd of the ln of the ratio. */
  readonly sd_ln: number;
}

/** sd of the ln ratio by sky: the method wants an evenly grey sky. @source sun-light sheet section 5, grower calibration; values our assumption */
const PAIR_SD_ln: Readonly<Record<PairData["sky"], number>> = { "evenly grey": 0.1, broken: 0.3, clear: 0.5 };
/** What a pair says of another spot before the same window. @source our assumption */
const NEIGHBOUR_SD_ln = 0.15;

/** Pairs read until an instant that say something of a spot: its own, and those of its neighbours before the same window. */
export function pairsFor(places: Places, bench: Bench, spot: string, at_ms: number): readonly ReadPair[] {
  const pairs: ReadPair[] = [];
  for (const { id } of [...bench.spots, { id: bench.id }]) {
    for (const one of places.light.pairs.get(id) ?? []) {
      if (one.at_ms > at_ms) continue;
      const own = id === spot || id === bench.id;
      pairs.push(pairOf(one, id, own ? 0 : NEIGHBOUR_SD_ln));
    }
  }
  return pairs;
}

function pairOf({ data, entry, at_ms }: From<PairData>, spot: string, more_ln: number): ReadPair {
  const { inside, outside } = pairRead(data);
  return {
    entry,
    spot,
    at_ms,
    ratio_frac: inside / outside,
    sd_ln: Math.hypot(PAIR_SD_ln[data.sky], more_ln),
  };
}

/** Lamp hours in force, unless the lamps are out. */
export function lampHoursAt(
  places: Places,
  bench: string,
  at_ms: number,
): { readonly from_h: number; readonly hours_h: number; readonly said: boolean } {
  const said = inForceAt(places.light.lampHours.get(bench), at_ms);
  const hours = said ? { ...said.data, said: true } : { ...USUAL_LAMP_HOURS, said: false };
  return isOut(places, bench, "lamps", at_ms) ? { ...hours, hours_h: 0 } : hours;
}

/** Until somebody sets the timer. @source our assumption */
const USUAL_LAMP_HOURS = { from_h: 6, hours_h: 14 } as const;

/** Whether lamps or heating of a bench are out at an instant. */
export function isOut(places: Places, bench: string, what: "lamps" | "heating", at_ms: number): boolean {
  let out = false;
  for (const one of places.light.outages.get(bench) ?? [])
    if (one.data.what === what && one.at_ms <= at_ms) out = one.data.is === "out";
  return out;
}

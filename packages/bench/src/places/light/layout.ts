import { inForceAt, type Places } from "../places.ts";

/** Where a spot lies before its window or under its lamps. */
export interface SpotPlace {
  /** To the right of the middle of the bench, seen from inside. */
  readonly along_m: number;
  /** From the glass, or from the back edge where there is no window. */
  readonly fromGlass_m: number;
  /** Whether somebody measured it; else the pots are taken as standing side by side. */
  readonly measured: boolean;
}

/** Two small pots side by side, middle to middle. @source our assumption */
const POT_TO_POT_m = 0.16;
/** A pot on a sill stands about so far behind the glass, leaf to pane. @source our assumption */
const USUAL_FROM_GLASS_m = 0.25;

/** Where a spot lies at an instant: as measured, else in a row along the bench. */
export function placeOfSpot(places: Places, spot: string, at_ms: number): SpotPlace {
  const said = inForceAt(places.light.stands.get(spot), at_ms);
  if (said) return { ...said.data, measured: true };
  const bench = places.benches.get(places.benchOfSpot.get(spot) ?? "");
  const spots = bench?.spots ?? [];
  const index = spots.findIndex(({ id }) => id === spot);
  const along_m = index < 0 ? 0 : (index - (spots.length - 1) / 2) * POT_TO_POT_m;
  return { along_m: Math.max(-6, Math.min(6, along_m)), fromGlass_m: USUAL_FROM_GLASS_m, measured: false };
}

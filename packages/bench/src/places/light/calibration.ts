import type { EntryId } from "../../book/entry.ts";
import type { Origin } from "../../working/working.ts";
import type { Bench, Places } from "../places.ts";
import { skyShare_frac } from "./window-light.ts";
import { type Pane, pairsFor } from "./windows.ts";

/** How much of the modelled sky light really reaches a spot, learned from pairs read inside and outside. */
export interface Calibration {
  /** Multiplies the light of sky and ground; the sun's own beam is left as geometry gives it. */
  readonly ratio_frac: number;
  /** Relative sd of the light of sky and ground, and of the sun's own beam. */
  readonly skySd_frac: number;
  readonly beamSd_frac: number;
  readonly pairs_n: number;
  readonly last?: EntryId;
  readonly origin: Origin;
  /** What geometry alone says reaches the spot of an evenly grey sky, share of the light outdoors. */
  readonly modelled_frac: number;
}

/**
 * Share of the geometry's doubt about the beam that is left once a pair has been read: what stands opposite and the size of the
 * glass show in both. @source sun-light sheet section 11 (a measured pair halves the model part)
 */
const BEAM_LEFT_frac = 0.5;
/** What no pair takes away from the light of the sky: it was read on one day, under one sky. @source our assumption */
const SKY_LEFT_frac = 0.07;

/**
 * Calibration of a spot at an instant: ln of measured over modelled share, each pair weighed against the doubt of the
 * geometry (a normal prior around 0).
 */
export function calibrationOf(
  places: Places,
  bench: Bench,
  spot: string,
  panes: readonly Pane[],
  at_ms: number,
): Calibration {
  const modelled_frac = skyShare_frac(panes);
  const prior_ln = panes[0]?.sd_frac ?? 0;
  const pairs = panes.length > 0 && modelled_frac > 0 ? pairsFor(places, bench, spot, at_ms) : [];
  if (pairs.length === 0)
    return {
      ratio_frac: 1,
      skySd_frac: prior_ln,
      beamSd_frac: prior_ln,
      pairs_n: 0,
      origin: panes[0]?.origin ?? "assumed",
      modelled_frac,
    };
  let weight = 1 / prior_ln ** 2;
  let sum = 0;
  for (const pair of pairs) {
    const w = 1 / pair.sd_ln ** 2;
    weight += w;
    sum += w * Math.log(pair.ratio_frac / modelled_frac);
  }
  const after_ln = Math.sqrt(1 / weight);
  const last = pairs.at(-1);
  return {
    ratio_frac: Math.exp(sum / weight),
    skySd_frac: Math.min(prior_ln, Math.hypot(after_ln, SKY_LEFT_frac)),
    beamSd_frac: prior_ln * BEAM_LEFT_frac,
    pairs_n: pairs.length,
    ...(last ? { last: last.entry } : {}),
    origin: pairs.some(({ spot: read }) => read === spot) ? "measured" : "learned",
    modelled_frac,
  };
}

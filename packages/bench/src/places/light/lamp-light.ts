import type { Origin } from "../../working/working.ts";
import type { Bench, Places } from "../places.ts";

/** Light of all lamps of a bench at one spot. */
export interface LampLight {
  readonly ppfd_umol_m2_s: number;
  readonly from_h: number;
  readonly hours_h: number;
  /** Relative sd of the strength. */
  readonly sd_frac: number;
  readonly power_W: number;
  readonly origin: Origin;
}

export function lampLight(
  _places: Places,
  _bench: Bench,
  _spot: string,
  _at_ms: number,
): LampLight | undefined {
  return undefined;
}

import { HOUR_ms, type LocalDay } from "./calendar.ts";
import type { Chance } from "./chance.ts";

/** A lamp over a shelf, with its clock. */
export interface ShelfLamp {
  /** Under its middle, when new, at the height of the crowns. */
  readonly ppfd_umol_m2_s: number;
  /** Above the crowns. */
  readonly hangs_m: number;
  /** Light that walls and foil throw back to the edge, over that under the middle. */
  readonly thrownBack_frac: number;
  /** Share lost in a year of light. */
  readonly fades_frac_y: number;
  /** Local clock hours; a lamp may burn past midnight. */
  readonly on_h: number;
  readonly burns_h: number;
  /** From a day on the grower lets it burn other hours. */
  readonly change?: { readonly day: number; readonly on_h: number; readonly burns_h: number };
  /** Days on which the clock was found wrong after a power cut, and by how much. */
  readonly slipsPerDay: number;
}

/** Share of each hour for which a lamp burns, times what age has left of it, [hour]. */
export function lampHours(
  lamp: ShelfLamp,
  days: readonly LocalDay[],
  dayOf: Uint16Array,
  from_ms: number,
  chance: Chance,
): Float64Array {
  const burning = new Float64Array(dayOf.length);
  let day = -1;
  let slip_h = 0;
  let dark = false;
  let burnt_h = 0;
  for (let i = 0; i < burning.length; i++) {
    if (dayOf[i] !== day) {
      day = dayOf[i] as number;
      // Somebody sets the clock right after a few days; a blown fuse is seen the next morning.
      if (slip_h !== 0 && chance.happens(0.35)) slip_h = 0;
      if (chance.happens(lamp.slipsPerDay)) slip_h = chance.between(-6, 6);
      dark = chance.happens(lamp.slipsPerDay * 0.5);
    }
    const now = lamp.change && day >= lamp.change.day ? lamp.change : lamp;
    const hour = (from_ms + (i + 0.5) * HOUR_ms - (days[day] as LocalDay).midnight_ms) / HOUR_ms;
    const since_h = (((hour - now.on_h - slip_h) % 24) + 24) % 24;
    if (dark || since_h >= now.burns_h) continue;
    burning[i] = 1 - (lamp.fades_frac_y * burnt_h) / 8760;
    burnt_h++;
  }
  return burning;
}

/**
 * Light at a place over light under the middle of a small flat lamp: the fourth power of the cosine, over what is thrown back.
 *
 * @source cosine law of a flat source on a plane parallel to it
 */
export function lampShare_frac(lamp: ShelfLamp, aside_m: number): number {
  const cosine2 = lamp.hangs_m ** 2 / (lamp.hangs_m ** 2 + aside_m ** 2);
  return lamp.thrownBack_frac + (1 - lamp.thrownBack_frac) * cosine2 ** 2;
}

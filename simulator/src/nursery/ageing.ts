import type { MediumTraits } from "./medium.ts";
import type { Pot } from "./potted-plant.ts";

/** How a filled pot changes between two pottings: the medium rots and settles, roots fill it, salts stay behind. */
export interface AgeingTraits {
  /** Share of the drained water content lost in a year as the medium slumps; negative when it rots into something finer. */
  readonly slumps_frac_y: number;
  /** Rise of the water held too tightly for the roots, share in a year. */
  readonly tightens_frac_y: number;
  /** Share of the root zone's pores that roots take at last, and how fast they come to it. */
  readonly rootsMost_frac: number;
  readonly rootsPace_per_d: number;
  /** How much worse a dry ball is wetted after a year. */
  readonly repels_frac_y: number;
  /** Salt left behind by a litre of water after the plant took its share. */
  readonly salt_g_L: number;
}

/** The age of a pot's filling; mutable. */
export interface Ageing {
  readonly traits: AgeingTraits;
  /** The medium as filled. */
  fresh: MediumTraits;
  age_d: number;
  /** Share of the root zone's pores taken by roots. */
  roots_frac: number;
  salt_g: number;
  /** Local day of the run up to which it was reckoned. */
  day: number;
}

/** A gram of salt in a litre conducts about this much. @source common practice: 640 mg/L for 1 dS/m */
const CONDUCTS_dS_m_per_g_L = 1 / 0.64;
/** Pores taken by roots hold no water for them; the older part of the roots lets some by. @source our assumption */
const TAKES_frac = 0.7;
/** A pot full of roots sheds water along its wall. @source our assumption */
const SHEDS_frac = 0.2;
const ROOT_g_mL = 0.95;

/** Once a local day: a day older. Water that no longer finds room drains. */
export function age(pot: Pot, ageing: Ageing, day: number): void {
  const days_n = Math.max(0, day - ageing.day);
  ageing.day = day;
  if (days_n === 0) return;
  const { traits, fresh } = ageing;
  ageing.age_d += days_n;
  const years = ageing.age_d / 365;
  const pores_g = fresh.rootFull_g;
  const before_g = ageing.roots_frac * pores_g;
  // Roots grow while there is something to feed them and stop in dry medium.
  const works = pot.root_g > fresh.rootWilt_g * 1.1 ? pot.roots_frac : 0;
  ageing.roots_frac +=
    days_n *
    traits.rootsPace_per_d *
    works *
    ageing.roots_frac *
    (1 - ageing.roots_frac / traits.rootsMost_frac);
  pot.fresh_g += (ageing.roots_frac * pores_g - before_g) * ROOT_g_mL;

  const holds = Math.max(0.5, 1 - traits.slumps_frac_y * years);
  const filled = 1 - TAKES_frac * ageing.roots_frac;
  const bound_frac = ageing.roots_frac ** 2 / traits.rootsMost_frac;
  const surfaceFull_g = fresh.surfaceDry_g + (fresh.surfaceFull_g - fresh.surfaceDry_g) * holds;
  const rootFull_g = fresh.rootFull_g * holds * filled;
  pot.vessel = {
    ...pot.vessel,
    medium: {
      ...fresh,
      surfaceFull_g,
      rootFull_g,
      rootWilt_g: Math.min(
        0.6 * rootFull_g,
        fresh.rootWilt_g * (1 + traits.tightens_frac_y * years + 0.02 * conductivity_dS_m(pot, ageing)),
      ),
      bypassMoist_frac: Math.min(0.35, fresh.bypassMoist_frac + SHEDS_frac * bound_frac),
      bypassDry_frac: Math.min(0.85, fresh.bypassDry_frac * (1 + traits.repels_frac_y * years)),
    },
  };
  const over_g = Math.max(0, pot.surface_g - surfaceFull_g) + Math.max(0, pot.root_g - rootFull_g);
  pot.surface_g = Math.min(pot.surface_g, surfaceFull_g);
  pot.root_g = Math.min(pot.root_g, rootFull_g);
  pot.lost_g += over_g;
}

/** A pot is filled anew: young medium, no salt, and as many roots as the washing left in the larger room. */
export function renew(ageing: Ageing, medium: MediumTraits): void {
  ageing.roots_frac *= 0.5 * Math.min(1, ageing.fresh.rootFull_g / medium.rootFull_g);
  ageing.fresh = medium;
  ageing.age_d = 0;
  ageing.salt_g = 0;
}

/** Salts that come with a pour and leave with what runs out. */
export function salt(ageing: Ageing, held_g: number, poured_mL: number, leached_g: number): void {
  ageing.salt_g += (poured_mL / 1000) * ageing.traits.salt_g_L;
  ageing.salt_g *= 1 - Math.min(0.95, leached_g / Math.max(1, held_g + poured_mL));
}

/** Of the water in the pot when it is full. */
function conductivity_dS_m(pot: Pot, ageing: Ageing): number {
  const { surfaceFull_g, rootFull_g } = pot.vessel.medium;
  return (ageing.salt_g / ((surfaceFull_g + rootFull_g) / 1000)) * CONDUCTS_dS_m_per_g_L;
}

/**
 * How far salts let the leaves open: K = 1 - b/(100 Ky) (EC - threshold).
 *
 * @source FAO-56, eq. 89; pepper: threshold 1.5 dS/m, b 14 % per dS/m, Ky 1.1 (tables 23 and 24, from memory)
 */
export function saltOpenness_frac(pot: Pot, ageing: Ageing): number {
  const over_dS_m = conductivity_dS_m(pot, ageing) - 1.5;
  return over_dS_m <= 0 ? 1 : Math.max(0.35, 1 - (0.14 / 1.1) * over_dS_m);
}

import { valuesOf } from "../assumption.ts";
import { normalQuantile } from "../chance/normal.ts";
import { within } from "../errors/index.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";

export type Wood = "green" | "semi" | "woody";
export const woods = ["green", "semi", "woody"] as const satisfies readonly Wood[];

const MOST_frac = 0.97;

/**
 * Chance that a bud below a cut grows.
 *
 * p_r = clip(p1 exp(-(r-1)/ρ) fL fA fB, 0, 0.97); fL = min(1, (I/I0)/0.3); fA 1 green, 0.8 half-woody, 0.5 woody; fB 0.6 on a bare
 * branch; at the stub of a fork whose other arm goes on p1 is 0.6
 *
 * @param bud rank below the cut, 1 to 100; light at the node over the light above the crown, 0 to 1; wood; whether a leaf is left on the branch; whether the other arm of a fork goes on
 * @returns chance, 0 to 0.97
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example budBreak_frac({ rank_n: 2, light_frac: 1, wood: "green", leafy: true, otherArm: false }) // 0.546
 */
export function budBreak_frac(
  bud: {
    readonly rank_n: number;
    readonly light_frac: number;
    readonly wood: Wood;
    readonly leafy: boolean;
    readonly otherArm: boolean;
  } & ShapeSettings,
): number {
  within("rank_n", bud.rank_n, 1, 100);
  within("light_frac", bud.light_frac, 0, 1);
  const set = valuesOf(shapeAssumptions, bud);
  const first = bud.otherArm ? set.forkStubBreak_frac : set.firstBreak_frac;
  const light = Math.min(1, bud.light_frac / set.breakLight_frac);
  const age = bud.wood === "green" ? 1 : bud.wood === "semi" ? set.breakSemi_frac : set.breakWoody_frac;
  const leaves = bud.leafy ? 1 : set.breakBare_frac;
  const chance = first * Math.exp(-(bud.rank_n - 1) / set.breakFade_n) * light * age * leaves;
  return Math.max(0, Math.min(MOST_frac, chance));
}

/**
 * Days from a cut to visible shoots, 10, 50 and 90 in a hundred.
 *
 * t = lag × plastochron / (T - Tb), lag 0.8, its logarithm spread by 0.4
 *
 * @param warmth mean air temperature [°C], -10 to 50; base [°C], -5 to 30; plastochron on that base [°C d], 5 to 1000
 * @returns days; null where it is too cold to grow
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example breakTime({ air_C: 22, base_C: 12, plastochron_Cd: 69 }).middle_d // 5.5
 */
export function breakTime(
  warmth: {
    readonly air_C: number;
    readonly base_C: number;
    readonly plastochron_Cd: number;
  } & ShapeSettings,
): { readonly early_d: number | null; readonly middle_d: number | null; readonly late_d: number | null } {
  within("air_C", warmth.air_C, -10, 50);
  within("base_C", warmth.base_C, -5, 30);
  within("plastochron_Cd", warmth.plastochron_Cd, 5, 1000);
  const set = valuesOf(shapeAssumptions, warmth);
  const pace = warmth.air_C - warmth.base_C;
  if (pace <= 0.1) return { early_d: null, middle_d: null, late_d: null };
  const middle_d = (set.breakLag_n * warmth.plastochron_Cd) / pace;
  const factor = Math.exp(normalQuantile(0.9) * set.breakLagSpread_frac);
  return { early_d: middle_d / factor, middle_d, late_d: middle_d * factor };
}

/** Weight of the chance we start from, in buds watched. @source our assumption */
const PRIOR_n = 4;

/**
 * Chance of bud break after some buds were watched: counts of a beta distribution that starts with the weight of four buds.
 *
 * (4 p + grown) / (4 + watched)
 *
 * @param watched chance before, 0 to 1; buds watched, 0 to 10000; of which grew, at most as many
 * @returns chance
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example learntBreak_frac({ before_frac: 0.5, watched_n: 4, grown_n: 4 }) // 0.75
 */
export function learntBreak_frac(watched: {
  readonly before_frac: number;
  readonly watched_n: number;
  readonly grown_n: number;
}): number {
  within("before_frac", watched.before_frac, 0, 1);
  within("watched_n", watched.watched_n, 0, 10_000);
  within("grown_n", watched.grown_n, 0, 10_000);
  within("grown_n", watched.grown_n, 0, watched.watched_n);
  return (PRIOR_n * watched.before_frac + watched.grown_n) / (PRIOR_n + watched.watched_n);
}

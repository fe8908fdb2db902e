import { within } from "../errors/index.ts";

/**
 * Share that each treatment of a row must kill, all stages counted, so that the colony shrinks.
 *
 * 1 − exp(−r τ)
 *
 * @param course rate [1/d], -1 to 2; days between treatments [d], 0.5 to 60
 * @returns share, 0 where it shrinks by itself
 * @throws QuantityError outside those ranges
 * @source our assumption; exponential growth
 * @see checks/pests.json 084
 * @example breakEvenKill_frac({ rate_per_d: 0.33, interval_d: 7 }) // 0.901
 */
export function breakEvenKill_frac(course: {
  readonly rate_per_d: number;
  readonly interval_d: number;
}): number {
  within("rate_per_d", course.rate_per_d, -1, 2);
  within("interval_d", course.interval_d, 0.5, 60);
  return Math.max(0, 1 - Math.exp(-course.rate_per_d * course.interval_d));
}

/**
 * Treatments that bring so many animals down to an expectation, if the interval and the kill can win at all.
 *
 * n = ln(N0 / ε) / (−ln(1 − k) − r τ)
 *
 * @param course animals, 0.1 to 1000000; expectation aimed at, 0.0001 to 10; share killed each time, 0.01 to 0.9999; days between [d], 0.5 to 60; rate [1/d], -1 to 2
 * @returns number, not rounded; no answer (null) where it can never win
 * @throws QuantityError outside those ranges
 * @source our assumption; exponential growth
 * @see checks/pests.json 085
 * @example treatmentsNeeded_n({ animals_n: 40, aim_n: 0.05, kill_frac: 0.8075, interval_d: 4, rate_per_d: 0.18 }) // 7.21
 */
export function treatmentsNeeded_n(course: {
  readonly animals_n: number;
  readonly aim_n: number;
  readonly kill_frac: number;
  readonly interval_d: number;
  readonly rate_per_d: number;
}): number | null {
  const { animals_n, aim_n, kill_frac, interval_d, rate_per_d } = course;
  within("animals_n", animals_n, 0.1, 1_000_000);
  within("aim_n", aim_n, 0.0001, 10);
  within("kill_frac", kill_frac, 0.01, 0.9999);
  within("interval_d", interval_d, 0.5, 60);
  within("rate_per_d", rate_per_d, -1, 2);
  const shrinks = -Math.log(1 - kill_frac) - rate_per_d * interval_d;
  return shrinks <= 0 ? null : Math.max(0, Math.log(animals_n / aim_n) / shrinks);
}

/**
 * What a course of treatments leaves, and the chance that it left nothing.
 *
 * μ = N0 (1 − k)^n exp(r τ (n − 1)); P0 = exp(−μ), or (1 + μ/κ)^−κ where survivors sit together
 *
 * @param course animals, 0.1 to 1000000; share killed each time, 0.01 to 0.9999; treatments, 1 to 60; days between [d], 0.5 to 60; rate [1/d], -1 to 2; clumping of survivors, 0.1 to 10, none unless given
 * @returns expected survivors and chance of none
 * @throws QuantityError outside those ranges
 * @source our assumption; Poisson and negative binomial survivors
 * @see checks/pests.json 086
 * @example courseCleared({ animals_n: 40, kill_frac: 0.8075, treatments_n: 5, interval_d: 4, rate_per_d: 0.25 }).cleared_frac // 0.561
 */
export function courseCleared(course: {
  readonly animals_n: number;
  readonly kill_frac: number;
  readonly treatments_n: number;
  readonly interval_d: number;
  readonly rate_per_d: number;
  readonly survivalClumping?: number;
}): { readonly survivors_n: number; readonly cleared_frac: number } {
  const { animals_n, kill_frac, treatments_n, interval_d, rate_per_d, survivalClumping } = course;
  within("animals_n", animals_n, 0.1, 1_000_000);
  within("kill_frac", kill_frac, 0.01, 0.9999);
  within("treatments_n", treatments_n, 1, 60);
  within("interval_d", interval_d, 0.5, 60);
  within("rate_per_d", rate_per_d, -1, 2);
  if (survivalClumping !== undefined) within("survivalClumping", survivalClumping, 0.1, 10);
  const survivors_n =
    animals_n *
    (1 - kill_frac) ** treatments_n *
    Math.exp(Math.min(600, rate_per_d * interval_d * (treatments_n - 1)));
  const cleared_frac =
    survivalClumping === undefined
      ? Math.exp(-survivors_n)
      : (1 + survivors_n / survivalClumping) ** -survivalClumping;
  return { survivors_n, cleared_frac };
}

/**
 * Treatments of a course against the one stage that it reaches, until all others have come to it.
 *
 * n = 1 + ceil((pupa + life of a female + egg) / τ)
 *
 * @param course times of the stages out of reach [d], 0 to 200 each; days between [d], 0.5 to 60
 * @returns number of treatments
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @see checks/pests.json 092
 * @example courseLength_n({ pupa_d: 4.4, femaleLife_d: 4.2, egg_d: 4.4, interval_d: 7 }) // 3
 */
export function courseLength_n(course: {
  readonly pupa_d: number;
  readonly femaleLife_d: number;
  readonly egg_d: number;
  readonly interval_d: number;
}): number {
  for (const name of ["pupa_d", "femaleLife_d", "egg_d"] as const) within(name, course[name], 0, 200);
  within("interval_d", course.interval_d, 0.5, 60);
  return 1 + Math.ceil((course.pupa_d + course.femaleLife_d + course.egg_d) / course.interval_d - 1e-9);
}

/**
 * Living agents for one pot from a rate per surface.
 *
 * rate π d² / 4
 *
 * @param pot agents per surface [1/m²], 0 to 10000000; diameter of the surface [m], 0.01 to 3
 * @returns number
 * @throws QuantityError outside those ranges
 * @source our assumption; geometry
 * @see checks/pests.json 093
 * @example agentsPerPot_n({ rate_per_m2: 250000, surfaceDiameter_m: 0.1 }) // 1963.5
 */
export function agentsPerPot_n(pot: {
  readonly rate_per_m2: number;
  readonly surfaceDiameter_m: number;
}): number {
  within("rate_per_m2", pot.rate_per_m2, 0, 10_000_000);
  within("surfaceDiameter_m", pot.surfaceDiameter_m, 0.01, 3);
  return pot.rate_per_m2 * (Math.PI / 4) * pot.surfaceDiameter_m ** 2;
}

/**
 * Concentrate for a volume of mix, as a share of the total.
 *
 * V share; with an active ingredient of the concentrate, C1 V1 = C2 V2
 *
 * @param mix total volume [mL], 1 to 10000000; strength wanted of it, 0.00001 to 1; share of active ingredient that the strength speaks of, 0.0001 to 1, 1 (the concentrate itself) unless given
 * @returns concentrate, and water to fill up with [mL]
 * @throws QuantityError outside those ranges, and where the mix would be stronger than the concentrate
 * @source our assumption; conservation of volume
 * @see checks/pests.json 104-108
 * @example concentrate({ total_mL: 1000, strength_frac: 0.01 }).concentrate_mL // 10
 */
export function concentrate(mix: {
  readonly total_mL: number;
  readonly strength_frac: number;
  readonly active_frac?: number;
}): { readonly concentrate_mL: number; readonly water_mL: number } {
  const { total_mL, strength_frac, active_frac = 1 } = mix;
  within("total_mL", total_mL, 1, 10_000_000);
  within("strength_frac", strength_frac, 0.00001, 1);
  within("active_frac", active_frac, 0.0001, 1);
  within("strength_frac", strength_frac, 0.00001, active_frac);
  const concentrate_mL = (total_mL * strength_frac) / active_frac;
  return { concentrate_mL, water_mL: total_mL - concentrate_mL };
}

/**
 * Strength of a mix from what went in, by both ways in which labels speak.
 *
 * of total c/(c + w); per water added c/w
 *
 * @param mix concentrate [mL], 0.001 to 1000000; water [mL], 0.001 to 10000000; share of active ingredient, 0.0001 to 1, 1 unless given
 * @returns shares
 * @throws QuantityError outside those ranges
 * @source Cranshaw for the two habits
 * @see checks/pests.json 106
 * @example mixStrength({ concentrate_mL: 14.7868, water_mL: 946.353 }).perWater_frac // 0.0156
 */
export function mixStrength(mix: {
  readonly concentrate_mL: number;
  readonly water_mL: number;
  readonly active_frac?: number;
}): { readonly ofTotal_frac: number; readonly perWater_frac: number } {
  const { concentrate_mL, water_mL, active_frac = 1 } = mix;
  within("concentrate_mL", concentrate_mL, 0.001, 1_000_000);
  within("water_mL", water_mL, 0.001, 10_000_000);
  within("active_frac", active_frac, 0.0001, 1);
  return {
    ofTotal_frac: (concentrate_mL * active_frac) / (concentrate_mL + water_mL),
    perWater_frac: (concentrate_mL * active_frac) / water_mL,
  };
}

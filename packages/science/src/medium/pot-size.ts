import { within } from "../errors/index.ts";

/**
 * The least volume of medium for a wanted time between waterings.
 *
 * V = ET D / (AW p)
 *
 * @param plant use at the greatest leaf area expected [g d⁻¹], 0.1 to 1e5; days wanted between waterings [d], 0.5 to 60; available water, 0.05 to 0.7; depletion allowed, 0.2 to 0.9
 * @returns volume [mL]
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of water
 * @see checks/medium-repot.json 111
 * @example smallestPot_mL({ use_g_d: 60, between_d: 2, available_frac: 0.4, allowed_frac: 0.6 }) // 500
 */
export function smallestPot_mL(plant: {
  readonly use_g_d: number;
  readonly between_d: number;
  readonly available_frac: number;
  readonly allowed_frac: number;
}): number {
  const { use_g_d, between_d, available_frac, allowed_frac } = plant;
  within("use_g_d", use_g_d, 0.1, 1e5);
  within("between_d", between_d, 0.5, 60);
  within("available_frac", available_frac, 0.05, 0.7);
  within("allowed_frac", allowed_frac, 0.2, 0.9);
  return (use_g_d * between_d) / (available_frac * allowed_frac);
}

/**
 * The greatest volume that still dries and breathes in the first month after repotting.
 *
 * dry-down V AW p / ET at most `longest`; airless (0.20 − AS) V / ET at most 48 h
 *
 * @param plant use in the first month [g d⁻¹], 0.1 to 1e5; longest dry-down [d], 2 to 30 (7 warm, 10 cool); available water, 0.05 to 0.7; depletion allowed, 0.2 to 0.9; air after draining, 0 to 0.9
 * @returns volume [mL]; where it is below the smallest pot the medium is wrong, or it takes two steps or a cut
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of water
 * @example largestPot_mL({ use_g_d: 30, longest_d: 7, available_frac: 0.4, allowed_frac: 0.6, air_frac: 0.15 }) // 875
 */
export function largestPot_mL(plant: {
  readonly use_g_d: number;
  readonly longest_d: number;
  readonly available_frac: number;
  readonly allowed_frac: number;
  readonly air_frac: number;
}): number {
  const { use_g_d, longest_d, available_frac, allowed_frac, air_frac } = plant;
  within("use_g_d", use_g_d, 0.1, 1e5);
  within("longest_d", longest_d, 2, 30);
  within("available_frac", available_frac, 0.05, 0.7);
  within("allowed_frac", allowed_frac, 0.2, 0.9);
  within("air_frac", air_frac, 0, 0.9);
  const byDrying = (use_g_d * longest_d) / (available_frac * allowed_frac);
  const short = 0.2 - air_frac;
  return short <= 0 ? byDrying : Math.min(byDrying, (2 * use_g_d) / short);
}

/**
 * How much more a plant grows in a larger pot.
 *
 * (V2/V1)^0.516: 43 % more in a pot of twice the volume
 *
 * @param pots ratio of volumes, 0.05 to 20; exponent, 0.1 to 1, 0.516 unless given
 * @returns ratio of biomass
 * @throws QuantityError outside those ranges
 * @source Poorter2012
 * @see checks/medium-repot.json 087
 * @example biomassRatio({ volumeRatio: 2 }) // 1.43
 */
export function biomassRatio(pots: { readonly volumeRatio: number; readonly exponent?: number }): number {
  within("volumeRatio", pots.volumeRatio, 0.05, 20);
  within("exponent", pots.exponent ?? 0.516, 0.1, 1);
  return pots.volumeRatio ** (pots.exponent ?? 0.516);
}

/**
 * Dry mass that a pot carries without holding its plant back: trained plants exceed it by far, which is what keeps them small.
 *
 * 1 g dry mass per litre
 *
 * @param medium_mL volume of the medium [mL], 10 to 1e6
 * @returns dry mass [g]
 * @throws QuantityError outside that range
 * @source Poorter2012
 * @see checks/medium-repot.json 089
 * @example unrestrictedMass_g(500) // 0.5
 */
export function unrestrictedMass_g(medium_mL: number): number {
  within("medium_mL", medium_mL, 10, 1e6);
  return medium_mL / 1000;
}

/**
 * How firmly a pot stands: weight over its base against the crown leaning by 10°.
 *
 * m b / (c h tan 10°); at least 1.3 is wanted
 *
 * @param pot whole wet mass [g], 10 to 1e6; half the width of the base [cm], 0.5 to 100; mass of the crown with fruit [g], 0.1 to 1e5; height of its centre [cm], 1 to 300
 * @returns ratio; below 1.3 a draught may tip it
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example standsFirm({ whole_g: 900, halfBase_cm: 4, crown_g: 150, centre_cm: 25 }) // 5.44
 */
export function standsFirm(pot: {
  readonly whole_g: number;
  readonly halfBase_cm: number;
  readonly crown_g: number;
  readonly centre_cm: number;
}): number {
  within("whole_g", pot.whole_g, 10, 1e6);
  within("halfBase_cm", pot.halfBase_cm, 0.5, 100);
  within("crown_g", pot.crown_g, 0.1, 1e5);
  within("centre_cm", pot.centre_cm, 1, 300);
  return (pot.whole_g * pot.halfBase_cm) / (pot.crown_g * pot.centre_cm * Math.tan(Math.PI / 18));
}

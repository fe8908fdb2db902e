import { within } from "../errors/index.ts";

/**
 * What a peat medium holds once it has been dry: it never takes up as much again until it is soaked.
 *
 * CC − 0.215 D w
 *
 * @param medium water after draining, 0 to 1; how far it dried, 0 (water left at wilting) to 1 (air-dry); share of peat, 0 to 1
 * @returns share of water after the next watering from above, not below 0
 * @throws QuantityError outside those ranges
 * @source Bartley2023
 * @see checks/medium-repot.json 101
 * @example rewettedWater_frac({ water_frac: 0.65, dried_frac: 1, peat_frac: 1 }) // 0.435
 */
export function rewettedWater_frac(medium: {
  readonly water_frac: number;
  readonly dried_frac: number;
  readonly peat_frac: number;
}): number {
  within("water_frac", medium.water_frac, 0, 1);
  within("dried_frac", medium.dried_frac, 0, 1);
  within("peat_frac", medium.peat_frac, 0, 1);
  return Math.max(0, medium.water_frac - 0.215 * medium.dried_frac * medium.peat_frac);
}

/**
 * Pine bark after half a year in the heap, as volume points: an order of magnitude, for the two changes do not cancel.
 *
 * air − 0.172, water + 0.214
 *
 * @param bark air, 0.172 to 0.9, and water after draining, 0 to 0.78, when fresh
 * @returns both when aged
 * @throws QuantityError outside those ranges
 * @source PineBark2012
 * @see checks/medium-repot.json 102
 * @example agedBark({ air_frac: 0.33, water_frac: 0.475 }).air_frac // 0.158
 */
export function agedBark(bark: { readonly air_frac: number; readonly water_frac: number }): {
  readonly air_frac: number;
  readonly water_frac: number;
} {
  within("air_frac", bark.air_frac, 0.172, 0.9);
  within("water_frac", bark.water_frac, 0, 0.78);
  return { air_frac: bark.air_frac - 0.172, water_frac: bark.water_frac + 0.214 };
}

/**
 * Air of a medium that has aged in its pot.
 *
 * AS (1 − drift)^years; what air loses water gains
 *
 * @param pot air when fresh, 0 to 0.9; age [d], 0 to 4000; loss of air a year, 0 to 0.8 (peat and perlite 0.15, bark and coir 0.3, mineral 0.05)
 * @returns share of air now
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example agedAir_frac({ air_frac: 0.2, age_d: 365, yearlyLoss_frac: 0.3 }) // 0.14
 */
export function agedAir_frac(pot: {
  readonly air_frac: number;
  readonly age_d: number;
  readonly yearlyLoss_frac: number;
}): number {
  within("air_frac", pot.air_frac, 0, 0.9);
  within("age_d", pot.age_d, 0, 4000);
  within("yearlyLoss_frac", pot.yearlyLoss_frac, 0, 0.8);
  return pot.air_frac * (1 - pot.yearlyLoss_frac) ** (pot.age_d / 365);
}

/**
 * Share of a pot that its roots fill; half of it is taken from the air, half from the water.
 *
 * φ = dry roots / (dry matter share × density × V)
 *
 * @param pot dry mass of roots [g], 0 to 1e4; dry matter of roots, 0.05 to 0.3; their density [g mL⁻¹], 0.8 to 1.2, 1 unless given; volume of the medium [mL], 10 to 1e6
 * @returns share, not above 1
 * @throws QuantityError outside those ranges
 * @source our assumption; dry matter of fine roots is from memory
 * @see checks/medium-repot.json 108
 * @example rootVolume_frac({ rootDry_g: 6, rootDryMatter_frac: 0.1, medium_mL: 500 }) // 0.12
 */
export function rootVolume_frac(pot: {
  readonly rootDry_g: number;
  readonly rootDryMatter_frac: number;
  readonly medium_mL: number;
  readonly rootDensity_g_mL?: number;
}): number {
  within("rootDry_g", pot.rootDry_g, 0, 1e4);
  within("rootDryMatter_frac", pot.rootDryMatter_frac, 0.05, 0.3);
  within("medium_mL", pot.medium_mL, 10, 1e6);
  within("rootDensity_g_mL", pot.rootDensity_g_mL ?? 1, 0.8, 1.2);
  const roots_mL = pot.rootDry_g / (pot.rootDryMatter_frac * (pot.rootDensity_g_mL ?? 1));
  return Math.min(1, roots_mL / pot.medium_mL);
}

/**
 * How pot-bound a plant is: one point each of four signs, and one for age; two and more want repotting soon.
 *
 * dry-down below 60 % of what it was at equal demand; water at capacity down by more than 15 %; roots circling or out of the
 * holes; water running through or standing over 60 s; more than 12 months in the medium
 *
 * @param pot dry-down now over that 60 to 90 d after potting, 0 to 5; water at capacity now over then, 0 to 2; roots seen circling; water stands [s], 0 to 3600; runs straight through; age of the medium [d], 0 to 4000
 * @returns score, 0 to 5; whether a larger pot would help; whether fresh medium in the same pot would
 * @throws QuantityError outside those ranges
 * @source our assumption; signs are common practice, no source
 * @example potBound({ dryDown_frac: 0.5, capacityLeft_frac: 1, rootsCircling: false, standing_s: 5, runsThrough: false, age_d: 200 }).score // 1
 */
export function potBound(pot: {
  readonly dryDown_frac: number;
  readonly capacityLeft_frac: number;
  readonly rootsCircling: boolean;
  readonly standing_s: number;
  readonly runsThrough: boolean;
  readonly age_d: number;
}): { readonly score: number; readonly biggerPot: boolean; readonly freshMedium: boolean } {
  within("dryDown_frac", pot.dryDown_frac, 0, 5);
  within("capacityLeft_frac", pot.capacityLeft_frac, 0, 2);
  within("standing_s", pot.standing_s, 0, 3600);
  within("age_d", pot.age_d, 0, 4000);
  const quick = pot.dryDown_frac < 0.6;
  const less = pot.capacityLeft_frac < 0.85;
  const blocked = pot.runsThrough || pot.standing_s > 60;
  const signs = [quick, less, pot.rootsCircling, blocked, pot.age_d >= 365];
  return {
    score: signs.filter(Boolean).length,
    biggerPot: (quick || pot.rootsCircling) && !blocked,
    freshMedium: less || blocked || pot.age_d >= 365,
  };
}

import { within } from "../errors/index.ts";

/**
 * How much smaller a mix is than its parts, from masses: fine parts slip between coarse ones.
 *
 * s = 1 − Σ fi BDi / BDmix, by volumes of the loose parts
 *
 * @param mix shares of the parts by volume, each 0 to 1, together 1; their dry densities [g mL⁻¹], 0.02 to 2; dry density of a test mix [g mL⁻¹], 0.02 to 2
 * @returns shrinkage; below 0 when the test mix was filled more loosely than its parts
 * @throws QuantityError outside those ranges, or when the shares do not make up 1
 * @source BrownPokorny1975 for shrinkage; balance of mass
 * @see checks/medium-repot.json 054
 * @example blendShrinkage_frac({ parts_frac: [0.6, 0.4], densities_g_mL: [0.09, 0.11], bulkDensity_g_mL: 0.108 }) // 0.093
 */
export function blendShrinkage_frac(mix: {
  readonly parts_frac: readonly number[];
  readonly densities_g_mL: readonly number[];
  readonly bulkDensity_g_mL: number;
}): number {
  within("bulkDensity_g_mL", mix.bulkDensity_g_mL, 0.02, 2);
  return 1 - looseDensity(mix) / mix.bulkDensity_g_mL;
}

function looseDensity(mix: {
  readonly parts_frac: readonly number[];
  readonly densities_g_mL: readonly number[];
}): number {
  const { parts_frac, densities_g_mL } = mix;
  within("parts_n", parts_frac.length, 1, 20);
  within("densities_n", densities_g_mL.length, parts_frac.length, parts_frac.length);
  for (const part of parts_frac) within("parts_frac", part, 0, 1);
  for (const density of densities_g_mL) within("densities_g_mL", density, 0.02, 2);
  const together_frac = parts_frac.reduce((sum, each) => sum + each, 0);
  within("together_frac", together_frac, 0.999, 1.001);
  return parts_frac.reduce((sum, part, i) => sum + part * (densities_g_mL[i] as number), 0);
}

/**
 * Dry density of a mix from its parts and its shrinkage. Mass, cost and nutrients may be added up so; air and water may not.
 *
 * BD = Σ fi BDi / (1 − s)
 *
 * @param mix shares of the parts, together 1; their dry densities [g mL⁻¹], 0.02 to 2; shrinkage, 0 to 0.3
 * @returns dry density [g mL⁻¹]
 * @throws QuantityError outside those ranges
 * @source BrownPokorny1975
 * @example blendDensity_g_mL({ parts_frac: [0.7, 0.3], densities_g_mL: [0.1, 0.1], shrinkage_frac: 0.05 }) // 0.105
 */
export function blendDensity_g_mL(mix: {
  readonly parts_frac: readonly number[];
  readonly densities_g_mL: readonly number[];
  readonly shrinkage_frac: number;
}): number {
  within("shrinkage_frac", mix.shrinkage_frac, 0, 0.3);
  return looseDensity(mix) / (1 - mix.shrinkage_frac);
}

/**
 * A guess at the air of a mix nobody has tested: the mean of its parts, less what fine parts take, with a wide band.
 *
 * mean by volume − loss, band ± 0.08. Only a porosity test makes it a number.
 *
 * @param mix shares of the parts, together 1; air of each part in this pot, 0 to 0.9; loss to fine parts, 0 to 0.2, 0.04 unless given
 * @returns middle and ends of the band, none below 0
 * @throws QuantityError outside those ranges
 * @source our assumption; GabrielAltlandOwen2009 found that air does not blend in a line
 * @example blendAir({ parts_frac: [0.5, 0.5], airs_frac: [0.1, 0.3] }).air_frac // 0.16
 */
export function blendAir(mix: {
  readonly parts_frac: readonly number[];
  readonly airs_frac: readonly number[];
  readonly loss_frac?: number;
}): { readonly air_frac: number; readonly low_frac: number; readonly high_frac: number } {
  const { parts_frac, airs_frac, loss_frac = 0.04 } = mix;
  within("loss_frac", loss_frac, 0, 0.2);
  within("parts_n", parts_frac.length, 1, 20);
  within("airs_n", airs_frac.length, parts_frac.length, parts_frac.length);
  for (const part of parts_frac) within("parts_frac", part, 0, 1);
  for (const air of airs_frac) within("airs_frac", air, 0, 0.9);
  const together_frac = parts_frac.reduce((sum, each) => sum + each, 0);
  within("together_frac", together_frac, 0.999, 1.001);
  const mean = parts_frac.reduce((sum, part, i) => sum + part * (airs_frac[i] as number), 0);
  // One part alone is no mix: nothing slips between.
  const alone = parts_frac.filter((part) => part > 0).length <= 1;
  const air_frac = Math.max(0, mean - (alone ? 0 : loss_frac));
  return { air_frac, low_frac: Math.max(0, air_frac - 0.08), high_frac: Math.min(0.95, air_frac + 0.08) };
}

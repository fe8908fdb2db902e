import { within } from "../errors/index.ts";

/**
 * Yield beside salts in the root zone, by threshold and slope. For peppers a caution, never a forecast of yield.
 *
 * Yr = 1 − slope (ECe − threshold), 0 to 1; peppers 1.5 mS cm⁻¹ and 0.14
 *
 * @param soil conductivity of the saturated extract [mS cm⁻¹], 0 to 60; threshold [mS cm⁻¹], 0 to 20, 1.5 unless given; slope [share for each mS cm⁻¹], 0.005 to 0.6, 0.14 unless given
 * @returns share of the full yield
 * @throws QuantityError outside those ranges
 * @source Maas1990
 * @see checks/medium-repot.json 055 to 060
 * @example saltYield_frac({ saturated_mS_cm: 2.2 }) // 0.902
 */
export function saltYield_frac(soil: {
  readonly saturated_mS_cm: number;
  readonly threshold_mS_cm?: number;
  readonly slope_per_mS_cm?: number;
}): number {
  const { saturated_mS_cm, threshold_mS_cm = 1.5, slope_per_mS_cm = 0.14 } = soil;
  within("saturated_mS_cm", saturated_mS_cm, 0, 60);
  within("threshold_mS_cm", threshold_mS_cm, 0, 20);
  within("slope_per_mS_cm", slope_per_mS_cm, 0.005, 0.6);
  return Math.min(1, Math.max(0, 1 - slope_per_mS_cm * (saturated_mS_cm - threshold_mS_cm)));
}

/**
 * Salts at which the yield line has fallen by a share.
 *
 * ECe = threshold + decline / slope
 *
 * @param crop decline, 0 to 1; threshold [mS cm⁻¹], 0 to 20, 1.5 unless given; slope, 0.005 to 0.6, 0.14 unless given
 * @returns conductivity of the saturated extract [mS cm⁻¹]
 * @throws QuantityError outside those ranges
 * @source Maas1990
 * @see checks/medium-repot.json 061 to 064
 * @example saltAtDecline_mS_cm({ decline_frac: 0.1, threshold_mS_cm: 1.7, slope_per_mS_cm: 0.12 }) // 2.53
 */
export function saltAtDecline_mS_cm(crop: {
  readonly decline_frac: number;
  readonly threshold_mS_cm?: number;
  readonly slope_per_mS_cm?: number;
}): number {
  const { decline_frac, threshold_mS_cm = 1.5, slope_per_mS_cm = 0.14 } = crop;
  within("decline_frac", decline_frac, 0, 1);
  within("threshold_mS_cm", threshold_mS_cm, 0, 20);
  within("slope_per_mS_cm", slope_per_mS_cm, 0.005, 0.6);
  return threshold_mS_cm + decline_frac / slope_per_mS_cm;
}

/**
 * Water that leads to a saturated extract in a field soil, at the leaching that is usual there.
 *
 * ECw = ECe / 1.5
 *
 * @param saturated_mS_cm conductivity of the saturated extract [mS cm⁻¹], 0 to 60
 * @returns conductivity of the water [mS cm⁻¹]
 * @throws QuantityError outside that range
 * @source FAO29
 * @see checks/medium-repot.json 066
 * @example waterForExtract_mS_cm(1.5) // 1
 */
export function waterForExtract_mS_cm(saturated_mS_cm: number): number {
  within("saturated_mS_cm", saturated_mS_cm, 0, 60);
  return saturated_mS_cm / 1.5;
}

/**
 * Water to give in all when a share of it must leach.
 *
 * applied = use / (1 − LR)
 *
 * @param field use of the crop [mm], 0 to 5000; share that leaches, 0 to 0.9
 * @returns depth of water [mm]
 * @throws QuantityError outside those ranges
 * @source FAO29
 * @see checks/medium-repot.json 067
 * @example appliedWithLeaching_mm({ used_mm: 800, leaching_frac: 0.1 }) // 889
 */
export function appliedWithLeaching_mm(field: {
  readonly used_mm: number;
  readonly leaching_frac: number;
}): number {
  within("used_mm", field.used_mm, 0, 5000);
  within("leaching_frac", field.leaching_frac, 0, 0.9);
  return field.used_mm / (1 - field.leaching_frac);
}

/**
 * Share of a pour that ran out below.
 *
 * LF = leachate / applied; 0.15 and less is routine
 *
 * @param pour water that ran out and water poured [mL], 0 to 1e5, out not above poured
 * @returns share
 * @throws QuantityError outside those ranges
 * @source ENH1268
 * @see checks/medium-repot.json 086
 * @example leachedShare_frac({ leachate_mL: 21, poured_mL: 140 }) // 0.15
 */
export function leachedShare_frac(pour: {
  readonly leachate_mL: number;
  readonly poured_mL: number;
}): number {
  within("poured_mL", pour.poured_mL, 0.1, 1e5);
  within("leachate_mL", pour.leachate_mL, 0, 1e5);
  within("leachate_mL", pour.leachate_mL, 0, pour.poured_mL);
  return pour.leachate_mL / pour.poured_mL;
}

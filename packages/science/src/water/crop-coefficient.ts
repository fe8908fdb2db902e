import { within } from "../errors/index.ts";

/** Crop values of sweet pepper (bell) in the field. FAO56 Tables 12, 17 and 22; root depth is the lesser of 0.5 to 1.0 m. */
export const sweetPepperCrop = {
  cropCoefficientInitial: 0.6,
  cropCoefficientMiddle: 1.05,
  cropCoefficientEnd: 0.9,
  basalInitial: 0.15,
  basalMiddle: 1,
  basalEnd: 0.8,
  height_m: 0.7,
  depletion_frac: 0.3,
  rootDepthMin_m: 0.5,
} as const;

/** Lengths of the growth stages of sweet pepper in the field [d]. FAO56 Table 11; the second row from memory but its total. */
export const sweetPepperStages = {
  "arid, long season": { initial_d: 30, development_d: 40, middle_d: 110, late_d: 30 },
  "Europe and Mediterranean": { initial_d: 30, development_d: 35, middle_d: 40, late_d: 20 },
} as const;

const heightTerm = (wind2m_m_s: number, humidityMin_frac: number, height_m: number): number =>
  (0.04 * (wind2m_m_s - 2) - 0.004 * (100 * humidityMin_frac - 45)) * (height_m / 3) ** 0.3;

type Climate = {
  readonly wind2m_m_s: number;
  readonly humidityMin_frac: number;
  readonly height_m: number;
};

function checkClimate(climate: Climate): void {
  within("wind2m_m_s", climate.wind2m_m_s, 1, 6);
  within("humidityMin_frac", climate.humidityMin_frac, 0.2, 0.8);
  within("height_m", climate.height_m, 0.05, 10);
}

/**
 * Crop coefficient of the middle or late stage, adjusted for wind and dry air.
 *
 * Kc = Kc(table) + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h/3)^0.3, for table values above 0.45
 *
 * @param crop table value, 0.45 to 1.5; wind at 2 m [m s⁻¹], 1 to 6; lowest humidity [share], 0.2 to 0.8; plant height [m], 0.05 to 10
 * @returns coefficient; grows with wind, falls with humidity
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 62 and 70
 * @see checks/air-water.json 086-089
 * @example adjustedCropCoefficient({ cropCoefficient: 1.05, wind2m_m_s: 4, humidityMin_frac: 0.25, height_m: 0.7 }) // 1.153
 */
export function adjustedCropCoefficient(crop: Climate & { readonly cropCoefficient: number }): number {
  within("cropCoefficient", crop.cropCoefficient, 0.45, 1.5);
  checkClimate(crop);
  return crop.cropCoefficient + heightTerm(crop.wind2m_m_s, crop.humidityMin_frac, crop.height_m);
}

/**
 * Upper limit of evaporation and transpiration from a wet, cropped surface, relative to reference ET.
 *
 * Kc,max = max{1.2 + [0.04 (u2 − 2) − 0.004 (RHmin − 45)] (h/3)^0.3, Kcb + 0.05}
 *
 * @param crop basal coefficient, 0 to 1.5; wind at 2 m [m s⁻¹], 1 to 6; lowest humidity [share], 0.2 to 0.8; plant height [m], 0.05 to 10
 * @returns coefficient
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 72
 * @example maximumCropCoefficient({ basalCoefficient: 1, wind2m_m_s: 2, humidityMin_frac: 0.45, height_m: 0.7 }) // 1.2
 */
export function maximumCropCoefficient(crop: Climate & { readonly basalCoefficient: number }): number {
  within("basalCoefficient", crop.basalCoefficient, 0, 1.5);
  checkClimate(crop);
  const surface = 1.2 + heightTerm(crop.wind2m_m_s, crop.humidityMin_frac, crop.height_m);
  return Math.max(surface, crop.basalCoefficient + 0.05);
}

/**
 * Coefficient between two stages, along a straight line.
 *
 * K = K(before) + share (K(after) − K(before))
 *
 * @param stage coefficient at its start and end, 0 to 1.5; share of the stage that has passed, 0 to 1
 * @returns coefficient
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 66
 * @see checks/air-water.json 091
 * @example coefficientWithinStage({ coefficientStart: 0.2, coefficientEnd: 0.96, stage_frac: 0.5 }) // 0.58
 */
export function coefficientWithinStage(stage: {
  readonly coefficientStart: number;
  readonly coefficientEnd: number;
  readonly stage_frac: number;
}): number {
  const { coefficientStart, coefficientEnd, stage_frac } = stage;
  within("coefficientStart", coefficientStart, 0, 1.5);
  within("coefficientEnd", coefficientEnd, 0, 1.5);
  within("stage_frac", stage_frac, 0, 1);
  return coefficientStart + stage_frac * (coefficientEnd - coefficientStart);
}

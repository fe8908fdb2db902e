import { within } from "../errors/index.ts";

/** Ways to read the salts of a medium. A value without its method is no value: 2.6 is extreme, normal or low. */
export const saltMethods = ["one to two", "saturated", "pour-through"] as const;
export type SaltMethod = (typeof saltMethods)[number];

export const saltClasses = ["very low", "low", "normal", "high", "very high", "extreme"] as const;
export type SaltClass = (typeof saltClasses)[number];

/** Upper ends of the classes by method [mS/cm]; the same line of each method means the same. */
const ENDS_mS_cm: Readonly<Record<SaltMethod, readonly number[]>> = {
  "one to two": [0.3, 0.8, 1.3, 1.8, 2.3],
  saturated: [0.8, 2.0, 3.5, 5.0, 6.0],
  "pour-through": [1.0, 2.6, 4.6, 6.5, 7.8],
};

/**
 * Class of a reading of salts, by the method it was taken with.
 *
 * upper ends 0.3, 0.8, 1.3, 1.8, 2.3 (one part medium, two of water); 0.8, 2, 3.5, 5, 6 (saturated); 1, 2.6, 4.6, 6.5, 7.8 (pour-through)
 *
 * @param reading conductivity at 25 °C [mS cm⁻¹], 0 to 30; the method
 * @returns very low to extreme
 * @throws QuantityError outside that range
 * @source UMassExtension
 * @see checks/medium-repot.json 069
 * @example saltClass({ ec_mS_cm: 2.6, method: "saturated" }) // "normal"
 */
export function saltClass(reading: { readonly ec_mS_cm: number; readonly method: SaltMethod }): SaltClass {
  within("ec_mS_cm", reading.ec_mS_cm, 0, 30);
  const at = ENDS_mS_cm[reading.method].findIndex((end) => reading.ec_mS_cm <= end + 1e-9);
  return saltClasses[at < 0 ? 5 : at] as SaltClass;
}

/**
 * A reading of salts as another method would give it, when the pot is not known.
 *
 * Straight lines through the ends of the classes and 0; beyond the last end the last line goes on.
 *
 * @param reading conductivity [mS cm⁻¹], 0 to 30; its method; the method wanted
 * @returns conductivity [mS cm⁻¹]
 * @throws QuantityError outside that range
 * @source UMassExtension for the ends
 * @see checks/medium-repot.json 070 to 074
 * @example convertedSalt_mS_cm({ ec_mS_cm: 0.8, method: "one to two", wanted: "saturated" }) // 2
 */
export function convertedSalt_mS_cm(reading: {
  readonly ec_mS_cm: number;
  readonly method: SaltMethod;
  readonly wanted: SaltMethod;
}): number {
  const { ec_mS_cm, method, wanted } = reading;
  within("ec_mS_cm", ec_mS_cm, 0, 30);
  const from = [0, ...ENDS_mS_cm[method]];
  const to = [0, ...ENDS_mS_cm[wanted]];
  let i = 1;
  while (i < from.length - 1 && ec_mS_cm > (from[i] as number)) i += 1;
  const [low, high] = [from[i - 1] as number, from[i] as number];
  const share = (ec_mS_cm - low) / (high - low);
  return (to[i - 1] as number) + share * ((to[i] as number) - (to[i - 1] as number));
}

/**
 * What a pour-through reads beside a saturated paste of the same pot: the paste thins what the pot holds.
 *
 * TP / CC; the pot's own is better than the table, and near 1.05 to 1.1 in a shallow one
 *
 * @param pot total porosity, 0.25 to 0.99; water after draining, 0.05 to 0.99, not above it
 * @returns ratio, 1 and more
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of mass
 * @see checks/medium-repot.json 075
 * @example pourThroughRatio({ porosity_frac: 0.85, water_frac: 0.65 }) // 1.31
 */
export function pourThroughRatio(pot: {
  readonly porosity_frac: number;
  readonly water_frac: number;
}): number {
  within("porosity_frac", pot.porosity_frac, 0.25, 0.99);
  within("water_frac", pot.water_frac, 0.05, 0.99);
  within("water_frac", pot.water_frac, 0.05, Math.min(0.99, pot.porosity_frac));
  return pot.porosity_frac / pot.water_frac;
}

/**
 * What a saturated paste reads beside one part of medium in two of water.
 *
 * (2 + θ) / TP
 *
 * @param sample total porosity, 0.25 to 0.99; water in the sample, 0 to 1
 * @returns ratio
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of mass
 * @see checks/medium-repot.json 076
 * @example pasteRatio({ porosity_frac: 0.85, water_frac: 0.25 }) // 2.65
 */
export function pasteRatio(sample: { readonly porosity_frac: number; readonly water_frac: number }): number {
  within("porosity_frac", sample.porosity_frac, 0.25, 0.99);
  within("water_frac", sample.water_frac, 0, 1);
  return (2 + sample.water_frac) / sample.porosity_frac;
}

/** Words of the other published scale for saturated extracts. */
export const saltRatings = ["low", "acceptable", "optimum", "high", "very high"] as const;

/**
 * Rating of a saturated extract on the other published scale.
 *
 * below 0.75 low, to 2 acceptable, to 3.5 optimum, to 5 high, above very high
 *
 * @param saturated_mS_cm conductivity of the extract [mS cm⁻¹], 0 to 30
 * @returns the rating
 * @throws QuantityError outside that range
 * @source Warncke
 * @see checks/medium-repot.json 077
 * @example saltRating(3) // "optimum"
 */
export function saltRating(saturated_mS_cm: number): (typeof saltRatings)[number] {
  within("saturated_mS_cm", saturated_mS_cm, 0, 30);
  const at = [0.75, 2, 3.5, 5].findIndex((end) => saturated_mS_cm < end);
  return saltRatings[at < 0 ? 4 : at] as (typeof saltRatings)[number];
}

/**
 * Dissolved matter from conductivity.
 *
 * TDS = factor × EC
 *
 * @param water conductivity [mS cm⁻¹], 0 to 30; factor [mg cm L⁻¹ mS⁻¹], 400 to 900, 640 unless given
 * @returns dissolved matter [mg L⁻¹]
 * @throws QuantityError outside those ranges
 * @source UMassExtension
 * @see checks/medium-repot.json 078
 * @example dissolved_mg_L({ ec_mS_cm: 2.75 }) // 1760
 */
export function dissolved_mg_L(water: { readonly ec_mS_cm: number; readonly saltFactor?: number }): number {
  within("ec_mS_cm", water.ec_mS_cm, 0, 30);
  within("saltFactor", water.saltFactor ?? 640, 400, 900);
  return water.ec_mS_cm * (water.saltFactor ?? 640);
}

import { within } from "../errors/index.ts";

/**
 * Dry mass of one fruit that lacks nothing, at an age.
 *
 * w = W x² (3 − 2x), x = age over days to ripe: beta growth with its peak halfway
 *
 * @param fruit full dry mass [g], 0.001 to 100; days from flower to ripe [d], 5 to 300; age [d], 0 to 1000
 * @returns dry mass [g], full from ripe on
 * @throws QuantityError outside those ranges
 * @source Wubs2009; the sigmoid our assumption
 * @example potentialDryMass_g({ dryMassFull_g: 8, toRipe_d: 60, age_d: 30 }) // 4
 */
export function potentialDryMass_g(fruit: {
  readonly dryMassFull_g: number;
  readonly toRipe_d: number;
  readonly age_d: number;
}): number {
  const { dryMassFull_g, toRipe_d, age_d } = fruit;
  within("dryMassFull_g", dryMassFull_g, 0.001, 100);
  within("toRipe_d", toRipe_d, 5, 300);
  within("age_d", age_d, 0, 1000);
  return along(dryMassFull_g, age_d / toRipe_d);
}

/**
 * Share of a full fruit at a share of its way, for callers in a loop: nothing is checked.
 *
 * @source Wubs2009; the sigmoid our assumption
 */
export function along(full: number, way: number): number {
  const x = Math.min(1, Math.max(0, way));
  return full * x * x * (3 - 2 * x);
}

/**
 * What one fruit would take on a day if it lacked nothing: its sink.
 *
 * w(t + 1) − w(t); at most 1.5 W/D
 *
 * @param fruit as for its mass
 * @returns dry mass [g d⁻¹], 0 or more
 * @throws QuantityError as for its mass
 * @source Wubs2009; the sigmoid our assumption
 * @example fruitSink_g_d({ dryMassFull_g: 8, toRipe_d: 60, age_d: 30 }) // 0.200
 */
export function fruitSink_g_d(fruit: {
  readonly dryMassFull_g: number;
  readonly toRipe_d: number;
  readonly age_d: number;
}): number {
  const now_g = potentialDryMass_g(fruit);
  return along(fruit.dryMassFull_g, (fruit.age_d + 1) / fruit.toRipe_d) - now_g;
}

/**
 * Dry share of a green bell fruit by its age. Right for green bells only, not for thin-walled chillies.
 *
 * 5 + 7.2 exp(−7.5 age/40), in per cent
 *
 * @param fruit age [d], 0 to 1000; days that its growth lasts [d], 5 to 300, 40 unless given; final share, 0.01 to 0.5, 0.05 unless given; what a newly set fruit has beyond, 0 to 0.5, 0.072 unless given; how fast that goes, 0.1 to 50, 7.5 unless given
 * @returns dry share
 * @throws QuantityError outside those ranges
 * @source DSSAT48 FreshWt.for
 * @see checks/growth-fruit.json 142-146
 * @example greenDryMatter_frac({ age_d: 10 }) // 0.0610
 */
export function greenDryMatter_frac(fruit: {
  readonly age_d: number;
  readonly toRipe_d?: number;
  readonly dryFinal_frac?: number;
  readonly dryExtra_frac?: number;
  readonly dryDecay?: number;
}): number {
  const { age_d, toRipe_d = 40, dryFinal_frac = 0.05, dryExtra_frac = 0.072, dryDecay = 7.5 } = fruit;
  within("age_d", age_d, 0, 1000);
  within("toRipe_d", toRipe_d, 5, 300);
  within("dryFinal_frac", dryFinal_frac, 0.01, 0.5);
  within("dryExtra_frac", dryExtra_frac, 0, 0.5);
  within("dryDecay", dryDecay, 0.1, 50);
  return dryFinal_frac + dryExtra_frac * Math.exp((-dryDecay * age_d) / toRipe_d);
}

/** Slope and middle of the three courses [1/(°C d), °C d above 0]. Derived from the windows of Homma2026. */
const COURSES = {
  volume: [0.0077, 308],
  water: [0.0077, 508],
  "dry mass": [0.0051, 762],
} as const;
export type FruitPart = keyof typeof COURSES;
export const fruitParts = ["volume", "water", "dry mass"] as const satisfies readonly FruitPart[];

/**
 * How far the volume, water or dry mass of a bell has come after so much warmth above 0 °C since its flower opened.
 *
 * exp(−exp(−b (τ − τm))): Gompertz
 *
 * @param fruit thermal time above 0 °C since the flower [°C d], 0 to 10000; which of the three
 * @returns share of the final, 0 to 1
 * @throws QuantityError outside that range
 * @source Homma2026; slopes derived from its windows
 * @example fruitCourse_frac({ thermalTime_Cd: 600, part: "volume" }) // 0.90
 */
export function fruitCourse_frac(fruit: {
  readonly thermalTime_Cd: number;
  readonly part: FruitPart;
}): number {
  within("thermalTime_Cd", fruit.thermalTime_Cd, 0, 10_000);
  const [slope, middle_Cd] = COURSES[fruit.part];
  return Math.exp(-Math.exp(-slope * (fruit.thermalTime_Cd - middle_Cd)));
}

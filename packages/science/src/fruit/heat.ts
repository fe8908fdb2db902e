import { within } from "../errors/index.ts";

/** Weights of the three that count, and of the older single factor. AlOthman2011 for 16; AOAC995 for the others, from memory. */
const PER_PPM = 16;
const AOAC_MAIN = 16.1;
const AOAC_NORDIHYDRO = 9.3;
/** More than pure capsaicin weighs; hotter than any fruit on record; more than fruit can hold. The sheet's list of bad input. */
const PURE_ppm = 1_000_000;
const FRUIT_MOST_SHU = 3_200_000;
const FRUIT_MOST_ppm = 200_000;

/**
 * Scoville heat units from a laboratory's content of capsaicin and its like, on the same basis (dry or fresh) as the content.
 *
 * 16 × µg/g of capsaicin and dihydrocapsaicin together
 *
 * @param content capsaicin and its like [µg g⁻¹], 0 to 1000000; factor, 10 to 20, 16 unless given
 * @returns Scoville heat units
 * @throws QuantityError outside those ranges
 * @source AlOthman2011
 * @see checks/growth-fruit.json 078-080, 091
 * @example scoville({ content_ug_g: 4249 }) // 67984
 */
export function scoville(content: { readonly content_ug_g: number; readonly perPpm?: number }): number {
  const { content_ug_g, perPpm = PER_PPM } = content;
  within("content_ug_g", content_ug_g, 0, PURE_ppm);
  within("perPpm", perPpm, 10, 20);
  return perPpm * content_ug_g;
}

/**
 * Scoville heat units by the weights of the official method, from three capsaicinoids.
 *
 * 16.1 (C + DHC) + 9.3 NDHC
 *
 * @param content capsaicin, dihydrocapsaicin, nordihydrocapsaicin [µg g⁻¹], 0 to 1000000 each
 * @returns Scoville heat units
 * @throws QuantityError outside that range
 * @source AOAC995; weights from memory
 * @see checks/growth-fruit.json 081
 * @example scovilleWeighted({ capsaicin_ug_g: 1000, dihydrocapsaicin_ug_g: 600, nordihydrocapsaicin_ug_g: 100 }) // 26690
 */
export function scovilleWeighted(content: {
  readonly capsaicin_ug_g: number;
  readonly dihydrocapsaicin_ug_g: number;
  readonly nordihydrocapsaicin_ug_g: number;
}): number {
  const { capsaicin_ug_g, dihydrocapsaicin_ug_g, nordihydrocapsaicin_ug_g } = content;
  within("capsaicin_ug_g", capsaicin_ug_g, 0, PURE_ppm);
  within("dihydrocapsaicin_ug_g", dihydrocapsaicin_ug_g, 0, PURE_ppm);
  within("nordihydrocapsaicin_ug_g", nordihydrocapsaicin_ug_g, 0, PURE_ppm);
  return AOAC_MAIN * (capsaicin_ug_g + dihydrocapsaicin_ug_g) + AOAC_NORDIHYDRO * nordihydrocapsaicin_ug_g;
}

/**
 * Factor from dry to fresh basis: the share of its dry product that a fruit was before drying.
 *
 * (1 − water when fresh)/(1 − water when dried)
 *
 * @param fruit share of water when fresh, 0.3 to 0.99, and when dried, 0 to 0.5
 * @returns factor, under 1
 * @throws QuantityError outside those ranges
 * @source KoreanChilli2020
 * @example freshPerDry_frac({ waterFresh_frac: 0.9, waterDried_frac: 0.1 }) // 0.111
 */
export function freshPerDry_frac(fruit: {
  readonly waterFresh_frac: number;
  readonly waterDried_frac: number;
}): number {
  within("waterFresh_frac", fruit.waterFresh_frac, 0.3, 0.99);
  within("waterDried_frac", fruit.waterDried_frac, 0, 0.5);
  return (1 - fruit.waterFresh_frac) / (1 - fruit.waterDried_frac);
}

/**
 * A content or heat on dry basis, carried over to fresh basis.
 *
 * @param given on dry basis [any unit of mass share, or SHU], 0 to 1e9; factor, 0.01 to 1
 * @returns on fresh basis, same unit
 * @throws QuantityError outside those ranges
 * @source KoreanChilli2020
 * @see checks/growth-fruit.json 085-091
 * @example onFreshBasis({ onDry: 38.07, freshPerDry_frac: 0.17 }) // 6.47
 */
export function onFreshBasis(given: { readonly onDry: number; readonly freshPerDry_frac: number }): number {
  within("onDry", given.onDry, 0, 1e9);
  within("freshPerDry_frac", given.freshPerDry_frac, 0.01, 1);
  return given.onDry * given.freshPerDry_frac;
}

/** Upper ends of the classes 0 to 10. HeatScale; those between the first and last from memory. */
export const heatClassEnds = [
  100, 500, 1000, 1500, 2500, 5000, 15_000, 30_000, 50_000, 100_000, 300_000,
] as const;

/**
 * Class of heat, 0 to 10, from Scoville heat units; hotter than the scale stays at 10.
 *
 * @param heat Scoville heat units, 0 to 16000000; upper ends of the classes, rising, those of the scale unless given
 * @returns class
 * @throws QuantityError outside that range
 * @source HeatScale
 * @see checks/growth-fruit.json 092-098
 * @example heatClass({ shu: 4000 }) // 5
 */
export function heatClass(heat: { readonly shu: number; readonly ends?: readonly number[] }): number {
  const { shu, ends = heatClassEnds } = heat;
  within("shu", shu, 0, 16_000_000);
  within("classes_n", ends.length, 1, 100);
  const found = ends.findIndex((end) => shu <= end);
  return found < 0 ? ends.length - 1 : found;
}

/** On which mass a content was given: a number of heat without it means nothing. */
export const heatBases = ["dry", "fresh"] as const;
export type HeatBasis = (typeof heatBases)[number];

/**
 * Whether a printed heat agrees with the content printed beside it.
 *
 * printed within a factor of 1.5 of 16 × content, and possible for fruit
 *
 * @param printed Scoville heat units, 0 to 100000000; content that stands beside it [µg g⁻¹], 0 to 1000000
 * @returns heat that the content means; whether the pair is to be flagged; the ratio between the two
 * @throws QuantityError outside those ranges
 * @source AlOthman2011 for the factor; the tolerance our assumption
 * @see checks/growth-fruit.json 083
 * @example printedHeat({ shu: 142931, content_ug_g: 70728 }).flag // true
 */
export function printedHeat(printed: { readonly shu: number; readonly content_ug_g: number }): {
  readonly shu: number;
  readonly flag: boolean;
  readonly ratio: number;
} {
  within("shu", printed.shu, 0, 1e8);
  const shu = scoville({ content_ug_g: printed.content_ug_g });
  const ratio = shu > 0 ? printed.shu / shu : printed.shu > 0 ? 1e9 : 1;
  const flag =
    ratio > 1.5 || ratio < 1 / 1.5 || printed.shu > FRUIT_MOST_SHU || printed.content_ug_g > FRUIT_MOST_ppm;
  return { shu, flag, ratio };
}

/** Usual heat of dry fruit by what people call a pepper [SHU]. Popular tables; tenfold within one cultivar. */
export const heatRanges = {
  bell: [0, 100],
  ancho: [1000, 1500],
  jalapeno: [2500, 8000],
  serrano: [5000, 25_000],
  cayenne: [25_000, 50_000],
  bird: [50_000, 100_000],
  habanero: [100_000, 350_000],
  superhot: [800_000, 2_200_000],
} as const satisfies Readonly<Record<string, readonly [number, number]>>;
export type HeatType = keyof typeof heatRanges;
export const heatTypes = Object.keys(heatRanges) as readonly HeatType[];

/**
 * Usual heat of a type of pepper, as a range: no look tells it, and one cultivar spreads tenfold.
 *
 * @param type what people call it
 * @returns ends of the range in Scoville heat units, dry basis, and their classes
 * @throws nothing
 * @source our assumption, from popular tables
 * @example usualHeat("jalapeno").high // 8000
 */
export function usualHeat(type: HeatType): {
  readonly low: number;
  readonly high: number;
  readonly classLow_n: number;
  readonly classHigh_n: number;
} {
  const [low, high] = heatRanges[type];
  return { low, high, classLow_n: heatClass({ shu: low }), classHigh_n: heatClass({ shu: high }) };
}

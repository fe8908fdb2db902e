import { within } from "../errors/index.ts";

/** How a ratio of 1:R is meant: one part in R of feed, or one part to R of water. */
export const injectorConventions = ["one in", "one to"] as const;
export type InjectorConvention = (typeof injectorConventions)[number];

const mg_per_g = 1000;

/**
 * Concentration that a dose gives. Exact; the rule of 75 for ounces in 100 gallons is this, rounded.
 *
 * c = 1000 x p + c_w
 *
 * @param dose_g_L product per litre of feed [g/L], 0 to 1000
 * @param content_frac share of the element in the product, 0 to 1
 * @param water_mg_L what the water brings [mg/L], 0 to 10 000
 * @returns concentration [mg/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, the definition; UMassFeed in ounces and gallons
 * @see checks/feed.json FEED-008
 * @example doseConcentration_mg_L({ dose_g_L: 1, content_frac: 0.2 }) // 200
 */
export function doseConcentration_mg_L({
  dose_g_L,
  content_frac,
  water_mg_L = 0,
}: {
  readonly dose_g_L: number;
  readonly content_frac: number;
  readonly water_mg_L?: number;
}): number {
  within("dose_g_L", dose_g_L, 0, 1000);
  within("content_frac", content_frac, 0, 1);
  within("water_mg_L", water_mg_L, 0, 10_000);
  return mg_per_g * dose_g_L * content_frac + water_mg_L;
}

/**
 * Dose of a product for a wanted concentration, less what the water brings; never below nothing.
 *
 * x = (c − c_w) / (1000 p)
 *
 * @param wanted_mg_L wanted concentration [mg/L], 0 to 100 000
 * @param content_frac share of the element in the product, 0.000001 to 1
 * @param water_mg_L what the water brings [mg/L], 0 to 10 000
 * @returns product per litre of feed [g/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, the definition; UMassFeed in ounces and gallons
 * @see checks/feed.json FEED-009
 * @example doseForConcentration_g_L({ wanted_mg_L: 200, content_frac: 0.2 }) // 1
 */
export function doseForConcentration_g_L({
  wanted_mg_L,
  content_frac,
  water_mg_L = 0,
}: {
  readonly wanted_mg_L: number;
  readonly content_frac: number;
  readonly water_mg_L?: number;
}): number {
  within("wanted_mg_L", wanted_mg_L, 0, 100_000);
  within("content_frac", content_frac, 0.000001, 1);
  within("water_mg_L", water_mg_L, 0, 10_000);
  return Math.max(0, wanted_mg_L - water_mg_L) / (mg_per_g * content_frac);
}

/**
 * How many times a stock is thinned by an injector or by hand at 1:R.
 *
 * @param injectorParts the R of 1:R, 1 to 10 000
 * @param convention "one in": one part of stock in R of feed; "one to": one part of stock to R of water
 * @returns litres of feed per litre of stock
 * @throws QuantityError outside that range
 * @source MattsonPractice; pages disagree on the convention, so it is an argument
 * @example thinning({ injectorParts: 15, convention: "one to" }) // 16
 */
export function thinning({
  injectorParts,
  convention = "one in",
}: {
  readonly injectorParts: number;
  readonly convention?: InjectorConvention;
}): number {
  within("injectorParts", injectorParts, 1, 10_000);
  return convention === "one in" ? injectorParts : injectorParts + 1;
}

/**
 * Strength of a stock that an injector thins to the wanted concentration.
 *
 * @param wanted_mg_L concentration of the feed [mg/L], 0 to 100 000
 * @param content_frac share of the element in the product, 0.000001 to 1
 * @param injectorParts the R of 1:R, 1 to 10 000
 * @param convention how 1:R is meant
 * @returns product per litre of stock [g/L]; may be more than dissolves
 * @throws QuantityError outside those ranges
 * @source MattsonPractice question 1
 * @see checks/feed.json FEED-016
 * @example stockStrength_g_L({ wanted_mg_L: 150, content_frac: 0.2, injectorParts: 200 }) // 150
 */
export function stockStrength_g_L({
  wanted_mg_L,
  content_frac,
  injectorParts,
  convention = "one in",
}: {
  readonly wanted_mg_L: number;
  readonly content_frac: number;
  readonly injectorParts: number;
  readonly convention?: InjectorConvention;
}): number {
  return (
    doseForConcentration_g_L({ wanted_mg_L, content_frac }) *
    thinning({ injectorParts, ...(convention && { convention }) })
  );
}

/**
 * Stock to measure by hand into a litre of feed.
 *
 * @param injectorParts the R of 1:R, 1 to 10 000
 * @param convention how 1:R is meant
 * @returns stock per litre of feed [mL/L]
 * @throws QuantityError outside that range
 * @source MattsonPractice
 * @example stockDose_mL_L({ injectorParts: 100 }) // 10
 */
export function stockDose_mL_L({
  injectorParts,
  convention = "one in",
}: {
  readonly injectorParts: number;
  readonly convention?: InjectorConvention;
}): number {
  return 1000 / thinning({ injectorParts, ...(convention && { convention }) });
}

/** Whether a label's percent are grams in 100 g, or grams in 100 mL. */
export const labelBases = ["by mass", "by volume"] as const;
export type LabelBasis = (typeof labelBases)[number];

/**
 * What a millilitre of a liquid holds. A label by volume has its density in it already.
 *
 * @param content_frac as printed, per cent over 100, 0 to 1.5
 * @param basis grams in 100 g, or in 100 mL
 * @param density_g_mL mass of a millilitre [g/mL], 0.7 to 2.2; used by mass only
 * @returns content [mg/mL]
 * @throws QuantityError outside those ranges
 * @source our assumption, the definition
 * @see checks/feed.json FEED-036
 * @example liquidContent_mg_mL({ content_frac: 0.09, basis: "by mass", density_g_mL: 1.2 }) // 108
 */
export function liquidContent_mg_mL({
  content_frac,
  basis,
  density_g_mL,
}: {
  readonly content_frac: number;
  readonly basis: LabelBasis;
  readonly density_g_mL: number;
}): number {
  within("content_frac", content_frac, 0, 1.5);
  within("density_g_mL", density_g_mL, 0.7, 2.2);
  return mg_per_g * content_frac * (basis === "by mass" ? density_g_mL : 1);
}

/**
 * Doubt of a concentration by how it was measured out: the step of the tool, the label, the volume made up.
 *
 * Var c = (a/V)² (step²/12 + (r x)²) + (c sd_V/V)²
 *
 * @param content_mg content of a unit (mL or g) of the product [mg], 0 to 1000
 * @param dose units of product measured out, 0 to 100 000
 * @param step step of the tool in that unit, 0 to 1000
 * @param volume_L volume made up [L], 0.01 to 10 000
 * @param dose_frac relative error of the dose beside the step, 0 to 1: 0.05 by scale or syringe, 0.15 by spoon
 * @param volume_frac relative error of the volume, 0 to 1
 * @returns standard deviation of the concentration [mg/L]
 * @throws QuantityError outside those ranges
 * @source our assumption; a step's error is even, step/√12
 * @see checks/feed.json FEED-098
 * @example doseSpread_mg_L({ content_mg: 30, dose: 3, step: 0.5, volume_L: 4, dose_frac: 0 }) // 1.083
 */
export function doseSpread_mg_L({
  content_mg,
  dose,
  step,
  volume_L,
  dose_frac = 0.05,
  volume_frac = 0,
}: {
  readonly content_mg: number;
  readonly dose: number;
  readonly step: number;
  readonly volume_L: number;
  readonly dose_frac?: number;
  readonly volume_frac?: number;
}): number {
  within("content_mg", content_mg, 0, 1000);
  within("dose", dose, 0, 100_000);
  within("step", step, 0, 1000);
  within("volume_L", volume_L, 0.01, 10_000);
  within("dose_frac", dose_frac, 0, 1);
  within("volume_frac", volume_frac, 0, 1);
  const gives_mg_L = content_mg / volume_L;
  return Math.hypot(
    (gives_mg_L * step) / Math.sqrt(12),
    gives_mg_L * dose_frac * dose,
    gives_mg_L * dose * volume_frac,
  );
}

import { within } from "../errors/index.ts";
import { CARBONATE_mg_per_mmol } from "./water.ts";

const contentNames = [
  "N_frac",
  "P_frac",
  "K_frac",
  "Ca_frac",
  "Mg_frac",
  "S_frac",
  "Cl_frac",
  "Na_frac",
] as const;

/**
 * Acidity that a product leaves behind in a field, as calcium carbonate needed to undo it; negative where it is a base.
 *
 * A = S/16.03 + Cl/35.45 + P/30.97 + N/28.01 − Ca/20.04 − Mg/12.15 − K/39.10 − Na/22.99, times 50.04
 *
 * @param contents shares of elements in the product, 0 to 1 each
 * @returns calcium carbonate per gram of product [mg/g]; a direction and a size for pots, where uptake decides
 * @throws QuantityError outside those ranges
 * @source Pierre1933, half of the nitrogen counted
 * @see checks/feed.json FEED-054
 * @example potentialAcidity_mg_g({ N_frac: 0.34 }) // 607.3
 */
export function potentialAcidity_mg_g(contents: {
  readonly N_frac?: number;
  readonly P_frac?: number;
  readonly K_frac?: number;
  readonly Ca_frac?: number;
  readonly Mg_frac?: number;
  readonly S_frac?: number;
  readonly Cl_frac?: number;
  readonly Na_frac?: number;
}): number {
  for (const name of contentNames) within(name, contents[name] ?? 0, 0, 1);
  const of = (name: (typeof contentNames)[number]) => 1000 * (contents[name] ?? 0);
  const charge_mmol_g =
    (2 * of("S_frac")) / 32.06 +
    of("Cl_frac") / 35.45 +
    of("P_frac") / 30.974 +
    of("N_frac") / (2 * 14.007) -
    (2 * of("Ca_frac")) / 40.078 -
    (2 * of("Mg_frac")) / 24.305 -
    of("K_frac") / 39.098 -
    of("Na_frac") / 22.99;
  return CARBONATE_mg_per_mmol * charge_mmol_g;
}

/** Where the acidity of a medium goes under a feed. */
export const drifts = ["down", "stable", "up"] as const;
export type Drift = (typeof drifts)[number];

/**
 * Where pH goes under a feed: alkalinity of the water against the acidity of the products.
 *
 * net = (alkalinity − Σ A x/V) / 50.04; above +1 it rises and iron and manganese lock, below −0.5 it falls
 *
 * @param alkalinity_mg_L of the water, as CaCO3 [mg/L], 0 to 1000
 * @param acidity_mg_L of the products in the feed, as CaCO3 [mg/L], -1000 to 1000
 * @returns net base [mmol/L] and its direction
 * @throws QuantityError outside those ranges
 * @source Pierre1933; the lines between directions our assumption
 * @example feedDrift({ alkalinity_mg_L: 130, acidity_mg_L: 105 }) // {"net_mmol_L":0.49960031974420466,"drift":"stable"}
 */
export function feedDrift({
  alkalinity_mg_L,
  acidity_mg_L,
}: {
  readonly alkalinity_mg_L: number;
  readonly acidity_mg_L: number;
}): { readonly net_mmol_L: number; readonly drift: Drift } {
  within("alkalinity_mg_L", alkalinity_mg_L, 0, 1000);
  within("acidity_mg_L", acidity_mg_L, -1000, 1000);
  const net_mmol_L = (alkalinity_mg_L - acidity_mg_L) / CARBONATE_mg_per_mmol;
  return { net_mmol_L, drift: net_mmol_L > 1 ? "up" : net_mmol_L < -0.5 ? "down" : "stable" };
}

/**
 * What sulphuric acid does to a water. For checking a professional's sheet: not for windowsills.
 *
 * @param acid_mL_L concentrated acid per litre of water [mL/L], 0 to 1
 * @param acid_frac share of acid in it by mass, 0.1 to 0.98
 * @param density_g_mL of the acid [g/mL], 1.05 to 1.85
 * @returns sulphur added and alkalinity taken away, as CaCO3 [mg/L]
 * @throws QuantityError outside those ranges
 * @source UMassFeed; two charges a molecule
 * @see checks/feed.json FEED-062
 * @example sulphuricAcid({ acid_mL_L: 0.078125, acid_frac: 0.93, density_g_mL: 1.835 }).S_mg_L // 43.58
 */
export function sulphuricAcid({
  acid_mL_L,
  acid_frac,
  density_g_mL,
}: {
  readonly acid_mL_L: number;
  readonly acid_frac: number;
  readonly density_g_mL: number;
}): { readonly S_mg_L: number; readonly alkalinity_mg_L: number } {
  within("acid_mL_L", acid_mL_L, 0, 1);
  within("acid_frac", acid_frac, 0.1, 0.98);
  within("density_g_mL", density_g_mL, 1.05, 1.85);
  const acid_mmol_L = (1000 * acid_mL_L * density_g_mL * acid_frac) / 98.072;
  return { S_mg_L: acid_mmol_L * 32.06, alkalinity_mg_L: 2 * acid_mmol_L * CARBONATE_mg_per_mmol };
}

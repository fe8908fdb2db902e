import { within } from "../errors/index.ts";
import type { Aimed } from "./species.ts";

type Five = { readonly [Each in "N" | "P" | "K" | "Ca" | "Mg"]: number };

/** Shares of dry mass in a whole field pepper at 98 days. @source FieldPepper: 118, 15, 123, 41, 32 kg in 4758 kg */
export const tissue_frac: Five = { N: 0.0248, P: 0.00315, K: 0.0259, Ca: 0.0086, Mg: 0.0067 };

/** What leaves with fresh ripe fruit [mg/g]. @source UsdaFood; nitrogen from protein over 6.25 */
export const fruit_mg_g: Five = { N: 2.992, P: 0.43, K: 3.22, Ca: 0.14, Mg: 0.23 };

/** Dry mass made for each litre transpired [g/L]. @source from memory: 3 to 6 in the field, 2 to 4 on a sill */
export const DRY_MASS_FOR_WATER_g_L = 3;

/**
 * Concentration of a feed that carries to the roots just what new growth holds, whatever the pace of growth.
 *
 * c = tissue share x dry mass made for a litre of water, over the share of the feed that is taken up
 *
 * @param tissue_frac share of the element in dry mass, 0 to 0.2
 * @param growth_g_L dry mass made for a litre of water [g/L], 0.5 to 12
 * @param taken_frac share of the feed that ends in the plant, 0.3 to 1
 * @returns concentration [mg/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, a mass balance
 * @see checks/feed.json FEED-073
 * @example balancedFeed_mg_L({ tissue_frac: 0.0248, growth_g_L: 4 }) // 99.2
 */
export function balancedFeed_mg_L({
  tissue_frac: share_frac,
  growth_g_L,
  taken_frac = 1,
}: {
  readonly tissue_frac: number;
  readonly growth_g_L: number;
  readonly taken_frac?: number;
}): number {
  within("tissue_frac", share_frac, 0, 0.2);
  within("growth_g_L", growth_g_L, 0.5, 12);
  within("taken_frac", taken_frac, 0.3, 1);
  return (1000 * share_frac * growth_g_L) / taken_frac;
}

/**
 * What a plant takes up of an element over a time, from the water it used and the fruit it filled.
 *
 * @param of the element
 * @param transpired_L water used by leaves [L], 0 to 1000
 * @param fruit_g fresh fruit filled [g], 0 to 100 000
 * @param growth_g_L dry mass made for a litre of water [g/L], 0.5 to 12
 * @returns demand [mg]
 * @throws QuantityError outside those ranges
 * @source FieldPepper for tissue, UsdaFood for fruit
 * @example demand_mg({ of: "N", transpired_L: 1, fruit_g: 0, growth_g_L: 3 }) // 74.4
 */
export function demand_mg({
  of,
  transpired_L,
  fruit_g = 0,
  growth_g_L = DRY_MASS_FOR_WATER_g_L,
}: {
  readonly of: keyof Five;
  readonly transpired_L: number;
  readonly fruit_g?: number;
  readonly growth_g_L?: number;
}): number {
  within("transpired_L", transpired_L, 0, 1000);
  within("fruit_g", fruit_g, 0, 100_000);
  within("growth_g_L", growth_g_L, 0.5, 12);
  return 1000 * tissue_frac[of] * growth_g_L * transpired_L + fruit_mg_g[of] * fruit_g;
}
export const demanded = ["N", "P", "K", "Ca", "Mg"] as const satisfies readonly Aimed[];

/**
 * Strength of a feed given with every n-th watering that brings as much as a weaker one with each.
 *
 * C_n = n C_1, no more than the salt it may carry
 *
 * @param each_mg_L strength for every watering [mg/L], 0 to 1000
 * @param every_n with every how many waterings, 1 to 30
 * @param most_mg_L strongest feed [mg/L], 10 to 1000; nitrogen 300
 * @returns strength [mg/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, equal mass; the cap common practice, no source
 * @see checks/feed.json FEED-083
 * @example seldomFeed_mg_L({ each_mg_L: 100, every_n: 2 }) // 200
 */
export function seldomFeed_mg_L({
  each_mg_L,
  every_n,
  most_mg_L = 300,
}: {
  readonly each_mg_L: number;
  readonly every_n: number;
  readonly most_mg_L?: number;
}): number {
  within("each_mg_L", each_mg_L, 0, 1000);
  within("every_n", every_n, 1, 30);
  within("most_mg_L", most_mg_L, 10, 1000);
  return Math.min(most_mg_L, each_mg_L * every_n);
}

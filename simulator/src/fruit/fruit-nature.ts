import type { Chance } from "../nursery/chance.ts";

export const fruitKinds = ["thin", "fat", "lantern", "tiny"] as const;
export type FruitKind = (typeof fruitKinds)[number];

/** What one plant is by nature; drawn for each, from ranges as wide as published ones disagree. */
export interface FruitNature {
  readonly kind: FruitKind;
  readonly species: "annuum" | "chinense" | "frutescens";
  /** Full fresh mass of its fruit, and the dry share of it. */
  readonly fresh_g: number;
  readonly dry_frac: number;
  /** Dry mass of a megajoule of caught light, 400 to 700 nm. */
  readonly lightUse_g_MJ: number;
  readonly crown_m2: number;
  readonly leafArea_m2: number;
  readonly extinction: number;
  /** Development: none below, fastest at, none above; a bent curve, not two lines. */
  readonly base_C: number;
  readonly best_C: number;
  readonly end_C: number;
  /** Days from flower to ripe at 24 °C. */
  readonly ripeAt24_d: number;
  /** How much warmer than the air its fruit hangs, by day. */
  readonly sunlit_C: number;
  readonly flowers_per_d: number;
  /** Source over demand at which half of the flowers hold. */
  readonly holds: number;
}

const FRESH_g = { thin: 8, fat: 22, lantern: 8.5, tiny: 2.2 } as const;
const DRY = { thin: 0.125, fat: 0.085, lantern: 0.105, tiny: 0.14 } as const;
const RIPE_d = { thin: 50, fat: 51, lantern: 55, tiny: 46 } as const;
const FLOWERS_per_d = { thin: 0.6, fat: 0.4, lantern: 0.7, tiny: 1.1 } as const;

export function drawFruitNature(chance: Chance): FruitNature {
  const kind = chance.pick(fruitKinds);
  const species =
    kind === "lantern" ? "chinense" : kind === "tiny" && chance.happens(0.5) ? "frutescens" : "annuum";
  const crown_m2 = (Math.PI / 4) * chance.between(0.16, 0.34) ** 2;
  return {
    kind,
    species,
    fresh_g: chance.logNormal(FRESH_g[kind], 0.25),
    dry_frac: DRY[kind] * chance.logNormal(1, 0.1),
    lightUse_g_MJ: chance.logNormal(2.35, 0.25),
    crown_m2,
    leafArea_m2: crown_m2 * chance.between(1.1, 3),
    extinction: chance.between(0.5, 0.72),
    base_C: species === "chinense" ? chance.normal(12, 1.2) : chance.normal(9.5, 1.2),
    best_C: chance.normal(28.5, 0.8),
    end_C: chance.normal(41, 1.5),
    ripeAt24_d: RIPE_d[kind] * chance.logNormal(1, 0.1),
    sunlit_C: chance.between(0, 2),
    flowers_per_d: FLOWERS_per_d[kind] * chance.logNormal(1, 0.3) * (crown_m2 / 0.04),
    holds: chance.logNormal(0.6, 0.25),
  };
}

/** Share of the fastest development at a temperature: beta function, zero at both ends, one at the best. */
export function pace(air_C: number, { base_C, best_C, end_C }: FruitNature): number {
  if (air_C <= base_C || air_C >= end_C) return 0;
  const up = (air_C - base_C) / (best_C - base_C);
  const down = (end_C - air_C) / (end_C - best_C);
  return up * down ** ((end_C - best_C) / (best_C - base_C));
}

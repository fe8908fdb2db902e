import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type SpeciesGroup, speciesGroups } from "../growth/species.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";

/**
 * What comes of a cross: fertile hybrids; partly fertile ones; ones that germinate; ones raised from embryos only; seed that does
 * not live; no data.
 */
export const crossResults = ["HF", "PF", "NG", "EC", "IV", "-"] as const;
export type CrossResult = (typeof crossResults)[number];

/** Rows are mothers, columns fathers, both in the order of `speciesGroups`. IBPGR1983, figure 3. */
const CHART: Readonly<Record<SpeciesGroup, string>> = {
  annuum: "HF PF PF NG -",
  chinense: "PF HF PF NG -",
  frutescens: "NG PF HF NG -",
  baccatum: "NG NG NG HF -",
  pubescens: "- IV EC IV HF",
};

/**
 * What comes of a cross between two of the five domesticated species. Mother and father are not the same the other way round.
 *
 * @param pair species of the mother and of the father
 * @returns HF highly fertile, PF partially fertile, NG hybrids germinate normally, EC by embryo culture only, IV seed inviable, - no data
 * @throws nothing
 * @source IBPGR1983
 * @see checks/growth-fruit.json 159-168
 * @example crossResult({ mother: "annuum", father: "chinense" }) // "PF"
 */
export function crossResult(pair: {
  readonly mother: SpeciesGroup;
  readonly father: SpeciesGroup;
}): CrossResult {
  return CHART[pair.mother].split(" ")[speciesGroups.indexOf(pair.father)] as CrossResult;
}

/** Shares of crossed seed, and of fruit with a crossed seed, of plots side by side. GenetMolRes2018. */
export const naturalCrossing = { seed_frac: 0.012, fruit_frac: 0.108 } as const;

/** How a flower was kept from foreign pollen. */
export const seedIsolations = ["none", "bagged", "caged", "alone"] as const;
export type SeedIsolation = (typeof seedIsolations)[number];

/** Distance over which crossing falls to a third, between the 15 to 50 m of homes and the 400 m of growers. Our assumption. */
const FADES_m = 60;
/** What passes a bag that was put on before the flower opened. Our assumption. */
const THROUGH_BAG_frac = 0.02;

/**
 * Chance that a fruit holds a crossed seed, and share of seed that is crossed.
 *
 * measured beside one another × exp(−distance/60 m) × how well the pair crosses × what passes the bag
 *
 * @param flower mother, and father nearby; distance to it [m], 0 to 10000; how it was kept; any of the field's assumptions
 * @returns share of seed crossed; chance of a fruit with a crossed seed, 0 to 1
 * @throws QuantityError outside that range
 * @source GenetMolRes2018 side by side, IBPGR1983 for the pair; distance and bag our assumption
 * @example crossing({ mother: "annuum", father: "annuum", distance_m: 0, kept: "none" }).fruit_frac // 0.108
 */
export function crossing(
  flower: {
    readonly mother: SpeciesGroup;
    readonly father: SpeciesGroup;
    readonly distance_m: number;
    readonly kept: SeedIsolation;
  } & FruitSettings,
): { readonly seed_frac: number; readonly fruit_frac: number } {
  within("distance_m", flower.distance_m, 0, 10_000);
  const set = valuesOf(fruitAssumptions, flower);
  const pair = { HF: 1, PF: 0.5, NG: 0.2, EC: 0, IV: 0, "-": 0 }[crossResult(flower)];
  const passes = { none: 1, bagged: THROUGH_BAG_frac, caged: THROUGH_BAG_frac, alone: 0 }[flower.kept];
  const share = pair * passes * Math.exp(-flower.distance_m / FADES_m);
  return { seed_frac: share * set.crossedSeed_frac, fruit_frac: share * set.crossedFruit_frac };
}

/** Distances that seed growers and homes keep [m]. McCormack. */
export const isolationDistances = {
  growers_m: 400,
  growersHot_m: 1600,
  homeLow_m: 15,
  homeHigh_m: 50,
} as const;

/** Room in which the assumed life of seed was seen; each 5 °C less doubles it, each 1 % less water too. Harrington's rule, from memory. */
const ROOM_C = 21;
const DOUBLES_C = 5.6;
const DOUBLES_frac = 0.01;

/**
 * How long dry seed keeps: until half of what germinated at first no longer does.
 *
 * assumed life × 2^((21 °C − T)/5.6) × 2^((7 % − water)/1 %), between 5 and 9 % of water
 *
 * @param lot temperature of its place [°C], -25 to 35; water of the seed, 0.03 to 0.2, dry enough unless given; any of the field's assumptions
 * @returns life [d]
 * @throws QuantityError outside those ranges
 * @source our assumption; Harrington's rule from memory
 * @example seedLife_d({ air_C: 21 }) // 912
 */
export function seedLife_d(
  lot: { readonly air_C: number; readonly water_frac?: number } & FruitSettings,
): number {
  const set = valuesOf(fruitAssumptions, lot);
  const { air_C, water_frac = set.seedMoisture_frac } = lot;
  within("air_C", air_C, -25, 35);
  within("water_frac", water_frac, 0.03, 0.2);
  // Drier than this, or wetter, the rule does not hold: neither gains nor loss without end.
  const water = Math.min(0.12, Math.max(0.05, water_frac));
  return (
    set.keptSeed_d *
    2 ** ((ROOM_C - air_C) / DOUBLES_C) *
    2 ** ((set.seedMoisture_frac - water) / DOUBLES_frac)
  );
}

/** A test so old that it counts as one seed in so many. Our assumption. */
const BEFORE = { came: 8, missed: 2 } as const;

/**
 * What a test of germination says of a lot, with its range.
 *
 * Beta distribution, begun at eight of ten; range by the normal approximation on the logit, 80 %
 *
 * @param test seeds laid out, 1 to 10000; of them germinated, 0 to that
 * @returns share that germinates; its 80 % range
 * @throws QuantityError outside those ranges
 * @source our assumption; Bayes on the binomial distribution
 * @example germinationTest({ tested_n: 20, germinated_n: 18 }).germinates_frac // 0.867
 */
export function germinationTest(test: { readonly tested_n: number; readonly germinated_n: number }): {
  readonly germinates_frac: number;
  readonly low_frac: number;
  readonly high_frac: number;
} {
  within("tested_n", test.tested_n, 1, 10_000);
  within("germinated_n", test.germinated_n, 0, 10_000);
  within("germinated_n", test.germinated_n, 0, test.tested_n);
  const came = BEFORE.came + test.germinated_n;
  const missed = BEFORE.missed + test.tested_n - test.germinated_n;
  const logit = Math.log(came / missed);
  const sd = 1.2815515655446004 * Math.sqrt(1 / came + 1 / missed);
  const share = (x: number): number => 1 / (1 + Math.exp(-x));
  return {
    germinates_frac: came / (came + missed),
    low_frac: share(logit - sd),
    high_frac: share(logit + sd),
  };
}

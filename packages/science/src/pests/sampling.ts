import { within } from "../errors/index.ts";

/**
 * Catch of sticky cards per card and week.
 *
 * @param cards catch, 0 to 100000, whole; cards, 1 to 10000; days that they hung [d], more than 0 to 365
 * @returns catch per card and week
 * @throws QuantityError outside those ranges: a card with no days out says nothing
 * @source Rettke
 * @see checks/pests.json 102
 * @example cardRate_n({ count_n: 9, cards_n: 3, days_d: 10 }) // 2.1
 */
export function cardRate_n(cards: {
  readonly count_n: number;
  readonly cards_n: number;
  readonly days_d: number;
}): number {
  within("count_n", cards.count_n, 0, 100_000);
  within("cards_n", cards.cards_n, 1, 10_000);
  within("days_d", cards.days_d, 0.01, 365);
  return (cards.count_n / (cards.cards_n * cards.days_d)) * 7;
}

/**
 * Cards for a room by the density of greenhouses, at least one.
 *
 * @param room floor [m²], 0.1 to 100000; cards per 1000 ft² (92.903 m²), 0.1 to 100, 4 unless given
 * @returns number of cards
 * @throws QuantityError outside those ranges
 * @source UConnCards
 * @see checks/pests.json 103
 * @example cardsForRoom_n({ floor_m2: 12 }) // 1
 */
export function cardsForRoom_n(room: {
  readonly floor_m2: number;
  readonly cardsPer1000ft2_n?: number;
}): number {
  const { floor_m2, cardsPer1000ft2_n = 4 } = room;
  within("floor_m2", floor_m2, 0.1, 100_000);
  within("cardsPer1000ft2_n", cardsPer1000ft2_n, 0.1, 100);
  return Math.max(1, Math.ceil((floor_m2 / 92.903) * cardsPer1000ft2_n));
}

/**
 * Chance that a sample of leaves shows nothing of a pest that is there.
 *
 * (1 + m s/κ)^(−κ n) where pests sit together; exp(−m s n), the optimist's limit, where they are strewn
 *
 * @param sample mean animals a leaf, 0 to 10000; chance to see one that is there, 0 to 1; leaves, 1 to 10000; clumping, 0.05 to 5, 0.3 unless given
 * @returns both chances
 * @throws QuantityError outside those ranges
 * @source our assumption; negative binomial, thinned
 * @see checks/pests.json 097
 * @example leafMiss({ perLeaf_n: 0.5, sight_frac: 0.6, leaves_n: 20 }).missed_frac // 0.01562
 */
export function leafMiss(sample: {
  readonly perLeaf_n: number;
  readonly sight_frac: number;
  readonly leaves_n: number;
  readonly clumping?: number;
}): { readonly missed_frac: number; readonly missedStrewn_frac: number } {
  const { perLeaf_n, sight_frac, leaves_n, clumping = 0.3 } = sample;
  within("perLeaf_n", perLeaf_n, 0, 10_000);
  within("sight_frac", sight_frac, 0, 1);
  within("leaves_n", leaves_n, 1, 10_000);
  within("clumping", clumping, 0.05, 5);
  return {
    missed_frac: (1 + (perLeaf_n * sight_frac) / clumping) ** (-clumping * leaves_n),
    missedStrewn_frac: Math.exp(-perLeaf_n * sight_frac * leaves_n),
  };
}

type Taylor = { readonly taylorA: number; readonly taylorB: number };
function refuseOther({ taylorA, taylorB }: Taylor): void {
  within("taylorA", taylorA, 0.01, 1000);
  within("taylorB", taylorB, 0.2, 1.99);
}

/**
 * Taylor's power law from batches: variance = a mean^b.
 *
 * Line through the logarithms; clumping k = m²/(v − m) at the mean of means, where the variance exceeds it.
 *
 * @param batches means, above 0 to 1000000, and variances, above 0, as many of each, 2 to 1000
 * @returns a, b and clumping (100 where nothing clumps)
 * @throws QuantityError outside those ranges; RangeError where all means are the same
 * @source SotoRojas2021
 * @example taylorLaw({ means_n: [1, 10], variances_n: [2, 20] }).taylorB // 1
 */
export function taylorLaw(batches: {
  readonly means_n: readonly number[];
  readonly variances_n: readonly number[];
}): Taylor & { readonly clumping: number } {
  const { means_n, variances_n } = batches;
  within("batches_n", means_n.length, 2, 1000);
  within("variancesCount_n", variances_n.length, means_n.length, means_n.length);
  for (const each of means_n) within("means_n", each, 1e-6, 1_000_000);
  for (const each of variances_n) within("variances_n", each, 1e-9, 1e12);
  const x = means_n.map(Math.log);
  const y = variances_n.map(Math.log);
  const mean = (values: readonly number[]): number =>
    values.reduce((sum, each) => sum + each, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  const along = x.reduce((sum, each) => sum + (each - mx) ** 2, 0);
  if (!(along > 0)) throw new RangeError("means are all the same; expected at least two different ones");
  const taylorB = x.reduce((sum, each, i) => sum + (each - mx) * ((y[i] as number) - my), 0) / along;
  const taylorA = Math.exp(my - taylorB * mx);
  const m = mean(means_n);
  const variance = taylorA * m ** taylorB;
  return { taylorA, taylorB, clumping: variance > m ? Math.min(100, m ** 2 / (variance - m)) : 100 };
}

/**
 * Leaves or plants to count for a mean of fixed precision.
 *
 * n = a m^(b − 2) / D²
 *
 * @param sample Taylor's a, 0.01 to 1000, and b, 0.2 to 1.99; mean, 0.001 to 100000; precision (standard error over mean), 0.02 to 2, 0.25 unless given
 * @returns number, rounded up
 * @throws QuantityError outside those ranges
 * @source SotoRojas2021
 * @see checks/pests.json 094
 * @example unitsToCount_n({ taylorA: 2.586, taylorB: 1.511, mean_n: 1 }) // 42
 */
export function unitsToCount_n(
  sample: Taylor & { readonly mean_n: number; readonly precision?: number },
): number {
  const { taylorA, taylorB, mean_n, precision = 0.25 } = sample;
  refuseOther(sample);
  within("mean_n", mean_n, 0.001, 100_000);
  within("precision", precision, 0.02, 2);
  return Math.ceil((taylorA * mean_n ** (taylorB - 2)) / precision ** 2 - 1e-9);
}

/**
 * Count at which to stop after so many units (Green's line).
 *
 * T = (D²/a)^(1/(b − 2)) n^((b − 1)/(b − 2))
 *
 * @param sample Taylor's a and b as above; units looked at, 1 to 100000; precision, 0.02 to 2, 0.25 unless given
 * @returns cumulative count
 * @throws QuantityError outside those ranges
 * @source SotoRojas2021
 * @see checks/pests.json 095
 * @example stopCount_n({ taylorA: 2.586, taylorB: 1.511, units_n: 10 }) // 182.5
 */
export function stopCount_n(
  sample: Taylor & { readonly units_n: number; readonly precision?: number },
): number {
  const { taylorA, taylorB, units_n, precision = 0.25 } = sample;
  refuseOther(sample);
  within("units_n", units_n, 1, 100_000);
  within("precision", precision, 0.02, 2);
  return (precision ** 2 / taylorA) ** (1 / (taylorB - 2)) * units_n ** ((taylorB - 1) / (taylorB - 2));
}

/**
 * Share of units with at least one animal, from the mean.
 *
 * p = 1 − exp(−m ln v / (v − 1)), v = a m^(b − 1); Poisson where v is 1
 *
 * @param sample Taylor's a and b as above; mean, 0 to 100000
 * @returns share
 * @throws QuantityError outside those ranges
 * @source our assumption; Wilson and Room's form, from memory
 * @see checks/pests.json 096
 * @example infestedShare_frac({ taylorA: 2.586, taylorB: 1.511, mean_n: 1 }) // 0.4507
 */
export function infestedShare_frac(sample: Taylor & { readonly mean_n: number }): number {
  const { taylorA, taylorB, mean_n } = sample;
  refuseOther(sample);
  within("mean_n", mean_n, 0, 100_000);
  if (mean_n === 0) return 0;
  const v = taylorA * mean_n ** (taylorB - 1);
  const slope = Math.abs(v - 1) < 1e-9 ? 1 : Math.log(v) / (v - 1);
  return 1 - Math.exp(-mean_n * slope);
}

/**
 * Mean per unit from the share of infested units: the former, turned round.
 *
 * @param sample Taylor's a and b as above; share with at least one, 0 to 0.8: above, the mean is not to be had from it
 * @returns mean
 * @throws QuantityError outside those ranges
 * @source our assumption; Wilson and Room's form, from memory
 * @example meanOfInfested_n({ taylorA: 2.586, taylorB: 1.511, infested_frac: 0.4507 }) // 1
 */
export function meanOfInfested_n(sample: Taylor & { readonly infested_frac: number }): number {
  refuseOther(sample);
  within("infested_frac", sample.infested_frac, 0, 0.8);
  let [low, high] = [0, 100_000];
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (infestedShare_frac({ ...sample, mean_n: middle }) < sample.infested_frac) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Looking at plants one by one until the answer is clear (Wald's sequential test).
 *
 * G = ln(p1 (1 − p0)/(p0 (1 − p1))); slope = ln((1 − p0)/(1 − p1))/G; accept below −ln((1 − α)/β)/G + slope n
 *
 * @param test share of infested plants that is fine, 0.001 to 0.9, and that is not, above it to 0.95; chances of a wrong answer either way, 0.001 to 0.4
 * @returns slope, both intercepts, and how many clean plants in a row end it
 * @throws QuantityError outside those ranges
 * @source Wald1947
 * @see checks/pests.json 098
 * @example sequentialLooks({ fine_frac: 0.05, tooMany_frac: 0.2, falseAlarm_frac: 0.1, falseCalm_frac: 0.1 }).cleanInARow_n // 13
 */
export function sequentialLooks(test: {
  readonly fine_frac: number;
  readonly tooMany_frac: number;
  readonly falseAlarm_frac: number;
  readonly falseCalm_frac: number;
}): {
  readonly slope: number;
  readonly accept_n: number;
  readonly reject_n: number;
  readonly cleanInARow_n: number;
} {
  const { fine_frac, tooMany_frac, falseAlarm_frac, falseCalm_frac } = test;
  within("fine_frac", fine_frac, 0.001, 0.9);
  within("tooMany_frac", tooMany_frac, 0.002, 0.95);
  within("tooMany_frac", tooMany_frac, fine_frac + 0.001, 0.95);
  within("falseAlarm_frac", falseAlarm_frac, 0.001, 0.4);
  within("falseCalm_frac", falseCalm_frac, 0.001, 0.4);
  const g = Math.log((tooMany_frac * (1 - fine_frac)) / (fine_frac * (1 - tooMany_frac)));
  const slope = Math.log((1 - fine_frac) / (1 - tooMany_frac)) / g;
  const accept_n = -Math.log((1 - falseAlarm_frac) / falseCalm_frac) / g;
  return {
    slope,
    accept_n,
    reject_n: Math.log((1 - falseCalm_frac) / falseAlarm_frac) / g,
    cleanInARow_n: Math.ceil(-accept_n / slope),
  };
}

/**
 * A person's own eye, from looks that somebody else repeated.
 *
 * Mean of Beta(3 + found, 7 + missed): what the first look saw of what the second found, worth ten looks to begin with.
 *
 * @param looks plants on which the person saw what the other found, 0 to 10000; on which not, 0 to 10000
 * @returns chance to see what is there
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example ownSight_frac({ foundToo_n: 0, missed_n: 0 }) // 0.3
 */
export function ownSight_frac(looks: { readonly foundToo_n: number; readonly missed_n: number }): number {
  within("foundToo_n", looks.foundToo_n, 0, 10_000);
  within("missed_n", looks.missed_n, 0, 10_000);
  return (3 + looks.foundToo_n) / (10 + looks.foundToo_n + looks.missed_n);
}

import { within } from "../errors/index.ts";

/** ln Γ(n + 1). */
function lnFactorial(n: number): number {
  if (n < 200) {
    let sum = 0;
    for (let i = 2; i <= n; i++) sum += Math.log(i);
    return sum;
  }
  return n * Math.log(n) - n + 0.5 * Math.log(2 * Math.PI * n) + 1 / (12 * n);
}

/**
 * Chance of exactly so many of a number of trials.
 *
 * @param trials trials, 0 to 1000000; successes; chance of each
 * @returns probability
 * @source our assumption; the binomial distribution
 */
export function binomial_frac(trials: {
  readonly of_n: number;
  readonly count_n: number;
  readonly chance_frac: number;
}): number {
  const { of_n, count_n, chance_frac } = trials;
  if (count_n < 0 || count_n > of_n) return 0;
  if (chance_frac <= 0) return count_n === 0 ? 1 : 0;
  if (chance_frac >= 1) return count_n === of_n ? 1 : 0;
  const ways = lnFactorial(of_n) - lnFactorial(count_n) - lnFactorial(of_n - count_n);
  return Math.exp(ways + count_n * Math.log(chance_frac) + (of_n - count_n) * Math.log1p(-chance_frac));
}

/**
 * Whether two periods of a card differ, counts against card-days.
 *
 * x1 of x1 + x2 is binomial with E1/(E1 + E2). Two-sided: all outcomes no likelier than what was seen; or twice the smaller tail.
 *
 * @param periods counts, 0 to 100000, whole; card-days, above 0 to 1000000
 * @returns ratio of the rates (0 where the second is 0) and both chances of so large a difference by luck
 * @throws QuantityError outside those ranges
 * @source our assumption; the exact conditional test
 * @see checks/pests.json 099, 100
 * @example twoPeriods({ first_n: 11, firstExposure_d: 800, second_n: 21, secondExposure_d: 3011 }).luck_frac // 0.0797
 */
export function twoPeriods(periods: {
  readonly first_n: number;
  readonly firstExposure_d: number;
  readonly second_n: number;
  readonly secondExposure_d: number;
}): { readonly rateRatio: number; readonly luck_frac: number; readonly luckTwiceTail_frac: number } {
  const { first_n, firstExposure_d, second_n, secondExposure_d } = periods;
  within("first_n", first_n, 0, 100_000);
  within("second_n", second_n, 0, 100_000);
  within("firstExposure_d", firstExposure_d, 0.01, 1_000_000);
  within("secondExposure_d", secondExposure_d, 0.01, 1_000_000);
  const of_n = first_n + second_n;
  const chance_frac = firstExposure_d / (firstExposure_d + secondExposure_d);
  const seen = binomial_frac({ of_n, count_n: first_n, chance_frac });
  let [luck, below, above] = [0, 0, 0];
  for (let count_n = 0; count_n <= of_n; count_n++) {
    const each = binomial_frac({ of_n, count_n, chance_frac });
    if (each <= seen * (1 + 1e-7)) luck += each;
    if (count_n <= first_n) below += each;
    if (count_n >= first_n) above += each;
  }
  return {
    rateRatio: second_n === 0 ? 0 : first_n / firstExposure_d / (second_n / secondExposure_d),
    luck_frac: Math.min(1, luck),
    luckTwiceTail_frac: Math.min(1, 2 * Math.min(below, above)),
  };
}

/** Slope and height of a line of logarithms, and the sums that its doubt comes from. */
function fitted(
  times: readonly number[],
  counts: readonly number[],
  exposures: readonly number[],
  theta: number,
) {
  let height = Math.log(
    (counts.reduce((sum, each) => sum + each, 0) + 0.5) / exposures.reduce((sum, each) => sum + each, 0),
  );
  let slope = 0;
  let information = 0;
  for (let i = 0; i < 60; i++) {
    let [w, wt, wtt, wz, wtz] = [0, 0, 0, 0, 0];
    times.forEach((t, k) => {
      const expected = (exposures[k] as number) * Math.exp(Math.min(30, Math.max(-30, height + slope * t)));
      const weight = expected / (1 + expected * theta);
      const z = height + slope * t + ((counts[k] as number) - expected) / expected;
      w += weight;
      wt += weight * t;
      wtt += weight * t * t;
      wz += weight * z;
      wtz += weight * t * z;
    });
    const determinant = w * wtt - wt * wt;
    if (!(determinant > 1e-12)) break;
    const [before, beforeHeight] = [slope, height];
    slope = (w * wtz - wt * wz) / determinant;
    height = (wz - slope * wt) / w;
    information = determinant / w;
    if (Math.abs(slope - before) < 1e-12 && Math.abs(height - beforeHeight) < 1e-12) break;
  }
  const dispersion =
    times.reduce((sum, t, k) => {
      const expected = (exposures[k] as number) * Math.exp(Math.min(30, Math.max(-30, height + slope * t)));
      return sum + ((counts[k] as number) - expected) ** 2 / (expected * (1 + expected * theta));
    }, 0) / Math.max(1, times.length - 2);
  return { slope, se: 1 / Math.sqrt(Math.max(1e-12, information)), dispersion };
}

/**
 * Trend of card counts: does it grow, how fast, and could it be luck.
 *
 * counts ~ Poisson(exposure exp(a + g t)) by reweighted least squares; the error is widened by √dispersion above 1; above 3 the
 * counts are taken as negative binomial. "none" where the 95 % interval holds 0; "too little" below four dates or ten animals.
 *
 * @param cards days [d], -10000 to 10000; counts, 0 to 100000, whole; card-days, 0.01 to 1000000; as many of each, 2 to 1000
 * @returns slope and its standard error [1/d], z, dispersion, doubling (or halving) time and what it says
 * @throws QuantityError outside those ranges
 * @source our assumption; Poisson regression
 * @see checks/pests.json 101
 * @example cardTrend({ times_d: [0, 7, 14, 21, 28], counts_n: [12, 15, 9, 6, 3], exposures_d: [35, 35, 35, 35, 35] }).slope_per_d // -0.04464
 */
export function cardTrend(cards: {
  readonly times_d: readonly number[];
  readonly counts_n: readonly number[];
  readonly exposures_d: readonly number[];
}): {
  readonly slope_per_d: number;
  readonly se_per_d: number;
  readonly z: number;
  readonly dispersion: number;
  readonly doubling_d: number;
  readonly says: "grows" | "falls" | "none" | "too little";
} {
  const { times_d, counts_n, exposures_d } = cards;
  within("times_n", times_d.length, 2, 1000);
  within("countsCount_n", counts_n.length, times_d.length, times_d.length);
  within("exposuresCount_n", exposures_d.length, times_d.length, times_d.length);
  for (const each of times_d) within("times_d", each, -10_000, 10_000);
  for (const each of counts_n) within("counts_n", each, 0, 100_000);
  for (const each of exposures_d) within("exposures_d", each, 0.01, 1_000_000);
  let fit = fitted(times_d, counts_n, exposures_d, 0);
  let se = fit.se * Math.sqrt(Math.max(1, fit.dispersion));
  const { dispersion } = fit;
  if (dispersion > 3) {
    let [low, high] = [0, 100];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (fitted(times_d, counts_n, exposures_d, middle).dispersion > 1) low = middle;
      else high = middle;
    }
    fit = fitted(times_d, counts_n, exposures_d, high);
    se = fit.se;
  }
  const slope_per_d = fit.slope;
  const z = slope_per_d / se;
  const animals = counts_n.reduce((sum, each) => sum + each, 0);
  const says =
    times_d.length < 4 || animals < 10
      ? "too little"
      : Math.abs(z) < 1.96
        ? "none"
        : z > 0
          ? "grows"
          : "falls";
  return {
    slope_per_d,
    se_per_d: se,
    z,
    dispersion,
    doubling_d: slope_per_d === 0 ? 1e9 : Math.min(1e9, Math.LN2 / Math.abs(slope_per_d)),
    says,
  };
}

/**
 * Whether a pest that was caught for a while may be gone, from its record of catches (not for what comes in cohorts).
 *
 * p = (t_last / T)^n
 *
 * @param record catches, 1 to 10000; day of the last [d], 0 to 10000; days watched [d], at least that, to 10000
 * @returns chance of so long a silence if it were still there at the same rate
 * @throws QuantityError outside those ranges
 * @source Solow1993
 * @see checks/pests.json 082
 * @example silence_frac({ catches_n: 9, last_d: 20, watched_d: 34 }) // 0.0084
 */
export function silence_frac(record: {
  readonly catches_n: number;
  readonly last_d: number;
  readonly watched_d: number;
}): number {
  within("catches_n", record.catches_n, 1, 10_000);
  within("last_d", record.last_d, 0, 10_000);
  within("watched_d", record.watched_d, 0.01, 10_000);
  within("watched_d", record.watched_d, record.last_d, 10_000);
  return (record.last_d / record.watched_d) ** record.catches_n;
}

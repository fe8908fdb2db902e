import { within } from "../errors/index.ts";

/**
 * Exposure of clean looks at a pest that grows from a founder of the first day at a steady rate.
 *
 * Λ = Σ s n0 exp(r max(0, t − lag)); P = 1/(1 + odds exp(−Λ))
 *
 * @param course rate [1/d], -1 to 2; days before it multiplies [d], 0 to 100; chance to see one animal, 0 to 1; founders, 0.1 to 10000; days of looks [d], 0 to 1000, 1 to 200 of them; odds at the start, 0.0001 to 10000
 * @returns exposure, and chance of being free
 * @throws QuantityError outside those ranges
 * @source our assumption: Bayes with growing detectability
 * @see checks/pests.json 069-072, 077-079
 * @example growingExposure({ rate_per_d: 0.27, lag_d: 3.6, sight_frac: 0.3, founders_n: 1, looks_d: [7, 14], odds: 1 }).free_frac // 0.9967
 */
export function growingExposure(course: {
  readonly rate_per_d: number;
  readonly lag_d: number;
  readonly sight_frac: number;
  readonly founders_n: number;
  readonly looks_d: readonly number[];
  readonly odds: number;
}): { readonly exposure: number; readonly free_frac: number } {
  within("rate_per_d", course.rate_per_d, -1, 2);
  within("lag_d", course.lag_d, 0, 100);
  within("sight_frac", course.sight_frac, 0, 1);
  within("founders_n", course.founders_n, 0.1, 10_000);
  within("looks_n", course.looks_d.length, 1, 200);
  for (const each of course.looks_d) within("looks_d", each, 0, 1000);
  within("odds", course.odds, 0.0001, 10_000);
  const exposure = course.looks_d.reduce(
    (sum, day) =>
      sum +
      course.sight_frac *
        course.founders_n *
        Math.exp(Math.min(600, course.rate_per_d * Math.max(0, day - course.lag_d))),
    0,
  );
  return { exposure, free_frac: 1 / (1 + course.odds * Math.exp(-exposure)) };
}

/**
 * Exposure of a card to a cohort of gnats that were eggs on the first day, none unlike another.
 *
 * Λ = h m × adult-days between emergence and now, at most their life
 *
 * @param cohort egg to adult and life of an adult [d], 0.1 to 200; eggs, 0.1 to 10000; catch of one adult a day, 0 to 1; day now [d], 0 to 1000; odds at the start, 0.0001 to 10000
 * @returns exposure, and chance of being free
 * @throws QuantityError outside those ranges
 * @source our assumption: Bayes with growing detectability; Bradysia1998 for the times
 * @see checks/pests.json 074-076
 * @example cohortOnCard({ eggToAdult_d: 27.06, adultLife_d: 5, founders_n: 3, catch_per_d: 0.2, day_d: 28, odds: 1 }).free_frac // 0.6374
 */
export function cohortOnCard(cohort: {
  readonly eggToAdult_d: number;
  readonly adultLife_d: number;
  readonly founders_n: number;
  readonly catch_per_d: number;
  readonly day_d: number;
  readonly odds: number;
}): { readonly exposure: number; readonly free_frac: number } {
  within("eggToAdult_d", cohort.eggToAdult_d, 0.1, 200);
  within("adultLife_d", cohort.adultLife_d, 0.1, 200);
  within("founders_n", cohort.founders_n, 0.1, 10_000);
  within("catch_per_d", cohort.catch_per_d, 0, 1);
  within("day_d", cohort.day_d, 0, 1000);
  within("odds", cohort.odds, 0.0001, 10_000);
  const days = Math.max(0, Math.min(cohort.day_d - cohort.eggToAdult_d, cohort.adultLife_d));
  const exposure = cohort.catch_per_d * cohort.founders_n * days;
  return { exposure, free_frac: 1 / (1 + cohort.odds * Math.exp(-exposure)) };
}

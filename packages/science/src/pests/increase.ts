import { within } from "../errors/index.ts";

/**
 * Intrinsic rate of increase from net reproduction and mean generation time, first estimate.
 *
 * r = ln(R0) / T
 *
 * @param life daughters per female per generation, 0.0001 to 100000; mean generation time [d], 0.1 to 1000
 * @returns rate [1/d], negative where fewer than one daughter replaces her mother
 * @throws QuantityError outside those ranges
 * @source Birch1948
 * @see checks/pests.json 001, 013
 * @example intrinsicRate_per_d({ netReproduction_n: 62.7, generation_d: 12.45 }) // 0.332
 */
export function intrinsicRate_per_d(life: {
  readonly netReproduction_n: number;
  readonly generation_d: number;
}): number {
  within("netReproduction_n", life.netReproduction_n, 0.0001, 100_000);
  within("generation_d", life.generation_d, 0.1, 1000);
  return Math.log(life.netReproduction_n) / life.generation_d;
}

/**
 * By how much a growing population multiplies over some days.
 *
 * exp(r t)
 *
 * @param growth rate [1/d], -5 to 5; time [d], 0 to 1000, one day unless given
 * @returns multiple of the number at the start
 * @throws QuantityError outside those ranges
 * @source Birch1948
 * @example multiplication_n({ rate_per_d: 0.332 }) // 1.394
 */
export function multiplication_n(growth: { readonly rate_per_d: number; readonly days_d?: number }): number {
  const { rate_per_d, days_d = 1 } = growth;
  within("rate_per_d", rate_per_d, -5, 5);
  within("days_d", days_d, 0, 1000);
  return Math.exp(Math.min(700, rate_per_d * days_d));
}

/**
 * Time in which a population doubles, or halves where it shrinks.
 *
 * ln 2 / |r|
 *
 * @param rate_per_d rate [1/d], -5 to 5, not 0
 * @returns time [d]
 * @throws QuantityError outside that range; RangeError where nothing grows or shrinks
 * @source Birch1948
 * @see checks/pests.json 003, 116
 * @example doublingTime_d(0.39) // 1.78
 */
export function doublingTime_d(rate_per_d: number): number {
  within("rate_per_d", rate_per_d, -5, 5);
  if (rate_per_d === 0) throw new RangeError("rate is 0 d⁻¹; nothing doubles or halves");
  return Math.LN2 / Math.abs(rate_per_d);
}

/**
 * Net reproduction and intrinsic rate of a life table.
 *
 * R0 = Σ l m; r solves Σ l m exp(−r x) = 1, bisected between −0.5 and 3.
 *
 * @param table pivotal ages [d], 0 to 1000; share alive at each, 0 to 1; daughters at each, 0 to 10000; as many of each, 1 to 1000
 * @returns daughters per female, and rate [1/d]
 * @throws QuantityError outside those ranges; RangeError where no daughter is born
 * @source Birch1948
 * @see checks/pests.json 031
 * @example lifeTableRate({ ages_d: [10], alive_frac: [1], daughters_n: [10] }).netReproduction_n // 10
 */
export function lifeTableRate(table: {
  readonly ages_d: readonly number[];
  readonly alive_frac: readonly number[];
  readonly daughters_n: readonly number[];
}): { readonly netReproduction_n: number; readonly rate_per_d: number } {
  const { ages_d, alive_frac, daughters_n } = table;
  within("ages_n", ages_d.length, 1, 1000);
  within("alive_n", alive_frac.length, ages_d.length, ages_d.length);
  within("daughters_count_n", daughters_n.length, ages_d.length, ages_d.length);
  for (const age_d of ages_d) within("ages_d", age_d, 0, 1000);
  for (const share of alive_frac) within("alive_frac", share, 0, 1);
  for (const daughters of daughters_n) within("daughters_n", daughters, 0, 10_000);
  const born = ages_d.map((_, i) => (alive_frac[i] as number) * (daughters_n[i] as number));
  const netReproduction_n = born.reduce((sum, each) => sum + each, 0);
  if (netReproduction_n <= 0) throw new RangeError("daughters are 0 at every age; there is no rate");
  const sum = (rate: number): number =>
    born.reduce((total, each, i) => total + each * Math.exp(-rate * (ages_d[i] as number)), 0);
  let [low, high] = [-0.5, 3];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (sum(middle) > 1) low = middle;
    else high = middle;
  }
  return { netReproduction_n, rate_per_d: (low + high) / 2 };
}

/**
 * Net reproduction and rate from what is printed of a fly: eggs, shares that hatch and emerge, times.
 *
 * Eggs are spread evenly over the female's life, from the day she begins to lay, at a number of points.
 *
 * @param fly eggs per female, 0.1 to 10000; shares that hatch, emerge and are female, 0.001 to 1; egg to adult [d], 0.1 to 1000; female life [d], 0.1 to 365; day of it on which laying begins [d], 0.5 unless given; points, 2 to 1000, 50 unless given
 * @returns daughters per female, and rate [1/d]
 * @throws QuantityError outside those ranges
 * @source Birch1948; Bradysia1998 for the rates
 * @see checks/pests.json 027
 * @example vitalRate({ eggs_n: 131.8, hatch_frac: 0.816, emergence_frac: 0.771, female_frac: 0.3333, eggToAdult_d: 22.2, femaleLife_d: 4.2 }).rate_per_d // 0.136
 */
export function vitalRate(fly: {
  readonly eggs_n: number;
  readonly hatch_frac: number;
  readonly emergence_frac: number;
  readonly female_frac: number;
  readonly eggToAdult_d: number;
  readonly femaleLife_d: number;
  readonly layingFrom_d?: number;
  readonly points_n?: number;
}): { readonly netReproduction_n: number; readonly rate_per_d: number } {
  const { layingFrom_d = 0.5, points_n = 50 } = fly;
  within("eggs_n", fly.eggs_n, 0.1, 10_000);
  within("hatch_frac", fly.hatch_frac, 0.001, 1);
  within("emergence_frac", fly.emergence_frac, 0.001, 1);
  within("female_frac", fly.female_frac, 0.001, 1);
  within("eggToAdult_d", fly.eggToAdult_d, 0.1, 600);
  within("femaleLife_d", fly.femaleLife_d, 0.1, 365);
  within("layingFrom_d", layingFrom_d, 0, 365);
  within("layingFrom_d", layingFrom_d, 0, fly.femaleLife_d);
  within("points_n", points_n, 2, 1000);
  const daughters = fly.eggs_n * fly.hatch_frac * fly.emergence_frac * fly.female_frac;
  const points = Math.round(points_n);
  const ages_d = Array.from(
    { length: points },
    (_, i) => fly.eggToAdult_d + layingFrom_d + ((fly.femaleLife_d - layingFrom_d) * i) / (points - 1),
  );
  return lifeTableRate({
    ages_d,
    alive_frac: ages_d.map(() => 1),
    daughters_n: ages_d.map(() => daughters / points),
  });
}

/**
 * Quick rate of aphids and mites from the first births, and what is left of it when its known overshoot is taken off.
 *
 * r = 0.738 ln(Md) / d, T = 4 d / 3; corrected r / (1 + bias)
 *
 * @param births time from birth to first birth [d], 1 to 100; young born in as many days after it, 1.01 to 1000; coefficient, 0.1 to 2, 0.738 unless given; overshoot, 0 to 1, 0.276 unless given
 * @returns rates [1/d] and generation time [d]
 * @throws QuantityError outside those ranges
 * @source WyattWhite1977; Saska2021 for the overshoot
 * @see checks/pests.json 032
 * @example simpleRate({ firstBirth_d: 7, young_n: 25 }).corrected_per_d // 0.266
 */
export function simpleRate(births: {
  readonly firstBirth_d: number;
  readonly young_n: number;
  readonly coefficient?: number;
  readonly simpleBias_frac?: number;
}): { readonly rate_per_d: number; readonly corrected_per_d: number; readonly generation_d: number } {
  const { firstBirth_d, young_n, coefficient = 0.738, simpleBias_frac = 0.276 } = births;
  within("firstBirth_d", firstBirth_d, 1, 100);
  within("young_n", young_n, 1.01, 1000);
  within("coefficient", coefficient, 0.1, 2);
  within("simpleBias_frac", simpleBias_frac, 0, 1);
  const rate_per_d = (coefficient * Math.log(young_n)) / firstBirth_d;
  return {
    rate_per_d,
    corrected_per_d: rate_per_d / (1 + simpleBias_frac),
    generation_d: (4 * firstBirth_d) / 3,
  };
}

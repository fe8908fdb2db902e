import { within } from "../errors/index.ts";

/**
 * A quantile of a sample, by linear interpolation between its ordered values.
 *
 * @param sample values (at least one); probability, 0 to 1
 * @returns value in the unit of the sample
 * @throws QuantityError for an empty sample, a value that is not finite, or a probability outside 0..1
 * @source HyndmanFan1996
 * @example sampleQuantile({ sample: [4, 1, 3, 2], probability: 0.5 }) // 2.5
 */
export function sampleQuantile(input: {
  readonly sample: readonly number[];
  readonly probability: number;
}): number {
  return sampleQuantiles({ sample: input.sample, probabilities: [input.probability] })[0] ?? NaN;
}

/**
 * Several quantiles of a sample at one sorting.
 *
 * @param input sample (at least one value); probabilities, each 0 to 1
 * @returns one value per probability, in the unit of the sample
 * @throws QuantityError as for one quantile
 * @source HyndmanFan1996
 * @example sampleQuantiles({ sample: [4, 1, 3, 2], probabilities: [0, 1] })[1] // 4
 */
export function sampleQuantiles(input: {
  readonly sample: readonly number[];
  readonly probabilities: readonly number[];
}): readonly number[] {
  const { sample, probabilities } = input;
  within("sample_n", sample.length, 1, 1e8);
  for (const value of sample) within("sampleValue", value, -1e300, 1e300);
  const ordered = Float64Array.from(sample).sort();
  return probabilities.map((probability) => {
    within("probability", probability, 0, 1);
    const place = probability * (ordered.length - 1);
    const below = Math.floor(place);
    const low = ordered[below] ?? NaN;
    const high = ordered[Math.min(below + 1, ordered.length - 1)] ?? NaN;
    return low + (place - below) * (high - low);
  });
}

/**
 * Resample a series in blocks, so that what hangs together stays together; wraps round the end.
 *
 * @param input number of items (1 or more), length of a block (1 to the number of items), and draws of uniform chance
 * @returns as many indices as there are items
 * @throws QuantityError outside those ranges
 * @source Kunsch1989
 */
export function blockBootstrapIndices(input: {
  readonly items_n: number;
  readonly block_n: number;
  readonly uniform: () => number;
}): readonly number[] {
  const { items_n, block_n, uniform } = input;
  within("items_n", items_n, 1, 1e8);
  within("block_n", block_n, 1, items_n);
  const indices: number[] = [];
  while (indices.length < items_n) {
    const start = Math.floor(uniform() * items_n);
    for (let step = 0; step < block_n && indices.length < items_n; step += 1) {
      indices.push((start + step) % items_n);
    }
  }
  return indices;
}

/**
 * Range of a mean when whole groups (all forecasts of one pot) are drawn again and again.
 *
 * Forecasts of one pot err together; drawing pots, not forecasts, keeps the range honest.
 *
 * @param input values by group [group][value], none empty; number of redraws, 10 to 1e6; probability of each end, 0 to 0.5; uniform chance
 * @returns mean over all values, and low and high end of the redrawn means
 * @throws QuantityError outside those ranges
 * @source Kunsch1989
 */
export function groupBootstrapMean(input: {
  readonly groups: readonly (readonly number[])[];
  readonly redraws_n: number;
  readonly tail: number;
  readonly uniform: () => number;
}): { readonly mean: number; readonly low: number; readonly high: number } {
  const { groups, redraws_n, tail, uniform } = input;
  within("groups_n", groups.length, 1, 1e7);
  within("redraws_n", redraws_n, 10, 1e6);
  within("tail", tail, 0, 0.5);
  const sums = groups.map((group) => {
    within("groupSize_n", group.length, 1, 1e8);
    return group.reduce((sum, value) => sum + value, 0);
  });
  const meanOf = (pick: (i: number) => number): number => {
    let sum = 0;
    let count = 0;
    for (let i = 0; i < groups.length; i += 1) {
      const group = pick(i);
      sum += sums[group] ?? NaN;
      count += groups[group]?.length ?? 0;
    }
    return sum / count;
  };
  const means = Array.from({ length: redraws_n }, () => meanOf(() => Math.floor(uniform() * groups.length)));
  const [low = NaN, high = NaN] = sampleQuantiles({ sample: means, probabilities: [tail, 1 - tail] });
  return { mean: meanOf((i) => i), low, high };
}

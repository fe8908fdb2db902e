import { within } from "../errors/index.ts";

/**
 * Seeds to sow so that enough keepers come of them, with a certainty.
 *
 * Smallest n with P(Bin(n, p) ≥ wanted) ≥ certainty; p is germination × survival × share kept. The chance is summed as that of
 * the wanted-th keeper coming from the n-th seed.
 *
 * @param sowing keepers wanted, 1 to 10000, whole; share of seeds that become keepers, 0.01 to 1; certainty, 0.5 to 0.999, 0.9 unless given
 * @returns seeds
 * @throws QuantityError outside those ranges
 * @source our assumption; the binomial distribution
 * @see checks/growth-fruit.json 170-172
 * @example seedsToSow_n({ wanted_n: 10, success_frac: 0.7 }) // 18
 */
export function seedsToSow_n(sowing: {
  readonly wanted_n: number;
  readonly success_frac: number;
  readonly certainty_frac?: number;
}): number {
  const { wanted_n, success_frac, certainty_frac = 0.9 } = sowing;
  within("wanted_n", wanted_n, 1, 10_000);
  within("success_frac", success_frac, 0.01, 1);
  within("certainty_frac", certainty_frac, 0.5, 0.999);
  const wanted = Math.ceil(wanted_n);
  if (success_frac === 1) return wanted;
  // In logarithms, since the first terms of a large sowing are smaller than any number.
  let lnTerm = wanted * Math.log(success_frac);
  let reached = Math.exp(lnTerm);
  let seeds = wanted;
  const lnFailure = Math.log1p(-success_frac);
  while (reached < certainty_frac) {
    lnTerm += Math.log(seeds / (seeds - wanted + 1)) + lnFailure;
    seeds += 1;
    reached += Math.exp(lnTerm);
  }
  return seeds;
}

import { within } from "../errors/index.ts";
import { binomial_frac } from "./trend.ts";

type Sighted = { readonly sight_frac?: number };
const sightOf = ({ sight_frac = 1 }: Sighted): number => {
  within("sight_frac", sight_frac, 0, 1);
  return sight_frac;
};

/**
 * Chance that a sample from a large batch shows a pest that sits on a share of its plants.
 *
 * 1 − (1 − p Se)^n
 *
 * @param sample plants looked at, 0 to 1000000; share infested, 0 to 1; chance to see it on a plant that has it, 0 to 1, 1 unless given
 * @returns sensitivity of the sample
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 033, 054
 * @example sampleSensitivity_frac({ units_n: 10, prevalence_frac: 0.05, sight_frac: 0.9 }) // 0.36899
 */
export function sampleSensitivity_frac(
  sample: Sighted & { readonly units_n: number; readonly prevalence_frac: number },
): number {
  within("units_n", sample.units_n, 0, 1_000_000);
  within("prevalence_frac", sample.prevalence_frac, 0, 1);
  return 1 - (1 - sample.prevalence_frac * sightOf(sample)) ** sample.units_n;
}

export const batchMethods = ["exact", "approximate"] as const;
export type BatchMethod = (typeof batchMethods)[number];

/** Hypergeometric chances of j infested ones among n of a batch. */
function* infestedDrawn(
  batch: number,
  infested: number,
  units: number,
): Generator<readonly [number, number]> {
  const ln = (n: number, k: number): number => {
    let sum = 0;
    for (let i = 1; i <= k; i++) sum += Math.log((n - k + i) / i);
    return sum;
  };
  const all = ln(batch, units);
  for (let j = Math.max(0, units - (batch - infested)); j <= Math.min(infested, units); j++)
    yield [j, Math.exp(ln(infested, j) + ln(batch - infested, units - j) - all)];
}

function refuseOtherBatch(batch: { readonly batch_n: number; readonly infested_n: number }): void {
  within("batch_n", batch.batch_n, 1, 100_000);
  within("infested_n", batch.infested_n, 0, 100_000);
  within("infested_n", batch.infested_n, 0, batch.batch_n);
}

/**
 * The same for a batch of known size: exact by the hypergeometric, or 1 − (1 − n Se/N)^d.
 *
 * @param sample plants in the batch, 1 to 100000; infested ones among them, 0 to as many; looked at, 0 to as many; chance to see it on one, 0 to 1, 1 unless given; method, exact unless given
 * @returns sensitivity of the sample
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 034, 035, 037
 * @example batchSensitivity_frac({ batch_n: 100, units_n: 50, infested_n: 1, sight_frac: 0.8 }) // 0.4
 */
export function batchSensitivity_frac(
  sample: Sighted & {
    readonly batch_n: number;
    readonly infested_n: number;
    readonly units_n: number;
    readonly method?: BatchMethod;
  },
): number {
  const { batch_n, infested_n, units_n, method = "exact" } = sample;
  refuseOtherBatch(sample);
  within("units_n", units_n, 0, 100_000);
  within("units_n", units_n, 0, batch_n);
  const sight = sightOf(sample);
  if (method === "approximate") return 1 - (1 - (units_n * sight) / batch_n) ** infested_n;
  let missed = 0;
  for (const [j, chance] of infestedDrawn(batch_n, infested_n, units_n)) missed += chance * (1 - sight) ** j;
  return 1 - missed;
}

/**
 * Plants of a large batch to look at so that a share of infested ones would show.
 *
 * ceil(ln(1 − SeP) / ln(1 − p Se))
 *
 * @param aim confidence, 0.01 to 0.99999; share infested, 0.00001 to 1; chance to see it on one, 0.001 to 1, 1 unless given
 * @returns plants
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 038
 * @example unitsForSample_n({ confidence_frac: 0.95, prevalence_frac: 0.05, sight_frac: 0.91 }) // 65
 */
export function unitsForSample_n(aim: {
  readonly confidence_frac: number;
  readonly prevalence_frac: number;
  readonly sight_frac?: number;
}): number {
  const { confidence_frac, prevalence_frac, sight_frac = 1 } = aim;
  within("confidence_frac", confidence_frac, 0.01, 0.99999);
  within("prevalence_frac", prevalence_frac, 0.00001, 1);
  within("sight_frac", sight_frac, 0.001, 1);
  const each = prevalence_frac * sight_frac;
  return each >= 1 ? 1 : Math.ceil(Math.log(1 - confidence_frac) / Math.log(1 - each) - 1e-9);
}

export const unitMethods = ["exact", "approximate", "mid"] as const;

/**
 * Plants of a batch of known size to look at so that so many infested ones would show.
 *
 * exact: smallest n by the hypergeometric; approximate: (N/Se)(1 − (1 − SeP)^(1/d)); mid, for perfect sight: (1 − (1 − SeP)^(1/d))(N − (d − 1)/2)
 *
 * @param aim confidence, 0.01 to 0.99999; plants in the batch, 1 to 100000; infested ones, 1 to as many; chance to see it on one, 0.001 to 1, 1 unless given; method, exact unless given
 * @returns plants; more than the batch where even all would not do
 * @throws QuantityError outside those ranges
 * @source RSurveillance; the middle form after Cannon and Roe, from memory
 * @see checks/pests.json 039, 055-061
 * @example unitsForBatch_n({ confidence_frac: 0.95, batch_n: 200, infested_n: 2, sight_frac: 0.8, method: "approximate" }) // 195
 */
export function unitsForBatch_n(aim: {
  readonly confidence_frac: number;
  readonly batch_n: number;
  readonly infested_n: number;
  readonly sight_frac?: number;
  readonly method?: (typeof unitMethods)[number];
}): number {
  const { confidence_frac, batch_n, infested_n, sight_frac = 1, method = "exact" } = aim;
  within("confidence_frac", confidence_frac, 0.01, 0.99999);
  within("infested_n", infested_n, 1, 100_000);
  refuseOtherBatch(aim);
  within("sight_frac", sight_frac, 0.001, 1);
  const share = 1 - (1 - confidence_frac) ** (1 / infested_n);
  if (method === "mid") return Math.ceil(share * (batch_n - (infested_n - 1) / 2) - 1e-9);
  if (method === "approximate") return Math.ceil((batch_n / sight_frac) * share - 1e-9);
  let [low, high] = [0, batch_n + 1];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (batchSensitivity_frac({ batch_n, infested_n, units_n: middle, sight_frac }) >= confidence_frac)
      high = middle;
    else low = middle;
  }
  return high;
}

/**
 * Share of infested plants in a batch that a clean sample still leaves possible.
 *
 * d = ln(1 − SeP) / ln(1 − n Se/N), over N
 *
 * @param sample plants looked at, 1 to 100000; in the batch, at least as many, to 100000; confidence, 0.01 to 0.99999; chance to see it on one, 0.001 to 1, 1 unless given
 * @returns share
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 040
 * @example detectableShare_frac({ units_n: 50, batch_n: 500, confidence_frac: 0.95, sight_frac: 0.5 }) // 0.1168
 */
export function detectableShare_frac(sample: {
  readonly units_n: number;
  readonly batch_n: number;
  readonly confidence_frac: number;
  readonly sight_frac?: number;
}): number {
  const { units_n, batch_n, confidence_frac, sight_frac = 1 } = sample;
  within("units_n", units_n, 1, 100_000);
  within("batch_n", batch_n, 1, 100_000);
  within("batch_n", batch_n, units_n, 100_000);
  within("confidence_frac", confidence_frac, 0.01, 0.99999);
  within("sight_frac", sight_frac, 0.001, 1);
  const seen = (units_n * sight_frac) / batch_n;
  return seen >= 1 ? 0 : Math.log(1 - confidence_frac) / Math.log(1 - seen) / batch_n;
}

/**
 * Several ways of looking at one plant, taken together.
 *
 * either finds it: 1 − Π(1 − Se); all must: Π Se
 *
 * @param ways chance of each to see it, 0 to 1, 1 to 100 of them
 * @returns both
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 047
 * @example waysTogether({ sights_frac: [0.99, 0.95, 0.8] }).either_frac // 0.9999
 */
export function waysTogether(ways: { readonly sights_frac: readonly number[] }): {
  readonly either_frac: number;
  readonly all_frac: number;
} {
  within("sights_n", ways.sights_frac.length, 1, 100);
  for (const each of ways.sights_frac) within("sights_frac", each, 0, 1);
  return {
    either_frac: 1 - ways.sights_frac.reduce((missed, each) => missed * (1 - each), 1),
    all_frac: ways.sights_frac.reduce((all, each) => all * each, 1),
  };
}

/**
 * Groups of unlike risk: each group's risk against the mean, and the chance that looking at some of each shows the pest.
 *
 * AR = RR / Σ(RR share); SeP = 1 − Π(1 − p AR Se)^n
 *
 * @param groups relative risks, 0.001 to 1000; shares of the stock, 0 to 1; as many of each, 1 to 50; share infested, 0 to 1, 0.1 unless given; plants looked at of each, 0 to 100000, none unless given; chance to see it on one, 0 to 1, 1 unless given
 * @returns adjusted risks and sensitivity
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 048, 049
 * @example riskGroups({ risks_n: [5, 3, 1], shares_frac: [0.1, 0.1, 0.8], units_n: [5, 5, 5], sight_frac: 0.9 }).sensitivity_frac // 0.943
 */
export function riskGroups(groups: {
  readonly risks_n: readonly number[];
  readonly shares_frac: readonly number[];
  readonly prevalence_frac?: number;
  readonly units_n?: readonly number[];
  readonly sight_frac?: number;
}): { readonly adjusted_n: readonly number[]; readonly sensitivity_frac: number } {
  const { risks_n, shares_frac, prevalence_frac = 0.1, units_n = [] } = groups;
  within("groups_n", risks_n.length, 1, 50);
  within("sharesCount_n", shares_frac.length, risks_n.length, risks_n.length);
  for (const each of risks_n) within("risks_n", each, 0.001, 1000);
  for (const each of shares_frac) within("shares_frac", each, 0, 1);
  for (const each of units_n) within("units_n", each, 0, 100_000);
  within("prevalence_frac", prevalence_frac, 0, 1);
  const sight = sightOf(groups);
  const mean = risks_n.reduce((sum, each, i) => sum + each * (shares_frac[i] as number), 0);
  if (!(mean > 0)) throw new RangeError("shares are all 0; expected at least one group with plants");
  const adjusted_n = risks_n.map((each) => each / mean);
  const missed = adjusted_n.reduce(
    (product, each, i) => product * (1 - Math.min(1, prevalence_frac * each) * sight) ** (units_n[i] ?? 0),
    1,
  );
  return { adjusted_n, sensitivity_frac: 1 - missed };
}

/**
 * Chance of at least so many finds where clean plants can be taken for infested ones.
 *
 * Infinite batch: binomial with p Se + (1 − p)(1 − Sp). Batch of known size: every way of drawing infested ones.
 *
 * @param sample plants looked at, 1 to 5000; least count that is called a find, 0 to 5000; chances to see it where it is, and to be right where it is not, 0 to 1; share infested, 0 to 1, or batch, 1 to 100000, with infested ones
 * @returns probability
 * @throws QuantityError outside those ranges; RangeError without either
 * @source CameronBaldock1998
 * @see checks/pests.json 050, 064
 * @example finds_frac({ units_n: 5, least_n: 2, sight_frac: 0.95, specificity_frac: 0.98, prevalence_frac: 0.1 }) // 0.1012
 */
export function finds_frac(sample: {
  readonly units_n: number;
  readonly least_n: number;
  readonly sight_frac: number;
  readonly specificity_frac: number;
  readonly prevalence_frac?: number;
  readonly batch_n?: number;
  readonly infested_n?: number;
}): number {
  const { units_n, least_n, sight_frac, specificity_frac, prevalence_frac, batch_n, infested_n } = sample;
  within("units_n", units_n, 1, 5000);
  within("least_n", least_n, 0, 5000);
  within("sight_frac", sight_frac, 0, 1);
  within("specificity_frac", specificity_frac, 0, 1);
  const fewer = (chances: (count_n: number) => number): number => {
    let sum = 0;
    for (let count_n = 0; count_n < least_n && count_n <= units_n; count_n++) sum += chances(count_n);
    return Math.max(0, Math.min(1, 1 - sum));
  };
  if (batch_n === undefined || infested_n === undefined) {
    if (prevalence_frac === undefined)
      throw new RangeError("neither share infested nor batch with infested ones is given");
    within("prevalence_frac", prevalence_frac, 0, 1);
    const chance_frac = prevalence_frac * sight_frac + (1 - prevalence_frac) * (1 - specificity_frac);
    return fewer((count_n) => binomial_frac({ of_n: units_n, count_n, chance_frac }));
  }
  refuseOtherBatch({ batch_n, infested_n });
  within("units_n", units_n, 1, batch_n);
  const drawn = [...infestedDrawn(batch_n, infested_n, units_n)].filter(([, chance]) => chance > 1e-15);
  return fewer((count_n) =>
    drawn.reduce((sum, [j, chance]) => {
      let both = 0;
      for (let k = 0; k <= Math.min(j, count_n); k++)
        both +=
          binomial_frac({ of_n: j, count_n: k, chance_frac: sight_frac }) *
          binomial_frac({ of_n: units_n - j, count_n: count_n - k, chance_frac: 1 - specificity_frac });
      return sum + chance * both;
    }, 0),
  );
}

/**
 * Smallest sample that tells an infested batch from a clean one though clean plants can be taken for infested ones.
 *
 * Up to so many positives are accepted; rejection begins with one more: the printed help of one program is one off here.
 *
 * @param aim plants in the batch, 10 to 20000; share infested, 0.001 to 1; chances to see it where it is, and to be right where it is not, 0.5 to 1; positives accepted, 0 to 100; confidence either way, 0.5 to 0.999, 0.95 unless given
 * @returns plants; 0 where no sample does
 * @throws QuantityError outside those ranges
 * @source CameronBaldock1998
 * @see checks/pests.json 063
 * @example unitsWithFalseFinds_n({ batch_n: 5000, prevalence_frac: 0.05, sight_frac: 0.95, specificity_frac: 0.98, accepted_n: 7 }) // 194
 */
export function unitsWithFalseFinds_n(aim: {
  readonly batch_n: number;
  readonly prevalence_frac: number;
  readonly sight_frac: number;
  readonly specificity_frac: number;
  readonly accepted_n: number;
  readonly confidence_frac?: number;
}): number {
  const { batch_n, prevalence_frac, sight_frac, specificity_frac, accepted_n, confidence_frac = 0.95 } = aim;
  within("batch_n", batch_n, 10, 20_000);
  within("prevalence_frac", prevalence_frac, 0.001, 1);
  within("sight_frac", sight_frac, 0.5, 1);
  within("specificity_frac", specificity_frac, 0.5, 1);
  within("accepted_n", accepted_n, 0, 100);
  within("confidence_frac", confidence_frac, 0.5, 0.999);
  const infested_n = Math.max(1, Math.round(batch_n * prevalence_frac));
  const finds = (units_n: number, infested: number): number =>
    finds_frac({
      units_n,
      least_n: accepted_n + 1,
      sight_frac,
      specificity_frac,
      batch_n,
      infested_n: infested,
    });
  // Sensitivity rises with the sample: bisect, then see whether clean batches still pass.
  let [low, high] = [accepted_n, Math.min(batch_n, 5000)];
  if (finds(high, infested_n) < confidence_frac) return 0;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (finds(middle, infested_n) >= confidence_frac) high = middle;
    else low = middle;
  }
  return 1 - finds(high, 0) >= confidence_frac ? high : 0;
}

/**
 * Exact 95 % interval of a share (Clopper and Pearson).
 *
 * @param sample number with it, 0 to 100000, whole; number looked at, 1 to 100000, at least as many; confidence, 0.5 to 0.999, 0.95 unless given
 * @returns both ends
 * @throws QuantityError outside those ranges
 * @source RSurveillance
 * @see checks/pests.json 051
 * @example exactInterval({ with_n: 25, of_n: 200 }).low_frac // 0.08255
 */
export function exactInterval(sample: {
  readonly with_n: number;
  readonly of_n: number;
  readonly confidence_frac?: number;
}): { readonly low_frac: number; readonly high_frac: number } {
  const { with_n, of_n, confidence_frac = 0.95 } = sample;
  within("of_n", of_n, 1, 100_000);
  within("with_n", with_n, 0, 100_000);
  within("with_n", with_n, 0, of_n);
  within("confidence_frac", confidence_frac, 0.5, 0.999);
  const tail = (1 - confidence_frac) / 2;
  const upTo = (last: number, chance_frac: number): number => {
    let sum = 0;
    for (let count_n = 0; count_n <= last; count_n++) sum += binomial_frac({ of_n, count_n, chance_frac });
    return sum;
  };
  const solve = (isHigher: (chance: number) => boolean): number => {
    let [low, high] = [0, 1];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (isHigher(middle)) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  return {
    low_frac: with_n === 0 ? 0 : solve((chance) => 1 - upTo(with_n - 1, chance) < tail),
    high_frac: with_n === of_n ? 1 : solve((chance) => upTo(with_n, chance) > tail),
  };
}

/**
 * Upper 95 % bound of a share of which none was seen: three over n, and exactly.
 *
 * @param sample plants looked at, 1 to 1000000
 * @returns both bounds
 * @throws QuantityError outside that range
 * @source our assumption; the rule of three
 * @see checks/pests.json 065
 * @example noneSeen({ units_n: 30 }).exact_frac // 0.095
 */
export function noneSeen(sample: { readonly units_n: number }): {
  readonly rule_frac: number;
  readonly exact_frac: number;
} {
  within("units_n", sample.units_n, 1, 1_000_000);
  return { rule_frac: Math.min(1, 3 / sample.units_n), exact_frac: 1 - 0.05 ** (1 / sample.units_n) };
}

import { within } from "../errors/index.ts";

/**
 * Pace of new roots after root work.
 *
 * τ = 10 d × 2^((24 − T)/8), T between 14 and 30 °C
 *
 * @param medium_C temperature of the medium [°C], 0 to 50; counted as 14 below and 30 above
 * @returns time for the loss to fall to a third and a little [d]
 * @throws QuantityError outside that range
 * @source our assumption
 * @example rootRegrowth_d(24) // 10
 */
export function rootRegrowth_d(medium_C: number): number {
  within("medium_C", medium_C, 0, 50);
  return 10 * 2 ** ((24 - Math.min(30, Math.max(14, medium_C))) / 8);
}

/**
 * Water use of a plant with fewer roots, as a share of what it used before.
 *
 * R = 1 − (1 − R0^g) exp(−t/τ)
 *
 * @param plant share of the roots kept, 0.05 to 1; days since [d], 0 to 400; exponent g, 0.3 to 1, 0.5 unless given; pace τ [d], 3 to 60, 10 unless given
 * @returns share, 0 to 1; rises with time
 * @throws QuantityError outside those ranges
 * @source our assumption; g and τ are learned from weights of the pot
 * @see checks/medium-repot.json 109
 * @example rootLimitedUse_frac({ rootsKept_frac: 0.5, since_d: 7 }) // 0.855
 */
export function rootLimitedUse_frac(plant: {
  readonly rootsKept_frac: number;
  readonly since_d: number;
  readonly exponent?: number;
  readonly regrowth_d?: number;
}): number {
  const { rootsKept_frac, since_d, exponent = 0.5, regrowth_d = 10 } = plant;
  within("rootsKept_frac", rootsKept_frac, 0.05, 1);
  within("since_d", since_d, 0, 400);
  within("exponent", exponent, 0.3, 1);
  within("regrowth_d", regrowth_d, 3, 60);
  return 1 - (1 - rootsKept_frac ** exponent) * Math.exp(-since_d / regrowth_d);
}

/**
 * Days until the roots carry so much of the former use again.
 *
 * t = τ ln((1 − R0^g) / (1 − R))
 *
 * @param plant share of the roots kept, 0.05 to 1; use wanted, 0.1 to 0.99, as a share; exponent g, 0.3 to 1; pace τ [d], 3 to 60
 * @returns days, 0 where they carry it now
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example rootsCarry_d({ rootsKept_frac: 0.5, useWanted_frac: 0.85 }) // 6.7
 */
export function rootsCarry_d(plant: {
  readonly rootsKept_frac: number;
  readonly useWanted_frac: number;
  readonly exponent?: number;
  readonly regrowth_d?: number;
}): number {
  const { rootsKept_frac, useWanted_frac, exponent = 0.5, regrowth_d = 10 } = plant;
  within("rootsKept_frac", rootsKept_frac, 0.05, 1);
  within("useWanted_frac", useWanted_frac, 0.1, 0.99);
  within("exponent", exponent, 0.3, 1);
  within("regrowth_d", regrowth_d, 3, 60);
  const short = 1 - rootsKept_frac ** exponent;
  return short <= 1 - useWanted_frac ? 0 : regrowth_d * Math.log(short / (1 - useWanted_frac));
}

/**
 * Leaves that cut roots can carry on the day of root work.
 *
 * L ≤ c R0^g, with c 0.8 in the days after a wash
 *
 * @param plant share of the roots kept, 0.05 to 1; share that washed roots carry, 0.5 to 1, 0.8 unless given; exponent g, 0.3 to 1
 * @returns share of the leaves to leave at most
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example leavesToLeave_frac({ rootsKept_frac: 0.5 }) // 0.57
 */
export function leavesToLeave_frac(plant: {
  readonly rootsKept_frac: number;
  readonly washed_frac?: number;
  readonly exponent?: number;
}): number {
  const { rootsKept_frac, washed_frac = 0.8, exponent = 0.5 } = plant;
  within("rootsKept_frac", rootsKept_frac, 0.05, 1);
  within("washed_frac", washed_frac, 0.5, 1);
  within("exponent", exponent, 0.3, 1);
  return washed_frac * rootsKept_frac ** exponent;
}

/**
 * Water potential of fresh pepper transplants that nobody waters, at 30 °C by day and 25 °C by night.
 *
 * −500 kPa at the start to −2000 kPa after 48 h, along a line: the first watering is never skipped
 *
 * @param dry_h hours without water, 0 to 48
 * @returns leaf water potential [kPa], below 0
 * @throws QuantityError outside that range
 * @source HortSci1991
 * @see checks/medium-repot.json 100
 * @example unwateredPotential_kPa(48) // -2000
 */
export function unwateredPotential_kPa(dry_h: number): number {
  within("dry_h", dry_h, 0, 48);
  return -500 - 1500 * (dry_h / 48);
}

/** Root work of the trial on young chile transplants that did as well as intact ones in two seasons. */
const TRIED_frac: Readonly<Record<string, number>> = { intact: 1, washed: 1, "pruned 50 %": 0.5 };

/**
 * Whether young chile transplants after root work were seen to survive less than intact ones.
 *
 * A trial over two seasons found no difference for washed roots and for half of them cut off: young plants, not old potted ones.
 *
 * @param treatments what was done to the roots, by the words of the trial
 * @returns none where all were tried; not tried where one was not
 * @source GalindoReyes2024
 * @see checks/medium-repot.json 099
 */
export function survivalDifference(treatments: readonly string[]): "none" | "not tried" {
  return treatments.every((each) => each in TRIED_frac) ? "none" : "not tried";
}

import { normalProbability, probitUpdate } from "../chance/index.ts";
import { CAPACITY, DEPLETION, EYE, type PotState } from "./pot-filter-state.ts";
import { conditioned, expectedOf, type Seen } from "./pot-filter-update.ts";

/** What a person means by a look: at what depletion half say yes, and how unevenly. */
export interface LookMeaning {
  /** Depletion as a share of capacity at which half say yes. */
  readonly at_frac: number;
  /** Spread as a share of capacity. */
  readonly spread_frac: number;
}

/** Who looks. */
export interface Looker {
  /** Variance beyond the pot's own eye: somebody else than those who usually tend it. */
  readonly otherEye_frac2: number;
}

/** Those who usually tend the pot; their common eye is a state of the pot. */
export const USUAL_LOOKER: Looker = { otherEye_frac2: 0 };
/**
 * People differ by about this share of the capacity in what they call dry: a tenth in what they mean by it (air-water sheet F6), and as
 * much again because some go by the surface, which dries first, and some lift the pot. @source our assumption
 */
export const EYE_SD_frac = 0.13;
/** A stranger's eye lies off by their own and by the learned one's difference. */
export const OTHER_LOOKER: Looker = { otherEye_frac2: 2 * EYE_SD_frac ** 2 };

/**
 * A soft look (F6): "looked dry", "light when lifted", yes or no.
 *
 * P(yes) = Φ((D - (a + o) W) / (s W)) with o the eye of those who tend the pot: what they call dry tells of the water and of
 * their eye, as far as each is in doubt; the capacity W is considered, not learned. The first two moments of the sum are exact.
 *
 * @param state 35 numbers
 * @param yes whether the person said yes
 * @param meaning threshold and spread, shares of capacity
 * @param looker usual or other
 * @param sinceUse_g water used since the look was made, g, where the look is folded later
 * @returns state after it
 * @source Rasmussen CE, Williams CKI (2006) Gaussian processes for machine learning, section 3.9, from memory
 */
export function withLook(
  state: PotState,
  yes: boolean,
  meaning: LookMeaning,
  looker: Looker = USUAL_LOOKER,
  sinceUse_g = 0,
): PotState {
  const capacity_g = state[CAPACITY] as number;
  const at_frac = meaning.at_frac + (state[EYE] as number);
  // What somebody calls dry says how dry a pot is and what their eye is like. Of its size it says little, and hundreds of such
  // looks together must not pretend to know it: the capacity's doubt counts, but a look does not move it.
  const seen = { weights: [1, 0, 0, 0, 0, -at_frac, -capacity_g], considered: [CAPACITY] };
  const mean_g = (state[DEPLETION] as number) - at_frac * capacity_g - sinceUse_g;
  const spread_g = capacity_g * Math.sqrt(meaning.spread_frac ** 2 + looker.otherEye_frac2);
  return probed(state, seen, yes, mean_g, spread_g);
}

/**
 * A sign of the plant itself, as lasting droop: like a look, but nobody's eye is in it.
 *
 * @param state 35 numbers
 * @param yes whether it was seen
 * @param meaning threshold and spread, shares of capacity
 * @returns state after it
 * @source Rasmussen CE, Williams CKI (2006) Gaussian processes for machine learning, section 3.9, from memory
 */
export function withSign(state: PotState, yes: boolean, meaning: LookMeaning): PotState {
  const capacity_g = state[CAPACITY] as number;
  const seen = { weights: [1, 0, 0, 0, 0, -meaning.at_frac] };
  const mean_g = (state[DEPLETION] as number) - meaning.at_frac * capacity_g;
  return probed(state, seen, yes, mean_g, meaning.spread_frac * capacity_g);
}

function probed(state: PotState, seen: Seen, yes: boolean, mean: number, spread: number): PotState {
  const expected = expectedOf(state, seen);
  const known = probitUpdate({
    mean,
    variance: expected.variance,
    threshold: 0,
    spread: Math.max(1e-3, spread),
    yes,
  });
  // The sum is not linear in capacity and eye together, so its mean is given and only its change is handed on.
  return conditioned(state, seen, { ...expected, mean }, { mean: known.mean, variance: known.variance });
}

/**
 * Learns whether depletion had passed an amount of water: nothing ran out (it had), or some did (it had not).
 *
 * P(yes) = Φ((D - V) / s); the capacity follows through what it has in common with the depletion
 *
 * @param state 35 numbers
 * @param yes whether depletion had passed the amount
 * @param amount_g the amount, g
 * @param spread_g how sharp that bound is, g
 * @returns state after it
 * @source Rasmussen CE, Williams CKI (2006) Gaussian processes for machine learning, section 3.9, from memory
 */
export function withBound(state: PotState, yes: boolean, amount_g: number, spread_g: number): PotState {
  // That some ran out may be a wrong demand as well as a small pot; only "nothing ran out" speaks of the pot's size.
  const seen = { weights: [1] };
  return probed(state, seen, yes, (state[DEPLETION] as number) - amount_g, spread_g);
}

/**
 * Chance that depletion has passed a share of the capacity.
 *
 * @param state 35 numbers
 * @param at_frac share of capacity, 0 to 1.2
 * @returns chance, 0 to 1
 * @source normal distribution of a weighted sum
 */
export function chancePast(state: PotState, at_frac: number): number {
  const expected = expectedOf(state, { weights: [1, 0, 0, 0, 0, -at_frac] });
  return normalProbability(expected.mean / Math.sqrt(Math.max(expected.variance, 1e-9)));
}

/**
 * Chance that depletion has passed an amount of water.
 *
 * @param state 35 numbers
 * @param amount_g depletion, g
 * @returns chance, 0 to 1
 * @source normal distribution
 */
export function chancePastAmount(state: PotState, amount_g: number): number {
  const expected = expectedOf(state, { weights: [1] });
  return normalProbability(((state[DEPLETION] as number) - amount_g) / Math.sqrt(expected.variance));
}

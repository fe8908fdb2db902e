import { normalProbability, probitUpdate } from "../chance/index.ts";
import { CAPACITY, DEPLETION, type PotState } from "./pot-filter-state.ts";
import { conditioned, expectedOf } from "./pot-filter-update.ts";

/** What a person means by a look: at what depletion half say yes, and how unevenly. */
export interface LookMeaning {
  /** Depletion as a share of capacity at which half say yes. */
  readonly at_frac: number;
  /** Spread as a share of capacity. */
  readonly spread_frac: number;
}

/** How far a person's yes lies from other people's, learned on this pot alone. */
export interface PersonOffset {
  readonly mean_frac: number;
  readonly variance: number;
}

/** Before anything is known, people differ by about this share of the capacity. @source our assumption */
export const NEW_PERSON: PersonOffset = { mean_frac: 0, variance: 0.1 ** 2 };

/** The state and the person after a look. */
export interface Looked {
  readonly state: PotState;
  readonly offset: PersonOffset;
  /** How likely the answer was beforehand. */
  readonly chance_frac: number;
}

/**
 * A soft look (F6): "looked dry", "light when lifted", "leaves droop", yes or no.
 *
 * P(yes) = Φ((D - (a + o) W) / (s W)); the first two moments of the sum are exact, the other states follow by the
 * usual gain. A look never moves the capacity, unless asked to, since a person's own idea of dry would.
 *
 * @param state 27 numbers
 * @param yes whether the person said yes
 * @param meaning threshold and spread, shares of capacity
 * @param offset the person's offset
 * @param sinceUse_g water used since the look was made, g, where the look is folded later
 * @param movesCapacity whether the look also teaches the capacity (lasting droop does)
 * @returns state and person after it
 * @source Rasmussen CE, Williams CKI (2006) Gaussian processes for machine learning, section 3.9, from memory
 */
export function withLook(
  state: PotState,
  yes: boolean,
  meaning: LookMeaning,
  offset: PersonOffset,
  sinceUse_g = 0,
  movesCapacity = false,
): Looked {
  const capacity_g = state[CAPACITY] as number;
  const at_frac = meaning.at_frac + offset.mean_frac;
  const seen = {
    weights: [1, 0, 0, 0, 0, -at_frac],
    considered: movesCapacity ? [] : [CAPACITY],
  };
  const expected = expectedOf(state, seen);
  const personVariance_g2 = offset.variance * capacity_g ** 2;
  const look = { mean: expected.mean - sinceUse_g, threshold: 0, yes };
  const spread_g = Math.max(1e-3, meaning.spread_frac * capacity_g);
  // The person's doubt widens the eye for the pot, and the pot's doubt widens it for the person.
  const ofPot = probitUpdate({
    ...look,
    variance: expected.variance,
    spread: Math.sqrt(spread_g ** 2 + personVariance_g2),
  });
  const ofPerson = probitUpdate({
    ...look,
    variance: personVariance_g2,
    spread: Math.sqrt(spread_g ** 2 + expected.variance),
  });
  const known = { mean: ofPot.mean + sinceUse_g, variance: ofPot.variance };
  return {
    state: conditioned(state, seen, expected, known),
    offset: {
      // A yes earlier than expected says that this person's threshold is lower: the offset moves against the pot.
      mean_frac: within1(offset.mean_frac - (ofPerson.mean - look.mean) / capacity_g),
      variance: Math.max(1e-6, ofPerson.variance / capacity_g ** 2),
    },
    chance_frac: ofPot.probability,
  };
}

/** No person's idea of dry lies further off than this share of the capacity. @source our assumption */
function within1(offset_frac: number): number {
  return Math.max(-0.4, Math.min(0.4, offset_frac));
}

/**
 * Chance that depletion has passed a share of the capacity.
 *
 * @param state 27 numbers
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
 * @param state 27 numbers
 * @param amount_g depletion, g
 * @returns chance, 0 to 1
 * @source normal distribution
 */
export function chancePastAmount(state: PotState, amount_g: number): number {
  const expected = expectedOf(state, { weights: [1, 0, 0, 0, 0, 0] });
  return normalProbability(((state[DEPLETION] as number) - amount_g) / Math.sqrt(expected.variance));
}

import { normalProbability } from "../chance/index.ts";
import { chancePast, chancePastAmount, type LookMeaning, withBound, withSign } from "./pot-filter-look.ts";
import {
  type Belief,
  CAPACITY,
  covarianceIndex,
  DEPLETION,
  EYE,
  type PotState,
  STATES_n,
  setAnew,
  tidy,
  VARIANCE,
} from "./pot-filter-state.ts";
import { expectedOf, measured } from "./pot-filter-update.ts";

/** A watering as it was written. */
export interface Pour {
  readonly volume_mL: number;
  readonly drained: "yes" | "no" | "unknown";
  readonly leachate_mL?: number;
  /** Stood in water up to the rim: nothing can run past a dry core. */
  readonly soaked?: boolean;
}

/** How a watering is read; shares of capacity or of the volume. */
export interface PourMeaning {
  /** Depletion left after water ran out, and its sd, shares of capacity. */
  readonly drainedAt_frac: number;
  readonly drainedSd_frac: number;
  /** What a pot that had dried fully no longer takes up, and its sd: dried peat rewets to less than it held. */
  readonly hysteresis_frac: number;
  readonly hysteresisSd_frac: number;
  /** Depletion beyond which water may run past a dry core. */
  readonly bypassFrom_frac: number;
  /** Share of a pour that a dry core keeps. */
  readonly bypassKept_frac: number;
}

/**
 * @source air-water sheet F7 and W4: retention of peat shows about 20 % hysteresis, dried peat can end 30 % lower (abstracts);
 * taken at half of that here, since few pots dry right through: our assumption
 */
export const USUAL_POUR: PourMeaning = {
  drainedAt_frac: 0.02,
  drainedSd_frac: 0.08,
  hysteresis_frac: 0.1,
  hysteresisSd_frac: 0.08,
  bypassFrom_frac: 0.7,
  bypassKept_frac: 0.5,
};

/** Where a pour went. poured = kept + drained. */
export interface Poured {
  readonly state: PotState;
  readonly kept_g: number;
  readonly drained_g: number;
  /** Change of depletion that the pour cannot account for: what its outcome taught. */
  readonly putRight_g: number;
}

/**
 * Volumes are read off a jug to about this share: 0.08 in one pour (air-water sheet F7), and a hand that errs the same way in every
 * pour, which many pours do not average out. @source our assumption for the latter
 */
const JUG_SD_frac = 0.15;
const LEACHATE_SD_frac = 0.03;
/**
 * "It ran out" says that no more was missing than was poured, give or take this share of the capacity; less sharply so
 * in a dry medium, past which water runs before it is full. @source our assumption
 */
const RAN_OUT_SPREAD_frac = { moist: 0.2, dry: 0.35 };
const SHARP_UP_TO_frac = 0.6;

/**
 * A watering (F7): what ran out, or did not, tells how empty the pot was; a very dry medium may have let the water
 * run past (bypass), which keeps the doubt wide until a weight is known.
 *
 * @param state 35 numbers
 * @param pour volume [mL], 1 to 20000, whether water ran out, how much
 * @param meaning how a pour is read
 * @returns state after it and where the water went; kept + drained = volume
 * @source air-water sheet F7: mixture of wetted and bypassed, matched in two moments
 */
export function withPour(state: PotState, pour: Pour, meaning: PourMeaning = USUAL_POUR): Poured {
  const before_g = state[DEPLETION] as number;
  const next =
    pour.drained === "yes"
      ? afterDrained(state, pour, meaning)
      : pour.drained === "no"
        ? afterKept(state, pour)
        : afterUnknown(state, pour, meaning);
  const after_g = next[DEPLETION] as number;
  const kept_g = Math.min(pour.volume_mL, Math.max(0, before_g - after_g));
  return {
    state: next,
    kept_g,
    drained_g: pour.volume_mL - kept_g,
    putRight_g: after_g - before_g + kept_g,
  };
}

/** At most six times in ten does water run past a dry core. @source air-water sheet F7 (assumption there) */
const MOST_BYPASS_frac = 0.6;
const NO_BYPASS_frac = 0.01;

function afterDrained(state: PotState, pour: Pour, meaning: PourMeaning): PotState {
  const learned = learnedFromDrain(state, pour, meaning);
  const wetted = setAnew(learned, DEPLETION, drainedBelief(state, meaning, pour.soaked));
  // Bypass is likelier the drier the pot may have been, but never certain.
  const bypassed_frac = pour.soaked ? 0 : MOST_BYPASS_frac * chancePast(learned, meaning.bypassFrom_frac);
  if (bypassed_frac < NO_BYPASS_frac) return wetted;
  const kept_g =
    pour.leachate_mL === undefined
      ? meaning.bypassKept_frac * pour.volume_mL
      : pour.volume_mL - pour.leachate_mL;
  return mixed(wetted, lessDepleted(learned, kept_g, 0.3 * kept_g), bypassed_frac);
}

/**
 * What is believed of the depletion of a pot that has just drained: next to nothing, a little more if it had been dry.
 *
 * @param before state before the pour, 35 numbers
 * @param meaning how a pour is read
 * @param soaked stood in water up to the rim: rewetted through
 * @returns mean and sd of the depletion, g
 * @source air-water sheet F7, W4
 */
export function drainedBelief(before: PotState, meaning: PourMeaning = USUAL_POUR, soaked = false): Belief {
  const capacity_g = before[CAPACITY] as number;
  const dry_frac = soaked ? 0 : Math.min(1, Math.max(0, (before[DEPLETION] as number) / capacity_g));
  return {
    mean: (meaning.drainedAt_frac + meaning.hysteresis_frac * dry_frac) * capacity_g,
    sd: (meaning.drainedSd_frac + meaning.hysteresisSd_frac * dry_frac) * capacity_g,
  };
}

function learnedFromDrain(state: PotState, pour: Pour, meaning: PourMeaning): PotState {
  if (pour.soaked) return state;
  const capacity_g = state[CAPACITY] as number;
  const dry_frac = (state[DEPLETION] as number) / capacity_g;
  if (pour.leachate_mL !== undefined && dry_frac < meaning.bypassFrom_frac) {
    // What went in and stayed is what was missing.
    const missing_g = pour.volume_mL - pour.leachate_mL;
    const sd_g = Math.hypot(LEACHATE_SD_frac * pour.volume_mL, 0.05 * capacity_g);
    const seen = { weights: [1, 0, 0, 0, 0, -meaning.drainedAt_frac] };
    return measured(state, seen, missing_g, sd_g).state;
  }
  const bounded = ranOutBound(state, pour, dry_frac, capacity_g);
  // Hands stop soon after it runs, and jugs are chosen to suit: most of what was poured was missing. Of a pot that is believed empty
  // or smaller than the jug this must be heard most: only ever told that no more was missing, its store would shrink pour by pour.
  const sd_g = Math.hypot(USUAL_POUR_SD_frac * pour.volume_mL, 0.08 * capacity_g);
  return measured(bounded, { weights: [1] }, USUAL_POUR_KEPT_frac * pour.volume_mL, sd_g).state;
}

/** Whether pots get water that nobody writes down, and when. */
export interface UnwrittenHabit {
  /** Chance that a dry pot is watered on a given day. */
  readonly pourPerDay_frac: number;
  /** Share of pours that nobody writes down. */
  readonly unwritten_frac: number;
  /** At what depletion half of those who tend it would water it, beside their eye. */
  readonly dry: LookMeaning;
}

/** What a pot holds after a pour that nobody saw: most of its store, give or take. @source our assumption */
const AFTER_UNWRITTEN = { mean_frac: 0.12, sd_frac: 0.12 };
const UNLIKELY_frac = 0.004;
const CANNOT_BE_DRY_frac = 0.4;

/**
 * One day without a word at a pot that should be dry: the longer it goes on, the likelier somebody watered it and did not write.
 *
 * h = chance that it would have been watered today; without a note either nobody did (1 − h) or somebody did and kept silent
 * (u h): p = u h / (u h + 1 − h); both states are matched by one in mean and covariance
 *
 * @param state 35 numbers
 * @param habit how likely a dry pot is watered on a day, and how likely that is written
 * @returns state after the day
 * @source Bayes' rule; shares our assumption
 */
export function withUnwrittenPour(state: PotState, habit: UnwrittenHabit): PotState {
  const poured = wateredToday_frac(state, habit);
  const silent = habit.unwritten_frac * poured;
  const silent_frac = silent / (silent + 1 - poured);
  if (!(silent_frac > UNLIKELY_frac)) return state;
  return mixed(state, afterUnwrittenPour(state), silent_frac);
}

/**
 * Chance that somebody who goes by how dry a pot is waters it on a day.
 *
 * h = q Φ((D − (a + o) W) / s), with the doubts of depletion, store and eye in s
 *
 * @param state 35 numbers
 * @param habit chance that a dry pot is watered on a day, and what is called dry
 * @returns chance, 0 to 1; 0 of a pot that cannot be dry
 * @source normal distribution of a weighted sum; shares our assumption
 */
export function wateredToday_frac(
  state: PotState,
  habit: Pick<UnwrittenHabit, "pourPerDay_frac" | "dry">,
): number {
  const capacity_g = state[CAPACITY] as number;
  const depletion_g = state[DEPLETION] as number;
  if (!(depletion_g > CANNOT_BE_DRY_frac * capacity_g)) return 0;
  const at_frac = habit.dry.at_frac + (state[EYE] as number);
  const expected = expectedOf(state, { weights: [1, 0, 0, 0, 0, -at_frac, -capacity_g] });
  const spread_g = Math.hypot(Math.sqrt(expected.variance), habit.dry.spread_frac * capacity_g);
  const wanted = normalProbability((depletion_g - at_frac * capacity_g) / Math.max(1e-6, spread_g));
  return habit.pourPerDay_frac * wanted;
}

/**
 * The state of a pot that was watered without a word.
 *
 * @param state 35 numbers, as if nobody had
 * @returns state with most of its store, give or take
 * @source our assumption
 */
export function afterUnwrittenPour(state: PotState): PotState {
  const capacity_g = state[CAPACITY] as number;
  return setAnew(state, DEPLETION, {
    mean: AFTER_UNWRITTEN.mean_frac * capacity_g,
    sd: AFTER_UNWRITTEN.sd_frac * capacity_g,
  });
}

/** Share of a usual pour that stays in the pot, and how far people differ in it. @source our assumption */
const USUAL_POUR_KEPT_frac = 0.85;
const USUAL_POUR_SD_frac = 0.5;

function ranOutBound(state: PotState, pour: Pour, dry_frac: number, capacity_g: number): PotState {
  const dryness = Math.min(1, Math.max(0, (dry_frac - SHARP_UP_TO_frac) / (1 - SHARP_UP_TO_frac)));
  const spread_frac =
    RAN_OUT_SPREAD_frac.moist + dryness * (RAN_OUT_SPREAD_frac.dry - RAN_OUT_SPREAD_frac.moist);
  return withBound(state, false, pour.volume_mL, spread_frac * capacity_g);
}

function afterKept(state: PotState, pour: Pour): PotState {
  const capacity_g = state[CAPACITY] as number;
  // Nothing ran out, so at least the volume was missing.
  const sd_g = JUG_SD_frac * pour.volume_mL;
  const missing = withBound(state, true, pour.volume_mL, sd_g + 0.02 * capacity_g);
  // And no more can be missing than the pot can hold: that bounds the capacity from below.
  return lessDepleted(notEmpty(missing), pour.volume_mL, sd_g);
}

/** A plant that nobody saw wilt has not used up its store, give or take. @source our assumption */
const EMPTY = { at_frac: 1.02, spread_frac: 0.06 };
const NEARLY_EMPTY_frac = 0.6;

/**
 * Learns from a plant that stands: no more can be missing than the pot can hold, which bounds the capacity from below.
 *
 * @param state 35 numbers
 * @returns state after it; the same where the pot is far from empty
 * @source our assumption
 */
export function notEmpty(state: PotState): PotState {
  if (!((state[DEPLETION] as number) > NEARLY_EMPTY_frac * (state[CAPACITY] as number))) return state;
  return withSign(state, false, EMPTY);
}

function afterUnknown(state: PotState, pour: Pour, meaning: PourMeaning): PotState {
  const kept_frac = chancePastAmount(state, pour.volume_mL);
  if (kept_frac > 0.999) return afterKept(state, pour);
  if (kept_frac < 0.001) return afterDrained(state, pour, meaning);
  return mixed(afterDrained(state, pour, meaning), afterKept(state, pour), kept_frac);
}

function lessDepleted(state: PotState, kept_g: number, sd_g: number): PotState {
  const next = state.slice();
  next[DEPLETION] = (next[DEPLETION] as number) - kept_g;
  const at = VARIANCE[DEPLETION] as number;
  next[at] = (next[at] as number) + sd_g ** 2;
  tidy(next);
  return next;
}

/**
 * Two possible states matched by one in mean and covariance.
 *
 * @param one 35 numbers
 * @param other 35 numbers
 * @param other_frac chance of the other, 0 to 1
 * @returns state of the mixture
 * @source law of total covariance
 */
export function mixed(one: PotState, other: PotState, other_frac: number): PotState {
  const next = one.slice();
  const one_frac = 1 - other_frac;
  for (let index = 0; index < next.length; index++) {
    next[index] = one_frac * (one[index] as number) + other_frac * (other[index] as number);
  }
  for (let row = 0; row < STATES_n; row++) {
    const apart = (one[row] as number) - (other[row] as number);
    for (let column = row; column < STATES_n; column++) {
      const at = covarianceIndex(row, column);
      next[at] =
        (next[at] as number) +
        one_frac * other_frac * apart * ((one[column] as number) - (other[column] as number));
    }
  }
  tidy(next);
  return next;
}

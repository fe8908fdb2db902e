import {
  CAPACITY,
  conditioned,
  DEPLETION,
  expectedOf,
  meanOf,
  type PotState,
  quantileOf,
  sdOfSum,
  shareUpTo,
} from "@sillwood/science/water";
import type { Outward, Question } from "../craft.ts";
import type { Decision } from "./decide.ts";
import { hasWeight } from "./events.ts";
import type { WaterForecast } from "./forecast.ts";
import { LOOK_MEANINGS } from "./look-meanings.ts";
import { wateringWords } from "./words.ts";

const DAY_ms = 86_400_000;
const WEIGH_s = 20;
const LIFT_s = 5;
/** Not worth a question below this narrowing of the 80 % range, days. @source our assumption */
const LEAST_WORTH_d = 0.5;
/** A first weight just drained shows its worth over the next cycles; it is ranked by this share of the range. */
const DRAINED_WORTH_frac = 0.3;
const FAR_OFF_d = 6;
/** A pot this likely dry already is watered, whatever the scale says. @source our assumption */
const SURELY_DRY_frac = 0.9;

/** At most one question: the measurement that narrows the dates most, where that could change a visit. */
export function questionOf(
  forecast: WaterForecast,
  decision: Decision,
  sight: Outward,
): Question | undefined {
  const { draws, slice } = forecast;
  const low_d = quantileOf(draws.dry_d, 0.1);
  const high_d = quantileOf(draws.dry_d, 0.9);
  const width_d = high_d - low_d;
  const changes = low_d < FAR_OFF_d && width_d > 1 && shareUpTo(draws.dry_d, 0) < SURELY_DRY_frac;
  if (!changes) return undefined;
  const words = wateringWords(sight.say).question;
  const number = sight.say.name(sight.plant.id);
  const weigh_frac = narrowedBy(slice.state, forecast, weighed(slice.state, sight));
  const lift_frac = narrowedBy(slice.state, forecast, lifted(slice.state));
  const now = sight.say.days(at(low_d, forecast), at(high_d, forecast));
  const then = (frac: number) => {
    const middle_d = quantileOf(draws.dry_d, 0.5);
    return sight.say.days(
      at(middle_d + (low_d - middle_d) * frac, forecast),
      at(middle_d + (high_d - middle_d) * frac, forecast),
    );
  };
  const weighWorth_d = width_d * (1 - weigh_frac);
  const liftWorth_d = width_d * (1 - lift_frac);
  // A measurement after which the same days would be said is no question.
  const tells = (frac: number) => then(frac) !== now;
  if (weighWorth_d > LEAST_WORTH_d && weighWorth_d >= liftWorth_d && tells(weigh_frac)) {
    return {
      work: "weigh",
      worth_d: weighWorth_d,
      said: words.weigh(number, WEIGH_s, now, then(weigh_frac)),
      seconds: WEIGH_s,
    };
  }
  if (liftWorth_d > LEAST_WORTH_d && tells(lift_frac)) {
    return {
      work: "look",
      worth_d: liftWorth_d,
      said: words.lift(number, LIFT_s, now, then(lift_frac)),
      seconds: LIFT_s,
    };
  }
  const drainedWorth_d = width_d * DRAINED_WORTH_frac;
  if (!hasWeight(slice) && decision.now && drainedWorth_d > LEAST_WORTH_d) {
    return {
      work: "weigh",
      worth_d: drainedWorth_d,
      said: words.weighDrained(number, WEIGH_s),
      seconds: WEIGH_s,
    };
  }
  return undefined;
}

const at = (wait_d: number, { now_ms }: WaterForecast) => now_ms + Math.max(0, wait_d) * DAY_ms;

/** Days by which one weighing would narrow the 80 % range; 0 where it would not. */
export function weighingWorth_d(forecast: WaterForecast, sight: Outward): number {
  const { draws, slice } = forecast;
  const width_d = quantileOf(draws.dry_d, 0.9) - quantileOf(draws.dry_d, 0.1);
  return width_d * (1 - narrowedBy(slice.state, forecast, weighed(slice.state, sight)));
}

/** Relative width of the dates after a measurement that leaves this state. */
function narrowedBy(before: PotState, forecast: WaterForecast, after: PotState): number {
  const spread = (state: PotState) => {
    const left_g = forecast.threshold_frac * meanOf(before, CAPACITY) - meanOf(before, DEPLETION);
    const distance = sdOfSum(state, [1, Math.max(0, left_g), 0, 0, 0, -forecast.threshold_frac]);
    return Math.hypot(distance, 0.1 * forecast.threshold_frac * meanOf(before, CAPACITY));
  };
  return Math.min(1, spread(after) / Math.max(1e-9, spread(before)));
}

function weighed(state: PotState, sight: Outward): PotState {
  const seen = { weights: [-1, 0, 0, 1, 0, 0] };
  const expected = expectedOf(state, seen);
  const noise = Math.max(sight.assumed("scaleStep_g"), 0.003 * expected.mean) ** 2;
  const variance = (expected.variance * noise) / (expected.variance + noise);
  return conditioned(state, seen, expected, { mean: expected.mean, variance });
}

/** A lift leaves, on average over both answers, about what a linear look of the same spread would. */
function lifted(state: PotState): PotState {
  const { at_frac, spread_frac } = LOOK_MEANINGS.light;
  const seen = { weights: [1, 0, 0, 0, 0, -at_frac], considered: [CAPACITY] };
  const expected = expectedOf(state, seen);
  // A yes or no carries at most 2/π of what a number of the same noise would. @source probit at its steepest point
  const noise = (spread_frac * meanOf(state, CAPACITY)) ** 2 + (Math.PI / 2 - 1) * expected.variance;
  const off = expected.mean / Math.sqrt(expected.variance + (spread_frac * meanOf(state, CAPACITY)) ** 2);
  const telling = Math.exp(-0.5 * off * off);
  const variance = expected.variance * (1 - (telling * expected.variance) / (expected.variance + noise));
  return conditioned(state, seen, expected, { mean: expected.mean, variance });
}

/** Band in which the next weight is expected, 10 to 90 %, g. */
export function expectedWeight_g(
  forecast: WaterForecast,
  sight: Outward,
): { readonly low_g: number; readonly high_g: number } {
  const expected = expectedOf(forecast.slice.state, { weights: [-1, 0, 0, 1, 0, 0] });
  const sd_g = Math.hypot(Math.sqrt(expected.variance), sight.assumed("scaleStep_g"));
  return { low_g: Math.max(0, expected.mean - 1.2816 * sd_g), high_g: expected.mean + 1.2816 * sd_g };
}

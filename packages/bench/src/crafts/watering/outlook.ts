import { CAPACITY, DEPLETION, LEAF, meanOf, quantileOf, sdOf } from "@sillwood/science/water";
import { once } from "../../working/once.ts";
import type { Outlook, Outward } from "../craft.ts";
import { type Amount, amountFor, depletionAt_g } from "./amount.ts";
import { waterChart } from "./chart.ts";
import { type Decision, decide } from "./decide.ts";
import { forecastOf, HORIZON_d, type WaterForecast } from "./forecast.ts";
import { expectedWeight_g, questionOf, weighingWorth_d } from "./question.ts";
import type { WaterSlice } from "./slice.ts";
import { waterTasks } from "./tasks.ts";
import { useAhead } from "./use-ahead.ts";
import { wateringWords } from "./words.ts";
import { waterWorkings } from "./workings.ts";

const DAY_ms = 86_400_000;
/** Beyond this ln factor, leaf area or pot are likelier wrong than the plant thirsty. @source air-water sheet, bad input */
const FAR_FACTOR_ln = 1.5;
/** Older slips are in the book; they change nothing any more. @source our assumption */
const PROBLEMS_SHOWN_d = 30;

/** Everything watering says of a plant now. */
export function waterOutlook(slice: WaterSlice, sight: Outward): Outlook {
  const words = wateringWords(sight.say);
  const forecast = forecastOf(slice, sight);
  const decision = decide(forecast, sight);
  const at_g = decision.now
    ? meanOf(forecast.slice.state, DEPLETION)
    : depletionAt_g(forecast.slice, forecast.use_g_d, forecast.now_ms, decision.best_ms);
  const amount = amountFor(forecast.slice, sight, at_g, sight.say.units);
  const capacity_g = meanOf(forecast.slice.state, CAPACITY);
  const held_g = Math.max(0, capacity_g - meanOf(forecast.slice.state, DEPLETION));
  const question = questionOf(forecast, decision, sight);
  // A round of a thousand plants asks for tasks, and for the words of those that are due: the rest is written for the page of one.
  const said = once(() => dateSaid(forecast, sight));
  const workings = once(() => waterWorkings(forecast, decision, amount, said(), sight));
  return {
    tasks: waterTasks(forecast, decision, amount, workings, sight),
    get line() {
      return {
        work: "water" as const,
        ...(slice.cycles.open ? { since_ms: slice.cycles.open.from_ms } : {}),
        said: said(),
        dates_ms: forecast.dates_ms,
        origin: workings().when.origin,
      };
    },
    get head() {
      return {
        name: words.head,
        said: words.left(held_g / capacity_g),
        value: held_g / capacity_g,
        unit: "share",
        working: workings().store,
      };
    },
    ...(question ? { question } : {}),
    get workings() {
      const { when, howMuch, store, use, capacity } = workings();
      return [when, howMuch, store, use, capacity];
    },
    get chart() {
      return waterChart(forecast, sight);
    },
    get daily() {
      return useAhead(forecast, sight);
    },
    problems: problemsOf(forecast.slice, sight),
    get figures() {
      return figuresOf(forecast, decision, amount, sight);
    },
  };
}

function figuresOf(
  forecast: WaterForecast,
  decision: Decision,
  amount: Amount,
  sight: Outward,
): Outlook["figures"] {
  const { state } = forecast.slice;
  const capacity_g = meanOf(state, CAPACITY);
  const held_g = Math.max(0, capacity_g - meanOf(state, DEPLETION));
  const expected = expectedWeight_g(forecast, sight);
  return {
    waterHeld_g: held_g,
    waterHeldSd_g: sdOf(state, DEPLETION),
    capacity_g,
    capacitySd_g: sdOf(state, CAPACITY),
    waterLeft_frac: held_g / capacity_g,
    use_g_d: forecast.use_g_d,
    useLow_g_d: forecast.useLow_g_d,
    useHigh_g_d: forecast.useHigh_g_d,
    leafUse_g_d: forecast.leafUse_g_d,
    surfaceUse_g_d: forecast.surfaceUse_g_d,
    threshold_frac: forecast.threshold_frac,
    dates_ms: forecast.dates_ms,
    earliest_ms: decision.earliest_ms,
    best_ms: decision.best_ms,
    latest_ms: decision.latest_ms,
    amount_mL: amount.volume_mL,
    amountExact_mL: amount.exact_mL,
    pours_n: amount.pours.length,
    wilt10_ms: forecast.now_ms + quantileOf(forecast.draws.wilt_d, 0.1) * DAY_ms,
    benchFactor: Math.exp(forecast.pooled.ln),
    leafFactor: Math.exp(meanOf(state, LEAF)),
    weighingWorth_d: weighingWorth_d(forecast, sight),
    expectedWeightLow_g: expected.low_g,
    expectedWeightHigh_g: expected.high_g,
  };
}

/** "Thu 16 Jan (We to Sa)". */
function dateSaid(forecast: WaterForecast, sight: Outward): string {
  const words = wateringWords(sight.say);
  const { draws, now_ms } = forecast;
  const at = (probability: number) => now_ms + quantileOf(draws.dry_d, probability) * DAY_ms;
  if (quantileOf(draws.dry_d, 0.5) >= HORIZON_d) return words.later(HORIZON_d);
  const best = sight.say.day(at(0.5), now_ms);
  const low = sight.dateOf(at(0.1));
  const high = sight.dateOf(at(0.9));
  return words.date(best, sight.say.days(at(0.1), at(0.9)), low === high);
}

function problemsOf(slice: WaterSlice, sight: Outward): Outlook["problems"] {
  const words = wateringWords(sight.say);
  const recent = slice.problems.filter(({ at_ms }) => at_ms > sight.now_ms - PROBLEMS_SHOWN_d * DAY_ms);
  const said = recent.map((problem) => ({ entry: problem.entry, message: words.problem(problem) }));
  const last = slice.weights.filter((weight) => weight.used).at(-1);
  const factor_ln = meanOf(slice.state, LEAF);
  if (last && Math.abs(factor_ln) > FAR_FACTOR_ln) {
    said.push({ entry: last.entry, message: words.demandFar(Math.exp(factor_ln)) });
  }
  return said;
}

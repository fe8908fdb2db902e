import { CAPACITY, DEPLETION, meanOf } from "@sillwood/science/water";
import type { Task } from "../../round/task.ts";
import type { Outward } from "../craft.ts";
import type { Amount } from "./amount.ts";
import type { Decision } from "./decide.ts";
import type { WaterForecast } from "./forecast.ts";
import { LOOKED, WATERED } from "./kinds.ts";
import { CRAFT } from "./limits.ts";
import { wateringWords } from "./words.ts";
import type { WaterWorkings } from "./workings.ts";

const HOUR_ms = 3_600_000;
const DAY_ms = 86_400_000;
/** Minutes at the pot. @source our assumption, replaced by the minutes that rounds record */
const POUR_min = 1;
const LOOK_min = 0.5;
const ROOTS_min = 4;
/** A plant that wilted from dryness recovers within a day of slow rewetting. @source common practice, no source */
const RECOVERY_h = 24;

/** What hands are to do at this pot. */
export function waterTasks(
  forecast: WaterForecast,
  decision: Decision,
  amount: Amount,
  workings: () => WaterWorkings,
  sight: Outward,
): readonly Task[] {
  const tasks: Task[] = [waterTask(forecast, decision, amount, workings, sight)];
  const { slice } = forecast;
  const poured_ms = slice.pours.at(-1)?.at_ms;
  if (slice.droopingWet_ms !== undefined)
    tasks.push(rootsTask(forecast, slice.droopingWet_ms, workings, sight));
  // One look at a pot: whoever looks at its roots sees whether it stands.
  else if (slice.wilted_ms !== undefined && poured_ms !== undefined && poured_ms > slice.wilted_ms) {
    tasks.push(againTask(forecast, poured_ms, workings, sight));
  }
  return tasks;
}

function waterTask(
  forecast: WaterForecast,
  decision: Decision,
  amount: Amount,
  workings: () => WaterWorkings,
  sight: Outward,
): Task {
  const words = wateringWords(sight.say).task;
  const { state } = forecast.slice;
  const inParts = amount.pours.length > 1;
  // Words are asked for where the task is due.
  return {
    id: `${CRAFT}:water:${sight.plant.id}`,
    craft: CRAFT,
    work: "water",
    plant: sight.plant.id,
    earliest_ms: decision.earliest_ms,
    best_ms: decision.best_ms,
    latest_ms: decision.latest_ms,
    dates_ms: forecast.dates_ms,
    minutes: POUR_min * amount.pours.length,
    must: decision.must,
    amount: { value: amount.volume_mL, unit: "mL" },
    ...(inParts ? { pours: amount.pours } : {}),
    title: words.water,
    get said() {
      return words.amount(amount.volume_mL);
    },
    get then() {
      return inParts ? `${partsSaid(amount, sight)}; ${words.saucer}` : words.saucer;
    },
    get why() {
      const left_frac = Math.max(0, 1 - meanOf(state, DEPLETION) / meanOf(state, CAPACITY));
      return words.why(left_frac, forecast.use_g_d);
    },
    act: { kind: WATERED, data: { volume_mL: amount.volume_mL, drained: "yes" } },
    get working() {
      return workings().howMuch;
    },
  };
}

function partsSaid({ pours }: Amount, sight: Outward): string {
  const waits_min = pours.reduce((sum, pour) => sum + pour.wait_min, 0);
  return wateringWords(sight.say).task.pours(
    pours.map((pour) => pour.volume_mL),
    waits_min / (pours.length - 1),
  );
}

/** It hangs though the pot is wet: somebody who knows roots must look, today. */
function rootsTask(
  forecast: WaterForecast,
  seen_ms: number,
  workings: () => WaterWorkings,
  sight: Outward,
): Task {
  const words = wateringWords(sight.say).task;
  const { slice } = forecast;
  const left_frac = Math.max(0, 1 - meanOf(slice.state, DEPLETION) / meanOf(slice.state, CAPACITY));
  return {
    id: `${CRAFT}:look:${sight.plant.id}`,
    craft: CRAFT,
    work: "look",
    plant: sight.plant.id,
    earliest_ms: seen_ms,
    best_ms: seen_ms,
    latest_ms: seen_ms + DAY_ms,
    minutes: ROOTS_min,
    must: true,
    title: words.look,
    said: words.rootsSaid(sight.say.name(sight.plant.id)),
    then: words.rootsThen,
    why: words.rootsWhy(left_frac),
    act: { kind: LOOKED, data: { look: "wet", yes: true } },
    get working() {
      return workings().store;
    },
  };
}

function againTask(
  forecast: WaterForecast,
  poured_ms: number,
  workings: () => WaterWorkings,
  sight: Outward,
): Task {
  const words = wateringWords(sight.say).task;
  return {
    id: `${CRAFT}:look:${sight.plant.id}`,
    craft: CRAFT,
    work: "look",
    plant: sight.plant.id,
    earliest_ms: Math.max(poured_ms + HOUR_ms, forecast.now_ms),
    best_ms: Math.max(poured_ms + 0.75 * RECOVERY_h * HOUR_ms, forecast.now_ms),
    latest_ms: poured_ms + RECOVERY_h * HOUR_ms,
    minutes: LOOK_min,
    must: forecast.now_ms > poured_ms + 0.75 * RECOVERY_h * HOUR_ms,
    title: words.look,
    said: words.againSaid,
    why: words.againWhy,
    act: { kind: LOOKED, data: { look: "drooping", yes: false } },
    get working() {
      return workings().store;
    },
  };
}

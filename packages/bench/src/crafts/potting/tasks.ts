import type { Task } from "../../round/task.ts";
import type { Outward } from "../craft.ts";
import type { RepotDue, SaltsDue } from "./due.ts";
import { CRAFT } from "./limits.ts";
import type { PotSlice } from "./slice.ts";
import { pottingWords } from "./words.ts";
import { repotWorking, saltWorking } from "./workings.ts";

const DAY_ms = 86_400_000;
/** Repotting may wait for a good day: by so long after it is due. @source our assumption */
const LATEST_d = 90;
/** From so long before it is due. @source our assumption */
const EARLIEST_d = 14;
/** Lifting, washing, filling and settling one plant. @source SCREENS: 15 to 25 min */
const REPOT_min = 20;
const FLUSH_min = 6;
const FLUSH_LATEST_d = 14;

/** Fresh medium, as work ahead: never a must, and its day is the grower's choice. */
export function repotTask(due: RepotDue, slice: PotSlice, sight: Outward): Task {
  const words = pottingWords(sight.say);
  const best_ms = Math.max(due.due_ms, sight.now_ms);
  return {
    id: `${CRAFT}:repot:${sight.plant.id}`,
    craft: CRAFT,
    work: "repot",
    plant: sight.plant.id,
    earliest_ms: Math.min(best_ms, due.due_ms - EARLIEST_d * DAY_ms),
    best_ms,
    latest_ms: best_ms + LATEST_d * DAY_ms,
    minutes: REPOT_min,
    must: false,
    title: words.task.repot,
    said: due.biggerPot ? words.task.wider : words.task.samePot,
    get why() {
      return words.task.repotWhy(due.age_d, due.score);
    },
    care: words.care,
    act: { kind: "plant.potted", data: { medium: sight.plant.medium } },
    get working() {
      return repotWorking(due, slice, sight);
    },
  };
}

/** A flush in doses, when the salts have passed the caution. */
export function flushTask(due: SaltsDue, slice: PotSlice, sight: Outward): Task | undefined {
  if (!due.plan || due.plan.doses_mL.length === 0) return undefined;
  const words = pottingWords(sight.say);
  const { total_mL, doses_mL, wait_min } = due.plan;
  const volume_mL = Math.min(20_000, Math.ceil(total_mL / 10) * 10);
  return {
    id: `${CRAFT}:flush:${sight.plant.id}`,
    craft: CRAFT,
    work: "flush",
    plant: sight.plant.id,
    earliest_ms: sight.now_ms,
    best_ms: sight.now_ms,
    latest_ms: sight.now_ms + FLUSH_LATEST_d * DAY_ms,
    minutes: FLUSH_min,
    must: false,
    amount: { value: volume_mL, unit: "mL" },
    pours: doses_mL.map((each_mL, i) => ({
      volume_mL: each_mL,
      wait_min: i < doses_mL.length - 1 ? wait_min : 0,
    })),
    title: words.task.flush,
    said: words.task.doses(doses_mL.length, total_mL / doses_mL.length, wait_min),
    then: words.task.emptySaucer,
    get why() {
      return words.task.flushWhy(due.extract_mS_cm, due.caution_mS_cm);
    },
    act: { kind: "watering.watered", data: { volume_mL, drained: "yes" } },
    get working() {
      return saltWorking(due, slice, sight);
    },
  };
}

import type { Outward, Question } from "../craft.ts";
import type { Growing } from "./slice.ts";
import { reached_frac, stageNow } from "./stage-now.ts";
import { growthWords } from "./words.ts";

const STAGE_s = 10;
const COUNT_s = 90;
/** Not worth a question below this narrowing, days. @source our assumption, as in watering */
const LEAST_WORTH_d = 0.5;
/** By so much of the store a plant with flowers or fruit is watered earlier, halved since only one answer moves the date. @source our assumption */
const EARLIER_frac = 0.15 / 2;
/** Chances between which it is open whether the plant bears. */
const OPEN = { low: 0.1, high: 0.9 } as const;
/** Doubt of use beside that of the leaf area, and of an area after a count. @source our assumption, as in watering */
const MODEL_SD = 0.35;
const COUNTED_SD = 0.2;
/** A count shows its worth over the next cycles, not in this one; it is ranked by this share of it. @source our assumption, as for a first weight in watering */
const LATER_frac = 0.3;
const LONGEST_STORE_d = 14;
const RANGE_80 = 2 * 1.2816;
/** A count or look this fresh is not asked again. */
const FRESH_d = 14;
const DAY_ms = 86_400_000;

/** At most one question: a look at the stage or a count of the leaves, whichever would narrow the water dates more. */
export function growthQuestion(growing: Growing, sight: Outward): Question | undefined {
  const words = growthWords(sight.say).question;
  const number = sight.say.name(sight.plant.id);
  const store_d = storeLasts_d(sight);
  const stage_d = isStageOpen(growing, sight) ? EARLIER_frac * store_d : 0;
  const count_d = countWorth_d(growing, store_d, sight);
  if (Math.max(stage_d, count_d) < LEAST_WORTH_d) return undefined;
  return count_d > stage_d
    ? { work: "look", worth_d: count_d, said: words.count(number, COUNT_s), seconds: COUNT_s }
    : { work: "look", worth_d: stage_d, said: words.stage(number, STAGE_s), seconds: STAGE_s };
}

/** Days that a full store lasts the leaves, roughly: for ranking only. */
function storeLasts_d(sight: Outward): number {
  const use_g_d = sight.read("leafArea_m2").value * sight.assumed("leafUse_g_m2_d");
  const capacity_g = sight.read("capacity_g").value;
  return use_g_d > 0 ? Math.min(LONGEST_STORE_d, capacity_g / use_g_d) : 0;
}

/** Whether nobody can say if it bears flowers or fruit. */
function isStageOpen(growing: Growing, sight: Outward): boolean {
  if (growing.clock.how === "seen" && sight.now_ms - growing.clock.at_ms < FRESH_d * DAY_ms) return false;
  const { state } = stageNow(growing, sight);
  if (state === "resting") return false;
  if (state === "guess" || state === "run out") return true;
  const bears_frac = reached_frac(growing, 51, sight);
  return bears_frac > OPEN.low && bears_frac < OPEN.high;
}

/** Only where the pot has not taught its use yet: what was learned by weight holds the leaf area in it. */
function countWorth_d({ leaves }: Growing, store_d: number, sight: Outward): number {
  if (leaves.from === "counted" && sight.now_ms - leaves.at_ms < FRESH_d * DAY_ms) return 0;
  if (sight.read("capacity_g").origin !== "assumed") return 0;
  const area = sight.read("leafArea_m2");
  if (!(area.value > 0)) return 0;
  const now = Math.hypot(MODEL_SD, area.sd / area.value);
  const narrowed = Math.max(0, now - Math.hypot(MODEL_SD, COUNTED_SD));
  return LATER_frac * RANGE_80 * (store_d / 2) * narrowed;
}

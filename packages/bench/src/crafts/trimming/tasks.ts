import { wireTime } from "@sillwood/science/shape";
import type { Json } from "../../book/entry.ts";
import type { Task } from "../../round/task.ts";
import type { Outward } from "../craft.ts";
import { BITTEN, CUT, FREED, type PlannedCut } from "./kinds.ts";
import { nextTrim_ms } from "./rest.ts";
import type { Bend, TrimSlice } from "./slice.ts";
import { trimmingWords } from "./words.ts";
import { bendWorking, cutWorking } from "./workings.ts";

export const CRAFT = "trimming";
const DAY_ms = 86_400_000;
/** Minutes at the bench. @source our assumption, replaced by the minutes that rounds record */
const CUT_min = 2;
const LOOK_min = 0.5;
const FREE_min = 2;
/** A kept plan may wait so long before the plant has grown out of it. @source our assumption */
const PLAN_LASTS_d = 21;

/** What hands are to do: the next cut of a kept plan, looks at wires, wires that come off. */
export function trimTasks(slice: TrimSlice, sight: Outward): readonly Task[] {
  const tasks: Task[] = [];
  const next = slice.plan?.cuts[0];
  if (slice.plan && next) tasks.push(cutTask(slice, next, slice.plan.at_ms, sight));
  for (const bend of slice.bends) tasks.push(bendTask(bend, sight));
  return tasks;
}

function cutTask(slice: TrimSlice, cut: PlannedCut, plannedAt_ms: number, sight: Outward): Task {
  const words = trimmingWords(sight.say);
  const earliest_ms = Math.max(plannedAt_ms, nextTrim_ms(slice, sight) ?? 0);
  const latest_ms = Math.max(earliest_ms + DAY_ms, plannedAt_ms + PLAN_LASTS_d * DAY_ms);
  return {
    id: `${CRAFT}:cut:${sight.plant.id}`,
    craft: CRAFT,
    work: "cut",
    plant: sight.plant.id,
    earliest_ms,
    best_ms: Math.min(latest_ms, Math.max(earliest_ms, sight.now_ms)),
    latest_ms,
    minutes: CUT_min,
    must: false,
    title: words.task.cut(cut.letter),
    said: words.task.cutSaid(cut),
    why: words.task.cutWhy(slice.plan?.cuts.length ?? 1),
    care: words.care.blade,
    act: { kind: CUT, data: cut as unknown as Json },
    get working() {
      return cutWorking(cut, sight);
    },
  };
}

/** When a bend is looked at next and when it comes off. */
export function bendDates(bend: Bend, sight: Pick<Outward, "assumed">) {
  const { off_d, look_d } = wireTime({
    wood: bend.wood,
    growthPace: 1,
    setGreen_d: sight.assumed("wireGreen_d"),
    setSemi_d: sight.assumed("wireSemi_d"),
    setWoody_d: sight.assumed("wireWoody_d"),
  });
  return {
    off_d,
    look_d,
    off_ms: bend.bites ? bend.lookedAt_ms : bend.at_ms + off_d * DAY_ms,
    look_ms: bend.lookedAt_ms + look_d * DAY_ms,
  };
}

function bendTask(bend: Bend, sight: Outward): Task {
  const words = trimmingWords(sight.say).task;
  const dates = bendDates(bend, sight);
  const isOff = dates.off_ms <= dates.look_ms;
  const at_ms = isOff ? dates.off_ms : dates.look_ms;
  return {
    id: `${CRAFT}:${isOff ? "bend" : "look"}:${sight.plant.id}:${bend.node}`,
    craft: CRAFT,
    work: isOff ? "bend" : "look",
    plant: sight.plant.id,
    earliest_ms: at_ms,
    best_ms: Math.max(at_ms, sight.now_ms),
    latest_ms: Math.max(at_ms, sight.now_ms) + (isOff ? 14 : 4) * DAY_ms,
    minutes: isOff ? FREE_min : LOOK_min,
    must: bend.bites,
    title: isOff ? words.free : words.look,
    said: isOff ? words.freeSaid(bend) : words.lookSaid(bend),
    why: bend.bites ? words.bites : words.bentWhy(bend.at_ms, isOff ? dates.off_d : dates.look_d),
    act: isOff
      ? { kind: FREED, data: { node: bend.node } }
      : { kind: BITTEN, data: { node: bend.node, bites: false } },
    get working() {
      return bendWorking(bend, dates, sight);
    },
  };
}

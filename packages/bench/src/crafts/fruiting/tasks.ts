import type { Limit, Task } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import type { Outward, Sight } from "../craft.ts";
import { loadOf } from "./capacity.ts";
import { kinds } from "./kinds.ts";
import type { FruitNow } from "./now.ts";
import { brushingDue } from "./open-now.ts";
import type { Ripe } from "./ripe.ts";
import type { FruitSlice } from "./slice.ts";
import { fruitingWords } from "./words.ts";
import { aboutSaid, capacityWorking, ripeWorking, setWorking } from "./workings.ts";

export const CRAFT = "fruiting";
const DAY_ms = 86_400_000;
const BRUSH_min = 0.5;
const THIN_min = 2;
const PICK_min = 1;
/** Fruit is thinned while it is small, so a count older than this no longer asks for it. @source common practice, no source */
const THIN_WITHIN_d = 14;
/** So many beyond the number advised are left alone: it is a range. @source our assumption */
const LEEWAY_ratio = 1.25;
/** Ripe fruit keeps on the plant for about so long. @source common practice, no source */
const HANGS_d = 10;

/** What wants hands: flowers to brush, fruit to thin, fruit to pick. */
export function fruitTasks(slice: FruitSlice, now: FruitNow, sight: Outward): readonly Task[] {
  const tasks = [brushTask(slice, now, sight), thinTask(slice, now, sight), pickTask(slice, now, sight)];
  return tasks.filter((task) => task !== undefined);
}

function brushTask(slice: FruitSlice, now: FruitNow, sight: Outward): Task | undefined {
  const due = brushingDue(slice, sight);
  if (!due) return undefined;
  const { say, plant } = sight;
  const words = fruitingWords(say);
  return {
    id: `${CRAFT}:brush:${plant.id}`,
    craft: CRAFT,
    work: "brush",
    plant: plant.id,
    earliest_ms: due.earliest_ms,
    best_ms: Math.min(due.latest_ms, Math.max(due.earliest_ms, due.best_ms)),
    latest_ms: due.latest_ms,
    minutes: BRUSH_min,
    must: false,
    amount: { value: due.open_n, unit: "" },
    title: words.task.brush,
    said: words.task.brushSaid(words.flowers(due.open_n)),
    then: words.task.brushHow(due.visits_n === 0),
    get why() {
      const { chance_frac, brushed_frac } = now.setting();
      return words.task.brushWhy(say.percent(chance_frac), say.percent(brushed_frac));
    },
    act: { kind: kinds.brushed.kind, data: { open_n: due.open_n, how: "brush" } },
    get working() {
      return setWorking(now.setting(), sight);
    },
  };
}

/** Fruits too many, where they were counted lately; undefined where none are. */
export function tooMany(slice: FruitSlice, now: FruitNow, sight: Outward): number | undefined {
  const { fruits } = slice;
  if (!fruits || fruits.n === 0 || sight.now_ms - fruits.at_ms > THIN_WITHIN_d * DAY_ms) return undefined;
  const { keep_n } = now.capacity();
  const removed_n = fruits.n - keep_n;
  return removed_n >= 1 && fruits.n > LEEWAY_ratio * keep_n ? removed_n : undefined;
}

function thinTask(slice: FruitSlice, now: FruitNow, sight: Outward): Task | undefined {
  const removed_n = tooMany(slice, now, sight);
  if (removed_n === undefined || !slice.fruits) return undefined;
  const { say, plant } = sight;
  const words = fruitingWords(say);
  const capacity = now.capacity();
  const { n, at_ms } = slice.fruits;
  return {
    id: `${CRAFT}:pluck:${plant.id}`,
    craft: CRAFT,
    work: "pluck",
    plant: plant.id,
    earliest_ms: at_ms,
    best_ms: Math.max(at_ms, sight.now_ms),
    latest_ms: at_ms + THIN_WITHIN_d * DAY_ms,
    minutes: THIN_min,
    must: false,
    amount: { value: removed_n, unit: "" },
    title: words.task.thin,
    said: words.task.thinSaid(words.fruits(removed_n), say.number(capacity.keep_n, 0)),
    then: words.task.thinHow,
    get why() {
      const about = (value: number) => aboutSaid(value, sight);
      return words.task.thinWhy(
        n,
        about(capacity.low_n),
        about(capacity.high_n),
        say.percent(loadOf(capacity, n, sight).size_frac),
      );
    },
    act: { kind: kinds.thinned.kind, data: { what: "fruits", removed_n } },
    get working() {
      return capacityWorking(capacity, slice, sight);
    },
  };
}

/** Fruit to pick: seen ripe, or whose middle date has come. */
export const toPick = (now: FruitNow, now_ms: number): readonly Ripe[] =>
  now.ripe().filter(({ state, dates_ms }) => state !== "cannot ripen" && (dates_ms[10] as number) <= now_ms);

function pickTask(slice: FruitSlice, now: FruitNow, sight: Outward): Task | undefined {
  if (slice.cohorts.length === 0) return undefined;
  const { say, plant, now_ms } = sight;
  const next = now.ripe().find(({ state }) => state !== "cannot ripen");
  if (!next) return undefined;
  const words = fruitingWords(say);
  const { cohort, dates_ms } = next;
  const at = (each: number) => dates_ms[each] as number;
  const isSeen = next.state === "ripe";
  return {
    id: `${CRAFT}:pick:${plant.id}`,
    craft: CRAFT,
    work: "pick",
    plant: plant.id,
    earliest_ms: at(isSeen ? 10 : 2),
    best_ms: at(10),
    latest_ms: at(17) + HANGS_d * DAY_ms,
    dates_ms,
    minutes: PICK_min,
    must: false,
    amount: { value: cohort.fruits_n, unit: "" },
    title: words.task.pick,
    said: `${words.fruits(cohort.fruits_n)}${cohort.branch === undefined ? "" : ` (${cohort.branch})`}`,
    then: words.task.pickHow,
    get why() {
      return isSeen
        ? words.task.pickWhy(say.day(cohort.colouredAt_ms ?? at(10), now_ms))
        : words.task.pickGuess(say.days(at(2), at(17)));
    },
    care: words.care,
    act: {
      kind: kinds.picked.kind,
      data: { fruits_n: cohort.fruits_n, colour: "ripe", tag: cohort.id },
    },
    get working() {
      return ripeWorking(next, now, sight);
    },
  };
}

/** Ripe fruit that hangs is picked before anything is sprayed. */
export function fruitLimits(slice: FruitSlice, sight: Sight, say: Say): readonly Limit[] {
  const ripe = slice.cohorts.find(({ colour }) => colour === "ripe" || colour === "over-ripe");
  return ripe === undefined
    ? []
    : [
        {
          work: "spray",
          on: sight.plant.id,
          from_ms: ripe.colouredAt_ms ?? ripe.opened_ms,
          why: fruitingWords(say).sprayLimit,
          by: CRAFT,
          firm: false,
        },
      ];
}

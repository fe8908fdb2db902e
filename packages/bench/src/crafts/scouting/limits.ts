import { type Limit, type Work, works } from "../../round/task.ts";
import type { Say } from "../../words/say.ts";
import type { Outward, Sight } from "../craft.ts";
import { allPests, isClocked } from "./pests.ts";
import type { ScoutPool } from "./pool.ts";
import type { ScoutSlice } from "./slice.ts";
import { lastFind, watchStart_ms } from "./watch.ts";
import { scoutingWords } from "./words.ts";

export const CRAFT = "scouting";
const [HOUR_ms, DAY_ms] = [3_600_000, 86_400_000];

/** Until when nobody may touch, and nobody may pick, by the labels of what was used. */
export function labelUntil(slice: ScoutSlice): { readonly touch_ms: number; readonly pick_ms: number } {
  let [touch_ms, pick_ms] = [0, 0];
  for (const act of slice.acts)
    if (act.act === "treat") {
      touch_ms = Math.max(touch_ms, act.at_ms + (act.data.reentry_h ?? 0) * HOUR_ms);
      pick_ms = Math.max(pick_ms, act.at_ms + (act.data.preharvest_d ?? 0) * DAY_ms);
    }
  return { touch_ms, pick_ms };
}

/** The last release to sell that nothing has undone since: no arrival, no find, no neighbour's find, no exposure. */
export function releaseInForce(
  slice: ScoutSlice,
  pool: ScoutPool | undefined,
  plant: string,
  to: "sell" | "move",
): boolean {
  const at = slice.acts.findLastIndex(
    (act) => act.act === "release" && (act.data.to === to || act.data.to === "sell"),
  );
  const release = slice.acts[at];
  if (!release) return false;
  const undone = slice.acts
    .slice(at + 1)
    .some(
      (act) =>
        act.act === "arrive" ||
        act.act === "expose" ||
        (act.act === "look" && act.data.found.length > 0) ||
        (act.act === "card" && act.data.caught.length > 0),
    );
  return !undone && !recallOf(pool, plant, release.at_ms);
}

/** A find on another plant of the bench after the release: what was exposed comes back. */
const recallOf = (pool: ScoutPool | undefined, plant: string, since_ms: number) =>
  pool?.finds.find((find) => find.plant !== plant && find.at_ms > since_ms);

/** What pests and labels forbid: touching and picking after a treatment, moving what is kept apart, selling what is not released. */
export function scoutLimits(slice: ScoutSlice, sight: Sight, say: Say): readonly Limit[] {
  const words = scoutingWords(say).limit;
  const { at_ms, plant } = sight;
  const limits: Limit[] = [];
  const limit = (work: Work, why: string, firm: boolean, until_ms?: number): void => {
    limits.push({
      work,
      on: plant.id,
      from_ms: at_ms,
      ...(until_ms === undefined ? {} : { until_ms }),
      why,
      by: CRAFT,
      firm,
    });
  };
  if (slice.acts.length > 0) {
    const { touch_ms, pick_ms } = labelUntil(slice);
    const when = (until_ms: number) => `${say.day(until_ms)} ${say.time(until_ms)}`;
    if (touch_ms > at_ms) for (const work of works) limit(work, words.touch(when(touch_ms)), true, touch_ms);
    if (pick_ms > at_ms) limit("pick", words.pick(when(pick_ms)), true, pick_ms);
  }
  const pool = (sight as Partial<Outward>).pooled as ScoutPool | undefined;
  if (
    watchStart_ms(slice) !== undefined &&
    isKeptApart(slice) &&
    !releaseInForce(slice, pool, plant.id, "move")
  )
    limit("move", words.move, false);
  if (!releaseInForce(slice, pool, plant.id, "sell"))
    limit("sell", sellWhy(slice, pool, plant.id, say), true);
  return limits;
}

function sellWhy(slice: ScoutSlice, pool: ScoutPool | undefined, plant: string, say: Say): string {
  const words = scoutingWords(say);
  const release = slice.acts.findLast((act) => act.act === "release");
  const recall = release && recallOf(pool, plant, release.at_ms);
  if (recall) return words.limit.recalled(words.pest(recall.pest));
  const found = allPests.find((pest) => isFoundNow(slice, pest));
  return found ? words.limit.found(words.pest(found)) : words.limit.sell;
}

/** Found, and neither treated nor (without a clock) looked clean since. */
export function isFoundNow(slice: ScoutSlice, pest: (typeof allPests)[number]): boolean {
  const find = lastFind(slice, pest);
  if (!find) return false;
  return !slice.acts.some(
    (act) =>
      act.at_ms > find.at_ms &&
      (isClocked(pest)
        ? act.act === "treat" && act.data.against.includes(pest)
        : act.act === "look" && !act.data.found.some((found) => found.pest === pest)),
  );
}

/** Arrived, exposed or found with something since it was last released: looked at by the calendar. */
export function isKeptApart(slice: ScoutSlice): boolean {
  const since = slice.acts.findLastIndex((act) => act.act === "release");
  return slice.acts
    .slice(since + 1)
    .some(
      (act) =>
        act.act === "arrive" ||
        act.act === "expose" ||
        act.act === "treat" ||
        (act.act === "look" && act.data.found.length > 0) ||
        (act.act === "card" && act.data.caught.length > 0),
    );
}

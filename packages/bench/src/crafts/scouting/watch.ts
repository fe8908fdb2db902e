import {
  courseCleared,
  type PestResponse,
  type PestWatch,
  pestPace,
  type WatchAct,
} from "@sillwood/science/pests";
import type { Outward } from "../craft.ts";
import type { Air } from "./air-hours.ts";
import {
  CLOCKS,
  type ClockedPest,
  catchOf_per_d,
  clockedPests,
  KILLS,
  type LookedAt,
  type Pest,
  reaches,
  seeingOf,
  TWISTED,
} from "./pests.ts";
import type { ScoutPool } from "./pool.ts";
import type { ScoutAct, ScoutSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
const OUTDOORS_d = 30;
/** The same eyes a second time on one day tell little new. @source our assumption */
const AGAIN_frac = 0.3;
/** A find in the room makes arrivals likelier for so long. @source our assumption */
const ROOM_d = 21;
/** Nothing is sure either way. @source our assumption: P between 0.001 and 0.999 */
const ODDS = { min: 0.001, max: 999 } as const;

const foundOf = (act: ScoutAct) =>
  act.act === "look" ? act.data.found : act.act === "card" ? act.data.caught : [];

/** When a pest was last found on the plant, and how many. */
export function lastFind(
  slice: ScoutSlice,
  pest: Pest,
): { readonly at_ms: number; readonly act: ScoutAct; readonly count_n: number } | undefined {
  for (let i = slice.acts.length - 1; i >= 0; i--) {
    const act = slice.acts[i] as ScoutAct;
    const count_n = foundOf(act)
      .filter((found) => found.pest === pest)
      .reduce((sum, found) => sum + found.count_n, 0);
    if (count_n > 0) return { at_ms: act.at_ms, act, count_n };
  }
  return undefined;
}

/** When the watch over a plant began: its last arrival, else its first look, card or exposure. */
export function watchStart_ms(slice: ScoutSlice): number | undefined {
  const arrived = slice.acts.findLast(({ act }) => act === "arrive");
  return (arrived ?? slice.acts.find(({ act }) => act !== "release" && act !== "confirm"))?.at_ms;
}

/** Odds at the start of a watch, and what they are made of. */
function startOdds(
  slice: ScoutSlice,
  sight: Outward,
  start_ms: number,
): { readonly odds: number; readonly why: readonly string[] } {
  const why: string[] = [];
  let odds = sight.assumed("pestOdds") / clockedPests.length;
  const times = (key: string): void => {
    odds *= sight.assumed(key);
    why.push(key);
  };
  const arrived = slice.acts.findLast((act) => act.act === "arrive");
  const from = arrived?.act === "arrive" ? arrived.data.from : undefined;
  if (from === "bought" || from === "borrowed") times("pestBought");
  const isOutdoors = (at_ms: number, spot: string) => sight.airAt(spot, sight.dateOf(at_ms)).outdoors;
  const wasOutdoors = slice.stood.some(
    ({ at_ms, spot }, i) =>
      (slice.stood[i + 1]?.at_ms ?? start_ms) > start_ms - OUTDOORS_d * DAY_ms &&
      at_ms <= start_ms &&
      isOutdoors(at_ms, spot),
  );
  if (from === "outdoors" || wasOutdoors) times("pestOutdoors");
  if (arrived?.act === "arrive" && arrived.data.washed) times("pestWashed");
  return { odds: clip(odds), why };
}

const clip = (odds: number): number => Math.min(ODDS.max, Math.max(ODDS.min, odds));

/** A pest's case on a plant: found and not treated, or watched from some day with odds. */
export type Case =
  | { readonly state: "infested"; readonly since_ms: number }
  | {
      readonly state: "treated" | "watched";
      readonly start_ms: number;
      readonly odds: number;
      readonly left_n?: number;
      readonly why: readonly string[];
      /** Of a treated one: the chance that the course cleared it, treatments given and wanted. */
      readonly course?: {
        readonly cleared_frac: number;
        readonly given_n: number;
        readonly wanted_n: number;
      };
    };

export function caseOf(slice: ScoutSlice, sight: Outward, pest: ClockedPest, start_ms: number): Case {
  const find = lastFind(slice, pest);
  if (!find || find.at_ms < sight.now_ms - 365 * DAY_ms)
    return { state: "watched", start_ms, ...startOdds(slice, sight, start_ms) };
  const given = slice.acts.flatMap((act) =>
    act.act === "treat" &&
    act.at_ms > find.at_ms &&
    act.data.against.includes(pest) &&
    reaches(act.data.tool, pest)
      ? [act]
      : [],
  );
  const last = given.at(-1);
  const first = given[0];
  if (!last || !first) return { state: "infested", since_ms: find.at_ms };
  const seen = find.act.act === "look" ? seeingOf(find.act.data, pest) : undefined;
  const animals_n = Math.min(
    1000,
    Math.max(find.count_n, find.count_n / Math.max(0.05, seen?.grown_frac ?? 0.2)),
  );
  const kill = KILLS[last.data.tool];
  const coverage = last.data.coverage_frac ?? sight.assumed("pestCoverage");
  const kill_frac = Math.min(
    0.98,
    Math.max(0.05, (pest === "fungus gnat" ? kill.young : (kill.young + kill.adult) / 2) * coverage),
  );
  const treatments_n = Math.min(60, given.length);
  const interval_d =
    treatments_n > 1
      ? Math.max(0.5, Math.min(60, (last.at_ms - first.at_ms) / DAY_ms / (treatments_n - 1)))
      : (last.data.every_d ?? 7);
  const rate = pestPace({ pest: CLOCKS[pest], air_C: meanAir(sight, last.at_ms) }).rate_per_d;
  const { survivors_n, cleared_frac } = courseCleared({
    animals_n,
    kill_frac,
    treatments_n,
    interval_d,
    rate_per_d: Math.max(-1, Math.min(2, rate)),
    survivalClumping: sight.assumed("pestSurvive"),
  });
  const wanted_n = Math.max(...given.map(({ data }) => data.course_n ?? 2));
  const odds = (1 - cleared_frac) / Math.max(1e-6, cleared_frac);
  return {
    state: "treated",
    start_ms: last.at_ms,
    odds: clip(treatments_n >= wanted_n ? odds : Math.max(1, odds)),
    left_n: Math.max(0.01, Math.min(50, survivors_n)),
    why: [],
    course: { cleared_frac, given_n: treatments_n, wanted_n },
  };
}

function meanAir(sight: Outward, at_ms: number): number {
  const { spells } = sight.airAt(sight.plant.spot, sight.dateOf(at_ms));
  const all = spells.reduce((sum, { from_ms, to_ms }) => sum + to_ms - from_ms, 0);
  const mean =
    spells.reduce((sum, { from_ms, to_ms, air_C }) => sum + air_C * (to_ms - from_ms), 0) / Math.max(1, all);
  return Math.max(-10, Math.min(50, mean));
}

/** One look or card of a plan that is repeated. */
export type Planned = { readonly look: LookedAt } | { readonly cards_n: number };
/** What a guided look looks at: tips of three shoots, under six leaves, stem and soil line, with a lens. */
export const GUIDED: LookedAt = { way: "lens", tips_n: 3, leaves_n: 6, stem: true };

const lookAct = (look: LookedAt, pest: ClockedPest, day_d: number, times: number): WatchAct | undefined => {
  const seeing = seeingOf(look, pest);
  if (!seeing) return undefined;
  return {
    act: "look",
    day_d,
    sight_frac: seeing.grown_frac * times,
    youngSight_frac: seeing.young_frac * times,
    ...(seeing.units_n === undefined ? {} : { leaves_n: seeing.units_n }),
    ...(seeing.twisted ? { signs: TWISTED } : {}),
  };
};

/** What the acts of the book, and then a plan of clean looks, are to a watch over one pest. */
export function watchOf(given: {
  readonly slice: ScoutSlice;
  readonly sight: Outward;
  readonly pool: ScoutPool | undefined;
  readonly air: Air;
  readonly response: PestResponse;
  readonly pest: ClockedPest;
  readonly of: Exclude<Case, { state: "infested" }>;
  readonly plan: readonly Planned[];
  readonly planDays: readonly number[];
}): PestWatch & { readonly looks_n: number; readonly canSee: boolean } {
  const { slice, sight, pool, air, response, pest, of, plan, planDays } = given;
  const start_d = air.dayOf(of.start_ms);
  const acts: WatchAct[] = [];
  const arrivals: { day_d: number; odds: number }[] = [];
  let looks_n = 0;
  const seenOn = new Map<string, number>();
  const odds = sight.assumed("pestOdds");
  for (const act of slice.acts) {
    if (act.at_ms < of.start_ms || act.at_ms > sight.now_ms) continue;
    const day_d = air.dayOf(act.at_ms);
    if (act.act === "look" && !foundOf(act).some((found) => found.pest === pest)) {
      const key = `${day_d}/${act.by}/${act.data.way}`;
      const again = (seenOn.get(key) ?? 0) > 0 ? AGAIN_frac : 1;
      seenOn.set(key, 1);
      const made = lookAct(act.data, pest, day_d, again * (pool?.eyes[act.by] ?? 1));
      if (made) {
        acts.push(made);
        looks_n++;
      }
    } else if (
      act.act === "card" &&
      !act.data.lost &&
      !act.data.caught.some((found) => found.pest === pest)
    ) {
      const catch_per_d = catchOf_per_d(pest, act.data.cards_n ?? 1);
      if (catch_per_d > 0) {
        acts.push({
          act: "card",
          from_d: Math.max(start_d, day_d - (act.data.out_d ?? 0)),
          day_d,
          catch_per_d,
        });
        looks_n++;
      }
    } else if (act.act === "expose" && act.data.pest === pest)
      arrivals.push({
        day_d,
        odds: clip(odds * sight.assumed(act.data.how === "same room" ? "pestRoom" : "pestNear")),
      });
    else if (
      act.act === "treat" &&
      of.state === "watched" &&
      act.data.against.includes(pest) &&
      reaches(act.data.tool, pest)
    ) {
      const kill = KILLS[act.data.tool];
      const wet = act.data.coverage_frac ?? sight.assumed("pestCoverage");
      acts.push({
        act: "treat",
        day_d,
        egg_frac: kill.egg * wet,
        young_frac: kill.young * wet,
        pupa_frac: kill.pupa * wet,
        adult_frac: kill.adult * wet,
      });
    }
  }
  const others = (pool?.finds ?? []).filter(
    (find) => find.pest === pest && find.plant !== sight.plant.id && find.at_ms <= sight.now_ms,
  );
  for (const find of others)
    if (find.at_ms >= of.start_ms)
      arrivals.push({ day_d: air.dayOf(find.at_ms), odds: clip(odds * sight.assumed("pestRoom")) });
  const isNearFind = others.some(({ at_ms }) => at_ms > sight.now_ms - ROOM_d * DAY_ms);
  let canSee = looks_n > 0;
  let before = air.today_d;
  for (const day_d of planDays) {
    for (const planned of plan) {
      if ("look" in planned) {
        const made = lookAct(planned.look, pest, day_d, 1);
        if (made) acts.push(made);
        canSee ||= made !== undefined;
      } else {
        const catch_per_d = catchOf_per_d(pest, planned.cards_n);
        if (catch_per_d > 0) acts.push({ act: "card", from_d: before, day_d, catch_per_d });
        canSee ||= catch_per_d > 0;
      }
    }
    before = day_d;
  }
  return {
    response,
    start_d,
    odds: of.odds,
    arrival_per_d: isNearFind
      ? sight.assumed("pestArrivesRoom_per_d")
      : sight.assumed("pestArrives_per_d") / clockedPests.length,
    arrivals,
    acts: acts.sort((one, other) => one.day_d - other.day_d),
    ...(of.left_n === undefined ? {} : { left_n: of.left_n }),
    founders_n: sight.assumed("pestFounders_n"),
    clumping: sight.assumed("pestClumping"),
    looks_n,
    canSee,
  };
}

import { clearancePath, hiddenFloor_d, type PestWatch } from "@sillwood/science/pests";
import type { Outward } from "../craft.ts";
import { AHEAD_d, type Air, airOf, responseIn } from "./air-hours.ts";
import { CLOCKS, type ClockedPest, clockedPests, heldPests, type Pest } from "./pests.ts";
import type { ScoutPool } from "./pool.ts";
import type { ScoutSlice } from "./slice.ts";
import { type Case, caseOf, GUIDED, lastFind, type Planned, watchOf, watchStart_ms } from "./watch.ts";

const DAY_ms = 86_400_000;
const HABIT_d = 14;
const SPREAD_frac = 0.12;
/** Ends of the band: half and twice the sight, a fifth slower and faster. @source the pest sheet, validity */
const BAND = [
  { sightTimes: 1, rateTimes: 1 },
  { sightTimes: 0.5, rateTimes: 0.8 },
  { sightTimes: 2, rateTimes: 1.2 },
] as const;

export interface Three {
  readonly mid: number;
  readonly low: number;
  readonly high: number;
}

/** What is believed of one pest on one plant. */
export interface PestBelief {
  readonly pest: ClockedPest;
  readonly of: Case;
  readonly free: Three;
  /** The same after one more round of clean looks of the plan. */
  readonly next_frac: number;
  /** Looks since its watch began that could have shown it. */
  readonly looks_n: number;
  /** Day before which nothing may be declared: what hid on the first day still hides. */
  readonly floor_ms: number;
  /** When this pest alone would pass the gates. */
  readonly move: Gate;
  readonly sell: Gate;
}

/** A gate: open now, or the dates at which it opens if looks stay clean; no date within the plan where it does not. */
export interface Gate {
  readonly open: boolean;
  readonly best_ms?: number;
  readonly early_ms?: number;
  readonly late_ms?: number;
}

export interface Reckoned {
  readonly start_ms: number;
  readonly pests: readonly PestBelief[];
  readonly free: Three;
  readonly move: Gate;
  readonly sell: Gate;
  /** The pest that holds it longest. */
  readonly holder?: ClockedPest;
  /** Pests with a clock that no look so far could have shown. */
  readonly unseen: readonly ClockedPest[];
  /** Pests without a clock that were found and not looked clean since. */
  readonly held: readonly Pest[];
  readonly habit_ms: number;
  readonly plan: readonly Planned[];
  readonly looks_n: number;
}

/** Ways of looking used lately, to be used again; a guided look where there were none. */
function planOf(slice: ScoutSlice, now_ms: number): readonly Planned[] {
  const plan = new Map<string, Planned>();
  for (const act of slice.acts) {
    if (act.at_ms < now_ms - 3 * HABIT_d * DAY_ms || act.at_ms > now_ms) continue;
    if (act.act === "look" && act.data.way !== "glance") {
      const { way, tips_n, leaves_n, stem } = act.data;
      plan.set(way, {
        look: {
          way,
          ...(tips_n ? { tips_n } : {}),
          ...(leaves_n ? { leaves_n } : {}),
          ...(stem ? { stem } : {}),
        },
      });
    } else if (act.act === "card" && !act.data.lost) plan.set("card", { cards_n: act.data.cards_n ?? 1 });
  }
  if (!plan.has("lens") && !plan.has("eye")) plan.set("lens", { look: GUIDED });
  return [...plan.values()];
}

export const isWatched = (slice: ScoutSlice, now_ms: number): boolean =>
  (watchStart_ms(slice) ?? Number.POSITIVE_INFINITY) <= now_ms;

const kept = new WeakMap<ScoutSlice, { readonly key: string; readonly value: Reckoned }>();

/**
 * What is believed of all pests on a plant, and when its gates open; undefined for a plant that nobody watches. Kept with the slice:
 * a slice never changes in place.
 */
export function reckoned(
  slice: ScoutSlice,
  sight: Outward,
  more: { readonly air?: Air; readonly plan?: readonly Planned[] } = {},
): Reckoned | undefined {
  const start_ms = watchStart_ms(slice);
  if (start_ms === undefined || start_ms > sight.now_ms) return undefined;
  const pool = sight.pooled as ScoutPool | undefined;
  const air = more.air ?? airOf(slice, sight, start_ms);
  const plan = more.plan ?? planOf(slice, sight.now_ms);
  const assumed = ["pestOdds", "clearMove", "clearSell", "lookEvery_d", "pestArrives_per_d", "pestClumping"]
    .map(sight.assumed)
    .join();
  const key = `${air.key} ${air.today_d} ${sight.plant.spot} ${pool?.finds.length ?? 0} ${JSON.stringify(plan)} ${assumed}`;
  const before = kept.get(slice);
  if (before?.key === key) return before.value;
  const value = reckon(slice, sight, pool, air, plan, start_ms);
  kept.set(slice, { key, value });
  return value;
}

function reckon(
  slice: ScoutSlice,
  sight: Outward,
  pool: ScoutPool | undefined,
  air: Air,
  plan: readonly Planned[],
  start_ms: number,
): Reckoned {
  const every = Math.max(1, Math.round(sight.assumed("lookEvery_d")));
  const planDays: number[] = [];
  for (let day = air.today_d + every; day < air.today_d + AHEAD_d; day += every) planDays.push(day);
  const days = [air.today_d, ...planDays];
  const at_ms = (day: number) => sight.now_ms + (day - air.today_d) * DAY_ms;
  const [toMove, toSell] = [sight.assumed("clearMove"), sight.assumed("clearSell")];
  const rows = clockedPests.map((pest) => {
    const response = responseIn(air, CLOCKS[pest]);
    const of = caseOf(slice, sight, pest, Math.max(start_ms, sight.now_ms - 112 * DAY_ms));
    if (of.state === "infested") {
      const none = BAND.map(() => days.map(() => 0));
      return { pest, of, paths: none, floor: Number.POSITIVE_INFINITY, looks_n: 0, canSee: false };
    }
    const watch = watchOf({ slice, sight, pool, air, response, pest, of, plan, planDays });
    const paths = BAND.map((band) =>
      clearancePath({ ...watch, ...band } satisfies PestWatch, days).map((point) => point.free_frac),
    );
    const floor = hiddenFloor_d(response, SPREAD_frac, air.dayOf(of.start_ms));
    return { pest, of, paths, floor, looks_n: watch.looks_n, canSee: watch.canSee };
  });
  const opens = (of: readonly (typeof rows)[number][], target: number): Gate => {
    const dates = BAND.map((_, band) => {
      const at = days.findIndex(
        (day, i) =>
          of.every((row) => day >= row.floor && row.canSee && (i > 0 || row.looks_n > 0)) &&
          of.reduce((product, row) => product * (row.paths[band]?.[i] as number), 1) >= target,
      );
      return at < 0 ? undefined : (days[at] as number);
    });
    const [mid, low, high] = dates;
    return {
      open: mid === air.today_d,
      ...(mid === undefined ? {} : { best_ms: at_ms(mid) }),
      ...(high === undefined ? {} : { early_ms: at_ms(high) }),
      ...(low === undefined ? {} : { late_ms: at_ms(low) }),
    };
  };
  const three = (of: readonly (typeof rows)[number][]): Three => {
    const [mid = 0, low = 0, high = 0] = BAND.map((_, band) =>
      of.reduce((product, row) => product * (row.paths[band]?.[0] as number), 1),
    );
    return { mid, low, high };
  };
  const pests = rows.map(
    (row): PestBelief => ({
      pest: row.pest,
      of: row.of,
      free: three([row]),
      next_frac: row.paths[0]?.[1] ?? 0,
      looks_n: row.looks_n,
      floor_ms: at_ms(Math.min(row.floor, air.today_d + 365)),
      move: opens([row], toMove),
      sell: opens([row], toSell),
    }),
  );
  const holder = [...pests].sort((one, other) => lateness(other) - lateness(one))[0];
  const held = heldPests.filter((pest) => {
    const find = lastFind(slice, pest);
    return (
      find !== undefined &&
      !slice.acts.some(
        (act) =>
          act.act === "look" &&
          act.at_ms > find.at_ms &&
          !act.data.found.some((found) => found.pest === pest),
      )
    );
  });
  const shut = held.length > 0;
  const gate = (target: number): Gate => (shut ? { open: false } : opens(rows, target));
  return {
    start_ms,
    pests,
    free: three(rows),
    move: gate(toMove),
    sell: gate(toSell),
    ...(holder ? { holder: holder.pest } : {}),
    unseen: pests
      .filter(({ looks_n, of }) => looks_n === 0 && of.state !== "infested")
      .map(({ pest }) => pest),
    held,
    habit_ms:
      Math.max(start_ms, ...pests.map(({ of }) => (of.state === "infested" ? of.since_ms : of.start_ms))) +
      HABIT_d * DAY_ms,
    plan,
    looks_n: slice.acts.filter((act) => (act.act === "look" || act.act === "card") && act.at_ms >= start_ms)
      .length,
  };
}

/** What holds longest: an infestation, then what passes the gate last, then what is least sure. */
const lateness = ({ of, sell, free }: PestBelief): number =>
  of.state === "infested" ? Number.POSITIVE_INFINITY : (sell.best_ms ?? 1e15) - free.mid;

import { normalQuantile } from "@sillwood/science/chance";
import { type FeedStage, tissue_frac } from "@sillwood/science/feed";
import { readingKinds } from "../../readings.ts";
import type { Origin } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import { feedStage, strengthOf } from "./need.ts";
import type { FeedSlice } from "./slice.ts";

const DAY_ms = 86_400_000;
const DRAWS_n = 20;
/** A pot of which nobody wrote how much it gets uses its water up in so many days. @source our assumption */
const USUAL_DRY_DOWN_d = 6;

/** What this pot wants of feeding now. */
export interface FeedToday {
  readonly does: "feed" | "flush" | "wait";
  /** Why it waits, or why feed comes when it comes. */
  readonly because: "nitrogen" | "habit" | "fresh" | "cut" | "salts" | "dry";
  readonly due_ms: number;
  readonly dates_ms: readonly number[];
  readonly stage: FeedStage;
  readonly strength_frac: number;
  readonly volume_mL: number;
  readonly nitrogen_mg: number;
  readonly nitrogen_mg_L: number;
  readonly demand_mg_d: number;
  readonly use_mL_d: number;
  readonly holds_mL: number;
  readonly salt_mS_cm: number;
  readonly saltOrigin: Origin;
  readonly origin: Origin;
}

/** Feed, plain water or a flush: from the ledger of the pot where one is kept, by the calendar of habit where none is. */
export function feedToday(slice: FeedSlice, sight: Outward): FeedToday {
  const { now_ms, read, assumed } = sight;
  const capacity_g = read("capacity_g").value;
  const holds_mL = capacity_g * assumed("feedWaterHeld");
  const use_mL_d = slice.poured_mL_d ?? capacity_g / USUAL_DRY_DOWN_d;
  const demand_mg_d = tissue_frac.N * assumed("feedDryMass_g_L") * use_mL_d;
  const nitrogen = read("nitrogen_mg");
  const salt = read("saltAtRefill_mS_cm");
  const low_mg = (assumed("feedLow_mg_L") * holds_mL) / 1000;
  // Where no craft keeps the ledger of the pot the reading is the one that all pots get.
  const isKept = nitrogen.value !== readingKinds.nitrogen_mg.usual(sight.plant, sight.at_ms).value;
  const fresh_ms = Math.max(slice.freshAt_ms, slice.washedAt_ms ?? 0);
  const habit_ms = Math.max(
    (slice.fedAt_ms ?? 0) + assumed("feedEvery_d") * DAY_ms,
    fresh_ms + assumed("feedFresh_d") * DAY_ms,
  );
  const ledger_ms = now_ms + ((nitrogen.value - low_mg) / Math.max(demand_mg_d, 1e-3)) * DAY_ms;
  // A pot that was fed before does not wait longer than the trade does, however much its ledger believes to be left.
  const longest_ms =
    slice.fedAt_ms === undefined ? ledger_ms : slice.fedAt_ms + assumed("feedMost_d") * DAY_ms;
  const cutUntil_ms = slice.cutAt_ms === undefined ? 0 : slice.cutAt_ms + assumed("feedAfterCut_d") * DAY_ms;
  const held_g = read("waterHeld_g").value;
  // Feed goes where water would: not into a pot that is still full.
  const thirsty_ms =
    now_ms + (Math.max(0, held_g - assumed("feedFrom_frac") * capacity_g) / Math.max(use_mL_d, 1)) * DAY_ms;
  // Never feed a dry medium: water first, feed with the next one.
  const isDry = held_g < assumed("feedDry_frac") * capacity_g;
  const wanted_ms = isKept
    ? Math.max(
        Math.min(ledger_ms, Math.max(longest_ms, now_ms)),
        fresh_ms + assumed("feedFreshLeast_d") * DAY_ms,
      )
    : habit_ms;
  const due_ms = Math.max(wanted_ms, cutUntil_ms, thirsty_ms);
  const sd_d = isKept
    ? Math.hypot(
        nitrogen.sd / Math.max(demand_mg_d, 1e-3),
        0.25 * Math.max(0, (due_ms - now_ms) / DAY_ms),
        0.5,
      )
    : Math.max(2, 0.25 * assumed("feedFresh_d") * (slice.fedAt_ms === undefined ? 1 : 0.15));
  const isSalty = salt.origin !== "assumed" && salt.value > assumed("flushAt_mS_cm");
  const through = 1 + assumed("feedThrough_frac");
  return {
    does: isSalty ? "flush" : !isDry && due_ms <= now_ms + DAY_ms / 2 ? "feed" : "wait",
    because: isSalty
      ? "salts"
      : isDry
        ? "dry"
        : cutUntil_ms >= due_ms
          ? "cut"
          : isKept
            ? "nitrogen"
            : slice.fedAt_ms === undefined
              ? "fresh"
              : "habit",
    due_ms: isSalty ? now_ms : due_ms,
    dates_ms: datesAround(isSalty ? now_ms : due_ms, sd_d, now_ms, cutUntil_ms),
    stage: feedStage(slice, sight),
    strength_frac: strengthOf(slice, sight),
    volume_mL: rounded(isSalty ? 2 * holds_mL : Math.max(0.2 * capacity_g, capacity_g - held_g) * through),
    nitrogen_mg: nitrogen.value,
    nitrogen_mg_L: (1000 * nitrogen.value) / holds_mL,
    demand_mg_d,
    use_mL_d,
    holds_mL,
    salt_mS_cm: salt.value,
    saltOrigin: salt.origin,
    origin: nitrogen.origin,
  };
}

/** Twenty equally likely instants, none before now or before the cut allows. */
function datesAround(due_ms: number, sd_d: number, now_ms: number, least_ms: number): readonly number[] {
  return Array.from({ length: DRAWS_n }, (_, i) =>
    Math.max(now_ms, least_ms, due_ms + normalQuantile((i + 0.5) / DRAWS_n) * sd_d * DAY_ms),
  );
}

const rounded = (volume_mL: number): number =>
  volume_mL < 100 ? Math.max(5, 5 * Math.round(volume_mL / 5)) : 10 * Math.round(volume_mL / 10);

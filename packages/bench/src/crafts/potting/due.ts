import { type FlushPlan, flushPlan, potBound } from "@sillwood/science/medium";
import type { Outward, Sight } from "../craft.ts";
import { massesOf } from "./ledger.ts";
import { potLimits } from "./limits.ts";
import { saltWhen_mS_cm } from "./offers.ts";
import { extract_mS_cm, strength_mS_cm } from "./salts.ts";
import { type PotSlice, potSeen } from "./slice.ts";

const DAY_ms = 86_400_000;
/** A mark of the store younger than this says nothing of a shrinking one. @source our assumption */
const GOAL_OF_CAUTION_frac = 0.6;

export interface RepotDue {
  readonly due_ms: number;
  readonly age_d: number;
  readonly score: number;
  readonly biggerPot: boolean;
  readonly freshMedium: boolean;
  readonly storeLeft_frac: number;
}

/** When a pot wants fresh medium: by age, sooner by signs. */
export function repotDue(slice: PotSlice, sight: Sight): RepotDue {
  const age_d = Math.min(4000, Math.max(0, (sight.at_ms - slice.mediumSince_ms) / DAY_ms));
  const storeLeft_frac =
    slice.storeThen_g === undefined ? 1 : Math.min(2, sight.read("capacity_g").value / slice.storeThen_g);
  const bound = potBound({
    dryDown_frac: 1,
    capacityLeft_frac: storeLeft_frac,
    rootsCircling: slice.looked?.rootsCircling ?? false,
    standing_s: slice.looked?.standing_s ?? 0,
    runsThrough: false,
    age_d,
  });
  const after_d = sight.assumed("repotAfter_d");
  const byAge_ms = slice.mediumSince_ms + after_d * DAY_ms;
  const due_ms = bound.score >= 2 ? Math.min(byAge_ms, sight.at_ms) : byAge_ms;
  return { due_ms, age_d, storeLeft_frac, ...bound };
}

/** Salts of a pot beside the caution, and what brings them down. */
export interface SaltsDue {
  readonly refill_mS_cm: number;
  readonly driest_mS_cm: number;
  readonly extract_mS_cm: number;
  readonly caution_mS_cm: number;
  readonly plan?: FlushPlan;
  readonly goal_mS_cm: number;
  readonly water_mS_cm: number;
  readonly capacity_mL: number;
}

/** Conductivity of the water from the tap, as assumed. */
const tapSalt_mS_cm = (sight: Pick<Sight, "assumed">): number =>
  strength_mS_cm(
    massesOf({
      Ca: sight.assumed("tapCa_mg_L"),
      Mg: sight.assumed("tapMg_mg_L"),
      Na: sight.assumed("tapNa_mg_L"),
      Cl: sight.assumed("tapCl_mg_L"),
      S: sight.assumed("tapS_mg_L"),
      HCO3: sight.assumed("tapHCO3_mg_L"),
    }),
    1000,
  );

export function saltsDue(slice: PotSlice, sight: Sight, driest_frac: number): SaltsDue {
  const seen = potSeen(sight.plant, slice.fill, sight);
  const refill_mS_cm = saltWhen_mS_cm(slice, 0, sight);
  const caution_mS_cm = sight.assumed("saltCaution_mS_cm");
  const water_mS_cm = tapSalt_mS_cm(sight);
  const paste_mS_cm = extract_mS_cm(refill_mS_cm, seen);
  const capacity_mL = seen.unavailable_mL + sight.read("capacity_g").value;
  // As pore water at capacity; never below what the water itself brings.
  const goal_mS_cm = Math.max(
    GOAL_OF_CAUTION_frac * caution_mS_cm * (refill_mS_cm / Math.max(1e-6, paste_mS_cm)),
    1.2 * water_mS_cm,
  );
  const isOver = paste_mS_cm > caution_mS_cm && goal_mS_cm < refill_mS_cm && refill_mS_cm <= 30;
  return {
    refill_mS_cm,
    driest_mS_cm: saltWhen_mS_cm(slice, driest_frac, sight),
    extract_mS_cm: paste_mS_cm,
    caution_mS_cm,
    ...(isOver
      ? {
          plan: flushPlan({
            before_mS_cm: refill_mS_cm,
            goal_mS_cm,
            waterEc_mS_cm: water_mS_cm,
            capacityWater_mL: capacity_mL,
            leachingEfficiency: sight.assumed("leachingEfficiency"),
          }),
        }
      : {}),
    goal_mS_cm,
    water_mS_cm,
    capacity_mL,
  };
}

/** Whether a work is held by this craft itself now. */
export const heldHere = (slice: PotSlice, sight: Outward, work: "repot" | "flush"): boolean =>
  potLimits(slice, sight, sight.say).some((limit) => limit.work === work);

import { CAPACITY, DEPLETION, meanOf } from "@sillwood/science/water";
import type { Pour } from "../../round/task.ts";
import type { UnitSystem } from "../../words/say.ts";
import type { Sight } from "../craft.ts";
import type { WaterSlice } from "./slice.ts";

/** How much to pour and in how many goes. */
export interface Amount {
  readonly volume_mL: number;
  /** Before rounding to what hands can measure. */
  readonly exact_mL: number;
  readonly depletion_g: number;
  /** Share of a pour that the medium keeps. */
  readonly capture_frac: number;
  readonly leaching_frac: number;
  readonly pours: readonly Pour[];
  /** Whether it may as well be stood in water up to the rim. */
  readonly soak: boolean;
}

/** Wetted medium takes nearly all of a pour until it is this dry. @source air-water sheet W5 (assumption there) */
const CAPTURE_WET_frac = 0.95;
const CAPTURE_FALLS_FROM_frac = 0.6;
/** Beyond this the medium is taken as water-repellent and gets its water in parts. @source common practice, no source */
const IN_PARTS_FROM_frac = 0.75;
const MOST_POURS_n = 6;
const LEAST_POUR_mL = 10;
const ML_PER_US_FL_OZ = 29.5735295625;

/** Share of a pour that stays in a medium used to this share of its store (W5). */
function captureAt(used_frac: number, sight: Sight): number {
  const dry = sight.assumed(
    sight.plant.medium === "bark" || sight.plant.medium === "gritty"
      ? "dryCaptureOther_frac"
      : "dryCapture_frac",
  );
  if (used_frac <= CAPTURE_FALLS_FROM_frac) return CAPTURE_WET_frac;
  const way = Math.min(1, (used_frac - CAPTURE_FALLS_FROM_frac) / (1 - CAPTURE_FALLS_FROM_frac));
  return CAPTURE_WET_frac + way * (dry - CAPTURE_WET_frac);
}

/**
 * Water to fill the pot up again at a depletion (W1): V = D / (η (1 - LF)). In parts with waits when the medium is so
 * dry that water would run past it, or the plant has wilted; each part then meets a wetter medium.
 */
export function amountFor(slice: WaterSlice, sight: Sight, depletion_g: number, units: UnitSystem): Amount {
  const capacity_g = meanOf(slice.state, CAPACITY);
  const missing_g = Math.max(0, Math.min(capacity_g, depletion_g));
  const used_frac = missing_g / capacity_g;
  const inParts = used_frac > IN_PARTS_FROM_frac || slice.wilted_ms !== undefined;
  // In parts, the water after the first meets a wetted medium: the mean of both ends is kept.
  const capture_frac = inParts
    ? (captureAt(used_frac, sight) + CAPTURE_WET_frac) / 2
    : captureAt(used_frac, sight);
  const leaching_frac = sight.assumed("leaching_frac");
  const exact_mL = Math.max(LEAST_POUR_mL, missing_g / (capture_frac * (1 - leaching_frac)));
  const volume_mL = measurable(exact_mL, units);
  return {
    volume_mL,
    exact_mL,
    depletion_g: missing_g,
    capture_frac,
    leaching_frac,
    pours: inParts ? inPours(volume_mL, capacity_g, sight, units) : [{ volume_mL, wait_min: 0 }],
    soak: inParts,
  };
}

function inPours(volume_mL: number, capacity_g: number, sight: Sight, units: UnitSystem): readonly Pour[] {
  const largest_mL = Math.max(LEAST_POUR_mL, sight.assumed("pulse_frac") * capacity_g);
  const count_n = Math.max(2, Math.min(MOST_POURS_n, Math.ceil(volume_mL / largest_mL)));
  const wait_min = sight.assumed("pulseWait_min");
  const each_mL = measurable(volume_mL / count_n, units);
  return Array.from({ length: count_n }, (_, index) => ({
    volume_mL: index < count_n - 1 ? each_mL : Math.max(1, volume_mL - each_mL * (count_n - 1)),
    wait_min: index < count_n - 1 ? wait_min : 0,
  }));
}

/** The nearest amount that a jug shows: 5 mL below 100, 10 mL above; half fluid ounces. */
export function measurable(volume_mL: number, units: UnitSystem): number {
  const bounded_mL = Math.min(20_000, Math.max(1, volume_mL));
  if (units === "us") {
    const half_mL = ML_PER_US_FL_OZ / 2;
    return Math.min(20_000, Math.max(1, Math.round(bounded_mL / half_mL)) * half_mL);
  }
  const step_mL = bounded_mL < 100 ? 5 : 10;
  return Math.max(step_mL, Math.round(bounded_mL / step_mL) * step_mL);
}

/** Depletion expected at an instant ahead, on the middle path, g. */
export function depletionAt_g(slice: WaterSlice, use_g_d: number, now_ms: number, at_ms: number): number {
  const wait_d = Math.max(0, (at_ms - now_ms) / 86_400_000);
  return Math.min(meanOf(slice.state, CAPACITY), meanOf(slice.state, DEPLETION) + use_g_d * wait_d);
}

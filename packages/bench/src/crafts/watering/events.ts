import {
  CAPACITY,
  DEPLETION,
  DRAINED,
  EYE,
  LEAF,
  meanOf,
  SURFACE,
  sdOf,
  setAnew,
  shifted,
  withMoreDoubt,
} from "@sillwood/science/water";
import type { Effect } from "../../book/effects.ts";
import type { Sight } from "../craft.ts";
import { booked, changed } from "./changed.ts";
import { believing, leafFactorSd, newPotState, surfaceFactorSd, type WaterSlice } from "./slice.ts";

/** Doubt that a trim of a third or more adds to the ln leaf factor. @source air-water sheet F5 (assumption there) */
const TRIM_SD = 0.2;
/** Leaves left behind work a little harder: nine tenths of the loss is felt. */
const FELT_frac = 0.9;
const LARGE_TRIM_frac = 0.3;
const MOVE_LEAF_SD = 0.35;
const MOVE_SURFACE_SD = 0.2;
/** So much new medium or so few roots make a new pot record. */
const NEW_MEDIUM_frac = 0.3;
const FEW_ROOTS_frac = 0.7;

/** What any craft's effect means for the water in the pot; pours are folded apart. */
export function withEffect(slice: WaterSlice, effect: Effect, sight: Sight): WaterSlice {
  switch (effect.effect) {
    case "water out":
      return tipped(slice, effect.volume_mL);
    case "mass":
      return believing(slice, shifted(slice.state, DRAINED, finite(effect.change_g)));
    case "leaf area":
      return effect.kept_frac === undefined
        ? changed(slice, { counted: true })
        : trimmed(slice, effect.kept_frac, sight);
    case "moved":
      return moved(slice, sight);
    case "medium renewed":
      return effect.renewed_frac >= NEW_MEDIUM_frac ? changed(slice, { fresh: true }) : slice;
    case "pot changed":
      return changed(slice, { fresh: true });
    case "roots":
      return effect.kept_frac < FEW_ROOTS_frac ? changed(slice, { fresh: true }) : slice;
    default:
      return slice;
  }
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);

function tipped(slice: WaterSlice, volume_mL: number): WaterSlice {
  const volume_g = Math.max(0, finite(volume_mL));
  const before_g = slice.state[DEPLETION] as number;
  const state = withMoreDoubt(shifted(slice.state, DEPLETION, volume_g), DEPLETION, 0.1 * volume_g);
  const lost_g = (state[DEPLETION] as number) - before_g;
  return changed(slice, {
    state,
    ledger: booked(slice.ledger, { tipped_g: slice.ledger.tipped_g + lost_g }),
  });
}

function trimmed(slice: WaterSlice, kept_frac: number, sight: Sight): WaterSlice {
  const kept = Math.min(1, Math.max(0.01, finite(kept_frac)));
  const felt = shifted(slice.state, LEAF, (FELT_frac - 1) * Math.log(kept));
  const doubt = TRIM_SD * Math.min(1, (1 - kept) / LARGE_TRIM_frac);
  // The loss itself comes with the leaf area, which the house reads anew after the cut.
  return changed(believing(slice, withMoreDoubt(felt, LEAF, doubt, leafFactorSd(sight))), { trimmed: true });
}

function moved(slice: WaterSlice, sight: Sight): WaterSlice {
  const leaf = withMoreDoubt(slice.state, LEAF, MOVE_LEAF_SD, leafFactorSd(sight));
  return changed(slice, {
    state: withMoreDoubt(leaf, SURFACE, MOVE_SURFACE_SD, surfaceFactorSd()),
    errors: [],
    droopingWet_ms: undefined,
  });
}

/** A new pot record after repotting: what was learned of the old pot, its weight and its store goes. */
export function begunAnew(slice: WaterSlice, sight: Sight): WaterSlice {
  const prior = sight.read("capacityPrior_g");
  return {
    // The eye of those who tend it comes along; all else belongs to the old pot.
    ...believing(
      slice,
      setAnew(newPotState(sight), EYE, { mean: meanOf(slice.state, EYE), sd: sdOf(slice.state, EYE) }),
    ),
    fresh: false,
    prior: { capacity_g: prior.value, capacitySd_g: prior.sd },
    leafArea_m2: sight.read("leafArea_m2").value,
    trimmed: false,
    counted: false,
    surfaceLost_mm: 0,
    surprise: 1,
    seen: undefined,
    weights: [],
    held: [],
    capacityFrom: "pot",
    errors: [],
    droopingWet_ms: undefined,
    wilted_ms: undefined,
    problems: [],
    // What was forecast of the old pot came to no end.
    cycles: { open: undefined, closed: slice.cycles.closed, unseen_n: slice.cycles.unseen_n },
  };
}

/** Whether the drained weight is known from a scale, and not only guessed from the pot. */
export function hasWeight(slice: WaterSlice): boolean {
  return slice.weights.some((weight) => weight.used);
}

/** Share of the store used, as believed. */
export function depletion_frac(slice: WaterSlice): number {
  return (slice.state[DEPLETION] as number) / (slice.state[CAPACITY] as number);
}

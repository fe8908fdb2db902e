import { type Looker, type LookMeaning, OTHER_LOOKER, USUAL_LOOKER } from "@sillwood/science/water";
import type { PersonId } from "../../book/entry.ts";
import type { LookKey } from "./kinds.ts";
import type { WaterSlice } from "./slice.ts";

/**
 * What people mean by what they see: depletion, as a share of the capacity, at which half of them say yes, and how
 * unevenly. `opposite` looks are yes when the pot is wet. @source air-water sheet F6, F6b; the wet ones our assumption
 */
export const LOOK_MEANINGS: Readonly<Record<LookKey, LookMeaning & { readonly opposite?: true }>> = {
  dry: { at_frac: 0.5, spread_frac: 0.17 },
  light: { at_frac: 0.55, spread_frac: 0.12 },
  drooping: { at_frac: 0.95, spread_frac: 0.08 },
  heavy: { at_frac: 0.38, spread_frac: 0.14, opposite: true },
  moist: { at_frac: 0.55, spread_frac: 0.17, opposite: true },
  wet: { at_frac: 0.22, spread_frac: 0.13, opposite: true },
};

/** A pour without a look says "looked dry". */
export const POURED_WITHOUT_LOOK: LookMeaning = { at_frac: 0.5, spread_frac: 0.25 };
/** A walked visit without a pour says "not dry". */
export const VISITED_WITHOUT_POUR: LookMeaning = { at_frac: 0.66, spread_frac: 0.22 };

/** Whether a person is the one whose eye this pot has been learning. */
export function lookerOf(slice: WaterSlice, by: PersonId): Looker {
  return slice.tendedBy === undefined || slice.tendedBy === by ? USUAL_LOOKER : OTHER_LOOKER;
}

/**
 * What the next visit since the last pour is worth: depletion only grows between pours and an eye errs the same way each
 * time, so the n-th visit of a cycle is read with √n of the spread.
 */
export function repeated(meaning: LookMeaning, visitsSincePour_n: number): LookMeaning {
  return { at_frac: meaning.at_frac, spread_frac: meaning.spread_frac * Math.sqrt(1 + visitsSincePour_n) };
}

/** Leaves flag at noon without thirst: then a yes tells nothing. */
export const NOON_FROM_h = 10;
export const NOON_TO_h = 17;

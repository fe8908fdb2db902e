import type { Ledger, WaterSlice } from "./slice.ts";

/**
 * The same slice anew, for who is about to change it. Field by field, so that all slices have one shape: a spread of this many fields
 * makes several, and every reader of a slice, a dozen of them in each step of each pot, pays for it.
 */
export const copied = (slice: WaterSlice): { -readonly [Part in keyof WaterSlice]: WaterSlice[Part] } => ({
  at_ms: slice.at_ms,
  state: slice.state,
  fresh: slice.fresh,
  prior: slice.prior,
  leafArea_m2: slice.leafArea_m2,
  trimmed: slice.trimmed,
  counted: slice.counted,
  surfaceLost_mm: slice.surfaceLost_mm,
  ledger: slice.ledger,
  surprise: slice.surprise,
  seen: slice.seen,
  weights: slice.weights,
  held: slice.held,
  capacityFrom: slice.capacityFrom,
  errors: slice.errors,
  pours: slice.pours,
  demandSincePour_g: slice.demandSincePour_g,
  tendedBy: slice.tendedBy,
  lookDays: slice.lookDays,
  visits: slice.visits,
  visitsSincePour_n: slice.visitsSincePour_n,
  looks: slice.looks,
  droopingWet_ms: slice.droopingWet_ms,
  wilted_ms: slice.wilted_ms,
  problems: slice.problems,
  past: slice.past,
  cycles: slice.cycles,
});

/** A slice with some parts changed. */
export const changed = (slice: WaterSlice, parts: Partial<WaterSlice>): WaterSlice =>
  Object.assign(copied(slice), parts);

/** A ledger with some of its sums changed. */
export const booked = (ledger: Ledger, parts: Partial<Ledger>): Ledger =>
  Object.assign(
    {
      startDepletion_g: ledger.startDepletion_g,
      poured_g: ledger.poured_g,
      rain_g: ledger.rain_g,
      used_g: ledger.used_g,
      leafUsed_g: ledger.leafUsed_g,
      drained_g: ledger.drained_g,
      tipped_g: ledger.tipped_g,
      putRight_g: ledger.putRight_g,
    } satisfies Ledger,
    parts,
  );

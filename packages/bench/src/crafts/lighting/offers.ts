import type { Reading } from "../../working/reading.ts";
import { weakest } from "../../working/working.ts";
import type { LightSlice } from "./slice.ts";

/** Readings that the other crafts may use. */
export const lightOffers = {
  /**
   * Mean of a week. Light from all around on leaves at all angles holds the window's side already: no other factor for the
   * one-sided crown belongs on it.
   */
  lightCaught_mol_d: (slice: LightSlice): Reading => {
    const value = slice.around_mol_m2_d * slice.catching_m2;
    const leafSd_frac = slice.catching_m2 > 0 ? slice.catchingSd_m2 / slice.catching_m2 : 1;
    return {
      value,
      sd: value * Math.hypot(slice.lightSd_frac, leafSd_frac),
      origin: weakest([slice.lightOrigin, slice.leafOrigin]),
      from: "light of about a week from all around, on its leaves, their own shade taken off",
    };
  },
};

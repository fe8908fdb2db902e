import type { Reading } from "../../working/reading.ts";
import { weakest } from "../../working/working.ts";
import type { LightKept } from "./kept.ts";
import { lightingWords } from "./words.ts";

/** Readings that the other crafts may use. */
export const lightOffers = {
  /**
   * Mean of a week. Light from all around on leaves at all angles holds the window's side already: no other factor for the
   * one-sided crown belongs on it.
   */
  lightCaught_mol_d: ({ known, now }: LightKept): Reading => {
    const { catching_m2, catchingSd_m2, lightOrigin, leafOrigin } = known;
    const value = now[9] * catching_m2;
    const leafSd_frac = catching_m2 > 0 ? catchingSd_m2 / catching_m2 : 1;
    return {
      value,
      sd: value * Math.hypot(now[12], leafSd_frac),
      origin: weakest([lightOrigin, leafOrigin]),
      from: (say) => lightingWords(say).caughtFrom,
    };
  },
};

import { citations } from "../citations.ts";

/** Works that the field `air` rests on. */
export const sources = {
  FAO56: citations.FAO56,
  ASCE2005: citations.ASCE2005,
  Stull2011: {
    authors: "Stull R",
    year: 2011,
    title: "Wet-bulb temperature from relative humidity and air temperature",
    place: "Journal of Applied Meteorology and Climatology 50",
    seen: "abstract",
  },
  NelsonBugbee2015: {
    authors: "Nelson JA, Bugbee B",
    year: 2015,
    title:
      "Analysis of environmental effects on leaf temperature under sunlight, high pressure sodium and light emitting diodes",
    place: "PLoS ONE",
    seen: "abstract",
  },
} as const;

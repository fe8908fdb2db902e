import { citations } from "../citations.ts";

/** Works that the field `sun` rests on. */
export const sources = {
  FAO56: citations.FAO56,
  ASCE2005: citations.ASCE2005,
  ThimijanHeins1983: {
    authors: "Thimijan RW, Heins RD",
    year: 1983,
    title: "Photometric, radiometric and quantum light units of measure",
    place: "HortScience 18",
    seen: "from memory",
  },
} as const;

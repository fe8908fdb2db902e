import type { Working } from "@sillwood/bench/working";

/** Where a number comes from, as map-makers draw surveyed and guessed lines. */
export const MARK: Readonly<Record<Working["origin"], string>> = {
  measured: "●",
  learned: "◐",
  assumed: "○",
};

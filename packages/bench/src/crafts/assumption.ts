import type { Assumption } from "./craft.ts";

/** Where a number comes from that nobody published for this use, and where one comes from that every grower knows. */
export const OURS = "our assumption";
export const TRADE = "common practice, no source";

/** One line of a craft's table of assumptions. */
export const assumption = (
  key: string,
  what: string,
  value: number,
  unit: string,
  min: number,
  max: number,
  source: string,
  replacedBy: string,
): Assumption => ({ key, what, value, unit, min, max, source, replacedBy });

/** A day runs from its lowest to its highest temperature along a sine or a straight line. */
export type DayShape = "sine" | "triangle";

type Excess = { readonly excess_C: number; readonly above_frac: number };

/**
 * Mean excess of a day's course above a threshold, and the share of the day spent above it.
 *
 * @source Zalom1983
 */
function dayExcess(shape: DayShape, lowest_C: number, highest_C: number, threshold_C: number): Excess {
  const mean_C = (lowest_C + highest_C) / 2;
  if (highest_C <= threshold_C) return { excess_C: 0, above_frac: 0 };
  if (lowest_C >= threshold_C) return { excess_C: mean_C - threshold_C, above_frac: 1 };
  const range_C = highest_C - lowest_C;
  if (shape === "triangle") {
    const above_frac = (highest_C - threshold_C) / range_C;
    return { excess_C: (above_frac * (highest_C - threshold_C)) / 2, above_frac };
  }
  const start = Math.asin((threshold_C - mean_C) / (range_C / 2));
  const lit = Math.PI / 2 - start;
  const excess = ((mean_C - threshold_C) * lit + (range_C / 2) * Math.cos(start)) / Math.PI;
  return { excess_C: Math.max(0, excess), above_frac: lit / Math.PI };
}

/** What warmth above the upper threshold counts: as much as at it, less than that, or nothing. */
export type Cutoff = "horizontal" | "intermediate" | "vertical";

/**
 * Degree-days of a day between two thresholds; without an upper one all warmth counts.
 *
 * @source Zalom1983
 */
export function betweenThresholds_Cd(
  shape: DayShape,
  day: { readonly lowest_C: number; readonly highest_C: number },
  lower_C: number,
  upper_C: number | undefined,
  cutoff: Cutoff,
): number {
  const lower = dayExcess(shape, day.lowest_C, day.highest_C, lower_C).excess_C;
  if (upper_C === undefined) return lower;
  const upper = dayExcess(shape, day.lowest_C, day.highest_C, upper_C);
  if (cutoff === "intermediate") return Math.max(0, lower - 2 * upper.excess_C);
  const horizontal = Math.max(0, lower - upper.excess_C);
  if (cutoff === "horizontal") return horizontal;
  // Above the upper threshold the horizontal cutoff still counts the full span; the vertical one takes that away too.
  return Math.max(0, horizontal - (upper_C - lower_C) * upper.above_frac);
}

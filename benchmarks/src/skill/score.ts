import { crpsOfSample, groupBootstrapMean, seededGenerator } from "@sillwood/science/chance";
import type { Scored } from "./forecasts.ts";

export interface Score {
  readonly n: number;
  readonly crps_d: number;
  /** Mean absolute error of the median date. */
  readonly mae_d: number;
  /**
   * Mean of the dates less truth: negative is early. It is nought for dates that are right, whatever their shape; that of the median is
   * not, where waits have a longer tail to the one side.
   */
  readonly bias_d: number;
  /** Median date less truth. */
  readonly medianBias_d: number;
  /** Share of truths within the 10 to 90 % range. */
  readonly coverage_frac: number;
  readonly width_d: number;
}

const quantile = (ascending: readonly number[], probability: number) => {
  const place = probability * ascending.length - 0.5;
  const low = Math.max(0, Math.min(ascending.length - 1, Math.floor(place)));
  const high = Math.min(ascending.length - 1, low + 1);
  const share = Math.max(0, Math.min(1, place - low));
  return (ascending[low] as number) * (1 - share) + (ascending[high] as number) * share;
};

export const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** Scores forecasts of dates against what came true, days. */
export function scoreOf(
  cases: readonly Scored[],
  datesOf: (one: Scored) => readonly number[] = ({ dates_d }) => dates_d,
): Score {
  const rows = cases.map((one) => {
    const dates = datesOf(one);
    const [low, median, high] = [quantile(dates, 0.1), quantile(dates, 0.5), quantile(dates, 0.9)];
    return {
      crps: crpsOfSample({ sample: dates, observed: one.lead_d }),
      error: median - one.lead_d,
      meanError: mean(dates) - one.lead_d,
      // A pot that is due now is forecast for now: both ends count as inside.
      inside: one.lead_d >= low - 1e-9 && one.lead_d <= high + 1e-9 ? 1 : 0,
      width: high - low,
    };
  });
  return {
    n: rows.length,
    crps_d: mean(rows.map(({ crps }) => crps)),
    mae_d: mean(rows.map(({ error }) => Math.abs(error))),
    bias_d: mean(rows.map(({ meanError }) => meanError)),
    medianBias_d: mean(rows.map(({ error }) => error)),
    coverage_frac: mean(rows.map(({ inside }) => inside)),
    width_d: mean(rows.map(({ width }) => width)),
  };
}

const REDRAWS_n = 400;

/** 95 % range of the mean difference in CRPS (ours less theirs), pots drawn again and again; negative is better. */
export function crpsDifference(
  cases: readonly Scored[],
  theirs: (one: Scored) => readonly number[],
  seed: number,
) {
  const byPot = new Map<string, number[]>();
  for (const one of cases) {
    const difference =
      crpsOfSample({ sample: one.dates_d, observed: one.lead_d }) -
      crpsOfSample({ sample: theirs(one), observed: one.lead_d });
    byPot.set(one.pot, [...(byPot.get(one.pot) ?? []), difference]);
  }
  const generator = seededGenerator(`skill ${seed}`);
  return groupBootstrapMean({
    groups: [...byPot.values()],
    redraws_n: REDRAWS_n,
    tail: 0.025,
    uniform: () => generator.uniform(),
  });
}

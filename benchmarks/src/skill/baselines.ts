import { HORIZON_d, type Scored } from "./forecasts.ts";

/** A simple forecast of the watering date from the notes alone, days from now. */
export interface Baseline {
  readonly name: string;
  point_d(one: Scored): number;
}

const WEEK_d = 7;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const floor0 = (days: number) => Math.min(HORIZON_d, Math.max(0, days));

/** The usual ways of a grower without a reckoner. */
export const baselines: readonly Baseline[] = [
  { name: "fixed week", point_d: ({ past }) => floor0(WEEK_d - past.sinceWatering_d) },
  {
    name: "same interval",
    point_d: ({ past }) => floor0((past.intervals_d.at(-1) ?? WEEK_d) - past.sinceWatering_d),
  },
  {
    name: "mean of last five intervals",
    point_d: ({ past }) =>
      floor0(
        (past.intervals_d.length > 0 ? mean(past.intervals_d.slice(-5)) : WEEK_d) - past.sinceWatering_d,
      ),
  },
  {
    name: "last slope",
    point_d: ({ past }) => floor0(past.slope_d ?? (past.intervals_d.at(-1) ?? WEEK_d) - past.sinceWatering_d),
  },
];

const DATES_n = 20;

/** A baseline dressed with the spread of its own past errors, so that it is scored as a forecast and not as a bare point. */
export function dress(baseline: Baseline, trainedOn: readonly Scored[]): (one: Scored) => readonly number[] {
  const errors = trainedOn.map((one) => one.lead_d - baseline.point_d(one)).sort((a, b) => a - b);
  const quantiles = Array.from(
    { length: DATES_n },
    (_, i) => errors[Math.floor(((i + 0.5) / DATES_n) * errors.length)] ?? 0,
  );
  return (one) => quantiles.map((error) => floor0(baseline.point_d(one) + error));
}

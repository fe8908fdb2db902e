import { type PaneGeometry, paneView, windowDay_n, windowDays_mol_m2_d } from "@sillwood/science/light";
import { apart, runInC } from "./in-c.ts";
import { best_ms } from "./measured.ts";
import { seeded } from "./seeded.ts";

const DAYS_n = 365;
const LATITUDE_deg = 47.6;
const STEP_min = 10;

/** Everything is said outright, so that nothing rests on what our own functions assume. */
const PANE = {
  facing_deg: 200,
  left_m: -0.6,
  right_m: 0.6,
  bottom_m: 0,
  top_m: 1.4,
  distance_m: 0.3,
  revealDepth_m: 0.1,
  glazing: { panes_n: 2, paneTransmittance_frac: 0.9, refraction: 1.526 },
  horizon_deg: 12,
  crownWidth_m: 0.2,
  groundAlbedo: 0.2,
  facadeBrightness_frac: 0.2,
  overcastBelow_frac: 0.35,
} satisfies PaneGeometry;
const PHOTONS = { parShare_frac: 0.45, daylightPhotons_umol_J: 4.57 };

/** Milliseconds of a pane seen from nine points of a crown and of a year behind it, ours and in C. */
export interface WindowSpeed {
  readonly view_ms: number;
  readonly year_ms: number;
  /** Light of the year on a level leaf, mean of its days. */
  readonly level_mol_m2_d: number;
  readonly c:
    | {
        readonly view_ms: number;
        readonly year_ms: number;
        /** Most that any factor of the view and any number of any day differ. */
        readonly viewApart_frac: number;
        readonly apart_mol_m2_d: number;
      }
    | undefined;
}

/** @param cc name of a C compiler; without one only our own figures come */
export function windowSpeed(runs_n: number, seed: number, cc: string | undefined): WindowSpeed {
  const random = seeded(seed);
  const daysOfYear_d = Float64Array.from({ length: DAYS_n }, (_, day) => day + 1);
  const solarDays_MJ_m2_d = daysOfYear_d.map(
    (day) => (16 - 11 * Math.cos((2 * Math.PI * (day + 10)) / DAYS_n)) * (0.15 + 0.85 * random()),
  );
  let view = paneView(PANE);
  const view_ms = best_ms(runs_n, () => {
    view = paneView(PANE);
  });
  const year = new Float64Array(windowDay_n * DAYS_n);
  const days = {
    views: [view],
    latitude_deg: LATITUDE_deg,
    daysOfYear_d,
    solarDays_MJ_m2_d,
    step_min: STEP_min,
    ...PHOTONS,
  };
  const year_ms = best_ms(runs_n, () => windowDays_mol_m2_d(days, year));
  const [level, direct] = [0, (windowDay_n - 1) / 2];
  let sum = 0;
  for (let at = 0; at < year.length; at += windowDay_n)
    sum += (year[at + level] as number) + (year[at + direct] as number);
  return {
    view_ms,
    year_ms,
    level_mol_m2_d: sum / DAYS_n,
    c:
      cc === undefined
        ? undefined
        : inC(cc, runs_n, solarDays_MJ_m2_d, [...view.skyFactors_frac, ...view.groundFactors_frac], year),
  };
}

function inC(
  cc: string,
  runs_n: number,
  solarDays_MJ_m2_d: Float64Array,
  factors_frac: readonly number[],
  year: Float64Array,
): NonNullable<WindowSpeed["c"]> {
  const rad = Math.PI / 180;
  // In the order of `struct place`.
  const place = Float64Array.of(
    LATITUDE_deg * rad,
    PANE.facing_deg * rad,
    PANE.left_m,
    PANE.right_m,
    PANE.bottom_m,
    PANE.top_m,
    PANE.distance_m,
    PANE.revealDepth_m,
    PANE.horizon_deg * rad,
    PANE.glazing.panes_n,
    PANE.glazing.paneTransmittance_frac,
    PANE.glazing.refraction,
    PANE.groundAlbedo,
    PANE.facadeBrightness_frac,
    PANE.overcastBelow_frac,
    PANE.crownWidth_m,
    STEP_min,
    PHOTONS.parShare_frac * PHOTONS.daylightPhotons_umol_J,
  );
  const { ms, out } = runInC(cc, "reference-window", [place, solarDays_MJ_m2_d], DAYS_n, runs_n);
  const [view_ms = Number.NaN, year_ms = Number.NaN] = ms;
  return {
    view_ms,
    year_ms,
    viewApart_frac: apart(Float64Array.from(factors_frac), out.subarray(0, factors_frac.length)),
    apart_mol_m2_d: apart(year, out.subarray(factors_frac.length)),
  };
}

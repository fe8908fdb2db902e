import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { haurwitz_W_m2, solarConstant_W_m2 } from "../sun/clear-sky.ts";
import { beamOf_W_m2, clearnessOf_frac, erbs_frac } from "../sun/diffuse-split.ts";
import { sunOrbit } from "../sun/ephemeris.ts";
import { globalCoefficients, shapeOfHour } from "../sun/hours-of-day.ts";
import { rad_per_deg } from "../units.ts";
import { lightAssumptions } from "./assumptions.ts";
import { addPaneLight, planesNamed } from "./pane-light.ts";
import { type LightPlane, type PaneView, planes_n } from "./pane-view.ts";

/** Noon of 1 January of a year in mid-cycle of leap years: the declination by day of the year, good to 0.1°. */
const newYearNoon_ms = 1_672_574_400_000;

/** Numbers a day takes in the row of `windowDays`: diffuse per plane, direct per plane, outdoors on level ground. */
export const windowDay_n = 2 * planes_n + 1;

/** One day into a row of sums, MJ m⁻²; a negative radiation of the day stands for a clear sky. */
function addDay(
  views: readonly PaneView[],
  latitude_rad: number,
  dayOfYear_d: number,
  solar_MJ_m2: number,
  step_min: number,
  row: Float64Array,
): void {
  const orbit = sunOrbit(newYearNoon_ms + (dayOfYear_d - 1) * 86_400_000);
  const latitudeSine = Math.sin(latitude_rad);
  const latitudeCosine = Math.cos(latitude_rad);
  const sunSine = Math.sin(orbit.declination_rad);
  const sunCosine = Math.cos(orbit.declination_rad);
  const sunsetCosine = (-latitudeSine * sunSine) / Math.max(1e-9, latitudeCosine * sunCosine);
  const sunset_rad = Math.acos(Math.max(-1, Math.min(1, sunsetCosine)));
  const steps = Math.ceil((2 * sunset_rad) / ((step_min * Math.PI) / 720));
  if (steps === 0) return;
  const normal_W_m2 = solarConstant_W_m2 / orbit.distanceRatio ** 2;
  const stride = (2 * sunset_rad) / steps;
  const clear = solar_MJ_m2 < 0;
  const { a, b } = globalCoefficients(sunset_rad);
  let shapes = 0;
  for (let step = 0; !clear && step < steps; step += 1) {
    shapes += Math.max(0, shapeOfHour(-sunset_rad + (step + 0.5) * stride, sunset_rad, a, b));
  }
  const step_s = (stride * 43_200) / Math.PI;
  const perShape_W_m2 = clear ? 0 : shapes > 0 ? (solar_MJ_m2 * 1e6) / (shapes * step_s) : 0;
  const weight_MJ = step_s / 1e6;
  for (let step = 0; step < steps; step += 1) {
    const angle = -sunset_rad + (step + 0.5) * stride;
    const cosine = Math.cos(angle);
    const sine = latitudeSine * sunSine + latitudeCosine * sunCosine * cosine;
    const azimuth_rad =
      Math.PI +
      Math.atan2(Math.sin(angle) * sunCosine, cosine * latitudeSine * sunCosine - sunSine * latitudeCosine);
    const global_W_m2 = clear
      ? haurwitz_W_m2(sine)
      : perShape_W_m2 * Math.max(0, shapeOfHour(angle, sunset_rad, a, b));
    if (global_W_m2 <= 0) continue;
    const kt = clearnessOf_frac(global_W_m2, sine, normal_W_m2);
    const beam_W_m2 = beamOf_W_m2(global_W_m2, erbs_frac(kt) * global_W_m2, sine);
    // What a low sun does not send straight comes from the sky, so that nothing of the day is lost.
    const diffuse_W_m2 = global_W_m2 - beam_W_m2 * Math.max(0, sine);
    for (let at = 0; at < views.length; at += 1) {
      addPaneLight(views[at] as PaneView, diffuse_W_m2, beam_W_m2, sine, azimuth_rad, kt, weight_MJ, row);
    }
    row[2 * planes_n] = (row[2 * planes_n] as number) + global_W_m2 * weight_MJ;
  }
}

/** Days of a window, and what the sky and the calibration of the spot are. */
export type WindowDays = {
  /** of `paneView`, all of one place */
  readonly views: readonly PaneView[];
  /** -90 to 90, north positive */
  readonly latitude_deg: number;
  /** [day], 1 to 366 */
  readonly daysOfYear_d: ArrayLike<number>;
  /** [day], 0 to 50; clear days when left out */
  readonly solarDays_MJ_m2_d?: ArrayLike<number>;
  /** 1 to 60; 10 when left out */
  readonly step_min?: number;
  /** measured over modelled light from sky and ground, 0.05 to 5; 1 when left out */
  readonly spotRatio?: number;
  readonly parShare_frac?: number;
  readonly daylightPhotons_umol_J?: number;
};

/**
 * Daily light at a place behind its panes for many days: a year of one spot in one call.
 *
 * Each day's radiation over its hours (Collares-Pereira and Rabl), split (Erbs), through the panes, times the photons of
 * daylight. Sun time: the clock, the zone and the longitude change no daily sum
 *
 * @param days panes, latitude, days of the year, radiation of each: see `WindowDays` for each unit and range
 * @param into room for `windowDay_n` numbers a day, when the caller keeps it
 * @returns [day][diffuse of the planes level, facing, sphere, front, right, back, left; direct of the same; outdoors], mol m⁻² d⁻¹
 * @throws QuantityError outside those ranges
 * @source CollaresPereiraRabl1979; Erbs1982; FaustLogan2018 for the photons
 */
export function windowDays_mol_m2_d(days: WindowDays, into?: Float64Array): Float64Array {
  const { views, latitude_deg, daysOfYear_d, solarDays_MJ_m2_d, step_min = 10, spotRatio = 1 } = days;
  within("latitude_deg", latitude_deg, -90, 90);
  within("step_min", step_min, 1, 60);
  within("spotRatio", spotRatio, 0.05, 5);
  if (solarDays_MJ_m2_d)
    within("solarDays_n", solarDays_MJ_m2_d.length, daysOfYear_d.length, daysOfYear_d.length);
  const { parShare_frac, daylightPhotons_umol_J } = valuesOf(lightAssumptions, days);
  const photons_mol_MJ = parShare_frac * daylightPhotons_umol_J;
  const out = into ?? new Float64Array(windowDay_n * daysOfYear_d.length);
  within("room_n", out.length, windowDay_n * daysOfYear_d.length, Number.MAX_SAFE_INTEGER);
  const latitude_rad = latitude_deg * rad_per_deg;
  for (let day = 0; day < daysOfYear_d.length; day += 1) {
    const dayOfYear_d = daysOfYear_d[day] as number;
    within("daysOfYear_d", dayOfYear_d, 1, 366);
    const solar_MJ_m2_d = solarDays_MJ_m2_d ? (solarDays_MJ_m2_d[day] as number) : -1;
    if (solarDays_MJ_m2_d) within("solarDays_MJ_m2_d", solar_MJ_m2_d, 0, 50);
    const row = out.subarray(windowDay_n * day, windowDay_n * (day + 1));
    row.fill(0);
    addDay(views, latitude_rad, dayOfYear_d, solar_MJ_m2_d, step_min, row);
    for (let at = 0; at < windowDay_n; at += 1) {
      row[at] = (row[at] as number) * photons_mol_MJ * (at < planes_n ? spotRatio : 1);
    }
  }
  return out;
}

export type PlaneDay = Readonly<Record<`${LightPlane}_mol_m2_d`, number>>;

/**
 * Daily light at a place behind its panes on one day, by name.
 *
 * @param day panes of `paneView`; latitude [°], -90 to 90; day of the year, 1 to 366; radiation of the day [MJ m⁻² d⁻¹], 0 to 50, a clear day when left out; step [min], 1 to 60; calibration of the spot, 0.05 to 5
 * @returns light [mol m⁻² d⁻¹] on each plane from sky and ground, straight from the sun and together; outdoors on level ground
 * @throws QuantityError outside those ranges
 * @source CollaresPereiraRabl1979; Erbs1982; FaustLogan2018 for the photons
 * @see checks/sun-light.json 110, 112
 */
export function windowDay(day: {
  readonly views: readonly PaneView[];
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly solar_MJ_m2_d?: number;
  readonly step_min?: number;
  readonly spotRatio?: number;
  readonly parShare_frac?: number;
  readonly daylightPhotons_umol_J?: number;
}): {
  readonly diffuse: PlaneDay;
  readonly direct: PlaneDay;
  readonly all: PlaneDay;
  readonly outdoors_mol_m2_d: number;
} {
  const { dayOfYear_d, solar_MJ_m2_d, ...rest } = day;
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  if (solar_MJ_m2_d !== undefined) within("solar_MJ_m2_d", solar_MJ_m2_d, 0, 50);
  const row = windowDays_mol_m2_d({
    ...rest,
    daysOfYear_d: [dayOfYear_d],
    ...(solar_MJ_m2_d === undefined ? {} : { solarDays_MJ_m2_d: [solar_MJ_m2_d] }),
  });
  const sum = Float64Array.from(
    { length: planes_n },
    (_, plane) => (row[plane] as number) + (row[planes_n + plane] as number),
  );
  return {
    diffuse: planesNamed(row, 0, "mol_m2_d"),
    direct: planesNamed(row, planes_n, "mol_m2_d"),
    all: planesNamed(sum, 0, "mol_m2_d"),
    outdoors_mol_m2_d: row[2 * planes_n] as number,
  };
}

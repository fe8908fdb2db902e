import { within } from "../errors/index.ts";
import { extraterrestrialRadiation_MJ_m2_d } from "../sun/geometry.ts";
import { clearnessOfDays_frac } from "../sun/usual-clearness.ts";
import { type PaneView, planes_n } from "./pane-view.ts";
import { windowDay_n, windowDays_mol_m2_d } from "./window-days.ts";

const days_n = 31;

/**
 * Daily light at a place behind its panes over the days of a month of which only the mean clearness is known.
 *
 * Window light comes in dull days and sunny ones, and the mean is like neither: its median and the band of 20 to 80 % of days
 *
 * @param month panes of `paneView`; latitude [°], -90 to 90; day of the year in mid-month, 1 to 366; mean clearness, 0.2 to 0.75; calibration of the spot, 0.05 to 5
 * @returns light on a level leaf [mol m⁻² d⁻¹]: 20 % of days are duller than low, 30 % than fixed-timer light, half than median, 80 % than high; mean; mean outdoors
 * @throws QuantityError outside those ranges
 * @source Bendt1981 for the days; the chain of `windowDays`
 */
export function windowBand(month: {
  readonly views: readonly PaneView[];
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly clearness_frac: number;
  readonly spotRatio?: number;
}): {
  readonly low_mol_m2_d: number;
  readonly timer_mol_m2_d: number;
  readonly median_mol_m2_d: number;
  readonly high_mol_m2_d: number;
  readonly mean_mol_m2_d: number;
  readonly outdoors_mol_m2_d: number;
} {
  const { views, latitude_deg, dayOfYear_d, clearness_frac, spotRatio = 1 } = month;
  within("dayOfYear_d", dayOfYear_d, 1, 366);
  const above_MJ_m2_d = extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d });
  const solarDays_MJ_m2_d = clearnessOfDays_frac({ clearness_frac, days_n }).map((kt) => kt * above_MJ_m2_d);
  const rows = windowDays_mol_m2_d({
    views,
    latitude_deg,
    daysOfYear_d: solarDays_MJ_m2_d.map(() => dayOfYear_d),
    solarDays_MJ_m2_d,
    spotRatio,
  });
  const at = (day: number, column: number): number => rows[windowDay_n * day + column] as number;
  const levels = solarDays_MJ_m2_d.map((_, day) => at(day, 0) + at(day, planes_n)).sort((a, b) => a - b);
  // Each of the days stands for one slice of the month; a quantile lies in the slice it falls in.
  const quantile = (level: number): number =>
    levels[Math.min(days_n - 1, Math.floor(level * days_n))] as number;
  const outdoors = solarDays_MJ_m2_d.reduce((sum, _, day) => sum + at(day, 2 * planes_n), 0);
  return {
    low_mol_m2_d: quantile(0.2),
    timer_mol_m2_d: quantile(0.3),
    median_mol_m2_d: quantile(0.5),
    high_mol_m2_d: quantile(0.8),
    mean_mol_m2_d: levels.reduce((sum, level) => sum + level, 0) / days_n,
    outdoors_mol_m2_d: outdoors / days_n,
  };
}

import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { sunAssumptions } from "./assumptions.ts";
import * as kernel from "./kernel.ts";

/**
 * How much of a day's direct sun an upright pane receives, against a level surface above the air.
 *
 * Sum over the daylight of max(0, cos of the angle between sun and pane), over the same sum of sin(elevation).
 */
function beamOnPane(latitude_rad: number, dayOfYear_d: number, azimuth_rad: number): number {
  const declination = kernel.declination_rad(dayOfYear_d);
  const sunset = kernel.sunsetAngle_rad(latitude_rad, declination);
  const steps = 96;
  let onPane = 0;
  let onLevel = 0;
  for (let step = 0; step < steps; step += 1) {
    const hourAngle = -sunset + (2 * sunset * (step + 0.5)) / steps;
    const up =
      Math.sin(latitude_rad) * Math.sin(declination) +
      Math.cos(latitude_rad) * Math.cos(declination) * Math.cos(hourAngle);
    const north =
      Math.cos(latitude_rad) * Math.sin(declination) -
      Math.sin(latitude_rad) * Math.cos(declination) * Math.cos(hourAngle);
    const east = -Math.cos(declination) * Math.sin(hourAngle);
    if (up <= 0) continue;
    onLevel += up;
    // A sun lower than about 6° shines through so much air, and over so many roofs, that it counts for little.
    if (up > 0.1) onPane += Math.max(0, north * Math.cos(azimuth_rad) + east * Math.sin(azimuth_rad));
  }
  return onLevel > 0 ? onPane / onLevel : 0;
}

/**
 * Guess of the daily light on an unobstructed window sill, from compass direction and season alone.
 *
 * light = Ra · clearness · (direct share · beam on the pane + diffuse share · sky seen) · glass · sill · mol per MJ.
 * To be used only until light was measured or the lighting craft computes it; right within a factor of 2.5 four times in five.
 *
 * @param window latitude [°], -90 to 90; day of the year, 1 to 366; azimuth the pane faces [°], 0 to 360, north 0, east 90; any of the assumptions of the field, set by the grower
 * @returns light [mol m⁻² d⁻¹] on the sill
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example guessedSillLight_mol_m2_d({ latitude_deg: 45, dayOfYear_d: 355, azimuth_deg: 180 }) // 5.93
 */
export function guessedSillLight_mol_m2_d(window: {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly azimuth_deg: number;
  readonly clearness_frac?: number;
  readonly skySeen_frac?: number;
  readonly glass_frac?: number;
  readonly sill_frac?: number;
  readonly direct_frac?: number;
  readonly photonsOfSolar_mol_MJ?: number;
}): number {
  within("latitude_deg", window.latitude_deg, -90, 90);
  within("dayOfYear_d", window.dayOfYear_d, 1, 366);
  within("azimuth_deg", window.azimuth_deg, 0, 360);
  const set = valuesOf(sunAssumptions, window);
  const latitude = kernel.radiansOf_rad(window.latitude_deg);
  const ground_MJ = set.clearness_frac * kernel.extraterrestrial_MJ_m2_d(latitude, window.dayOfYear_d);
  const beam = beamOnPane(latitude, window.dayOfYear_d, window.azimuth_deg * rad_per_deg);
  const pane_MJ = ground_MJ * (set.direct_frac * beam + (1 - set.direct_frac) * set.skySeen_frac);
  return pane_MJ * set.glass_frac * set.sill_frac * set.photonsOfSolar_mol_MJ;
}

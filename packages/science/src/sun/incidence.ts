import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";

/**
 * Angle between the sun's rays and the normal of a surface of any tilt and direction.
 *
 * cos θ = sin a cos β + cos a sin β cos(azimuth − facing); β is 0 for a level surface and 90° for a pane
 *
 * @param surface true elevation of the sun [°], -90 to 90; its azimuth [°], 0 to 360; tilt [°], 0 to 180; direction the surface faces [°], 0 to 360, north 0, east 90
 * @returns angle [°], 0 to 180; above 90 the sun is behind the surface
 * @throws QuantityError outside those ranges
 * @source DuffieBeckman2013 eq. 1.6.3
 * @see checks/sun-light.json 041, 044, 045
 * @example incidenceAngle_deg({ elevation_deg: 30, azimuth_deg: 180, tilt_deg: 90, facing_deg: 180 }) // 30
 */
export function incidenceAngle_deg(surface: {
  readonly elevation_deg: number;
  readonly azimuth_deg: number;
  readonly tilt_deg: number;
  readonly facing_deg: number;
}): number {
  within("elevation_deg", surface.elevation_deg, -90, 90);
  within("azimuth_deg", surface.azimuth_deg, 0, 360);
  within("tilt_deg", surface.tilt_deg, 0, 180);
  within("facing_deg", surface.facing_deg, 0, 360);
  const elevation = surface.elevation_deg * rad_per_deg;
  const tilt = surface.tilt_deg * rad_per_deg;
  const turn = (surface.azimuth_deg - surface.facing_deg) * rad_per_deg;
  const cosine = Math.sin(elevation) * Math.cos(tilt) + Math.cos(elevation) * Math.sin(tilt) * Math.cos(turn);
  return Math.acos(Math.max(-1, Math.min(1, cosine))) / rad_per_deg;
}

import { rad_per_deg } from "../units.ts";
import { cornerOf_frac } from "./view-factor.ts";

// The bare formulas of lamps, for callers that have checked their arguments. Not exported by the field.

/** Exponent of a beam whose strength has halved at half its full angle; 120° gives 1, Lambert's cosine. */
export const beamExponentOf = (beam_deg: number): number =>
  Math.log(0.5) / Math.log(Math.cos((beam_deg / 2) * rad_per_deg));

/** From an emitter that points straight down, on a level spot. */
export const pointOf_umol_m2_s = (
  flux_umol_s: number,
  exponent: number,
  height_m: number,
  lateral_m: number,
): number => {
  const square = height_m * height_m + lateral_m * lateral_m;
  const cosine = height_m / Math.sqrt(square);
  return (((flux_umol_s * (exponent + 1)) / (2 * Math.PI)) * cosine ** (exponent + 1)) / square;
};

/** Parallel disc off its axis: F = ½ (1 − (h² + a² − R²)/√((h² + a² + R²)² − 4 a² R²)); R²/(R² + h²) on it. */
export const discOf_umol_m2_s = (
  flux_umol_s: number,
  radius_m: number,
  height_m: number,
  lateral_m: number,
): number => {
  const [h2, a2, r2] = [height_m ** 2, lateral_m ** 2, radius_m ** 2];
  const root = Math.sqrt((h2 + a2 + r2) ** 2 - 4 * a2 * r2);
  // The same as 1 − (h² + a² − R²)/root, without losing the digits of a small disc.
  const twice = (4 * r2 * h2) / (root * (root + h2 + a2 - r2));
  return (flux_umol_s / (Math.PI * r2)) * (twice / 2);
};

/** Corners of B-3 around the foot of the spot on the panel. */
export const rectangleOf_umol_m2_s = (
  flux_umol_s: number,
  length_m: number,
  width_m: number,
  height_m: number,
  along_m: number,
  across_m: number,
): number => {
  const corner = (side: 1 | -1, edge: 1 | -1): number =>
    side * edge * cornerOf_frac((side * length_m) / 2 - along_m, (edge * width_m) / 2 - across_m, height_m);
  const factor = corner(1, 1) + corner(1, -1) + corner(-1, 1) + corner(-1, -1);
  return (flux_umol_s / (length_m * width_m)) * factor;
};

/** Lambertian line of light: ∫ h²/(ρ² + s²)² ds, ρ² = h² + across². */
export const stripOf_umol_m2_s = (
  flux_umol_s: number,
  length_m: number,
  height_m: number,
  along_m: number,
  across_m: number,
): number => {
  const square = height_m ** 2 + across_m ** 2;
  const root = Math.sqrt(square);
  const upTo = (s: number): number =>
    s / (2 * square * (square + s * s)) + Math.atan(s / root) / (2 * square * root);
  const span = upTo(length_m / 2 - along_m) - upTo(-length_m / 2 - along_m);
  return (flux_umol_s / (Math.PI * length_m)) * height_m ** 2 * span;
};

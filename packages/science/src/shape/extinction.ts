import { within } from "../errors/index.ts";

/**
 * Extinction of a beam in leaves whose angles are those of an ellipsoid.
 *
 * k = √(x² + tan² z) / (x + 1.774 (x + 1.182)^-0.733), z from the zenith; x = 1 leaves at all angles, larger for flatter leaves
 *
 * @param leaves ratio of the ellipsoid's axes, 0.05 to 20; zenith angle of the beam [°], 0 to 89
 * @returns extinction per unit of leaf area over ground
 * @throws QuantityError outside those ranges
 * @source Campbell1986
 * @example beamExtinction({ ellipsoid: 1, zenith_deg: 0 }) // 0.4997
 */
export function beamExtinction(leaves: { readonly ellipsoid: number; readonly zenith_deg: number }): number {
  within("ellipsoid", leaves.ellipsoid, 0.05, 20);
  within("zenith_deg", leaves.zenith_deg, 0, 89);
  const x = leaves.ellipsoid;
  const tangent = Math.tan((leaves.zenith_deg * Math.PI) / 180);
  return Math.sqrt(x * x + tangent * tangent) / (x + 1.774 * (x + 1.182) ** -0.733);
}

/**
 * Share of light that passes layers of leaf.
 *
 * exp(-k L)
 *
 * @param layers extinction, 0 to 10; leaf area over ground, 0 to 50
 * @returns share let through
 * @throws QuantityError outside those ranges
 * @source MonsiSaeki1953
 * @example passedLight_frac({ extinction: 0.75, lai: 1 }) // 0.4724
 */
export function passedLight_frac(layers: { readonly extinction: number; readonly lai: number }): number {
  within("extinction", layers.extinction, 0, 10);
  within("lai", layers.lai, 0, 50);
  return Math.exp(-layers.extinction * layers.lai);
}

/**
 * Share of light that passes a path through leaves.
 *
 * exp(-G × leaf density × path)
 *
 * @param path mean shadow of a unit of leaf, 0 to 1; leaf area in a volume [m² m⁻³], 0 to 10000; length of the path [m], 0 to 10
 * @returns share let through
 * @throws QuantityError outside those ranges
 * @source MonsiSaeki1953
 * @example pathLight_frac({ shadow_frac: 0.5, leafDensity_m2_m3: 40, path_m: 0.05 }) // 0.3679
 */
export function pathLight_frac(path: {
  readonly shadow_frac: number;
  readonly leafDensity_m2_m3: number;
  readonly path_m: number;
}): number {
  within("shadow_frac", path.shadow_frac, 0, 1);
  within("leafDensity_m2_m3", path.leafDensity_m2_m3, 0, 10_000);
  within("path_m", path.path_m, 0, 10);
  return Math.exp(-path.shadow_frac * path.leafDensity_m2_m3 * path.path_m);
}

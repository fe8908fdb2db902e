import { within } from "../errors/index.ts";
import {
  beamExponentOf,
  discOf_umol_m2_s,
  pointOf_umol_m2_s,
  rectangleOf_umol_m2_s,
  stripOf_umol_m2_s,
} from "./lamp-kernel.ts";

// All lamps hang level over a level leaf; heights count from the diodes to the leaf.
const checkFlux = (flux_umol_s: number): void => within("flux_umol_s", flux_umol_s, 0, 100_000);
const checkHeight = (height_m: number): void => within("height_m", height_m, 0.01, 20);
const checkAside = (name: string, value_m: number): void => within(name, value_m, -20, 20);

/**
 * Exponent of a beam: how fast its strength falls beside its middle.
 *
 * m = ln 0.5 / ln cos(half the full angle), strength as cos^m; 1 for Lambert's 120°
 *
 * @param beam_deg full angle of the beam at half strength [°], 5 to 175
 * @returns exponent
 * @throws QuantityError outside that range
 * @source InverseSquare
 * @example beamExponent(60) // 4.82
 */
export function beamExponent(beam_deg: number): number {
  within("beam_deg", beam_deg, 5, 175);
  return beamExponentOf(beam_deg);
}

/**
 * Light under a small lamp with a beam.
 *
 * I0 = PPF (m + 1)/2π, E = I0 cos^(m+1) θ / r²; m = ln 0.5 / ln cos(half the full beam angle)
 *
 * @param lamp photon flux [µmol s⁻¹], 0 to 100000; full angle of the beam at half strength [°], 5 to 175, 120 when left out (Lambert); height over the leaf [m], 0.01 to 20; distance aside [m], -20 to 20
 * @returns light on a level leaf [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source InverseSquare
 * @example pointLamp_umol_m2_s({ flux_umol_s: 100, height_m: 0.5 }) // 127.32
 */
export function pointLamp_umol_m2_s(lamp: {
  readonly flux_umol_s: number;
  readonly height_m: number;
  readonly beam_deg?: number;
  readonly lateral_m?: number;
}): number {
  const { flux_umol_s, height_m, beam_deg = 120, lateral_m = 0 } = lamp;
  checkFlux(flux_umol_s);
  checkHeight(height_m);
  within("beam_deg", beam_deg, 5, 175);
  checkAside("lateral_m", lateral_m);
  return pointOf_umol_m2_s(flux_umol_s, beamExponentOf(beam_deg), height_m, lateral_m);
}

/**
 * Light under a round panel that shines alike in all directions downwards (Lambert).
 *
 * On the axis E = PPF / (π (R² + h²)); beside it the configuration factor of a parallel disc
 *
 * @param lamp photon flux [µmol s⁻¹], 0 to 100000; radius [m], 0.001 to 5; height over the leaf [m], 0.01 to 20; distance aside [m], -20 to 20
 * @returns light on a level leaf [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source HowellCatalog B-13
 * @see checks/sun-light.json 104
 * @example discLamp_umol_m2_s({ flux_umol_s: 100, radius_m: 0.3, height_m: 0.3 }) // 176.84
 */
export function discLamp_umol_m2_s(lamp: {
  readonly flux_umol_s: number;
  readonly radius_m: number;
  readonly height_m: number;
  readonly lateral_m?: number;
}): number {
  const { flux_umol_s, radius_m, height_m, lateral_m = 0 } = lamp;
  checkFlux(flux_umol_s);
  within("radius_m", radius_m, 0.001, 5);
  checkHeight(height_m);
  checkAside("lateral_m", lateral_m);
  return discOf_umol_m2_s(flux_umol_s, radius_m, height_m, lateral_m);
}

/**
 * Light under a rectangular panel that shines alike in all directions downwards (Lambert).
 *
 * E = PPF/A times the sum of the corner factors B-3 around the foot of the leaf on the panel
 *
 * @param lamp photon flux [µmol s⁻¹], 0 to 100000; length and width [m], 0.001 to 10; height over the leaf [m], 0.01 to 20; distances of the leaf from the middle along the length and across it [m], -20 to 20
 * @returns light on a level leaf [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source HowellCatalog B-3
 * @see checks/sun-light.json 105
 * @example rectangleLamp_umol_m2_s({ flux_umol_s: 100, length_m: 0.6, width_m: 0.6, height_m: 0.3 }) // 153.92
 */
export function rectangleLamp_umol_m2_s(lamp: {
  readonly flux_umol_s: number;
  readonly length_m: number;
  readonly width_m: number;
  readonly height_m: number;
  readonly along_m?: number;
  readonly across_m?: number;
}): number {
  const { flux_umol_s, length_m, width_m, height_m, along_m = 0, across_m = 0 } = lamp;
  checkFlux(flux_umol_s);
  within("length_m", length_m, 0.001, 10);
  within("width_m", width_m, 0.001, 10);
  checkHeight(height_m);
  checkAside("along_m", along_m);
  checkAside("across_m", across_m);
  return rectangleOf_umol_m2_s(flux_umol_s, length_m, width_m, height_m, along_m, across_m);
}

/**
 * Light under a narrow strip that shines alike in all directions downwards (Lambert).
 *
 * Under the middle E = PPF/(πL) [a/(h² + a²) + atan(a/h)/h], a = L/2; beside it the same integral over the strip
 *
 * @param lamp photon flux [µmol s⁻¹], 0 to 100000; length [m], 0.001 to 10; height over the leaf [m], 0.01 to 20; distances of the leaf from the middle along the strip and across it [m], -20 to 20
 * @returns light on a level leaf [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source HowellCatalog, integrated along a line
 * @see checks/sun-light.json 106
 * @example stripLamp_umol_m2_s({ flux_umol_s: 100, length_m: 1.2, height_m: 0.3 }) // 133.261
 */
export function stripLamp_umol_m2_s(lamp: {
  readonly flux_umol_s: number;
  readonly length_m: number;
  readonly height_m: number;
  readonly along_m?: number;
  readonly across_m?: number;
}): number {
  const { flux_umol_s, length_m, height_m, along_m = 0, across_m = 0 } = lamp;
  checkFlux(flux_umol_s);
  within("length_m", length_m, 0.001, 10);
  checkHeight(height_m);
  checkAside("along_m", along_m);
  checkAside("across_m", across_m);
  return stripOf_umol_m2_s(flux_umol_s, length_m, height_m, along_m, across_m);
}

/**
 * True light under a round lamp over what the inverse square of the distance would claim ("rule of five").
 *
 * x² / (1 + x²), x the height over the radius: 4 % less at 5 radii, 1 % at 10
 *
 * @param lamp radius [m], 0.001 to 5; height [m], 0.01 to 20
 * @returns share, 0 to 1
 * @throws QuantityError outside those ranges
 * @source InverseSquare
 * @see checks/sun-light.json 104
 * @example inverseSquareShare_frac({ radius_m: 0.1, height_m: 0.5 }) // 0.9615
 */
export function inverseSquareShare_frac(lamp: {
  readonly radius_m: number;
  readonly height_m: number;
}): number {
  within("radius_m", lamp.radius_m, 0.001, 5);
  checkHeight(lamp.height_m);
  const square = (lamp.height_m / lamp.radius_m) ** 2;
  return square / (1 + square);
}

import { within } from "../errors/index.ts";

/**
 * Volume of the visual hull over the true volume of an upright cylinder or a sphere seen from the side.
 *
 * (2n/π) tan(π/(2n)): the 2n-gon around a circle, slice by slice; parallel rays
 *
 * @param directions_n distinct side directions, 2 to 10000
 * @returns ratio, 1.273 for two
 * @throws QuantityError outside that range
 * @source BronshteinSemendyayev1985, polygon around a circle
 * @example hullRatio(3) // 1.10266
 */
export function hullRatio(directions_n: number): number {
  within("directions_n", directions_n, 2, 10_000);
  return ((2 * directions_n) / Math.PI) * Math.tan(Math.PI / (2 * directions_n));
}

/**
 * Distinct outlines that stops of a turntable give a far camera: opposite views have the same outline.
 *
 * n for odd n, n/2 for even n
 *
 * @param stops_n stops over a full turn, 1 to 20000
 * @returns distinct directions
 * @throws QuantityError outside that range
 * @source BronshteinSemendyayev1985, parallel views
 * @example distinctDirections_n(8) // 4
 */
export function distinctDirections_n(stops_n: number): number {
  within("stops_n", stops_n, 1, 20_000);
  return stops_n % 2 === 0 ? stops_n / 2 : stops_n;
}

/**
 * Hull of a sphere in three views at right angles to one another.
 *
 * V = 8 (2 - √2) R³
 *
 * @param radius_m radius of the sphere [m], 1e-6 to 1e6
 * @returns volume [m³] and its ratio to the sphere
 * @throws QuantityError outside that range
 * @source BronshteinSemendyayev1985, solid of three cylinders
 * @example threeViewHull(1).ratio // 1.1188
 */
export function threeViewHull(radius_m: number): { readonly volume_m3: number; readonly ratio: number } {
  within("radius_m", radius_m, 1e-6, 1e6);
  const volume_m3 = 8 * (2 - Math.SQRT2) * radius_m ** 3;
  return { volume_m3, ratio: volume_m3 / ((4 / 3) * Math.PI * radius_m ** 3) };
}

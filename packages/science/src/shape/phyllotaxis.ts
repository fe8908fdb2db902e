import { within } from "../errors/index.ts";

/**
 * The golden angle, between one leaf and the next around a stem.
 *
 * 360 (2 - φ), φ = (1 + √5) / 2
 *
 * @returns angle [°], 137.508
 * @source Okabe2019
 * @example goldenAngle_deg() // 137.508
 */
export function goldenAngle_deg(): number {
  return 360 * (2 - (1 + Math.sqrt(5)) / 2);
}

/**
 * Compass direction of a node's leaf where no photo shows it.
 *
 * az_n = az_0 + s n 137.508°, modulo 360; spread about 15° a node
 *
 * @param spiral direction of the first leaf [°], -360 to 720; nodes further up, 0 to 1000; left or right spiral
 * @returns direction [°], 0 to 360
 * @throws QuantityError outside those ranges
 * @source Okabe2019
 * @example leafAzimuth_deg({ azimuth0_deg: 0, node_n: 3, leftHanded: true }) // 52.52
 */
export function leafAzimuth_deg(spiral: {
  readonly azimuth0_deg: number;
  readonly node_n: number;
  readonly leftHanded: boolean;
}): number {
  within("azimuth0_deg", spiral.azimuth0_deg, -360, 720);
  within("node_n", spiral.node_n, 0, 1000);
  const turned = spiral.azimuth0_deg + (spiral.leftHanded ? 1 : -1) * spiral.node_n * goldenAngle_deg();
  return ((turned % 360) + 360) % 360;
}

/**
 * Angle between successive leaves of a stem whose leaves repeat after so many nodes.
 *
 * 360 × turns / leaves
 *
 * @param fraction turns around the stem, 1 to 100; leaves in them, 1 to 300, at least as many as turns
 * @returns angle [°]
 * @throws QuantityError outside those ranges
 * @source Okabe2019
 * @example divergence_deg({ turns_n: 2, leavesPerTurns_n: 5 }) // 144
 */
export function divergence_deg(fraction: {
  readonly turns_n: number;
  readonly leavesPerTurns_n: number;
}): number {
  within("turns_n", fraction.turns_n, 1, 100);
  within("leavesPerTurns_n", fraction.leavesPerTurns_n, 1, 300);
  within("leavesPerTurns_n", fraction.leavesPerTurns_n, fraction.turns_n, 300);
  return (360 * fraction.turns_n) / fraction.leavesPerTurns_n;
}

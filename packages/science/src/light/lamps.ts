import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import {
  discLamp_umol_m2_s,
  pointLamp_umol_m2_s,
  rectangleLamp_umol_m2_s,
  stripLamp_umol_m2_s,
} from "./lamp-shapes.ts";

/** Light-giving part of a lamp, by the closed form that stands for it; `length_m` lies along x. */
export type LampShape =
  | { readonly shape: "point"; readonly beam_deg?: number }
  | { readonly shape: "disc"; readonly radius_m: number }
  | { readonly shape: "rectangle"; readonly length_m: number; readonly width_m: number }
  | { readonly shape: "strip"; readonly length_m: number };

/** A lamp that hangs level; x and y in any one frame of the bench, y pointing where the compass says `front_deg` below. */
export type Lamp = LampShape & {
  /** photons from 400 to 700 nm that leave it, ageing and dimming taken off [µmol s⁻¹] */
  readonly flux_umol_s: number;
  readonly x_m: number;
  readonly y_m: number;
  /** height of the diodes above the zero of the bench [m] */
  readonly z_m: number;
};

export type LampSpot = { readonly x_m: number; readonly y_m: number; readonly z_m: number };

/** The light of one lamp on a level leaf at a spot. */
function levelOf(lamp: Lamp, spot: LampSpot): number {
  const height_m = lamp.z_m - spot.z_m;
  // A leaf that has grown past the lamp gets none of it from above.
  if (height_m < 0.01) return 0;
  const along_m = spot.x_m - lamp.x_m;
  const across_m = spot.y_m - lamp.y_m;
  const lateral_m = Math.hypot(along_m, across_m);
  if (lateral_m > 20 || height_m > 20) return 0;
  switch (lamp.shape) {
    case "point":
      return pointLamp_umol_m2_s({ ...lamp, height_m, lateral_m });
    case "disc":
      return discLamp_umol_m2_s({ ...lamp, height_m, lateral_m });
    case "rectangle":
      return rectangleLamp_umol_m2_s({ ...lamp, height_m, along_m, across_m });
    case "strip":
      return stripLamp_umol_m2_s({ ...lamp, height_m, along_m, across_m });
  }
}

/**
 * Light of any number of lamps on a level leaf at a spot.
 *
 * Sum of their closed forms
 *
 * @param lamps each with its shape, photon flux and place [m]
 * @param spot place of the leaf [m] in the same frame
 * @returns light [µmol m⁻² s⁻¹]; 0 where a leaf has grown past a lamp
 * @throws QuantityError for a lamp outside the ranges of its closed form
 * @source HowellCatalog; InverseSquare
 */
export function lampsLevel_umol_m2_s(lamps: readonly Lamp[], spot: LampSpot): number {
  return lamps.reduce((sum, lamp) => sum + levelOf(lamp, spot), 0);
}

const cells_n = 8;

/** Small Lambertian pieces that stand for a lamp where no closed form exists. */
function pieces(lamp: Lamp): readonly (readonly [number, number])[] {
  const evenly = (length_m: number): readonly number[] =>
    Array.from({ length: cells_n }, (_, cell) => ((cell + 0.5) / cells_n - 0.5) * length_m);
  switch (lamp.shape) {
    case "point":
      return [[0, 0]];
    case "disc":
      return evenly(1).flatMap((ring) =>
        evenly(2 * Math.PI).map((turn) => {
          const radius_m = lamp.radius_m * Math.sqrt(ring + 0.5);
          return [radius_m * Math.cos(turn), radius_m * Math.sin(turn)] as const;
        }),
      );
    case "rectangle":
      return evenly(lamp.length_m).flatMap((x) => evenly(lamp.width_m).map((y) => [x, y] as const));
    case "strip":
      return evenly(lamp.length_m).map((x) => [x, 0] as const);
  }
}

/** Light of lamps on the planes of a crown, in the order of the light through a pane. */
export type LampPlanes = {
  readonly level_umol_m2_s: number;
  readonly sphere_umol_m2_s: number;
  readonly front_umol_m2_s: number;
  readonly right_umol_m2_s: number;
  readonly back_umol_m2_s: number;
  readonly left_umol_m2_s: number;
};

/**
 * Light of lamps on a level leaf, from all around, and on the four sides of a crown.
 *
 * Level by the closed forms; around and on the sides each lamp is parted into small pieces with the beam of a point
 *
 * @param lamps each with its shape, photon flux and place [m]
 * @param spot place of the leaf [m] in the same frame
 * @param turn_deg by how much the front of the crown is turned clockwise from the y of the frame [°], -360 to 360; 0 when left out
 * @returns light [µmol m⁻² s⁻¹] on each plane
 * @throws QuantityError for a lamp outside the ranges of its closed form
 * @source HowellCatalog; InverseSquare
 */
export function lampsPlanes(lamps: readonly Lamp[], spot: LampSpot, turn_deg = 0): LampPlanes {
  within("turn_deg", turn_deg, -360, 360);
  const sides = [0, 0, 0, 0];
  let sphere_umol_m2_s = 0;
  for (const lamp of lamps) {
    const all = pieces(lamp);
    const height_m = lamp.z_m - spot.z_m;
    if (height_m < 0.01) continue;
    for (const [x, y] of all) {
      const east = lamp.x_m + x - spot.x_m;
      const north = lamp.y_m + y - spot.y_m;
      const distance_m = Math.hypot(east, north, height_m);
      if (Math.hypot(east, north) > 20 || height_m > 20) continue;
      const beam_deg = lamp.shape === "point" ? (lamp.beam_deg ?? 120) : 120;
      const level = pointLamp_umol_m2_s({
        flux_umol_s: lamp.flux_umol_s / all.length,
        beam_deg,
        height_m,
        lateral_m: Math.hypot(east, north),
      });
      const normal = (level * distance_m) / height_m;
      sphere_umol_m2_s += normal;
      for (let side = 0; side < 4; side += 1) {
        const azimuth = (turn_deg + 90 * side) * rad_per_deg;
        const toward = (east * Math.sin(azimuth) + north * Math.cos(azimuth)) / distance_m;
        sides[side] = (sides[side] as number) + normal * Math.max(0, toward);
      }
    }
  }
  const [front, right, back, left] = sides as [number, number, number, number];
  return {
    level_umol_m2_s: lampsLevel_umol_m2_s(lamps, spot),
    sphere_umol_m2_s,
    front_umol_m2_s: front,
    right_umol_m2_s: right,
    back_umol_m2_s: back,
    left_umol_m2_s: left,
  };
}

/**
 * Share of a lamp's photons that falls on the bench.
 *
 * Σ PPFD dA / PPF over a grid of the bench; 0.4 to 0.8 is usual (from memory)
 *
 * @param lamps each with its shape, photon flux and place [m]
 * @param bench edges of the bench [m] in the same frame, -20 to 20, and height of the leaves [m]
 * @returns share, 0 to 1
 * @throws QuantityError outside those ranges or when an edge lies beyond its opposite
 * @source HowellCatalog; InverseSquare
 */
export function lampUtilisation_frac(
  lamps: readonly Lamp[],
  bench: {
    readonly fromX_m: number;
    readonly toX_m: number;
    readonly fromY_m: number;
    readonly toY_m: number;
    readonly z_m: number;
  },
): number {
  within("fromX_m", bench.fromX_m, -20, 20);
  within("toX_m", bench.toX_m, bench.fromX_m, 20);
  within("fromY_m", bench.fromY_m, -20, 20);
  within("toY_m", bench.toY_m, bench.fromY_m, 20);
  const flux_umol_s = lamps.reduce((sum, lamp) => sum + lamp.flux_umol_s, 0);
  if (flux_umol_s <= 0) return 0;
  const grid_n = 40;
  const width_m = (bench.toX_m - bench.fromX_m) / grid_n;
  const depth_m = (bench.toY_m - bench.fromY_m) / grid_n;
  let caught_umol_s = 0;
  for (let i = 0; i < grid_n; i += 1) {
    for (let j = 0; j < grid_n; j += 1) {
      const spot = {
        x_m: bench.fromX_m + (i + 0.5) * width_m,
        y_m: bench.fromY_m + (j + 0.5) * depth_m,
        z_m: bench.z_m,
      };
      caught_umol_s += lampsLevel_umol_m2_s(lamps, spot) * width_m * depth_m;
    }
  }
  return Math.min(1, caught_umol_s / flux_umol_s);
}

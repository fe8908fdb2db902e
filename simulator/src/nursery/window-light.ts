import type { Ground, SkyHours } from "./outdoor-air.ts";
import { sunAt } from "./sky.ts";

/** An upright pane as it really is. Lengths in metres, heights above the crowns of the pots. */
export interface Pane {
  /** Clockwise from north. */
  readonly faces_deg: number;
  readonly width_m: number;
  readonly height_m: number;
  /** Lower edge of the glass over the crowns; negative when the crowns stand higher than it. */
  readonly foot_m: number;
  /** Depth of the wall outside the glass. */
  readonly reveal_m: number;
  readonly panes_n: 1 | 2 | 3;
  /** Light lost inside one pane at straight passage (extinction times thickness). */
  readonly extinction: number;
  /** What bars, dirt, coatings and curtains let through. */
  readonly clear_frac: number;
  /** Heat rays that pass, over visible light that passes. */
  readonly heat_frac: number;
}

/** What stands outside. */
export interface Opposite {
  /** Height of the roofs over the horizon all along, degrees. */
  readonly roofs_deg: number;
  /** A house or tree to one side: from and to, right of the pane's facing when positive, and its height. */
  readonly side?: { readonly from_deg: number; readonly to_deg: number; readonly height_deg: number };
  /** Height over which a balcony or eave covers the sky. */
  readonly brow_deg: number;
  /** Light thrown back by ground and walls. */
  readonly ground_frac: number;
  readonly walls_frac: number;
}

/** The room behind the pane throws light around. */
interface Indoors {
  readonly surfaces_m2: number;
  readonly reflectance_frac: number;
}

/** Where the middle of a crown stands: aside of the pane's middle (right positive, seen from outside in) and back from it. */
export interface WindowPlace {
  readonly aside_m: number;
  readonly back_m: number;
}

/** Short-wave light at one place, [hour], before leaves shade one another. */
export interface PlaceLight {
  /** On a level meter. */
  readonly level_W_m2: Float64Array;
  /** On the mean outer leaf, turned partly towards the pane. */
  readonly crown_W_m2: Float64Array;
}

const RAD = Math.PI / 180;
const GLASS_INDEX = 1.526;
/** Crowns have a width: rays are taken at its middle and to both sides. @source our assumption */
const CROWN_m = [-0.08, 0, 0.08] as const;
const RAY_deg = 4;

/**
 * Share of light that passes a number of equal panes at an angle.
 *
 * r = mean of sin²(θ-θ')/sin²(θ+θ') and tan²(θ-θ')/tan²(θ+θ'); τ = mean of (1-r)/(1+(2n-1)r), times exp(-n KL/cos θ')
 *
 * @source Duffie and Beckman, Solar Engineering of Thermal Processes, section 5.1 to 5.3 (from memory)
 */
export function glassPasses_frac(cosine: number, panes_n: number, extinction: number): number {
  const slant = Math.acos(Math.max(0.001, Math.min(0.99999, cosine)));
  const within = Math.asin(Math.sin(slant) / GLASS_INDEX);
  const across = (Math.sin(within - slant) / Math.sin(within + slant)) ** 2;
  const along = (Math.tan(within - slant) / Math.tan(within + slant)) ** 2;
  const through = (r: number) => (1 - r) / (1 + (2 * panes_n - 1) * r);
  return ((through(across) + through(along)) / 2) * Math.exp((-panes_n * extinction) / Math.cos(within));
}

/** Height of what hides the sky in a direction, aside of the pane's facing, degrees. */
function skyline_deg(opposite: Opposite, aside_deg: number): number {
  const { side, roofs_deg } = opposite;
  if (side && aside_deg >= side.from_deg && aside_deg <= side.to_deg)
    return Math.max(roofs_deg, side.height_deg);
  return roofs_deg;
}

/** What of a ray from a crown comes out of the window: it must pass the glass and, a wall's depth on, the outer opening. */
function meetsPane(pane: Pane, place: WindowPlace, cosUp: number, sinUp: number, aside: number): boolean {
  const outward = cosUp * Math.cos(aside);
  if (outward <= 0.01) return false;
  const passes = (depth_m: number) => {
    const way_m = depth_m / outward;
    const right_m = place.aside_m + way_m * cosUp * Math.sin(aside);
    const up_m = way_m * sinUp;
    return (
      Math.abs(right_m) <= pane.width_m / 2 && up_m >= pane.foot_m && up_m <= pane.foot_m + pane.height_m
    );
  };
  return passes(place.back_m) && passes(place.back_m + pane.reveal_m);
}

/** Light at a place per unit of light outside: under an even sky, an overcast one, and thrown back by ground and walls. */
interface Shares {
  readonly even: number;
  readonly overcast: number;
  readonly thrown: number;
}

/** Sends rays from a crown in all directions of the half space before it and adds up what they meet. */
function sharesOf(
  pane: Pane,
  opposite: Opposite,
  place: WindowPlace,
  turned_frac: number,
): { readonly level: Shares; readonly crown: Shares } {
  const level = { even: 0, overcast: 0, thrown: 0 };
  const facing = { even: 0, overcast: 0, thrown: 0 };
  for (const off_m of CROWN_m) {
    const from = { ...place, aside_m: place.aside_m + off_m };
    for (let up_deg = -88; up_deg < 90; up_deg += RAY_deg) {
      const sinUp = Math.sin(up_deg * RAD);
      const cosUp = Math.cos(up_deg * RAD);
      const angle = cosUp * (RAY_deg * RAD) ** 2;
      for (let aside_deg = -88; aside_deg < 90; aside_deg += RAY_deg) {
        if (!meetsPane(pane, from, cosUp, sinUp, aside_deg * RAD)) continue;
        const outward = cosUp * Math.cos(aside_deg * RAD);
        const passed =
          (glassPasses_frac(outward, pane.panes_n, pane.extinction) * pane.clear_frac * angle) /
          CROWN_m.length;
        const [kind, radiance] = radianceOf(opposite, up_deg, aside_deg);
        const [onLevel, onFacing] = [passed * Math.max(0, sinUp), passed * outward];
        level[kind] += onLevel * radiance;
        facing[kind] += onFacing * radiance;
        if (kind === "even") {
          // The same ray under an overcast sky, three times as bright overhead as at the horizon.
          const cloudy = (3 / (7 * Math.PI)) * (1 + 2 * sinUp);
          level.overcast += onLevel * cloudy;
          facing.overcast += onFacing * cloudy;
        }
      }
    }
  }
  const crown = {
    even: mixed(level.even, facing.even, turned_frac),
    overcast: mixed(level.overcast, facing.overcast, turned_frac),
    thrown: mixed(level.thrown, facing.thrown, turned_frac),
  };
  return { level, crown };
}

const mixed = (level: number, facing: number, turned_frac: number) =>
  level * (1 - turned_frac) + facing * turned_frac;

/** Brightness of what a ray meets, over the light on open level ground: sky, walls across the street, or ground. */
function radianceOf(
  opposite: Opposite,
  up_deg: number,
  aside_deg: number,
): readonly ["even" | "thrown", number] {
  if (up_deg < 0) return ["thrown", opposite.ground_frac / Math.PI];
  // A wall sees half the sky, and its own side is as often in the shade as in the sun.
  if (up_deg < skyline_deg(opposite, aside_deg)) return ["thrown", (opposite.walls_frac * 0.5) / Math.PI];
  if (up_deg > opposite.brow_deg) return ["thrown", 0.05 / Math.PI];
  return ["even", 1 / Math.PI];
}

/**
 * Light at places behind a pane, hour by hour: rays over the sky for what is diffuse, the sun itself at three moments of
 * the hour, and what the room throws around.
 *
 * @param turned_frac how far outer leaves face the pane (the rest lies level)
 * @source overcast sky: CIE standard (Moon and Spencer 1942); the even sky for clear weather and the blend of the two are
 *   our assumption
 */
export function windowLight(
  sky: SkyHours,
  ground: Ground,
  pane: Pane,
  opposite: Opposite,
  indoors: Indoors,
  places: readonly WindowPlace[],
  turned_frac: number,
): PlaceLight[] {
  const { hours_n, from_ms } = sky.air;
  const shares = places.map((place) => sharesOf(pane, opposite, place, turned_frac));
  const lights = places.map(() => ({
    level_W_m2: new Float64Array(hours_n),
    crown_W_m2: new Float64Array(hours_n),
  }));
  const area_m2 = pane.width_m * pane.height_m;
  const around = indoors.reflectance_frac / (indoors.surfaces_m2 * (1 - indoors.reflectance_frac));
  const even_frac = glassPasses_frac(0.55, pane.panes_n, pane.extinction) * pane.clear_frac;
  for (let i = 0; i < hours_n; i++) {
    const global_W_m2 = sky.global_W_m2[i] as number;
    if (global_W_m2 <= 0) continue;
    const diffuse_W_m2 = sky.diffuse_W_m2[i] as number;
    const cloud_frac = Math.max(0, Math.min(1, (diffuse_W_m2 / global_W_m2 - 0.3) / 0.6));
    const beams = [1 / 6, 1 / 2, 5 / 6].map((part) =>
      beamAt(from_ms + (i + part) * 3_600_000, ground, pane, opposite, global_W_m2 - diffuse_W_m2),
    );
    const entering_W =
      area_m2 *
      even_frac *
      (0.4 * diffuse_W_m2 +
        0.5 * opposite.ground_frac * global_W_m2 +
        beams.reduce((sum, beam) => sum + beam.direct_W_m2 * beam.outward, 0) / 3);
    for (const [k, light] of lights.entries()) {
      const { level, crown } = shares[k] as (typeof shares)[number];
      const skyOf = (of: Shares) =>
        diffuse_W_m2 * (of.even * (1 - cloud_frac) + of.overcast * cloud_frac) + global_W_m2 * of.thrown;
      let [sunLevel_W_m2, sunFacing_W_m2] = [0, 0];
      for (const beam of beams) {
        if (beam.direct_W_m2 <= 0) continue;
        const lit =
          CROWN_m.filter((off_m) => {
            const place = places[k] as WindowPlace;
            return meetsPane(
              pane,
              { ...place, aside_m: place.aside_m + off_m },
              beam.cosUp,
              beam.sinUp,
              beam.aside,
            );
          }).length / CROWN_m.length;
        const passed_W_m2 = (beam.direct_W_m2 * beam.passes_frac * lit) / beams.length;
        sunLevel_W_m2 += passed_W_m2 * beam.sinUp;
        sunFacing_W_m2 += passed_W_m2 * beam.outward;
      }
      const thrown_W_m2 = entering_W * around;
      light.level_W_m2[i] = skyOf(level) + sunLevel_W_m2 + thrown_W_m2;
      light.crown_W_m2[i] = skyOf(crown) + mixed(sunLevel_W_m2, sunFacing_W_m2, turned_frac) + thrown_W_m2;
    }
  }
  return lights;
}

/** The sun before a pane: its direction, its strength square to itself, and the share that the glass passes. */
function beamAt(at_ms: number, ground: Ground, pane: Pane, opposite: Opposite, direct_W_m2: number) {
  const sun = sunAt(at_ms, ground.latitude_deg, ground.longitude_deg);
  const up_deg = Math.asin(sun.sinHeight) / RAD;
  const aside_deg = ((sun.azimuth_deg - pane.faces_deg + 540) % 360) - 180;
  const cosUp = Math.sqrt(1 - sun.sinHeight ** 2);
  const outward = cosUp * Math.cos(aside_deg * RAD);
  const shines =
    sun.sinHeight > 0.03 &&
    outward > 0.01 &&
    up_deg > skyline_deg(opposite, aside_deg) &&
    up_deg <= opposite.brow_deg;
  return {
    sinUp: sun.sinHeight,
    cosUp,
    aside: aside_deg * RAD,
    outward: Math.max(0, outward),
    // A beam cannot be stronger than the sun; near the horizon the division alone would make it so.
    direct_W_m2: shines ? Math.min(1000, direct_W_m2 / Math.max(0.06, sun.sinHeight)) : 0,
    passes_frac: shines ? glassPasses_frac(outward, pane.panes_n, pane.extinction) * pane.clear_frac : 0,
  };
}

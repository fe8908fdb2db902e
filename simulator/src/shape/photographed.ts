import type { Chance } from "../nursery/chance.ts";
import type { DrawnJoint } from "./drawn-plant.ts";

/** A phone's camera as it really is: what the grower who traces is never told. */
export interface TrueCamera {
  readonly distance_mm: number;
  readonly focal_px: number;
  readonly width_px: number;
  readonly height_px: number;
  /** Where the lens looks, off the middle of the picture. */
  readonly offX_px: number;
  readonly offY_px: number;
  /** Barrel (negative) or pincushion distortion at the picture's half diagonal. */
  readonly distortion_frac: number;
  /** Turn of the pot between the photos, a quarter and its error. */
  readonly turn_deg: number;
  /** Height of the lens over the rim. */
  readonly lens_mm: number;
}

export type Pixel = readonly [number, number];

/** A camera drawn by chance around the one that is believed. */
export function trueCamera(
  chance: Chance,
  believed: Pick<TrueCamera, "distance_mm" | "focal_px" | "width_px" | "height_px" | "lens_mm">,
): TrueCamera {
  return {
    ...believed,
    distance_mm: believed.distance_mm * (1 + chance.normal(0, 0.02)),
    offX_px: chance.normal(0, 12),
    offY_px: chance.normal(0, 12),
    distortion_frac: chance.normal(-0.004, 0.004),
    turn_deg: 90 + chance.normal(0, 2),
  };
}

/** Where a place of the plant lands in the photo after a turn of the pot, pixels from left and top. */
export function pixelOf(
  camera: TrueCamera,
  place: Pick<DrawnJoint, "right_mm" | "away_mm" | "up_mm">,
  which: "front" | "side",
): Pixel {
  const turn = which === "front" ? 0 : (camera.turn_deg * Math.PI) / 180;
  // Turned so that what was right goes away from the camera.
  const right = place.right_mm * Math.cos(turn) - place.away_mm * Math.sin(turn);
  const away = place.right_mm * Math.sin(turn) + place.away_mm * Math.cos(turn);
  const scale = camera.focal_px / (camera.distance_mm + away);
  const u = right * scale;
  const v = (place.up_mm - camera.lens_mm) * scale;
  const half = Math.hypot(camera.width_px, camera.height_px) / 2;
  const bent = 1 + camera.distortion_frac * ((u * u + v * v) / (half * half));
  return [camera.width_px / 2 + camera.offX_px + u * bent, camera.height_px / 2 + camera.offY_px - v * bent];
}

/** A tap of a finger with a loupe: near the joint, not on it. */
export const tapNear = (chance: Chance, [x, y]: Pixel, sd_px: number): Pixel => [
  x + chance.normal(0, sd_px),
  y + chance.normal(0, sd_px),
];

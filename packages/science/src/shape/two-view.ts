import { within } from "../errors/index.ts";

/** A point clicked in both photos: right and up from the middle of each, in pixels. */
export type Match = {
  readonly right1_px: number;
  readonly up1_px: number;
  readonly right2_px: number;
  readonly up2_px: number;
};

export type Camera = { readonly distance_mm: number; readonly focal_px: number };

function checkCamera({ distance_mm, focal_px }: Camera): void {
  within("distance_mm", distance_mm, 50, 20_000);
  within("focal_px", focal_px, 100, 50_000);
}

function checkPixel(name: string, value: number): void {
  within(name, value, -20_000, 20_000);
}

/**
 * Distance of the camera from a card of known size in the plane of the trunk.
 *
 * D = f S / s
 *
 * @param card focal length [px], 100 to 50000; its size [mm], 5 to 1000; its size in the photo [px], 5 to 20000
 * @returns distance [mm]
 * @throws QuantityError outside those ranges
 * @source HartleyZisserman2004, pinhole camera
 * @example cardDistance_mm({ focal_px: 3000, card_mm: 40, card_px: 150 }) // 800
 */
export function cardDistance_mm(card: {
  readonly focal_px: number;
  readonly card_mm: number;
  readonly card_px: number;
}): number {
  within("focal_px", card.focal_px, 100, 50_000);
  within("card_mm", card.card_mm, 5, 1000);
  within("card_px", card.card_px, 5, 20_000);
  return (card.focal_px * card.card_mm) / card.card_px;
}

/**
 * Focal length in pixels from the 35-mm equivalent that a photo carries, by two conventions that differ by 4 % on 4:3 sensors.
 *
 * By the diagonal f35/43.27 × diagonal; by the width f35/36 × width
 *
 * @param photo 35-mm equivalent [mm], 5 to 1000; its sides [px], 50 to 30000; the film's diagonal and width [mm]
 * @returns both [px]
 * @throws QuantityError outside those ranges
 * @source HartleyZisserman2004, pinhole camera; definition of the 35-mm equivalent
 * @example focalLengths({ equivalent_mm: 26, width_px: 4032, height_px: 3024 }).byWidth_px // 2912
 */
export function focalLengths(photo: {
  readonly equivalent_mm: number;
  readonly width_px: number;
  readonly height_px: number;
  readonly filmDiagonal_mm?: number;
  readonly filmWidth_mm?: number;
}): { readonly byDiagonal_px: number; readonly byWidth_px: number } {
  const { equivalent_mm, width_px, height_px, filmDiagonal_mm = 43.27, filmWidth_mm = 36 } = photo;
  within("equivalent_mm", equivalent_mm, 5, 1000);
  within("width_px", width_px, 50, 30_000);
  within("height_px", height_px, 50, 30_000);
  within("filmDiagonal_mm", filmDiagonal_mm, 40, 47);
  within("filmWidth_mm", filmWidth_mm, 33, 39);
  return {
    byDiagonal_px: (equivalent_mm / filmDiagonal_mm) * Math.hypot(width_px, height_px),
    byWidth_px: (equivalent_mm / filmWidth_mm) * width_px,
  };
}

/**
 * A place from the two photos of a plant turned by a quarter between them.
 *
 * a = u1/f, b = -u2/f; X = a D (1+b)/(1-ab), Y = b D (1+a)/(1-ab), Z1 = v1 (D+Y)/f, Z2 = v2 (D+X)/f; what is left between the two
 * heights tells a wrong match
 *
 * @param match the point in both photos [px], -20000 to 20000, and the camera: distance [mm], 50 to 20000, focal length [px], 100 to 50000
 * @returns place: right, away from the camera of the first photo, up [mm]; both heights and their difference [mm]
 * @throws QuantityError outside those ranges, or for rays that do not meet
 * @source HartleyZisserman2004, pinhole camera; closed form derived here
 * @example placeOfMatch({ right1_px: 236.8421, up1_px: 592.1053, right2_px: 139.5349, up2_px: 523.2558, distance_mm: 800, focal_px: 3000 }).right_mm // 60.00
 */
export function placeOfMatch(match: Match & Camera): {
  readonly right_mm: number;
  readonly away_mm: number;
  readonly up_mm: number;
  readonly up1_mm: number;
  readonly up2_mm: number;
  readonly residual_mm: number;
} {
  checkCamera(match);
  for (const name of ["right1_px", "up1_px", "right2_px", "up2_px"] as const) checkPixel(name, match[name]);
  const { distance_mm, focal_px } = match;
  const a = match.right1_px / focal_px;
  const b = -match.right2_px / focal_px;
  const meet = 1 - a * b;
  within("raysMeeting", meet, 0.05, 1000);
  const right_mm = (a * distance_mm * (1 + b)) / meet;
  const away_mm = (b * distance_mm * (1 + a)) / meet;
  const up1_mm = (match.up1_px * (distance_mm + away_mm)) / focal_px;
  const up2_mm = (match.up2_px * (distance_mm + right_mm)) / focal_px;
  return { right_mm, away_mm, up_mm: (up1_mm + up2_mm) / 2, up1_mm, up2_mm, residual_mm: up1_mm - up2_mm };
}

/**
 * Where a place appears in the two photos.
 *
 * u1 = f X/(D+Y), v1 = f Z/(D+Y); u2 = -f Y/(D+X), v2 = f Z/(D+X)
 *
 * @param place right, away, up [mm], -5000 to 5000, and the camera; the camera must stand beyond it
 * @returns the point in both photos [px]
 * @throws QuantityError outside those ranges
 * @source HartleyZisserman2004, pinhole camera
 * @example matchOfPlace({ right_mm: 60, away_mm: -40, up_mm: 150, distance_mm: 800, focal_px: 3000 }).up1_px // 592.1
 */
export function matchOfPlace(
  place: { readonly right_mm: number; readonly away_mm: number; readonly up_mm: number } & Camera,
): Match {
  checkCamera(place);
  const { right_mm, away_mm, up_mm, distance_mm, focal_px } = place;
  within("right_mm", right_mm, -5000, 5000);
  within("away_mm", away_mm, -5000, 5000);
  within("up_mm", up_mm, -5000, 5000);
  within("right_mm", right_mm, 1 - distance_mm, 5000);
  within("away_mm", away_mm, 1 - distance_mm, 5000);
  return {
    right1_px: (focal_px * right_mm) / (distance_mm + away_mm),
    up1_px: (focal_px * up_mm) / (distance_mm + away_mm),
    right2_px: (-focal_px * away_mm) / (distance_mm + right_mm),
    up2_px: (focal_px * up_mm) / (distance_mm + right_mm),
  };
}

/**
 * The line in the second photo on which a point of the first must lie: equal height, any depth.
 *
 * t in [-R, R]: X = a (D+t), u2 = -f t/(D+X), v2 = f c (D+t)/(D+X), c = v1/f
 *
 * @param click point in the first photo [px], -20000 to 20000; radius of the crown [mm], 1 to 3000; points on the line, 2 to 200; the camera
 * @returns points of the line: right and up [point][px]
 * @throws QuantityError outside those ranges
 * @source HartleyZisserman2004, pinhole camera; closed form derived here
 * @example matchingLine({ right1_px: 0, up1_px: 300, radius_mm: 100, points_n: 3, distance_mm: 800, focal_px: 3000 }).rights_px[0] // 375
 */
export function matchingLine(
  click: {
    readonly right1_px: number;
    readonly up1_px: number;
    readonly radius_mm: number;
    readonly points_n: number;
  } & Camera,
): { readonly rights_px: readonly number[]; readonly ups_px: readonly number[] } {
  checkCamera(click);
  checkPixel("right1_px", click.right1_px);
  checkPixel("up1_px", click.up1_px);
  within("radius_mm", click.radius_mm, 1, 3000);
  within("points_n", click.points_n, 2, 200);
  const { distance_mm, focal_px, radius_mm, points_n } = click;
  const a = click.right1_px / focal_px;
  const c = click.up1_px / focal_px;
  const rights_px: number[] = [];
  const ups_px: number[] = [];
  for (let point = 0; point < points_n; point += 1) {
    const away_mm = Math.max(1 - distance_mm, -radius_mm + (2 * radius_mm * point) / (points_n - 1));
    const reach_mm = Math.max(1, distance_mm + a * (distance_mm + away_mm));
    rights_px.push((-focal_px * away_mm) / reach_mm);
    ups_px.push((focal_px * c * (distance_mm + away_mm)) / reach_mm);
  }
  return { rights_px, ups_px };
}

/** Residual of heights for clicks that are off by 3 px at 800 mm and 3000 px, sd. Monte Carlo of the model sheet. */
const RESIDUAL_mm = 1.14;
const ITS_MM_PER_PX = 800 / 3000;

/**
 * What the difference of the two heights says of a match.
 *
 * Good within 3 sd of the clicks, 1.14 mm for 3 px at 800 mm and 3000 px, in proportion; wrong beyond 10 mm or thrice that sd,
 * whichever is larger
 *
 * @param match difference of heights [mm], -5000 to 5000; error of a click, sd [px], 0.1 to 50; the camera
 * @returns good, doubtful or wrong; the limit of good [mm]
 * @throws QuantityError outside those ranges
 * @source our assumption; size of the error computed for the model sheet
 * @example matchVerdict({ residual_mm: 14, click_px: 3, distance_mm: 800, focal_px: 3000 }).verdict // "wrong"
 */
export function matchVerdict(match: { readonly residual_mm: number; readonly click_px: number } & Camera): {
  readonly verdict: "good" | "doubtful" | "wrong";
  readonly limit_mm: number;
} {
  checkCamera(match);
  within("residual_mm", match.residual_mm, -5000, 5000);
  within("click_px", match.click_px, 0.1, 50);
  const perPixel = match.distance_mm / match.focal_px / ITS_MM_PER_PX;
  const limit_mm = 3 * RESIDUAL_mm * (match.click_px / 3) * perPixel;
  const off = Math.abs(match.residual_mm);
  const verdict = off <= limit_mm ? "good" : off > Math.max(10, limit_mm) ? "wrong" : "doubtful";
  return { verdict, limit_mm };
}

import { within } from "../errors/index.ts";

/** Inner shapes of pots whose area is quadratic in height: tapered, with straight walls. */
export const potForms = ["round", "rectangular", "oval"] as const;
export type PotForm = (typeof potForms)[number];

/**
 * A pot by its inner measures. A round one has its diameter as length and width. Corners of a rectangular one may be rounded.
 */
export type PotShape = {
  readonly form: PotForm;
  readonly bottomLength_cm: number;
  readonly bottomWidth_cm: number;
  readonly topLength_cm: number;
  readonly topWidth_cm: number;
  readonly innerHeight_cm: number;
  readonly cornerRadius_cm?: number;
};

/**
 * Inner area at a height above the floor, unchecked: for loops of our own.
 *
 * @source our assumption; a part of the functions beside it
 */
export function areaOf(shape: PotShape, height_cm: number): number {
  const up = height_cm / shape.innerHeight_cm;
  const length = shape.bottomLength_cm + (shape.topLength_cm - shape.bottomLength_cm) * up;
  const width = shape.bottomWidth_cm + (shape.topWidth_cm - shape.bottomWidth_cm) * up;
  if (shape.form !== "rectangular") return (Math.PI / 4) * length * width;
  return length * width - (4 - Math.PI) * (shape.cornerRadius_cm ?? 0) ** 2;
}

/**
 * Volume between two heights, unchecked; exact, since the area is quadratic in height.
 *
 * @source our assumption; a part of the functions beside it
 */
export function volumeBetween(shape: PotShape, from_cm: number, to_cm: number): number {
  const middle = areaOf(shape, (from_cm + to_cm) / 2);
  return ((to_cm - from_cm) / 6) * (areaOf(shape, from_cm) + 4 * middle + areaOf(shape, to_cm));
}

/**
 * Refuse a shape that no pot has.
 *
 * @source our assumption; a part of the functions beside it
 */
export function withinShape(shape: PotShape): void {
  within("bottomLength_cm", shape.bottomLength_cm, 1, 200);
  within("bottomWidth_cm", shape.bottomWidth_cm, 1, 200);
  within("topLength_cm", shape.topLength_cm, 1, 200);
  within("topWidth_cm", shape.topWidth_cm, 1, 200);
  within("innerHeight_cm", shape.innerHeight_cm, 1, 100);
  const corner = shape.cornerRadius_cm ?? 0;
  within("cornerRadius_cm", corner, 0, 100);
  const sides = [shape.bottomLength_cm, shape.bottomWidth_cm, shape.topLength_cm, shape.topWidth_cm];
  within("cornerRadius_cm", corner, 0, Math.min(100, Math.min(...sides) / 2));
}

/**
 * Inner area of a pot at a height above its floor.
 *
 * Round and oval: π/4 a b; rectangular: a b − (4 − π) r²; a and b run straight from bottom to top.
 *
 * @param pot inner shape [cm]; height above the floor [cm], 0 to 100, not above the rim
 * @returns area [cm²]
 * @throws QuantityError outside those ranges
 * @source our assumption; elementary geometry
 * @example potArea_cm2({ form: "round", bottomLength_cm: 7, bottomWidth_cm: 7, topLength_cm: 10, topWidth_cm: 10, innerHeight_cm: 9, height_cm: 9 }) // 78.54
 */
export function potArea_cm2(pot: PotShape & { readonly height_cm: number }): number {
  withinShape(pot);
  within("height_cm", pot.height_cm, 0, 100);
  within("height_cm", pot.height_cm, 0, pot.innerHeight_cm);
  return areaOf(pot, pot.height_cm);
}

/**
 * Volume of a pot up to a height, by the prismoidal rule.
 *
 * V = h/6 [A(0) + 4 A(h/2) + A(h)], exact for walls that run straight
 *
 * @param pot inner shape [cm]; height of fill [cm], 0 to 100, not above the rim
 * @returns volume [mL]; rises with the fill
 * @throws QuantityError outside those ranges
 * @source our assumption; elementary geometry
 * @see checks/medium-repot.json 044, 045
 * @example potVolume_mL({ form: "round", bottomLength_cm: 7, bottomWidth_cm: 7, topLength_cm: 9.8, topWidth_cm: 9.8, innerHeight_cm: 9.5, fill_cm: 8.5 }) // 458.2
 */
export function potVolume_mL(pot: PotShape & { readonly fill_cm: number }): number {
  withinShape(pot);
  within("fill_cm", pot.fill_cm, 0, 100);
  within("fill_cm", pot.fill_cm, 0, pot.innerHeight_cm);
  return volumeBetween(pot, 0, pot.fill_cm);
}

/**
 * Room for water above the medium, and into how many pours a dose must be parted to fit it.
 *
 * Room = ∫ A dz from the medium to the rim; pours = dose / room, rounded up
 *
 * @param pot inner shape [cm]; freeboard [cm], 0.1 to 20, below the inner height; dose [mL], 0 to 20000
 * @returns room [mL] and pours
 * @throws QuantityError outside those ranges
 * @source our assumption; elementary geometry
 * @see checks/medium-repot.json 110
 * @example freeboardRoom({ form: "rectangular", bottomLength_cm: 12, bottomWidth_cm: 8, topLength_cm: 14, topWidth_cm: 10, innerHeight_cm: 5, freeboard_cm: 0.8, dose_mL: 170 }).pours_n // 2
 */
export function freeboardRoom(pot: PotShape & { readonly freeboard_cm: number; readonly dose_mL: number }): {
  readonly room_mL: number;
  readonly pours_n: number;
} {
  withinShape(pot);
  within("freeboard_cm", pot.freeboard_cm, 0.1, 20);
  within("freeboard_cm", pot.freeboard_cm, 0.1, Math.min(20, pot.innerHeight_cm));
  within("dose_mL", pot.dose_mL, 0, 20_000);
  const room_mL = volumeBetween(pot, pot.innerHeight_cm - pot.freeboard_cm, pot.innerHeight_cm);
  return { room_mL, pours_n: Math.ceil(pot.dose_mL / room_mL) };
}

/**
 * Usual empty height between medium and rim.
 *
 * 12 % of the inner height, at least 0.6 cm
 *
 * @param innerHeight_cm inner height [cm], 1 to 100
 * @returns freeboard [cm]
 * @throws QuantityError outside that range
 * @source common practice, no source
 * @example usualFreeboard_cm(10) // 1.2
 */
export function usualFreeboard_cm(innerHeight_cm: number): number {
  within("innerHeight_cm", innerHeight_cm, 1, 100);
  return Math.max(0.6, 0.12 * innerHeight_cm);
}

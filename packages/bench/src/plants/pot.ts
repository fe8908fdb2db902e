import * as v from "valibot";
import { choice, quantity } from "../book/fields.ts";

const depth_cm = quantity("pot depth", "cm", 2, 60);
const freeboard_cm = v.optional(quantity("freeboard", "cm", 0, 10));

/** A container by its inside measures; freeboard is the empty height between rim and medium. */
export const potSchema = v.variant("form", [
  v.strictObject({
    form: v.literal("round"),
    top_cm: quantity("width at the top", "cm", 2, 100),
    base_cm: v.optional(quantity("width at the base", "cm", 1, 100)),
    depth_cm,
    freeboard_cm,
  }),
  v.strictObject({
    form: v.literal("rectangular"),
    length_cm: quantity("length", "cm", 2, 200),
    width_cm: quantity("width", "cm", 2, 200),
    depth_cm,
    freeboard_cm,
  }),
  v.strictObject({
    form: v.literal("oval"),
    length_cm: quantity("length", "cm", 2, 200),
    width_cm: quantity("width", "cm", 2, 200),
    depth_cm,
    freeboard_cm,
  }),
]);

export type Pot = v.InferOutput<typeof potSchema>;

/** What fills the pot, in three words and "not sure"; potting refines this to a recipe. */
export const mediumSchema = choice("medium", ["spongy", "bark", "gritty", "unknown"]);
export type Medium = v.InferOutput<typeof mediumSchema>;

const SQUARE_CM_PER_M2 = 10_000;
/** Most pots taper: a base of three quarters of the top is usual. @source common practice, no source */
const USUAL_TAPER_frac = 0.75;
/** Medium ends about a tenth of the depth below the rim. @source common practice, no source */
const USUAL_FREEBOARD_frac = 0.1;

/** Area of the opening, m². */
export function rimArea_m2(pot: Pot): number {
  if (pot.form === "round") return (Math.PI / 4) * (pot.top_cm ** 2 / SQUARE_CM_PER_M2);
  const box_m2 = (pot.length_cm * pot.width_cm) / SQUARE_CM_PER_M2;
  return pot.form === "oval" ? (Math.PI / 4) * box_m2 : box_m2;
}

/** Diameter of a round opening of the same area, cm. */
export function rimDiameter_cm(pot: Pot): number {
  return Math.sqrt((rimArea_m2(pot) * SQUARE_CM_PER_M2 * 4) / Math.PI);
}

/** Height of the medium, cm. */
export function mediumDepth_cm(pot: Pot): number {
  return Math.max(1, pot.depth_cm - (pot.freeboard_cm ?? pot.depth_cm * USUAL_FREEBOARD_frac));
}

/**
 * Volume of medium, mL: a frustum for round pots (base measured, else three quarters of the top, cut at the freeboard),
 * a prism for rectangular and oval ones.
 */
export function mediumVolume_mL(pot: Pot): number {
  const height_cm = mediumDepth_cm(pot);
  if (pot.form !== "round") return rimArea_m2(pot) * SQUARE_CM_PER_M2 * height_cm;
  const base_cm = pot.base_cm ?? pot.top_cm * USUAL_TAPER_frac;
  const surface_cm = base_cm + (pot.top_cm - base_cm) * (height_cm / pot.depth_cm);
  return ((Math.PI * height_cm) / 12) * (surface_cm ** 2 + surface_cm * base_cm + base_cm ** 2);
}

/** The pot taken when none is written: 12 cm across and 9 deep, a common small training pot. @source our assumption */
export const USUAL_POT: Pot = { form: "round", top_cm: 12, depth_cm: 9 };

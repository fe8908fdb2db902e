import * as v from "valibot";
import { choice, count, id, quantity } from "../../book/fields.ts";

/** A node of the structure: where it is from the base of the trunk, and what hangs on it. */
export const nodeSchema = v.strictObject({
  id: id("node"),
  below: v.optional(id("node below")),
  right_mm: quantity("distance right of the base, from the front", "mm", -3000, 3000),
  away_mm: quantity("distance behind the base, from the front", "mm", -3000, 3000),
  up_mm: quantity("height above the rim", "mm", -500, 3000),
  caliper_mm: v.optional(quantity("thickness of the stem below it", "mm", 0.2, 300)),
  wood: v.optional(choice("age of the stem", ["green", "semi", "woody"])),
  leaves_n: v.optional(count("leaves at the node", 0, 50)),
  leafLength_mm: v.optional(quantity("leaf length without stalk", "mm", 2, 400)),
  leafWidth_mm: v.optional(quantity("greatest leaf width", "mm", 1, 250)),
  leafTowards_deg: v.optional(quantity("direction of the leaf, from right to behind", "°", -360, 720)),
  flowers_n: v.optional(count("open flowers at the node", 0, 500)),
  fruit_n: v.optional(count("fruits at the node", 0, 500)),
  blind: v.optional(v.boolean("blind is not yes or no")),
});
export type TraceNode = v.InferOutput<typeof nodeSchema>;

/** One of the two photos, and where the base of the trunk at the rim stands in it. */
export const photoSchema = v.strictObject({
  photo: id("photo"),
  width_px: quantity("width of the photo", "px", 16, 30_000),
  height_px: quantity("height of the photo", "px", 16, 30_000),
  baseX_px: quantity("base of the trunk from the left", "px", -30_000, 60_000),
  baseY_px: quantity("base of the trunk from the top", "px", -30_000, 60_000),
});
export type TracePhoto = v.InferOutput<typeof photoSchema>;

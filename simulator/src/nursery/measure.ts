import type { Chance } from "./chance.ts";
import type { MeasuredFacts } from "./notes.ts";
import type { PotShape } from "./pot-shape.ts";
import type { Pot } from "./potted-plant.ts";

/** An ovate leaf fills about two thirds of the rectangle around it. @source our assumption */
const LEAF_FORM_frac = 0.66;

/** Leaves as somebody counts and measures them: a count that misses some, a leaf that is not quite the usual one. */
export function countLeaves(pot: Pot, chance: Chance): MeasuredFacts {
  const width_cm = pot.plant.leaf.width_m * 100;
  const length_cm = width_cm * 2;
  const leaves_n = (pot.leafArea_m2 * 10_000) / (LEAF_FORM_frac * width_cm * length_cm);
  return {
    leaves_n: Math.max(4, Math.round(leaves_n * chance.logNormal(0.97, 0.1))),
    leafLength_cm: Math.max(0.5, Math.round(length_cm * chance.logNormal(1, 0.08) * 2) / 2),
    leafWidth_cm: Math.max(0.5, Math.round(width_cm * chance.logNormal(1, 0.08) * 2) / 2),
  };
}

/** Height and thickness of a small trained tree. */
export function measureTree(chance: Chance): MeasuredFacts {
  return { height_cm: chance.whole(12, 34), caliper_mm: chance.whole(5, 15) };
}

/** A pot as somebody measures it with a ruler across the rim, to half a centimetre and not always inside the wall. */
export function measurePot(shape: PotShape, chance: Chance): PotShape {
  const read_cm = (true_cm: number) =>
    Math.max(2, Math.round(true_cm * chance.logNormal(1.01, 0.05) * 2) / 2);
  if (shape.form === "round")
    return { form: "round", top_cm: read_cm(shape.top_cm), depth_cm: read_cm(shape.depth_cm) };
  const { form, length_cm, width_cm, depth_cm } = shape;
  return { form, length_cm: read_cm(length_cm), width_cm: read_cm(width_cm), depth_cm: read_cm(depth_cm) };
}

import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";

/**
 * Share of leaf that a cut takes, by area and by the light that the leaves have.
 *
 * f = Σ removed A I / Σ A I
 *
 * @param cut areas of the leaves [leaf][cm²], 0 to 1000; their light over the light above the crown [leaf], 0 to 1; 1 for each leaf that goes, else 0 [leaf]
 * @returns share by lit area, share by area
 * @throws QuantityError outside those ranges, for lists of other length, or where no leaf has area
 * @source our assumption
 * @example removedShare({ areas_cm2: [10, 10], lights_frac: [1, 0.5], goes_n: [0, 1] }).lit_frac // 0.333
 */
export function removedShare(cut: {
  readonly areas_cm2: readonly number[];
  readonly lights_frac: readonly number[];
  readonly goes_n: readonly number[];
}): { readonly lit_frac: number; readonly area_frac: number } {
  const { areas_cm2, lights_frac, goes_n } = cut;
  const leaves_n = areas_cm2.length;
  within("leaves_n", leaves_n, 1, 20_000);
  within("lights_n", lights_frac.length, leaves_n, leaves_n);
  within("marks_n", goes_n.length, leaves_n, leaves_n);
  let all = 0;
  let lit = 0;
  let goneAll = 0;
  let goneLit = 0;
  for (let leaf = 0; leaf < leaves_n; leaf += 1) {
    const area = areas_cm2[leaf] as number;
    const light = lights_frac[leaf] as number;
    const goes = goes_n[leaf] as number;
    within("areas_cm2", area, 0, 1000);
    within("lights_frac", light, 0, 1);
    within("goes_n", goes, 0, 1);
    all += area;
    lit += area * light;
    goneAll += goes * area;
    goneLit += goes * area * light;
  }
  within("leafArea_cm2", all, 1e-9, 2e7);
  return { lit_frac: lit > 0 ? goneLit / lit : goneAll / all, area_frac: goneAll / all };
}

/**
 * Days until as much leaf has grown again as was taken.
 *
 * t = ln(1/(1-f)) / R
 *
 * @param taken share of leaf taken, 0 to 0.99; relative growth of leaf [d⁻¹], 0.005 to 0.1
 * @returns days
 * @throws QuantityError outside those ranges
 * @source our assumption; exponential growth
 * @example regrowthTime_d({ removed_frac: 0.25, leafRegrowth_per_d: 0.03 }) // 9.6
 */
export function regrowthTime_d(taken: { readonly removed_frac: number } & ShapeSettings): number {
  within("removed_frac", taken.removed_frac, 0, 0.99);
  return Math.log(1 / (1 - taken.removed_frac)) / valuesOf(shapeAssumptions, taken).leafRegrowth_per_d;
}

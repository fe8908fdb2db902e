import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";

type Leaf = { readonly length_cm: number; readonly width_cm: number };

/** Slope and intercept of the second form. Salau2008. */
const line = { slope: 0.64, intercept_cm2: -0.62 } as const;
/** Share by which the area of all leaves errs when many are measured. Salau2008: 4 to 5 %. */
const methodError_frac = 0.05;
const cm2_per_m2 = 10_000;

/** Product of length and width, within what a pepper leaf can be. */
function rectangle_cm2({ length_cm, width_cm }: Leaf, least_cm2: number): number {
  within("length_cm", length_cm, 0.1, 40);
  within("width_cm", width_cm, 0.05, 25);
  within("width_cm", width_cm, 0.05, 1.2 * length_cm);
  within("rectangle_cm2", length_cm * width_cm, least_cm2, 250);
  return length_cm * width_cm;
}

/**
 * Area of a leaf from its length and width: the line through the origin.
 *
 * LA = 0.63 L B; a single leaf errs by 15 %, the sum over many by 4 to 5 %. Length without the stalk.
 *
 * @param leaf length [cm], 0.1 to 40, and greatest width [cm], 0.05 to 25 and at most 1.2 lengths, their product at most 250 cm²; leaf shape, 0.55 to 0.72, 0.63 unless set for a cultivar
 * @returns area of one side [cm²]
 * @throws QuantityError outside those ranges
 * @source Salau2008
 * @see checks/growth-fruit.json 069-071
 * @example leafArea_cm2({ length_cm: 8, width_cm: 4 }) // 20.16
 */
export function leafArea_cm2(leaf: Leaf & Pick<GrowthSettings, "leafShape">): number {
  return valuesOf(growthAssumptions, leaf).leafShape * rectangle_cm2(leaf, 0);
}

/**
 * Area of a leaf from its length and width: the line with an intercept. Not for leaves under 3 cm².
 *
 * LA = −0.62 + 0.64 L B
 *
 * @param leaf length [cm], 0.1 to 40, and greatest width [cm], 0.05 to 25 and at most 1.2 lengths, their product 1 to 250 cm²
 * @returns area of one side [cm²]
 * @throws QuantityError outside those ranges: a smaller leaf would come out near nothing
 * @source Salau2008
 * @see checks/growth-fruit.json 069-071
 * @example leafAreaWithIntercept_cm2({ length_cm: 8, width_cm: 4 }) // 19.86
 */
export function leafAreaWithIntercept_cm2(leaf: Leaf): number {
  return line.intercept_cm2 + line.slope * rectangle_cm2(leaf, 1);
}

/**
 * Area of leaves from their dry mass.
 *
 * LA = a + SLA m; in the field in the tropics SLA 151.62 with a = 0 (r² 0.65), or 97.27 with a = 8.55 cm² (r² 0.87)
 *
 * @param leaf dry mass [g], 0 to 1000; specific leaf area [cm² g⁻¹], 30 to 1000, 151.62 unless given; intercept [cm²], -50 to 50, 0 unless given
 * @returns area of one side [cm²]
 * @throws QuantityError outside those ranges
 * @source Salau2008
 * @see checks/growth-fruit.json 072
 * @example leafAreaFromDryMass_cm2({ leafDryMass_g: 0.2 }) // 30.32
 */
export function leafAreaFromDryMass_cm2(leaf: {
  readonly leafDryMass_g: number;
  readonly specificLeafArea_cm2_g?: number;
  readonly intercept_cm2?: number;
}): number {
  const { leafDryMass_g, specificLeafArea_cm2_g = 151.62, intercept_cm2 = 0 } = leaf;
  within("leafDryMass_g", leafDryMass_g, 0, 1000);
  within("specificLeafArea_cm2_g", specificLeafArea_cm2_g, 30, 1000);
  within("intercept_cm2", intercept_cm2, -50, 50);
  return Math.max(0, intercept_cm2 + specificLeafArea_cm2_g * leafDryMass_g);
}

/**
 * Leaf dry mass per area, the inverse of specific leaf area.
 *
 * LMA = 10000 / SLA. Tropical field 66 g m⁻², bell pepper model 33 to 40; under lamps 25 to 45.
 *
 * @param specificLeafArea_cm2_g specific leaf area [cm² g⁻¹], 30 to 1000
 * @returns dry mass per area [g m⁻²]
 * @throws QuantityError outside that range
 * @source DSSAT48 and Salau2008 for the values; the definition
 * @see checks/growth-fruit.json 073-076
 * @example leafMassPerArea_g_m2(250) // 40
 */
export function leafMassPerArea_g_m2(specificLeafArea_cm2_g: number): number {
  within("specificLeafArea_cm2_g", specificLeafArea_cm2_g, 30, 1000);
  return cm2_per_m2 / specificLeafArea_cm2_g;
}

/**
 * Leaf area of a plant from the number of its leaves and a few that were measured.
 *
 * area = leaves × mean of the measured; error from their scatter (from the usual scatter when fewer than four were
 * measured), less the more of the leaves were measured, and 5 % for the method. Eight to twelve leaves, picked blindly, do.
 *
 * @param plant leaves, 1 to 20000; lengths [leaf][cm], 0.1 to 40, and widths [leaf][cm], 0.05 to 25, as many of each, at least one and no more than leaves; leaf shape and scatter, unless set as assumed
 * @returns leaf area and its standard deviation [m²]
 * @throws QuantityError outside those ranges
 * @source Salau2008; scatter our assumption
 * @example plantLeafArea({ leaves_n: 100, length_cm: [6, 7], width_cm: [3, 3.5] }).leafArea_m2 // 0.1339
 */
export function plantLeafArea(
  plant: {
    readonly leaves_n: number;
    readonly length_cm: readonly number[];
    readonly width_cm: readonly number[];
  } & Pick<GrowthSettings, "leafShape" | "leafSpread_frac">,
): { readonly leafArea_m2: number; readonly sd_m2: number } {
  const { leaves_n, length_cm, width_cm } = plant;
  const set = valuesOf(growthAssumptions, plant);
  within("leaves_n", leaves_n, 1, 20_000);
  within("measuredLeaves_n", length_cm.length, 1, leaves_n);
  within("measuredWidths_n", width_cm.length, length_cm.length, length_cm.length);
  const areas = length_cm.map((each, leaf) =>
    leafArea_cm2({ length_cm: each, width_cm: width_cm[leaf] as number, leafShape: set.leafShape }),
  );
  const measured = areas.length;
  const mean = areas.reduce((sum, each) => sum + each, 0) / measured;
  const squares = areas.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const scatter = measured < 4 ? set.leafSpread_frac * mean : Math.sqrt(squares / (measured - 1));
  const unseen = 1 - measured / leaves_n;
  const sd = Math.hypot(scatter * Math.sqrt(unseen / measured), methodError_frac * mean);
  return { leafArea_m2: (leaves_n * mean) / cm2_per_m2, sd_m2: (leaves_n * sd) / cm2_per_m2 };
}

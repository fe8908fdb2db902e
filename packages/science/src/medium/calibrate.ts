import { within } from "../errors/index.ts";
import { drainedPot } from "./drained.ts";
import type { RetentionCurve } from "./retention.ts";
import { type PotShape, withinShape } from "./shape.ts";

/** A pot in which the air of a medium was measured. A porosity without its height can't be carried to another depth. */
export type MeasuredAir = PotShape & { readonly fill_cm: number; readonly air_frac: number };

const [ALPHA_MIN, ALPHA_MAX] = [0.01, 30];

function airAt(pot: PotShape & { readonly fill_cm: number }, curve: RetentionCurve): number {
  return drainedPot({ ...pot, ...curve }).air_frac;
}

/**
 * The α of a medium's curve from the air measured in one pot.
 *
 * The α at which the drained pot of that shape holds that much air; found by halving on log α, since air rises with α.
 *
 * @param measured inner shape; fill [cm]; air in it, 0.001 to 0.9; saturated and residual water; steepness n
 * @returns α [cm⁻¹], 0.01 to 30
 * @throws QuantityError outside those ranges, and where no α of a medium gives that much air in that pot
 * @source VanGenuchten1980, fitted as of MilksFontenoLarson1989
 * @see checks/medium-repot.json 031
 * @example alphaFromAir_per_cm({ form: "round", bottomLength_cm: 7, bottomWidth_cm: 7, topLength_cm: 9.8, topWidth_cm: 9.8, innerHeight_cm: 9.5, fill_cm: 8.5, air_frac: 0.11, residualWater_frac: 0.15, saturatedWater_frac: 0.8, steepness: 1.5 }) // 0.182
 */
export function alphaFromAir_per_cm(
  measured: PotShape & {
    readonly fill_cm: number;
    readonly air_frac: number;
    readonly residualWater_frac: number;
    readonly saturatedWater_frac: number;
    readonly steepness: number;
  },
): number {
  within("air_frac", measured.air_frac, 0.001, 0.9);
  const curve = (alpha_per_cm: number): RetentionCurve => ({ ...measured, alpha_per_cm });
  const least = airAt(measured, curve(ALPHA_MIN));
  const most = airAt(measured, curve(ALPHA_MAX));
  within("air_frac", measured.air_frac, Math.max(0.001, least), Math.min(0.9, most));
  let [low, high] = [Math.log(ALPHA_MIN), Math.log(ALPHA_MAX)];
  for (let i = 0; i < 48; i += 1) {
    const middle = (low + high) / 2;
    if (airAt(measured, curve(Math.exp(middle))) < measured.air_frac) low = middle;
    else high = middle;
  }
  return Math.exp((low + high) / 2);
}

/**
 * The whole curve of a medium from its air in two fills of different depth.
 *
 * For each n the α that meets the deeper fill; of these the n whose shallower fill comes nearest, by a search from 1.1 to 4.
 *
 * @param measured two pots with fill and air, of different depth; saturated and residual water
 * @returns the curve, and by how much the shallower fill is missed
 * @throws QuantityError outside the ranges of a curve, or when the two fills are not at least 1 cm apart
 * @source VanGenuchten1980, fitted as of MilksFontenoLarson1989
 */
export function curveFromTwoFills(measured: {
  readonly deeper: MeasuredAir;
  readonly shallower: MeasuredAir;
  readonly saturatedWater_frac: number;
  readonly residualWater_frac: number;
}): RetentionCurve & { readonly missed_frac: number } {
  const { deeper, shallower, saturatedWater_frac, residualWater_frac } = measured;
  withinShape(deeper);
  withinShape(shallower);
  within("fill_cm", deeper.fill_cm, shallower.fill_cm + 1, 100);
  const miss = (steepness: number) => {
    const alpha_per_cm = alphaFromAir_per_cm({
      ...deeper,
      saturatedWater_frac,
      residualWater_frac,
      steepness,
    });
    const curve = { residualWater_frac, saturatedWater_frac, alpha_per_cm, steepness };
    return { ...curve, missed_frac: airAt(shallower, curve) - shallower.air_frac };
  };
  let best = miss(1.1);
  for (let step = 0; step <= 29; step += 1) {
    const next = miss(1.1 + step / 10);
    if (Math.abs(next.missed_frac) < Math.abs(best.missed_frac)) best = next;
  }
  return best;
}

/**
 * What a porosity test at home says of a medium: two weighings, a third after drying.
 *
 * air = (saturated − drained) / V; water = (drained − dry) / V; porosity = air + water; density = dry / V. Contents only.
 *
 * @param test volume to the soil line [mL], 10 to 100000; contents saturated, drained and, if it was dried, dry [g], 1 to 200000, in falling order
 * @returns air, and where it was dried water, porosity and dry density
 * @throws QuantityError outside those ranges or order
 * @source PurdueExtension for the fill and drain procedure
 * @example porosityTest({ medium_mL: 500, saturated_g: 520, drained_g: 460, dry_g: 60 }).porosity_frac // 0.92
 */
export function porosityTest(test: {
  readonly medium_mL: number;
  readonly saturated_g: number;
  readonly drained_g: number;
  readonly dry_g?: number;
}): {
  readonly air_frac: number;
  readonly water_frac?: number;
  readonly porosity_frac?: number;
  readonly bulkDensity_g_mL?: number;
} {
  const { medium_mL, saturated_g, drained_g, dry_g } = test;
  within("medium_mL", medium_mL, 10, 100_000);
  within("saturated_g", saturated_g, 1, 200_000);
  within("drained_g", drained_g, 1, 200_000);
  within("drained_g", drained_g, 1, saturated_g);
  const air_frac = (saturated_g - drained_g) / medium_mL;
  within("saturated_g", saturated_g, 1, Math.min(200_000, drained_g + 0.9 * medium_mL));
  if (dry_g === undefined) return { air_frac };
  within("dry_g", dry_g, 1, 200_000);
  within("dry_g", dry_g, 1, drained_g);
  const water_frac = (drained_g - dry_g) / medium_mL;
  within("drained_g", drained_g, 1, Math.min(200_000, dry_g + 0.985 * medium_mL));
  return { air_frac, water_frac, porosity_frac: air_frac + water_frac, bulkDensity_g_mL: dry_g / medium_mL };
}

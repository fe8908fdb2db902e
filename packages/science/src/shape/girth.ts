import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type ShapeSettings, shapeAssumptions } from "./assumptions.ts";

/**
 * Shares of the leaves that branches carry, from their thickness at the base.
 *
 * share_i = d_i^D / Σ d_j^D, D = 2
 *
 * @param branches thickness at the base [branch][mm], 0.2 to 200; exponent, 1.2 to 3.5
 * @returns shares, their sum 1
 * @throws QuantityError outside those ranges, or without a branch
 * @source Grabosky2007; relation of young oaks
 * @example leafShares_frac({ calipers_mm: [5, 4, 3, 3] })[0] // 0.4237
 */
export function leafShares_frac(
  branches: { readonly calipers_mm: readonly number[] } & ShapeSettings,
): readonly number[] {
  within("branches_n", branches.calipers_mm.length, 1, 1000);
  const { pipeExponent } = valuesOf(shapeAssumptions, branches);
  const parts = branches.calipers_mm.map((caliper_mm) => {
    within("calipers_mm", caliper_mm, 0.2, 200);
    return caliper_mm ** pipeExponent;
  });
  const sum = parts.reduce((total, part) => total + part, 0);
  return parts.map((part) => part / sum);
}

/**
 * Thickness below a fork from the thickness of its arms.
 *
 * d^D = Σ d_i^D
 *
 * @param fork thickness of the arms [arm][mm], 0.2 to 200; exponent, 1.2 to 3.5
 * @returns thickness [mm]
 * @throws QuantityError outside those ranges, or without an arm
 * @source Eloy2011; in other trees it held only at some forks
 * @example forkCaliper_mm({ arms_mm: [3, 4] }) // 5
 */
export function forkCaliper_mm(fork: { readonly arms_mm: readonly number[] } & ShapeSettings): number {
  within("arms_n", fork.arms_mm.length, 1, 20);
  const { pipeExponent } = valuesOf(shapeAssumptions, fork);
  const sum = fork.arms_mm.reduce((total, arm) => {
    within("arms_mm", arm, 0.2, 200);
    return total + arm ** pipeExponent;
  }, 0);
  return sum ** (1 / pipeExponent);
}

/** Between which exponents a measured fork is believable. @source our assumption */
const EXPONENTS = { least: 1.5, most: 3 } as const;
const SEARCHED = { least: 0.2, most: 20 } as const;

/**
 * Exponent that a measured fork implies; odd ones point to a slip of the calipers.
 *
 * The D that solves d^D = Σ d_i^D, by halving
 *
 * @param fork thickness below [mm], 0.2 to 200; of the arms [arm][mm], 0.2 to 200, each thinner, two at least
 * @returns exponent, 0.2 to 20; whether it lies outside 1.5 to 3
 * @throws QuantityError outside those ranges
 * @source Eloy2011
 * @example forkExponent({ below_mm: 8, arms_mm: [6, 5] }).exponent // 1.868
 */
export function forkExponent(fork: { readonly below_mm: number; readonly arms_mm: readonly number[] }): {
  readonly exponent: number;
  readonly odd: boolean;
} {
  within("below_mm", fork.below_mm, 0.2, 200);
  within("arms_n", fork.arms_mm.length, 2, 20);
  for (const arm of fork.arms_mm) {
    within("arms_mm", arm, 0.2, 200);
    within("arms_mm", arm, 0.2, fork.below_mm * 0.9999);
  }
  const excess = (exponent: number) =>
    fork.arms_mm.reduce((sum, arm) => sum + (arm / fork.below_mm) ** exponent, 0) - 1;
  let low: number = SEARCHED.least;
  let high: number = SEARCHED.most;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) low = middle;
    else high = middle;
  }
  const exponent = (low + high) / 2;
  return { exponent, odd: exponent < EXPONENTS.least || exponent > EXPONENTS.most };
}

/**
 * Height that a trunk of this thickness asks for, low and high.
 *
 * 6 to 10 times the thickness
 *
 * @param caliper_mm thickness of the trunk [mm], 0.5 to 300
 * @returns heights [mm]
 * @throws QuantityError outside that range
 * @source common practice, no source
 * @example trainedHeight(10).low_mm // 60
 */
export function trainedHeight(caliper_mm: number): { readonly low_mm: number; readonly high_mm: number } {
  within("caliper_mm", caliper_mm, 0.5, 300);
  const { heightPerCaliperLow, heightPerCaliperHigh } = valuesOf(shapeAssumptions);
  return { low_mm: caliper_mm * heightPerCaliperLow, high_mm: caliper_mm * heightPerCaliperHigh };
}

/** Square of what the first zero of the Bessel function of order -1/3 gives, over 9/4: 7.837 / (9/4). Greenhill1881. */
const BESSEL = 3.483265528;

/**
 * Height at which a plain column falls over under its own weight.
 *
 * q L³/(E I) = 9/4 × 3.4833 = 7.837; H = (7.837/16)^(1/3) (E/(ρ g))^(1/3) d^(2/3)
 *
 * @param column stiffness [Pa], 1e5 to 1e12; density [kg m⁻³], 50 to 5000; diameter [m], 0.0001 to 5; gravity [m s⁻²], 1 to 30
 * @returns height [m], its coefficient and the load number
 * @throws QuantityError outside those ranges
 * @source Greenhill1881; relation from memory
 * @example columnHeight({ stiffness_Pa: 1e9, density_kg_m3: 1000, diameter_m: 0.01, gravity_m_s2: 9.81 }).height_m // 1.71
 */
export function columnHeight(column: {
  readonly stiffness_Pa: number;
  readonly density_kg_m3: number;
  readonly diameter_m: number;
  readonly gravity_m_s2?: number;
  readonly bessel?: number;
}): { readonly height_m: number; readonly coefficient: number; readonly loadNumber: number } {
  const { stiffness_Pa, density_kg_m3, diameter_m, gravity_m_s2 = 9.81, bessel = BESSEL } = column;
  within("stiffness_Pa", stiffness_Pa, 1e5, 1e12);
  within("density_kg_m3", density_kg_m3, 50, 5000);
  within("diameter_m", diameter_m, 0.0001, 5);
  within("gravity_m_s2", gravity_m_s2, 1, 30);
  within("bessel", bessel, 1, 10);
  const loadNumber = (9 / 4) * bessel;
  const coefficient = Math.cbrt(loadNumber / 16);
  const height_m =
    coefficient * Math.cbrt(stiffness_Pa / (density_kg_m3 * gravity_m_s2)) * Math.cbrt(diameter_m ** 2);
  return { height_m, coefficient, loadNumber };
}

import { within } from "../errors/index.ts";

/** How a medium holds water against suction: the curve of van Genuchten with m = 1 − 1/n. */
export type RetentionCurve = {
  readonly residualWater_frac: number;
  readonly saturatedWater_frac: number;
  readonly alpha_per_cm: number;
  /** n of the curve: how suddenly the pores empty. */
  readonly steepness: number;
};

/**
 * Water at a suction, unchecked: for loops of our own.
 *
 * @source our assumption; a part of the functions beside it
 */
export function waterOf(curve: RetentionCurve, suction_cm: number): number {
  const { residualWater_frac, saturatedWater_frac, alpha_per_cm, steepness } = curve;
  if (suction_cm <= 0) return saturatedWater_frac;
  const held = (1 + (alpha_per_cm * suction_cm) ** steepness) ** (1 / steepness - 1);
  return residualWater_frac + (saturatedWater_frac - residualWater_frac) * held;
}

/**
 * Refuse a curve that no medium has.
 *
 * @source our assumption; a part of the functions beside it
 */
export function withinCurve(curve: RetentionCurve): void {
  within("residualWater_frac", curve.residualWater_frac, 0, 0.6);
  within("saturatedWater_frac", curve.saturatedWater_frac, 0.25, 1);
  within("residualWater_frac", curve.residualWater_frac, 0, Math.min(0.6, curve.saturatedWater_frac));
  within("alpha_per_cm", curve.alpha_per_cm, 0.01, 30);
  within("steepness", curve.steepness, 1.05, 10);
}

/**
 * Share of a medium's volume that is water at a suction.
 *
 * θ = θr + (θs − θr) [1 + (α h)^n]^(1/n − 1); θs at and below 0
 *
 * @param at curve: residual water, 0 to 0.6, saturated water, 0.25 to 1, α [cm⁻¹], 0.01 to 30, steepness n, 1.05 to 10; suction [cm], 0 to 20000
 * @returns share of the volume; falls with suction
 * @throws QuantityError outside those ranges
 * @source VanGenuchten1980
 * @see checks/medium-repot.json 022 to 024
 * @example waterAtSuction_frac({ residualWater_frac: 0.045, saturatedWater_frac: 0.43, alpha_per_cm: 0.145, steepness: 2.68, suction_cm: 10 }) // 0.2143
 */
export function waterAtSuction_frac(at: RetentionCurve & { readonly suction_cm: number }): number {
  withinCurve(at);
  within("suction_cm", at.suction_cm, 0, 20_000);
  return waterOf(at, at.suction_cm);
}

/**
 * Height above the drain hole below which a drained medium holds less air than a limit: the wet layer.
 *
 * z = (1/α) [S^(−1/m) − 1]^(1/n), S = (θs − θr − x) / (θs − θr)
 *
 * @param of curve; least air wanted, 0.001 to 0.9, less than saturated less residual water
 * @returns height [cm]; a medium lower than this is nowhere better than the limit
 * @throws QuantityError outside those ranges
 * @source VanGenuchten1980, solved for height
 * @see checks/medium-repot.json 041
 * @example wetLayer_cm({ residualWater_frac: 0.15, saturatedWater_frac: 0.8, alpha_per_cm: 0.182, steepness: 1.5, airWanted_frac: 0.1 }) // 4.13
 */
export function wetLayer_cm(of: RetentionCurve & { readonly airWanted_frac: number }): number {
  withinCurve(of);
  within("airWanted_frac", of.airWanted_frac, 0.001, 0.9);
  const room = of.saturatedWater_frac - of.residualWater_frac;
  within("airWanted_frac", of.airWanted_frac, 0.001, Math.min(0.9, room - 1e-9));
  const left = (room - of.airWanted_frac) / room;
  const m = 1 - 1 / of.steepness;
  return (left ** (-1 / m) - 1) ** (1 / of.steepness) / of.alpha_per_cm;
}

/**
 * Classes of water of the laboratory: air at 10 cm of suction, water easily had, and the buffer behind it.
 *
 * air = θs − θ(10); easy = θ(10) − θ(50); buffer = θ(50) − θ(100). In a pot the capacity of that pot takes the place of θ(10).
 *
 * @param curve the curve of the medium
 * @returns three shares of the volume; usual for a good mix: 0.20 to 0.30, 0.20 to 0.30, 0.04 to 0.10
 * @throws QuantityError outside the ranges of a curve
 * @source DeBoodtVerdonck1972 for the classes
 * @see checks/medium-repot.json 042
 * @example waterClasses({ residualWater_frac: 0.15, saturatedWater_frac: 0.8, alpha_per_cm: 0.182, steepness: 1.5 }).easy_frac // 0.217
 */
export function waterClasses(curve: RetentionCurve): {
  readonly air_frac: number;
  readonly easy_frac: number;
  readonly buffer_frac: number;
} {
  withinCurve(curve);
  const [at10, at50, at100] = [waterOf(curve, 10), waterOf(curve, 50), waterOf(curve, 100)];
  return { air_frac: curve.saturatedWater_frac - at10, easy_frac: at10 - at50, buffer_frac: at50 - at100 };
}

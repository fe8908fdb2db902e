import { within } from "../errors/index.ts";

/**
 * Photons that the leaves of a lone crown catch in a day.
 *
 * dli × A (1 − exp(−k LAI)), LAI = leaf area / A, A the ground that the crown covers. Give the light from all around (half the
 * spherical light) for a crown lit from one side: it counts the side once, and nothing else is to be added for it
 *
 * @param crown daily light at the crown [mol m⁻² d⁻¹], 0 to 65; one-sided leaf area [m²], 0 to 20; ground covered [m²], 0.0001 to 20; extinction, 0.3 to 1, 0.6 when left out
 * @returns photons caught [mol d⁻¹]; rises with light and leaves, at most dli × A
 * @throws QuantityError outside those ranges
 * @source MonsiSaeki1953; extinction 0.5 to 0.7 as crop models have it
 * @example lightCaught_mol_d({ dli_mol_m2_d: 12, leafArea_m2: 0.06, crownArea_m2: 0.0314 }) // 0.257
 */
export function lightCaught_mol_d(crown: {
  readonly dli_mol_m2_d: number;
  readonly leafArea_m2: number;
  readonly crownArea_m2: number;
  readonly extinction?: number;
}): number {
  const { dli_mol_m2_d, leafArea_m2, crownArea_m2, extinction = 0.6 } = crown;
  within("dli_mol_m2_d", dli_mol_m2_d, 0, 65);
  within("leafArea_m2", leafArea_m2, 0, 20);
  within("crownArea_m2", crownArea_m2, 0.0001, 20);
  within("extinction", extinction, 0.3, 1);
  return dli_mol_m2_d * crownArea_m2 * (1 - Math.exp((-extinction * leafArea_m2) / crownArea_m2));
}

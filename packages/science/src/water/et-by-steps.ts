import { within } from "../errors/index.ts";

/**
 * Reference evapotranspiration by the step layout: one share due to light, one due to dry moving air.
 *
 * DT = Δ/(Δ + γ (1 + 0.34 u2)); PT = γ/(Δ + γ (1 + 0.34 u2)); TT = 900 u2/(T + 273);
 * light share = DT · 0.408 Rn; dry-air share = PT · TT · (es − ea)
 *
 * @param steps net radiation [MJ m⁻² d⁻¹], -10 to 40; delta term and psi term, 0 to 1; temperature term, 0 to 200; deficit [kPa], 0 to 20
 * @returns the two shares and their sum [mm d⁻¹]
 * @throws QuantityError outside those ranges
 * @source ZotarelliAE459
 * @see checks/air-water.json 049
 * @example etBySteps({ netRadiation_MJ_m2_d: 13.2832, deltaTerm: 0.518, psiTerm: 0.2825, temperatureTerm: 6.4501, deficit_kPa: 0.5889 }).dryAir_mm_d // 1.073
 */
export function etBySteps(steps: {
  readonly netRadiation_MJ_m2_d: number;
  readonly deltaTerm: number;
  readonly psiTerm: number;
  readonly temperatureTerm: number;
  readonly deficit_kPa: number;
}): { readonly light_mm_d: number; readonly dryAir_mm_d: number; readonly referenceEt_mm_d: number } {
  const { netRadiation_MJ_m2_d, deltaTerm, psiTerm, temperatureTerm, deficit_kPa } = steps;
  within("netRadiation_MJ_m2_d", netRadiation_MJ_m2_d, -10, 40);
  within("deltaTerm", deltaTerm, 0, 1);
  within("psiTerm", psiTerm, 0, 1);
  within("temperatureTerm", temperatureTerm, 0, 200);
  within("deficit_kPa", deficit_kPa, 0, 20);
  const light_mm_d = deltaTerm * 0.408 * netRadiation_MJ_m2_d;
  const dryAir_mm_d = psiTerm * temperatureTerm * deficit_kPa;
  return { light_mm_d, dryAir_mm_d, referenceEt_mm_d: light_mm_d + dryAir_mm_d };
}

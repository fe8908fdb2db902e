import { within } from "../errors/index.ts";

/**
 * How far evaporation from the surface has fallen as it dries, in two stages.
 *
 * Kr = 1 for De ≤ REW, else (TEW − De)/(TEW − REW), not below 0
 *
 * @param surface water evaporated so far, in all, and freely [mm]; evaporated 0 to 100; total 0.5 to 100; freely 0 to the total
 * @returns evaporation reduction, 0 to 1
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 74
 * @see checks/air-water.json 090
 * @example evaporationReduction({ evaporated_mm: 13, totalEvaporable_mm: 18, readilyEvaporable_mm: 8 }) // 0.5
 */
export function evaporationReduction(surface: {
  readonly evaporated_mm: number;
  readonly totalEvaporable_mm: number;
  readonly readilyEvaporable_mm: number;
}): number {
  const { evaporated_mm, totalEvaporable_mm, readilyEvaporable_mm } = surface;
  within("evaporated_mm", evaporated_mm, 0, 100);
  within("totalEvaporable_mm", totalEvaporable_mm, 0.5, 100);
  within("readilyEvaporable_mm", readilyEvaporable_mm, 0, 100);
  within("readilyEvaporable_mm", readilyEvaporable_mm, 0, totalEvaporable_mm);
  if (evaporated_mm <= readilyEvaporable_mm) return 1;
  if (evaporated_mm >= totalEvaporable_mm) return 0;
  return (totalEvaporable_mm - evaporated_mm) / (totalEvaporable_mm - readilyEvaporable_mm);
}

/**
 * Evaporation coefficient of a surface that is partly shaded and partly dry.
 *
 * Ke = min(Kr (Kc,max − Kcb), few · Kc,max), not below 0
 *
 * @param surface evaporation reduction, 0 to 1; upper limit, 0 to 2; basal coefficient over the surface, 0 to 1.5; exposed and wetted share, 0 to 1
 * @returns coefficient
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 71
 * @example evaporationCoefficient({ evaporationReduction: 1, coefficientMax: 1.2, basalCoefficient: 0.15, exposed_frac: 0.5 }) // 0.6
 */
export function evaporationCoefficient(surface: {
  readonly evaporationReduction: number;
  readonly coefficientMax: number;
  readonly basalCoefficient: number;
  readonly exposed_frac: number;
}): number {
  within("evaporationReduction", surface.evaporationReduction, 0, 1);
  within("coefficientMax", surface.coefficientMax, 0, 2);
  within("basalCoefficient", surface.basalCoefficient, 0, 1.5);
  within("exposed_frac", surface.exposed_frac, 0, 1);
  const energy = surface.evaporationReduction * (surface.coefficientMax - surface.basalCoefficient);
  return Math.max(0, Math.min(energy, surface.exposed_frac * surface.coefficientMax));
}

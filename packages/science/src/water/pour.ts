import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type WaterSettings, waterAssumptions } from "./assumptions.ts";

/** How a medium takes up water again once it is dry. */
export type RewettingKind = "peat" | "wood fibre, coir or mineral";

/**
 * Water to pour to bring a pot to a target depletion, with a share of leachate.
 *
 * V = (D − D target) / (η (1 − LF)); leachate = LF × what enters. With η = 1, 200 g and LF 0.15 the pour is 235 g.
 *
 * @param pot depletion and target [g], 0 to 1e5, target not above depletion; leaching share, 0 to 0.5; share captured η, 0.1 to 1, 1 unless given
 * @returns pour and expected leachate [g]
 * @throws QuantityError outside those ranges
 * @source ENH1268 for the leaching fraction
 * @see checks/air-water.json 105
 * @example pourFor({ depletion_g: 200, leaching_frac: 0.15 }).pour_g // 235.3
 */
export function pourFor(pot: {
  readonly depletion_g: number;
  readonly leaching_frac: number;
  readonly target_g?: number;
  readonly captured_frac?: number;
}): { readonly pour_g: number; readonly leachate_g: number } {
  const { depletion_g, leaching_frac, target_g = 0, captured_frac = 1 } = pot;
  within("depletion_g", depletion_g, 0, 1e5);
  within("target_g", target_g, 0, 1e5);
  within("target_g", target_g, 0, depletion_g);
  within("leaching_frac", leaching_frac, 0, 0.5);
  within("captured_frac", captured_frac, 0.1, 1);
  const kept = depletion_g - target_g;
  const pour_g = kept / (captured_frac * (1 - leaching_frac));
  return { pour_g, leachate_g: pour_g - kept };
}

/**
 * Share of the water that must leach to hold salts at a crop's threshold.
 *
 * LR = ECw / (5 ECe − ECw), not above 1
 *
 * @param water conductivity of the water [mS cm⁻¹], 0 to 20; threshold of the soil extract [mS cm⁻¹], 0.5 to 10, 1.5 (pepper) unless given
 * @returns share, 0 to 1; 1 means that this water cannot hold it
 * @throws QuantityError outside those ranges
 * @source FAO29
 * @see checks/air-water.json 106
 * @example leachingRequirement_frac({ waterEc_mS_cm: 0.5, saltThreshold_mS_cm: 1.5 }) // 0.071
 */
export function leachingRequirement_frac(water: {
  readonly waterEc_mS_cm: number;
  readonly saltThreshold_mS_cm?: number;
}): number {
  const { waterEc_mS_cm, saltThreshold_mS_cm = 1.5 } = water;
  within("waterEc_mS_cm", waterEc_mS_cm, 0, 20);
  within("saltThreshold_mS_cm", saltThreshold_mS_cm, 0.5, 10);
  const rest = 5 * saltThreshold_mS_cm - waterEc_mS_cm;
  return rest <= waterEc_mS_cm ? 1 : waterEc_mS_cm / rest;
}

/**
 * Share of a pour that a medium keeps at a depletion: dry media shed water.
 *
 * 0.95 for r ≤ 0.6, falling along a line to 0.45 (peat) or 0.75 (wood fibre, coir, mineral) at r = 1
 *
 * @param pot depletion, 0 to 1.5 (counted as 1 beyond 1); kind of medium; any of the field's capture assumptions
 * @returns share kept, 0 to 1; falls with depletion
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example capturedShare_frac({ depletion_frac: 1, rewetting: "peat" }) // 0.45
 */
export function capturedShare_frac(
  pot: { readonly depletion_frac: number; readonly rewetting: RewettingKind } & WaterSettings,
): number {
  within("depletion_frac", pot.depletion_frac, 0, 1.5);
  const set = valuesOf(waterAssumptions, pot);
  const dry = pot.rewetting === "peat" ? set.captureDryPeat_frac : set.captureDryOther_frac;
  const dryness = Math.min(1, Math.max(0, (pot.depletion_frac - 0.6) / 0.4));
  return set.captureMoist_frac + dryness * (dry - set.captureMoist_frac);
}

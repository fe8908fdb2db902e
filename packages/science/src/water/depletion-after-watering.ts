import { valuesOf } from "../assumption.ts";
import { momentMatch, type NormalPart, normalProbability, probitUpdate } from "../chance/index.ts";
import { within } from "../errors/index.ts";
import { type WaterSettings, waterAssumptions } from "./assumptions.ts";

/** What was seen at the drain hole: water ran out, none did, or nobody looked. */
export type Drained = "yes" | "no" | "unknown";

export type DepletionAfterWatering = {
  readonly mean_g: number;
  readonly variance_g2: number;
  /** probability that the pot drained, 1 or 0 when it was seen */
  readonly drained: number;
  /** probability that the water ran past a dry core */
  readonly bypass: number;
  /** true when what went before says nothing any more about the depletion: cross-covariances are to be zeroed */
  readonly forgets: boolean;
};

/**
 * Belief about a pot's depletion after a watering, from what was poured and whether water ran out.
 *
 * Ran out, medium not too dry (r < 0.7): wetted, N(0.02, 0.03²) × store; with measured leachate L, D − (V − L). Ran out of a
 * dry medium: with chance π = 0.6 (r − 0.7)/0.3 only ηV stayed; moment-matched. None ran out: D was more than V (a look
 * with threshold V and spread 0.08 V), then D − V. Nobody looked: mixture by Φ((V − D)/√(P + (0.08 V)²)).
 *
 * @param watering depletion before: mean [g], -1e4 to 1e5, and variance [g²], 0 to 1e9; store [g], 1 to 1e6; poured [mL], 1 to 1e5; whether it drained; leachate [mL], 0 to the poured; any of the field's watering assumptions
 * @returns mean and variance afterwards, chances of draining and of bypass, whether older knowledge is forgotten
 * @throws QuantityError outside those ranges
 * @source our assumption; mixtures with exact moments
 * @example depletionAfterWatering({ depletion_g: 100, variance_g2: 400, store_g: 200, poured_mL: 250, drained: "yes" }).mean_g // 4
 */
export function depletionAfterWatering(
  watering: {
    readonly depletion_g: number;
    readonly variance_g2: number;
    readonly store_g: number;
    readonly poured_mL: number;
    readonly drained: Drained;
    readonly leachate_mL?: number;
  } & WaterSettings,
): DepletionAfterWatering {
  const { depletion_g, variance_g2, store_g, poured_mL, drained, leachate_mL } = watering;
  within("depletion_g", depletion_g, -1e4, 1e5);
  within("variance_g2", variance_g2, 0, 1e9);
  within("store_g", store_g, 1, 1e6);
  within("poured_mL", poured_mL, 1, 1e5);
  if (leachate_mL !== undefined) {
    within("leachate_mL", leachate_mL, 0, 1e5);
    within("leachate_mL", leachate_mL, 0, poured_mL);
  }
  const set = valuesOf(waterAssumptions, watering);
  const spread = set.pourSpread_frac * poured_mL;
  const bypass = 0.6 * Math.min(1, Math.max(0, (depletion_g / store_g - 0.7) / 0.3));
  const ifDrained = (): NormalPart[] => {
    const wetted = {
      weight: 1 - bypass,
      mean: set.wettedMean_frac * store_g,
      variance: (set.wettedSd_frac * store_g) ** 2,
    };
    const past = {
      weight: bypass,
      mean: Math.max(0, depletion_g - set.bypassCapture_frac * poured_mL),
      variance: variance_g2 + spread ** 2,
    };
    return bypass > 0 ? [wetted, past] : [wetted];
  };
  const ifNot = (): { readonly mean: number; readonly variance: number } => {
    const look = { mean: depletion_g, variance: variance_g2, threshold: poured_mL, spread, yes: true };
    const deeper = probitUpdate(look);
    // Drier than the pour by a look of finite sharpness; the rest of the pour's uncertainty goes with the water.
    return { mean: deeper.mean - poured_mL, variance: deeper.variance + spread ** 2 };
  };

  if (drained === "yes" && leachate_mL !== undefined) {
    return {
      mean_g: depletion_g - (poured_mL - leachate_mL),
      variance_g2: variance_g2 + (0.03 * poured_mL) ** 2,
      drained: 1,
      bypass: 0,
      forgets: false,
    };
  }
  if (drained === "yes") {
    const { mean, variance } = momentMatch(ifDrained());
    return { mean_g: mean, variance_g2: variance, drained: 1, bypass, forgets: true };
  }
  if (drained === "no") {
    const { mean, variance } = ifNot();
    return { mean_g: mean, variance_g2: variance, drained: 0, bypass: 0, forgets: false };
  }
  const chance = normalProbability((poured_mL - depletion_g) / Math.sqrt(variance_g2 + spread ** 2));
  const parts = ifDrained().map((part) => ({ ...part, weight: part.weight * chance }));
  const { mean, variance } = momentMatch([...parts, { ...ifNot(), weight: 1 - chance }]);
  return {
    mean_g: mean,
    variance_g2: variance,
    drained: chance,
    bypass: bypass * chance,
    forgets: chance > 0.5,
  };
}

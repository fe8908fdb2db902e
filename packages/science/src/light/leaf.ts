import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { leafAssumptions } from "./assumptions.ts";

/** The curve before respiration is taken off. */
function gross(ppfd: number, quantumYield: number, curvature: number, most: number): number {
  const sum = quantumYield * ppfd + most;
  const root = Math.sqrt(Math.max(0, sum * sum - 4 * curvature * quantumYield * ppfd * most));
  return (sum - root) / (2 * curvature);
}

/**
 * Net photosynthesis of a leaf by the light on it (non-rectangular hyperbola).
 *
 * P = [φ I + Pm − √((φ I + Pm)² − 4 θ φ I Pm)] / 2θ − Rd
 *
 * @param leaf light [µmol m⁻² s⁻¹], 0 to 3000; any of quantum yield, curvature, greatest rate and respiration, as assumed when left out
 * @returns carbon dioxide taken up [µmol m⁻² s⁻¹], below 0 in the dark
 * @throws QuantityError outside those ranges
 * @source our assumption; shape ThornleyJohnson1990, values from memory; measured rates 3.6 to 16.3 (Erwin2019)
 * @example leafPhotosynthesis_umol_m2_s({ ppfd_umol_m2_s: 500 }) // 10.82
 */
export function leafPhotosynthesis_umol_m2_s(leaf: {
  readonly ppfd_umol_m2_s: number;
  readonly quantumYield?: number;
  readonly curvature?: number;
  readonly photosynthesisMax_umol_m2_s?: number;
  readonly respiration_umol_m2_s?: number;
}): number {
  within("ppfd_umol_m2_s", leaf.ppfd_umol_m2_s, 0, 3000);
  const set = valuesOf(leafAssumptions, leaf);
  return (
    gross(leaf.ppfd_umol_m2_s, set.quantumYield, set.curvature, set.photosynthesisMax_umol_m2_s) -
    set.respiration_umol_m2_s
  );
}

/**
 * Light at which a leaf takes up as much as it breathes out.
 *
 * I = Rd (Pm − θ Rd) / (φ (Pm − Rd)), the curve solved for 0
 *
 * @param leaf any of quantum yield, curvature, greatest rate and respiration, as assumed when left out
 * @returns light [µmol m⁻² s⁻¹]
 * @throws QuantityError outside their ranges
 * @source our assumption; shape ThornleyJohnson1990, values from memory
 * @example compensationLight_umol_m2_s({}) // 20.4
 */
export function compensationLight_umol_m2_s(leaf: {
  readonly quantumYield?: number;
  readonly curvature?: number;
  readonly photosynthesisMax_umol_m2_s?: number;
  readonly respiration_umol_m2_s?: number;
}): number {
  const {
    quantumYield,
    curvature,
    photosynthesisMax_umol_m2_s: most,
    respiration_umol_m2_s: lost,
  } = valuesOf(leafAssumptions, leaf);
  return (lost * (most - curvature * lost)) / (quantumYield * (most - lost));
}

/**
 * Light of a step that counts towards the day: above a cap it mostly heats.
 *
 * @param light photons [µmol m⁻² s⁻¹], 0 to 3000; cap [µmol m⁻² s⁻¹], 100 to 3000, 1000 as assumed when left out
 * @returns light that counts [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example creditedLight_umol_m2_s({ ppfd_umol_m2_s: 1500 }) // 1000
 */
export function creditedLight_umol_m2_s(light: {
  readonly ppfd_umol_m2_s: number;
  readonly creditedMost_umol_m2_s?: number;
}): number {
  within("ppfd_umol_m2_s", light.ppfd_umol_m2_s, 0, 3000);
  return Math.min(light.ppfd_umol_m2_s, valuesOf(leafAssumptions, light).creditedMost_umol_m2_s);
}

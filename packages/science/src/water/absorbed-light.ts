import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { waterAssumptions } from "./assumptions.ts";

/**
 * Energy that a leaf absorbs under a lamp.
 *
 * Q_abs = 0.88 Q / 4.8
 *
 * @param lamp light at the leaf [µmol m⁻² s⁻¹], 0 to 2500; share absorbed, 0.75 to 0.95; photons per energy [µmol J⁻¹], 4.6 to 5.2
 * @returns energy [W m⁻²] per one-sided leaf area
 * @throws QuantityError outside those ranges
 * @source our assumption; values from memory
 * @example absorbedFromLamp_W_m2({ ppfd_umol_m2_s: 200 }) // 36.67
 */
export function absorbedFromLamp_W_m2(lamp: {
  readonly ppfd_umol_m2_s: number;
  readonly leafLightAbsorbed_frac?: number;
  readonly lampPhotons_umol_J?: number;
}): number {
  within("ppfd_umol_m2_s", lamp.ppfd_umol_m2_s, 0, 2500);
  const set = valuesOf(waterAssumptions, lamp);
  return (set.leafLightAbsorbed_frac * lamp.ppfd_umol_m2_s) / set.lampPhotons_umol_J;
}

/**
 * Energy that a leaf absorbs from the sun or a window.
 *
 * Q_abs = 0.525 × short-wave radiation at the leaf
 *
 * @param sun short-wave radiation at the leaf [W m⁻²], 0 to 1400; share absorbed, 0.5 to 0.55
 * @returns energy [W m⁻²] per one-sided leaf area
 * @throws QuantityError outside those ranges
 * @source our assumption; values from memory
 * @example absorbedFromSun_W_m2({ solar_W_m2: 100 }) // 52.5
 */
export function absorbedFromSun_W_m2(sun: {
  readonly solar_W_m2: number;
  readonly leafSunAbsorbed_frac?: number;
}): number {
  within("solar_W_m2", sun.solar_W_m2, 0, 1400);
  return valuesOf(waterAssumptions, sun).leafSunAbsorbed_frac * sun.solar_W_m2;
}

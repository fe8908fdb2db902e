import { valuesOf } from "../assumption.ts";
import { QuantityError, within } from "../errors/index.ts";
import { lightAssumptions } from "./assumptions.ts";
import { eyeSensitivityAt_frac } from "./eye-sensitivity.ts";
import { type LightSource, lightSourceRatios } from "./light-sources.ts";

function ratioOf_lx_per_umol(source: LightSource | "red and blue"): number {
  if (source !== "red and blue") return lightSourceRatios[source].light_lx_per_umol;
  const message =
    "source is red and blue: no lux constant is safe for it (10 to 30); expected a reading in µmol m⁻² s⁻¹";
  throw new QuantityError("source", source, "", 0, 0, message);
}

/**
 * Photons in light that was read in lux.
 *
 * PPFD = lux / constant of the source
 *
 * @param reading illuminance [lx], 0 to 200000; source of the light, of `lightSourceRatios`; or a constant of one's own [lx per µmol m⁻² s⁻¹], 30 to 120
 * @returns light [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges, and for red and blue diodes, whose lux says nothing
 * @source ThimijanHeins1983; CIE015
 * @see checks/sun-light.json 075-092
 * @example ppfdFromLux_umol_m2_s({ illuminance_lx: 6800, source: "white LED" }) // 100
 */
export function ppfdFromLux_umol_m2_s(reading: {
  readonly illuminance_lx: number;
  readonly source: LightSource | "red and blue";
  readonly light_lx_per_umol?: number;
}): number {
  const { illuminance_lx, source } = reading;
  within("illuminance_lx", illuminance_lx, 0, 200_000);
  if (reading.light_lx_per_umol !== undefined)
    within("light_lx_per_umol", reading.light_lx_per_umol, 30, 120);
  return illuminance_lx / (reading.light_lx_per_umol ?? ratioOf_lx_per_umol(source));
}

/**
 * Lux of light whose photons are known.
 *
 * lux = PPFD × constant of the source
 *
 * @param light photons [µmol m⁻² s⁻¹], 0 to 3000; source of the light, of `lightSourceRatios`; or a constant of one's own [lx per µmol m⁻² s⁻¹], 30 to 120
 * @returns illuminance [lx]
 * @throws QuantityError outside those ranges, and for red and blue diodes
 * @source ThimijanHeins1983; CIE015
 * @see checks/sun-light.json 092
 * @example luxFromPpfd_lx({ ppfd_umol_m2_s: 2000, source: "sun and sky" }) // 108000
 */
export function luxFromPpfd_lx(light: {
  readonly ppfd_umol_m2_s: number;
  readonly source: LightSource | "red and blue";
  readonly light_lx_per_umol?: number;
}): number {
  const { ppfd_umol_m2_s, source } = light;
  within("ppfd_umol_m2_s", ppfd_umol_m2_s, 0, 3000);
  if (light.light_lx_per_umol !== undefined) within("light_lx_per_umol", light.light_lx_per_umol, 30, 120);
  return ppfd_umol_m2_s * (light.light_lx_per_umol ?? ratioOf_lx_per_umol(source));
}

/**
 * Photons that leave a lamp of which only the lumens are known.
 *
 * PPF = lm / constant of the source
 *
 * @param lamp luminous flux [lm], 0 to 1000000; source of the light
 * @returns photon flux [µmol s⁻¹]
 * @throws QuantityError outside that range, and for red and blue diodes
 * @source ThimijanHeins1983; CIE015
 * @example fluxFromLumens_umol_s({ luminousFlux_lm: 806, source: "white LED" }) // 11.85
 */
export function fluxFromLumens_umol_s(lamp: {
  readonly luminousFlux_lm: number;
  readonly source: LightSource | "red and blue";
}): number {
  within("luminousFlux_lm", lamp.luminousFlux_lm, 0, 1_000_000);
  return lamp.luminousFlux_lm / ratioOf_lx_per_umol(lamp.source);
}

/**
 * Daily light of a steady light.
 *
 * DLI = PPFD × hours × 0.0036
 *
 * @param light photons [µmol m⁻² s⁻¹], 0 to 3000; hours a day [h], 0 to 24
 * @returns light [mol m⁻² d⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; arithmetic
 * @see checks/sun-light.json 098, 100
 * @example dailyLight_mol_m2_d({ ppfd_umol_m2_s: 200, lit_h: 12 }) // 8.64
 */
export function dailyLight_mol_m2_d(light: {
  readonly ppfd_umol_m2_s: number;
  readonly lit_h: number;
}): number {
  within("ppfd_umol_m2_s", light.ppfd_umol_m2_s, 0, 3000);
  within("lit_h", light.lit_h, 0, 24);
  return light.ppfd_umol_m2_s * light.lit_h * 0.0036;
}

/**
 * Daily light from readings through the day, each standing for an equal step.
 *
 * DLI = Σ PPFD × step
 *
 * @param day photons [step][µmol m⁻² s⁻¹], 0 to 3000; length of a step [min], 0.01 to 1440
 * @returns light [mol m⁻² d⁻¹]
 * @throws QuantityError outside those ranges, or for more steps than a day has
 * @source our assumption; arithmetic
 * @example lightOfSteps_mol_m2_d({ steps_umol_m2_s: [100, 300], step_min: 60 }) // 1.44
 */
export function lightOfSteps_mol_m2_d(day: {
  readonly steps_umol_m2_s: readonly number[];
  readonly step_min: number;
}): number {
  const { steps_umol_m2_s, step_min } = day;
  within("step_min", step_min, 0.01, 1440);
  // A day of 25 hours is a day, too.
  within("steps_n", steps_umol_m2_s.length, 0, 1500 / step_min);
  let sum = 0;
  for (const step of steps_umol_m2_s) {
    within("steps_umol_m2_s", step, 0, 3000);
    sum += step;
  }
  return (sum * step_min * 60) / 1e6;
}

/**
 * Photosynthetic photons per energy of daylight.
 *
 * share of the energy between 400 and 700 nm × photons per energy there; 2.06 mol MJ⁻¹, ±5 % (one standard deviation 4 %)
 *
 * @param daylight share of the energy, 0.4 to 0.53; photons per energy [µmol J⁻¹], 4.2 to 4.8; both as assumed when left out
 * @returns photons [mol MJ⁻¹], the same as [µmol J⁻¹]
 * @throws QuantityError outside those ranges
 * @source FaustLogan2018; ThimijanHeins1983
 * @see checks/sun-light.json 095, 097
 * @example photonsOfDaylight_mol_MJ({ parShare_frac: 0.45, daylightPhotons_umol_J: 4.57 }) // 2.0565
 */
export function photonsOfDaylight_mol_MJ(daylight: {
  readonly parShare_frac?: number;
  readonly daylightPhotons_umol_J?: number;
}): number {
  const { parShare_frac, daylightPhotons_umol_J } = valuesOf(lightAssumptions, daylight);
  return parShare_frac * daylightPhotons_umol_J;
}

const planckLightAvogadro_J_m_mol = 6.62607015e-34 * 299_792_458 * 6.02214076e23;

/**
 * Lux per photon and photons per energy of light whose spectrum is known.
 *
 * lux = 683 ∫ E V dλ over the visible, PPFD = ∫ E λ dλ / (h c N) and energy over 400 to 700 nm; trapezoids
 *
 * @param light wavelengths, rising [point][nm], 200 to 1200; power per wavelength there, in any one unit [point], 0 to 1e12; 5 nm or finer
 * @returns constant of the light [lx per µmol m⁻² s⁻¹], photons per energy of 400 to 700 nm [µmol J⁻¹]
 * @throws QuantityError outside those ranges, for lists that differ in length or do not cover 400 to 700 nm, or without light there
 * @source CIE015
 * @see checks/sun-light.json 082-091
 * @example lightOfSpectrum({ wavelengths_nm: [400, 555, 700], spectralPower: [1, 1, 1] }).photons_umol_J // 4.60
 */
export function lightOfSpectrum(light: {
  readonly wavelengths_nm: readonly number[];
  readonly spectralPower: readonly number[];
}): { readonly light_lx_per_umol: number; readonly photons_umol_J: number } {
  const { wavelengths_nm, spectralPower } = light;
  within("points_n", wavelengths_nm.length, 2, 2000);
  within("points_n", spectralPower.length, wavelengths_nm.length, wavelengths_nm.length);
  wavelengths_nm.forEach((wavelength_nm, i) => {
    within("wavelengths_nm", wavelength_nm, 200, 1200);
    within("wavelengths_nm", wavelength_nm, wavelengths_nm[i - 1] ?? 200, 1200);
  });
  for (const power of spectralPower) within("spectralPower", power, 0, 1e12);
  within("wavelengths_nm", wavelengths_nm[0] as number, 200, 400);
  within("wavelengths_nm", wavelengths_nm.at(-1) as number, 700, 1200);
  const powerAt = (wavelength_nm: number): number => {
    const after = wavelengths_nm.findIndex((each) => each >= wavelength_nm);
    if (after < 0 || (after === 0 && wavelengths_nm[0] !== wavelength_nm)) return 0;
    const [to_nm, to] = [wavelengths_nm[after] as number, spectralPower[after] as number];
    if (after === 0 || to_nm === wavelength_nm) return to;
    const [from_nm, from] = [wavelengths_nm[after - 1] as number, spectralPower[after - 1] as number];
    return from + ((to - from) * (wavelength_nm - from_nm)) / (to_nm - from_nm);
  };
  let [lux, photons, energy] = [0, 0, 0];
  for (let wavelength_nm = 380; wavelength_nm <= 780; wavelength_nm += 1) {
    const power = powerAt(wavelength_nm);
    lux += 683 * power * eyeSensitivityAt_frac(wavelength_nm);
    if (wavelength_nm < 400 || wavelength_nm > 700) continue;
    const weight = wavelength_nm === 400 || wavelength_nm === 700 ? 0.5 : 1;
    energy += weight * power;
    photons += (weight * power * wavelength_nm * 1e-9 * 1e6) / planckLightAvogadro_J_m_mol;
  }
  within("energyOfPhotons", energy, Number.MIN_VALUE, Number.MAX_VALUE);
  return { light_lx_per_umol: lux / photons, photons_umol_J: photons / energy };
}

import { saturation_kPa, saturationSlope_kPa_per_C } from "./vapour.ts";

/** Air and light around a leaf over one hour. */
interface LeafAir {
  readonly air_C: number;
  readonly vapour_kPa: number;
  readonly wind_m_s: number;
  readonly pressure_kPa: number;
  readonly ppfd_umol_m2_s: number;
  readonly absorbed_W_m2: number;
}

/** How a plant's leaves behave; drawn for each plant. */
export interface LeafTraits {
  /** Light-saturated assimilation, µmol m⁻² s⁻¹. */
  readonly assimilationMax_umol_m2_s: number;
  readonly halfLight_umol_m2_s: number;
  /** Slope of stomatal opening on assimilation, √kPa. */
  readonly g1: number;
  /** Cuticle and open stomata in the dark, mol m⁻² s⁻¹. */
  readonly g0_mol_m2_s: number;
  readonly width_m: number;
}

const AIR_CO2_ppm = 420;
const MOLAR_HEAT_J_mol_K = 29.3;
const STEFAN_W_m2_K4 = 5.670374e-8;
const EMISSIVITY = 0.96;
const WATER_g_mol = 18.015;
/** A surface temperature is good enough when it moves by less than this. */
const CLOSE_C = 0.03;

/**
 * Stomatal conductance for vapour by optimal stomatal behaviour.
 *
 * gs = g0 + 1.6 (1 + g1/√D) A/Ca
 *
 * @source Medlyn et al. (2011), Global Change Biology 17, eq. 11
 */
function stomata_mol_m2_s(
  traits: LeafTraits,
  ppfd_umol_m2_s: number,
  leafDeficit_kPa: number,
  air_C: number,
): number {
  const light = ppfd_umol_m2_s / (ppfd_umol_m2_s + traits.halfLight_umol_m2_s);
  // A plain bell of temperature: half of the best at 12 and 42 °C.
  const warmth = Math.exp(-Math.LN2 * ((air_C - 27) / 15) ** 2);
  const assimilation = traits.assimilationMax_umol_m2_s * light * warmth;
  // Below 0.3 kPa the form would open without end.
  const deficit_kPa = Math.max(leafDeficit_kPa, 0.3);
  return traits.g0_mol_m2_s + (1.6 * (1 + traits.g1 / Math.sqrt(deficit_kPa)) * assimilation) / AIR_CO2_ppm;
}

/**
 * Water lost by one square metre of leaf (one-sided), by solving its energy balance for leaf temperature.
 * Long-wave exchange is the full fourth-power law, free convection follows the leaf's own temperature.
 *
 * @param openness_frac how far stomata may open, 0 to 1 (water stress)
 * @returns g m⁻² h⁻¹; negative (dew) is cut to 0
 * @source energy balance as in Campbell and Norman (1998), chapters 7 and 14; boundary layer 0.135 √(u/d), 0.05 (ΔT/d)^¼
 */
export function leafLoss_g_m2_h(air: LeafAir, traits: LeafTraits, openness_frac: number): number {
  const d_m = 0.72 * traits.width_m;
  let leaf_C = air.air_C;
  let loss_mol = 0;
  for (let pass = 0; pass < 4; pass++) {
    const boundary = boundary_mol_m2_s(air.wind_m_s, d_m, leaf_C - air.air_C);
    const deficit_kPa = saturation_kPa(leaf_C) - air.vapour_kPa;
    const open = stomata_mol_m2_s(traits, air.ppfd_umol_m2_s, deficit_kPa, air.air_C);
    const stomata = traits.g0_mol_m2_s * 0.4 + Math.max(0, open - traits.g0_mol_m2_s * 0.4) * openness_frac;
    const vapour = 1.089 * boundary;
    const lower = 1 / (1 / (0.75 * stomata) + 1 / vapour);
    const upper = 1 / (1 / (0.25 * stomata) + 1 / vapour);
    const path = lower + upper;
    loss_mol = (path * deficit_kPa) / air.pressure_kPa;
    const closer_C = balanced_C(air, leaf_C, 2, boundary, path, loss_mol, air.absorbed_W_m2);
    if (Math.abs(closer_C - leaf_C) < CLOSE_C) break;
    leaf_C = closer_C;
  }
  return Math.max(0, loss_mol * WATER_g_mol * 3600);
}

/**
 * Water lost by one square metre of a wet surface that loses heat on its upper side only (medium in a pot).
 *
 * @returns g m⁻² h⁻¹, never negative
 */
export function wetSurfaceLoss_g_m2_h(air: LeafAir, width_m: number): number {
  const d_m = 0.72 * width_m;
  let surface_C = air.air_C;
  let loss_mol = 0;
  for (let pass = 0; pass < 4; pass++) {
    const boundary = boundary_mol_m2_s(air.wind_m_s, d_m, surface_C - air.air_C);
    const path = 1.089 * boundary;
    loss_mol = (path * (saturation_kPa(surface_C) - air.vapour_kPa)) / air.pressure_kPa;
    const closer_C = balanced_C(air, surface_C, 1, boundary, path, loss_mol, air.absorbed_W_m2);
    if (Math.abs(closer_C - surface_C) < CLOSE_C) break;
    surface_C = closer_C;
  }
  return Math.max(0, loss_mol * WATER_g_mol * 3600);
}

/** Heat conductance of the air film on one side. */
function boundary_mol_m2_s(wind_m_s: number, d_m: number, difference_C: number): number {
  const forced = 0.135 * Math.sqrt(wind_m_s / d_m);
  const free = 0.05 * Math.sqrt(Math.sqrt(Math.max(Math.abs(difference_C), 0.3) / d_m));
  return Math.cbrt(forced * forced * forced + free * free * free);
}

/** One Newton step of the surface temperature towards a closed energy balance. */
function balanced_C(
  air: LeafAir,
  surface_C: number,
  sides_n: number,
  boundary: number,
  path: number,
  loss_mol: number,
  absorbed_W_m2: number,
): number {
  const surface_K = surface_C + 273.15;
  const air_K = air.air_C + 273.15;
  const latent_J_mol = 45064 - 42.9 * air.air_C;
  const radiated = sides_n * EMISSIVITY * STEFAN_W_m2_K4;
  const surface_K2 = surface_K * surface_K;
  const air_K2 = air_K * air_K;
  const emitted = radiated * (surface_K2 * surface_K2 - air_K2 * air_K2);
  const sensible = sides_n * MOLAR_HEAT_J_mol_K * boundary * (surface_C - air.air_C);
  const left_W = absorbed_W_m2 - emitted - sensible - latent_J_mol * loss_mol;
  const slope_W_per_C =
    4 * radiated * surface_K2 * surface_K +
    sides_n * MOLAR_HEAT_J_mol_K * boundary +
    (latent_J_mol * path * saturationSlope_kPa_per_C(surface_C)) / air.pressure_kPa;
  return surface_C + left_W / slope_W_per_C;
}

import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { waterAssumptions } from "./assumptions.ts";

/** Molar heat capacity of air [J mol⁻¹ °C⁻¹]. CampbellNorman1998, from memory. */
export const molarHeatCapacity_J_mol_C = 29.3;
/** Stefan-Boltzmann constant, rounded as is usual [W m⁻² K⁻⁴]. CampbellNorman1998, from memory. */
const stefanBoltzmann_W_m2_K4 = 5.67e-8;
/** Long-wave emissivity of a leaf. CampbellNorman1998, from memory. */
const leafEmissivity = 0.96;
/** Vapour diffuses faster than heat: ratio of boundary-layer conductances. CampbellNorman1998 Table 7.6, from memory. */
export const vapourOverHeat = 1.089;

/**
 * Characteristic dimension of a leaf or a pot in moving air.
 *
 * d = 0.72 × width
 *
 * @param width_cm greatest width across the air stream [cm], 0.1 to 100
 * @returns dimension [m]
 * @throws QuantityError outside that range
 * @source CampbellNorman1998
 * @example characteristicDimension_m(4) // 0.0288
 */
export function characteristicDimension_m(width_cm: number): number {
  within("width_cm", width_cm, 0.1, 100);
  return (0.72 * width_cm) / 100;
}

/**
 * Boundary-layer conductance for heat of one side of a leaf, forced and free convection together.
 *
 * gf = 0.135 √(u/d); gn = 0.050 (ΔT/d)^¼; gb = (gf³ + gn³)^⅓. The factor 1.4 for outdoor turbulence is left out: this is
 * for rooms.
 *
 * @param leaf air speed [m s⁻¹], 0 to 20; characteristic dimension [m], 0.001 to 1; leaf-to-air temperature difference [°C], 0.1 to 30, 1 unless given
 * @returns conductance [mol m⁻² s⁻¹] per side; grows with air speed, falls with size
 * @throws QuantityError outside those ranges
 * @source CampbellNorman1998
 * @see checks/air-water.json 107-111
 * @example boundaryConductance_mol_m2_s({ airSpeed_m_s: 0.08, dimension_m: 0.03 }) // 0.2318
 */
export function boundaryConductance_mol_m2_s(leaf: {
  readonly airSpeed_m_s: number;
  readonly dimension_m: number;
  readonly leafAirDifference_C?: number;
}): number {
  const { airSpeed_m_s, dimension_m, leafAirDifference_C = 1 } = leaf;
  within("airSpeed_m_s", airSpeed_m_s, 0, 20);
  within("dimension_m", dimension_m, 0.001, 1);
  within("leafAirDifference_C", leafAirDifference_C, 0.1, 30);
  const forced = 0.135 * Math.sqrt(airSpeed_m_s / dimension_m);
  const free = 0.05 * (leafAirDifference_C / dimension_m) ** 0.25;
  return Math.cbrt(forced ** 3 + free ** 3);
}

/**
 * Conductance that stands for the exchange of long-wave radiation, one side of a leaf.
 *
 * gR = 4 · 0.96 · 5.67·10⁻⁸ (T + 273.15)³ / 29.3. In still air it is as large as the boundary layer's.
 *
 * @param air_C air temperature [°C], -40 to 60
 * @returns conductance [mol m⁻² s⁻¹] per side
 * @throws QuantityError outside that range
 * @source CampbellNorman1998
 * @see checks/air-water.json 107-111
 * @example radiativeConductance_mol_m2_s(22) // 0.1911
 */
export function radiativeConductance_mol_m2_s(air_C: number): number {
  within("air_C", air_C, -40, 60);
  return (4 * leafEmissivity * stefanBoltzmann_W_m2_K4 * (air_C + 273.15) ** 3) / molarHeatCapacity_J_mol_C;
}

/**
 * Stomatal conductance of a pepper leaf, both sides together, from light, dry air and thirst.
 *
 * gs = gn0 + gmax · Q/(Q + Q½) · 1/(1 + D_L/D½) · Ks
 *
 * @param leaf light [µmol m⁻² s⁻¹], 0 to 2500; leaf-to-air deficit [kPa], 0 to 10; stress coefficient, 0 to 1, 1 unless given; any of the field's stomatal assumptions
 * @returns conductance [mol m⁻² s⁻¹]; grows with light, falls with deficit and thirst
 * @throws QuantityError outside those ranges
 * @source our assumption; shape from general practice, values in the field's assumptions
 * @example stomatalConductance_mol_m2_s({ ppfd_umol_m2_s: 150, leafDeficit_kPa: 2 }) // 0.1375
 */
export function stomatalConductance_mol_m2_s(leaf: {
  readonly ppfd_umol_m2_s: number;
  readonly leafDeficit_kPa: number;
  readonly stressCoefficient?: number;
  readonly stomatalMax_mol_m2_s?: number;
  readonly stomatalHalfLight_umol_m2_s?: number;
  readonly stomatalDeficit_kPa?: number;
  readonly stomatalNight_mol_m2_s?: number;
}): number {
  const { ppfd_umol_m2_s, leafDeficit_kPa, stressCoefficient = 1 } = leaf;
  within("ppfd_umol_m2_s", ppfd_umol_m2_s, 0, 2500);
  within("leafDeficit_kPa", leafDeficit_kPa, 0, 10);
  within("stressCoefficient", stressCoefficient, 0, 1);
  const set = valuesOf(waterAssumptions, leaf);
  const light = ppfd_umol_m2_s / (ppfd_umol_m2_s + set.stomatalHalfLight_umol_m2_s);
  const dryness = 1 / (1 + leafDeficit_kPa / set.stomatalDeficit_kPa);
  return set.stomatalNight_mol_m2_s + set.stomatalMax_mol_m2_s * light * dryness * stressCoefficient;
}

/**
 * Conductance for vapour of a whole leaf: stomata and boundary layer in series on each side, the sides in parallel.
 *
 * gv = 1/(1/g_lower + 1/gbv) + 1/(1/g_upper + 1/gbv), gbv = 1.089 gb
 *
 * @param leaf stomatal conductance of the lower and the upper side, and boundary conductance for heat of one side [mol m⁻² s⁻¹], stomatal 0 to 3, boundary 0.001 to 20
 * @returns conductance [mol m⁻² s⁻¹]; below both the stomatal and the boundary-layer conductance
 * @throws QuantityError outside those ranges
 * @source CampbellNorman1998
 * @see checks/air-water.json 107-111
 * @example leafVapourConductance_mol_m2_s({ lowerStomata_mol_m2_s: 0.12, upperStomata_mol_m2_s: 0.03, boundary_mol_m2_s: 0.23176 }) // 0.1081
 */
export function leafVapourConductance_mol_m2_s(leaf: {
  readonly lowerStomata_mol_m2_s: number;
  readonly upperStomata_mol_m2_s: number;
  readonly boundary_mol_m2_s: number;
}): number {
  within("lowerStomata_mol_m2_s", leaf.lowerStomata_mol_m2_s, 0, 3);
  within("upperStomata_mol_m2_s", leaf.upperStomata_mol_m2_s, 0, 3);
  within("boundary_mol_m2_s", leaf.boundary_mol_m2_s, 0.001, 20);
  const vapour = vapourOverHeat * leaf.boundary_mol_m2_s;
  const inSeries = (stomata: number): number => (stomata * vapour) / (stomata + vapour);
  return inSeries(leaf.lowerStomata_mol_m2_s) + inSeries(leaf.upperStomata_mol_m2_s);
}

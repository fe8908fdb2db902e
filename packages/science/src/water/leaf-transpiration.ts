import { pressure_kPa as pressureAt, saturation_kPa, slopeFrom_kPa_per_C } from "../air/kernel.ts";
import { within } from "../errors/index.ts";
import {
  boundaryConductance_mol_m2_s,
  leafVapourConductance_mol_m2_s,
  molarHeatCapacity_J_mol_C,
  radiativeConductance_mol_m2_s,
} from "./leaf-conductance.ts";

/** Grams of water per mole, and seconds per hour. */
export const waterOfMole_g_mol = 18.015; // IUPAC, from memory

/** Latent heat of a mole of water, λ = 45064 − 42.9 T. CampbellNorman1998, from memory. */
const molarLatentHeat_J_mol = (air_C: number): number => 45064 - 42.9 * air_C;

/**
 * The combination equation on a mole basis, for callers that have checked their arguments; not exported by the field.
 *
 * @source CampbellNorman1998
 */
export function combination(
  air_C: number,
  deficit_kPa: number,
  pressure_kPa: number,
  absorbed_W_m2: number,
  heat_mol_m2_s: number,
  vapour_mol_m2_s: number,
): { readonly flux_mol_m2_s: number; readonly surfaceAirDifference_C: number } {
  const latent = molarLatentHeat_J_mol(air_C);
  const slope = slopeFrom_kPa_per_C(saturation_kPa(air_C), air_C) / pressure_kPa;
  const dry = (molarHeatCapacity_J_mol_C * heat_mol_m2_s * deficit_kPa) / pressure_kPa;
  // γ* grows without bound as the surface closes; multiplied through by gv the closed surface is simply 0.
  const bottom = slope * vapour_mol_m2_s + (molarHeatCapacity_J_mol_C / latent) * heat_mol_m2_s;
  const flux = (vapour_mol_m2_s * (slope * absorbed_W_m2 + dry)) / (bottom * latent);
  return {
    flux_mol_m2_s: flux,
    surfaceAirDifference_C: (absorbed_W_m2 - latent * flux) / (molarHeatCapacity_J_mol_C * heat_mol_m2_s),
  };
}

/**
 * Water that a leaf loses in a room: Penman-Monteith at the scale of the leaf.
 *
 * g_Hr = 2 gb + 2 gR; s = Δ/P; γ* = (29.3/λ) g_Hr/gv; E = [s Q_abs + 29.3 g_Hr D/P] / [(s + γ*) λ].
 * Reference ET is of no use indoors: air hardly moves, the light is a lamp's or a window's, and a plant is no sward.
 *
 * @param leaf air temperature [°C], -5 to 60; humidity [share], 0.01 to 1.05; absorbed short-wave light [W m⁻²], 0 to 1000; air speed [m s⁻¹], 0 to 20; characteristic dimension [m], 0.001 to 1; stomatal conductance of the lower and upper side [mol m⁻² s⁻¹], 0 to 3; elevation [m], -430 to 6000, or pressure [kPa], 45 to 108; leaf-to-air difference for free convection [°C], 0.1 to 30
 * @returns conductances [mol m⁻² s⁻¹], transpiration per one-sided leaf area [mol m⁻² s⁻¹ and g m⁻² h⁻¹], leaf minus air temperature [°C]
 * @throws QuantityError outside those ranges
 * @source CampbellNorman1998
 * @see checks/air-water.json 107-111
 * @example leafTranspiration({ air_C: 22, humidity_frac: 0.5, absorbed_W_m2: 45, airSpeed_m_s: 0.1, dimension_m: 0.03, lowerStomata_mol_m2_s: 0.16, upperStomata_mol_m2_s: 0.04, pressure_kPa: 101.3 }).transpiration_g_m2_h // 102.3
 */
export function leafTranspiration(leaf: {
  readonly air_C: number;
  readonly humidity_frac: number;
  readonly absorbed_W_m2: number;
  readonly airSpeed_m_s: number;
  readonly dimension_m: number;
  readonly lowerStomata_mol_m2_s: number;
  readonly upperStomata_mol_m2_s: number;
  readonly pressure_kPa?: number;
  readonly elevation_m?: number;
  readonly leafAirDifference_C?: number;
}): {
  readonly boundary_mol_m2_s: number;
  readonly radiative_mol_m2_s: number;
  readonly vapour_mol_m2_s: number;
  readonly transpiration_mol_m2_s: number;
  readonly transpiration_g_m2_h: number;
  readonly leafMinusAirDifference_C: number;
} {
  const { air_C, humidity_frac, absorbed_W_m2, elevation_m = 0 } = leaf;
  within("air_C", air_C, -5, 60);
  within("humidity_frac", humidity_frac, 0.01, 1.05);
  within("absorbed_W_m2", absorbed_W_m2, 0, 1000);
  within("elevation_m", elevation_m, -430, 6000);
  const { pressure_kPa = pressureAt(elevation_m) } = leaf;
  within("pressure_kPa", pressure_kPa, 45, 108);
  const boundary_mol_m2_s = boundaryConductance_mol_m2_s(leaf);
  const radiative_mol_m2_s = radiativeConductance_mol_m2_s(air_C);
  const vapour_mol_m2_s = leafVapourConductance_mol_m2_s({ ...leaf, boundary_mol_m2_s });
  const heat = 2 * (boundary_mol_m2_s + radiative_mol_m2_s);
  const deficit = saturation_kPa(air_C) * (1 - Math.min(1, humidity_frac));
  const { flux_mol_m2_s, surfaceAirDifference_C } = combination(
    air_C,
    deficit,
    pressure_kPa,
    absorbed_W_m2,
    heat,
    vapour_mol_m2_s,
  );
  return {
    boundary_mol_m2_s,
    radiative_mol_m2_s,
    vapour_mol_m2_s,
    transpiration_mol_m2_s: flux_mol_m2_s,
    transpiration_g_m2_h: flux_mol_m2_s * waterOfMole_g_mol * 3600,
    leafMinusAirDifference_C: surfaceAirDifference_C,
  };
}

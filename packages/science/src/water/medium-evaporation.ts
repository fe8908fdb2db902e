import { pressure_kPa as pressureAt, saturation_kPa } from "../air/kernel.ts";
import { within } from "../errors/index.ts";
import {
  boundaryConductance_mol_m2_s,
  characteristicDimension_m,
  radiativeConductance_mol_m2_s,
  vapourOverHeat,
} from "./leaf-conductance.ts";
import { combination, waterOfMole_g_mol } from "./leaf-transpiration.ts";

/**
 * Water that evaporates from the wet surface of the medium in a room.
 *
 * The leaf's equation with one side, no stomata, and d = 0.72 × pot diameter; times how wet the surface still is and
 * times the share that neither moss, grit nor leaves cover. For a cut-back tree this is most of the use.
 *
 * @param pot diameter at the surface [cm], 1 to 100; air temperature [°C], -5 to 60; humidity [share], 0.01 to 1.05; absorbed light [W m⁻²], 0 to 1000, 0 unless given; air speed [m s⁻¹], 0 to 20, 0.08 unless given; surface-to-air difference [°C], 0.1 to 30; evaporation reduction, 0 to 1, 1 (wet) unless given; covered share, 0 to 1; elevation [m] or pressure [kPa]
 * @returns evaporation [mm d⁻¹] of the surface and [g d⁻¹] of the pot
 * @throws QuantityError outside those ranges
 * @source CampbellNorman1998
 * @example mediumEvaporation({ potDiameter_cm: 12, air_C: 22, humidity_frac: 0.5 }).evaporation_g_d // 17.0
 */
export function mediumEvaporation(pot: {
  readonly potDiameter_cm: number;
  readonly air_C: number;
  readonly humidity_frac: number;
  readonly absorbed_W_m2?: number;
  readonly airSpeed_m_s?: number;
  readonly leafAirDifference_C?: number;
  readonly evaporationReduction?: number;
  readonly covered_frac?: number;
  readonly pressure_kPa?: number;
  readonly elevation_m?: number;
}): { readonly evaporation_mm_d: number; readonly evaporation_g_d: number } {
  const { potDiameter_cm, air_C, humidity_frac, absorbed_W_m2 = 0, airSpeed_m_s = 0.08 } = pot;
  const { leafAirDifference_C = 1, evaporationReduction = 1, covered_frac = 0, elevation_m = 0 } = pot;
  within("potDiameter_cm", potDiameter_cm, 1, 100);
  within("air_C", air_C, -5, 60);
  within("humidity_frac", humidity_frac, 0.01, 1.05);
  within("absorbed_W_m2", absorbed_W_m2, 0, 1000);
  within("evaporationReduction", evaporationReduction, 0, 1);
  within("covered_frac", covered_frac, 0, 1);
  within("elevation_m", elevation_m, -430, 6000);
  const { pressure_kPa = pressureAt(elevation_m) } = pot;
  within("pressure_kPa", pressure_kPa, 45, 108);
  const dimension_m = characteristicDimension_m(potDiameter_cm);
  const boundary = boundaryConductance_mol_m2_s({ airSpeed_m_s, dimension_m, leafAirDifference_C });
  const { flux_mol_m2_s } = combination(
    air_C,
    saturation_kPa(air_C) * (1 - Math.min(1, humidity_frac)),
    pressure_kPa,
    absorbed_W_m2,
    boundary + radiativeConductance_mol_m2_s(air_C),
    vapourOverHeat * boundary,
  );
  const wet_mm_d = flux_mol_m2_s * waterOfMole_g_mol * 86.4;
  const evaporation_mm_d = wet_mm_d * evaporationReduction * (1 - covered_frac);
  const surface_m2 = (Math.PI / 4) * (potDiameter_cm / 100) ** 2;
  return { evaporation_mm_d, evaporation_g_d: evaporation_mm_d * surface_m2 * 1000 };
}

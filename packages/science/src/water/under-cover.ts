import { gamma_kPa_per_C, saturation_kPa, slopeFrom_kPa_per_C } from "../air/kernel.ts";
import { within } from "../errors/index.ts";

/**
 * Reference evapotranspiration under plastic or glass without ventilation.
 *
 * Penman-Monteith with the resistance of the air fixed at 150 s m⁻¹ and that of the sward at 70:
 * [0.408 Δ Rn + γ 1248/(T + 273) (es − ea)] / [Δ + 1.467 γ], not below 0
 *
 * @param day net radiation under the cover [MJ m⁻² d⁻¹], -10 to 40; mean temperature [°C], -40 to 60; saturation and actual vapour pressure [kPa], 0 to 20; pressure [kPa], 45 to 108
 * @returns depth of water [mm d⁻¹]
 * @throws QuantityError outside those ranges
 * @source Fernandez2010
 * @see checks/air-water.json 083
 * @example referenceEtUnderCover_mm_d({ netRadiation_MJ_m2_d: 8, air_C: 22, saturation_kPa: 2.8, vapourPressure_kPa: 1.6, pressure_kPa: 101.3 }) // 3.339
 */
export function referenceEtUnderCover_mm_d(day: {
  readonly netRadiation_MJ_m2_d: number;
  readonly air_C: number;
  readonly saturation_kPa: number;
  readonly vapourPressure_kPa: number;
  readonly pressure_kPa: number;
}): number {
  within("netRadiation_MJ_m2_d", day.netRadiation_MJ_m2_d, -10, 40);
  within("air_C", day.air_C, -40, 60);
  within("saturation_kPa", day.saturation_kPa, 0, 20);
  within("vapourPressure_kPa", day.vapourPressure_kPa, 0, 20);
  within("pressure_kPa", day.pressure_kPa, 45, 108);
  const slope = slopeFrom_kPa_per_C(saturation_kPa(day.air_C), day.air_C);
  const gamma = gamma_kPa_per_C(day.pressure_kPa);
  const dryAir = ((gamma * 1248) / (day.air_C + 273)) * (day.saturation_kPa - day.vapourPressure_kPa);
  return Math.max(0, (0.408 * slope * day.netRadiation_MJ_m2_d + dryAir) / (slope + 1.467 * gamma));
}

/**
 * Latent heat of a bench of touching plants in a greenhouse, two-term fit.
 *
 * λE = A (1 − exp(−K·LAI)) G + B·LAI·D. A and B must be refitted to each crop and climate.
 *
 * @param bench global radiation at the plants [W m⁻²], 0 to 1400; leaf area index, 0 to 10; deficit [kPa], 0 to 10; A, 0.1 to 0.7, 0.4 unless given; B [W m⁻² kPa⁻¹], 10 to 50, 25 unless given; K, 0.3 to 1, 0.64 unless given
 * @returns heat [W m⁻²] of bench area, and water [g m⁻² h⁻¹] at 2.45 MJ kg⁻¹
 * @throws QuantityError outside those ranges
 * @source Baille1994; the middle values of A and B our assumption
 * @example benchTranspiration({ global_W_m2: 200, lai: 2, deficit_kPa: 1 }).latent_W_m2 // 107.8
 */
export function benchTranspiration(bench: {
  readonly global_W_m2: number;
  readonly lai: number;
  readonly deficit_kPa: number;
  readonly radiationShare?: number;
  readonly dryAirTerm_W_m2_kPa?: number;
  readonly extinction?: number;
}): { readonly latent_W_m2: number; readonly transpiration_g_m2_h: number } {
  const { global_W_m2, lai, deficit_kPa } = bench;
  const { radiationShare = 0.4, dryAirTerm_W_m2_kPa = 25, extinction = 0.64 } = bench;
  within("global_W_m2", global_W_m2, 0, 1400);
  within("lai", lai, 0, 10);
  within("deficit_kPa", deficit_kPa, 0, 10);
  within("radiationShare", radiationShare, 0.1, 0.7);
  within("dryAirTerm_W_m2_kPa", dryAirTerm_W_m2_kPa, 10, 50);
  within("extinction", extinction, 0.3, 1);
  const caught = 1 - Math.exp(-extinction * lai);
  const latent_W_m2 = radiationShare * caught * global_W_m2 + dryAirTerm_W_m2_kPa * lai * deficit_kPa;
  return { latent_W_m2, transpiration_g_m2_h: (latent_W_m2 * 3600) / 2450 };
}

/**
 * Stomatal resistance of a crop in a closed room, to cross-check the leaf's conductance.
 *
 * rs = 60 (1500 + Q) / (200 + Q); fitted to lettuce
 *
 * @param ppfd_umol_m2_s light [µmol m⁻² s⁻¹], 0 to 2500
 * @returns resistance [s m⁻¹]; falls with light
 * @throws QuantityError outside that range
 * @source Graamans2017
 * @example closedRoomResistance_s_m(200) // 255
 */
export function closedRoomResistance_s_m(ppfd_umol_m2_s: number): number {
  within("ppfd_umol_m2_s", ppfd_umol_m2_s, 0, 2500);
  return (60 * (1500 + ppfd_umol_m2_s)) / (200 + ppfd_umol_m2_s);
}

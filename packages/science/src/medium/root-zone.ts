import { within } from "../errors/index.ts";

/**
 * Temperature of a pot into which water was poured.
 *
 * T = (Cm Tm + Cw Tw) / (Cm + Cw); Cm = V (BD cs + 4.18 θ), Cw = 4.18 mL
 *
 * @param pot volume of the medium [mL], 10 to 1e6; dry density [g mL⁻¹], 0.02 to 2; water in it, 0 to 1; its temperature and that of the water [°C], 0 to 60; water [mL], 0 to 1e5; heat of the solids [J g⁻¹ K⁻¹], 0.5 to 3, 1.9 organic (0.85 mineral) unless given
 * @returns temperature after mixing [°C]
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of heat
 * @see checks/medium-repot.json 093
 * @example pouredTemperature_C({ medium_mL: 500, bulkDensity_g_mL: 0.12, water_frac: 0.35, medium_C: 20, poured_mL: 120, water_C: 8 }) // 15.5
 */
export function pouredTemperature_C(pot: {
  readonly medium_mL: number;
  readonly bulkDensity_g_mL: number;
  readonly water_frac: number;
  readonly medium_C: number;
  readonly poured_mL: number;
  readonly water_C: number;
  readonly solidsHeat_J_g_K?: number;
}): number {
  const { medium_mL, bulkDensity_g_mL, water_frac, medium_C, poured_mL, water_C } = pot;
  const solidsHeat_J_g_K = pot.solidsHeat_J_g_K ?? 1.9;
  within("medium_mL", medium_mL, 10, 1e6);
  within("bulkDensity_g_mL", bulkDensity_g_mL, 0.02, 2);
  within("water_frac", water_frac, 0, 1);
  within("medium_C", medium_C, 0, 60);
  within("poured_mL", poured_mL, 0, 1e5);
  within("water_C", water_C, 0, 60);
  within("solidsHeat_J_g_K", solidsHeat_J_g_K, 0.5, 3);
  const medium = medium_mL * (bulkDensity_g_mL * solidsHeat_J_g_K + 4.18 * water_frac);
  const water = 4.18 * poured_mL;
  return (medium * medium_C + water * water_C) / (medium + water);
}

/**
 * How long cold water must stand in a room until it is warm enough.
 *
 * t = τ ln((Tr − T0) / (Tr − T)), τ about an hour for a can of some litres
 *
 * @param water temperature now and wanted [°C], 0 to 60; of the room [°C], -10 to 50, above the wanted; time of a fall to a third and a little [h], 0.1 to 12, 1 unless given
 * @returns minutes; 0 where it is warm enough
 * @throws QuantityError outside those ranges, or when the room is too cold for it
 * @source our assumption; Newton's law of cooling
 * @example standingTime_min({ water_C: 9, wanted_C: 15, room_C: 21 }) // 41.6
 */
export function standingTime_min(water: {
  readonly water_C: number;
  readonly wanted_C: number;
  readonly room_C: number;
  readonly pace_h?: number;
}): number {
  const { water_C, wanted_C, room_C, pace_h = 1 } = water;
  within("water_C", water_C, 0, 60);
  within("wanted_C", wanted_C, 0, 60);
  within("room_C", room_C, -10, 50);
  within("pace_h", pace_h, 0.1, 12);
  if (water_C >= wanted_C) return 0;
  within("room_C", room_C, wanted_C + 0.5, 50);
  return 60 * pace_h * Math.log((room_C - water_C) / (room_C - wanted_C));
}

/**
 * What a temperature does to roots of warm-country plants.
 *
 * below 12 no growth, below 15 slow, 20 to 28 is the aim; above 35 less growth, from 40 killed if it lasts over 4 h, from 50
 * killed in about 4 h, from 60 in minutes
 *
 * @param rootZone_C temperature of the medium [°C], -20 to 90
 * @returns the class
 * @throws QuantityError outside that range
 * @source HandreckBlack1984; the lower limits are our assumption
 * @see checks/medium-repot.json 091
 * @example rootZoneClass(42) // "killed if longer than about 4 h"
 */
export function rootZoneClass(
  rootZone_C: number,
):
  | "no growth"
  | "slow"
  | "good"
  | "growth reduced"
  | "killed if longer than about 4 h"
  | "killed in about 4 h"
  | "killed in minutes" {
  within("rootZone_C", rootZone_C, -20, 90);
  if (rootZone_C < 12) return "no growth";
  if (rootZone_C < 15) return "slow";
  if (rootZone_C <= 35) return "good";
  if (rootZone_C < 40) return "growth reduced";
  if (rootZone_C < 50) return "killed if longer than about 4 h";
  return rootZone_C < 60 ? "killed in about 4 h" : "killed in minutes";
}

/**
 * Growth of peppers by the warmth of their roots, as a share of the best.
 *
 * shoots: rising from 10 °C, best from 24 to 30, falling to 40; fruit: best at 30. Straight lines between.
 *
 * @param rootZone_C temperature of the medium [°C], -20 to 90
 * @returns shares for shoots and for fruit
 * @throws QuantityError outside that range
 * @source GosselinTrudel1986 for where the best lies; the lines between are our assumption
 * @see checks/medium-repot.json 090
 * @example rootZoneGrowth(18).shoot_frac // 0.571
 */
export function rootZoneGrowth(rootZone_C: number): {
  readonly shoot_frac: number;
  readonly fruit_frac: number;
} {
  within("rootZone_C", rootZone_C, -20, 90);
  const rise = (best: number) => (rootZone_C - 10) / (best - 10);
  const fall = (40 - rootZone_C) / 10;
  const share = (best: number): number => Math.max(0, Math.min(1, rise(best), fall));
  return { shoot_frac: share(24), fruit_frac: share(30) };
}

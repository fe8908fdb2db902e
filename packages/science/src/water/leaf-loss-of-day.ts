import { saturation_kPa } from "../air/kernel.ts";
import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { absorbedFromLamp_W_m2 } from "./absorbed-light.ts";
import { type WaterSettings, waterAssumptions } from "./assumptions.ts";
import { stomatalConductance_mol_m2_s } from "./leaf-conductance.ts";
import { leafTranspiration } from "./leaf-transpiration.ts";

/**
 * Water that all leaves of an indoor plant lose in a day: so many hours of light, the rest of the day dark.
 *
 * area × (hours lit × E(light) + hours dark × E(dark)); the leaf-to-air deficit is taken as the air's, as an unstressed
 * leaf in a room is within about 2 °C of the air. Leaves shade each other: give the light at the leaves, not above them.
 *
 * @param plant leaf area, one side [m²], 0 to 5; mean light while lit [µmol m⁻² s⁻¹], 0 to 2500; hours lit [h], 0 to 24; air by day and by night: temperature [°C], -5 to 60, and humidity [share], 0.01 to 1.05; leaf dimension [m], 0.001 to 1, 0.03 unless given; air speed [m s⁻¹], 0 to 20; stress coefficient, 0 to 1; elevation [m]; any of the field's assumptions
 * @returns water [g d⁻¹], and how much of it by day and by night
 * @throws QuantityError outside those ranges
 * @source CampbellNorman1998; stomata our assumption
 * @example leafLossOfDay({ leafArea_m2: 0.03, ppfd_umol_m2_s: 200, lit_h: 14, airDay_C: 22, humidityDay_frac: 0.5, airNight_C: 18, humidityNight_frac: 0.55 }).use_g_d // 42.3
 */
export function leafLossOfDay(
  plant: {
    readonly leafArea_m2: number;
    readonly ppfd_umol_m2_s: number;
    readonly lit_h: number;
    readonly airDay_C: number;
    readonly humidityDay_frac: number;
    readonly airNight_C: number;
    readonly humidityNight_frac: number;
    readonly dimension_m?: number;
    readonly airSpeed_m_s?: number;
    readonly stressCoefficient?: number;
    readonly elevation_m?: number;
  } & WaterSettings,
): { readonly use_g_d: number; readonly day_g_d: number; readonly night_g_d: number } {
  const {
    leafArea_m2,
    ppfd_umol_m2_s,
    lit_h,
    dimension_m = 0.03,
    stressCoefficient = 1,
    elevation_m = 0,
  } = plant;
  within("leafArea_m2", leafArea_m2, 0, 5);
  within("lit_h", lit_h, 0, 24);
  within("airDay_C", plant.airDay_C, -5, 60);
  within("airNight_C", plant.airNight_C, -5, 60);
  within("humidityDay_frac", plant.humidityDay_frac, 0.01, 1.05);
  within("humidityNight_frac", plant.humidityNight_frac, 0.01, 1.05);
  const set = valuesOf(waterAssumptions, plant);
  const { airSpeed_m_s = set.airSpeedStill_m_s } = plant;
  const lossPerHour = (air_C: number, humidity_frac: number, light: number): number => {
    const leafDeficit_kPa = Math.min(10, saturation_kPa(air_C) * (1 - Math.min(1, humidity_frac)));
    const stomata = stomatalConductance_mol_m2_s({
      ...plant,
      ppfd_umol_m2_s: light,
      leafDeficit_kPa,
      stressCoefficient,
    });
    return leafTranspiration({
      air_C,
      humidity_frac,
      absorbed_W_m2: absorbedFromLamp_W_m2({ ...plant, ppfd_umol_m2_s: light }),
      airSpeed_m_s,
      dimension_m,
      lowerStomata_mol_m2_s: set.stomatalLower_frac * stomata,
      upperStomata_mol_m2_s: (1 - set.stomatalLower_frac) * stomata,
      elevation_m,
    }).transpiration_g_m2_h;
  };
  const day_g_d = leafArea_m2 * lit_h * lossPerHour(plant.airDay_C, plant.humidityDay_frac, ppfd_umol_m2_s);
  const night_g_d = leafArea_m2 * (24 - lit_h) * lossPerHour(plant.airNight_C, plant.humidityNight_frac, 0);
  return { use_g_d: day_g_d + night_g_d, day_g_d, night_g_d };
}

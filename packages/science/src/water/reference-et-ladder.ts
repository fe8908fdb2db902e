import { dailyVapourPressure, type VapourPressureRoute } from "../air/index.ts";
import { within } from "../errors/index.ts";
import {
  clearSkyRadiation_MJ_m2,
  daylight_h,
  extraterrestrialRadiation_MJ_m2_d,
  solarFromSunshine_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
} from "../sun/index.ts";
import { hargreavesEt_mm_d } from "./hargreaves.ts";
import { referenceEtDaily_mm_d } from "./reference-et.ts";

/** What may be known of a day. Only the two temperatures, the place and the day are demanded. */
export type KnownOfDay = {
  readonly airMax_C: number;
  readonly airMin_C: number;
  readonly latitude_deg: number;
  readonly elevation_m: number;
  readonly dayOfYear_d: number;
  readonly solar_MJ_m2_d?: number;
  readonly sunshine_h?: number;
  readonly dewPoint_C?: number;
  readonly humidityMax_frac?: number;
  readonly humidityMin_frac?: number;
  readonly humidityMean_frac?: number;
  readonly wind2m_m_s?: number;
  readonly arid?: boolean;
  readonly coastal?: boolean;
  /** with temperatures alone: is the day part of a sum over five days or more? */
  readonly forSum?: boolean;
};

export type LadderResult = {
  readonly referenceEt_mm_d: number;
  readonly method: "Penman-Monteith" | "reduced-set Penman-Monteith" | "Hargreaves-Samani";
  readonly solarRoute: "measured" | "sunshine" | "temperature range";
  readonly vapourPressureRoute: VapourPressureRoute;
  readonly windRoute: "measured" | "held at 0.5 m s⁻¹" | "taken as 2 m s⁻¹";
  /** relative standard deviation to carry */
  readonly sd_frac: number;
  readonly notes: readonly string[];
};

// Relative standard deviations: the first two are our assumption, the others rest on FAO-56 example 20 and
// two published comparisons that were seen as abstracts.
const sdOfSolar = { measured: 0.08, sunshine: 0.1, "temperature range": 0.175 } as const;
const sdOfNoHumidity = 0.05;
const sdOfNoWind = 0.07;
const sdOfHargreaves = 0.225;

/**
 * Reference evapotranspiration of a day from whatever is known of it, with the method and how sure it is.
 *
 * Ladder: all known, Penman-Monteith; solar from sunshine, else from the temperature range; vapour pressure from the
 * best humidity there is, else from the lowest temperature; wind 2 m s⁻¹ when unknown, never below 0.5; with temperatures
 * alone Hargreaves-Samani for sums of five days or more, else reduced-set Penman-Monteith. Nothing is filled in silently:
 * each substitute is a note.
 *
 * @param day as in the type; temperatures [°C], -40 to 60; latitude [°], -90 to 90; elevation [m], -430 to 6000; day of the year, 1 to 366; wind at 2 m [m s⁻¹], 0 to 40; solar [MJ m⁻² d⁻¹], 0 to 50; sunshine [h], 0 to 24; dew point [°C], -40 to 60; humidities [share], 0.01 to 1.05
 * @returns ETo [mm d⁻¹], method, routes, relative standard deviation, notes
 * @throws QuantityError outside those ranges
 * @source FAO56 chapter 3 for the substitutes; their standard deviations our assumption
 * @see checks/air-water.json 052-054
 * @example referenceEtFromKnown({ airMax_C: 26.6, airMin_C: 14.8, latitude_deg: 45.72, elevation_m: 200, dayOfYear_d: 196 }).referenceEt_mm_d // 4.56
 */
export function referenceEtFromKnown(day: KnownOfDay): LadderResult {
  const { airMax_C, airMin_C, latitude_deg, elevation_m, dayOfYear_d } = day;
  if (day.solar_MJ_m2_d !== undefined) within("solar_MJ_m2_d", day.solar_MJ_m2_d, 0, 50);
  if (day.sunshine_h !== undefined) within("sunshine_h", day.sunshine_h, 0, 24);
  within("elevation_m", elevation_m, -430, 6000);
  const extraterrestrial_MJ_m2_d = extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d });
  const notes: string[] = [];
  const vapour = dailyVapourPressure(day);
  const [solar_MJ_m2_d, solarRoute] = solarOf(day, extraterrestrial_MJ_m2_d);
  const [wind2m_m_s, windRoute] = windOf(day.wind2m_m_s);
  if (solarRoute === "sunshine") notes.push("solar radiation computed from hours of sunshine");
  if (solarRoute === "temperature range") notes.push("solar radiation estimated from the temperature range");
  if (vapour.route === "lowest temperature")
    notes.push("humidity not known: dew point taken from the lowest temperature");
  if (windRoute !== "measured") notes.push(`wind ${windRoute}`);

  const onlyTemperatures =
    solarRoute === "temperature range" &&
    vapour.route === "lowest temperature" &&
    day.wind2m_m_s === undefined;
  const routes = { solarRoute, vapourPressureRoute: vapour.route, windRoute, notes };
  if (onlyTemperatures && day.forSum === true) {
    return {
      referenceEt_mm_d: hargreavesEt_mm_d({ airMax_C, airMin_C, extraterrestrial_MJ_m2_d }),
      method: "Hargreaves-Samani",
      sd_frac: sdOfHargreaves,
      ...routes,
      notes: ["only temperatures are known"],
    };
  }
  const { vapourPressure_kPa } = vapour;
  return {
    referenceEt_mm_d: referenceEtDaily_mm_d({
      airMax_C,
      airMin_C,
      vapourPressure_kPa,
      solar_MJ_m2_d,
      wind2m_m_s,
      latitude_deg,
      elevation_m,
      dayOfYear_d,
    }),
    method: onlyTemperatures ? "reduced-set Penman-Monteith" : "Penman-Monteith",
    sd_frac:
      sdOfSolar[solarRoute] +
      (vapour.route === "lowest temperature" ? sdOfNoHumidity : 0) +
      (day.wind2m_m_s === undefined ? sdOfNoWind : 0),
    ...routes,
  };
}

function solarOf(
  day: KnownOfDay,
  extraterrestrial_MJ_m2_d: number,
): readonly [number, LadderResult["solarRoute"]] {
  if (day.solar_MJ_m2_d !== undefined) return [day.solar_MJ_m2_d, "measured"];
  if (day.sunshine_h !== undefined) {
    const sun = { extraterrestrial_MJ_m2_d, sunshine_h: day.sunshine_h, daylight_h: daylight_h(day) };
    return [solarFromSunshine_MJ_m2_d(sun), "sunshine"];
  }
  const estimate = solarFromTemperatureRange_MJ_m2_d({
    airMax_C: day.airMax_C,
    airMin_C: day.airMin_C,
    extraterrestrial_MJ_m2_d,
    clearSky_MJ_m2_d: clearSkyRadiation_MJ_m2({
      extraterrestrial_MJ_m2: extraterrestrial_MJ_m2_d,
      elevation_m: day.elevation_m,
    }),
    temperatureRangeCoefficient: day.coastal === true ? 0.19 : 0.16,
  });
  return [estimate, "temperature range"];
}

function windOf(wind2m_m_s: number | undefined): readonly [number, LadderResult["windRoute"]] {
  if (wind2m_m_s === undefined) return [2, "taken as 2 m s⁻¹"];
  within("wind2m_m_s", wind2m_m_s, 0, 40);
  return wind2m_m_s < 0.5 ? [0.5, "held at 0.5 m s⁻¹"] : [wind2m_m_s, "measured"];
}

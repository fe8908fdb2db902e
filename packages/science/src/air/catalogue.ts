import { byName, describeField, single } from "../catalogue/describe.ts";
import { anyNumber, number, numbers, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  airPressure_kPa,
  dailyVapourPressure,
  dailyVapourPressureDeficit_kPa,
  dewPoint_C,
  leafVapourPressureDeficit_kPa,
  meanSaturationVapourPressure_kPa,
  meanVapourPressureDeficit_kPa,
  psychrometricConstant_kPa_per_C,
  saturationSlope_kPa_per_C,
  saturationVapourPressure_kPa,
  screenDewPoint,
  screenHumidity,
  screenSolar,
  screenTemperatures,
  screenWind,
  vapourPressure_kPa,
  vapourPressureDeficit_kPa,
  vapourPressureFromDewPoint_kPa,
  vapourPressureFromHumidityMax_kPa,
  vapourPressureFromHumidityMean_kPa,
  vapourPressureFromHumidityRange_kPa,
  vapourPressureFromMinimum_kPa,
  vapourPressureFromWetBulb_kPa,
  wetBulb_C,
  wetBulbByFit_C,
  windAt2m_m_s,
} from "./index.ts";

const describe = describeField("air");

export const airCatalogue: readonly ScienceFunction[] = [
  describe("dailyVapourPressure", byName(dailyVapourPressure), {
    what: "Vapour pressure of a day by the best route that the measurements allow, with the name of the route.",
    source: "FAO56 eqs 14-19 and 48",
    inputs: [
      number("airMax_C", -40, 60, 25),
      number("airMin_C", -40, 60, 15),
      optional(number("dewPoint_C", -40, 60, 10)),
      optional(number("humidityMax_frac", 0.01, 1.05, 0.8)),
      optional(number("humidityMin_frac", 0.01, 1.05, 0.45)),
      optional(number("humidityMean_frac", 0.01, 1.05, 0.6)),
      optional(yesOrNo("arid", false)),
    ],
    fields: ["vapourPressure_kPa", "route"],
  }),
  describe("dewPoint_C", single(dewPoint_C), {
    what: "Dew point of air, the inverse of the saturation curve.",
    source: "FAO56 eq. 11, solved for the temperature",
    inputs: [number("vapourPressure_kPa", 0.015, 20, 1.2)],
  }),
  describe("airPressure_kPa", single(airPressure_kPa), {
    what: "Mean air pressure at a height above the sea.",
    source: "FAO56 eq. 7",
    inputs: [number("elevation_m", -430, 6000, 100)],
  }),
  describe("psychrometricConstant_kPa_per_C", single(psychrometricConstant_kPa_per_C), {
    what: "Psychrometric constant of the reference ET equations.",
    source: "FAO56 eq. 8",
    inputs: [number("pressure_kPa", 45, 108, 101.3)],
  }),
  describe("saturationVapourPressure_kPa", single(saturationVapourPressure_kPa), {
    what: "Saturation vapour pressure over a water surface (Tetens form).",
    source: "FAO56 eq. 11",
    inputs: [number("air_C", -40, 60, 20)],
  }),
  describe("saturationSlope_kPa_per_C", single(saturationSlope_kPa_per_C), {
    what: "Slope of the saturation vapour pressure curve.",
    source: "FAO56 eq. 13",
    inputs: [number("air_C", -40, 60, 20)],
  }),
  describe("meanSaturationVapourPressure_kPa", byName(meanSaturationVapourPressure_kPa), {
    what: "Saturation vapour pressure of a day: the mean of the values at its highest and lowest temperature.",
    source: "FAO56 eq. 12",
    inputs: [number("airMax_C", -40, 60, 25), number("airMin_C", -40, 60, 15)],
  }),
  describe("screenTemperatures", byName(screenTemperatures), {
    what: "Look over the highest and lowest temperature of a day.",
    source: "our assumption",
    inputs: [anyNumber("airMax_C", 25), anyNumber("airMin_C", 15), yesOrNo("indoors", true)],
  }),
  describe("screenHumidity", single(screenHumidity), {
    what: "Look over relative humidities in hourly order.",
    source: "our assumption",
    inputs: [numbers("humidity_frac", -Infinity, Infinity, [0.4, 0.5])],
  }),
  describe("screenDewPoint", byName(screenDewPoint), {
    what: "Look over a dew point beside the day's temperatures.",
    source: "our assumption",
    inputs: [anyNumber("dewPoint_C", 10), anyNumber("airMax_C", 25), anyNumber("airMin_C", 15)],
  }),
  describe("screenSolar", byName(screenSolar), {
    what: "Look over a day's solar radiation beside what the sun could give.",
    source: "our assumption",
    inputs: [
      anyNumber("solar_MJ_m2_d", 20),
      anyNumber("extraterrestrial_MJ_m2_d", 40),
      anyNumber("clearSky_MJ_m2_d", 30),
    ],
  }),
  describe("screenWind", single(screenWind), {
    what: "Look over a day's mean wind speed.",
    source: "our assumption",
    inputs: [anyNumber("wind_m_s", 2)],
  }),
  describe("vapourPressureDeficit_kPa", byName(vapourPressureDeficit_kPa), {
    what: "Vapour pressure deficit of the air at one moment: how much more vapour it could hold.",
    source: "FAO56 eqs 10 and 11",
    inputs: [number("air_C", -40, 60, 20), number("humidity_frac", 0.01, 1.05, 0.5)],
  }),
  describe("dailyVapourPressureDeficit_kPa", byName(dailyVapourPressureDeficit_kPa), {
    what: "Vapour pressure deficit of a day from its temperature range and its vapour pressure.",
    source: "FAO56 eqs 12 and 17",
    inputs: [
      number("airMax_C", -40, 60, 25),
      number("airMin_C", -40, 60, 15),
      number("vapourPressure_kPa", 0, 20, 1.2),
    ],
  }),
  describe("leafVapourPressureDeficit_kPa", byName(leafVapourPressureDeficit_kPa), {
    what: "Vapour pressure deficit from leaf to air: what drives water out of the leaf.",
    source: "NelsonBugbee2015",
    inputs: [number("leaf_C", -40, 60, 22), number("vapourPressure_kPa", 0, 20, 1.2)],
  }),
  describe("meanVapourPressureDeficit_kPa", byName(meanVapourPressureDeficit_kPa), {
    what: "Mean vapour pressure deficit over readings in equal steps: the mean of the deficits, never the deficit of the means.",
    source: "FAO56 eqs 10 and 11",
    inputs: [numbers("air_C", -40, 60, [18, 24]), numbers("humidity_frac", 0.01, 1.05, [0.6, 0.4])],
  }),
  describe("vapourPressure_kPa", byName(vapourPressure_kPa), {
    what: "Vapour pressure of air from its temperature and relative humidity at the same moment.",
    source: "FAO56 eq. 10",
    inputs: [number("air_C", -40, 60, 20), number("humidity_frac", 0.01, 1.05, 0.5)],
  }),
  describe("vapourPressureFromDewPoint_kPa", single(vapourPressureFromDewPoint_kPa), {
    what: "Vapour pressure from a measured dew point, the best of the daily routes.",
    source: "FAO56 eq. 14",
    inputs: [number("dewPoint_C", -40, 60, 10)],
  }),
  describe("vapourPressureFromHumidityRange_kPa", byName(vapourPressureFromHumidityRange_kPa), {
    what: "Daily vapour pressure from the day's highest and lowest relative humidity.",
    source: "FAO56 eq. 17",
    inputs: [
      number("airMax_C", -40, 60, 25),
      number("airMin_C", -40, 60, 15),
      number("humidityMax_frac", 0.01, 1.05, 0.8),
      number("humidityMin_frac", 0.01, 1.05, 0.45),
    ],
  }),
  describe("vapourPressureFromHumidityMax_kPa", byName(vapourPressureFromHumidityMax_kPa), {
    what: "Daily vapour pressure from the lowest temperature and the highest humidity; for sensors that err when dry.",
    source: "FAO56 eq. 18",
    inputs: [number("airMin_C", -40, 60, 15), number("humidityMax_frac", 0.01, 1.05, 0.8)],
  }),
  describe("vapourPressureFromHumidityMean_kPa", byName(vapourPressureFromHumidityMean_kPa), {
    what: "Daily vapour pressure from the mean relative humidity; the weakest of the humidity routes.",
    source: "FAO56 eq. 19",
    inputs: [
      number("airMax_C", -40, 60, 25),
      number("airMin_C", -40, 60, 15),
      number("humidityMean_frac", 0.01, 1.05, 0.6),
    ],
  }),
  describe("vapourPressureFromMinimum_kPa", byName(vapourPressureFromMinimum_kPa), {
    what: "Daily vapour pressure when humidity was not measured: the dew point is taken as the night's lowest temperature.",
    source: "FAO56 eq. 48",
    inputs: [number("airMin_C", -40, 60, 15), yesOrNo("arid", false)],
  }),
  describe("vapourPressureFromWetBulb_kPa", byName(vapourPressureFromWetBulb_kPa), {
    what: "Vapour pressure from a dry and a wet bulb.",
    source: "FAO56 eq. 15",
    inputs: [
      number("air_C", -40, 60, 20),
      number("wetBulb_C", -40, 60, 14),
      number("pressure_kPa", 45, 108, 101.3),
      optional(number("psychrometer_per_C", 0.0005, 0.0015, 0.000662)),
    ],
  }),
  describe("wetBulb_C", byName(wetBulb_C), {
    what: "Wet bulb temperature: the psychrometer equation solved by bisection.",
    source: "FAO56 eq. 15, solved for the wet bulb",
    inputs: [
      number("air_C", -40, 60, 20),
      number("humidity_frac", 0.01, 1.05, 0.5),
      number("pressure_kPa", 45, 108, 101.3),
      optional(number("psychrometer_per_C", 0.0005, 0.0015, 0.000662)),
    ],
  }),
  describe("wetBulbByFit_C", byName(wetBulbByFit_C), {
    what: "Wet bulb temperature by an empirical fit, for when no pressure is known; at sea level, error -1 to +0.65 °C.",
    source: "Stull2011",
    inputs: [number("air_C", -20, 50, 20), number("humidity_frac", 0.05, 0.99, 0.5)],
  }),
  describe("windAt2m_m_s", byName(windAt2m_m_s), {
    what: "Wind speed at 2 m above grass from a reading at another height.",
    source: "FAO56 eq. 47",
    inputs: [number("wind_m_s", 0, 40, 2), number("height_m", 0.5, 100, 0.7)],
  }),
];

export { dailyVapourPressure, type VapourPressureRoute } from "./daily-vapour-pressure.ts";
export { dewPoint_C } from "./dew-point.ts";
export { airPressure_kPa, psychrometricConstant_kPa_per_C } from "./pressure.ts";
export {
  meanSaturationVapourPressure_kPa,
  saturationSlope_kPa_per_C,
  saturationVapourPressure_kPa,
} from "./saturation.ts";
export {
  type ScreeningNote,
  screenDewPoint,
  screenHumidity,
  screenSolar,
  screenTemperatures,
  screenWind,
} from "./screening.ts";
export { sources as airSources } from "./sources.ts";
export {
  vapourPressure_kPa,
  vapourPressureFromDewPoint_kPa,
  vapourPressureFromHumidityMax_kPa,
  vapourPressureFromHumidityMean_kPa,
  vapourPressureFromHumidityRange_kPa,
  vapourPressureFromMinimum_kPa,
} from "./vapour-pressure.ts";
export {
  dailyVapourPressureDeficit_kPa,
  leafVapourPressureDeficit_kPa,
  meanVapourPressureDeficit_kPa,
  vapourPressureDeficit_kPa,
} from "./vapour-pressure-deficit.ts";
export {
  psychrometerCoefficients_per_C,
  vapourPressureFromWetBulb_kPa,
  wetBulb_C,
  wetBulbByFit_C,
} from "./wet-bulb.ts";
export { windAt2m_m_s } from "./wind.ts";

import { quantityError, within } from "../errors/index.ts";
import { daylight_h, extraterrestrialRadiation_MJ_m2_d } from "./geometry.ts";
import {
  clearSkyRadiation_MJ_m2,
  solarFromSunshine_MJ_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
} from "./radiation-at-ground.ts";

/** What may be known of a day's radiation; the best of it is used. */
export type KnownOfSolar = {
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly elevation_m?: number;
  readonly hoursGlobal_W_m2?: readonly number[];
  readonly solar_MJ_m2_d?: number;
  readonly sunshine_h?: number;
  readonly airMax_C?: number;
  readonly airMin_C?: number;
  readonly temperatureRangeCoefficient?: number;
  readonly clearness_frac?: number;
};

export type SolarOfDay = {
  readonly solar_MJ_m2_d: number;
  readonly rung: "hours" | "day" | "sunshine" | "temperature range" | "clearness";
  /** relative standard deviation of a day so known */
  readonly error_frac: number;
};

/** One standard deviation, relative: station and climatology after the sheet of the field, the rest our assumption. */
export const solarErrors_frac = {
  hours: 0.05,
  day: 0.05,
  sunshine: 0.12,
  "temperature range": 0.25,
  clearness: 0.35,
} as const;

const ranges = {
  solar_MJ_m2_d: [0, 50],
  sunshine_h: [0, 24],
  airMax_C: [-40, 60],
  airMin_C: [-40, 60],
  temperatureRangeCoefficient: [0.1, 0.25],
  clearness_frac: [0.2, 0.75],
} as const;

/** All that was given, also what a better rung leaves unused: a slip there is a slip. */
function checkKnown(known: KnownOfSolar): void {
  for (const name of Object.keys(ranges) as (keyof typeof ranges)[]) {
    const value = known[name];
    if (value !== undefined) within(name, value, ranges[name][0], ranges[name][1]);
  }
  if (known.hoursGlobal_W_m2 === undefined) return;
  within("hours_n", known.hoursGlobal_W_m2.length, 24, 24);
  for (const hour_W_m2 of known.hoursGlobal_W_m2) within("hoursGlobal_W_m2", hour_W_m2, 0, 1500);
}

/**
 * Radiation of a day from the best that is known: station hours, the day, sunshine, temperature range or mean clearness.
 *
 * @param known latitude [°], -90 to 90; day of the year, 1 to 366; height above sea level [m], -430 to 6000; and one or more of hourly global radiation [hour][W m⁻²], 24 values; radiation of the day [MJ m⁻² d⁻¹], 0 to 50; sunshine [h], 0 to 24; temperatures [°C], -40 to 60; clearness of the month, 0.2 to 0.75
 * @returns radiation [MJ m⁻² d⁻¹]; which rung of the ladder it stands on; its relative error, one standard deviation
 * @throws QuantityError outside those ranges, or when nothing is known
 * @source FAO56 eqs 35 and 50; errors our assumption
 * @example solarFromKnown({ latitude_deg: 45, dayOfYear_d: 172, clearness_frac: 0.5 }).solar_MJ_m2_d // 20.955
 */
export function solarFromKnown(known: KnownOfSolar): SolarOfDay {
  const { latitude_deg, dayOfYear_d, elevation_m = 0 } = known;
  within("elevation_m", elevation_m, -430, 6000);
  checkKnown(known);
  const extraterrestrial_MJ_m2_d = extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d });
  const on = (rung: SolarOfDay["rung"], solar_MJ_m2_d: number): SolarOfDay => ({
    solar_MJ_m2_d,
    rung,
    error_frac: solarErrors_frac[rung],
  });
  if (known.hoursGlobal_W_m2 !== undefined) {
    return on(
      "hours",
      known.hoursGlobal_W_m2.reduce((sum, hour_W_m2) => sum + hour_W_m2 * 0.0036, 0),
    );
  }
  if (known.solar_MJ_m2_d !== undefined) {
    return on("day", known.solar_MJ_m2_d);
  }
  if (known.sunshine_h !== undefined) {
    const day = {
      extraterrestrial_MJ_m2_d,
      sunshine_h: known.sunshine_h,
      daylight_h: daylight_h({ latitude_deg, dayOfYear_d }),
    };
    return on("sunshine", solarFromSunshine_MJ_m2_d(day));
  }
  if (known.airMax_C !== undefined && known.airMin_C !== undefined) {
    const day = {
      extraterrestrial_MJ_m2_d,
      clearSky_MJ_m2_d: clearSkyRadiation_MJ_m2({
        extraterrestrial_MJ_m2: extraterrestrial_MJ_m2_d,
        elevation_m,
      }),
      airMax_C: known.airMax_C,
      airMin_C: known.airMin_C,
      ...(known.temperatureRangeCoefficient === undefined
        ? {}
        : { temperatureRangeCoefficient: known.temperatureRangeCoefficient }),
    };
    return on("temperature range", solarFromTemperatureRange_MJ_m2_d(day));
  }
  if (known.clearness_frac === undefined) throw quantityError("clearness_frac", "missing", 0.2, 0.75);
  return on("clearness", known.clearness_frac * extraterrestrial_MJ_m2_d);
}

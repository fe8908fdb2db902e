import { within } from "../errors/index.ts";
import {
  clearSkyRadiation_MJ_m2,
  hourlyExtraterrestrialRadiation_MJ_m2,
  solarHourAngle_rad,
  sunElevation_rad,
} from "../sun/index.ts";
import { cloudFactor, type HourlySurface, lowSun_rad, referenceEtHourly } from "./reference-et-hourly.ts";

/** One hour of a station; undefined where the record has a gap. */
export type StationHour = {
  /** mid-period standard clock time, without summer time */
  readonly standardClock_h: number;
  readonly air_C: number;
  readonly vapourPressure_kPa: number;
  readonly solar_MJ_m2_h: number;
  readonly wind2m_m_s: number;
};

/**
 * Reference evapotranspiration of a day as the sum of its hours; preferred to the daily formula from 22 valid hours on.
 *
 * The cloud factor is computed while the sun stands above 0.3 rad and carried through dusk and night; before the first
 * such hour the factor carried from the evening before is used.
 *
 * @param day hours in order [hour]; latitude [°], -90 to 90; longitude and zone meridian [°], -180 to 180, east positive; elevation [m], -430 to 6000; day of the year, 1 to 366; cloud factor carried from the day before, 0.05 to 1; surface
 * @returns sum [mm d⁻¹] (held at 0, scaled to 24 h from 22 or 23), hours used, cloud factor to carry on; the sum is null below 22 hours
 * @throws QuantityError outside those ranges
 * @source ASCE2005 p. 35 for the carried factor
 */
export function referenceEtOfHours(day: {
  readonly hours: readonly (StationHour | undefined)[];
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly zoneMeridian_deg: number;
  readonly elevation_m: number;
  readonly dayOfYear_d: number;
  readonly cloudFactorBefore: number;
  readonly surface: HourlySurface;
}): {
  readonly referenceEt_mm_d: number | null;
  readonly hours_n: number;
  readonly cloudFactorAfter: number;
} {
  const { latitude_deg, longitude_deg, zoneMeridian_deg, elevation_m, dayOfYear_d, surface } = day;
  within("cloudFactorBefore", day.cloudFactorBefore, 0.05, 1);
  within("hours_n", day.hours.length, 0, 25);
  let carried = day.cloudFactorBefore;
  let sum = 0;
  let count = 0;
  for (const hour of day.hours) {
    if (!hour) continue;
    const { standardClock_h } = hour;
    const hourAngle_rad = solarHourAngle_rad({
      standardClock_h,
      longitude_deg,
      zoneMeridian_deg,
      dayOfYear_d,
    });
    if (sunElevation_rad({ latitude_deg, dayOfYear_d, hourAngle_rad }) >= lowSun_rad) {
      const above = hourlyExtraterrestrialRadiation_MJ_m2({ latitude_deg, dayOfYear_d, hourAngle_rad });
      const clearSky_MJ_m2_h = clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2: above, elevation_m });
      carried = cloudFactor({ solar_MJ_m2_h: hour.solar_MJ_m2_h, clearSky_MJ_m2_h });
    }
    sum += referenceEtHourly({ ...hour, elevation_m, cloudFactor: carried, surface }).referenceEt_mm_h;
    count += 1;
  }
  return {
    referenceEt_mm_d: count >= 22 ? Math.max(0, (sum * Math.max(24, count)) / count) : null,
    hours_n: count,
    cloudFactorAfter: carried,
  };
}

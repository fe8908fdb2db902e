import type { ScreeningNote } from "../air/index.ts";
import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";
import { haurwitz_W_m2 } from "./clear-sky.ts";

const note = (
  level: ScreeningNote["level"],
  quantity: string,
  what: string,
  likelyCause: string,
): ScreeningNote => ({ level, quantity, what, likelyCause });

/** Hours between the clock of a zone and the sun of a longitude, the short way round. */
const apart_h = (zoneOffset_h: number, longitude_deg: number): number => {
  const apart = zoneOffset_h - longitude_deg / 15;
  return Math.abs(apart - 24 * Math.round(apart / 24));
};

/**
 * Look over a site's coordinates beside its time zone: swapped or with the wrong sign they give a sun of another country.
 *
 * Noted when the zone's offset differs from longitude/15 by more than 3 h.
 *
 * @param site latitude and longitude [°] as entered, any value; offset of the zone from universal time [h], -14 to 14
 * @returns notes, none when all is usual
 * @throws QuantityError for an offset outside that range
 * @source our assumption
 * @example screenSite({ latitude_deg: -122.3, longitude_deg: 47.6, zoneOffset_h: -8 })[0].likelyCause // "latitude and longitude swapped"
 */
export function screenSite(site: {
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly zoneOffset_h: number;
}): readonly ScreeningNote[] {
  const { latitude_deg, longitude_deg, zoneOffset_h } = site;
  within("zoneOffset_h", zoneOffset_h, -14, 14);
  const isPlace = (latitude: number, longitude: number): boolean =>
    Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 && apart_h(zoneOffset_h, longitude) <= 3;
  if (isPlace(latitude_deg, longitude_deg)) return [];
  const swapped = isPlace(longitude_deg, latitude_deg);
  const mirrored = isPlace(latitude_deg, -longitude_deg);
  const likelyCause = swapped
    ? "latitude and longitude swapped"
    : mirrored
      ? "longitude with the wrong sign (east is positive)"
      : "the wrong time zone, or a slip of the pen";
  if (!(Math.abs(latitude_deg) <= 90)) {
    return [note("refuse", "latitude_deg", `${latitude_deg}° is outside -90 to 90°`, likelyCause)];
  }
  if (!(Math.abs(longitude_deg) <= 180)) {
    return [note("refuse", "longitude_deg", `${longitude_deg}° is outside -180 to 180°`, likelyCause)];
  }
  const hours = apart_h(zoneOffset_h, longitude_deg).toFixed(1);
  return [note("look", "longitude_deg", `its sun is ${hours} h off the clock of the zone`, likelyCause)];
}

/**
 * Look over an hour of global radiation beside a clear sky.
 *
 * @param hour global radiation, mean of the hour [W m⁻²], any value; elevation of the sun as seen [°], -90 to 90
 * @returns notes, none when all is usual; cloud edges exceed a clear sky for minutes, never for an hour
 * @throws QuantityError for an elevation outside that range
 * @source our assumption
 * @example screenHourlySolar({ hourGlobal_W_m2: 900, apparentElevation_deg: 30 })[0].level // "look"
 */
export function screenHourlySolar(hour: {
  readonly hourGlobal_W_m2: number;
  readonly apparentElevation_deg: number;
}): readonly ScreeningNote[] {
  const { hourGlobal_W_m2, apparentElevation_deg } = hour;
  within("apparentElevation_deg", apparentElevation_deg, -90, 90);
  const name = "hourGlobal_W_m2";
  if (!(hourGlobal_W_m2 >= 0)) {
    return [note("refuse", name, "below 0", "a sensor's offset at night; counts as 0 down to -5")];
  }
  const clear = haurwitz_W_m2(Math.sin(apparentElevation_deg * rad_per_deg));
  if (hourGlobal_W_m2 > 1500) {
    return [
      note("refuse", name, "more than the sun gives above the air", "another unit, or a wrong decimal"),
    ];
  }
  if (apparentElevation_deg < -3 && hourGlobal_W_m2 > 5) {
    return [note("look", name, "light while the sun is down", "clock of another zone, or summer time")];
  }
  if (hourGlobal_W_m2 > 1.1 * clear + 5) {
    return [
      note("look", name, "more than a tenth above a clear sky", "clock of another zone, or another unit"),
    ];
  }
  return [];
}

/**
 * Look over daily radiation of some days beside what falls above the air: values and unit.
 *
 * @param days solar and extraterrestrial radiation [day][MJ m⁻² d⁻¹], any value, of the same days
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenSolarDays({ solarDays_MJ_m2_d: [1520], extraterrestrialDays_MJ_m2_d: [35] })[0].likelyCause // "J/cm² entered as MJ/m²"
 */
export function screenSolarDays(days: {
  readonly solarDays_MJ_m2_d: readonly number[];
  readonly extraterrestrialDays_MJ_m2_d: readonly number[];
}): readonly ScreeningNote[] {
  const { solarDays_MJ_m2_d, extraterrestrialDays_MJ_m2_d } = days;
  const name = "solarDays_MJ_m2_d";
  if (solarDays_MJ_m2_d.length !== extraterrestrialDays_MJ_m2_d.length) {
    return [note("refuse", name, "not as many days as of radiation above the air", "days missing")];
  }
  const shares = solarDays_MJ_m2_d.map((solar, day) => solar / (extraterrestrialDays_MJ_m2_d[day] ?? 0));
  const lit = shares.filter((share, day) => (extraterrestrialDays_MJ_m2_d[day] ?? 0) > 1 || !(share <= 1));
  if (solarDays_MJ_m2_d.some((solar) => !(solar >= 0))) {
    return [note("refuse", name, "below 0, or no number", "a sensor's offset at night, or a gap")];
  }
  const highest = lit.reduce((most, share) => Math.max(most, share), 0);
  if (highest > 1.05) {
    const cause = highest / 100 <= 0.82 ? "J/cm² entered as MJ/m²" : "another unit, or the wrong day";
    return [note("refuse", name, "more than the sun gives above the air", cause)];
  }
  if (highest > 0.82) {
    const cause = "the wrong day, latitude with the wrong sign, or a sensor that reads high";
    return [note("look", name, "more than 0.82 of the radiation above the air", cause)];
  }
  // A fortnight without a fair hour is rare; a fortnight in kWh looks exactly like it.
  if (lit.length >= 14 && highest < 0.82 / 3.6) {
    return [note("look", name, "no fair day in all of them", "kWh/m² entered as MJ/m²")];
  }
  return [];
}

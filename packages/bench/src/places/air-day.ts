import { saturationVapourPressure_kPa } from "@sillwood/science/air";
import {
  clearSkyRadiation_MJ_m2,
  daylight_h,
  extraterrestrialRadiation_MJ_m2_d,
  guessedSillLight_mol_m2_d,
  solarFromTemperatureRange_MJ_m2_d,
} from "@sillwood/science/sun";
import type { AirAt, AirDay, AirSource, Spell, WeatherDay } from "./ahead.ts";
import { type Bench, inForceAt, type Places } from "./places.ts";
import type { LoggedDay, Records } from "./records.ts";
import { type Calendar, dayOfYear_d } from "./time.ts";
import { outdoorWeather } from "./weather-ahead.ts";

/** Air of a heated room until somebody says better. @source our assumption */
const USUAL_ROOM = { dayAir_C: 21, nightAir_C: 17, humidity_frac: 0.5, wind_m_s: 0.08 } as const;
/** Daily light where not even the direction of the window is known. @source our assumption */
const UNKNOWN_LIGHT_mol_m2_d = 4;
/** Light of a sill is taken to come between these hours, lamp light between the lamp's. @source our assumption */
const LAMP_HOURS_h = 14;
const MOL_PER_UMOL = 1e-6;
const SECONDS_PER_h = 3600;
/** Share of solar energy that plants use, µmol per joule of it times 0.45: sheet air-water section 0 (from memory there). */
const PAR_mol_per_MJ = 4.57 * 0.45;

/**
 * Relative sd of a day's water demand from not knowing air and light. @source our assumption, after section 9 of the
 * air-water sheet (10 to 15 % indoors, 15 to 35 % outdoors, growing with the lead).
 */
const DEMAND_SD = { logged: 0.08, typed: 0.12, guessedLight: 0.3, unknown: 0.5 } as const;

/**
 * Air and light of every place and day, worked out once each and kept, so that the same object comes back. Spots whose light
 * nobody has written apart share the day of their bench.
 */
export function airDays(places: Places, records: Records, calendar: Calendar): AirAt {
  const byPlace = new Map<string, Map<string, AirDay>>();
  const placeOf = (spot: string) => (places.lit.has(spot) ? spot : (places.benchOfSpot.get(spot) ?? ""));
  return (spot = "", date) => {
    const place = placeOf(spot);
    let days = byPlace.get(place);
    if (!days) {
      days = new Map();
      byPlace.set(place, days);
    }
    let day = days.get(date);
    if (!day) {
      day = airDay(places, records, calendar, spot, place, date);
      days.set(date, day);
    }
    return day;
  };
}

function airDay(
  places: Places,
  records: Records,
  calendar: Calendar,
  spot: string,
  place: string,
  date: string,
): AirDay {
  const bench = places.benches.get(places.benchOfSpot.get(spot) ?? "");
  const from_ms = calendar.midnight_ms(date);
  const to_ms = calendar.nextMidnight_ms(from_ms);
  const base = {
    place,
    date,
    dayOfYear_d: dayOfYear_d(date),
    from_ms,
    to_ms,
    latitude_deg: places.site.latitude_deg,
    elevation_m: places.site.elevation_m,
  };
  return bench?.outdoors ? outdoorDay(base, places, records, bench) : indoorDay(base, places, records, bench);
}

type Base = Pick<
  AirDay,
  "place" | "date" | "dayOfYear_d" | "from_ms" | "to_ms" | "latitude_deg" | "elevation_m"
>;

function indoorDay(base: Base, places: Places, records: Records, bench: Bench | undefined): AirDay {
  const light = lightOf(base, places, bench);
  const said = bench && inForceAt(places.air.get(bench.id), base.to_ms);
  const room = { ...USUAL_ROOM, ...definedOnly(said?.data) };
  const logged = bench && records.logged(bench.id, base.date);
  const spells = logged
    ? loggedSpells(base, logged, light, room)
    : litSpells(base, light).map((part) =>
        spellOf(part, part.lit ? room.dayAir_C : room.nightAir_C, room.humidity_frac, room.wind_m_s),
      );
  const air: AirSource = logged
    ? { origin: "measured", from: `logger on ${bench.name}` }
    : said
      ? { origin: "measured", from: `air of ${bench?.name} as written` }
      : {
          origin: "assumed",
          from: `usual heated room, ${USUAL_ROOM.dayAir_C} °C by day, ${USUAL_ROOM.humidity_frac * 100} % humid`,
        };
  const lightSd = light.source.origin === "measured" ? 0 : bench ? DEMAND_SD.guessedLight : DEMAND_SD.unknown;
  const airSd = logged ? DEMAND_SD.logged : said ? DEMAND_SD.typed : DEMAND_SD.typed * 1.5;
  return dayOf(base, {
    outdoors: false,
    spells,
    dli_mol_m2_d: light.dli_mol_m2_d,
    weather: undefined,
    demandSd_frac: Math.hypot(lightSd, airSd),
    air,
    light: light.source,
  });
}

/** Field by field, so that all days of all places have one shape: they are read in every step of every plant. */
const dayOf = (
  base: Base,
  of: Pick<AirDay, "outdoors" | "spells" | "dli_mol_m2_d" | "demandSd_frac" | "air" | "light"> & {
    readonly weather: WeatherDay | undefined;
  },
): AirDay => ({
  place: base.place,
  date: base.date,
  dayOfYear_d: base.dayOfYear_d,
  from_ms: base.from_ms,
  to_ms: base.to_ms,
  latitude_deg: base.latitude_deg,
  elevation_m: base.elevation_m,
  outdoors: of.outdoors,
  spells: of.spells,
  dli_mol_m2_d: of.dli_mol_m2_d,
  weather: of.weather,
  demandSd_frac: of.demandSd_frac,
  air: of.air,
  light: of.light,
});

const spellOf = (
  part: Pick<Spell, "from_ms" | "to_ms" | "ppfd_umol_m2_s" | "light">,
  air_C: number,
  humidity_frac: number,
  wind_m_s: number,
): Spell => ({
  from_ms: part.from_ms,
  to_ms: part.to_ms,
  air_C,
  humidity_frac,
  wind_m_s,
  ppfd_umol_m2_s: part.ppfd_umol_m2_s,
  light: part.light,
});

interface Light {
  readonly dli_mol_m2_d: number;
  readonly light: "window" | "lamp" | "sun";
  readonly hours_h: number;
  readonly source: AirSource;
}

function lightOf(base: Base, places: Places, bench: Bench | undefined): Light {
  const said =
    inForceAt(places.lit.get(base.place), base.to_ms) ??
    (bench && inForceAt(places.lit.get(bench.id), base.to_ms));
  if (said) {
    const { dli_mol_m2_d, light, hours_h } = said.data;
    return {
      dli_mol_m2_d,
      light,
      hours_h: hours_h ?? (light === "lamp" ? LAMP_HOURS_h : lightHours_h(base)),
      source: { origin: "measured", from: `daily light of ${bench?.name ?? "the spot"} as written` },
    };
  }
  if (bench?.windowFaces_deg !== undefined) {
    return {
      dli_mol_m2_d: guessedSillLight_mol_m2_d({
        latitude_deg: clampLatitude(base.latitude_deg),
        dayOfYear_d: base.dayOfYear_d,
        azimuth_deg: bench.windowFaces_deg,
      }),
      light: "window",
      hours_h: lightHours_h(base),
      source: { origin: "assumed", from: "guessed from the direction of the window and the date" },
    };
  }
  return {
    dli_mol_m2_d: UNKNOWN_LIGHT_mol_m2_d,
    light: "window",
    hours_h: lightHours_h(base),
    source: { origin: "assumed", from: "direction of the window not known" },
  };
}

const clampLatitude = (latitude_deg: number) => Math.max(-66, Math.min(66, latitude_deg));

/** Hours between sunrise and sunset; polar days are held between 4 and 20 hours for the split of a day. */
const lightHours_h = ({ latitude_deg, dayOfYear_d }: Base) =>
  Math.max(4, Math.min(20, daylight_h({ latitude_deg, dayOfYear_d })));

/** The day in dark, lit and dark spells, the light centred on the middle of the day. */
function litSpells(base: Base, light: Light) {
  const middle_ms = (base.from_ms + base.to_ms) / 2;
  const half_ms = (Math.min(23, light.hours_h) / 2) * SECONDS_PER_h * 1000;
  const ppfd_umol_m2_s = light.dli_mol_m2_d / MOL_PER_UMOL / (Math.min(23, light.hours_h) * SECONDS_PER_h);
  const part = (from_ms: number, to_ms: number, lit: boolean) => ({
    from_ms,
    to_ms,
    ppfd_umol_m2_s: lit ? ppfd_umol_m2_s : 0,
    light: lit ? light.light : ("none" as const),
    lit,
  });
  return [
    part(base.from_ms, middle_ms - half_ms, false),
    part(middle_ms - half_ms, middle_ms + half_ms, true),
    part(middle_ms + half_ms, base.to_ms, false),
  ];
}

type Room = {
  readonly dayAir_C: number;
  readonly nightAir_C: number;
  readonly humidity_frac: number;
  readonly wind_m_s: number;
};

/** Hourly spells of a logged day; hours that the logger missed take the room as written. */
function loggedSpells(base: Base, logged: LoggedDay, light: Light, room: Room): Spell[] {
  const byHour = new Map(logged.hours.map((hour) => [hour.from_ms, hour]));
  const lit = litSpells(base, light)[1] as { from_ms: number; to_ms: number; ppfd_umol_m2_s: number };
  const spells: Spell[] = [];
  for (let from_ms = base.from_ms; from_ms < base.to_ms; from_ms += SECONDS_PER_h * 1000) {
    const to_ms = Math.min(base.to_ms, from_ms + SECONDS_PER_h * 1000);
    const hour = byHour.get(from_ms);
    const litShare =
      Math.max(0, Math.min(to_ms, lit.to_ms) - Math.max(from_ms, lit.from_ms)) / (to_ms - from_ms);
    const ppfd_umol_m2_s = hour?.ppfd_umol_m2_s ?? lit.ppfd_umol_m2_s * litShare;
    spells.push(
      spellOf(
        { from_ms, to_ms, ppfd_umol_m2_s, light: ppfd_umol_m2_s > 0 ? light.light : "none" },
        hour?.air_C ?? (litShare > 0.5 ? room.dayAir_C : room.nightAir_C),
        Math.max(0.05, Math.min(1, hour?.humidity_frac ?? room.humidity_frac)),
        room.wind_m_s,
      ),
    );
  }
  return spells;
}

function outdoorDay(base: Base, places: Places, records: Records, bench: Bench): AirDay {
  const found = outdoorWeather(base.date, records);
  const { weather } = found;
  const hours_h = lightHours_h(base);
  const said =
    inForceAt(places.lit.get(base.place), base.to_ms) ?? inForceAt(places.lit.get(bench.id), base.to_ms);
  // Radiation that nobody measured: the square root of the daily temperature range stands for cloud (FAO56 eq. 50).
  const dli_mol_m2_d =
    said?.data.dli_mol_m2_d ??
    (weather.radiation_MJ_m2_d ?? guessedRadiation_MJ_m2_d(base, weather)) * PAR_mol_per_MJ;
  const humidity_frac = weather.humidity_frac ?? humidityFromMinimum_frac(weather);
  const light: Light = { dli_mol_m2_d, light: "sun", hours_h, source: { origin: "learned", from: "" } };
  const wind_m_s = Math.max(0.5, weather.wind_m_s ?? 2);
  const litAir_C = weather.tMax_C * 0.6 + weather.tMin_C * 0.4;
  const darkAir_C = weather.tMax_C * 0.15 + weather.tMin_C * 0.85;
  const spells = litSpells(base, light).map((part) =>
    spellOf(part, part.lit ? litAir_C : darkAir_C, humidity_frac, wind_m_s),
  );
  return dayOf(base, {
    outdoors: true,
    spells,
    dli_mol_m2_d,
    weather,
    demandSd_frac: found.demandSd_frac,
    air: found.source,
    light: said
      ? { origin: "measured", from: `daily light of ${bench.name} as written` }
      : {
          origin: "assumed",
          from:
            weather.radiation_MJ_m2_d === undefined
              ? "radiation guessed from the daily range of temperature (FAO56 eq. 50)"
              : "radiation of the weather record",
        },
  });
}

function guessedRadiation_MJ_m2_d(
  { latitude_deg, dayOfYear_d, elevation_m }: Base,
  { tMax_C, tMin_C }: WeatherDay,
): number {
  const extraterrestrial_MJ_m2 = extraterrestrialRadiation_MJ_m2_d({ latitude_deg, dayOfYear_d });
  const clearSky_MJ_m2_d = clearSkyRadiation_MJ_m2({ extraterrestrial_MJ_m2, elevation_m });
  return solarFromTemperatureRange_MJ_m2_d({
    extraterrestrial_MJ_m2_d: extraterrestrial_MJ_m2,
    clearSky_MJ_m2_d,
    airMax_C: tMax_C,
    airMin_C: tMin_C,
  });
}

/** Dew point taken as the night's minimum: humid places (FAO56 eq. 48). */
function humidityFromMinimum_frac({ tMax_C, tMin_C }: WeatherDay): number {
  const vapour_kPa = saturationVapourPressure_kPa(tMin_C);
  return Math.max(0.2, Math.min(1, vapour_kPa / saturationVapourPressure_kPa((tMax_C + tMin_C) / 2)));
}

const definedOnly = <T extends object>(data: T | undefined): Partial<Room> =>
  Object.fromEntries(Object.entries(data ?? {}).filter(([, value]) => value !== undefined));

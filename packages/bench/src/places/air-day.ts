import { saturationVapourPressure_kPa } from "@sillwood/science/air";
import { whence } from "../words/whence.ts";
import type { AirAt, AirDay, AirSource, Daylight, WeatherDay } from "./ahead.ts";
import type { AirData } from "./kinds.ts";
import {
  type LightSources,
  lightInstants_ms,
  lightSources,
  type SkyDay,
  type SpotLight,
  skyDay,
  spotLight,
} from "./light/daylight.ts";
import { isOut } from "./light/windows.ts";
import { type Bench, inForceAt, type Places } from "./places.ts";
import type { Records } from "./records.ts";
import { litParts, loggedSpells, type Room, spellOf } from "./spells.ts";
import { type Calendar, dayOfYear_d } from "./time.ts";
import { outdoorWeather } from "./weather-ahead.ts";

/** Air of a heated room until somebody says better. @source our assumption */
const USUAL_ROOM = { dayAir_C: 21, nightAir_C: 17, humidity_frac: 0.5, wind_m_s: 0.08 } as const;
/** A room whose heating is out follows the outdoors so far. @source our assumption */
const UNHEATED_frac = 0.6;

/**
 * Relative sd of a day's water demand from not knowing air and light. @source our assumption, after section 9 of the
 * air-water sheet (10 to 15 % indoors, 15 to 35 % outdoors, growing with the lead).
 */
const DEMAND_SD = { logged: 0.08, typed: 0.12, unknown: 0.5 } as const;
/** A day's demand changes about so much as its light, of a room's air. @source our assumption, between a dim sill and a lamp */
const DEMAND_PER_LIGHT = 0.5;

/**
 * Air and light of every place and day, worked out once each and kept, so that the same object comes back. Spots whose light
 * nobody has written apart share the day of their bench.
 */
export function airDays(places: Places, records: Records, calendar: Calendar): AirAt {
  const byPlace = new Map<string, Map<string, AirDay>>();
  const skies = new Map<string, SkyDay>();
  const skyOf = (date: string, from_ms: number) => {
    let sky = skies.get(date);
    if (!sky) {
      sky = skyDay(date, from_ms, dayOfYear_d(date), records, places.site);
      skies.set(date, sky);
    }
    return sky;
  };
  const sourcesOf = sourcesBetween(places);
  const apart = lightApart(places);
  const placeOf = (spot: string) => (apart.has(spot) ? spot : (places.benchOfSpot.get(spot) ?? ""));
  return (spot = "", date) => {
    const place = placeOf(spot);
    let days = byPlace.get(place);
    if (!days) {
      days = new Map();
      byPlace.set(place, days);
    }
    let day = days.get(date);
    if (!day) {
      day = airDay(places, records, calendar, skyOf, sourcesOf, spot, place, date);
      days.set(date, day);
    }
    return day;
  };
}

type SourcesOf = (place: string, bench: Bench | undefined, spot: string, at_ms: number) => LightSources;

/** Sources of light by place, worked out once between two instants at which something was written of it. */
function sourcesBetween(places: Places): SourcesOf {
  const known = new Map<
    string,
    { readonly instants_ms: readonly number[]; readonly sources: LightSources[] }
  >();
  return (place, bench, spot, at_ms) => {
    let ofPlace = known.get(place);
    if (!ofPlace) {
      ofPlace = { instants_ms: lightInstants_ms(places, bench, spot), sources: [] };
      known.set(place, ofPlace);
    }
    const { instants_ms, sources } = ofPlace;
    let passed = instants_ms.length;
    while (passed > 0 && (instants_ms[passed - 1] as number) > at_ms) passed--;
    sources[passed] ??= lightSources(places, bench, spot, at_ms);
    return sources[passed] as LightSources;
  };
}

/** Spots with light of their own: on a bench whose windows or lamps were described, or read or measured apart. */
function lightApart({ light, lit, benches, benchOfSpot }: Places): ReadonlySet<string> {
  const apart = new Set<string>();
  for (const [spot, bench] of benchOfSpot) {
    const own =
      lit.has(spot) || light.stands.has(spot) || light.pairs.has(spot) || light.underLamps.has(spot);
    const ofBench = light.windows.has(bench) || light.lamps.has(bench);
    if (own || (ofBench && !benches.get(bench)?.outdoors)) apart.add(spot);
  }
  return apart;
}

function airDay(
  places: Places,
  records: Records,
  calendar: Calendar,
  skyOf: (date: string, from_ms: number) => SkyDay,
  sourcesOf: SourcesOf,
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
  const sky = skyOf(date, from_ms);
  return bench?.outdoors
    ? outdoorDay(base, places, records, bench, sky)
    : indoorDay(
        base,
        places,
        records,
        bench,
        sourcesOf(place, bench, place === "" ? "" : spot, to_ms - 1),
        sky,
      );
}

type Base = Pick<
  AirDay,
  "place" | "date" | "dayOfYear_d" | "from_ms" | "to_ms" | "latitude_deg" | "elevation_m"
>;

function indoorDay(
  base: Base,
  places: Places,
  records: Records,
  bench: Bench | undefined,
  sources: LightSources,
  sky: SkyDay,
): AirDay {
  const light = spotLight(sources, bench, sky, places.site);
  const said = bench && inForceAt(places.air.get(bench.id), base.to_ms);
  const room = unheated(roomOf(said?.data), base, places, records, bench);
  const logged = bench && records.logged(bench.id, base.date);
  const parts = litParts(base, light, sky);
  const spells = logged
    ? loggedSpells(base, logged, parts, room)
    : parts.map((part) =>
        spellOf(
          part,
          part.light === "none" ? room.nightAir_C : room.dayAir_C,
          room.humidity_frac,
          room.wind_m_s,
        ),
      );
  const air: AirSource = logged
    ? { origin: "measured", from: whence((words) => words.air.logger(bench.name)) }
    : said
      ? { origin: "measured", from: whence((words) => words.air.written(bench?.name ?? "")) }
      : {
          origin: "assumed",
          from: whence((words) => words.air.usualRoom(USUAL_ROOM.dayAir_C, USUAL_ROOM.humidity_frac)),
        };
  const { daylight } = light;
  const dli_mol_m2_d = daylight.window_mol_m2_d + daylight.lamp_mol_m2_d;
  // Only what is not known of the place: dull and sunny days come and go, and are in a day's own noise.
  const lightSd = bench
    ? Math.min(DEMAND_SD.unknown, DEMAND_PER_LIGHT * daylight.sd_frac)
    : DEMAND_SD.unknown;
  const airSd = logged ? DEMAND_SD.logged : said ? DEMAND_SD.typed : DEMAND_SD.typed * 1.5;
  return dayOf(base, {
    outdoors: false,
    spells,
    dli_mol_m2_d,
    daylight,
    weather: undefined,
    demandSd_frac: Math.hypot(lightSd, airSd),
    air,
    light: { origin: light.origin, from: light.from },
  });
}

/** A room whose heating is out cools towards the outdoors, where a weather record tells it. */
function unheated(room: Room, base: Base, places: Places, records: Records, bench: Bench | undefined): Room {
  if (!bench || !isOut(places, bench.id, "heating", base.to_ms - 1)) return room;
  const { weather } = outdoorWeather(base.date, records);
  const towards = (indoors_C: number, outdoors_C: number) =>
    indoors_C + UNHEATED_frac * (Math.min(indoors_C, outdoors_C) - indoors_C);
  return {
    ...room,
    dayAir_C: towards(room.dayAir_C, weather.tMax_C),
    nightAir_C: towards(room.nightAir_C, weather.tMin_C),
  };
}

/** Field by field, so that all days of all places have one shape: they are read in every step of every plant. */
const dayOf = (
  base: Base,
  of: Pick<
    AirDay,
    "outdoors" | "spells" | "dli_mol_m2_d" | "daylight" | "demandSd_frac" | "air" | "light"
  > & {
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
  daylight: of.daylight,
  weather: of.weather,
  demandSd_frac: of.demandSd_frac,
  air: of.air,
  light: of.light,
});

function outdoorDay(base: Base, places: Places, records: Records, bench: Bench, sky: SkyDay): AirDay {
  const found = outdoorWeather(base.date, records);
  const { weather } = found;
  const said =
    inForceAt(places.lit.get(base.place), base.to_ms) ?? inForceAt(places.lit.get(bench.id), base.to_ms);
  const dli_mol_m2_d = said?.data.dli_mol_m2_d ?? sky.outdoors_mol_m2_d;
  const of = (kt: number) => said?.data.dli_mol_m2_d ?? (sky.outdoors_mol_m2_d * kt) / sky.clear.kt;
  const daylight: Daylight = {
    window_mol_m2_d: 0,
    lamp_mol_m2_d: 0,
    sky_mol_m2_d: dli_mol_m2_d,
    dull_mol_m2_d: of(sky.clear.days[1] ?? sky.clear.kt),
    sunny_mol_m2_d: of(sky.clear.days[3] ?? sky.clear.kt),
    sd_frac: OUTDOOR_SD_frac[sky.clear.seen],
    around_mol_m2_d: dli_mol_m2_d,
    fromSide_deg: 0,
    fromSide_frac: 0,
    dayLength_h: sky.dayLength_h,
    lamp_h: 0,
    lamp_umol_m2_s: 0,
    outdoors_mol_m2_d: sky.outdoors_mol_m2_d,
  };
  const light: SpotLight = {
    daylight,
    lampFrom_h: 0,
    origin: said ? "measured" : sky.clear.seen === "measured" ? "measured" : "assumed",
    from: whence(({ light }) => (said ? light.written(bench.name) : light.radiation[sky.clear.seen])),
  };
  const humidity_frac = weather.humidity_frac ?? humidityFromMinimum_frac(weather);
  const wind_m_s = Math.max(0.5, weather.wind_m_s ?? 2);
  const litAir_C = weather.tMax_C * 0.6 + weather.tMin_C * 0.4;
  const darkAir_C = weather.tMax_C * 0.15 + weather.tMin_C * 0.85;
  const spells = litParts(base, light, sky).map((part) =>
    spellOf(part, part.light === "none" ? darkAir_C : litAir_C, humidity_frac, wind_m_s),
  );
  return dayOf(base, {
    outdoors: true,
    spells,
    dli_mol_m2_d,
    daylight,
    weather,
    demandSd_frac: found.demandSd_frac,
    air: found.source,
    light: { origin: light.origin, from: light.from },
  });
}

/** Error of the day's radiation by how it is known. @source sun-light sheet section 11 */
const OUTDOOR_SD_frac: Readonly<Record<SkyDay["clear"]["seen"], number>> = {
  measured: 0.05,
  temperature: 0.25,
  season: 0.1,
  usual: 0.2,
};

/** Dew point taken as the night's minimum: humid places (FAO56 eq. 48). */
function humidityFromMinimum_frac({ tMax_C, tMin_C }: WeatherDay): number {
  const vapour_kPa = saturationVapourPressure_kPa(tMin_C);
  return Math.max(0.2, Math.min(1, vapour_kPa / saturationVapourPressure_kPa((tMax_C + tMin_C) / 2)));
}

/** The usual room, but for what somebody wrote of it. */
const roomOf = (said: AirData | undefined): Room => ({
  dayAir_C: said?.dayAir_C ?? USUAL_ROOM.dayAir_C,
  nightAir_C: said?.nightAir_C ?? USUAL_ROOM.nightAir_C,
  humidity_frac: said?.humidity_frac ?? USUAL_ROOM.humidity_frac,
  wind_m_s: said?.wind_m_s ?? USUAL_ROOM.wind_m_s,
});

import * as v from "valibot";
import { choice, count, id, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import { placeSentences } from "./sentences.ts";

const siteSchema = v.strictObject({
  name: text("name of the site", 60),
  latitude_deg: quantity("latitude", "°", -90, 90),
  longitude_deg: quantity("longitude", "°", -180, 180),
  elevation_m: quantity("elevation", "m", -430, 6000),
  zone: v.pipe(
    text("time zone", 60),
    v.check(
      isZone,
      (issue) => `time zone is ${JSON.stringify(issue.input)}; expected an IANA name as Europe/Berlin`,
    ),
  ),
  currency: v.pipe(
    text("currency", 3),
    v.regex(/^[A-Z]{3}$/, "currency is not a code of three capitals as EUR"),
  ),
});
export type SiteData = v.InferOutput<typeof siteSchema>;

function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

const benchSchema = v.strictObject({
  name: text("name of the bench", 60),
  place: choice("kind of bench", ["sill", "shelf", "bed", "table"]),
  outdoors: v.boolean("outdoors is not yes or no"),
  order_n: count("place in the walk", 0, 999),
  spots: v.pipe(
    v.array(v.strictObject({ id: id("spot"), name: text("name of the spot", 30) })),
    v.minLength(1, "a bench needs at least one spot"),
    v.maxLength(500, "a bench has at most 500 spots"),
  ),
  windowFaces_deg: v.optional(quantity("direction the window faces", "°", 0, 360)),
  quarantine: v.optional(v.boolean("quarantine is not yes or no")),
});
export type BenchData = v.InferOutput<typeof benchSchema>;

const airSchema = v.strictObject({
  dayAir_C: quantity("air by day", "°C", -10, 50),
  nightAir_C: quantity("air by night", "°C", -10, 50),
  humidity_frac: v.optional(quantity("humidity", "", 0.05, 1)),
  wind_m_s: v.optional(quantity("air speed at the leaf", "m/s", 0, 5)),
});
export type AirData = v.InferOutput<typeof airSchema>;

const litSchema = v.strictObject({
  dli_mol_m2_d: quantity("daily light", "mol/m² a day", 0, 70),
  light: choice("where the light comes from", ["window", "lamp", "sun"]),
  hours_h: v.optional(quantity("hours of light", "h", 0.5, 24)),
});
export type LitData = v.InferOutput<typeof litSchema>;

const habitsSchema = v.strictObject({
  minutes: quantity("minutes for the round", "min", 5, 600),
  /** 0 Sunday to 6 Saturday. */
  weekdays: v.pipe(v.array(count("weekday", 0, 6)), v.minLength(1, "no day of the week is visited")),
  hour_h: v.optional(quantity("hour of the round", "h", 0, 23)),
});
export type HabitsData = v.InferOutput<typeof habitsSchema>;

const seriesSchema = v.strictObject({
  series: text("name of the series", 60),
  what: choice("what the series holds", ["logger", "weather", "forecast"]),
  quantities: v.pipe(
    v.array(text("name of a column", 60)),
    v.minLength(1, "a series needs a column"),
    v.maxLength(40),
  ),
  from_ms: quantity("first instant", "ms", 0, 7_258_118_400_000),
  to_ms: quantity("last instant", "ms", 0, 7_258_118_400_000),
  rows_n: count("rows", 1, 1_000_000),
});
export type SeriesData = v.InferOutput<typeof seriesSchema>;

const all = { v: 1, readers: "all", onMin_n: 1 } as const;
const nothing = () => [];

export const placeKinds = {
  site: {
    ...all,
    kind: "site.described",
    growerOnly: true,
    subject: "book",
    schema: siteSchema,
    sentence: (data, say) => placeSentences(say).site(data),
    effects: nothing,
    example: {
      name: "Fernholt",
      latitude_deg: 47.6,
      longitude_deg: -122.3,
      elevation_m: 20,
      zone: "America/Los_Angeles",
      currency: "USD",
    },
  } satisfies EntryKind<SiteData>,
  bench: {
    ...all,
    kind: "bench.laid",
    subject: "bench",
    schema: benchSchema,
    sentence: (data, say) => placeSentences(say).bench(data),
    effects: nothing,
    example: {
      name: "South sill",
      place: "sill",
      outdoors: false,
      order_n: 1,
      spots: [
        { id: "south-sill-1", name: "S1" },
        { id: "south-sill-2", name: "S2" },
      ],
      windowFaces_deg: 180,
    },
  } satisfies EntryKind<BenchData>,
  air: {
    ...all,
    kind: "bench.air",
    subject: "bench",
    schema: airSchema,
    sentence: (data, say) => placeSentences(say).air(data),
    effects: nothing,
    example: { dayAir_C: 21, nightAir_C: 17, humidity_frac: 0.5 },
  } satisfies EntryKind<AirData>,
  lit: {
    ...all,
    kind: "bench.lit",
    subject: "bench",
    schema: litSchema,
    sentence: (data, say) => placeSentences(say).lit(data),
    effects: nothing,
    example: { dli_mol_m2_d: 9, light: "window" },
  } satisfies EntryKind<LitData>,
  habits: {
    ...all,
    kind: "site.habits",
    subject: "book",
    schema: habitsSchema,
    sentence: (data, say) => placeSentences(say).habits(data),
    effects: nothing,
    example: { minutes: 60, weekdays: [0, 1, 2, 3, 4, 5, 6] },
  } satisfies EntryKind<HabitsData>,
  series: {
    ...all,
    kind: "series.part",
    subject: "bench",
    schema: seriesSchema,
    sentence: (data, say) => placeSentences(say).series(data),
    effects: nothing,
    example: {
      series: "sill logger",
      what: "logger",
      quantities: ["air_C", "humidity_frac"],
      from_ms: 1_767_225_600_000,
      to_ms: 1_769_904_000_000,
      rows_n: 744,
    },
  } satisfies EntryKind<SeriesData>,
} as const;

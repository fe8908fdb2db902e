import * as v from "valibot";
import { choice, count, quantity } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { lightSentences } from "./sentences.ts";

const GLAZINGS = ["single", "double", "triple", "double low-e", "triple low-e"] as const;
const VEILS = ["none", "dusty", "insect screen", "net curtain"] as const;
const LAMP_FORMS = ["point", "disc", "rectangle", "strip"] as const;
/** Light sources by how many lux one µmol of theirs makes; "red and blue" has no safe number, so lux is refused for it. */
const LAMP_SOURCES = [
  "white LED",
  "fluorescent",
  "metal halide",
  "high pressure sodium",
  "red and blue",
] as const;

const windowSchema = v.strictObject({
  /** Which window of the bench: a corner has two. The first when left out. */
  window_n: v.optional(count("which window of the bench", 1, 4)),
  faces_deg: quantity("direction the window faces", "°", 0, 360),
  width_m: quantity("width of the glass", "m", 0.2, 8),
  height_m: quantity("height of the glass", "m", 0.2, 4),
  sill_m: v.optional(quantity("lower edge of the glass above the leaves", "m", -2, 2)),
  glazing: choice("glazing", GLAZINGS),
  visible_frac: v.optional(quantity("visible light the glass lets through", "", 0.05, 0.95)),
  veil: v.optional(choice("what hangs or lies before the glass", VEILS)),
  opposite_deg: v.optional(quantity("height of what stands opposite", "°", 0, 80)),
  recess_m: v.optional(quantity("depth of the wall outside the glass", "m", 0, 0.6)),
});
export type WindowData = v.InferOutput<typeof windowSchema>;

const standsSchema = v.strictObject({
  /** To the right of the middle of the window, seen from inside; of the middle of the shelf where there is no window. */
  along_m: quantity("place along the bench, from its middle", "m", -6, 6),
  fromGlass_m: quantity("distance from the glass", "m", 0.02, 6),
});
export type StandsData = v.InferOutput<typeof standsSchema>;

const lampSchema = v.pipe(
  v.strictObject({
    /** Which lamp of the bench. The first when left out. */
    lamp_n: v.optional(count("which lamp of the bench", 1, 20)),
    form: choice("form of the lamp", LAMP_FORMS),
    source: choice("kind of lamp", LAMP_SOURCES),
    length_m: v.optional(quantity("length of the lit part", "m", 0.02, 4)),
    width_m: v.optional(quantity("width of the lit part", "m", 0.01, 3)),
    beam_deg: v.optional(quantity("full angle of the beam", "°", 10, 170)),
    power_W: quantity("power at the plug", "W", 1, 2000),
    efficacy_umol_J: v.optional(quantity("photons per joule", "µmol/J", 0.2, 4)),
    above_m: quantity("height above the leaves", "m", 0.03, 4),
    along_m: v.optional(quantity("place along the bench, from its middle", "m", -6, 6)),
    fromGlass_m: v.optional(quantity("distance from the glass", "m", 0, 6)),
  }),
  v.check(
    (lamp) => lamp.form === "point" || lamp.length_m !== undefined,
    "length of the lit part is missing; expected 0.02 to 4 m for a lamp that is no point",
  ),
);
export type LampData = v.InferOutput<typeof lampSchema>;

const lampHoursSchema = v.strictObject({
  from_h: quantity("hour at which the lamp goes on", "h", 0, 24),
  hours_h: quantity("hours the lamp burns", "h", 0, 24),
});
export type LampHoursData = v.InferOutput<typeof lampHoursSchema>;

const outageSchema = v.strictObject({
  what: choice("what is out", ["lamps", "heating"]),
  is: choice("out or back", ["out", "back"]),
});
export type OutageData = v.InferOutput<typeof outageSchema>;

const meterSchema = { most_lux: 150_000, most_umol: 2600 } as const;
const pairSchema = v.pipe(
  v.strictObject({
    inside_lux: v.optional(quantity("light at the leaf", "lux", 1, meterSchema.most_lux)),
    outside_lux: v.optional(quantity("light outdoors", "lux", 50, meterSchema.most_lux)),
    inside_umol_m2_s: v.optional(quantity("light at the leaf", "µmol/m²s", 0.05, meterSchema.most_umol)),
    outside_umol_m2_s: v.optional(quantity("light outdoors", "µmol/m²s", 1, meterSchema.most_umol)),
    sky: choice("sky", ["evenly grey", "broken", "clear"]),
  }),
  v.check(
    (pair) =>
      (pair.inside_lux !== undefined && pair.outside_lux !== undefined) ||
      (pair.inside_umol_m2_s !== undefined && pair.outside_umol_m2_s !== undefined),
    "one reading of the pair is missing; expected inside and outside, both in lux or both in µmol/m²s",
  ),
);
export type PairData = v.InferOutput<typeof pairSchema>;

const underLampSchema = v.pipe(
  v.strictObject({
    under_lux: v.optional(quantity("light under the lamp", "lux", 1, meterSchema.most_lux)),
    ppfd_umol_m2_s: v.optional(quantity("light under the lamp", "µmol/m²s", 0.1, meterSchema.most_umol)),
    /** Where it was held; at the leaves of the spot when left out. */
    above_m: v.optional(quantity("lamp above the sensor", "m", 0.03, 4)),
  }),
  v.check(
    (read) => (read.under_lux === undefined) !== (read.ppfd_umol_m2_s === undefined),
    "light under the lamp is missing or given twice; expected one reading in lux or in µmol/m²s",
  ),
);
export type UnderLampData = v.InferOutput<typeof underLampSchema>;

const tariffSchema = v.strictObject({
  price_minor_kWh: quantity("price of electricity in hundredths of the currency", "per kWh", 0, 500),
  cheapPrice_minor_kWh: v.optional(
    quantity("price in the cheap hours in hundredths of the currency", "per kWh", 0, 500),
  ),
  cheapFrom_h: v.optional(quantity("hour at which the cheap hours begin", "h", 0, 24)),
  cheapHours_h: v.optional(quantity("cheap hours", "h", 0, 24)),
});
export type TariffData = v.InferOutput<typeof tariffSchema>;

const all = { v: 1, readers: "all", onMin_n: 1, subject: "bench" } as const;
const nothing = () => [];

/** What a place gives in light, and what was read there. Spots are named like benches in `on`. */
export const lightKinds = {
  window: {
    ...all,
    kind: "bench.window",
    schema: windowSchema,
    sentence: (data, say) => lightSentences(say).window(data),
    effects: nothing,
    example: { faces_deg: 180, width_m: 1.2, height_m: 1.4, sill_m: 0, glazing: "double" },
  } satisfies EntryKind<WindowData>,
  stands: {
    ...all,
    kind: "spot.stands",
    schema: standsSchema,
    sentence: (data, say) => lightSentences(say).stands(data),
    effects: nothing,
    example: { along_m: -0.3, fromGlass_m: 0.25 },
  } satisfies EntryKind<StandsData>,
  lamp: {
    ...all,
    kind: "bench.lamp",
    schema: lampSchema,
    sentence: (data, say) => lightSentences(say).lamp(data),
    effects: nothing,
    example: {
      form: "strip",
      source: "white LED",
      length_m: 1.1,
      width_m: 0.06,
      power_W: 36,
      efficacy_umol_J: 2.4,
      above_m: 0.35,
    },
  } satisfies EntryKind<LampData>,
  lampHours: {
    ...all,
    kind: "bench.timer",
    schema: lampHoursSchema,
    sentence: (data, say) => lightSentences(say).lampHours(data),
    effects: nothing,
    example: { from_h: 6, hours_h: 12 },
  } satisfies EntryKind<LampHoursData>,
  outage: {
    ...all,
    kind: "bench.outage",
    schema: outageSchema,
    sentence: (data, say) => lightSentences(say).outage(data),
    effects: nothing,
    example: { what: "lamps", is: "out" },
  } satisfies EntryKind<OutageData>,
  pair: {
    ...all,
    kind: "light.pair",
    schema: pairSchema,
    sentence: (data, say) => lightSentences(say).pair(data),
    effects: nothing,
    example: { inside_lux: 1400, outside_lux: 9000, sky: "evenly grey" },
  } satisfies EntryKind<PairData>,
  underLamp: {
    ...all,
    kind: "light.lamp",
    schema: underLampSchema,
    sentence: (data, say) => lightSentences(say).underLamp(data),
    effects: nothing,
    example: { ppfd_umol_m2_s: 180, above_m: 0.3 },
  } satisfies EntryKind<UnderLampData>,
  tariff: {
    ...all,
    kind: "supply.tariff",
    subject: "book",
    readers: "grower",
    schema: tariffSchema,
    sentence: (data, say) => lightSentences(say).tariff(data),
    effects: nothing,
    example: { price_minor_kWh: 30 },
  } satisfies EntryKind<TariffData>,
} as const;

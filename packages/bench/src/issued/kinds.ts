import * as v from "valibot";
import { count, day } from "../book/fields.ts";
import { isSha256 } from "../book/hash.ts";
import type { EntryKind } from "../book/kinds.ts";

const issuedSchema = v.strictObject({
  /** The book day whose first round they were issued for. */
  date: day("book day of the forecasts"),
  engine: v.pipe(
    v.string("version of the engine is not text"),
    v.regex(
      /^[A-Za-z0-9.+-]{1,40}$/,
      (issue) =>
        `version of the engine is ${JSON.stringify(issue.input)}; expected 1 to 40 letters, digits and . + -`,
    ),
    v.metadata({ what: "version of the engine", unit: "", min: 1, max: 40 }),
  ),
  inputs: v.pipe(
    v.string("digest of the inputs is not text"),
    v.check(
      isSha256,
      (issue) =>
        `digest of the inputs is ${JSON.stringify(issue.input)}; expected 64 lower-case hexadecimal digits`,
    ),
    v.metadata({ what: "digest of what the forecasts rest on", unit: "", min: 64, max: 64 }),
  ),
  plants_n: count("plants forecast", 1, 20_000),
});
export type IssuedData = v.InferOutput<typeof issuedSchema>;

export const FORECAST_ISSUED = "forecast.issued";

/** The day's forecasts, kept as issued: the file that the entry names holds them (`text.ts`). It does nothing to plants. */
export const issuedKinds = {
  issued: {
    kind: FORECAST_ISSUED,
    v: 1,
    readers: "all",
    subject: "book",
    onMin_n: 0,
    schema: issuedSchema,
    sentence: ({ plants_n }, say) =>
      say.language === "de"
        ? `Vorhersagen des Tages aufgehoben, für ${plants_n} ${plants_n === 1 ? "Pflanze" : "Pflanzen"}`
        : `the day's forecasts were kept, for ${plants_n} ${plants_n === 1 ? "plant" : "plants"}`,
    effects: () => [],
    example: { date: "2026-03-12", engine: "2.1", inputs: "0".repeat(64), plants_n: 40 },
  } satisfies EntryKind<IssuedData>,
} as const;

import * as v from "valibot";
import { choice, count, day, id, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import type { Say } from "../words/say.ts";
import { habitSchema } from "./kinds.ts";

const startedSchema = v.strictObject({
  name: text("name of the batch", 60),
  habit: habitSchema,
  cultivar: v.optional(id("cultivar")),
  count_n: count("plants", 1, 100_000),
  sownOn: v.optional(day("sowing date")),
  seedLot: v.optional(text("seed lot", 60)),
  spot: v.optional(id("spot")),
});
export type BatchStarted = v.InferOutput<typeof startedSchema>;

const cultivarSchema = v.strictObject({
  name: text("name of the cultivar", 80),
  species: v.optional(
    choice("species", ["annuum", "chinense", "baccatum", "frutescens", "pubescens", "unknown"]),
    "unknown",
  ),
  habit: habitSchema,
  fruit: v.optional(text("fruit", 120)),
  propagationRestricted: v.optional(v.boolean("whether propagation is restricted is not yes or no"), false),
});
export type Cultivar = v.InferOutput<typeof cultivarSchema>;
export type Species = NonNullable<Cultivar["species"]>;

const said = (say: Say, english: string, german: string) => (say.language === "de" ? german : english);
const batch = { v: 1, readers: "all", subject: "batch", onMin_n: 1 } as const;

export const batchKinds = {
  cultivar: {
    v: 1,
    readers: "all",
    subject: "cultivar",
    onMin_n: 1,
    kind: "cultivar.described",
    schema: cultivarSchema,
    sentence: (data, say) => {
      const restricted = data.propagationRestricted
        ? said(say, ", propagation restricted", ", Vermehrung eingeschränkt")
        : "";
      return said(say, `cultivar “${data.name}”${restricted}`, `Sorte „${data.name}“${restricted}`);
    },
    effects: () => [],
    example: {
      name: "Ember Thread",
      species: "annuum",
      habit: "thin",
      fruit: "thin, red, 6 cm",
      propagationRestricted: false,
    },
  } satisfies EntryKind<Cultivar>,
  started: {
    ...batch,
    kind: "batch.started",
    schema: startedSchema,
    sentence: (data, say) =>
      said(
        say,
        `batch “${data.name}” of ${data.count_n} plants`,
        `Satz „${data.name}“ mit ${data.count_n} Pflanzen`,
      ),
    effects: () => [],
    example: { name: "Spring sowing", habit: "thin", count_n: 60, sownOn: "2026-02-10" },
  } satisfies EntryKind<BatchStarted>,
  split: {
    ...batch,
    kind: "batch.split",
    schema: v.strictObject({
      into: id("new batch"),
      name: text("name of the new batch", 60),
      count_n: count("plants", 1, 100_000),
    }),
    sentence: (data, say) =>
      said(
        say,
        `${data.count_n} plants split off into “${data.name}”`,
        `${data.count_n} Pflanzen abgeteilt als „${data.name}“`,
      ),
    effects: (data) => [{ effect: "split", count_n: data.count_n, into: data.into }],
    example: { into: "batch-2", name: "Potted on early", count_n: 20 },
  } satisfies EntryKind<{ into: string; name: string; count_n: number }>,
  merged: {
    ...batch,
    kind: "batch.merged",
    schema: v.strictObject({ into: id("batch") }),
    sentence: (data, say) =>
      said(say, `merged into ${say.name(data.into)}`, `vereinigt mit ${say.name(data.into)}`),
    effects: (data) => [{ effect: "merged", into: data.into }],
    example: { into: "batch-1" },
  } satisfies EntryKind<{ into: string }>,
  lost: {
    ...batch,
    kind: "batch.lost",
    schema: v.strictObject({ count_n: count("plants lost", 1, 100_000), why: v.optional(text("why", 200)) }),
    sentence: (data, say) => {
      const why = data.why ? `: ${data.why}` : "";
      return said(say, `${data.count_n} lost${why}`, `${data.count_n} verloren${why}`);
    },
    effects: (data) => [{ effect: "lost", count_n: data.count_n }],
    example: { count_n: 3, why: "damped off" },
  } satisfies EntryKind<{ count_n: number; why?: string | undefined }>,
} as const;

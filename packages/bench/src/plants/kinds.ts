import * as v from "valibot";
import type { Effect } from "../book/effects.ts";
import { choice, count, day, id, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import { type Branched, branchedSchema } from "./branches.ts";
import { mediumSchema, potSchema } from "./pot.ts";
import { plantSentences } from "./sentences.ts";

/** The highest number a label carries: five digits fit the pad. */
export const HIGHEST_NUMBER = 99_999;

export const habitSchema = choice("kind of plant", ["thin", "fat", "lantern", "tiny", "unknown"]);
const number = count("number", 1, HIGHEST_NUMBER);

const broughtSchema = v.strictObject({
  number: v.optional(number),
  habit: habitSchema,
  cultivar: v.optional(id("cultivar")),
  batch: v.optional(id("batch")),
  sownOn: v.optional(day("sowing date")),
  pot: v.optional(potSchema),
  medium: v.optional(mediumSchema, "unknown"),
  spot: v.optional(id("spot")),
  seedLot: v.optional(text("seed lot", 60)),
  mother: v.optional(id("mother plant")),
  father: v.optional(id("father plant")),
  rootstock: v.optional(text("rootstock", 60)),
});
export type Brought = v.InferOutput<typeof broughtSchema>;

const measuredSchema = v.pipe(
  v.strictObject({
    height_cm: v.optional(quantity("height", "cm", 0.5, 400)),
    caliper_mm: v.optional(quantity("stem caliper", "mm", 0.5, 120)),
    leaves_n: v.optional(count("leaves", 0, 20_000)),
    leafLength_cm: v.optional(quantity("leaf length", "cm", 0.3, 40)),
    leafWidth_cm: v.optional(quantity("leaf width", "cm", 0.2, 30)),
    stage: v.optional(choice("stage", ["seedling", "in leaf", "in bud", "in flower", "in fruit", "at rest"])),
  }),
  v.check(
    (facts) => Object.keys(facts).length > 0,
    "nothing was measured; expected height, caliper, leaves, leaf size or stage",
  ),
);
export type PlantMeasured = v.InferOutput<typeof measuredSchema>;

const pottedSchema = v.strictObject({ pot: v.optional(potSchema), medium: mediumSchema });
export type Potted = v.InferOutput<typeof pottedSchema>;

const plant = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;
const none = (): readonly Effect[] => [];

export const plantKinds = {
  brought: {
    ...plant,
    kind: "plant.brought",
    schema: broughtSchema,
    sentence: (data, say) => plantSentences(say).brought(data),
    effects: (data) => (data.spot ? [{ effect: "moved", to: data.spot }] : []),
    example: {
      number: 127,
      habit: "thin",
      pot: { form: "round", top_cm: 12, depth_cm: 9 },
      medium: "spongy",
      spot: "south-sill-1",
    },
  } satisfies EntryKind<Brought>,
  numbered: {
    ...plant,
    kind: "plant.numbered",
    schema: v.strictObject({ number }),
    sentence: (data, say) => plantSentences(say).numbered(data.number),
    effects: none,
    example: { number: 144 },
  } satisfies EntryKind<{ number: number }>,
  potted: {
    ...plant,
    kind: "plant.potted",
    schema: pottedSchema,
    sentence: (data, say) => plantSentences(say).potted(data),
    effects: (data) => [
      ...(data.pot ? [{ effect: "pot changed" } as const] : []),
      { effect: "medium renewed", renewed_frac: 1 },
    ],
    example: { pot: { form: "oval", length_cm: 18, width_cm: 12, depth_cm: 6 }, medium: "gritty" },
  } satisfies EntryKind<Potted>,
  described: {
    ...plant,
    kind: "plant.described",
    schema: v.strictObject({
      habit: v.optional(habitSchema),
      cultivar: v.optional(id("cultivar")),
      sownOn: v.optional(day("sowing date")),
      medium: v.optional(mediumSchema),
      pot: v.optional(potSchema),
      notForSale: v.optional(v.boolean("whether it is for sale is not yes or no")),
    }),
    sentence: (_data, say) => plantSentences(say).described(),
    effects: none,
    example: { habit: "lantern", medium: "bark" },
  } satisfies EntryKind<Described>,
  moved: {
    ...plant,
    kind: "plant.moved",
    schema: v.strictObject({ to: id("spot") }),
    sentence: (data, say) => plantSentences(say).moved(data.to),
    effects: (data) => [{ effect: "moved", to: data.to }],
    example: { to: "lamp-shelf-a-4" },
  } satisfies EntryKind<{ to: string }>,
  measured: {
    ...plant,
    kind: "plant.measured",
    schema: measuredSchema,
    sentence: (data, say) => plantSentences(say).measured(data),
    effects: (data) => {
      const { leaves_n, leafLength_cm, leafWidth_cm } = data;
      if (leaves_n === undefined && leafLength_cm === undefined && leafWidth_cm === undefined) return [];
      // The house turns count and size into an area when it folds; the crafts hear only that it was measured.
      return [{ effect: "leaf area" }];
    },
    example: { height_cm: 24, caliper_mm: 9, leaves_n: 42, leafLength_cm: 5 },
  } satisfies EntryKind<PlantMeasured>,
  branched: {
    ...plant,
    kind: "plant.branched",
    schema: branchedSchema,
    sentence: (data, say) => plantSentences(say).branched(data),
    effects: none,
    example: { branch: "A", thickness_mm: 5, length_cm: 14, lean_deg: 40, leaves_n: 18 },
  } satisfies EntryKind<Branched>,
  noted: {
    ...plant,
    kind: "plant.noted",
    schema: v.strictObject({ text: text("note", 2000) }),
    sentence: (data, say) => plantSentences(say).noted(data.text),
    effects: none,
    example: { text: "Leans to the left since the move." },
  } satisfies EntryKind<{ text: string }>,
  ended: {
    ...plant,
    kind: "plant.ended",
    schema: v.strictObject({ how: choice("how it ended", ["died", "thrown out", "sold", "given"]) }),
    sentence: (data, say) => plantSentences(say).ended(data.how),
    effects: (data) => [{ effect: "ended", how: data.how }],
    example: { how: "given" },
  } satisfies EntryKind<{ how: "died" | "thrown out" | "sold" | "given" }>,
  reopened: {
    ...plant,
    kind: "plant.reopened",
    schema: v.strictObject({}),
    sentence: (_data, say) => plantSentences(say).reopened(),
    effects: () => [{ effect: "reopened" }],
    example: {},
  } satisfies EntryKind<object>,
} as const;

interface Described {
  habit?: "thin" | "fat" | "lantern" | "tiny" | "unknown" | undefined;
  cultivar?: string | undefined;
  sownOn?: string | undefined;
  medium?: "spongy" | "bark" | "gritty" | "unknown" | undefined;
  pot?: v.InferOutput<typeof potSchema> | undefined;
  notForSale?: boolean | undefined;
}

import { colourStages, heatBases, seedIsolations } from "@sillwood/science/fruit";
import * as v from "valibot";
import { choice, count, day, quantity, text } from "../../book/fields.ts";
import type { AnyEntryKind, EntryKind } from "../../book/kinds.ts";
import { branchLetter } from "../../plants/branches.ts";
import { fruitingWords } from "./words.ts";

const branch = v.optional(branchLetter());
const roughly = v.optional(v.boolean("whether it was counted roughly is not yes or no"));
const tag = v.optional(text("tag", 12));
const MOST_n = 2000;

/** Open flowers and buds, of the plant or of one branch. */
const floweredSchema = v.strictObject({
  open_n: count("open flowers", 0, MOST_n),
  buds_n: v.optional(count("flower buds", 0, MOST_n)),
  branch,
  roughly,
});
export type Flowered = v.InferOutput<typeof floweredSchema>;

const brushings = ["brush", "tap", "vibration"] as const;
const brushedSchema = v.strictObject({
  open_n: count("flowers brushed", 1, MOST_n),
  how: v.optional(choice("how pollen was moved", brushings), "brush"),
});
export type Brushed = v.InferOutput<typeof brushedSchema>;

/** Fruits that hang, of the plant or of one branch. */
const countedSchema = v.strictObject({ fruits_n: count("fruits", 0, MOST_n), branch, roughly });
export type Counted = v.InferOutput<typeof countedSchema>;

const pinched = ["buds", "flowers", "fruits"] as const;
const thinnedSchema = v.strictObject({
  what: choice("what was pinched out", pinched),
  removed_n: count("pinched out", 1, MOST_n),
  branch,
  mass_g: v.optional(quantity("mass taken off", "g", 0, 20_000)),
});
export type Thinned = v.InferOutput<typeof thinnedSchema>;

const droppedSchema = v.strictObject({
  what: choice("what dropped", pinched),
  dropped_n: count("dropped", 1, MOST_n),
  branch,
});
export type Dropped = v.InferOutput<typeof droppedSchema>;

/** Fruits of flowers that opened together, followed until they are ripe. */
const taggedSchema = v.strictObject({
  fruits_n: count("fruits", 1, 500),
  openedOn: v.optional(day("day on which the flowers opened")),
  tag,
  branch,
});
export type Tagged = v.InferOutput<typeof taggedSchema>;

const colouredSchema = v.strictObject({ colour: choice("colour", colourStages), tag });
export type Coloured = v.InferOutput<typeof colouredSchema>;

const pickedSchema = v.pipe(
  v.strictObject({
    fruits_n: count("fruits picked", 1, 500),
    mass_g: v.optional(quantity("mass of the fruits picked", "g", 0.1, 20_000)),
    colour: v.optional(choice("colour", colourStages)),
    tag,
    branch,
  }),
  v.check(
    ({ fruits_n, mass_g }) => mass_g === undefined || mass_g / fruits_n <= 300,
    "mass of the fruits picked is more than 300 g for each; expected at most 300 g a fruit",
  ),
);
export type Picked = v.InferOutput<typeof pickedSchema>;

const aims = ["full", "many"] as const;
const aimedSchema = v.strictObject({ aim: choice("what is wanted", aims) });
export type Aimed = v.InferOutput<typeof aimedSchema>;

/** Heat as a laboratory gave it: never a number without its basis. */
const assayedSchema = v.pipe(
  v.strictObject({
    content_ug_g: v.optional(quantity("capsaicin and its like", "µg/g", 0, 200_000)),
    heat_n: v.optional(quantity("heat", "SHU", 0, 3_200_000)),
    basis: choice("basis", heatBases),
    water_frac: v.optional(quantity("water of the fresh fruit", "share", 0.3, 0.99)),
    method: v.optional(text("method", 60)),
  }),
  v.check(
    ({ content_ug_g, heat_n }) => (content_ug_g === undefined) !== (heat_n === undefined),
    "content and heat are both given or both missing; expected one of the two, in µg/g or SHU",
  ),
);
export type Assayed = v.InferOutput<typeof assayedSchema>;

/** Seed taken from its fruit. */
const seededSchema = v.strictObject({
  lot: text("seed lot", 60),
  fruits_n: count("fruits", 1, 500),
  seeds_n: v.optional(count("seeds", 1, 100_000)),
  kept: v.optional(choice("how the flowers were kept", seedIsolations), "none"),
});
export type Seeded = v.InferOutput<typeof seededSchema>;

const testedSchema = v.pipe(
  v.strictObject({
    lot: text("seed lot", 60),
    tested_n: count("seeds laid out", 1, 10_000),
    germinated_n: count("seeds that germinated", 0, 10_000),
  }),
  v.check(
    ({ tested_n, germinated_n }) => germinated_n <= tested_n,
    "more seeds germinated than were laid out; expected at most the seeds laid out",
  ),
);
export type Tested = v.InferOutput<typeof testedSchema>;

const plant = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;
const none = () => [];

export const kinds = {
  flowered: {
    ...plant,
    kind: "fruiting.flowered",
    schema: floweredSchema,
    sentence: (data, say) => fruitingWords(say).sentence.flowered(data),
    effects: none,
    example: { open_n: 3, buds_n: 8 },
  } satisfies EntryKind<Flowered>,
  brushed: {
    ...plant,
    kind: "fruiting.brushed",
    schema: brushedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.brushed(data),
    effects: none,
    example: { open_n: 3, how: "brush" },
  } satisfies EntryKind<Brushed>,
  counted: {
    ...plant,
    kind: "fruiting.counted",
    schema: countedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.counted(data),
    effects: none,
    example: { fruits_n: 9 },
  } satisfies EntryKind<Counted>,
  thinned: {
    ...plant,
    kind: "fruiting.thinned",
    schema: thinnedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.thinned(data),
    effects: ({ what, removed_n, mass_g }) => [
      what === "fruits"
        ? { effect: "fruit", change_n: -removed_n, ...(mass_g === undefined ? {} : { change_g: -mass_g }) }
        : { effect: "flowers", change_n: -removed_n },
      ...(mass_g === undefined ? [] : [{ effect: "mass", change_g: -mass_g } as const]),
    ],
    example: { what: "fruits", removed_n: 2, branch: "A" },
  } satisfies EntryKind<Thinned>,
  dropped: {
    ...plant,
    kind: "fruiting.dropped",
    schema: droppedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.dropped(data),
    effects: ({ what, dropped_n }) => [
      { effect: what === "fruits" ? "fruit" : "flowers", change_n: -dropped_n },
    ],
    example: { what: "flowers", dropped_n: 2 },
  } satisfies EntryKind<Dropped>,
  tagged: {
    ...plant,
    kind: "fruiting.tagged",
    schema: taggedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.tagged(data),
    effects: none,
    example: { fruits_n: 2, openedOn: "2026-01-04", tag: "red" },
  } satisfies EntryKind<Tagged>,
  coloured: {
    ...plant,
    kind: "fruiting.coloured",
    schema: colouredSchema,
    sentence: (data, say) => fruitingWords(say).sentence.coloured(data),
    effects: none,
    example: { colour: "breaker", tag: "red" },
  } satisfies EntryKind<Coloured>,
  picked: {
    ...plant,
    kind: "fruiting.picked",
    schema: pickedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.picked(data),
    effects: ({ fruits_n, mass_g }) => [
      { effect: "fruit", change_n: -fruits_n, ...(mass_g === undefined ? {} : { change_g: -mass_g }) },
      ...(mass_g === undefined ? [] : [{ effect: "mass", change_g: -mass_g } as const]),
    ],
    example: { fruits_n: 2, mass_g: 15, colour: "ripe" },
  } satisfies EntryKind<Picked>,
  aimed: {
    ...plant,
    kind: "fruiting.aimed",
    schema: aimedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.aimed(data),
    effects: none,
    example: { aim: "many" },
  } satisfies EntryKind<Aimed>,
  assayed: {
    ...plant,
    kind: "fruiting.assayed",
    schema: assayedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.assayed(data),
    effects: none,
    example: { content_ug_g: 2400, basis: "dry", method: "HPLC" },
  } satisfies EntryKind<Assayed>,
  seeded: {
    ...plant,
    kind: "fruiting.seeded",
    schema: seededSchema,
    sentence: (data, say) => fruitingWords(say).sentence.seeded(data),
    effects: none,
    example: { lot: "127-2026", fruits_n: 2, seeds_n: 60, kept: "bagged" },
  } satisfies EntryKind<Seeded>,
  tested: {
    ...plant,
    kind: "fruiting.tested",
    schema: testedSchema,
    sentence: (data, say) => fruitingWords(say).sentence.tested(data),
    effects: none,
    example: { lot: "127-2026", tested_n: 20, germinated_n: 17 },
  } satisfies EntryKind<Tested>,
} as const;

export const fruitingKinds: readonly AnyEntryKind[] = Object.values(kinds);

import { type MediumName, mediumNames, saltMethods } from "@sillwood/science/medium";
import * as v from "valibot";
import type { Effect } from "../../book/effects.ts";
import { choice, count, id, quantity } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { pottingWords } from "./words.ts";

const partSchema = v.strictObject({
  part: choice("part of the mix", mediumNames as readonly [MediumName, ...MediumName[]]),
  scoops_n: count("scoops", 1, 100),
});

/** What a pot was filled with: whole scoops of each part. */
const filledSchema = v.strictObject({
  recipe: v.pipe(
    v.array(partSchema),
    v.minLength(1, "no part in the mix; expected 1 to 10 parts"),
    v.maxLength(10, "more than 10 parts in the mix; expected 1 to 10 parts"),
  ),
});
export type Filled = v.InferOutput<typeof filledSchema>;

/** A porosity test at home: a pot of this medium, full of water, drained, and if possible dried. */
const testedSchema = v.pipe(
  v.strictObject({
    medium_mL: quantity("volume of the medium", "mL", 10, 100_000),
    fill_cm: quantity("height of the medium", "cm", 0.5, 100),
    saturated_g: quantity("contents full of water", "g", 1, 200_000),
    drained_g: quantity("contents drained", "g", 1, 200_000),
    dry_g: v.optional(quantity("contents dried", "g", 1, 200_000)),
  }),
  v.check(
    ({ saturated_g, drained_g }) => saturated_g > drained_g,
    "drained weighs more than full of water; expected less, in g",
  ),
  v.check(
    ({ saturated_g, drained_g, medium_mL }) => saturated_g - drained_g <= 0.6 * medium_mL,
    "more than 60 % of the volume ran out; expected at most 60 %, in mL",
  ),
  v.check(
    ({ drained_g, dry_g }) => dry_g === undefined || dry_g < drained_g,
    "dried weighs more than drained; expected less, in g",
  ),
  v.check(
    ({ drained_g, dry_g, saturated_g, medium_mL }) =>
      dry_g === undefined ||
      (saturated_g - dry_g <= 0.985 * medium_mL && drained_g - dry_g > 0.05 * medium_mL),
    "water and air do not fit into the volume; expected 5 to 98.5 % of it, in mL",
  ),
);
export type Tested = v.InferOutput<typeof testedSchema>;

/** Water and medium as they stood when a potting day began; puts a plant on the rail. */
const preparedSchema = v.strictObject({
  water_C: quantity("water", "°C", 0, 60),
  medium_C: quantity("medium", "°C", 0, 60),
  room_C: quantity("room", "°C", -10, 50),
});
export type Prepared = v.InferOutput<typeof preparedSchema>;

const cutSchema = v.strictObject({ leavesKept_frac: quantity("share of the leaves left", "", 0, 1) });
export type CutBack = v.InferOutput<typeof cutSchema>;

const washedSchema = v.strictObject({ rootsKept_frac: quantity("share of the roots kept", "", 0.05, 1) });
export type Washed = v.InferOutput<typeof washedSchema>;

const placedSchema = v.strictObject({ to: v.optional(id("spot")) });
export type Placed = v.InferOutput<typeof placedSchema>;

/** A reading of salts; without its method it is no reading. */
const saltsSchema = v.strictObject({
  ec_mS_cm: quantity("meter reading", "mS/cm", 0, 30),
  method: choice("method", saltMethods),
});
export type SaltsRead = v.InferOutput<typeof saltsSchema>;

const lookedSchema = v.strictObject({
  rootsCircling: v.boolean("roots circling is not yes or no"),
  standing_s: quantity("time that water stands on the medium", "s", 0, 3600),
});
export type RootsLooked = v.InferOutput<typeof lookedSchema>;

const plant = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;
const none = (): readonly Effect[] => [];
const nothing = v.strictObject({});

export const FILLED = "potting.filled";
export const TESTED = "potting.tested";
export const PREPARED = "potting.prepared";
export const LIFTED = "potting.lifted";
export const CUT = "potting.cut";
export const WASHED = "potting.washed";
export const DRAINED = "potting.drained";
export const PLACED = "potting.placed";
export const SALTS = "potting.salts";
export const LOOKED = "potting.looked";

/** The entries of the craft: what a pot is filled with and measured to hold, a potting day step by step, salts and roots. */
export const pottingKinds = [
  {
    ...plant,
    kind: FILLED,
    schema: filledSchema,
    sentence: (data, say) => pottingWords(say).filled(data),
    effects: none,
    example: {
      recipe: [
        { part: "pumice", scoops_n: 2 },
        { part: "bark", scoops_n: 1 },
      ],
    },
  } satisfies EntryKind<Filled>,
  {
    ...plant,
    kind: TESTED,
    schema: testedSchema,
    sentence: (data, say) => pottingWords(say).tested(data),
    effects: none,
    example: { medium_mL: 500, fill_cm: 8, saturated_g: 520, drained_g: 455, dry_g: 90 },
  } satisfies EntryKind<Tested>,
  {
    ...plant,
    kind: PREPARED,
    schema: preparedSchema,
    sentence: (data, say) => pottingWords(say).prepared(data),
    effects: none,
    example: { water_C: 18, medium_C: 19, room_C: 21 },
  } satisfies EntryKind<Prepared>,
  {
    ...plant,
    kind: LIFTED,
    schema: nothing,
    sentence: (_data, say) => pottingWords(say).lifted,
    effects: none,
    example: {},
  } satisfies EntryKind<object>,
  {
    ...plant,
    kind: CUT,
    schema: cutSchema,
    sentence: (data, say) => pottingWords(say).cutBack(data),
    effects: (data) => [
      { effect: "structure", what: "cut" },
      { effect: "leaf area", kept_frac: data.leavesKept_frac },
    ],
    example: { leavesKept_frac: 0.6 },
  } satisfies EntryKind<CutBack>,
  {
    ...plant,
    kind: WASHED,
    schema: washedSchema,
    sentence: (data, say) => pottingWords(say).washed(data),
    effects: (data) => [{ effect: "roots", kept_frac: data.rootsKept_frac }],
    example: { rootsKept_frac: 0.75 },
  } satisfies EntryKind<Washed>,
  {
    ...plant,
    kind: DRAINED,
    schema: nothing,
    sentence: (_data, say) => pottingWords(say).drained,
    effects: none,
    example: {},
  } satisfies EntryKind<object>,
  {
    ...plant,
    kind: PLACED,
    schema: placedSchema,
    sentence: (data, say) => pottingWords(say).placed(data),
    effects: (data) => (data.to === undefined ? [] : [{ effect: "moved", to: data.to }]),
    example: {},
  } satisfies EntryKind<Placed>,
  {
    ...plant,
    kind: SALTS,
    schema: saltsSchema,
    sentence: (data, say) => pottingWords(say).saltsRead(data),
    effects: none,
    example: { ec_mS_cm: 1.8, method: "pour-through" },
  } satisfies EntryKind<SaltsRead>,
  {
    ...plant,
    kind: LOOKED,
    schema: lookedSchema,
    sentence: (data, say) => pottingWords(say).rootsLooked(data),
    effects: none,
    example: { rootsCircling: true, standing_s: 20 },
  } satisfies EntryKind<RootsLooked>,
] as const;

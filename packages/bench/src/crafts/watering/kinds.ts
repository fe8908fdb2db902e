import * as v from "valibot";
import type { Effect } from "../../book/effects.ts";
import { choice, quantity } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { wateringWords } from "./words.ts";

/** What was poured, and whether water ran out below. */
const wateredSchema = v.pipe(
  v.strictObject({
    volume_mL: quantity("volume poured", "mL", 1, 20_000),
    drained: choice("drained", ["yes", "no", "unknown"]),
    leachate_mL: v.optional(quantity("water that ran out", "mL", 0, 20_000)),
    way: v.optional(choice("way of watering", ["poured", "soaked"])),
  }),
  v.check(
    ({ volume_mL, leachate_mL }) => leachate_mL === undefined || leachate_mL <= volume_mL,
    "more water ran out than was poured; expected at most the volume poured, in mL",
  ),
  v.check(
    ({ drained, leachate_mL }) => drained !== "no" || !leachate_mL,
    "water ran out, yet drained is no; expected drained yes",
  ),
);
export type Watered = v.InferOutput<typeof wateredSchema>;

/** A weight of the whole pot, saucer off. `confirmed` says that a surprising weight was looked at again and holds. */
const weighedSchema = v.strictObject({
  weight_g: quantity("weight", "g", 1, 100_000),
  state: choice("state when weighed", ["as found", "just drained", "at lasting wilt"]),
  confirmed: v.optional(v.literal(true)),
});
export type Weighed = v.InferOutput<typeof weighedSchema>;

/** Signs of wet or dry that a person can see or feel. */
export const lookKeys = ["dry", "light", "drooping", "heavy", "moist", "wet"] as const;
export type LookKey = (typeof lookKeys)[number];

const lookedSchema = v.strictObject({
  look: choice("look", lookKeys),
  yes: v.boolean("yes is not true or false"),
});
export type Looked = v.InferOutput<typeof lookedSchema>;

const onPlants = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;

export const WATERED = "watering.watered";
export const WEIGHED = "watering.weighed";
export const LOOKED = "watering.looked";

/** The entries of the craft: what people pour, weigh and see. */
export const wateringKinds = [
  {
    ...onPlants,
    kind: WATERED,
    schema: wateredSchema,
    sentence: (data, say) => wateringWords(say).watered(data),
    effects: (data): readonly Effect[] => [
      {
        effect: "water in",
        volume_mL: data.volume_mL,
        drained: data.drained,
        ...(data.leachate_mL === undefined ? {} : { leachate_mL: data.leachate_mL }),
      },
    ],
    example: { volume_mL: 180, drained: "yes" },
  } satisfies EntryKind<Watered>,
  {
    ...onPlants,
    kind: WEIGHED,
    schema: weighedSchema,
    sentence: (data, say) => wateringWords(say).weighed(data),
    effects: (): readonly Effect[] => [],
    example: { weight_g: 412, state: "as found" },
  } satisfies EntryKind<Weighed>,
  {
    ...onPlants,
    kind: LOOKED,
    schema: lookedSchema,
    sentence: (data, say) => wateringWords(say).looked(data),
    effects: (): readonly Effect[] => [],
    example: { look: "light", yes: true },
  } satisfies EntryKind<Looked>,
] as const;

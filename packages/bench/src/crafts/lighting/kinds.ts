import * as v from "valibot";
import { choice, quantity } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { lightingWords } from "./words.ts";

/** Turned on its place, clockwise as seen from above. */
const turnedSchema = v.strictObject({
  clockwise_deg: quantity("turn, clockwise seen from above", "°", -360, 360),
});
export type Turned = v.InferOutput<typeof turnedSchema>;

/** Which way the shoots lean; upright is a lean of 0°. */
const leaningSchema = v.strictObject({
  towards: choice("direction of the lean", ["window", "away", "left", "right"]),
  lean_deg: quantity("lean of the shoots from upright", "°", 0, 90),
});
export type Leaning = v.InferOutput<typeof leaningSchema>;

const plant = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;

export const TURNED = "lighting.turned";
export const LEANING = "lighting.leaning";

const turned: EntryKind<Turned> = {
  ...plant,
  kind: TURNED,
  schema: turnedSchema,
  sentence: (data, say) => lightingWords(say).turned(data),
  effects: ({ clockwise_deg }) => [{ effect: "turned", clockwise_deg }],
  example: { clockwise_deg: 90 },
};

const leaning: EntryKind<Leaning> = {
  ...plant,
  kind: LEANING,
  schema: leaningSchema,
  sentence: (data, say) => lightingWords(say).leaning(data),
  effects: () => [],
  example: { towards: "window", lean_deg: 15 },
};

export const lightingKinds = [turned, leaning] as const;

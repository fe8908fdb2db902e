import * as v from "valibot";
import { choice, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import type { Say } from "../words/say.ts";

/** Who somebody is to the book. Names and addresses stand on person cards outside it. */
export type Role = "grower" | "helper" | "viewer";
export const ROLE_WORDS = {
  en: { grower: "the grower", helper: "the helper", viewer: "a viewer" },
  de: { grower: "die Gärtnerin", helper: "die Hilfe", viewer: "ein Gast" },
} as const;

const setSchema = v.strictObject({
  key: text("key of the assumption", 60),
  value: quantity("value", "", -1e9, 1e9),
});
export type AssumptionSet = v.InferOutput<typeof setSchema>;

const said = (say: Say, english: string, german: string) => (say.language === "de" ? german : english);

export const peopleKinds = {
  joined: {
    kind: "person.joined",
    v: 1,
    readers: "all",
    subject: "person",
    onMin_n: 1,
    schema: v.strictObject({ role: choice("role", ["grower", "helper", "viewer"]) }),
    sentence: (data, say) => said(say, `joined as ${data.role}`, `kam dazu: ${ROLE_WORDS.de[data.role]}`),
    effects: () => [],
    example: { role: "helper" },
  } satisfies EntryKind<{ role: Role }>,
  assumption: {
    kind: "assumption.set",
    v: 1,
    readers: "all",
    growerOnly: true,
    subject: "book",
    onMin_n: 1,
    schema: setSchema,
    sentence: (data, say) =>
      said(
        say,
        `assumption “${data.key}” set to ${data.value}`,
        `Annahme „${data.key}“ auf ${data.value} gesetzt`,
      ),
    effects: () => [],
    example: { key: "watering.threshold_frac", value: 0.5 },
  } satisfies EntryKind<AssumptionSet>,
} as const;

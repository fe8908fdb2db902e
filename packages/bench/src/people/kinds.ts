import * as v from "valibot";
import { choice, quantity, text } from "../book/fields.ts";
import type { EntryKind } from "../book/kinds.ts";
import type { Say } from "../words/say.ts";

export const DEVICE_PAIRED = "device.paired";
export const DEVICE_CLOSED = "device.closed";

/** Who somebody is to the book. Names and addresses stand on person cards outside it. */
export const roles = ["grower", "helper", "viewer"] as const;
export type Role = (typeof roles)[number];
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
    schema: v.strictObject({ role: choice("role", roles) }),
    sentence: (data, say) => said(say, `joined as ${data.role}`, `kam dazu: ${ROLE_WORDS.de[data.role]}`),
    effects: () => [],
    example: { role: "helper" },
  } satisfies EntryKind<{ role: Role }>,
  /** Written by the device itself, so that the book tells which phone came when. */
  paired: {
    kind: DEVICE_PAIRED,
    v: 1,
    readers: "all",
    subject: "device",
    onMin_n: 1,
    schema: v.strictObject({ name: text("name of the device", 60) }),
    sentence: (data, say) => said(say, `“${data.name}” was paired`, `„${data.name}“ wurde gekoppelt`),
    effects: () => [],
    example: { name: "kitchen phone" },
  } satisfies EntryKind<{ name: string }>,
  /** From here on the device may only hand in what it still has, for the grower to take or drop. */
  closed: {
    kind: DEVICE_CLOSED,
    v: 1,
    readers: "all",
    growerOnly: true,
    subject: "device",
    onMin_n: 1,
    schema: v.strictObject({ name: v.optional(text("name of the device", 60)) }),
    sentence: ({ name }, say) =>
      name === undefined
        ? said(say, "a phone was closed", "ein Telefon wurde geschlossen")
        : said(say, `“${name}” was closed`, `„${name}“ wurde geschlossen`),
    effects: () => [],
    example: { name: "kitchen phone" },
  } satisfies EntryKind<{ name?: string | undefined }>,
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

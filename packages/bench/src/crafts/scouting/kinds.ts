import { causeKeys, signKeys } from "@sillwood/science/pests";
import * as v from "valibot";
import type { Effect } from "../../book/effects.ts";
import { choice, count, quantity, text } from "../../book/fields.ts";
import type { EntryKind } from "../../book/kinds.ts";
import { allPests, tools, ways } from "./pests.ts";
import { scoutingWords } from "./words.ts";

const onPlants = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;

const foundSchema = v.strictObject({
  pest: choice("pest", allPests),
  count_n: count("animals seen", 1, 10_000),
  stage: v.optional(choice("stage", ["egg", "young", "grown"])),
});
export type Found = v.InferOutput<typeof foundSchema>;
const once = (found: Found[]) =>
  new Set(found.map(({ pest, stage }) => `${pest} ${stage}`)).size === found.length;
const foundField = v.pipe(
  v.array(foundSchema),
  v.maxLength(20, "more than 20 lines of finds; expected one a pest and stage"),
  v.check(once, "one pest and stage stands there twice; expected one line each"),
);

/** A look with its method: how, at how much, and what was found; nothing found is a clean look. */
const lookedSchema = v.pipe(
  v.strictObject({
    way: choice("way of looking", ways),
    tips_n: v.optional(count("shoot tips looked at", 1, 500)),
    leaves_n: v.optional(count("leaves turned", 1, 5000)),
    stem: v.optional(v.boolean("stem is not true or false")),
    found: foundField,
  }),
  v.check(
    ({ way, tips_n, leaves_n, stem }) =>
      way === "tap" || way === "disc" || tips_n !== undefined || leaves_n !== undefined || stem === true,
    "no place was looked at; expected tips_n, leaves_n or stem: a clean look carries its method",
  ),
);
export type Looked = v.InferOutput<typeof lookedSchema>;

/** Sticky cards at the rim of these pots, with the days that they hung; a lost card is missing, not zero. */
const cardSchema = v.pipe(
  v.strictObject({
    out_d: v.optional(quantity("days that the card hung", "d", 0.04, 120)),
    cards_n: v.optional(count("cards", 1, 50)),
    lost: v.optional(v.literal(true)),
    caught: foundField,
  }),
  v.check(
    ({ out_d, lost }) => lost === true || out_d !== undefined,
    "a card with no days out says nothing; expected out_d in d, or lost",
  ),
  v.check(
    ({ lost, caught }) => lost !== true || caught.length === 0,
    "a lost card caught something; expected no catch",
  ),
);
export type Card = v.InferOutput<typeof cardSchema>;

/** One treatment with the label's record; washing under water has no label. */
const treatedSchema = v.pipe(
  v.strictObject({
    tool: choice("tool", tools),
    against: v.pipe(
      v.array(choice("pest", allPests)),
      v.minLength(1, "against names no pest; expected at least one"),
    ),
    product: v.optional(text("product", 80)),
    registration: v.optional(text("registration number", 40)),
    active: v.optional(text("active ingredient", 80)),
    group: v.optional(text("group on the label", 20)),
    strength_frac: v.optional(quantity("strength, as a share of the mix", "", 0.00001, 1)),
    volume_mL: v.optional(quantity("mix used", "mL", 1, 100_000)),
    reentry_h: v.optional(quantity("time before plants may be touched", "h", 0, 720)),
    preharvest_d: v.optional(quantity("time before picking", "d", 0, 365)),
    coverage_frac: v.optional(quantity("share of the plant that was wetted", "", 0.1, 1)),
    course_n: v.optional(count("treatments of the course", 1, 20)),
    every_d: v.optional(quantity("days between them", "d", 1, 60)),
  }),
  v.check(
    ({ tool, product }) => tool === "wash" || product !== undefined,
    "product is missing; expected its name from the label",
  ),
  v.check(
    ({ tool, reentry_h }) => tool === "wash" || reentry_h !== undefined,
    "This label has no re-entry time written (reentry_h, h). Without it the spray cannot be planned.",
  ),
  v.check(
    ({ tool, preharvest_d }) => tool === "wash" || preharvest_d !== undefined,
    "This label has no time before picking written (preharvest_d, d). Without it the spray cannot be planned.",
  ),
  v.check(
    ({ course_n, every_d }) => course_n === undefined || course_n === 1 || every_d !== undefined,
    "every_d is missing; expected the days between the treatments of the course",
  ),
);
export type Treated = v.InferOutput<typeof treatedSchema>;

const arrivedSchema = v.strictObject({
  from: choice("where it came from", ["bought", "borrowed", "outdoors", "own room"]),
  washed: v.optional(v.boolean("washed is not true or false")),
});
export type Arrived = v.InferOutput<typeof arrivedSchema>;

const exposedSchema = v.strictObject({
  pest: choice("pest", allPests),
  how: choice("how it was exposed", ["near", "same room", "hands"]),
});
export type Exposed = v.InferOutput<typeof exposedSchema>;

const share = (what: string) => quantity(what, "", 0, 1);
/** The grower's decision, with the numbers on which it rests. */
const releasedSchema = v.strictObject({
  to: choice("what for", ["move", "sell"]),
  free_frac: share("chance to carry none of the pests considered"),
  low_frac: share("low end of it"),
  high_frac: share("high end of it"),
  looks_n: count("looks since the watch began", 0, 10_000),
  holder: v.optional(choice("pest that held it longest", allPests)),
  reason: v.optional(text("reason", 200)),
});
export type Released = v.InferOutput<typeof releasedSchema>;

const confirmedSchema = v.strictObject({
  cause: v.picklist(
    causeKeys as [string, ...string[]],
    (issue) => `cause is ${JSON.stringify(issue.input)}; expected one of ${causeKeys.join(", ")}`,
  ),
  seen: v.array(choice("sign", signKeys)),
  absent: v.array(choice("sign", signKeys)),
});
export type Confirmed = v.InferOutput<typeof confirmedSchema>;

export const LOOKED = "scouting.looked";
export const CARD = "scouting.card";
export const TREATED = "scouting.treated";
export const ARRIVED = "scouting.arrived";
export const EXPOSED = "scouting.exposed";
export const RELEASED = "scouting.released";
export const CONFIRMED = "scouting.confirmed";

const none = (): readonly Effect[] => [];

/** The entries of the craft: what people look at, hang, spray, bring in, decide. */
export const scoutingKinds = [
  {
    ...onPlants,
    kind: LOOKED,
    schema: lookedSchema,
    sentence: (data, say) => scoutingWords(say).looked(data),
    effects: none,
    example: { way: "lens", tips_n: 3, leaves_n: 6, found: [] },
  } satisfies EntryKind<Looked>,
  {
    ...onPlants,
    kind: CARD,
    schema: cardSchema,
    sentence: (data, say) => scoutingWords(say).card(data),
    effects: none,
    example: { out_d: 7, cards_n: 1, caught: [{ pest: "fungus gnat", count_n: 2 }] },
  } satisfies EntryKind<Card>,
  {
    ...onPlants,
    kind: TREATED,
    schema: treatedSchema,
    sentence: (data, say) => scoutingWords(say).treated(data),
    effects: ({ product, tool }): readonly Effect[] => [{ effect: "sprayed", with: product ?? tool }],
    example: {
      tool: "soap",
      against: ["aphid"],
      product: "soap of the label",
      strength_frac: 0.02,
      reentry_h: 12,
      preharvest_d: 1,
      course_n: 3,
      every_d: 4,
    },
  } satisfies EntryKind<Treated>,
  {
    ...onPlants,
    kind: ARRIVED,
    schema: arrivedSchema,
    sentence: (data, say) => scoutingWords(say).arrived(data),
    effects: none,
    example: { from: "outdoors", washed: true },
  } satisfies EntryKind<Arrived>,
  {
    ...onPlants,
    kind: EXPOSED,
    schema: exposedSchema,
    sentence: (data, say) => scoutingWords(say).exposed(data),
    effects: none,
    example: { pest: "aphid", how: "near" },
  } satisfies EntryKind<Exposed>,
  {
    ...onPlants,
    kind: RELEASED,
    growerOnly: true,
    schema: releasedSchema,
    sentence: (data, say) => scoutingWords(say).released(data),
    effects: none,
    example: {
      to: "sell",
      free_frac: 0.992,
      low_frac: 0.97,
      high_frac: 0.999,
      looks_n: 6,
      holder: "fungus gnat",
    },
  } satisfies EntryKind<Released>,
  {
    ...onPlants,
    kind: CONFIRMED,
    schema: confirmedSchema,
    sentence: (data, say) => scoutingWords(say).confirmed(data),
    effects: none,
    example: { cause: "aphid", seen: ["sticky"], absent: ["webbing"] },
  } satisfies EntryKind<Confirmed>,
] as const;

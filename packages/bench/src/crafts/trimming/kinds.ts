import * as v from "valibot";
import type { Effect } from "../../book/effects.ts";
import { choice, count, id, quantity } from "../../book/fields.ts";
import type { AnyEntryKind, EntryKind } from "../../book/kinds.ts";
import { nodeSchema, photoSchema } from "./trace-fields.ts";
import { trimmingWords } from "./words.ts";

const MOST_BRANCHES_n = 60;
const MOST_NODES_n = 600;
const MOST_CUTS_n = 40;

const list = <Item extends v.GenericSchema>(what: string, item: Item, most_n: number) =>
  v.pipe(
    v.array(item, `${what} are not a list`),
    v.minLength(1, `${what} are an empty list; expected 1 to ${most_n}`),
    v.maxLength(most_n, `${what} are too many; expected 1 to ${most_n}`),
  );

/** Thirty seconds with a ruler and calipers. */
const sketchedSchema = v.strictObject({
  height_mm: quantity("height above the rim", "mm", 10, 3000),
  trunk_mm: quantity("thickness of the trunk", "mm", 0.5, 300),
  branches_mm: v.optional(
    list("branches", quantity("thickness of a branch at its base", "mm", 0.2, 200), MOST_BRANCHES_n),
  ),
  leaves_n: count("leaves on the plant", 0, 20_000),
});
export type Sketched = v.InferOutput<typeof sketchedSchema>;

/** The structure of a plant as traced over two photos; nodes keep their ids through cuts and later traces. */
const tracedSchema = v.pipe(
  v.strictObject({
    nodes: list("nodes", nodeSchema, MOST_NODES_n),
    distance_mm: quantity("distance of the camera", "mm", 50, 20_000),
    focal_px: quantity("focal length of the camera", "px", 100, 50_000),
    front: v.optional(photoSchema),
    side: v.optional(photoSchema),
    frontFaces_deg: v.optional(quantity("compass direction that the front faces", "°", 0, 360)),
    error_mm: v.optional(quantity("difference of the two heights", "mm", 0, 500)),
    unseen_n: v.optional(count("forks hidden in one photo", 0, 200)),
  }),
  v.check(
    ({ nodes }) => nodes.filter(({ below }) => below === undefined).length === 1,
    "expected exactly one node without a node below it: the base of the trunk",
  ),
  v.check(({ nodes }) => {
    const ids = new Set(nodes.map((node) => node.id));
    return ids.size === nodes.length && nodes.every(({ below }) => below === undefined || ids.has(below));
  }, "two nodes have one id, or a node hangs on one that is not there"),
);
export type Traced = v.InferOutput<typeof tracedSchema>;

/** The outline that the crown is to fill. */
const aimedSchema = v.pipe(
  v.strictObject({
    form: choice("form", ["dome", "triangle", "slanting", "broad"]),
    top_mm: quantity("top of the crown above the rim", "mm", 10, 3000),
    foot_mm: quantity("lower edge of the crown above the rim", "mm", 0, 2500),
    width_mm: quantity("width of the crown", "mm", 10, 3000),
  }),
  v.check(
    ({ top_mm, foot_mm }) => foot_mm <= top_mm - 5,
    "the lower edge is not below the top; expected at least 5 mm less",
  ),
);
export type Aimed = v.InferOutput<typeof aimedSchema>;

/** What a cut takes, as it was reckoned before the blade: what other crafts need of it. */
const takes = {
  kept_frac: quantity("share of the leaf area kept", "", 0, 1),
  lit_frac: quantity("share of the lit leaf taken", "", 0, 1),
  mass_g: v.optional(quantity("mass taken off", "g", 0, 20_000)),
  flowers_n: v.optional(count("open flowers taken off", 0, 5000)),
  fruit_n: v.optional(count("fruits taken off", 0, 5000)),
} as const;

const plannedCut = v.strictObject({
  letter: v.pipe(v.string("letter is not text"), v.regex(/^[A-Z]{1,2}$/, "letter is not A to ZZ")),
  node: id("node below the cut"),
  gone: id("first node that goes"),
  ...takes,
});
export type PlannedCut = v.InferOutput<typeof plannedCut>;

/** A plan is not a cut: it waits for the bench. */
const plannedSchema = v.strictObject({
  plan: choice("plan", ["light", "middle", "bold", "own"]),
  cuts: list("cuts", plannedCut, MOST_CUTS_n),
});
export type Planned = v.InferOutput<typeof plannedSchema>;

const cutSchema = v.strictObject({
  node: v.optional(id("node below the cut")),
  gone: v.optional(id("first node that goes")),
  letter: v.optional(
    v.pipe(v.string("letter is not text"), v.regex(/^[A-Z]{1,2}$/, "letter is not A to ZZ")),
  ),
  ...takes,
});
export type CutMade = v.InferOutput<typeof cutSchema>;

const pluckedSchema = v.strictObject({
  leaves_n: count("leaves plucked", 1, 20_000),
  kept_frac: quantity("share of the leaf area kept", "", 0, 1),
  nodes: v.optional(list("nodes", id("node whose leaves went"), MOST_NODES_n)),
});
export type Plucked = v.InferOutput<typeof pluckedSchema>;

const bentSchema = v.strictObject({
  node: id("node that is pulled"),
  by: choice("what bends it", ["guy", "wire", "weight", "spacer"]),
  wood: choice("age of the stem", ["green", "semi", "woody"]),
  target_deg: quantity("angle from upright that is wanted", "°", 0, 150),
});
export type Bent = v.InferOutput<typeof bentSchema>;

const freedSchema = v.strictObject({ node: id("node that was bent") });
export type Freed = v.InferOutput<typeof freedSchema>;

const bittenSchema = v.strictObject({
  node: id("node that is bent"),
  bites: v.boolean("bites is not yes or no"),
});
export type Bitten = v.InferOutput<typeof bittenSchema>;

/** What grew after a cut: how the plant's own chances are learned. */
const sproutedSchema = v.pipe(
  v.strictObject({
    node: v.optional(id("node below the cut")),
    watched_n: count("buds watched", 1, 500),
    grown_n: count("buds that grew", 0, 500),
  }),
  v.check(
    ({ watched_n, grown_n }) => grown_n <= watched_n,
    "more buds grew than were watched; expected at most the buds watched",
  ),
);
export type Sprouted = v.InferOutput<typeof sproutedSchema>;

const onPlants = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;
const none = (): readonly Effect[] => [];

export const SKETCHED = "trimming.sketched";
export const TRACED = "trimming.traced";
export const AIMED = "trimming.aimed";
export const PLANNED = "trimming.planned";
export const CUT = "trimming.cut";
export const PLUCKED = "trimming.plucked";
export const BENT = "trimming.bent";
export const FREED = "trimming.freed";
export const BITTEN = "trimming.looked";
export const SPROUTED = "trimming.sprouted";

const cutEffects = ({ kept_frac, mass_g, flowers_n, fruit_n }: CutMade): readonly Effect[] => [
  { effect: "structure", what: "cut" },
  { effect: "leaf area", kept_frac },
  ...(mass_g ? [{ effect: "mass", change_g: -mass_g } as const] : []),
  ...(flowers_n ? [{ effect: "flowers", change_n: -flowers_n } as const] : []),
  ...(fruit_n ? [{ effect: "fruit", change_n: -fruit_n } as const] : []),
];

/** The entries of the craft: structure, goal, plans, cuts, leaves plucked, bends, what grew. */
export const trimmingKinds: readonly AnyEntryKind[] = [
  {
    ...onPlants,
    kind: SKETCHED,
    schema: sketchedSchema,
    sentence: (data, say) => trimmingWords(say).sketched(data),
    effects: none,
    example: { height_mm: 180, trunk_mm: 10, branches_mm: [5, 4, 3], leaves_n: 60 },
  } satisfies EntryKind<Sketched>,
  {
    ...onPlants,
    kind: TRACED,
    schema: tracedSchema,
    sentence: (data, say) => trimmingWords(say).traced(data),
    effects: none,
    example: {
      nodes: [
        { id: "n1", right_mm: 0, away_mm: 0, up_mm: 0, caliper_mm: 9 },
        {
          id: "n2",
          below: "n1",
          right_mm: 2,
          away_mm: 1,
          up_mm: 30,
          leaves_n: 1,
          leafLength_mm: 45,
          leafWidth_mm: 22,
        },
        {
          id: "n3",
          below: "n2",
          right_mm: 6,
          away_mm: -3,
          up_mm: 55,
          leaves_n: 1,
          leafLength_mm: 40,
          leafWidth_mm: 20,
        },
      ],
      distance_mm: 900,
      focal_px: 1600,
      error_mm: 1.2,
    },
  } satisfies EntryKind<Traced>,
  {
    ...onPlants,
    kind: AIMED,
    schema: aimedSchema,
    sentence: (data, say) => trimmingWords(say).aimed(data),
    effects: none,
    example: { form: "dome", top_mm: 180, foot_mm: 60, width_mm: 150 },
  } satisfies EntryKind<Aimed>,
  {
    ...onPlants,
    kind: PLANNED,
    schema: plannedSchema,
    sentence: (data, say) => trimmingWords(say).planned(data),
    effects: none,
    example: {
      plan: "middle",
      cuts: [
        { letter: "A", node: "n2", gone: "n3", kept_frac: 0.9, lit_frac: 0.11, mass_g: 2, flowers_n: 1 },
      ],
    },
  } satisfies EntryKind<Planned>,
  {
    ...onPlants,
    kind: CUT,
    schema: cutSchema,
    sentence: (data, say) => trimmingWords(say).cut(data),
    effects: cutEffects,
    example: { node: "n2", gone: "n3", letter: "A", kept_frac: 0.9, lit_frac: 0.11, mass_g: 2, flowers_n: 1 },
  } satisfies EntryKind<CutMade>,
  {
    ...onPlants,
    kind: PLUCKED,
    schema: pluckedSchema,
    sentence: (data, say) => trimmingWords(say).plucked(data),
    effects: ({ kept_frac }): readonly Effect[] => [{ effect: "leaf area", kept_frac }],
    example: { leaves_n: 3, kept_frac: 0.95 },
  } satisfies EntryKind<Plucked>,
  {
    ...onPlants,
    kind: BENT,
    schema: bentSchema,
    sentence: (data, say) => trimmingWords(say).bent(data),
    effects: (): readonly Effect[] => [{ effect: "structure", what: "bent" }],
    example: { node: "n2", by: "wire", wood: "semi", target_deg: 70 },
  } satisfies EntryKind<Bent>,
  {
    ...onPlants,
    kind: FREED,
    schema: freedSchema,
    sentence: (data, say) => trimmingWords(say).freed(data),
    effects: (): readonly Effect[] => [{ effect: "structure", what: "freed" }],
    example: { node: "n2" },
  } satisfies EntryKind<Freed>,
  {
    ...onPlants,
    kind: BITTEN,
    schema: bittenSchema,
    sentence: (data, say) => trimmingWords(say).looked(data),
    effects: none,
    example: { node: "n2", bites: false },
  } satisfies EntryKind<Bitten>,
  {
    ...onPlants,
    kind: SPROUTED,
    schema: sproutedSchema,
    sentence: (data, say) => trimmingWords(say).sprouted(data),
    effects: none,
    example: { node: "n2", watched_n: 3, grown_n: 2 },
  } satisfies EntryKind<Sprouted>,
];

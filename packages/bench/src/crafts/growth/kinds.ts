import { plantLeafArea } from "@sillwood/science/growth";
import * as v from "valibot";
import type { Effect } from "../../book/effects.ts";
import { choice, count, quantity } from "../../book/fields.ts";
import type { AnyEntryKind, EntryKind } from "../../book/kinds.ts";
import { stageNames } from "./stages.ts";
import { growthWords } from "./words.ts";

/** A look at the stage: a code of the scale, or a plain word that is mapped to one. */
const stagedSchema = v.pipe(
  v.strictObject({
    stage: v.optional(choice("stage", stageNames)),
    bbch: v.optional(count("BBCH code", 0, 99)),
  }),
  v.check(
    ({ stage, bbch }) => (stage === undefined) !== (bbch === undefined),
    "stage and BBCH code are both given or both missing; expected one of the two",
  ),
);
export type Staged = v.InferOutput<typeof stagedSchema>;

const MOST_MEASURED_n = 200;
const length = quantity("leaf length without stalk", "cm", 0.3, 40);
const width = quantity("greatest leaf width", "cm", 0.2, 25);
const list = <Item extends v.GenericSchema>(what: string, item: Item) =>
  v.pipe(
    v.array(item, `${what} are not a list`),
    v.minLength(1, `${what} are an empty list; expected 1 to ${MOST_MEASURED_n}`),
    v.maxLength(MOST_MEASURED_n, `${what} are too many; expected 1 to ${MOST_MEASURED_n}`),
  );

/** Widths beyond this share of the length, or leaves beyond this rectangle, are slips of the ruler or the pen. */
const WIDEST_frac = 1.2;
const LARGEST_cm2 = 250;
const isLeaf = (length_cm: number, width_cm: number): boolean =>
  width_cm <= WIDEST_frac * length_cm && length_cm * width_cm <= LARGEST_cm2;

interface Measured {
  readonly leafLength_cm?: number | undefined;
  readonly leafWidth_cm?: number | undefined;
  readonly lengths_cm?: readonly number[] | undefined;
  readonly widths_cm?: readonly number[] | undefined;
}
const isLists = ({ lengths_cm, widths_cm }: Measured): boolean =>
  lengths_cm !== undefined && widths_cm !== undefined;
const isMeans = ({ leafLength_cm, leafWidth_cm, lengths_cm, widths_cm }: Measured): boolean =>
  leafLength_cm !== undefined &&
  leafWidth_cm !== undefined &&
  lengths_cm === undefined &&
  widths_cm === undefined;

const leavesSchema = v.pipe(
  v.strictObject({
    leaves_n: count("leaves on the plant", 1, 20_000),
    leafLength_cm: v.optional(quantity("mean leaf length without stalk", "cm", 0.3, 40)),
    leafWidth_cm: v.optional(quantity("mean greatest leaf width", "cm", 0.2, 25)),
    measured_n: v.optional(count("leaves measured", 1, MOST_MEASURED_n)),
    lengths_cm: v.optional(list("leaf lengths", length)),
    widths_cm: v.optional(list("leaf widths", width)),
  }),
  v.check(
    (data) => isLists(data) !== isMeans(data),
    "expected either lengths and widths of single leaves, or a mean length and a mean width, in cm",
  ),
  v.check(
    ({ lengths_cm, widths_cm }) => lengths_cm?.length === widths_cm?.length,
    "there are not as many leaf lengths as widths; expected one width for each length",
  ),
  v.check(
    ({ leaves_n, lengths_cm, measured_n }) => (lengths_cm?.length ?? measured_n ?? 1) <= leaves_n,
    "more leaves were measured than the plant has; expected at most the leaves on the plant",
  ),
  v.check(({ leafLength_cm, leafWidth_cm, lengths_cm, widths_cm }) => {
    const lengths = lengths_cm ?? [leafLength_cm ?? 1];
    const widths = widths_cm ?? [leafWidth_cm ?? 1];
    return lengths.every((each, leaf) => isLeaf(each, widths[leaf] ?? 0));
  }, `a leaf is wider than ${WIDEST_frac} times its length, or larger than ${LARGEST_cm2} cm² as a rectangle; length and width swapped, or millimetres?`),
);
export type LeavesMeasured = v.InferOutput<typeof leavesSchema>;

/** Of means the scatter is lost: from four leaves on it would be read off the leaves themselves. */
const MEANS_n = 3;

/** The leaves measured, single or as so many of the mean. */
export function leavesOf(data: LeavesMeasured): {
  readonly leaves_n: number;
  readonly lengths_cm: readonly number[];
  readonly widths_cm: readonly number[];
} {
  const { leaves_n, lengths_cm, widths_cm, leafLength_cm = 0, leafWidth_cm = 0, measured_n = 1 } = data;
  if (lengths_cm && widths_cm) return { leaves_n, lengths_cm, widths_cm };
  const times = Math.min(MEANS_n, measured_n);
  return {
    leaves_n,
    lengths_cm: new Array<number>(times).fill(leafLength_cm),
    widths_cm: new Array<number>(times).fill(leafWidth_cm),
  };
}

const nodesSchema = v.strictObject({ nodes_n: count("nodes on the main stem", 0, 500) });
export type NodesCounted = v.InferOutput<typeof nodesSchema>;

const onPlants = { v: 1, readers: "all", subject: "plant", onMin_n: 1 } as const;

export const STAGED = "growth.staged";
export const LEAVES = "growth.leaves";
export const NODES = "growth.nodes";

/** The entries of the craft: looks at the stage, leaves measured, nodes counted. */
export const growthKinds: readonly AnyEntryKind[] = [
  {
    ...onPlants,
    kind: STAGED,
    schema: stagedSchema,
    sentence: (data, say) => growthWords(say).staged(data),
    effects: (): readonly Effect[] => [],
    example: { stage: "in flower" },
  } satisfies EntryKind<Staged>,
  {
    ...onPlants,
    kind: LEAVES,
    schema: leavesSchema,
    sentence: (data, say) => growthWords(say).leaves(data),
    effects: (data): readonly Effect[] => {
      const { leaves_n, lengths_cm, widths_cm } = leavesOf(data);
      const { leafArea_m2 } = plantLeafArea({ leaves_n, length_cm: lengths_cm, width_cm: widths_cm });
      return [{ effect: "leaf area", measured_m2: leafArea_m2 }];
    },
    example: { leaves_n: 120, lengths_cm: [6, 7, 5.5, 6.5], widths_cm: [3, 3.5, 2.5, 3] },
  } satisfies EntryKind<LeavesMeasured>,
  {
    ...onPlants,
    kind: NODES,
    schema: nodesSchema,
    sentence: (data, say) => growthWords(say).nodes(data),
    effects: (): readonly Effect[] => [],
    example: { nodes_n: 14 },
  } satisfies EntryKind<NodesCounted>,
];

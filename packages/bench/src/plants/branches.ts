import * as v from "valibot";
import type { EntryId } from "../book/entry.ts";
import { choice, count, quantity } from "../book/fields.ts";

/** How old the wood of a branch is: it decides how stiff it is and what breaks out of it. */
export const branchWoods = ["green", "semi", "woody"] as const;
export type BranchWood = (typeof branchWoods)[number];

/** One branch as somebody can name it in half a minute; a traced structure writes the same fact. */
export interface BranchFact {
  /** At its base. */
  readonly thickness_mm: number;
  readonly length_cm: number;
  /** Of its base over level: 90 stands upright. */
  readonly lean_deg: number;
  readonly leaves_n?: number | undefined;
  readonly wood?: BranchWood | undefined;
  readonly at_ms: number;
  readonly entry: EntryId;
}

/** Branches by letter: A, B, C ... */
export type Branches = Readonly<Record<string, BranchFact>>;

/** A branch's letter. */
export const branchLetter = () =>
  v.pipe(
    v.string("branch is not a letter"),
    v.regex(/^[A-Z]$/, (issue) => `branch is ${JSON.stringify(issue.input)}; expected one letter, A to Z`),
    v.metadata({ what: "branch", unit: "", min: 1, max: 1 }),
  );

export const branchedSchema = v.pipe(
  v.strictObject({
    branch: branchLetter(),
    thickness_mm: v.optional(quantity("thickness of the branch at its base", "mm", 0.5, 60)),
    length_cm: v.optional(quantity("length of the branch", "cm", 1, 200)),
    lean_deg: v.optional(quantity("lean of the branch over level", "°", -90, 90)),
    leaves_n: v.optional(count("leaves on the branch", 0, 5000)),
    wood: v.optional(choice("wood of the branch", branchWoods)),
    gone: v.optional(v.literal(true, "gone is given only where the branch is gone; expected true")),
  }),
  v.check(
    ({ gone, thickness_mm, length_cm, lean_deg }) =>
      gone === true || (thickness_mm !== undefined && length_cm !== undefined && lean_deg !== undefined),
    "a branch needs its thickness in mm, length in cm and lean in °, or gone",
  ),
  v.check(
    ({ thickness_mm, length_cm }) =>
      thickness_mm === undefined || length_cm === undefined || thickness_mm <= 5 * length_cm,
    "thickness of the branch is more than half its length; mm and cm swapped?",
  ),
);
export type Branched = v.InferOutput<typeof branchedSchema>;

/** The branches after one of them was named, put right or lost. */
export function withBranch(branches: Branches, data: Branched, at_ms: number, entry: EntryId): Branches {
  const { branch, gone, thickness_mm, length_cm, lean_deg, leaves_n, wood } = data;
  const { [branch]: _before, ...others } = branches;
  if (gone || thickness_mm === undefined || length_cm === undefined || lean_deg === undefined) return others;
  const named: BranchFact = {
    thickness_mm,
    length_cm,
    lean_deg,
    ...(leaves_n === undefined ? {} : { leaves_n }),
    ...(wood === undefined ? {} : { wood }),
    at_ms,
    entry,
  };
  return Object.fromEntries(
    Object.entries({ ...others, [branch]: named }).toSorted(([a], [b]) => (a < b ? -1 : 1)),
  );
}

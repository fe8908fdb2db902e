import { keepByBranch } from "@sillwood/science/fruit";
import { fruitsBorne_n, usualStiffness } from "@sillwood/science/shape";
import type { Sight } from "../craft.ts";
import type { Capacity } from "./capacity.ts";
import type { FruitSlice } from "./slice.ts";

export interface BranchKeep {
  readonly branch: string;
  readonly leaf_frac: number;
  readonly bears_n: number;
  /** Counted on it; undefined where nobody counted. */
  readonly has_n?: number;
  readonly keep_n: number;
  /** Why no more: light shared out, the branch too thin, or none there. */
  readonly why: "light" | "thin" | "all";
}

/** How many fruits stay on which branch, by its leaves, what it bears and what hangs there. */
export function keepOf(slice: FruitSlice, capacity: Capacity, sight: Sight): readonly BranchKeep[] {
  const named = Object.entries(sight.plant.branches ?? {});
  if (named.length === 0) return [];
  // Leaves where they were counted, else wood: leaf area goes with the section of what bears it.
  const areAllCounted = named.every(([, { leaves_n }]) => leaves_n !== undefined);
  const weights = named.map(([, { leaves_n, thickness_mm }]) =>
    areAllCounted ? (leaves_n as number) : thickness_mm ** 2,
  );
  const all = weights.reduce((sum, each) => sum + each, 0);
  const known = named.map(([branch, fact], each) => ({
    branch,
    leaf_frac: all > 0 ? (weights[each] as number) / all : 1 / named.length,
    bears_n: fruitsBorne_n(
      {
        length_m: fact.length_cm / 100,
        diameter_m: fact.thickness_mm / 1000,
        lean_deg: fact.lean_deg,
        stiffness_Pa: usualStiffness(fact.wood ?? "semi").stiffness_Pa,
      },
      Math.min(1000, Math.max(0.05, capacity.fresh_g)),
    ),
    has_n: slice.fruitsBy[branch]?.n,
  }));
  // Where nobody counted, nothing limits the branch but light and wood.
  const keep = keepByBranch(
    Math.max(0, capacity.keep_n),
    known.map(({ leaf_frac, bears_n, has_n }) => ({ leaf_frac, bears_n, has_n: has_n ?? MANY_n })),
  );
  return known.map(({ has_n, ...each }, at) => {
    const keep_n = keep[at] as number;
    return {
      ...each,
      ...(has_n === undefined ? {} : { has_n }),
      keep_n,
      why: has_n !== undefined && keep_n >= has_n ? "all" : keep_n >= each.bears_n ? "thin" : "light",
    };
  });
}

const MANY_n = 10_000;

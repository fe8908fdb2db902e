import type { Entry } from "../book/entry.ts";
import { type LeftForGrower, type Overrode, roundKinds, type Skipped } from "./kinds.ts";

/** What rounds have left on a plant: skips, things left for the grower, limits that the grower has overridden. */
export interface RoundFacts {
  readonly skipped: readonly (Skipped & { readonly at_ms: number; readonly by: string })[];
  readonly left: readonly (LeftForGrower & {
    readonly at_ms: number;
    readonly by: string;
    readonly entry: string;
  })[];
  readonly overrode: readonly (Overrode & { readonly at_ms: number })[];
}

export const noRounds: RoundFacts = { skipped: [], left: [], overrode: [] };
/** Skips and permissions matter for a day or two; older ones are in the book. */
const KEPT_n = 8;

export function foldRounds(facts: RoundFacts, entry: Entry): RoundFacts {
  const { at_ms, by } = entry;
  switch (entry.kind) {
    case roundKinds.skipped.kind:
      return {
        ...facts,
        skipped: [...facts.skipped, { ...(entry.data as unknown as Skipped), at_ms, by }].slice(-KEPT_n),
      };
    case roundKinds.left.kind:
      return {
        ...facts,
        left: [
          ...facts.left,
          { ...(entry.data as unknown as LeftForGrower), at_ms, by, entry: entry.id },
        ].slice(-KEPT_n),
      };
    case roundKinds.settled.kind:
      return { ...facts, left: [] };
    case roundKinds.overrode.kind:
      return {
        ...facts,
        overrode: [...facts.overrode, { ...(entry.data as unknown as Overrode), at_ms }].slice(-KEPT_n),
      };
    default:
      return facts;
  }
}

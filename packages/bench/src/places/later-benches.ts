import type { Entry } from "../book/entry.ts";
import { type BenchData, placeKinds } from "./kinds.ts";

/** A bench that the book lays only after the moment that is asked about. */
export interface LaterBench {
  readonly name: string;
  readonly laid_ms: number;
}

/**
 * Spots of benches laid after `now_ms`, so that a plant which stands on one is not said to stand nowhere when the past is asked
 * again. Of a bench laid anew later, the first laying counts.
 */
export function laterBenches(
  records: Iterable<{ readonly acting?: Entry }>,
  now_ms: number,
): ReadonlyMap<string, LaterBench> {
  const later = new Map<string, LaterBench>();
  for (const { acting } of records) {
    if (acting?.kind !== placeKinds.bench.kind || acting.at_ms <= now_ms) continue;
    const { name, spots } = acting.data as unknown as BenchData;
    for (const { id } of spots)
      if (acting.at_ms < (later.get(id)?.laid_ms ?? Number.POSITIVE_INFINITY))
        later.set(id, { name, laid_ms: acting.at_ms });
  }
  return later;
}

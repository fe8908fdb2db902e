import type { Entry } from "../book/entry.ts";
import { type BatchStarted, batchKinds, type Cultivar } from "./batch-kinds.ts";

export interface Batch extends Omit<BatchStarted, "count_n"> {
  readonly id: string;
  readonly startedAt_ms: number;
  /** Plants still in it; plants that got a number of their own are counted in the plants. */
  readonly count_n: number;
  readonly lost_n: number;
  readonly from?: string;
  readonly mergedInto?: string;
}

export interface Batches {
  readonly batches: ReadonlyMap<string, Batch>;
  readonly cultivars: ReadonlyMap<string, Cultivar & { readonly id: string }>;
  /** Entries that ask for more plants than a batch has, and the like. */
  readonly problems: readonly { readonly entry: Entry["id"]; readonly message: string }[];
}

export const noBatches: Batches = { batches: new Map(), cultivars: new Map(), problems: [] };

/** What the house learns of batches and cultivars from one entry. Total: impossible counts become problems. */
export function foldBatches(all: Batches, entry: Entry): Batches {
  switch (entry.kind) {
    case batchKinds.cultivar.kind: {
      const cultivars = new Map(all.cultivars);
      for (const id of entry.on) cultivars.set(id, { ...(entry.data as unknown as Cultivar), id });
      return { ...all, cultivars };
    }
    case batchKinds.started.kind: {
      const batches = new Map(all.batches);
      for (const id of entry.on) {
        batches.set(id, {
          ...(entry.data as unknown as BatchStarted),
          id,
          startedAt_ms: entry.at_ms,
          lost_n: 0,
        });
      }
      return { ...all, batches };
    }
    case batchKinds.split.kind: {
      const { into, name, count_n } = entry.data as { into: string; name: string; count_n: number };
      return take(all, entry, count_n, (batches, from) =>
        batches.set(into, {
          ...from,
          id: into,
          name,
          count_n,
          lost_n: 0,
          from: from.id,
          startedAt_ms: entry.at_ms,
        }),
      );
    }
    case batchKinds.lost.kind: {
      const { count_n } = entry.data as { count_n: number };
      return take(all, entry, count_n, (batches, from) => {
        const left = batches.get(from.id) as Batch;
        return batches.set(from.id, { ...left, lost_n: left.lost_n + count_n });
      });
    }
    case batchKinds.merged.kind:
      return merge(all, entry, (entry.data as { into: string }).into);
    default:
      return all;
  }
}

function take(
  all: Batches,
  entry: Entry,
  count_n: number,
  then: (batches: Map<string, Batch>, from: Batch) => Map<string, Batch>,
): Batches {
  let { problems } = all;
  let batches = new Map(all.batches);
  for (const id of entry.on) {
    const from = batches.get(id);
    if (!from || from.count_n < count_n) {
      const have = from ? `has ${from.count_n}` : "is not in the book";
      problems = [
        ...problems,
        { entry: entry.id, message: `${count_n} plants taken from a batch that ${have}` },
      ];
      continue;
    }
    batches.set(id, { ...from, count_n: from.count_n - count_n });
    batches = then(batches, from);
  }
  return { ...all, batches, problems };
}

function merge(all: Batches, entry: Entry, into: string): Batches {
  const target = all.batches.get(into);
  if (!target)
    return {
      ...all,
      problems: [
        ...all.problems,
        { entry: entry.id, message: "merged into a batch that is not in the book" },
      ],
    };
  const batches = new Map(all.batches);
  let { count_n, lost_n } = target;
  for (const id of entry.on) {
    const from = batches.get(id);
    if (!from || id === into || from.mergedInto) continue;
    count_n += from.count_n;
    lost_n += from.lost_n;
    batches.set(id, { ...from, count_n: 0, lost_n: 0, mergedInto: into });
  }
  batches.set(into, { ...target, count_n, lost_n });
  return { ...all, batches };
}

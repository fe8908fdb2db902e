import { createHash } from "node:crypto";
import type { Entry } from "@sillwood/bench/book";
import { deskAt } from "@sillwood/bench/pages";
import { theRound } from "@sillwood/bench/round";
import { openSqlite } from "@sillwood/store/sqlite";
import { loadPresent } from "../../../packages/cli/src/book/load-book.ts";

/** What one start of the program took, from opening the book's file to the round. */
export interface Start {
  readonly load_ms: number;
  readonly round_ms: number;
  readonly ms: number;
  /** Of all threads of the process over the same span. */
  readonly cpu_ms: number;
  readonly plants_n: number;
  readonly tasks_n: number;
  /** Of the whole round: equal rounds have equal digests. */
  readonly round: string;
}

const ASKED = { language: "en", units: "metric" } as const;

/**
 * Opens the book as the program does and works out the round.
 *
 * @param from "entries" reads every entry; "checkpoint" starts from the fold that an earlier start has kept in the store
 * @param keep whether this start keeps its fold for the next
 */
export async function start(
  path: string,
  now_ms: number,
  from: "entries" | "checkpoint",
  keep = false,
): Promise<Start> {
  const start_ms = performance.now();
  const before = process.cpuUsage();
  const store = await openSqlite({ path });
  try {
    const { ledger } = await loadPresent(store, {
      zone: "UTC",
      ...ASKED,
      whole: from === "entries",
      ...(keep ? { keep: (key: string, value: string) => store.cache.put(key, value) } : {}),
    });
    if (from === "checkpoint" && ledger.entries_n > ledger.plants().length * 20)
      throw new Error("the kept fold was not taken: every entry was read");
    const loaded_ms = performance.now();
    const round = theRound(deskAt(ledger, { now_ms, ...ASKED }));
    const end_ms = performance.now();
    const { user, system } = process.cpuUsage(before);
    return {
      load_ms: loaded_ms - start_ms,
      round_ms: end_ms - loaded_ms,
      ms: end_ms - start_ms,
      cpu_ms: (user + system) / 1000,
      plants_n: ledger.plants().length,
      tasks_n: round.tasks_n,
      round: createHash("sha256").update(JSON.stringify(round)).digest("hex"),
    };
  } finally {
    await store.close();
  }
}

/** Milliseconds to read and parse every entry and do nothing with it: no start can be faster. */
export async function readAll(path: string): Promise<number> {
  const start_ms = performance.now();
  const store = await openSqlite({ path });
  try {
    let newest_ms = 0;
    for await (const texts of store.texts())
      for (const text of texts) newest_ms = Math.max(newest_ms, (JSON.parse(text) as Entry).at_ms);
    if (newest_ms === 0) throw new Error("the book is empty");
    return performance.now() - start_ms;
  } finally {
    await store.close();
  }
}

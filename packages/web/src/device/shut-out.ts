import { type EntryRef, handIn } from "@sillwood/bench/book";
import type { SyncTools } from "./sync-loop.ts";

/** A device that the grower has closed hands in what it still has; returns how many entries wait for the grower's word. */
export async function handInAll({ store, server }: Pick<SyncTools, "store" | "server">): Promise<number> {
  const before = await store.awayKeys();
  const report = await handIn({ store, transport: await server.transport() }, before.map(refOfKey));
  await store.setAway(report.unnamed, before, Date.now());
  return report.aside.length;
}

const refOfKey = (key: string): EntryRef => {
  const [id = "", hash = ""] = key.split("/");
  return { id: id as EntryRef["id"], hash };
};

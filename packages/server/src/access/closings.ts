import type { AcceptedEntry, Entry } from "@sillwood/bench/book";
import { DEVICE_CLOSED } from "@sillwood/bench/people";
import type { EntryStore } from "@sillwood/store/entry-store";

/** Closings that were carried out, by id. Were it lost, a phone that was let in again would be shut out once more: the safe side. */
const CARRIED_OUT = "closings carried out";

/**
 * An entry that closes devices shuts the keys that they have at this moment, once. By this machine's clock alone: the grower's phone
 * may be wrong about the time, and a phone that was let in again stays in when the same entry comes by another way.
 * Who may write one, the gate has judged.
 */
export async function closeDevices(
  store: EntryStore,
  entries: readonly Pick<AcceptedEntry, "entry">[],
  now_ms: number,
): Promise<number> {
  const closings = entries.filter(({ entry }) => entry.kind === DEVICE_CLOSED);
  if (closings.length === 0) return 0;
  const done = new Set(JSON.parse((await store.cache.get(CARRIED_OUT)) ?? "[]") as string[]);
  let closed_n = 0;
  for (const { entry } of closings) {
    if (done.has(entry.id)) continue;
    for (const device of entry.on) closed_n += await store.keys.close(device, now_ms);
    done.add(entry.id);
  }
  await store.cache.put(CARRIED_OUT, JSON.stringify([...done]));
  return closed_n;
}

/** At a start: closings may have come into the book by another way than through this server. */
export async function closeAsTheBookSays(store: EntryStore, now_ms: number): Promise<number> {
  let closed_n = 0;
  if ((await store.keys.list()).length === 0) return closed_n;
  const mark = `"kind":"${DEVICE_CLOSED}"`;
  for await (const texts of store.texts()) {
    const closings = texts
      .filter((text) => text.includes(mark))
      .map((text) => ({ entry: JSON.parse(text) as Entry }));
    closed_n += await closeDevices(store, closings, now_ms);
  }
  return closed_n;
}

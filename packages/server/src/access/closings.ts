import type { AcceptedEntry, Entry } from "@sillwood/bench/book";
import { DEVICE_CLOSED } from "@sillwood/bench/people";
import type { EntryStore } from "@sillwood/store/entry-store";

/** An entry that closes devices shuts their keys here, from the moment that it names on. Who may write one, the gate has judged. */
export async function closeDevices(
  store: EntryStore,
  entries: readonly Pick<AcceptedEntry, "entry">[],
): Promise<number> {
  let closed_n = 0;
  for (const { entry } of entries)
    if (entry.kind === DEVICE_CLOSED)
      for (const device of entry.on) closed_n += await store.keys.close(device, entry.at_ms);
  return closed_n;
}

/** At a start: a server that came back from an old copy may hold keys open that the book has closed since. */
export async function closeAsTheBookSays(store: EntryStore): Promise<number> {
  let closed_n = 0;
  if ((await store.keys.list()).length === 0) return closed_n;
  const mark = `"kind":"${DEVICE_CLOSED}"`;
  for await (const texts of store.texts())
    for (const text of texts)
      if (text.includes(mark)) closed_n += await closeDevices(store, [{ entry: JSON.parse(text) as Entry }]);
  return closed_n;
}

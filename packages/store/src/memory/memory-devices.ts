import { refKey } from "@sillwood/bench/book";
import type { AsideEntry, AsideShelf, DeviceKey, DeviceKeys } from "../entry-store.ts";
import type { Ask } from "../sql/one-at-a-time.ts";

export function memoryKeys(ask: Ask): DeviceKeys {
  const keys = new Map<string, DeviceKey>();
  const byDevice = (a: DeviceKey, b: DeviceKey) =>
    a.device < b.device ? -1 : a.device > b.device ? 1 : a.made_ms - b.made_ms || (a.hash < b.hash ? -1 : 1);
  return {
    add: (key) => ask(() => void keys.set(key.hash, key)),
    find: (hash) => ask(() => keys.get(hash)),
    list: () => ask(() => [...keys.values()].sort(byDevice)),
    close: (device, at_ms) =>
      ask(() => {
        const open = [...keys.values()].filter(
          (key) => key.device === device && key.closed_ms === undefined && key.made_ms <= at_ms,
        );
        for (const key of open) keys.set(key.hash, { ...key, closed_ms: at_ms });
        return open.length;
      }),
    seen: (hash, seen_ms) =>
      ask(() => {
        const key = keys.get(hash);
        if (key) keys.set(hash, { ...key, seen_ms });
      }),
  };
}

export function memoryAside(ask: Ask): AsideShelf {
  const shelf = new Map<string, AsideEntry>();
  return {
    put: (entries) =>
      ask(() => {
        for (const entry of entries) if (!shelf.has(refKey(entry))) shelf.set(refKey(entry), entry);
      }),
    list: () =>
      ask(() =>
        [...shelf.values()].sort((a, b) => a.came_ms - b.came_ms || (refKey(a) < refKey(b) ? -1 : 1)),
      ),
    drop: (ref) =>
      ask(() => {
        const { text: _gone, ...rest } = shelf.get(refKey(ref)) ?? {};
        if ("id" in rest) shelf.set(refKey(ref), rest as AsideEntry);
      }),
    clear: (ref) => ask(() => void shelf.delete(refKey(ref))),
  };
}

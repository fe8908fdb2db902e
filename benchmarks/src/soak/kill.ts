import { createHash } from "node:crypto";
import { refKey } from "@sillwood/bench/book";
import type { EntryStore } from "@sillwood/store/entry-store";
import { seeded, someEntries } from "../../../packages/bench/test/entry-maker.ts";
import { type Served, serve } from "./served.ts";

export interface KillOptions {
  /** A file, or `postgres://…`. */
  readonly place: string;
  /** Opens the same book once nobody serves it. */
  open(): Promise<EntryStore>;
  /** Appends and photos that must have been acknowledged. */
  readonly acknowledged_n: number;
  readonly seed: number;
  readonly planted?: "forgets";
}

export interface KillReport {
  readonly kills_n: number;
  readonly entries_n: number;
  readonly photos_n: number;
  /** Acknowledged, and not there after the last start. */
  readonly lost_n: number;
  /** There twice, or there without ever having been sent. */
  readonly doubled_n: number;
  readonly damaged_n: number;
}

/** A third of what is sent are photos, of some 30 kB. */
const PHOTO_EVERY_n = 3;

/**
 * Pushes entries and photos at a server that is killed by SIGKILL at random, again and again on one book; what it had named must be
 * there in the end, whole and once.
 */
export async function killTrial({
  place,
  open,
  acknowledged_n,
  seed,
  planted,
}: KillOptions): Promise<KillReport> {
  const random = seeded(seed);
  const entries = someEntries(seed, 2 * acknowledged_n);
  const named = new Set<string>();
  const photos = new Set<string>();
  const sent = new Set<string>();
  let next = 0;
  let kills_n = 0;
  const all_n = () => named.size + photos.size;
  while (all_n() < acknowledged_n) {
    const served = await serve(place, { planted });
    const killAt_n = all_n() + 20 + Math.floor(random() * 130);
    let armed = false;
    try {
      for (;;) {
        if (all_n() >= killAt_n && !armed) {
          armed = true;
          // Some while a commit is certainly under way, some a moment later.
          setTimeout(() => served.kill(), random() * 5);
        }
        if (next % PHOTO_EVERY_n === PHOTO_EVERY_n - 1) {
          const bytes = photoOf(seed, next);
          const hash = createHash("sha256").update(bytes).digest("hex");
          if (await putPhoto(served, hash, bytes)) photos.add(hash);
        } else {
          const { entry, hash } = entries[next] as (typeof entries)[0];
          sent.add(refKey({ id: entry.id, hash }));
          for (const ref of await push(served, entry)) named.add(refKey(ref));
        }
        // What was not answered is sent again to the next server.
        next++;
      }
    } catch {
      // The line broke: the server is gone.
    }
    served.kill();
    await served.ended;
    kills_n++;
  }
  const store = await open();
  try {
    const there = new Map<string, number>();
    for await (const chunk of store.all())
      for (const ref of chunk) there.set(refKey(ref), (there.get(refKey(ref)) ?? 0) + 1);
    const { damaged, recounted_n, damagedFiles } = await store.verify("all");
    const files = new Set<string>();
    for await (const { file } of store.files.list()) files.add(file);
    const lost = [...named].filter((key) => !there.has(key)).length;
    const lostPhotos = [...photos].filter((hash) => !files.has(hash)).length;
    const strange = [...there].filter(([key, times_n]) => times_n > 1 || !sent.has(key)).length;
    return {
      kills_n,
      entries_n: named.size,
      photos_n: photos.size,
      lost_n: lost + lostPhotos,
      doubled_n: strange,
      damaged_n: damaged.length + damagedFiles.length + recounted_n,
    };
  } finally {
    await store.close();
  }
}

function photoOf(seed: number, n: number): Uint8Array<ArrayBuffer> {
  const random = seeded(seed * 1_000_003 + n);
  return Uint8Array.from({ length: 20_000 + Math.floor(random() * 20_000) }, () =>
    Math.floor(random() * 256),
  );
}

async function push({ own }: Served, entry: unknown): Promise<readonly { id: string; hash: string }[]> {
  const response = await fetch(`${own}/books/main/sync/entries`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ entries: [entry] }),
  });
  return ((await response.json()) as { stored: { id: string; hash: string }[] }).stored;
}

async function putPhoto({ own }: Served, hash: string, bytes: Uint8Array<ArrayBuffer>): Promise<boolean> {
  const response = await fetch(`${own}/books/main/files/${hash}`, {
    method: "PUT",
    headers: { "content-type": "image/jpeg" },
    body: bytes,
  });
  await response.arrayBuffer();
  return response.status === 201;
}

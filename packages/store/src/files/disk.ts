import { randomUUID } from "node:crypto";
import { createReadStream } from "node:fs";
import { mkdir, open, rename, rm, stat } from "node:fs/promises";
import { join } from "node:path";
import type { FileBytes } from "./file-store.ts";

/** Files in a folder, named by their hash. A draft is synced before it gets its name, and the folder after. */
export function diskBytes(folder: string): FileBytes {
  const placeOf = (hash: string) => join(folder, hash.slice(0, 2), hash);
  return {
    async begin() {
      const drafts = join(folder, "incoming");
      await mkdir(drafts, { recursive: true });
      const path = join(drafts, randomUUID());
      const file = await open(path, "wx");
      return {
        async add(piece) {
          let written_B = 0;
          while (written_B < piece.length) written_B += (await file.write(piece, written_B)).bytesWritten;
        },
        async keep(hash) {
          await file.sync();
          await file.close();
          await mkdir(join(folder, hash.slice(0, 2)), { recursive: true });
          await rename(path, placeOf(hash));
          await syncFolder(join(folder, hash.slice(0, 2)));
        },
        async abandon() {
          await file.close().catch(() => undefined);
          await rm(path, { force: true });
        },
      };
    },
    has: (hash) =>
      stat(placeOf(hash)).then(
        (found) => found.isFile(),
        () => false,
      ),
    read: (hash) => createReadStream(placeOf(hash)),
    remove: (hash) => rm(placeOf(hash), { force: true }),
  };
}

/** Without this a power cut may forget the new name though the bytes are there. */
export async function syncFolder(path: string): Promise<void> {
  // Windows can't open a folder; NTFS journals names on its own.
  if (process.platform === "win32") return;
  const folder = await open(path, "r");
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

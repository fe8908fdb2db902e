import type { BookDb, KeptFile } from "./book-db.ts";
import { STRICT, wholly } from "./book-db.ts";

/** Photos and closed parts of series on this device, by content hash. */
export interface FileStore {
  get(sha256: string): Promise<Pick<KeptFile, "type" | "bytes"> | undefined>;
  put(file: KeptFile): Promise<void>;
  /** Hashes of files that the server has not named yet. */
  away(): Promise<readonly string[]>;
  setHome(sha256: string): Promise<void>;
}

export function fileStore(db: BookDb): FileStore {
  const put = async (file: KeptFile) => {
    const writing = db.transaction("files", "readwrite", STRICT);
    await wholly(writing, () => writing.store.put(file));
  };
  return {
    get: async (sha256) => {
      const kept = await db.get("files", sha256);
      return kept && { type: kept.type, bytes: kept.bytes };
    },
    put,
    away: () => db.getAllKeysFromIndex("files", "home", 0),
    setHome: async (sha256) => {
      const kept = await db.get("files", sha256);
      if (kept) await put({ ...kept, home: 1 });
    },
  };
}

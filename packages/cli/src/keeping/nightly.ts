import { join } from "node:path";
import type { EntryStore } from "@sillwood/store/entry-store";
import { newestBackup_ms, rollBackup } from "./rolling.ts";

/** Looked at each hour; a new one when the newest is older than most of a day; two weeks of them. @source our assumption */
const LOOK_EVERY_ms = 3_600_000;
const OLD_AFTER_ms = 20 * 3_600_000;
const KEEP_n = 14;

export interface Nightly {
  readonly folder: string;
  /** Makes a backup if the newest is old; whether it did. */
  look(now_ms: number): Promise<boolean>;
  stop(): void;
}

/** Backups by themselves while a house is open: each book's in a folder of its own. A failure is told, and tried again in an hour. */
export function nightlyBackups(
  store: EntryStore,
  home: string,
  { now_ms, tell }: { readonly now_ms: () => number; readonly tell: (line: string) => void },
): Nightly {
  const folder = join(home, "backups", store.book.replace(/[^\w-]/g, "_"));
  const look = async (at_ms: number): Promise<boolean> => {
    const newest_ms = newestBackup_ms(folder);
    if (newest_ms !== undefined && Math.abs(at_ms - newest_ms) < OLD_AFTER_ms) return false;
    await rollBackup(store, folder, { now_ms: at_ms, keep_n: KEEP_n });
    return true;
  };
  const timer = setInterval(() => {
    look(now_ms()).catch((error: unknown) => tell(`no backup was made: ${(error as Error).message}`));
  }, LOOK_EVERY_ms);
  timer.unref();
  return { folder, look, stop: () => clearInterval(timer) };
}

import { existsSync, linkSync, mkdirSync, readdirSync, renameSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import type { BackupReport, EntryStore } from "@sillwood/store/entry-store";

/** Where the last backup lies, for `verify`. */
const LAST = "last backup";

/** A backup into a folder, remembered as the last. */
export async function backupInto(store: EntryStore, folder: string): Promise<BackupReport> {
  const report = await store.backup(folder);
  await store.cache.put(LAST, resolve(folder));
  return report;
}

/** The folder of the last backup; undefined where none was made, or it is not there any more. */
export async function lastBackup(store: EntryStore): Promise<string | undefined> {
  const folder = await store.cache.get(LAST);
  return folder !== undefined && existsSync(folder) ? folder : undefined;
}

const DATED = /^\d{4}-\d\d-\d\dT\d{6}Z$/;
const dated = (folder: string) =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => DATED.test(name))
        .sort()
    : [];

/**
 * A backup into a folder of its own date, of which the newest `keep_n` are kept. A half-made one has another name and is swept away by
 * the next. Photos that the last backup holds are linked, not copied: they never change.
 */
export async function rollBackup(
  store: EntryStore,
  folder: string,
  { now_ms, keep_n }: { readonly now_ms: number; readonly keep_n: number },
): Promise<BackupReport> {
  mkdirSync(folder, { recursive: true });
  const stamp = `${new Date(now_ms).toISOString().slice(0, 19).replaceAll(":", "")}Z`;
  const [part, whole] = [join(folder, `${stamp}.part`), join(folder, stamp)];
  for (const name of readdirSync(folder))
    if (name.endsWith(".part")) rmSync(join(folder, name), { recursive: true });
  const before = dated(folder).at(-1);
  if (before !== undefined) linkFiles(join(folder, before, "files"), join(part, "files"));
  const report = await store.backup(part);
  rmSync(whole, { recursive: true, force: true });
  renameSync(part, whole);
  await store.cache.put(LAST, resolve(whole));
  for (const old of dated(folder).slice(0, -keep_n)) rmSync(join(folder, old), { recursive: true });
  return { ...report, paths: report.paths.map((path) => path.replace(part, whole)) };
}

/** When the newest backup in a folder was made, epoch milliseconds. */
export function newestBackup_ms(folder: string): number | undefined {
  const newest = dated(folder).at(-1);
  return newest === undefined ? undefined : Date.parse(newest.replace(/T(\d\d)(\d\d)(\d\d)Z$/, "T$1:$2:$3Z"));
}

function linkFiles(from: string, to: string): void {
  if (!existsSync(from)) return;
  for (const shelf of readdirSync(from).filter((name) => /^[0-9a-f]{2}$/.test(name))) {
    mkdirSync(join(to, shelf), { recursive: true });
    for (const name of readdirSync(join(from, shelf)))
      try {
        linkSync(join(from, shelf, name), join(to, shelf, name));
      } catch {
        // A disk without links: the backup copies the file then.
      }
  }
}

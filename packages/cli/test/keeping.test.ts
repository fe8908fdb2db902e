import {
  appendFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { openSqlite } from "@sillwood/store/sqlite";
import { expect, it } from "vitest";
import { nightlyBackups } from "../src/keeping/nightly.ts";
import { shell } from "./shell.ts";

const DAY_ms = 86_400_000;
const bring = [
  "enter",
  "plant.brought",
  "new",
  "habit=thin",
  "pot=12x9",
  "medium=spongy",
  "window=S",
] as const;

it("a backup restores to a book that gives the same answers, and is never written over another", async () => {
  const sh = shell();
  await sh.run(...bring);
  await sh.run("enter", "watered", "1", "volume=180mL", "drained=yes");
  const log = async (...more: string[]) =>
    (await sh.run("book", "log", "--json", ...more)).json<{ lines: unknown }>().lines;
  const before = await log();
  expect((await sh.run("book", "backup", "safe")).code).toBe(0);
  expect(readdirSync(join(sh.home, "safe")).sort()).toEqual(["book.ndjson", "book.sqlite", "digests.json"]);
  const copy = join(sh.home, "again.sillwood");
  const restored = await sh.run("book", "restore", "safe", "--book", copy, "--json");
  expect(restored.json()).toMatchObject({ sound: true, gone: [] });
  expect(await log("--book", copy)).toEqual(before);
  const refused = await sh.run("book", "restore", "safe", "--book", copy);
  expect([refused.code, refused.err]).toEqual([1, expect.stringContaining("never writes over one")]);
  // The plain lines alone suffice: they outlive the program.
  rmSync(join(sh.home, "safe", "book.sqlite"));
  const plain = join(sh.home, "plain.sillwood");
  expect((await sh.run("book", "restore", "safe", "--book", plain, "--json")).json()).toMatchObject({
    entries_n: 4,
  });
});

it("verify holds the book against its last backup and names what is gone", async () => {
  const sh = shell();
  await sh.run(...bring);
  await sh.run("enter", "watered", "1", "volume=180mL", "drained=yes");
  await sh.run("book", "backup", "safe");
  await sh.run("enter", "watered", "1", "volume=90mL", "drained=no");
  expect((await sh.run("book", "verify", "--json")).json()).toMatchObject({
    sound: true,
    backup: { gone: [] },
  });
  // A book that came back from before the backup lacks what came after.
  const old = join(sh.home, "old.sillwood");
  const lines = readFileSync(join(sh.home, "safe", "book.ndjson"), "utf8").split("\n");
  const kept = lines.filter((line) => !line.includes("watering.watered"));
  writeFileSync(join(sh.home, "less.ndjson"), kept.join("\n"));
  await sh.run("book", "import", "less.ndjson", "--book", old);
  const strange = await sh.run("book", "verify", "safe", "--book", old);
  expect([strange.code, strange.err]).toEqual([1, expect.stringContaining("another book")]);
  const list = JSON.parse(readFileSync(join(sh.home, "safe", "digests.json"), "utf8"));
  const own = JSON.parse((await sh.run("book", "backup", "other", "--book", old, "--json")).out).paths[1];
  const { book } = JSON.parse(readFileSync(own, "utf8"));
  writeFileSync(join(sh.home, "safe", "digests.json"), JSON.stringify({ ...list, book }));
  const verified = await sh.run("book", "verify", "safe", "--book", old, "--json");
  expect(verified.code).toBe(1);
  expect(verified.json<{ backup: { gone: unknown[] } }>().backup.gone).toHaveLength(1);
  expect((await sh.run("book", "verify", "nowhere")).err).toContain("no whole backup");
});

it("rolling backups keep the newest, link photos instead of copying, and sweep what was half made", async () => {
  const sh = shell();
  await sh.run(...bring);
  const png = Buffer.from(
    "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==",
    "base64",
  );
  writeFileSync(join(sh.home, "leaf.png"), png);
  const noted = await sh.run("enter", "plant.noted", "1", "text=leaf", "--photo", "leaf.png");
  expect([noted.code, noted.err]).toEqual([0, ""]);
  for (let day = 0; day < 5; day++) {
    sh.at(Date.UTC(2026, 2, 12, 6) + day * DAY_ms);
    const made = await sh.run("book", "backup", "nightly", "--keep", "3", "--json");
    expect(made.code, made.err).toBe(0);
    appendFileSync(join(sh.home, "nightly", "a.part"), "half");
  }
  rmSync(join(sh.home, "nightly", "a.part"));
  const kept = readdirSync(join(sh.home, "nightly"));
  expect(kept.map((name) => name.slice(0, 10))).toEqual(["2026-03-14", "2026-03-15", "2026-03-16"]);
  const files = kept.map((name) => {
    const folder = join(sh.home, "nightly", name, "files");
    const [shelf = ""] = readdirSync(folder).filter((each) => each.length === 2);
    return statSync(join(folder, shelf, readdirSync(join(folder, shelf))[0] as string)).ino;
  });
  expect(new Set(files).size).toBe(1);
  expect((await sh.run("book", "verify", "--json")).json()).toMatchObject({ sound: true });
  const back = join(sh.home, "back.sillwood");
  const newest = join("nightly", kept[2] as string);
  expect((await sh.run("book", "restore", newest, "--book", back, "--json")).json()).toMatchObject({
    sound: true,
    damagedFiles: [],
  });
  expect(existsSync(`${back}-files`)).toBe(true);
  expect((await sh.run("book", "backup", "x", "--keep", "0")).err).toContain("expected 1 to 9999");
});

it("an open house keeps a backup a day by itself", async () => {
  const sh = shell();
  await sh.run(...bring);
  const store = await openSqlite({ path: join(sh.home, "book.sillwood") });
  const nightly = nightlyBackups(store, sh.home, { now_ms: () => 0, tell: () => undefined });
  const morning_ms = Date.UTC(2026, 2, 12, 6);
  expect(await nightly.look(morning_ms)).toBe(true);
  expect(await nightly.look(morning_ms + DAY_ms / 2)).toBe(false);
  expect(await nightly.look(morning_ms + DAY_ms)).toBe(true);
  expect(readdirSync(nightly.folder)).toHaveLength(2);
  nightly.stop();
  await store.close();
});

it("redact makes an entry and its corrections unreadable, in the book, its log and its export", async () => {
  const sh = shell();
  await sh.run(...bring);
  const noted = await sh.run("enter", "plant.noted", "1", "text=a stranger's address", "--json");
  const [{ id }] = noted.json<{ entries: [{ id: string }] }>().entries;
  await sh.run("book", "correct", id, "text=a stranger's new address");
  const done = await sh.run("book", "redact", id, "--json");
  expect([done.code, done.err]).toEqual([0, ""]);
  expect(done.json()).toMatchObject({ redacted_n: 2 });
  expect((await sh.run("book", "log", "--json")).out).not.toContain("address");
  await sh.run("book", "export", "out");
  expect(readFileSync(join(sh.home, "out", "book.ndjson"), "utf8")).not.toContain("address");
  expect((await sh.run("book", "verify", "--json")).json()).toMatchObject({ sound: true });
});

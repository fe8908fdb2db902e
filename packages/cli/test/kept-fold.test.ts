import { join } from "node:path";
import { acceptText } from "@sillwood/bench/book";
import { demoBook } from "@sillwood/simulator/demo";
import { readSqlite } from "@sillwood/store/read-only";
import { openSqlite } from "@sillwood/store/sqlite";
import { beforeAll, describe, expect, it } from "vitest";
import { gate } from "../src/book/kinds.ts";
import { loadPresent } from "../src/book/load-book.ts";
import { shell } from "./shell.ts";

const NOW_ms = Date.UTC(2026, 10, 25, 16);
const asked = { zone: "Europe/Berlin", language: "en", units: "metric", whole: false } as const;

describe("a fold that was kept", () => {
  const sh = shell(NOW_ms);
  const path = join(sh.home, "book.sillwood");
  const round = async () => (await sh.run("round", "--at", new Date(NOW_ms + 60_000).toISOString())).out;
  const present = async () => (await sh.run("round")).out;
  /** How many entries a start reads. */
  const read_n = async () => {
    const store = await readSqlite(path);
    const { ledger } = await loadPresent(store, asked);
    await store.close();
    return ledger.entries_n;
  };

  beforeAll(async () => {
    const { entries, files } = demoBook({ now_ms: NOW_ms, seed: 1 });
    const store = await openSqlite({ path });
    for (const [hash, text] of files)
      await store.files.put(
        hash,
        "text/csv",
        (async function* () {
          yield Buffer.from(text);
        })(),
      );
    const accepted = entries.map((text) => acceptText(text, gate)).flatMap((one) => (one.ok ? [one] : []));
    await store.append({ entries: accepted, redacted: [] });
    await store.close();
  }, 60_000);

  it("answers as the whole book does, from fewer entries", async () => {
    const whole = await present();
    sh.at(NOW_ms);
    expect(await present()).toBe(whole);
    expect(await read_n()).toBeLessThan(1000);
  });

  it("takes in what was written since", async () => {
    sh.at(NOW_ms + 1000);
    await sh.run("enter", "watering.watered", "118", "volume=300", "drained=yes");
    sh.at(NOW_ms + 59_000);
    // With --at nothing kept is used: the two ways must agree.
    expect(await present()).toBe(await round());
  });

  it("is left aside when an old entry was put right", async () => {
    const { lines } = (await sh.run("book", "log", "118", "--json")).json<{
      lines: { id: string; kind: string }[];
    }>();
    const old = lines.filter(({ kind }) => kind === "watering.watered").at(-1)?.id as string;
    expect((await sh.run("book", "correct", old, "volume=20")).code).toBe(0);
    expect(await read_n()).toBeGreaterThan(2000);
  });
});

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openSqlite } from "@sillwood/store/sqlite";
import { afterAll, describe, expect, it } from "vitest";
import { crowd } from "./crowd.ts";
import { hostile } from "./hostile.ts";
import { killTrial } from "./kill.ts";
import { playStorm } from "./storm.ts";

/** Small samples of what `npm run soak` does at full size; each also with a bug planted, which it must notice. */
const folder = mkdtempSync(join(tmpdir(), "sillwood-soak-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("kill", () => {
  const trial = (name: string, planted?: "forgets") => {
    const place = join(folder, `${name}.sillwood`);
    return killTrial({
      place,
      open: () => openSqlite({ path: place }),
      acknowledged_n: 70,
      seed: 3,
      ...(planted ? { planted } : {}),
    });
  };
  it("entries and photos that were named outlive SIGKILL, once and whole", async () => {
    const report = await trial("sound");
    expect(report).toMatchObject({ lost_n: 0, doubled_n: 0, damaged_n: 0 });
    expect(report.photos_n).toBeGreaterThan(10);
  });
  it("a server that answers before it writes is noticed", async () => {
    expect((await trial("forgets", "forgets")).lost_n).toBeGreaterThan(0);
  });
});

describe("storm", () => {
  it("five devices and a server come to one book and one round", async () => {
    for (let seed = 1; seed <= 12; seed++) {
      const { failed, log, entries_n } = await playStorm(seed);
      expect(failed, `seed ${seed}\n${log.join("\n")}`).toBeUndefined();
      expect(entries_n).toBeGreaterThan(10);
    }
  });
  it.each(["forgets the last of each batch", "folds by arrival"] as const)(
    "a house that %s is noticed",
    async (planted) => {
      const failed = [];
      for (let seed = 1; seed <= 6; seed++) failed.push((await playStorm(seed, planted)).failed);
      expect(failed.filter((one) => one !== undefined).length).toBeGreaterThan(0);
    },
  );
});

describe("hostile", () => {
  it("nothing sent or read gets a 5xx, a throw or a place in the book that it may not have", async () => {
    const { troubles, answers, kept_n } = await hostile(600, 5);
    expect(troubles).toEqual([]);
    expect(answers["lines"]).toBeGreaterThan(50);
    expect(Object.keys(answers).length).toBeGreaterThan(6);
    expect(kept_n).toBeGreaterThan(0);
  });
  it("a server that stumbles is noticed", async () => {
    expect((await hostile(200, 5, "crashes")).troubles.length).toBeGreaterThan(0);
  });
});

it("a small crowd's rounds are all taken", async () => {
  const { rounds_n, refused_n, entries_n } = await crowd({
    folder,
    devices_n: 12,
    span_s: 0.5,
    seed: 4,
    photo_B: 20_000,
  });
  expect(refused_n).toBe(0);
  expect(rounds_n).toBeGreaterThanOrEqual(12);
  expect(entries_n).toBe(rounds_n * 20);
});

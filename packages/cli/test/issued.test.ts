import { describe, expect, it } from "vitest";
import { shell } from "./shell.ts";

const DAY_ms = 86_400_000;

interface Shown {
  howGood: { work: string; n: number; said: string; unseen_n: number; crps_d: number; sameAgain: unknown }[];
}
type Line = { id: string; kind: string; data: { plants_n: number; date: string }; files: string[] };

/** A pot weighed every morning and watered when it is light; the round is opened before anything is done. */
async function months(days_n: number) {
  const sh = shell();
  await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
  const start_ms = sh.now_ms;
  let weight_g = 640;
  for (let day = 1; day <= days_n; day++) {
    sh.at(start_ms + day * DAY_ms);
    weight_g -= 26 + (day % 4) * 3;
    await sh.run("enter", "watering.weighed", "1", `weight=${weight_g}`);
    await sh.run("round");
    if (weight_g > 500) continue;
    await sh.run("enter", "watering.watered", "1", "volume=400", "drained=yes");
    await sh.run("enter", "watering.weighed", "1", "weight=640", "state=just drained");
    weight_g = 640;
  }
  return sh;
}
const linesOf = async (sh: ReturnType<typeof shell>) =>
  (await sh.run("book", "log", "--json"))
    .json<{ lines: Line[] }>()
    .lines.filter(({ kind }) => kind === "forecast.issued");

describe("the day's forecasts", () => {
  it("are kept once a day by the first round, and never by one of a past moment", async () => {
    const sh = shell();
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
    await sh.run("round", "--at", new Date(sh.now_ms).toISOString());
    await sh.run("round", "--known", new Date(sh.now_ms).toISOString());
    expect(await linesOf(sh)).toEqual([]);
    const first = await sh.run("round", "--json");
    expect(first.json()).toMatchObject({ verb: "round" });
    await sh.run("round");
    await sh.run("round", "--print");
    const kept = await linesOf(sh);
    expect(kept).toHaveLength(1);
    expect(kept[0]?.data).toMatchObject({ plants_n: 1, date: "2026-03-12" });
    expect(kept[0]?.files).toHaveLength(1);
    sh.at(sh.now_ms + DAY_ms);
    const next = await sh.run("round");
    expect(next.err).toBe("");
    expect(next.out).not.toBe("");
    expect((await linesOf(sh)).map(({ data }) => data.date)).toEqual(["2026-03-13", "2026-03-12"]);
    expect((await sh.run("book", "verify")).out).toContain("all sound");
    expect((await sh.run("book", "export", "copy")).out).toContain("2 files");
  });

  it("are kept by no round of an empty book, nor by who may only look", async () => {
    const sh = shell();
    await sh.run("enter", "supply.bought", "new", "name=peat", "what=medium", "unit=L", "amount=40");
    await sh.run("round");
    expect(await linesOf(sh)).toEqual([]);
    await sh.run("enter", "plant.brought", "new", "habit=thin");
    const joined = await sh.run("enter", "person.joined", "new", "role=viewer", "--json");
    const viewer = joined.json<{ entries: { on: string[] }[] }>().entries.at(-1)?.on[0] as string;
    expect((await sh.run("round", "--by", viewer)).code).toBe(0);
    expect(await linesOf(sh)).toEqual([]);
    await sh.run("round");
    expect(await linesOf(sh)).toHaveLength(1);
  });

  it("are scored by show, as they were at any moment", async () => {
    const sh = await months(40);
    const { howGood } = (await sh.run("show", "1", "--json")).json<Shown>();
    expect(howGood).toMatchObject([{ work: "water", unseen_n: 0 }]);
    expect(howGood[0]?.n).toBeGreaterThanOrEqual(5);
    expect(howGood[0]?.said).toMatch(/^\d+ forecasts since .*8 in 10 promised/);
    expect(howGood[0]?.sameAgain).toMatchObject({ n: expect.any(Number) });
    const text = (await sh.run("show", "1")).out;
    expect(text).toContain("How good have we been?\n  ");
    expect((await sh.run("show", "1", "--lang", "de")).out).toContain("Wie gut waren wir?");
    expect((await sh.run("show", "1", "--working", "how good")).out).toMatch(/score \d/);
    const early = await sh.run(
      "show",
      "1",
      "--json",
      "--at",
      new Date(sh.now_ms - 22 * DAY_ms).toISOString(),
    );
    expect(early.json<Shown>().howGood[0]?.n).toBeLessThan(howGood[0]?.n as number);
    expect(early.json<Shown>().howGood[0]?.said).toMatch(/too few to say/);
  });
});

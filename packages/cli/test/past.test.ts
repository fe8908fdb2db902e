import { beforeAll, describe, expect, it } from "vitest";
import { shell } from "./shell.ts";

const DAY_ms = 86_400_000;

describe("a past moment", () => {
  const sh = shell();
  const brought_ms = sh.now_ms;
  const day = (days_n: number) => new Date(brought_ms + days_n * DAY_ms).toISOString();
  beforeAll(async () => {
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
    for (let days_n = 1; days_n <= 4; days_n++) {
      sh.at(brought_ms + days_n * DAY_ms);
      await sh.run("enter", "watering.weighed", "1", `weight=${640 - 30 * days_n}`);
    }
  });

  it("does not change by anything that happened later", async () => {
    const before = await sh.run("show", "1", "--at", day(3.5), "--json");
    const round = await sh.run("round", "--at", day(3.5));
    sh.at(brought_ms + 6 * DAY_ms);
    await sh.run("enter", "watering.watered", "1", "volume=300", "drained=yes");
    await sh.run("enter", "plant.potted", "1", "pot=20x15", "medium=bark");
    await sh.run("enter", "plant.ended", "1", "how=given");
    expect((await sh.run("show", "1", "--at", day(3.5), "--json")).out).toBe(before.out);
    expect((await sh.run("round", "--at", day(3.5))).out).toBe(round.out);
    expect((await sh.run("show", "1", "--json")).json()).toMatchObject({
      ended: expect.stringContaining("given"),
    });
  });

  it("hides with --known what was written later, though it happened earlier", async () => {
    const at = ["--at", day(4.5), "--json"];
    const known = ["--known", day(5), ...at];
    const before = await sh.run("show", "1", ...known);
    await sh.run("enter", "watering.watered", "1", "volume=250", "drained=yes", `when=${day(4.2)}`);
    expect((await sh.run("show", "1", ...known)).out).toBe(before.out);
    const left = async (argv: readonly string[]) =>
      (await sh.run("show", "1", ...argv)).json<{
        forecast: { watering: { figures: { waterLeft_frac: number } } };
      }>().forecast.watering.figures.waterLeft_frac;
    expect(await left(at)).toBeGreaterThan((await left(known)) + 0.1);
  });

  it("takes a correction away again when it was not known yet", async () => {
    const { lines } = (await sh.run("book", "log", "1", "--json")).json<{
      lines: { id: string; kind: string }[];
    }>();
    const id = lines.filter(({ kind }) => kind === "watering.weighed").at(-1)?.id as string;
    const known = new Date(sh.now_ms + 500).toISOString();
    sh.at(sh.now_ms + 60_000);
    await sh.run("book", "correct", id, "weight=900");
    const log = async (...more: string[]) => (await sh.run("book", "log", "1", ...more)).out;
    expect(await log()).toContain("weighed 900 g");
    expect(await log("--known", known)).not.toContain("weighed 900 g");
  });

  it("asks for an instant that can be read", async () => {
    const { code, err } = await sh.run("show", "1", "--at", "3/10/2026");
    expect(code).toBe(2);
    expect(err).toContain("2026-04-30 08:15");
  });
});

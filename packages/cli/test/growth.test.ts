import { beforeAll, describe, expect, it } from "vitest";
import { shell } from "./shell.ts";

describe("growth in the shell", () => {
  const sh = shell();
  beforeAll(async () => {
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
  });
  const data = async () =>
    ((await sh.run("book", "log", "1", "--json")).json()["lines"] as unknown as { data: unknown }[])[0]?.data;

  it("takes a stage in words, leaves as lists of lengths and widths, and nodes", async () => {
    expect((await sh.run("enter", "growth.staged", "1", "stage=in-flower")).err).toBe("");
    expect(await data()).toEqual({ stage: "in flower" });
    const leaves = await sh.run(
      "enter",
      "growth.leaves",
      "1",
      "leaves=80",
      "lengths=6.5, 7, 5.5",
      "widths=3;3,5;2.5",
    );
    expect(leaves.err).toBe("");
    expect(await data()).toEqual({ leaves_n: 80, lengths_cm: [6.5, 7, 5.5], widths_cm: [3, 3.5, 2.5] });
    expect(
      (await sh.run("enter", "growth.leaves", "1", "leaves=80", "leafLength=3in", "leafWidth=3")).err,
    ).toBe("");
    expect(await data()).toMatchObject({ leafLength_cm: expect.closeTo(7.62, 6) });
    expect((await sh.run("enter", "growth.nodes", "1", "nodes=9")).err).toBe("");
    const shown = await sh.run("show", "1", "--json");
    expect(JSON.stringify(shown.json())).toContain("in flower (BBCH 65)");
  });

  it("names what is wrong with a list", async () => {
    expect(
      (await sh.run("enter", "growth.leaves", "1", "leaves=80", "lengths=6, x", "widths=3 3")).err,
    ).toContain("“x” is no number");
    expect(
      (await sh.run("enter", "growth.leaves", "1", "leaves=80", "lengths=6 7", "widths=3")).err,
    ).toContain("one width for each length");
    expect((await sh.run("enter", "growth.staged", "1", "stage=in-flower", "bbch=61")).err).toContain(
      "expected one of the two",
    );
  });
});

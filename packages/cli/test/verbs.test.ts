import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { shell } from "./shell.ts";

const DAY_ms = 86_400_000;

describe("a book in the shell", () => {
  const sh = shell();
  beforeAll(async () => {
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S");
    await sh.run("enter", "plant.brought", "new", "habit=fat", "pot=14x10", "medium=bark", "window=S");
    sh.at(sh.now_ms + DAY_ms);
    await sh.run("enter", "watering.watered", "1", "volume=6.5floz", "drained=yes");
    await sh.run("enter", "watering.weighed", "1", "weight=612", "state=just drained");
  });

  it("takes units at the edge and keeps SI", async () => {
    const log = await sh.run("book", "log", "1", "--json");
    const lines = log.json()["lines"] as unknown as {
      kind: string;
      data: { volume_mL?: number };
      id: string;
      said: string;
    }[];
    expect(lines.map(({ kind }) => kind)).toEqual(["watering.weighed", "watering.watered", "plant.brought"]);
    expect(lines[1]?.data.volume_mL).toBeCloseTo(192.2, 0);
    const us = await sh.run("book", "log", "1", "--units", "us");
    expect(us.out).toMatch(/6½.fl oz/);
  });

  it("puts an entry right, withdraws it and takes it back; the log keeps all of it", async () => {
    const first = (await sh.run("book", "log", "1", "--json")).json()["lines"] as unknown as {
      id: string;
      kind: string;
    }[];
    const id = first.find(({ kind }) => kind === "watering.watered")?.id as string;
    expect((await sh.run("book", "correct", id.slice(-6), "volume=160")).code).toBe(0);
    expect((await sh.run("book", "withdraw", id)).code).toBe(0);
    expect((await sh.run("book", "restore", id)).code).toBe(0);
    const line = (
      (await sh.run("book", "log", "1", "--json")).json()["lines"] as unknown as {
        id: string;
        data: { volume_mL: number };
        ruledThrough: unknown[];
        state: string;
      }[]
    ).find((one) => one.id === id);
    expect(line).toMatchObject({ state: "in force", data: { volume_mL: 160 } });
    expect(line?.ruledThrough.length).toBeGreaterThan(0);
    expect((await sh.run("book", "correct", id, "volume=0")).err).toContain("expected 1 to 20000 mL");
  });

  it("shows a past moment as it was, and as it was known", async () => {
    const before = new Date(sh.now_ms - DAY_ms / 2).toISOString();
    const then = (await sh.run("book", "log", "1", "--at", before, "--json")).json()[
      "lines"
    ] as unknown as unknown[];
    expect(then).toHaveLength(1);
    await sh.run(
      "enter",
      "watering.looked",
      "2",
      "look=dry",
      "yes=yes",
      `when=${new Date(sh.now_ms - DAY_ms).toISOString()}`,
    );
    const known = new Date(sh.now_ms - 60_000).toISOString();
    const lines = async (...more: string[]) =>
      ((await sh.run("book", "log", "2", "--json", ...more)).json()["lines"] as unknown as unknown[]).length;
    expect(await lines()).toBe(2);
    expect(await lines("--known", known)).toBe(1);
  });

  it("exports a book that another takes in whole", async () => {
    expect((await sh.run("book", "export", "copy")).code).toBe(0);
    const other = shell(sh.now_ms);
    const imported = await other.run("book", "import", join(sh.home, "copy"));
    expect(imported.code).toBe(0);
    const rounds = await Promise.all([
      sh.run("show", "1", "--json", "--at", "2026-03-20 8:00"),
      other.run("show", "1", "--json", "--at", "2026-03-20 8:00"),
    ]);
    expect(rounds[0]?.out).toBe(rounds[1]?.out);
    expect((await sh.run("book", "export", "copy")).err).toContain("not empty");
    expect((await other.run("book", "verify")).out).toContain("all sound");
    writeFileSync(
      join(sh.home, "torn.ndjson"),
      readFileSync(join(sh.home, "copy/book.ndjson"), "utf8").slice(0, -80),
    );
    const torn = await shell().run("book", "import", join(sh.home, "torn.ndjson"));
    expect(torn.code).toBe(1);
    expect(torn.err).toMatch(/line \d+/);
  });

  it("reads a series of weights and gives dated forecasts with use a day", async () => {
    writeFileSync(
      join(sh.home, "scale.csv"),
      "Zeit;Gramm;Nummer\n14.3.2026 8:00;598;1\n15.3.2026 8:00;561;1\n16.3.2026 8:00;530;1\n",
    );
    const tried = await sh.run(
      "read",
      "weighings",
      "scale.csv",
      "--map",
      "at=Zeit,weight_g=Gramm,number=Nummer",
    );
    expect(tried.out).toContain("Nothing written yet");
    expect(
      (
        await sh.run(
          "read",
          "weighings",
          "scale.csv",
          "--map",
          "at=Zeit,weight_g=Gramm,number=Nummer",
          "--keep",
        )
      ).code,
    ).toBe(0);
    const page = (await sh.run("show", "1", "--json", "--at", "2026-03-16 9:00")).json() as unknown as {
      forecast: { watering: { figures: Record<string, unknown> } };
    };
    const watering = page.forecast.watering.figures;
    expect(watering["use_g_d"]).toBeGreaterThan(10);
    expect(JSON.stringify(watering)).not.toMatch(/NaN|Infinity/);
  });

  it("plans an absence, and refuses one that makes no sense", async () => {
    const plan = await sh.run(
      "away",
      "tomorrow",
      new Date(sh.now_ms + 9 * DAY_ms).toISOString().slice(0, 10),
    );
    expect(plan.code).toBe(0);
    expect(plan.out).toMatch(/may not last|last/);
    expect((await sh.run("away", "2026-03-20", "2026-03-18")).code).toBe(1);
    expect((await sh.run("away", "someday", "never")).code).toBe(2);
  });

  it("keeps a pour that no pot can take from the book until somebody says that it is right", async () => {
    const asked = await sh.run("enter", "watering.watered", "1", "volume=9000");
    expect(asked.code).toBe(1);
    expect(asked.err).toMatch(/is more than pot 1 can hold, about .* Meant 900.mL\?/);
    expect((await sh.run("enter", "watering.watered", "1", "volume=9000", "--true")).code).toBe(0);
  });
});

describe("light in the shell", () => {
  const sh = shell();
  beforeAll(async () => {
    await sh.run(
      "enter",
      "bench.laid",
      "new",
      "name=South sill",
      "place=sill",
      "spots=S1,S2,S3",
      "windowFaces=S",
    );
    await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "spot=S3");
  });

  it("takes a reading for a spot by its name, a window by compass, a timer by the clock", async () => {
    const pair = await sh.run(
      "enter",
      "light.pair",
      "S3",
      "inside_lux=1400",
      "outside_lux=9000",
      "sky=evenly grey",
    );
    expect(pair.err).toBe("");
    const bare = await sh.run(
      "enter",
      "light.pair",
      "south-sill S3",
      "inside=130fc",
      "outside=840fc",
      "sky=broken",
      "--json",
    );
    const [entry] = bare.json()["entries"] as unknown as { on: string[]; data: { inside_lux: number } }[];
    expect(entry?.data.inside_lux).toBeCloseTo(1399.3, 1);
    const window = ["faces=SW", "width=120cm", "height=1.4", "glazing=double"];
    expect((await sh.run("enter", "bench.window", "south-sill", ...window)).code).toBe(0);
    expect((await sh.run("enter", "spot.stands", "S2", "along=0", "fromGlass=10in")).code).toBe(0);
    const timer = await sh.run("enter", "bench.timer", "south-sill", "from=17:30", "hours=3:30", "--json");
    const [set] = timer.json()["entries"] as unknown as { data: object }[];
    expect(set?.data).toEqual({ from_h: 17.5, hours_h: 3.5 });
  });

  it("says light by bench and month, with the working of each number, and refuses what is none", async () => {
    const all = await sh.run("light");
    expect(all.err).toBe("");
    expect(all.out).toContain("South sill");
    expect(all.out).toMatch(/S3 .*1 .*wants/);
    const one = (await sh.run("light", "south-sill", "--month", "12", "--json")).json() as unknown as {
      month: number;
      benches: { spots: { light: { mid_mol_m2_d: number }; year: unknown[] }[] }[];
    };
    expect(one.month).toBe(12);
    expect(one.benches).toHaveLength(1);
    expect(one.benches[0]?.spots[0]?.year).toHaveLength(12);
    const june = (
      await sh.run("light", "south-sill", "--month", "6", "--json")
    ).json() as unknown as typeof one;
    const midOf = ({ benches }: typeof one) => benches[0]?.spots[0]?.light.mid_mol_m2_d ?? Number.NaN;
    expect(midOf(june)).toBeGreaterThan(midOf(one));
    const working = await sh.run("light", "south-sill", "--working", "all", "--json");
    expect(JSON.stringify(working.json())).toContain('"formula"');
    expect((await sh.run("light", "--month", "13")).code).toBe(2);
    expect((await sh.run("light", "nowhere")).err).toContain('no bench is called "nowhere"');
    expect((await sh.run("light", "south-sill", "--working", "zzz")).code).toBe(1);
  });

  it("names the bench or the spot that is not there, and what a pair still lacks", async () => {
    expect((await sh.run("enter", "light.pair", "S9", "inside=1", "outside=99", "sky=clear")).err).toContain(
      'no bench is called "S9"',
    );
    expect((await sh.run("enter", "light.pair", "S3", "inside_lux=1400", "sky=clear")).err).toContain(
      "expected inside and outside, both in lux or both in µmol/m²s",
    );
    expect(
      (await sh.run("enter", "light.pair", "S3", "inside=12%", "outside=99", "sky=clear")).err,
    ).toContain("expected lux, lx or fc");
  });
});

describe("every verb", () => {
  it("answers --json with its version and name, and 2 on wrong use", async () => {
    const sh = shell();
    await sh.run("enter", "plant.brought", "new", "habit=thin");
    for (const argv of [
      ["round"],
      ["show", "1"],
      ["book", "log"],
      ["reckon", "dew"],
      ["away", "tomorrow", "2026-03-20"],
      ["light"],
      ["enter", "--list"],
      ["read", "plants", "--columns"],
    ]) {
      const { code, json } = await sh.run(...argv, "--json");
      expect(code).toBe(0);
      expect(json()).toMatchObject({ sillwood: 1, verb: argv[0] });
    }
    for (const argv of [
      ["rond"],
      ["show"],
      ["show", "1", "2"],
      ["round", "--minutes", "x"],
      ["light", "a", "b"],
      ["book", "burn"],
      ["read", "songs"],
      ["reckon", "x=1", "y"],
      ["open", "--port", "no-port"],
    ]) {
      const { code, err } = await sh.run(...argv);
      expect([argv, code]).toEqual([argv, 2]);
      expect(err.length).toBeGreaterThan(10);
    }
    expect((await sh.run("rond")).err).toContain("Meant round?");
  });

  it("explains itself in at most eighty columns", async () => {
    const sh = shell();
    for (const verb of ["open", "round", "show", "light", "enter", "read", "away", "book", "reckon"]) {
      const { out } = await sh.run(verb, "--help");
      expect(out).toContain(verb);
      for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
    }
  });
});

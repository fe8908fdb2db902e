import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { shell } from "./shell.ts";

interface Shown {
  forecast: {
    watering: {
      dates: string[];
      quantiles: Record<"p10" | "p50" | "p90", { instant: string; date: string }>;
      figures: Record<string, number>;
    };
  };
  workings: { title: string; inputs: { from: string }[] }[];
}

/** A weighed pot in its room, typed in from one file; 27 g a day. */
const series = (light: string) =>
  [
    `time,grams,air,humidity,${light}`,
    ...[612, 584, 558, 530, 504].map((grams, i) => `2026-03-0${i + 1} 08:00,${grams},21.${i},48,6.${i}`),
    "",
  ].join("\n");

async function withSeries(text: string) {
  const sh = shell();
  await sh.run(
    "enter",
    "brought",
    "new",
    "habit=thin",
    "pot=12x9",
    "medium=spongy",
    "window=S",
    "when=2026-02-28",
  );
  writeFileSync(join(sh.home, "series.csv"), text);
  return sh;
}

it("takes weights, air, humidity and light of one file and gives dated forecasts with use a day", async () => {
  const sh = await withSeries(series("light"));
  const tried = await sh.run("read", "weighings", "series.csv", "--plant", "1");
  expect(tried.out).toContain("light     →  dli_mol_m2_d".replace(/ +/, "                   "));
  expect((await sh.run("read", "weighings", "series.csv", "--plant", "1", "--keep")).code).toBe(0);
  const shown = (await sh.run("show", "1", "--at", "2026-03-05 9:00", "--json")).json<Shown>();
  const { dates, quantiles, figures } = shown.forecast.watering;
  expect(dates).toHaveLength(20);
  expect(
    quantiles.p10.instant <= quantiles.p50.instant && quantiles.p50.instant <= quantiles.p90.instant,
  ).toBe(true);
  expect(figures["use_g_d"]).toBeGreaterThan(18);
  expect(figures["use_g_d"]).toBeLessThan(36);
  expect(figures["useLow_g_d"]).toBeLessThan(figures["use_g_d"] as number);
  expect(figures["useHigh_g_d"]).toBeGreaterThan(figures["use_g_d"] as number);
  const from = shown.workings.flatMap(({ inputs }) => inputs.map((input) => input.from)).join();
  expect(from).toContain("air of South window as written");
  expect(from).toContain("daily light of South window as written");
});

it("reads light by its unit, and says what it can't turn into ours", async () => {
  const daily = await withSeries(series("dli_mol_m2_d"));
  expect((await daily.run("read", "weighings", "series.csv", "--plant", "1", "--json")).json()).toMatchObject(
    {
      mapping: { dli_mol_m2_d: "dli_mol_m2_d" },
      entries_n: 15,
    },
  );
  const lux = await withSeries(series("Light (lux)"));
  const { out, err, code } = await lux.run("read", "weighings", "series.csv", "--plant", "1");
  expect(code).toBe(0);
  expect(out).toContain("not read: Light (lux)");
  expect(err).toContain("lux can't be turned into µmol/m²s");
});

it("takes readings that come every hour as a logger's series", async () => {
  const hours = Array.from({ length: 30 }, (_, i) => {
    const [date, hour] = [i < 24 ? "2026-03-01" : "2026-03-02", `${i % 24}`.padStart(2, "0")];
    return `${date} ${hour}:00,${612 - i},21,0.5,${i % 24 > 7 && i % 24 < 18 ? 150 : 0}`;
  });
  const sh = await withSeries(["time,grams,air,humidity,light", ...hours].join("\n"));
  const kept = await sh.run("read", "weighings", "series.csv", "--plant", "1", "--keep", "--json");
  expect(kept.json()).toMatchObject({ kept: true, entries_n: 31, mapping: { ppfd_umol_m2_s: "light" } });
  const { lines } = (await sh.run("book", "log", "--json")).json<{
    lines: { kind: string; files: string[] }[];
  }>();
  expect(lines.find(({ kind }) => kind === "series.part")?.files).toHaveLength(1);
});

it("turns units in headers and cells into ours", async () => {
  const sh = await withSeries("Date;Weight (oz);Temp (°F)\n2026-03-01 8:00;20;70\n2026-03-02 8:00;560g;69\n");
  await sh.run("read", "weighings", "series.csv", "--plant", "1", "--keep");
  const { lines } = (await sh.run("book", "log", "--json")).json<{
    lines: { kind: string; data: { weight_g?: number; dayAir_C?: number } }[];
  }>();
  const of = (wanted: string) => lines.filter(({ kind }) => kind === wanted).map(({ data }) => data);
  expect(of("watering.weighed").map(({ weight_g }) => Math.round(weight_g ?? 0))).toEqual([560, 567]);
  expect(of("bench.air").map(({ dayAir_C }) => Math.round((dayAir_C ?? 0) * 10))).toEqual([206, 211]);
});

it("says how to date a plant and its bench back when a file starts before them", async () => {
  const sh = shell();
  await sh.run("enter", "brought", "new", "habit=thin", "pot=12x9", "window=S");
  writeFileSync(join(sh.home, "series.csv"), series("light"));
  const { err } = await sh.run("read", "weighings", "series.csv", "--plant", "1", "--keep");
  const command = /sillwood (book correct .+)/.exec(err)?.[1] as string;
  expect((await sh.run(...command.split(" "))).code).toBe(0);
  expect((await sh.run("show", "1", "--at", "2026-03-02 9:00")).out).toContain("South window 1");
  expect((await sh.run("read", "weighings", "series.csv", "--plant", "1")).err).toBe("");
});

it("names every wrong cell once, by line and column, and writes nothing", async () => {
  const sh = await withSeries(
    "time,grams,air\n2026-03-01 08:00,much,21\nsomeday,600,21\n2026-03-03 08:00,590,210\n",
  );
  const { code, err } = await sh.run("read", "weighings", "series.csv", "--plant", "1", "--keep");
  expect(code).toBe(1);
  expect(err).toMatch(/line 2, grams: .*much/);
  expect(err.match(/line 3, time/g)).toHaveLength(1);
  expect(err).toMatch(/line 4, air: .*210.*-10 to 50/);
  const { lines } = (await sh.run("book", "log", "--json")).json<{ lines: unknown[] }>();
  expect(lines).toHaveLength(3);
});

import { expect, it } from "vitest";
import { shell } from "./shell.ts";

it("gives a first answer from an empty book in at most 8 decisions and 4 typed values", async () => {
  const sh = shell();
  const typed = ["habit=thin", "pot=12x9", "medium=spongy", "window=S"];
  const { code, out } = await sh.run("enter", "plant.brought", "new", ...typed);
  // Verb, kind, new, and a value each: seven decisions; four values typed.
  expect(3 + typed.length).toBeLessThanOrEqual(8);
  expect(typed.length).toBeLessThanOrEqual(4);
  expect(code).toBe(0);
  expect(out).toMatch(/water/i);
  expect(out).toMatch(/○ assumed/);
  const shown = await sh.run("show", "1", "--json");
  const { forecast } = shown.json<{ forecast: { watering: { dates: string[]; origin: string } } }>();
  expect(forecast.watering.dates).toHaveLength(20);
  expect(forecast.watering.origin).toBe("assumed");
});

it("loses nothing by a wrong turn", async () => {
  const sh = shell();
  const slip = await sh.run(
    "enter",
    "plant.brought",
    "new",
    "habit=thin",
    "pot=12x90",
    "medium=spongy",
    "window=S",
  );
  expect(slip.code).toBe(1);
  expect(slip.err).toContain("90 cm; expected 2 to 60 cm");
  expect((await sh.run("enter", "plant.brought", "new", "habit=thinn")).err).toMatch(/thin/);
  expect(
    (await sh.run("enter", "plant.brought", "new", "habit=thin", "pot=12x9", "medium=spongy", "window=S"))
      .code,
  ).toBe(0);
  expect((await sh.run("show", "1")).out).toContain("thin-fruited");
});

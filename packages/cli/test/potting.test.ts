import { expect, it } from "vitest";
import { shell } from "./shell.ts";

interface Mixed {
  readonly verb: string;
  readonly mix: {
    readonly recipe: readonly { readonly scoops_n: number }[];
    readonly chance_frac: number;
  } | null;
  readonly noMix: string | null;
}

it("mix medium --json gives whole scoops for the pot, says when none will do, and refuses a bag it does not know", async () => {
  const sh = shell();
  await sh.run("enter", "plant.brought", "new", "number=127", "habit=thin", "medium=spongy", "pot=12x9");
  const good = await sh.run("mix", "medium", "pumice", "bark", "--pot", "oval 18x14x5", "--json");
  expect(good.code, good.err).toBe(0);
  const { verb, mix, noMix } = good.json<Mixed>();
  expect(verb).toBe("mix");
  expect(mix?.recipe.every(({ scoops_n }) => Number.isInteger(scoops_n))).toBe(true);
  expect(mix?.chance_frac).toBeGreaterThan(0.5);
  expect(noMix).toBeNull();
  const none = await sh.run("mix", "medium", "peat and perlite 70:30", "--pot", "oval 18x14x4");
  expect(none.out).toMatch(/Granular\s+mixes\s+only\s+in\s+this\s+tray/);
  const wrong = await sh.run("mix", "medium", "gravel");
  expect(wrong.code).toBe(1);
  expect(wrong.err).toMatch(/gravel.*expected one of/);
  expect((await sh.run("mix", "soup")).code).toBe(2);
});

it("repot says who is due, what one pot holds, and follows a potting day", async () => {
  const sh = shell();
  await sh.run("enter", "plant.brought", "new", "number=127", "habit=thin", "medium=spongy", "pot=12x9");
  const one = await sh.run("repot", "127", "--json");
  expect(one.code, one.err).toBe(0);
  const { figures } = one.json<{ figures: Record<string, number> }>();
  for (const name of ["medium_mL", "air_frac", "available_mL", "saltAtRefill_mS_cm", "nextMost_mL"])
    expect(figures[name], name).toBeGreaterThan(0);
  const begun = await sh.run("enter", "potting.prepared", "127", "water_C=9", "medium_C=19", "room_C=21");
  expect(begun.code, begun.err).toBe(0);
  const day = (await sh.run("repot", "--json")).json<{
    warmth: { state: string; until: string | null };
    rail: readonly { number: string; next: string | null }[];
  }>();
  expect(day.warmth.state).toBe("wait");
  expect(day.warmth.until).toMatch(/^\d{4}-/);
  expect(day.rail).toMatchObject([{ number: "127", next: "lift" }]);
  expect((await sh.run("repot")).out).toMatch(/Potting day, 1 plant on the rail/);
});

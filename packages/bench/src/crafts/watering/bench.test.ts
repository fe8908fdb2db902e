import { describe, expect, it } from "vitest";
import type { PlantId } from "../../book/entry.ts";
import { waterAway } from "./away.ts";
import { waterOutlook } from "./outlook.ts";
import { type Pooled, poolOf } from "./pool.ts";
import type { WaterSlice } from "./slice.ts";
import { DAY_ms, HOUR_ms, potKit, poured, START_ms, testSay, weighed } from "./test-kit.ts";

const morning = (day: number) => START_ms + day * DAY_ms + 8 * HOUR_ms;
const named = (n: number) => potKit({ id: `pot-${n}` as PlantId, number: n });

/** A pot watered on day 0 whose weight on day 3 shows `factor` times the modelled use. */
function pot(n: number, factor?: number) {
  const kit = named(n);
  const drained = kit.live(
    kit.start(),
    [
      poured(morning(0), { volume_mL: 250, drained: "yes" }),
      weighed(morning(0) + 1000, { weight_g: 700, state: "just drained" }),
    ],
    morning(3),
  );
  if (factor === undefined) return { kit, slice: drained };
  const used_g = drained.ledger.used_g;
  const weight_g = 700 - factor * used_g;
  return {
    kit,
    slice: kit.live(drained, [weighed(morning(3), { weight_g, state: "as found" })], morning(3)),
  };
}

const members = (pots: readonly { kit: ReturnType<typeof named>; slice: WaterSlice }[]) =>
  pots.map(({ kit, slice }) => ({ plant: kit.plant, slice }));

describe("pooling over a bench", () => {
  const thirsty = [pot(1, 1.5), pot(2, 1.4), pot(3, 1.5), pot(4)];
  const pool = poolOf(members(thirsty), morning(3));
  const last = pool.get("pot-4" as PlantId) as Pooled;

  it("tells an unweighed pot that its neighbours used more, shrunk", () => {
    expect(last.from_n).toBe(3);
    expect(last.ln).toBeGreaterThan(0.02);
    expect(last.ln).toBeLessThan(Math.log(1.5));
  });

  it("leaves out a pot's own weights", () => {
    expect(pool.get("pot-1" as PlantId)?.from_n).toBe(2);
    const alone = poolOf(members([pot(1, 1.5)]), morning(3)).get("pot-1" as PlantId);
    expect(alone).toMatchObject({ ln: 0, from_n: 0 });
  });

  it("fades within days", () => {
    const later = poolOf(members(thirsty), morning(6)).get("pot-4" as PlantId) as Pooled;
    expect(later.ln).toBeLessThan(0.5 * last.ln);
    expect(poolOf(members(thirsty), morning(20)).get("pot-4" as PlantId)?.ln).toBe(0);
  });

  it("does not hang on the order of the pots", () => {
    const turned = poolOf(members([...thirsty].reverse()), morning(3)).get("pot-4" as PlantId) as Pooled;
    expect(turned.ln).toBeCloseTo(last.ln, 12);
  });

  it("brings the dates of an unweighed pot nearer", () => {
    const { kit, slice } = pot(4);
    const middle = (pooled: unknown) =>
      waterOutlook(slice, kit.outward(morning(3), { pooled })).line?.dates_ms[10] as number;
    expect(middle(last)).toBeLessThan(middle(undefined));
  });
});

describe("the one question", () => {
  it("asks a pot that is known by weight to be weighed where that narrows the dates", () => {
    const { kit, slice } = pot(5);
    const { question } = waterOutlook(slice, kit.outward(morning(3)));
    expect(question?.work).toBe("weigh");
    expect(question?.worth_d).toBeGreaterThan(0.3);
    expect(question?.said).toMatch(/^Weigh .* would become about/);
  });

  it("asks nothing right after a weight", () => {
    const { kit, slice } = pot(6, 1);
    const before = waterOutlook(pot(6).slice, kit.outward(morning(3))).figures["weighingWorth_d"] as number;
    const after = waterOutlook(slice, kit.outward(morning(3)));
    expect(after.figures["weighingWorth_d"]).toBeLessThan(0.3 * before);
    expect(after.question?.work).not.toBe("weigh");
  });

  it("a pot without any weight is lifted, not weighed", () => {
    const kit = named(7);
    const slice = kit.live(kit.start(), [poured(morning(0), { volume_mL: 250, drained: "yes" })], morning(4));
    expect(waterOutlook(slice, kit.outward(morning(4))).question?.work).not.toBe("weigh");
  });
});

describe("away", () => {
  const pots = [pot(1), pot(2)].map(({ kit, slice }) => ({ slice, sight: kit.outward(morning(3)) }));
  const away = (days: number) => waterAway(pots, { from_ms: morning(4), to_ms: morning(4 + days) });

  it("a night away harms nobody, three weeks harm everybody", () => {
    expect(away(1).plants.every(({ suffers_frac }) => suffers_frac < 0.15)).toBe(true);
    expect(away(21).plants.every(({ suffers_frac }) => suffers_frac > 0.8)).toBe(true);
  });

  it("chances grow with the absence, and wilting never comes before wanting", () => {
    let before = 0;
    for (const days of [1, 3, 5, 8, 12]) {
      const plan = away(days);
      for (const { wants_frac, suffers_frac } of plan.plants)
        expect(suffers_frac).toBeLessThanOrEqual(wants_frac);
      const mean = plan.plants.reduce((sum, { wants_frac }) => sum + wants_frac, 0) / plan.plants.length;
      expect(mean).toBeGreaterThanOrEqual(before);
      before = mean;
    }
  });

  it("each remedy helps, shows its sum and its working; what suffices with least effort comes first", () => {
    const [worst] = away(7).plants;
    expect(worst?.remedies.map(({ key }) => key).sort()).toEqual([
      "cooler",
      "dimmer",
      "group",
      "sitter",
      "soak",
      "wick",
    ]);
    const of = (key: string) => worst?.remedies.find((remedy) => remedy.key === key);
    for (const key of ["group", "dimmer", "cooler", "wick"]) {
      expect(of(key)?.wants_frac).toBeLessThanOrEqual(of("soak")?.wants_frac as number);
    }
    for (const remedy of worst?.remedies ?? []) {
      expect(remedy.sum).toMatch(/\d/);
      expect(remedy.working.inputs.length).toBeGreaterThan(0);
      expect(remedy.wants_frac).toBeGreaterThanOrEqual(0);
      expect(remedy.wants_frac).toBeLessThanOrEqual(1);
    }
    const enough = worst?.remedies.map(({ wants_frac }) => wants_frac <= 0.2) ?? [];
    expect(enough).toEqual([...enough].sort((a, b) => Number(b) - Number(a)));
  });

  it("a longer absence takes a larger jar and more sitter's waterings", () => {
    const jar = (days: number) =>
      away(days).plants[0]?.remedies.find(({ key }) => key === "wick")?.working.value as number;
    expect(jar(14)).toBeGreaterThan(jar(7) + 100);
    expect(away(14).sitter.length).toBeGreaterThan(away(7).sitter.length);
  });

  it("the sitter's sheet runs by days, inside the absence, in plain words", () => {
    const { sitter, sitterHow } = away(14);
    expect(sitter.length).toBeGreaterThanOrEqual(2);
    for (let i = 0; i < sitter.length; i++) {
      const line = sitter[i];
      expect(line?.at_ms).toBeGreaterThanOrEqual(morning(4));
      expect(line?.at_ms).toBeLessThan(morning(18));
      expect(line?.said).toContain("127");
      expect(line?.amount.value).toBeGreaterThan(0);
      if (i > 0) expect(line?.at_ms).toBeGreaterThanOrEqual(sitter[i - 1]?.at_ms as number);
    }
    expect(sitterHow.join()).toContain("saucer");
  });

  it("the return starts with the driest, and nobody away is nothing to say", () => {
    expect(away(7).back.length).toBeGreaterThanOrEqual(2);
    expect(waterAway([], { from_ms: 0, to_ms: 1 }).plants).toEqual([]);
    const german = waterAway(
      pots.map(({ slice, sight }) => ({ slice, sight: { ...sight, say: testSay("de") } })),
      { from_ms: morning(4), to_ms: morning(11) },
    );
    expect(german.said).toContain("Töpfe");
    expect(JSON.stringify(german)).not.toMatch(/NaN|undefined/);
  });
});

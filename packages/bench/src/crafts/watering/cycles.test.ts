import { describe, expect, it } from "vitest";
import type { Happening } from "../craft.ts";
import { waterCame } from "./cycles.ts";
import { waterOutlook } from "./outlook.ts";
import { DAY_ms, HOUR_ms, looked, other, potKit, poured, START_ms, weighed } from "./test-kit.ts";

const kit = potKit();
const at = (days_d: number) => START_ms + days_d * DAY_ms;
const soak = (days_d: number, volume_mL = 900) => poured(at(days_d), { volume_mL, drained: "yes" });
const scale = (days_d: number, weight_g: number) => weighed(at(days_d), { weight_g, state: "as found" });
const came = (life: readonly Happening[], to_d = 40) => waterCame(kit.live(kit.start(), life, at(to_d)));
/** A pot of 600 g when drained that gives off 40 g a day, weighed every morning, poured at these mornings. */
function weighedLife(pours_d: readonly number[], to_d: number): Happening[] {
  const life: Happening[] = [];
  let full_d = pours_d[0] as number;
  for (let day = Math.ceil(full_d); day <= to_d; day++) {
    if (day > full_d) life.push(scale(day + 0.3, 600 - 40 * (day + 0.3 - full_d)));
    if (pours_d.includes(day)) {
      life.push(soak(day + 0.31));
      full_d = day + 0.31;
      life.push(weighed(at(day + 0.4), { weight_g: 600, state: "just drained" }));
    }
  }
  return life;
}

describe("when water came due in past dry-downs", () => {
  it("opens at the first pour, closes at the next, and carries how long the one before took", () => {
    const { cycles, unseen_n, work } = came(weighedLife([0, 5, 9, 15], 16));
    expect([work, unseen_n, cycles.length]).toEqual(["water", 0, 3]);
    expect(cycles.map(({ lasted_ms }) => lasted_ms && Math.round(lasted_ms / DAY_ms))).toEqual([
      undefined,
      5,
      4,
    ]);
    for (const { from_ms, done_ms, at_ms, sd_ms, how } of cycles) {
      expect(how).toBe("weighed");
      expect(done_ms).toBeGreaterThan(from_ms);
      expect(at_ms).toBeGreaterThanOrEqual(from_ms);
      expect(sd_ms).toBeGreaterThan(0);
    }
  });

  it("lies after the pour where the pot was watered early, and before it where it was watered late, at about one wait", () => {
    const waits = [4, 7, 10].map((wait_d) => {
      const { cycles } = came(weighedLife([0, 9, 18, 18 + wait_d], 18 + wait_d));
      const last = cycles.at(-1);
      if (!last) throw new Error("no cycle closed");
      return { wait_d, due_d: (last.at_ms - last.from_ms) / DAY_ms };
    });
    expect(waits[0]?.due_d).toBeGreaterThan(4);
    expect(waits[2]?.due_d).toBeLessThan(10);
    const dues = waits.map(({ due_d }) => due_d);
    expect(Math.max(...dues) - Math.min(...dues)).toBeLessThan(1.3);
  });

  it("counts a look in the second half of the way, and no look at noon's droop, none early, none at all", () => {
    const look = (day: number, key: "light" | "heavy" | "drooping") =>
      looked(at(day), { look: key, yes: true });
    const one = (between: readonly Happening[]) => {
      const { cycles, unseen_n } = came([soak(0.3), ...between, soak(5.3)]);
      return [cycles[0]?.how, unseen_n];
    };
    expect(one([look(4.3, "light")])).toEqual(["looked", 0]);
    expect(one([look(4.3, "light"), scale(4.4, 500)])).toEqual(["weighed", 0]);
    expect(one([look(1, "heavy")])).toEqual([undefined, 1]);
    expect(one([look(4.5, "drooping")])).toEqual([undefined, 1]);
    expect(one([weighed(at(0.4), { weight_g: 600, state: "just drained" })])).toEqual([undefined, 1]);
    expect(one([])).toEqual([undefined, 1]);
  });

  it("takes pours within hours as one watering, and begins anew with a new pot", () => {
    expect(came([soak(0.3), soak(0.4), soak(0.5), scale(4, 500), soak(5)]).cycles).toHaveLength(1);
    const repotted = came([soak(0.3), other(at(2), { effect: "pot changed" }), scale(4, 500), soak(5)]);
    expect(repotted).toMatchObject({ cycles: [], unseen_n: 0 });
  });

  it("moves when a weight that was typed late arrives: as now believed", () => {
    const life = weighedLife([0, 6], 6);
    const without = life.filter(({ at_ms }) => at_ms < at(5));
    const close = soak(6.31);
    const before = came([...without, looked(at(5), { look: "light", yes: true }), close]).cycles[0];
    const after = came([...without, looked(at(5), { look: "light", yes: true }), scale(6.3, 340), close])
      .cycles[0];
    expect(after?.at_ms).toBeLessThan(before?.at_ms as number);
  });

  it("keeps the last two dozen", () => {
    const pours = Array.from({ length: 30 }, (_, i) => 3 * i);
    expect(came(weighedLife(pours, 90), 91).cycles).toHaveLength(24);
  });
});

describe("use on the coming days", () => {
  const slice = kit.live(kit.start(), weighedLife([0, 5, 9], 10), at(10.3));
  const outlook = waterOutlook(slice, kit.outward(at(10.3)));
  const stretches = outlook.daily?.stretches ?? [];

  it("is told from now to each midnight, with mean, spread and range, whole days close to the use a day", () => {
    expect(stretches.length).toBeGreaterThanOrEqual(7);
    expect(stretches[0]?.from_ms).toBe(at(10.3));
    stretches.forEach(({ from_ms, to_ms, mean, sd, p10, p90 }, i) => {
      expect(to_ms).toBeGreaterThan(from_ms);
      if (i > 0) expect(from_ms).toBe(stretches[i - 1]?.to_ms);
      expect(sd).toBeGreaterThan(0);
      expect(p10).toBeLessThan(mean);
      expect(p90).toBeGreaterThan(mean);
    });
    const use_g_d = outlook.figures["use_g_d"] as number;
    expect(stretches[1]?.mean).toBeGreaterThan(0.75 * use_g_d);
    expect(stretches[1]?.mean).toBeLessThan(1.3 * use_g_d);
  });

  it("does not fall to nothing: the pot is watered when it comes due", () => {
    expect(stretches.at(-1)?.mean).toBeGreaterThan(0.6 * (stretches[1]?.mean as number));
  });

  it("is the same each time it is asked, and wider when air and light are", () => {
    const again = waterOutlook(slice, kit.outward(at(10.3))).daily;
    expect(again).toEqual(outlook.daily);
    const rough = potKit({}, { demandSd_frac: 0.5 });
    const wide = waterOutlook(
      rough.live(rough.start(), weighedLife([0, 5, 9], 10), at(10.3)),
      rough.outward(at(10.3)),
    ).daily;
    expect(wide?.stretches[1]?.sd).toBeGreaterThan(stretches[1]?.sd as number);
  });

  it("knows since when the pot dries", () => {
    expect(outlook.line?.work).toBe("water");
    expect(Math.abs((outlook.line?.since_ms as number) - at(9.31))).toBeLessThan(HOUR_ms / 60);
  });
});

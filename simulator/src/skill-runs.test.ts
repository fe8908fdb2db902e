import { describe, expect, test } from "vitest";
import { DAY_ms, HOUR_ms } from "./nursery/calendar.ts";
import { chanceOf } from "./nursery/chance.ts";
import { runNursery } from "./nursery/nursery.ts";
import { potAvailable_g, potDepletion_g } from "./nursery/potted-plant.ts";
import { drawRun } from "./skill/draw-run.ts";
import { HORIZON_d, linesUntil, SKILL_SEEDS, skillRuns } from "./skill-runs.ts";

const ask = { seed: SKILL_SEEDS.A[0], pots: 24, days: 50 };
const runs = skillRuns(ask);

describe("skill runs", () => {
  test("the same seed gives the same books and dates, another seed others", () => {
    expect(skillRuns(ask)).toEqual(runs);
    expect(skillRuns({ ...ask, seed: SKILL_SEEDS.B[0] })[0]?.lines.length).not.toBe(runs[0]?.lines.length);
    expect(new Set([...SKILL_SEEDS.A, ...SKILL_SEEDS.B]).size).toBe(6);
  });

  test("have the pots asked for, each with forecasts to make, and all groups", () => {
    const pots = runs.flatMap((run) => run.pots);
    expect(pots).toHaveLength(24);
    for (const pot of pots) expect(pot.cases.length).toBeGreaterThan(5);
    expect(new Set(pots.map(({ size }) => size)).size).toBe(3);
    expect(
      new Set(
        skillRuns({ ...ask, pots: 40, days: 30 }).flatMap((run) => run.pots.map((pot) => pot.weighings_n)),
      ),
    ).toEqual(new Set([0, 1, 2, 4]));
  });

  test("a pot that is never weighed has no weight in its book, one that is weighed has", () => {
    for (const run of runs) {
      for (const pot of run.pots) {
        const weights = run.lines.filter(
          (line) => line.kind === "watering.weighed" && line.on.includes(pot.plant),
        ).length;
        if (pot.weighings_n === 0) expect(weights).toBe(0);
        else expect(weights).toBeGreaterThan(0);
      }
    }
  });

  test("nothing later leaks into what the book held at a moment", () => {
    const run = runs[0];
    const at_ms = run?.pots[0]?.cases[3]?.at_ms ?? 0;
    const lines = run ? linesUntil(run, at_ms) : [];
    expect(lines.length).toBeGreaterThan(20);
    expect(lines.length).toBeLessThan(run?.lines.length ?? 0);
    for (const line of lines) expect(line.at_ms).toBeLessThanOrEqual(at_ms);
    const kinds = new Set(run?.lines.map((line) => line.kind));
    for (const kind of kinds) expect(kind).toMatch(/^(person|site|bench|plant|watering|round)\./);
  });

  test("dates lie from the moment to the horizon, and are the moment itself only when already past", () => {
    for (const { cases } of runs.flatMap((run) => run.pots)) {
      for (const one of cases) {
        expect(one.lead_d).toBeGreaterThanOrEqual(0);
        expect(one.lead_d).toBeLessThanOrEqual(HORIZON_d);
        expect(one.already).toBe(one.lead_d === 0);
      }
    }
  });

  test("intervals and slopes for the baselines can be had from the book alone", () => {
    const run = runs[0];
    const pot = run?.pots[0];
    const times = (kind: string) =>
      run?.lines
        .filter((line) => line.kind === kind && line.on[0] === pot?.plant)
        .map((line) => line.at_ms) ?? [];
    expect(times("watering.watered").length).toBeGreaterThan(3);
    expect(times("watering.weighed").length).toBeGreaterThan(2);
  });
});

test("the dates are those of a run in which people really stop watering", () => {
  const run = skillRuns({ seed: ask.seed, pots: 6, days: 40 })[0];
  let compared = 0;
  for (const stop_d of [22.5, 23.5, 26.5, 27.5, 30.5, 31.5]) {
    const drawn = drawRun(0, 6, 40, HORIZON_d, chanceOf(`skill ${ask.seed}`).under(0));
    const stop_ms = drawn.from_ms + stop_d * DAY_ms;
    const tended = drawn.tended.map((each) => ({
      ...each,
      until_ms: Number.POSITIVE_INFINITY,
      pot: {
        ...each.pot,
        happenings: each.pot.happenings.filter(({ what, at_ms }) => what !== "sip" || at_ms < stop_ms),
      },
    }));
    const hours = Array.from({ length: 24 * 35 }, (_, h) => stop_ms + h * HOUR_ms);
    const probes = tended.flatMap(({ key }) => hours.map((at_ms) => ({ key, at_ms })));
    const visits = drawn.visits.filter((visit) => visit.at_ms < stop_ms);
    const { snapshots } = runNursery(drawn.benches, tended, visits, probes, drawn.chance.under("people"));
    for (const [key, pot] of (run?.pots ?? []).entries()) {
      const one = pot.cases.find(({ at_ms }) => at_ms === stop_ms);
      if (!one || one.already) continue;
      const first = snapshots.find(
        (snapshot) =>
          snapshot.key === key && potDepletion_g(snapshot.pot) >= 0.55 * potAvailable_g(snapshot.pot),
      );
      // Probes come once an hour, the date is set between hours.
      expect(Math.abs((first?.at_ms ?? 0) - one.truth_ms)).toBeLessThanOrEqual(1.2 * HOUR_ms);
      compared++;
    }
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

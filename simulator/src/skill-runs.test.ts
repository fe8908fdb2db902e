import { describe, expect, test } from "vitest";
import { DAY_ms, HOUR_ms } from "./nursery/calendar.ts";
import { chanceOf } from "./nursery/chance.ts";
import { runNursery } from "./nursery/nursery.ts";
import { copyOf, potAvailable_g, potDepletion_g } from "./nursery/potted-plant.ts";
import { drawRun } from "./skill/draw-run.ts";
import { bookOfRun } from "./skill/run-book.ts";
import { HORIZON_d, linesUntil, SKILL_SEEDS, skillRuns } from "./skill-runs.ts";

const ask = { seed: SKILL_SEEDS.A[0], pots: 24, days: 50 };
const runs = skillRuns(ask);

describe("skill runs", () => {
  test("the same seed gives the same books and dates, another seed others", () => {
    expect(skillRuns(ask)).toEqual(runs);
    expect(skillRuns({ ...ask, seed: SKILL_SEEDS.B[0] })[0]?.lines.length).not.toBe(runs[0]?.lines.length);
    expect(new Set([...SKILL_SEEDS.A, ...SKILL_SEEDS.B, ...SKILL_SEEDS.C]).size).toBe(9);
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
    for (const kind of kinds) expect(kind).toMatch(/^(person|site|bench|plant|watering|round|series)\./);
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

  test("light is told roughly and kept exactly, spot by spot and day by day", () => {
    for (const { light, zone } of runs) {
      expect(light.map(({ bench }) => bench)).toEqual(["sill", "shelf"]);
      for (const { dates, truth, known } of light) {
        expect(dates).toHaveLength(ask.days);
        expect(dates.every((date) => /^\d{4}-\d\d-\d\d$/.test(date))).toBe(true);
        expect(truth).toHaveLength(12);
        for (const { level_mol_m2_d } of truth) {
          expect(level_mol_m2_d).toHaveLength(ask.days);
          expect(level_mol_m2_d.every((mol) => mol >= 0 && mol < 60)).toBe(true);
        }
        expect(known.window !== undefined || known.lamp !== undefined).toBe(true);
        expect(zone).toBe("America/Los_Angeles");
      }
    }
  });

  test("series that entries name are there, and nothing else is", () => {
    const named = (lines: readonly { readonly files?: readonly string[] }[]) =>
      new Set(lines.flatMap(({ files }) => files ?? []));
    const many = skillRuns({ ...ask, pots: 80, days: 30 });
    for (const run of many) expect(named(run.lines)).toEqual(new Set(run.files.keys()));
    expect(many.some((run) => run.files.size > 0)).toBe(true);
    expect(many.some((run) => run.files.size === 0)).toBe(true);
  });

  test("cases say who keeps the pot, how often it was weighed, and whether the book could tell of moves and cuts", () => {
    const cases = skillRuns({ ...ask, pots: 120, days: 40 }).flatMap((run) =>
      run.pots.flatMap((pot) => pot.cases),
    );
    expect(new Set(cases.map(({ keeper }) => keeper)).size).toBe(3);
    for (const written of [true, false]) {
      expect(cases.some((one) => one.moveWritten === written)).toBe(true);
      expect(cases.some((one) => one.trimWritten === written)).toBe(true);
    }
    for (const one of cases) {
      expect(one.moveWritten === undefined).toBe(one.sinceMove_d === undefined);
      expect(one.inCycle_n).toBeGreaterThanOrEqual(0);
    }
    expect(Math.max(...cases.map(({ inCycle_n }) => inCycle_n))).toBeGreaterThan(1);
  });

  test("what was done on a lost day is not in the book, and who writes late writes after doing", () => {
    const drawn = drawRun(1, 6, 40, HORIZON_d, chanceOf("forgets"));
    const started = drawn.tended.map(({ pot }) => copyOf(pot));
    const { notes } = runNursery(drawn.benches, drawn.tended, drawn.visits, [], drawn.chance.under("people"));
    const dates = drawn.days.map(({ date }) => date);
    const waterings = (lost: readonly string[], writesLate: boolean) => {
      const keepers = drawn.crew.keepers.map((keeper) => ({
        ...keeper,
        lostDays: new Set(lost),
        writesLate,
      }));
      const { lines } = bookOfRun({ ...drawn, crew: { ...drawn.crew, keepers } }, started, notes);
      return lines.filter(({ kind }) => kind === "watering.watered");
    };
    const all = waterings([], false);
    expect(all.length).toBeGreaterThan(10);
    expect(waterings(dates, false)).toHaveLength(0);
    const half = waterings(dates.slice(0, 20), false).length;
    expect(half).toBeGreaterThan(0);
    expect(half).toBeLessThan(all.length);
    const late = waterings([], true);
    expect(late).toHaveLength(all.length);
    for (const { at_ms, atFrom, clock } of late) {
      expect(atFrom).toBe("typed");
      expect(at_ms % 900_000).toBe(0);
      expect(Date.parse(clock.slice(0, 24))).toBeGreaterThan(at_ms);
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

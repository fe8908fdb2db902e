import { describe, expect, it } from "vitest";
import { chainHour, chainThroughHour, inStage_n } from "./chain.ts";
import {
  bestLook,
  breakEvenKill_frac,
  causeKeys,
  causePriors_frac,
  clearancePath,
  courseCleared,
  hiddenFloor_d,
  type PestWatch,
  pestClocks,
  pestNames,
  pestPace,
  pestResponse,
  rankCauses,
  signKeys,
  signShare_frac,
  treatmentsNeeded_n,
  type WatchAct,
} from "./index.ts";

const steady = (air_C: number, days_n: number) =>
  Array.from({ length: days_n }, () => new Float64Array(24).fill(air_C));
const weekly = (sight_frac: number, until: number, leaves_n?: number): WatchAct[] =>
  Array.from({ length: Math.floor(until / 7) }, (_, i) => ({
    act: "look",
    day_d: 7 * (i + 1),
    sight_frac,
    ...(leaves_n ? { leaves_n } : {}),
  }));
const free = (watch: PestWatch, day_d: number) => clearancePath(watch, [day_d])[0]?.free_frac as number;

describe("clocks", () => {
  it("grow with warmth from their threshold to 20 °C, all of them", () => {
    for (const pest of pestNames) {
      expect(pestPace({ pest, air_C: 20 }).rate_per_d, pest).toBeGreaterThan(
        pestPace({ pest, air_C: 15 }).rate_per_d,
      );
      expect(pestPace({ pest, air_C: 20 }).firstBirth_d).toBeLessThan(
        pestPace({ pest, air_C: 15 }).firstBirth_d,
      );
    }
  });
  it("a night setback counts hour by hour, not as a mean", () => {
    const swing = [Float64Array.from({ length: 24 }, (_, hour) => (hour < 12 ? 2 : 18))];
    const mean = pestResponse("spider mite", steady(10, 1)).growth[1] as number;
    expect(pestResponse("spider mite", swing).growth[1]).toBeGreaterThan(mean + 0.05);
  });
});

describe("the chain of stages", () => {
  it("brings half of a cohort of gnats to wing at the printed time, with the spread of its substages", () => {
    const { stages } = pestClocks["fungus gnat"];
    if (!stages) throw new Error("a gnat has stages");
    const quiet = {
      ...stages,
      eggs: { temperatures_C: [20], values: [0] },
      dying: { temperatures_C: [20], values: [0] },
    };
    const chain = new Float64Array(211);
    chain[0] = 1;
    const hour = chainHour(quiet, 20);
    const out: number[] = [];
    for (let i = 0; i < 40 * 24; i++) {
      chainThroughHour(chain, hour);
      out.push(chain[210] as number);
    }
    const all = 0.82 * 0.77;
    const at = (share: number) => out.findIndex((each) => each >= share * all) / 24;
    expect(at(0.5)).toBeGreaterThan(21.7);
    expect(at(0.5)).toBeLessThan(22.4);
    // One stage spreads by 12 %; three of unlike length by less together.
    expect((at(0.84) - at(0.16)) / 2 / 22.2).toBeCloseTo(0.078, 2);
    expect(inStage_n(chain, 0) + inStage_n(chain, 1) + inStage_n(chain, 2)).toBeLessThan(1e-6);
  });
  it("a cohort leaves a card empty from its first day until about day 19, and only then fills it", () => {
    const run = pestResponse("fungus gnat", steady(20, 40)).hiddenFrom(0, "eggs");
    expect(run.adults_n[14]).toBeLessThan(0.001);
    expect(run.adults_n[24]).toBeGreaterThan(0.2);
  });
});

describe("clearance", () => {
  const response = pestResponse("green peach aphid", steady(20, 80));
  const base: PestWatch = { response, odds: 1, arrival_per_d: 0, acts: weekly(0.3, 42) };
  it("rises with each clean look, faster for better eyes, and never without a look", () => {
    const path = clearancePath(base, [0, 7, 14, 21, 28]).map((point) => point.free_frac);
    expect(path).toEqual([...path].sort((a, b) => a - b));
    expect(path[0]).toBeCloseTo(0.5, 9);
    expect(path[2]).toBeGreaterThan(0.9);
    expect(free({ ...base, acts: weekly(0.05, 42) }, 14)).toBeLessThan(path[2] as number);
    expect(free({ ...base, acts: [] }, 42)).toBeCloseTo(0.5, 9);
  });
  it("a sheet of leaves, on which pests sit together, tells less than eyes that see each alike", () => {
    expect(free({ ...base, acts: weekly(0.3, 14, 6) }, 14)).toBeLessThan(
      free({ ...base, acts: weekly(0.3, 14) }, 14),
    );
  });
  it("cold lets pests hide longer; a card says nothing of gnats for two weeks", () => {
    const cold = pestResponse("green peach aphid", steady(15, 80));
    expect(free({ ...base, response: cold }, 14)).toBeLessThan(free(base, 14));
    const gnat = pestResponse("fungus gnat", steady(18, 80));
    const card = (to: number): WatchAct[] => [{ act: "card", from_d: 0, day_d: to, catch_per_d: 0.2 }];
    expect(hiddenFloor_d(gnat, 0.12)).toBeGreaterThan(30);
    expect(free({ response: gnat, odds: 1, arrival_per_d: 0, acts: card(40) }, 40)).toBeGreaterThan(0.8);
  });
  it("arrivals take from it, and a neighbour's find more than a quiet day", () => {
    const open = free({ ...base, arrival_per_d: 0.01 }, 42);
    expect(open).toBeLessThan(free(base, 42));
    expect(free({ ...base, arrivals: [{ day_d: 40, odds: 0.3 }] }, 42)).toBeLessThan(free(base, 42) - 0.1);
  });
  it("a spray frees only by the chance that nothing survived, and hides what is left", () => {
    const spray: WatchAct = {
      act: "treat",
      day_d: 10,
      egg_frac: 0.8,
      young_frac: 0.8,
      pupa_frac: 0.8,
      adult_frac: 0.8,
    };
    const after = free({ ...base, acts: [spray] }, 10);
    expect(after).toBeGreaterThan(0.5);
    expect(after).toBeLessThan(0.75);
    const same = free({ ...base, acts: [{ ...spray, egg_frac: 0, young_frac: 0 } as WatchAct] }, 10);
    expect(same).toBeLessThan(0.56);
    const late = { ...base, acts: weekly(0.3, 14) };
    expect(free({ ...late, acts: [spray, ...weekly(0.3, 14).slice(1)] }, 14)).toBeLessThan(0.999);
  });
  it("what a course left stands for its founders", () => {
    const { survivors_n, cleared_frac } = courseCleared({
      animals_n: 40,
      kill_frac: 0.8,
      treatments_n: 5,
      interval_d: 4,
      rate_per_d: 0.25,
    });
    const treated = { ...base, odds: (1 - cleared_frac) / cleared_frac, left_n: survivors_n, acts: [] };
    expect(free(treated, 0)).toBeCloseTo(cleared_frac, 6);
  });
  it("refuses what makes no sense by name", () => {
    expect(() => clearancePath({ ...base, odds: 0 }, [1])).toThrow("odds is 0; expected 0.0001 to 10000");
    expect(() => clearancePath(base, [81])).toThrow("day is 81 d; expected 0 to 80 d");
  });
});

describe("treatment", () => {
  it("says never where interval and coverage can't win", () => {
    const course = { animals_n: 40, aim_n: 0.05, kill_frac: 0.8, interval_d: 7, rate_per_d: 0.33 };
    expect(treatmentsNeeded_n(course)).toBeNull();
    expect(treatmentsNeeded_n({ ...course, kill_frac: breakEvenKill_frac(course) + 0.05 })).toBeGreaterThan(
      5,
    );
  });
});

describe("causes", () => {
  it("every row of likelihoods has a level for every sign, and the priors are shares of one", () => {
    for (const cause of causeKeys)
      for (const sign of signKeys) expect(signShare_frac(cause, sign)).toBeGreaterThan(0.01);
    expect(Object.values(causePriors_frac).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 1);
  });
  it("a heavy pot settles a wilt before any root is pulled", () => {
    const ranked = rankCauses({ seen: ["droops", "heavy pot"], absent: [] });
    const of = (cause: string) => ranked.find((each) => each.cause === cause)?.weight_frac as number;
    expect(of("overwater") / of("drought")).toBeCloseTo(45, 0);
  });
  it("asks what would part the first two, and nothing twice", () => {
    expect(["heavy pot", "light pot"]).toContain(bestLook({ seen: ["droops"], absent: [] }));
    expect(bestLook({ seen: ["droops"], absent: ["heavy pot"] })).not.toBe("light pot");
  });
  it("confirmed cases move a share, ten of them as much as the table", () => {
    const learned = { drought: { "yellow old leaves": { seen_n: 10, looked_n: 10 } } } as const;
    expect(signShare_frac("drought", "yellow old leaves", learned)).toBeCloseTo(0.65, 9);
    expect(() => signShare_frac("witchcraft", "droops")).toThrow("witchcraft is not on the list of causes");
  });
});

import type { Working, WorkingInput } from "../../working/working.ts";
import { weakest } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { Coming } from "./ahead.ts";
import { growthAssumption } from "./assumptions.ts";
import { leafAreaSd_ln } from "./leaves.ts";
import type { Pace } from "./pace.ts";
import { isSpeciesWritten } from "./pepper.ts";
import { growthSettings } from "./settings.ts";
import type { Growing } from "./slice.ts";
import { clockworkOf, type StageNow } from "./stage-now.ts";
import { growthWords } from "./words.ts";
import type { GrowthWords } from "./words-shape.ts";

const Z80 = 1.2816;

interface Asked {
  readonly growing: Growing;
  readonly sight: Outward;
  readonly words: GrowthWords;
}
export const asked = (growing: Growing, sight: Outward): Asked => ({
  growing,
  sight,
  words: growthWords(sight.say),
});

/** A value that is ours, as an input that may be replaced where it is shown. */
function assumedInput(key: string, { sight }: Asked, name: string, said: string, why?: string): WorkingInput {
  const { unit, source } = growthAssumption(key);
  const from = why === undefined ? source : `${source}; ${why}`;
  return { name, said, value: sight.assumed(key), unit, origin: "assumed", from, assumption: key };
}

/** Base and optimum of the clock, by the species group that they belong to. */
function clockInputs(at: Asked): readonly WorkingInput[] {
  const { growing, sight, words } = at;
  const { species } = clockworkOf(growing, sight).plant;
  const group = species.charAt(0).toUpperCase() + species.slice(1);
  const why = isSpeciesWritten(sight) ? words.working.byCultivar : words.working.byHabit;
  const input = (key: string, name: string) =>
    assumedInput(key, at, name, sight.say.temperature(sight.assumed(key)), `${species}, ${why}`);
  return [input(`base${group}_C`, words.working.base), input(`optimum${group}_C`, words.working.optimum)];
}

/** Where the clock starts, and what has passed on it. */
function startInputs({ growing, sight, words }: Asked): readonly WorkingInput[] {
  const { clock } = growing;
  const { say } = sight;
  const at = say.day(clock.at_ms, sight.now_ms);
  const from = {
    guess: words.working.guessed,
    sown: clock.sownOn === undefined ? "" : words.working.sown(say.date(clock.sownOn)),
    seen: words.working.seen(at),
    cut: words.working.cut(at),
  }[clock.how];
  return [
    {
      name: words.working.start,
      said: `BBCH ${clock.bbch}`,
      value: clock.bbch,
      unit: "",
      origin: clock.how === "guess" || clock.how === "cut" ? "assumed" : "measured",
      from,
      at_ms: clock.at_ms,
    },
    {
      name: words.working.sum,
      said: words.warmth(growing.sum_Cd),
      value: growing.sum_Cd,
      unit: "°C d",
      origin: clock.how === "sown" && clock.sd_Cd > 0 ? "assumed" : "learned",
      from: clock.how === "sown" && clock.sd_Cd > 0 ? words.working.nursery : words.working.sinceStart,
    },
  ];
}

export function stageWorking(at: Asked, now: StageNow, said: string): Working {
  const { growing, words } = at;
  const inputs = [...startInputs(at), ...clockInputs(at)];
  return {
    title: words.working.stage,
    result: said,
    value: now.bbch,
    unit: "",
    low: now.bbchLow,
    high: now.bbchHigh,
    origin:
      now.state === "guess" || now.state === "run out" || growing.clock.how !== "seen"
        ? "assumed"
        : growing.sum_Cd === 0
          ? "measured"
          : "learned",
    formula: "S = Σ (min(T, To) − Tb) Δt",
    sum: `BBCH ${growing.clock.bbch}, + ${words.warmth(growing.sum_Cd)} → BBCH ${now.bbch}`,
    inputs,
    source: words.working.source.stage,
    movesMost: words.working.moves.stage,
    notes: now.state === "run out" ? [words.working.runOut] : [],
  };
}

/** Assumption that holds most of the wait for a stage. */
const WAIT_KEY = {
  9: "emergence_Cd",
  61: "flower_Cd",
  81: "ripeLong_Cd",
  "new leaves": "budbreak_Cd",
} as const;
const RIPE_KEY = {
  small: "ripeSmall_Cd",
  long: "ripeLong_Cd",
  bell: "ripeBell_Cd",
} as const;

function waitKey(coming: Coming, at: Asked): string {
  const { species, fruit } = clockworkOf(at.growing, at.sight).plant;
  const slow = species === "chinense" || species === "pubescens";
  if (coming.milestone === 9 && slow) return "emergenceSlow_Cd";
  if (coming.milestone !== 81) return WAIT_KEY[coming.milestone];
  if (species === "chinense") return "ripeChinense_Cd";
  if (species === "pubescens") return "ripePubescens_Cd";
  return RIPE_KEY[fruit];
}

export function comingWorking(at: Asked, coming: Coming, said: string, pace: Pace): Working {
  const { sight, words } = at;
  const { dates_ms, wait_Cd, passed_Cd } = coming;
  const key = waitKey(coming, at);
  const left_Cd = Math.max(0, wait_Cd - passed_Cd);
  const days =
    pace.warmth_Cd > 0
      ? ` ÷ ${words.warmth(pace.warmth_Cd)} ≈ ${sight.say.number(left_Cd / pace.warmth_Cd, 0)} ${words.working.days}`
      : "";
  return {
    title: words.working.when(coming.milestone),
    result: said,
    value: dates_ms[10] as number,
    unit: "ms",
    low: dates_ms[2] as number,
    high: dates_ms[17] as number,
    origin: "assumed",
    formula: "Σ (min(T, To) − Tb) Δt = θ − S",
    sum: `${words.warmth(wait_Cd)} − ${words.warmth(passed_Cd)} = ${words.warmth(left_Cd)}${days}`,
    inputs: [
      {
        name: words.working.wait,
        said: words.warmth(wait_Cd),
        value: wait_Cd,
        unit: "°C d",
        origin: "assumed",
        from: growthAssumption(key).source,
        assumption: key,
      },
      ...startInputs(at),
      ...clockInputs(at),
      airInput(at, pace),
    ],
    source: words.working.source.stage,
    movesMost: words.working.moves.stage,
    notes: [words.working.drawn],
  };
}

function airInput({ sight, words }: Asked, pace: Pace): WorkingInput {
  const { air } = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  return {
    name: words.working.air,
    said: sight.say.temperature(pace.air_C),
    value: pace.air_C,
    unit: "°C",
    origin: air.origin,
    from: air.from(sight.say),
  };
}

export function paceWorking(at: Asked, pace: Pace): Working {
  const { growing, sight, words } = at;
  const { say } = sight;
  const { plastochron_Cd, base_C } = clockworkOf(growing, sight).nodes;
  const air = airInput(at, pace);
  return {
    title: words.working.pace,
    result: `${words.warmth(pace.warmth_Cd)} ${words.working.perDay}`,
    value: pace.warmth_Cd,
    unit: "°C d/d",
    origin: weakest([air.origin, "assumed"]),
    formula: "dS/dt = min(T, To) − Tb; dn/dt = (min(T, To) − Tbₙ) / P",
    sum: `${words.warmth(pace.nodeWarmth_Cd)} (> ${say.temperature(base_C)}) ÷ ${words.warmth(plastochron_Cd)} = ${say.number(pace.nodes_per_d, 2)}`,
    inputs: [
      air,
      ...clockInputs(at),
      {
        name: words.working.newNode,
        said: `${words.warmth(plastochron_Cd)} (> ${say.temperature(base_C)})`,
        value: plastochron_Cd,
        unit: "°C d",
        origin: "assumed",
        from: words.working.source.nodes,
      },
    ],
    source: words.working.source.pace,
    notes: pace.slow === "no" ? [] : [words.slow(pace)],
  };
}

export function areaWorking(at: Asked): Working {
  const { growing, sight, words } = at;
  const { leaves, leafArea_m2, grown_ln } = growing;
  const sd_ln = leafAreaSd_ln(leaves, grown_ln, growing.at_ms, growthSettings(sight));
  const known = leaves.from === "counted";
  const then_m2 = leafArea_m2 / Math.exp(grown_ln);
  const day = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms));
  return {
    title: words.working.leafArea,
    result: words.area(leafArea_m2),
    value: leafArea_m2,
    unit: "m²",
    low: leafArea_m2 * Math.exp(-Z80 * sd_ln),
    high: leafArea_m2 * Math.exp(Z80 * sd_ln),
    origin: known ? (grown_ln === 0 ? "measured" : "learned") : "assumed",
    formula: "A = A₀ exp(∫ r (1 − A / Am) dt)",
    sum: `${words.area(then_m2)} × ${sight.say.number(Math.exp(grown_ln), 2)} = ${words.area(leafArea_m2)}`,
    inputs: [
      {
        name: words.working.areaThen,
        said: words.area(then_m2),
        value: then_m2,
        unit: "m²",
        origin: known ? "measured" : "assumed",
        from: words.working.areaFrom(leaves.from, sight.say.day(leaves.at_ms, sight.now_ms)),
        at_ms: leaves.at_ms,
      },
      assumedInput(
        "leafAreaMost_frac",
        at,
        words.working.areaMost,
        words.area(leaves.most_m2),
        words.working.byPot,
      ),
      assumedInput(
        "growthMax_per_d",
        at,
        growthAssumption("growthMax_per_d").what,
        `${sight.say.number(sight.assumed("growthMax_per_d"), 2)} ${words.working.perDay}`,
      ),
      {
        name: words.working.light,
        said: `${sight.say.number(day.dli_mol_m2_d, 1)} mol/m²`,
        value: day.dli_mol_m2_d,
        unit: "mol/m²/d",
        origin: day.light.origin,
        from: day.light.from(sight.say),
      },
    ],
    source: words.working.source.area,
    movesMost: words.working.moves.area,
    notes: [],
  };
}

export function nodesWorking(at: Asked): Working {
  const { growing, sight, words } = at;
  const { nodes, made_n } = growing;
  const { nodes: clock } = clockworkOf(growing, sight);
  const value = nodes.nodes_n + made_n;
  const n = (count: number) => sight.say.number(count, 0);
  const sd = Math.hypot(nodes.sd_n, sight.assumed("nodeSpread_frac") * made_n);
  return {
    title: words.working.nodes,
    result: n(value),
    value,
    unit: "",
    low: Math.max(0, value - Z80 * sd),
    high: value + Z80 * sd,
    origin: nodes.from === "counted" ? (made_n < 0.5 ? "measured" : "learned") : "assumed",
    formula: "n = n₀ + Σ (min(T, To) − Tbₙ) Δt / P",
    sum: `${n(nodes.nodes_n)} + ${n(made_n)} = ${n(value)}`,
    inputs: [
      {
        name: words.working.nodesThen,
        said: n(nodes.nodes_n),
        value: nodes.nodes_n,
        unit: "",
        origin: nodes.from === "counted" ? "measured" : "assumed",
        from: words.working.nodesFrom(nodes.from, sight.say.day(nodes.at_ms, sight.now_ms)),
        at_ms: nodes.at_ms,
      },
      {
        name: words.working.madeSince,
        said: n(made_n),
        value: made_n,
        unit: "",
        origin: "learned",
        from: words.working.sinceStart,
      },
      {
        name: words.working.newNode,
        said: words.warmth(clock.plastochron_Cd),
        value: clock.plastochron_Cd,
        unit: "°C d",
        origin: "assumed",
        from: words.working.source.nodes,
      },
    ],
    source: words.working.source.nodes,
    notes: [],
  };
}

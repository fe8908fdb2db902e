import type { AirDay } from "../../places/ahead.ts";
import type { Clockwork } from "./settings.ts";

const DAY_ms = 86_400_000;

/** What one day at one place does to plants on one clock: sums from its start to the end of each spell. */
export interface DayGrowth {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly ends_ms: readonly number[];
  readonly development: DaySum;
  readonly nodes: DaySum;
  readonly nodesFruiting: DaySum;
  /** Of leaf area, where nothing but light and warmth is short. */
  readonly growth_per_d: number;
  readonly air_C: number;
}

/** A sum over the day, and up to the end of each spell. */
export interface DaySum {
  readonly day: number;
  readonly upTo: readonly number[];
}

/** The last question: an entry cuts a day, and both parts of it ask. */
let lastDay: AirDay | undefined;
let lastClockwork: Clockwork | undefined;
let last: DayGrowth | undefined;

/** The house hands out the same day for the same place and date, so plants of one clock share what it does to them. */
export function dayGrowth(day: AirDay, clockwork: Clockwork): DayGrowth {
  if (day === lastDay && clockwork === lastClockwork) return last as DayGrowth;
  let known = clockwork.days.get(day);
  if (!known) {
    known = growthOf(day, clockwork);
    clockwork.days.set(day, known);
  }
  lastDay = day;
  lastClockwork = clockwork;
  last = known;
  return known;
}

function growthOf(day: AirDay, { pace, nodePace, nodePaceFruiting, relativeGrowth }: Clockwork): DayGrowth {
  const { spells, from_ms, to_ms } = day;
  const development: number[] = [];
  const nodes: number[] = [];
  const nodesFruiting: number[] = [];
  const ends_ms: number[] = [];
  let developed_Cd = 0;
  let made_n = 0;
  let madeFruiting_n = 0;
  let warmth = 0;
  for (const spell of spells) {
    const air_C = held(spell.air_C);
    const days = (spell.to_ms - spell.from_ms) / DAY_ms;
    warmth += air_C * (spell.to_ms - spell.from_ms);
    developed_Cd += pace(air_C) * days;
    made_n += nodePace(air_C) * days;
    madeFruiting_n += nodePaceFruiting(air_C) * days;
    development.push(developed_Cd);
    nodes.push(made_n);
    nodesFruiting.push(madeFruiting_n);
    ends_ms.push(spell.to_ms);
  }
  const air_C = held(warmth / (to_ms - from_ms));
  return {
    from_ms,
    to_ms,
    ends_ms,
    development: { day: developed_Cd, upTo: development },
    nodes: { day: made_n, upTo: nodes },
    nodesFruiting: { day: madeFruiting_n, upTo: nodesFruiting },
    growth_per_d: relativeGrowth(Math.min(65, Math.max(0, day.dli_mol_m2_d)), air_C),
    air_C,
  };
}

/** Held within what the clocks take: a stray reading must not stop a fold. */
const held = (air_C: number): number => (air_C >= -40 ? Math.min(60, air_C) : -40);

/** Part of a day's sum that falls between two instants. */
export function between(sum: DaySum, of: DayGrowth, from_ms: number, to_ms: number): number {
  if (from_ms <= of.from_ms && to_ms >= of.to_ms) return sum.day;
  return upTo(sum, of, to_ms) - upTo(sum, of, from_ms);
}

function upTo(sum: DaySum, { from_ms, ends_ms }: DayGrowth, at_ms: number): number {
  if (at_ms <= from_ms) return 0;
  let spell = 0;
  while (spell < ends_ms.length && at_ms >= (ends_ms[spell] as number)) spell++;
  const before = spell === 0 ? 0 : (sum.upTo[spell - 1] as number);
  if (spell === ends_ms.length) return before;
  const start_ms = spell === 0 ? from_ms : (ends_ms[spell - 1] as number);
  const end_ms = ends_ms[spell] as number;
  return before + (((sum.upTo[spell] as number) - before) * (at_ms - start_ms)) / (end_ms - start_ms);
}

import type { AirDay } from "../../places/ahead.ts";
import { addDays } from "../../places/time.ts";
import type { Sight } from "../craft.ts";
import type { Pepper } from "./pepper.ts";

const DAY_ms = 86_400_000;
/** No fruit is followed for longer. */
const LONGEST_d = 400;

const held = (air_C: number): number => Math.min(60, Math.max(-40, air_C));
const whole = new WeakMap<Pepper, WeakMap<AirDay, number>>();

function partOf_Cd(day: AirDay, pepper: Pepper, from_ms: number, to_ms: number): number {
  let sum_Cd = 0;
  for (const spell of day.spells) {
    const length_ms = Math.min(to_ms, spell.to_ms) - Math.max(from_ms, spell.from_ms);
    if (length_ms > 0) sum_Cd += (pepper.pace(held(spell.air_C)) * length_ms) / DAY_ms;
  }
  return sum_Cd;
}

/** Warmth of a whole day for such a pepper; plants of one place and kind share it. */
function warmthOfDay_Cd(day: AirDay, pepper: Pepper): number {
  let days = whole.get(pepper);
  if (!days) {
    days = new WeakMap();
    whole.set(pepper, days);
  }
  let warmth_Cd = days.get(day);
  if (warmth_Cd === undefined) {
    warmth_Cd = partOf_Cd(day, pepper, day.from_ms, day.to_ms);
    days.set(day, warmth_Cd);
  }
  return warmth_Cd;
}

type Air = Pick<Sight, "airAt" | "dateOf">;

/** Warmth from one instant to another at one spot. */
export function warmthBetween_Cd(
  pepper: Pepper,
  air: Air,
  spot: string | undefined,
  from_ms: number,
  to_ms: number,
): number {
  let sum_Cd = 0;
  let date = air.dateOf(from_ms);
  for (let day_n = 0; day_n < LONGEST_d; day_n += 1) {
    const day = air.airAt(spot, date);
    if (day.from_ms >= to_ms) break;
    sum_Cd +=
      from_ms <= day.from_ms && to_ms >= day.to_ms
        ? warmthOfDay_Cd(day, pepper)
        : partOf_Cd(day, pepper, from_ms, to_ms);
    if (day.to_ms >= to_ms) break;
    date = addDays(date, 1);
  }
  return sum_Cd;
}

/** Days ahead that are looked through one by one; beyond, the last of them go on. */
const AHEAD_d = 120;
const LAST_d = 14;

export interface Course {
  /** Warmth of a mean day of the coming month. */
  readonly month_Cd_d: number;
  /** Mean air of that month. */
  readonly month_C: number;
  /** When so much warmth will have come from now; undefined where it never does. */
  reaches_ms(warmth_Cd: number): number | undefined;
}

/** The warmth ahead of a plant where it stands. */
export function courseAhead(pepper: Pepper, air: Air, spot: string | undefined, now_ms: number): Course {
  const ends_ms: number[] = [];
  const sums_Cd: number[] = [];
  let sum_Cd = 0;
  let airMonth = 0;
  let date = air.dateOf(now_ms);
  for (let day_n = 0; day_n < AHEAD_d; day_n += 1) {
    const day = air.airAt(spot, date);
    sum_Cd += day_n === 0 ? partOf_Cd(day, pepper, now_ms, day.to_ms) : warmthOfDay_Cd(day, pepper);
    ends_ms.push(day.to_ms);
    sums_Cd.push(sum_Cd);
    if (day_n < 30) airMonth += meanAir_C(day);
    date = addDays(date, 1);
  }
  const last_Cd_d = (sum_Cd - (sums_Cd[AHEAD_d - 1 - LAST_d] as number)) / LAST_d;
  const end_ms = ends_ms[AHEAD_d - 1] as number;
  return {
    month_Cd_d: (sums_Cd[30] as number) / 30.5,
    month_C: airMonth / 30,
    reaches_ms(warmth_Cd) {
      if (warmth_Cd <= 0) return now_ms;
      const at = sums_Cd.findIndex((each) => each >= warmth_Cd);
      if (at < 0)
        return last_Cd_d > 0.2
          ? Math.round(end_ms + Math.min(400, (warmth_Cd - sum_Cd) / last_Cd_d) * DAY_ms)
          : undefined;
      const from_ms = at === 0 ? now_ms : (ends_ms[at - 1] as number);
      const before_Cd = at === 0 ? 0 : (sums_Cd[at - 1] as number);
      const day_Cd = (sums_Cd[at] as number) - before_Cd;
      return Math.round(from_ms + ((warmth_Cd - before_Cd) / day_Cd) * ((ends_ms[at] as number) - from_ms));
    },
  };
}

/** Mean air of a day; of its lit hours, and its coldest. */
function meanAir_C({ spells, from_ms, to_ms }: AirDay): number {
  let sum = 0;
  for (const spell of spells) sum += spell.air_C * (spell.to_ms - spell.from_ms);
  return held(sum / (to_ms - from_ms));
}

export interface FlowerAir {
  /** From nine in the morning to five. */
  readonly day_C: number;
  readonly max_C: number;
  readonly night_C: number;
}

const NINE_ms = 9 * 3_600_000;
const FIVE_ms = 17 * 3_600_000;

export function flowerAir(day: AirDay): FlowerAir {
  const from_ms = day.from_ms + NINE_ms;
  const to_ms = day.from_ms + FIVE_ms;
  let sum = 0;
  let length = 0;
  let max_C = -Infinity;
  let night_C = Infinity;
  for (const spell of day.spells) {
    max_C = Math.max(max_C, spell.air_C);
    night_C = Math.min(night_C, spell.air_C);
    const inside_ms = Math.min(to_ms, spell.to_ms) - Math.max(from_ms, spell.from_ms);
    if (inside_ms <= 0) continue;
    sum += spell.air_C * inside_ms;
    length += inside_ms;
  }
  return { day_C: held(length > 0 ? sum / length : max_C), max_C: held(max_C), night_C: held(night_C) };
}

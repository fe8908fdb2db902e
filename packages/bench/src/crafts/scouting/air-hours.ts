import { type PestName, type PestResponse, pestResponse } from "@sillwood/science/pests";
import type { AirDay } from "../../places/ahead.ts";
import { addDays } from "../../places/time.ts";
import type { Outward } from "../craft.ts";
import type { ScoutSlice } from "./slice.ts";

/** A watch looks back so far: older looks tell little of what is here now. @source our assumption */
const BACK_d = 112;
/** Looks are planned so far ahead. */
export const AHEAD_d = 70;
/** Watches begin on a common grid, so that plants in one air share what grows there. */
const GRID_d = 28;
const DAY_ms = 86_400_000;

const dayNumber = (date: string): number => Math.floor(Date.parse(`${date}T00:00:00Z`) / DAY_ms);

/** The air in which a plant's pests live, from the grid day before its watch to the end of the plan. */
export interface Air {
  readonly firstDate: string;
  readonly today_d: number;
  readonly hours_C: readonly Float64Array[];
  readonly key: string;
  dayOf(at_ms: number): number;
  dateOn(day: number): string;
}

const known = new WeakMap<AirDay, Float64Array>();
/** Temperatures of a day's 24 parts; days of 23 and 25 hours have parts as much longer or shorter. */
function hoursOf(day: AirDay): Float64Array {
  let hours = known.get(day);
  if (!hours) {
    hours = new Float64Array(24);
    const part = (day.to_ms - day.from_ms) / 24;
    let spell = 0;
    for (let hour = 0; hour < 24; hour++) {
      const at_ms = day.from_ms + (hour + 0.5) * part;
      while (spell < day.spells.length - 1 && (day.spells[spell]?.to_ms ?? 0) <= at_ms) spell++;
      hours[hour] = Math.round((day.spells[spell]?.air_C ?? 18) * 5) / 5;
    }
    known.set(day, hours);
  }
  return hours;
}

export function airOf(slice: ScoutSlice, sight: Outward, start_ms: number): Air {
  const today = dayNumber(sight.dateOf(sight.now_ms));
  const start = Math.max(today - BACK_d, dayNumber(sight.dateOf(start_ms)));
  const first = Math.floor(start / GRID_d) * GRID_d;
  const firstDate = new Date(first * DAY_ms).toISOString().slice(0, 10);
  const days = today - first + AHEAD_d;
  const hours_C: Float64Array[] = [];
  let hash = 2166136261;
  for (let i = 0; i < days; i++) {
    const date = addDays(firstDate, i);
    const hours = hoursOf(sight.airAt(spotOn(slice, sight, date), date));
    hours_C.push(hours);
    for (let hour = 0; hour < 24; hour += 3)
      hash = Math.imul(hash ^ Math.round((hours[hour] as number) * 5), 16777619);
  }
  return {
    firstDate,
    today_d: today - first,
    hours_C,
    key: `${first}/${days}/${hash}`,
    dayOf: (at_ms) => Math.max(0, dayNumber(sight.dateOf(at_ms)) - first),
    dateOn: (day) => addDays(firstDate, day),
  };
}

/** Where it stood on a date; before anything is known of it, where it stood first. */
function spotOn(slice: ScoutSlice, sight: Outward, date: string): string | undefined {
  const stood = slice.stood;
  if (date >= sight.dateOf(sight.now_ms)) return sight.plant.spot;
  for (let i = stood.length - 1; i >= 0; i--)
    if (sight.dateOf((stood[i] as (typeof stood)[number]).at_ms) <= date) return stood[i]?.spot;
  return stood[0]?.spot ?? sight.plant.spot;
}

const KEPT_n = 48;
const responses = new Map<string, PestResponse>();

/** What grows in an air, worked out once for all plants in it. */
export function responseIn(air: Pick<Air, "key" | "hours_C">, pest: PestName): PestResponse {
  const key = `${pest} ${air.key}`;
  let response = responses.get(key);
  if (!response) {
    response = pestResponse(pest, air.hours_C);
    responses.set(key, response);
    if (responses.size > KEPT_n) responses.delete(responses.keys().next().value as string);
  }
  return response;
}

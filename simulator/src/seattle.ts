import { dayAfter } from "./nursery/calendar.ts";
import type { WeatherDay } from "./nursery/outdoor-air.ts";
import { DAYS_TENTHS, FIRST_DATE } from "./seattle.generated.ts";

let read: ReadonlyMap<string, WeatherDay> | undefined;

/** The Seattle record by date: rain, extremes and wind of each day from 2012 to 2015; no radiation, no humidity. */
export function seattleRecord(): ReadonlyMap<string, WeatherDay> {
  read ??= new Map(
    DAYS_TENTHS.split(",").map((day, i) => {
      const [rain = 0, high = 0, low = 0, wind = 0] = day.split(" ").map((tenths) => Number(tenths) / 10);
      const date = dayAfter(FIRST_DATE, i);
      return [date, { date, rain_mm: rain, tMax_C: high, tMin_C: low, wind_m_s: wind }];
    }),
  );
  return read;
}

/** The only 29 February of the record. */
const LEAP_DAY = "2012-02-29";

/**
 * The record as if it had been kept in another year: day and month stay, the year is shifted by a whole number.
 * A 29 February in a year whose counterpart has none takes the record's only one; a 29 February of the record
 * that the asked year does not have is left out, since no such date is asked for.
 *
 * @param from first date wanted, YYYY-MM-DD
 * @param days_n how many
 * @param shift_years years added to the record
 * @throws RangeError when the shifted record does not reach
 */
export function shiftedSeattle(from: string, days_n: number, shift_years: number): WeatherDay[] {
  const record = seattleRecord();
  return Array.from({ length: days_n }, (_, i) => {
    const date = dayAfter(from, i);
    const source = `${Number(date.slice(0, 4)) - shift_years}${date.slice(4)}`;
    const day = record.get(source) ?? (date.endsWith("-02-29") ? record.get(LEAP_DAY) : undefined);
    if (!day) throw new RangeError(`the record, shifted by ${shift_years} years, has no ${date}`);
    return { ...day, date };
  });
}

/** Years by which the record must be shifted so that its last year is the year of a date. */
export const shiftTo = (date: string): number => Number(date.slice(0, 4)) - 2015;

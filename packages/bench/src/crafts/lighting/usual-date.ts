import { addDays } from "../../places/time.ts";

const YEAR_d = 365;
/** Nearer days may stand in a forecast: they are what one day brings, not the season. */
const FORECAST_d = 17;

/** A date of the same season of which no weather is known: far enough ahead. */
export function usualDate(today: string, date: string): string {
  let usual = date;
  while (usual <= addDays(today, FORECAST_d)) usual = addDays(usual, YEAR_d);
  return usual;
}

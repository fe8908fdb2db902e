export type { AirAt, AirDay, AirSource, Spell, WeatherDay } from "./ahead.ts";
export { placeKinds } from "./kinds.ts";
export { lightKinds } from "./light/kinds.ts";
export { type Bench, benchesInOrder, type Places } from "./places.ts";
export type { SeriesRow } from "./records.ts";
export type { Site } from "./site.ts";
export { addDays, type Calendar, calendarOf, dayNumber, dayOfYear_d, weekdayOf } from "./time.ts";

import { own } from "./own.ts";

const POINTS = [
  "N",
  "NNE",
  "NE",
  "ENE",
  "E",
  "ESE",
  "SE",
  "SSE",
  "S",
  "SSW",
  "SW",
  "WSW",
  "W",
  "WNW",
  "NW",
  "NNW",
];
const WORDS: Readonly<Record<string, string>> = {
  NORTH: "N",
  EAST: "E",
  SOUTH: "S",
  WEST: "W",
  NORD: "N",
  OST: "E",
  SÜD: "S",
  SUED: "S",
  NO: "NE",
  SO: "SE",
  O: "E",
};
const DEG_PER_POINT = 22.5;

/** Degrees of a compass point, north 0 and east 90; undefined when the text names none. */
export function compass_deg(typed: string): number | undefined {
  const text = typed.trim().toUpperCase().replace(/[- ]/g, "");
  const words = text.replace(/NORTH|EAST|SOUTH|WEST/g, (word) => WORDS[word] as string);
  const point = POINTS.indexOf(own(WORDS, words) ?? words);
  return point < 0 ? undefined : point * DEG_PER_POINT;
}

/** The nearest of eight compass points, as a place is named by it. */
export function pointOf(azimuth_deg: number): string {
  const DEG_PER_EIGHTH = 45;
  return POINTS[(((Math.round(azimuth_deg / DEG_PER_EIGHTH) % 8) + 8) % 8) * 2] as string;
}

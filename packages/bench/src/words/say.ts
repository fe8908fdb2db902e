/**
 * How numbers, dates and names are said to one person: language, unit system and zone are settings of the device,
 * never part of the book. Inside everything is SI; this is the edge.
 */
export type Language = "en" | "de";
export type UnitSystem = "metric" | "us";

export interface Say {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly zone: string;
  /** Volume of liquid, in steps that hands can measure: "180 mL", "6½ fl oz". */
  volume(volume_mL: number): string;
  mass(mass_g: number): string;
  temperature(air_C: number): string;
  length(length_cm: number): string;
  /** Small lengths such as stem caliper. */
  thickness(thickness_mm: number): string;
  /** What a light meter shows: "1,400 lux", "130 fc". */
  illuminance(light_lux: number): string;
  /** Depth of rain or evaporation. */
  depth(depth_mm: number): string;
  number(value: number, digits_n?: number): string;
  percent(share_frac: number): string;
  money(amount_minor: number, currency: string): string;
  /** "Thu 16 Jan", or "this evening", "tomorrow" when within two days of `now_ms`. */
  day(at_ms: number, now_ms?: number): string;
  /** A calendar date with its year, "31 Jan 2028", for what lies far off or long ago. */
  date(date: string): string;
  /** "We to Sa", or one day when both fall on it. */
  days(from_ms: number, to_ms: number): string;
  /** "08:12" or "8:12 am". */
  time(at_ms: number): string;
  minutes(minutes: number): string;
  list(items: readonly string[]): string;
  /** What a person calls the thing with this id: "127", "South sill", "the helper". */
  name(id: string): string;
}

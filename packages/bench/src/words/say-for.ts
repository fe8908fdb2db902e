import { addDays, calendarOf, weekdayOf } from "../places/time.ts";
import type { Language, Say, UnitSystem } from "./say.ts";

export interface SayOptions {
  readonly language: Language;
  readonly units: UnitSystem;
  readonly zone: string;
  /** What a person calls the thing with this id; the id itself when nobody knows it. */
  nameOf(id: string): string;
}

const THIN_SPACE = " ";
const MINUS = "−";
const ML_PER_US_FL_OZ = 29.5735295625;
const G_PER_OZ = 28.349523125;
const CM_PER_INCH = 2.54;
/** A foot-candle is a lumen on a square foot, exactly 0.3048 m squared. */
const LUX_PER_FC = 1 / 0.3048 ** 2;
const FL_OZ_PER_CUP = 8;
const CUPS_PER_GALLON = 16;

const LOCALES = { en: { metric: "en-GB", us: "en-US" }, de: { metric: "de-DE", us: "de-DE" } } as const;
const SHORT_DAYS = {
  en: ["Su", "Mo", "Tu", "We", "Th", "Fr", "Sa"],
  de: ["So", "Mo", "Di", "Mi", "Do", "Fr", "Sa"],
} as const;

const NEAR = {
  en: {
    today: "today",
    evening: "this evening",
    tomorrow: "tomorrow",
    yesterday: "yesterday",
    to: "to",
    about: "about",
    minutes: "min",
    hours: "h",
  },
  de: {
    today: "heute",
    evening: "heute Abend",
    tomorrow: "morgen",
    yesterday: "gestern",
    to: "bis",
    about: "etwa",
    minutes: "min",
    hours: "h",
  },
} as const;

interface Formats {
  readonly timeFormat: Intl.DateTimeFormat;
  readonly longDay: Intl.DateTimeFormat;
  readonly farDay: Intl.DateTimeFormat;
  readonly month: Intl.DateTimeFormat;
  readonly yearDay: Intl.DateTimeFormat;
  readonly lists: Intl.ListFormat;
  /** By digits after the point. */
  readonly numbers: Map<number, Intl.NumberFormat>;
}
const known = new Map<string, Formats>();

/** Made once a locale and zone: the engine takes longer to make them than to draw a page. */
function formatsOf(locale: string, zone: string, units: UnitSystem): Formats {
  const key = `${locale} ${units} ${zone}`;
  let formats = known.get(key);
  if (!formats) {
    formats = makeFormats(locale, zone, units);
    known.set(key, formats);
  }
  return formats;
}

function makeFormats(locale: string, zone: string, units: UnitSystem): Formats {
  const timeFormat = new Intl.DateTimeFormat(locale, {
    timeZone: zone,
    hour: units === "us" ? "numeric" : "2-digit",
    minute: "2-digit",
    hour12: units === "us",
  });
  const longDay = new Intl.DateTimeFormat(locale, {
    timeZone: "UTC",
    weekday: "short",
    day: "numeric",
    month: "short",
  });
  const farDay = new Intl.DateTimeFormat(locale, { timeZone: "UTC", day: "numeric", month: "short" });
  const month = new Intl.DateTimeFormat(locale, { timeZone: "UTC", month: "long" });
  const yearDay = new Intl.DateTimeFormat(locale, {
    timeZone: "UTC",
    day: "numeric",
    month: "short",
    year: "numeric",
  });
  const lists = new Intl.ListFormat(locale, { style: "short", type: "unit" });
  return { timeFormat, longDay, farDay, month, yearDay, lists, numbers: new Map() };
}

/** How numbers, dates and names are said to one person. Rounds as SCREENS 5.7 says; the exact value stands in the working. */
export function sayFor({ language, units, zone, nameOf }: SayOptions): Say {
  const locale = LOCALES[language][units];
  const near = NEAR[language];
  const calendar = calendarOf(zone);
  const { timeFormat, longDay, farDay, month, yearDay, lists, numbers } = formatsOf(locale, zone, units);

  const number = (value: number, digits_n = 0): string => {
    let format = numbers.get(digits_n);
    if (!format) {
      format = new Intl.NumberFormat(locale, { maximumFractionDigits: digits_n });
      numbers.set(digits_n, format);
    }
    return format.format(value === 0 ? 0 : value).replace("-", MINUS);
  };
  const withUnit = (value: string, unit: string) => `${value}${THIN_SPACE}${unit}`;
  /** Date at noon UTC, so that formatting in UTC names the local date. */
  const noon = (date: string) => new Date(`${date}T12:00:00Z`);
  const dateSaid = (date: string) =>
    longDay
      .format(noon(date))
      .replace(",", "")
      .replace(/\.(?=\s|$)/g, "");

  return {
    language,
    units,
    zone,
    number,
    volume: (volume_mL) =>
      units === "us" ? usVolume(volume_mL, number, withUnit) : metricVolume(volume_mL, number, withUnit),
    mass: (mass_g) =>
      units === "us"
        ? withUnit(number(mass_g / G_PER_OZ, 1), "oz")
        : mass_g >= 10_000
          ? withUnit(number(mass_g / 1000, 1), "kg")
          : withUnit(number(mass_g), "g"),
    temperature: (air_C) =>
      units === "us" ? withUnit(number((air_C * 9) / 5 + 32), "°F") : withUnit(number(air_C), "°C"),
    length: (length_cm) =>
      units === "us"
        ? withUnit(eighths(length_cm / CM_PER_INCH), "in")
        : withUnit(number(length_cm, 1), "cm"),
    thickness: (thickness_mm) =>
      units === "us"
        ? withUnit(eighths(thickness_mm / 10 / CM_PER_INCH), "in")
        : withUnit(number(thickness_mm, 1), "mm"),
    illuminance: (light_lux) => {
      const [light, unit] =
        units === "us" ? [light_lux / LUX_PER_FC, "fc"] : [light_lux, language === "de" ? "Lux" : "lux"];
      return withUnit(number(light, light < 10 ? 1 : 0), unit);
    },
    depth: (depth_mm) =>
      units === "us"
        ? withUnit(number(depth_mm / 10 / CM_PER_INCH, 2), "in")
        : withUnit(number(depth_mm, 1), "mm"),
    percent: (share_frac) => withUnit(number(share_frac * 100), "%"),
    money: (amount_minor, currency) => {
      const format = new Intl.NumberFormat(locale, { style: "currency", currency });
      const digits_n = format.resolvedOptions().maximumFractionDigits ?? 2;
      return format.format(amount_minor / 10 ** digits_n);
    },
    day(at_ms, now_ms) {
      const date = calendar.dateOf(at_ms);
      if (now_ms === undefined) return dateSaid(date);
      const today = calendar.dateOf(now_ms);
      if (date === today)
        return calendar.hour_ms(date, 17) <= at_ms && calendar.hour_ms(date, 17) > now_ms
          ? near.evening
          : near.today;
      if (date === addDays(today, 1)) return near.tomorrow;
      if (date === addDays(today, -1)) return near.yesterday;
      if (date > addDays(today, 56)) return month.format(noon(date));
      if (date > addDays(today, 14)) return `${near.about} ${farDay.format(noon(date))}`;
      return dateSaid(date);
    },
    date: (date) => yearDay.format(noon(date)),
    days(from_ms, to_ms) {
      const from = calendar.dateOf(from_ms);
      const to = calendar.dateOf(to_ms);
      if (from === to) return dateSaid(from);
      const week = addDays(from, 6) >= to;
      return week
        ? `${SHORT_DAYS[language][weekdayOf(from)]} ${near.to} ${SHORT_DAYS[language][weekdayOf(to)]}`
        : `${farDay.format(noon(from))} ${near.to} ${farDay.format(noon(to))}`;
    },
    time: (at_ms) => timeFormat.format(at_ms),
    minutes: (minutes) =>
      minutes >= 120
        ? withUnit(number(minutes / 60, 1), near.hours)
        : withUnit(number(Math.max(1, Math.round(minutes))), near.minutes),
    list: (items) => lists.format(items),
    name: nameOf,
  };
}

type Number = (value: number, digits_n?: number) => string;
type WithUnit = (value: string, unit: string) => string;

/** mL to the nearest 5 below 100 and 10 above; litres with one decimal from 2 L on. */
function metricVolume(volume_mL: number, number: Number, withUnit: WithUnit): string {
  if (volume_mL >= 2000) return withUnit(number(volume_mL / 1000, 1), "L");
  const step_mL = volume_mL < 100 ? 5 : 10;
  return withUnit(number(Math.max(step_mL, Math.round(volume_mL / step_mL) * step_mL)), "mL");
}

/** fl oz to the half below 16, then cups, then US gallons. */
function usVolume(volume_mL: number, number: Number, withUnit: WithUnit): string {
  const ounces = volume_mL / ML_PER_US_FL_OZ;
  if (ounces < 16) return withUnit(halves(Math.max(0.5, Math.round(ounces * 2) / 2)), "fl oz");
  const cups = ounces / FL_OZ_PER_CUP;
  if (cups < CUPS_PER_GALLON) return withUnit(halves(Math.round(cups * 2) / 2), "cups");
  return withUnit(number(cups / CUPS_PER_GALLON, 1), "US gal");
}

function halves(value: number): string {
  const whole = Math.floor(value);
  return value === whole ? `${whole}` : whole === 0 ? "½" : `${whole}½`;
}

const EIGHTHS = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"] as const;

function eighths(inches: number): string {
  const n = Math.round(inches * 8);
  const whole = Math.floor(n / 8);
  const part = EIGHTHS[n % 8] as string;
  return whole === 0 && part ? part : `${whole}${part}`;
}

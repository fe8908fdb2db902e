import type { AirAt, AirDay } from "../../places/ahead.ts";
import { addDays } from "../../places/time.ts";
import type { World } from "../craft.ts";
import { usualDate } from "./usual-date.ts";
import { Z80 } from "./workings.ts";

/** The year of a spot as it usually is, in steps from today on; the last step joins the first. */
export interface YearScan {
  readonly dates: readonly string[];
  readonly days: readonly AirDay[];
}

const STEP_d = 5;
const YEAR_d = 365;
const STEPS_n = YEAR_d / STEP_d;

export function yearOf(
  { calendar, now_ms }: Pick<World, "calendar" | "now_ms">,
  airAt: AirAt,
  spot: string,
): YearScan {
  const today = calendar.dateOf(now_ms);
  const dates = Array.from({ length: STEPS_n }, (_, i) => addDays(today, i * STEP_d));
  return { dates, days: dates.map((date) => airAt(spot, usualDate(today, date))) };
}

export interface MonthLight {
  readonly month: number;
  readonly mid_mol_m2_d: number;
  readonly dull_mol_m2_d: number;
  readonly sunny_mol_m2_d: number;
  readonly window_mol_m2_d: number;
  readonly lamp_mol_m2_d: number;
  readonly sky_mol_m2_d: number;
  readonly sd_frac: number;
  /** A day in its middle. */
  readonly day: AirDay;
}

/** January to December, each the mean of the steps that fall into it. */
export function monthsOf({ dates, days }: YearScan): readonly MonthLight[] {
  return Array.from({ length: 12 }, (_, i) => {
    const month = i + 1;
    const inMonth = days.filter((_, step) => Number((dates[step] as string).slice(5, 7)) === month);
    const mean = (of: (day: AirDay) => number) =>
      inMonth.reduce((sum, day) => sum + of(day), 0) / inMonth.length;
    return {
      month,
      mid_mol_m2_d: mean(({ dli_mol_m2_d }) => dli_mol_m2_d),
      dull_mol_m2_d: mean(({ daylight }) => daylight.dull_mol_m2_d),
      sunny_mol_m2_d: mean(({ daylight }) => daylight.sunny_mol_m2_d),
      window_mol_m2_d: mean(({ daylight }) => daylight.window_mol_m2_d),
      lamp_mol_m2_d: mean(({ daylight }) => daylight.lamp_mol_m2_d),
      sky_mol_m2_d: mean(({ daylight }) => daylight.sky_mol_m2_d),
      sd_frac: mean(({ daylight }) => daylight.sd_frac),
      day: inMonth[Math.floor(inMonth.length / 2)] as AirDay,
    };
  });
}

/** Days from today at which light falls below a need and rises above it again; `from_d` lies behind while it is short. */
type Crossing = { readonly from_d: number; readonly until_d: number } | "never" | "always";

/** Light of a step if the place is brighter or darker than thought by so many standard deviations. */
const lightAt = ({ days }: YearScan, step: number, z: number): number => {
  const day = days[((step % STEPS_n) + STEPS_n) % STEPS_n] as AirDay;
  return day.dli_mol_m2_d * Math.exp(z * day.daylight.sd_frac);
};

/** The short spell around the darkest day, for a place that is brighter by z standard deviations than thought. */
function crossing(scan: YearScan, need_mol_m2_d: number, z = 0): Crossing {
  let darkest = 0;
  for (let step = 1; step < STEPS_n; step++)
    if (lightAt(scan, step, 0) < lightAt(scan, darkest, 0)) darkest = step;
  if (lightAt(scan, darkest, z) >= need_mol_m2_d) return "never";
  const edge = (way: 1 | -1): number | undefined => {
    for (let n = 1; n < STEPS_n; n++) {
      const here = lightAt(scan, darkest + way * n, z);
      if (here < need_mol_m2_d) continue;
      const before = lightAt(scan, darkest + way * (n - 1), z);
      return n - 1 + (need_mol_m2_d - before) / Math.max(1e-9, here - before);
    }
    return undefined;
  };
  const [back, ahead] = [edge(-1), edge(1)];
  if (back === undefined || ahead === undefined) return "always";
  const from_d = (darkest - back) * STEP_d;
  const until_d = (darkest + ahead) * STEP_d;
  // The spell of last winter, while it lasts; else the one that comes.
  if (until_d - YEAR_d > 0) return { from_d: from_d - YEAR_d, until_d: until_d - YEAR_d };
  return until_d <= 0 ? { from_d: from_d + YEAR_d, until_d: until_d + YEAR_d } : { from_d, until_d };
}

export interface SpellBand {
  /** Days from today: middle, and 10 and 90 % of what the place may be. */
  readonly from: Triple;
  readonly until: Triple;
}
export interface Triple {
  readonly mid_d: number;
  readonly low_d: number;
  readonly high_d: number;
}

/**
 * The short spell with the band that the place's doubt leaves: light is monotone in that doubt, so the median date is that of
 * the middle light, and the ends are those of the 10 and 90 % lights.
 *
 * @param sdScale what a reading would leave of the doubt
 */
export function spellBand(
  scan: YearScan,
  need_mol_m2_d: number,
  sdScale = 1,
): SpellBand | "never" | "always" {
  const mid = crossing(scan, need_mol_m2_d);
  if (typeof mid === "string") return mid;
  const darker = crossing(scan, need_mol_m2_d, -Z80 * sdScale);
  const brighter = crossing(scan, need_mol_m2_d, Z80 * sdScale);
  // A place that might never be short shrinks to its darkest day; one that might always be reaches half a year around it.
  const centre_d = (mid.from_d + mid.until_d) / 2;
  const wide =
    typeof darker === "string"
      ? { from_d: centre_d - YEAR_d / 2, until_d: centre_d + YEAR_d / 2 }
      : near(darker, mid);
  const narrow = typeof brighter === "string" ? { from_d: centre_d, until_d: centre_d } : near(brighter, mid);
  return {
    from: {
      mid_d: mid.from_d,
      low_d: Math.min(wide.from_d, mid.from_d),
      high_d: Math.max(narrow.from_d, mid.from_d),
    },
    until: {
      mid_d: mid.until_d,
      low_d: Math.min(narrow.until_d, mid.until_d),
      high_d: Math.max(wide.until_d, mid.until_d),
    },
  };
}

/** The same winter as the middle one, where one of them has just ended and the other has not. */
function near(
  spell: { readonly from_d: number; readonly until_d: number },
  mid: { readonly from_d: number; readonly until_d: number },
): { readonly from_d: number; readonly until_d: number } {
  const off = Math.round((mid.from_d + mid.until_d - spell.from_d - spell.until_d) / (2 * YEAR_d)) * YEAR_d;
  return { from_d: spell.from_d + off, until_d: spell.until_d + off };
}

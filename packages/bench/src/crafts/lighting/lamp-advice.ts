import { lampHours, lampTimes, resetTimer } from "@sillwood/science/light";
import { civilElevation_deg, sunDay } from "@sillwood/science/sun";
import type { AirDay } from "../../places/ahead.ts";
import { lampsAt } from "../../places/light/lamp-light.ts";
import { clock } from "../../places/light/sentences.ts";
import { isOut, lampHoursAt } from "../../places/light/windows.ts";
import { type Bench, inForceAt } from "../../places/places.ts";
import { addDays } from "../../places/time.ts";
import type { World, WorldMember } from "../craft.ts";
import { energyOf, tariffNow } from "./energy.ts";
import { dayCap, type NeedFigures, needOf } from "./need.ts";
import type { LampAdvice, TimerSaid } from "./page-shape.ts";
import type { LightSlice } from "./slice.ts";
import { usualDate } from "./usual-date.ts";
import { lightingWords } from "./words.ts";
import { lightSaid } from "./workings.ts";
import { adviceWorking } from "./workings-lamp.ts";

const DAY_ms = 86_400_000;
const HOUR_ms = 3_600_000;
export const mol_per_umol_h = 0.0036;
const QUARTER_h = 0.25;
/** One timer for all: three of four plants get what they need; the last would have to be seated better. @source our assumption */
const PLANTS_frac = 0.75;
/** Where between the dull days (2 of 10 are duller) and the middle a fixed timer counts: 3 of 10. */
const TIMER_BETWEEN_frac = 1 / 3;
/** A day longer than its kind bears by more than this may cost the flowers. @source our assumption */
const PAST_CAP_h = 1;
/** A timer nobody has set may be set at any time. */
const LONG_AGO_d = 9999;

/** One plant under the lamps of a bench. */
export interface Lit {
  readonly member: WorldMember<LightSlice>;
  readonly need: NeedFigures;
  readonly natural_mol_m2_d: number;
  readonly ppfd_umol_m2_s: number;
  readonly cap_h: number;
  readonly capKey: string;
  readonly wanted_h: number;
}

/** Daylight of the plants' darker days: three of ten are duller. */
function naturalLight_mol_m2_d({ daylight }: AirDay): number {
  const dull = Math.max(0, daylight.dull_mol_m2_d - daylight.lamp_mol_m2_d);
  const middle = daylight.window_mol_m2_d + daylight.sky_mol_m2_d;
  return dull + Math.max(0, middle - dull) * TIMER_BETWEEN_frac;
}

/** What the one timer of a bench should be set to in the season of a date. Undefined without lamp or plant. */
export function lampAdvice(world: World<LightSlice>, bench: Bench, date?: string): LampAdvice | undefined {
  const { now_ms, places, calendar, say } = world;
  const lamps = lampsAt(places, bench.id, now_ms);
  const spots = new Set(bench.spots.map(({ id }) => id));
  const members = world.members.filter(({ plant }) => spots.has(plant.spot ?? ""));
  if (lamps.length === 0 || members.length === 0) return undefined;
  const today = calendar.dateOf(now_ms);
  // A timer is set for the coming fortnight.
  const season = usualDate(today, date ?? addDays(today, 7));
  const lit = members.map((member) => litOf(world, member, season)).sort((a, b) => a.wanted_h - b.wanted_h);
  const who = lit[Math.min(lit.length - 1, Math.ceil(PLANTS_frac * lit.length) - 1)] as Lit;
  const strictest = lit.reduce((least, one) => (one.cap_h < least.cap_h ? one : least));
  const hours = lampHours({
    target_mol_m2_d: who.need.min_mol_m2_d,
    natural_mol_m2_d: Math.min(80, who.natural_mol_m2_d),
    ppfd_umol_m2_s: who.ppfd_umol_m2_s,
    cap_h: strictest.cap_h,
  });
  const tariff = tariffNow(world);
  const times = timesOf(world, season, hours.hours_h, tariff);
  const set = lampHoursAt(places, bench.id, now_ms);
  const setAt_ms = inForceAt(places.light.lampHours.get(bench.id), now_ms)?.at_ms;
  const sinceSet_d = set.said && setAt_ms !== undefined ? (now_ms - setAt_ms) / DAY_ms : LONG_AGO_d;
  const out = isOut(places, bench.id, "lamps", now_ms);
  const change_mol_m2_d = (set.hours_h - hours.hours_h) * mol_per_umol_h * who.ppfd_umol_m2_s;
  const isTooLong = set.hours_h > strictest.cap_h + PAST_CAP_h;
  const isWorth = isTooLong || Math.abs(change_mol_m2_d) >= world.assumed("timerWorth_mol_m2_d");
  const isFree = resetTimer({
    set_h: set.hours_h,
    wanted_h: hours.hours_h,
    sinceSet_d: Math.min(LONG_AGO_d, Math.max(0, sinceSet_d)),
    error_mol_m2_d: Math.max(-80, Math.min(80, change_mol_m2_d)),
  });
  const words = lightingWords(say).lamp;
  const wait = out
    ? words.out
    : !isWorth
      ? words.near(lightSaid(Math.abs(change_mol_m2_d), say))
      : isFree
        ? undefined
        : words.onceAWeek(sinceSet_d);
  const from_h = times.from_h;
  const burns = hours.hours_h > 0;
  const on = burns ? clock(from_h) : undefined;
  const off = burns ? clock(from_h + hours.hours_h) : undefined;
  const said = on && off ? words.set(on, off, hours.hours_h) : words.stayOff;
  const short = hours.shortfall_mol_m2_d;
  const parts = { bench, who, strictest, hours, lit, season, tariff, from_h };
  return {
    from_h,
    hours_h: hours.hours_h,
    ...(on && off ? { on, off } : {}),
    said,
    change: wait === undefined,
    ...(wait === undefined ? {} : { waitSaid: wait }),
    draft: { kind: "bench.timer", on: [bench.id], data: { from_h, hours_h: hours.hours_h } },
    target_mol_m2_d: who.need.min_mol_m2_d,
    natural_mol_m2_d: who.natural_mol_m2_d,
    ppfd_umol_m2_s: who.ppfd_umol_m2_s,
    cap_h: strictest.cap_h,
    short_mol_m2_d: short,
    ...(short > 0.05
      ? {
          shortSaid: words.short(
            lightSaid(short, say),
            strictest.cap_h,
            hours.neededPpfd_umol_m2_s > 0 ? say.number(hours.neededPpfd_umol_m2_s) : undefined,
          ),
        }
      : {}),
    ...(hours.neededPpfd_umol_m2_s > 0 ? { wanted_umol_m2_s: hours.neededPpfd_umol_m2_s } : {}),
    energy: energyOf(world, bench, { from_h, hours_h: hours.hours_h }, members.length),
    working: adviceWorking(parts, said, world),
  };
}

function litOf(world: World<LightSlice>, member: WorldMember<LightSlice>, season: string): Lit {
  const need = needOf(member.sight);
  const day = world.airAt(member.plant.spot, season);
  const natural_mol_m2_d = naturalLight_mol_m2_d(day);
  const ppfd_umol_m2_s = Math.min(3000, day.daylight.lamp_umol_m2_s);
  const cap = dayCap(world.speciesOf(member.plant), need.stage, world.assumed);
  const gap = Math.max(0, need.min_mol_m2_d - natural_mol_m2_d);
  const wanted_h = ppfd_umol_m2_s > 0 ? gap / (mol_per_umol_h * ppfd_umol_m2_s) : gap > 0 ? 24 : 0;
  return { member, need, natural_mol_m2_d, ppfd_umol_m2_s, cap_h: cap.cap_h, capKey: cap.key, wanted_h };
}

/** On and off by the clock: inside the daylight first, what is beyond at the end where electricity is cheaper. */
function timesOf(
  { places, calendar }: World,
  date: string,
  hours_h: number,
  tariff: ReturnType<typeof tariffNow>,
): { readonly from_h: number } {
  const midnight_ms = calendar.midnight_ms(date);
  const { rise_ms, set_ms, daylight_h } = sunDay({
    noon_ms: midnight_ms + DAY_ms / 2,
    latitude_deg: places.site.latitude_deg,
    longitude_deg: places.site.longitude_deg,
    threshold_deg: civilElevation_deg,
  });
  const clockOf = (at_ms: number | null, other_h: number) =>
    at_ms === null ? other_h : Math.max(0, Math.min(24, (at_ms - midnight_ms) / HOUR_ms));
  const dawn_h = clockOf(rise_ms, daylight_h > 0 ? 0 : 12);
  const dusk_h = Math.max(dawn_h, clockOf(set_ms, daylight_h > 0 ? 24 : 12));
  const beyond_h = Math.max(0, hours_h - (dusk_h - dawn_h));
  const extend = tariff?.cheap
    ? tariff.cheap(dawn_h - beyond_h, beyond_h) > tariff.cheap(dusk_h, beyond_h)
      ? "morning"
      : "evening"
    : "both";
  const { on_h } = lampTimes({ hours_h, dawn_h, dusk_h, extend });
  return { from_h: (Math.round(on_h / QUARTER_h) * QUARTER_h) % 24 };
}

/** How the timer stands now. */
export function timerSaid({ places, now_ms, say }: World, bench: Bench): TimerSaid {
  const words = lightingWords(say).lamp;
  const { from_h, hours_h, said } = lampHoursAt(places, bench.id, now_ms);
  const out = (places.light.outages.get(bench.id) ?? []).filter(
    ({ data, at_ms }) => data.what === "lamps" && data.is === "out" && at_ms <= now_ms,
  );
  const outSince_ms = isOut(places, bench.id, "lamps", now_ms) ? out.at(-1)?.at_ms : undefined;
  const on = clock(from_h);
  const off = clock(from_h + hours_h);
  return {
    from_h,
    hours_h,
    ...(hours_h > 0 ? { on, off } : {}),
    said:
      outSince_ms !== undefined
        ? words.outSince(say.day(outSince_ms, now_ms))
        : hours_h > 0
          ? words.isSet(on, off, hours_h, said)
          : words.isOff,
    origin: said ? "measured" : "assumed",
    ...(outSince_ms === undefined ? {} : { outSince_ms }),
  };
}

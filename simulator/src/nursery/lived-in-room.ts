import type { BenchAir, SpotLight } from "./bench-air.ts";
import { HOUR_ms, type LocalDay } from "./calendar.ts";
import type { Chance } from "./chance.ts";
import { lampHours, lampShare_frac, type ShelfLamp } from "./lamp-light.ts";
import { type SkyHours, sharedWhims } from "./outdoor-air.ts";
import { saturation_kPa } from "./vapour.ts";
import type { Pane, PlaceLight } from "./window-light.ts";

/** A room that people heat by their day and that the weather gets into. */
export interface LivedInRoom {
  /** What the heating holds while people are up, and while they sleep. */
  readonly day_C: number;
  readonly night_C: number;
  readonly wakes_h: number;
  readonly sleeps_h: number;
  /** By how much it is turned down on working days between nine and five. */
  readonly outAtWork_C: number;
  /** Mean of the day outside above which nobody heats. */
  readonly heatsBelow_C: number;
  /** Warmth from people, sun and kitchen over the outside when nobody heats. */
  readonly gains_C: number;
  /** How slowly the room follows when left alone. */
  readonly slow_h: number;
  /** Share of the swing outside that gets in. */
  readonly leaks_frac: number;
  /** How much of the difference to the outside the crowns feel near the pane. */
  readonly chill_frac: number;
  /** What a radiator under the bench adds while it works hard. */
  readonly radiator_C: number;
  readonly moisture_kPa: number;
  /** Air changes an hour. */
  readonly airs_per_h: number;
  /** Air speed at the leaf, and what a fan adds while the lamp burns. */
  readonly wind_m_s: number;
  readonly fan_m_s: number;
  /** What a burning lamp adds to the air of its shelf. */
  readonly lampWarmth_C: number;
}

/** Where the spots of a bench get their light from. */
export interface BenchLight {
  readonly window?: { readonly pane: Pane; readonly places: readonly PlaceLight[] };
  readonly lamp?: { readonly lamp: ShelfLamp; readonly aside_m: readonly number[] };
  /** Daylight from a far window on every spot, share of that on open ground. */
  readonly stray_frac: number;
}

/** Photons of daylight per joule of short-wave, outside and behind panes that keep heat rays out. @source as outdoor-air.ts */
const PHOTONS_umol_J = 2.06;
/** White lamps, photons per joule, and the share of it that leaves take up. @source common practice: 4.6 to 5.2, about 0.86 */
const LAMP_PHOTONS_umol_J = 4.8;
const LAMP_TAKES_frac = 0.86;
/** Leaves take up most of the visible half of daylight and little of the rest. @source common practice, no source */
const TAKES_VISIBLE_frac = 0.4;
const TAKES_HEAT_frac = 0.12;

/** Air of a room and light of each spot in it. */
export function livedInRoom(
  days: readonly LocalDay[],
  sky: SkyHours,
  room: LivedInRoom,
  light: BenchLight,
  spots_n: number,
  chance: Chance,
): BenchAir {
  const { hours_n, from_ms, dayOf, pressure_kPa } = sky.air;
  const burning = light.lamp
    ? lampHours(light.lamp.lamp, days, dayOf, from_ms, chance.under("clock"))
    : new Float64Array(hours_n);
  const spots = Array.from({ length: spots_n }, (_, k) => spotLight(k, light, burning, sky));
  const mean = (of: (spot: SpotLight) => Float64Array) =>
    Float64Array.from(
      { length: hours_n },
      (_, i) => spots.reduce((sum, spot) => sum + (of(spot)[i] as number), 0) / spots_n,
    );
  const air = climate(days, sky, room, light, burning, chance);
  return {
    from_ms,
    hours_n,
    outdoors: false,
    pressure_kPa,
    ...air,
    ppfd_umol_m2_s: mean((spot) => spot.level_umol_m2_s),
    absorbed_W_m2: mean((spot) => spot.absorbed_W_m2),
    rain_mm_h: new Float64Array(hours_n),
    dayOf,
    whims: sharedWhims(days.length, chance.between(0.04, 0.18), chance.under("whims")),
    throughfall_frac: 0,
    spots,
  };
}

function spotLight(spot: number, light: BenchLight, burning: Float64Array, sky: SkyHours): SpotLight {
  const { hours_n } = sky.air;
  const level_umol_m2_s = new Float64Array(hours_n);
  const ppfd_umol_m2_s = new Float64Array(hours_n);
  const absorbed_W_m2 = new Float64Array(hours_n);
  const place = light.window?.places[spot];
  const heat_frac = light.window?.pane.heat_frac ?? 1;
  const lamp_umol = light.lamp
    ? light.lamp.lamp.ppfd_umol_m2_s * lampShare_frac(light.lamp.lamp, light.lamp.aside_m[spot] ?? 0)
    : 0;
  for (let i = 0; i < hours_n; i++) {
    const stray_W_m2 = (sky.global_W_m2[i] as number) * light.stray_frac;
    const level_W_m2 = (place?.level_W_m2[i] ?? 0) + stray_W_m2;
    const crown_W_m2 = (place?.crown_W_m2[i] ?? 0) + stray_W_m2;
    const lit_umol = lamp_umol * (burning[i] as number);
    level_umol_m2_s[i] = level_W_m2 * PHOTONS_umol_J + lit_umol;
    ppfd_umol_m2_s[i] = crown_W_m2 * PHOTONS_umol_J + lit_umol;
    absorbed_W_m2[i] =
      crown_W_m2 * (TAKES_VISIBLE_frac + TAKES_HEAT_frac * heat_frac) +
      (lit_umol / LAMP_PHOTONS_umol_J) * LAMP_TAKES_frac;
  }
  return { level_umol_m2_s, ppfd_umol_m2_s, absorbed_W_m2 };
}

/** The hours of a thermostat, a house that keeps its warmth for a while, a cold pane, a radiator below. */
function climate(
  days: readonly LocalDay[],
  sky: SkyHours,
  room: LivedInRoom,
  light: BenchLight,
  burning: Float64Array,
  chance: Chance,
) {
  const { hours_n, from_ms, dayOf } = sky.air;
  const column = () => new Float64Array(hours_n);
  const [air_C, vapour_kPa, wind_m_s] = [column(), column(), column()];
  const draughts = sharedWhims(days.length, 0.25, chance.under("draughts"));
  const moods = chance.under("moods");
  const middle = light.window?.places[Math.floor((light.window.places.length - 1) / 2)];
  let outside_C = sky.air.air_C[0] as number;
  let room_C = room.day_C;
  let indoors_kPa = sky.air.vapour_kPa[0] as number;
  let drift_C = 0;
  let day = -1;
  for (let i = 0; i < hours_n; i++) {
    if (dayOf[i] !== day) {
      day = dayOf[i] as number;
      drift_C = 0.75 * drift_C + moods.normal(0, 0.6);
    }
    const today = days[day] as LocalDay;
    const hour = (from_ms + (i + 0.5) * HOUR_ms - today.midnight_ms) / HOUR_ms;
    const now_C = sky.air.air_C[i] as number;
    outside_C += (now_C - outside_C) / 24;
    const free_C = outside_C + room.gains_C + (now_C - outside_C) * room.leaks_frac;
    const heated = outside_C < room.heatsBelow_C;
    const wanted_C = held_C(room, hour, today.weekday) + drift_C;
    const target_C = heated ? Math.max(free_C, wanted_C) : free_C;
    // Heating lifts a room within hours; left alone it follows as slowly as its walls.
    const pace = heated && target_C > room_C ? 0.45 : 1 - Math.exp(-1 / room.slow_h);
    const works = heated && target_C > room_C + 0.05;
    room_C += (target_C - room_C) * pace;
    const sun_C = (middle?.crown_W_m2[i] ?? 0) * 0.012;
    const lit = (burning[i] as number) > 0;
    air_C[i] =
      room_C -
      room.chill_frac * Math.max(0, room_C - now_C) +
      (works || (heated && outside_C < 4) ? room.radiator_C : 0) +
      Math.min(9, sun_C) +
      (lit ? room.lampWarmth_C : 0);
    indoors_kPa +=
      ((sky.air.vapour_kPa[i] as number) + room.moisture_kPa - indoors_kPa) *
      (1 - Math.exp(-room.airs_per_h));
    vapour_kPa[i] = Math.min(
      indoors_kPa,
      saturation_kPa(room_C) * 0.92,
      saturation_kPa(air_C[i] as number) * 0.97,
    );
    wind_m_s[i] = (room.wind_m_s + (lit ? room.fan_m_s : 0)) * (draughts[day] as number);
  }
  return { air_C, vapour_kPa, wind_m_s };
}

function held_C(room: LivedInRoom, hour: number, weekday: number): number {
  if (hour < room.wakes_h || hour >= room.sleeps_h) return room.night_C;
  const atWork = weekday >= 1 && weekday <= 5 && hour >= 9 && hour < 17;
  return room.day_C - (atWork ? room.outAtWork_C : 0);
}

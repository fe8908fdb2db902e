import type { BenchAir } from "./bench-air.ts";
import { HOUR_ms, type LocalDay } from "./calendar.ts";
import type { Chance } from "./chance.ts";
import { LEAF_TAKES_frac, type SkyHours, sharedWhims } from "./outdoor-air.ts";
import { saturation_kPa } from "./vapour.ts";

/** A room with a bench in it. */
interface Room {
  /** What the heating holds by day (7 to 22 h) and night. */
  readonly day_C: number;
  readonly night_C: number;
  /** Share of the outdoor swing that gets in when it is warm outside. */
  readonly leaks_frac: number;
  /** Vapour that people, sinks and plants add to the air. */
  readonly moisture_kPa: number;
  /** Air speed at the leaf. */
  readonly wind_m_s: number;
}

interface Window {
  /** Clockwise from north. */
  readonly faces_deg: number;
  /** Share of light that the panes let through. */
  readonly glass_frac: number;
  /** Height of the roofs across the street. */
  readonly horizon_deg: number;
  /** Share of the sky's light that reaches the bench. */
  readonly sky_frac: number;
}

export interface Lamp {
  readonly ppfd_umol_m2_s: number;
  /** Local clock hours. */
  readonly on_h: number;
  readonly off_h: number;
}

const WINDOW_PHOTONS_umol_J = 2.06;
/** White lamps, photons per joule of short-wave. @source common practice: 4.6 to 5.2 */
const LAMP_PHOTONS_umol_J = 4.8;
const LAMP_TAKES_frac = 0.86;

/** Air and light on a bench indoors: heating by the clock, weather that leaks in, sun through the panes, lamps. */
export function roomAir(
  days: readonly LocalDay[],
  sky: SkyHours,
  room: Room,
  light: { readonly window?: Window; readonly lamp?: Lamp },
  chance: Chance,
): BenchAir {
  const { hours_n, from_ms, dayOf, pressure_kPa } = sky.air;
  const air_C = new Float64Array(hours_n);
  const vapour_kPa = new Float64Array(hours_n);
  const wind_m_s = new Float64Array(hours_n);
  const ppfd_umol_m2_s = new Float64Array(hours_n);
  const absorbed_W_m2 = new Float64Array(hours_n);
  const draughts = sharedWhims(days.length, 0.25, chance.under("draughts"));
  const moods = chance.under("moods");
  let room_C = room.day_C;
  let indoors_kPa = 1;
  let drift_C = 0;
  let day = -1;
  for (let i = 0; i < hours_n; i++) {
    if (dayOf[i] !== day) {
      day = dayOf[i] as number;
      drift_C = 0.7 * drift_C + moods.normal(0, 0.6);
    }
    const hour = (from_ms + (i + 0.5) * HOUR_ms - (days[day] as LocalDay).midnight_ms) / HOUR_ms;
    const outside_C = sky.air.air_C[i] as number;
    const panes_W_m2 = light.window ? throughWindow_W_m2(sky, i, light.window) : 0;
    const lampOn = light.lamp !== undefined && hour >= light.lamp.on_h && hour < light.lamp.off_h;
    const held_C = (hour >= 7 && hour < 22 ? room.day_C : room.night_C) + drift_C;
    const target_C =
      held_C +
      Math.max(0, outside_C - held_C) * room.leaks_frac -
      Math.max(0, held_C - outside_C) * 0.06 * room.leaks_frac;
    room_C += (target_C + panes_W_m2 * 0.012 + (lampOn ? 0.9 : 0) - room_C) * 0.35;
    indoors_kPa += ((sky.air.vapour_kPa[i] as number) + room.moisture_kPa - indoors_kPa) * 0.2;
    air_C[i] = room_C;
    vapour_kPa[i] = Math.min(indoors_kPa, saturation_kPa(room_C) * 0.95);
    wind_m_s[i] = room.wind_m_s * (draughts[day] as number);
    const lamp_umol = lampOn && light.lamp ? light.lamp.ppfd_umol_m2_s : 0;
    ppfd_umol_m2_s[i] = panes_W_m2 * WINDOW_PHOTONS_umol_J + lamp_umol;
    absorbed_W_m2[i] = panes_W_m2 * LEAF_TAKES_frac + (lamp_umol / LAMP_PHOTONS_umol_J) * LAMP_TAKES_frac;
  }
  return {
    from_ms,
    hours_n,
    outdoors: false,
    pressure_kPa,
    air_C,
    vapour_kPa,
    wind_m_s,
    ppfd_umol_m2_s,
    absorbed_W_m2,
    rain_mm_h: new Float64Array(hours_n),
    dayOf,
    whims: sharedWhims(days.length, chance.between(0.04, 0.15), chance.under("whims")),
    throughfall_frac: 0,
  };
}

function throughWindow_W_m2(sky: SkyHours, i: number, window: Window): number {
  const global_W_m2 = sky.global_W_m2[i] as number;
  if (global_W_m2 <= 0) return 0;
  const diffuse_W_m2 = sky.diffuse_W_m2[i] as number;
  const sun = sky.suns[i];
  const fromSky_W_m2 = window.glass_frac * window.sky_frac * (diffuse_W_m2 + 0.12 * global_W_m2);
  if (!sun || sun.sinHeight <= Math.sin((window.horizon_deg * Math.PI) / 180)) return fromSky_W_m2;
  const aside_deg = Math.abs(((sun.azimuth_deg - window.faces_deg + 540) % 360) - 180);
  if (aside_deg >= 85) return fromSky_W_m2;
  // Panes turn slanting light away; a high sun also falls steeply past a bench that is set back.
  const slant = Math.cos((aside_deg * Math.PI) / 180) ** 0.3;
  const setBack_frac = 0.9 - 0.5 * sun.sinHeight;
  return fromSky_W_m2 + (global_W_m2 - diffuse_W_m2) * window.glass_frac * slant * setBack_frac;
}

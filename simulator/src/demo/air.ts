import type { BenchAir } from "../nursery/bench-air.ts";
import type { LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { outdoorAir } from "../nursery/outdoor-air.ts";
import { roomAir } from "../nursery/room-air.ts";
import { shiftedSeattle } from "../seattle.ts";
import { SITE } from "./cast.ts";

/** Air and light on the four benches, in the order of BENCHES. */
export function demoAir(days: readonly LocalDay[], shift_years: number, chance: Chance): BenchAir[] {
  const first = days[0] as LocalDay;
  const sky = outdoorAir(
    days,
    shiftedSeattle(first.date, days.length, shift_years),
    SITE,
    chance.under("sky"),
  );
  const sill = roomAir(
    days,
    sky,
    { day_C: 20.5, night_C: 17, leaks_frac: 0.6, moisture_kPa: 0.25, wind_m_s: 0.08 },
    { window: { faces_deg: 180, glass_frac: 0.7, horizon_deg: 9, sky_frac: 0.3 } },
    chance.under("sill"),
  );
  const shelf = roomAir(
    days,
    sky,
    { day_C: 21.5, night_C: 18.5, leaks_frac: 0.5, moisture_kPa: 0.3, wind_m_s: 0.15 },
    { lamp: { ppfd_umol_m2_s: 190, on_h: 7, off_h: 21 } },
    chance.under("shelf"),
  );
  const cold = roomAir(
    days,
    sky,
    { day_C: 14, night_C: 11, leaks_frac: 0.6, moisture_kPa: 0.15, wind_m_s: 0.06 },
    { window: { faces_deg: 90, glass_frac: 0.7, horizon_deg: 12, sky_frac: 0.2 } },
    chance.under("cold"),
  );
  return [sill, shelf, cold, sky.air];
}

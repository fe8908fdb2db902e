import { within } from "../errors/index.ts";

/** Moles per µmol s⁻¹ and hour. */
const mol_per_umol_h = 0.0036;
const quarter_h = 0.25;
/** Share of days that are duller than what a fixed timer counts on (sheet of the field). */
export const fixedTimerQuantile_frac = 0.3;

export type LampHours = {
  readonly state: "off" | "enough" | "short";
  /** rounded to the quarter of an hour that timers know */
  readonly hours_h: number;
  readonly exact_h: number;
  readonly lamp_mol_m2_d: number;
  readonly shortfall_mol_m2_d: number;
  /** light that would do within the hours there are; 0 when enough or when there are none */
  readonly neededPpfd_umol_m2_s: number;
};

/**
 * Hours a lamp must burn so that daylight and lamp reach a daily light, within the hours allowed.
 *
 * h = (target − natural)/(0.0036 PPFD), rounded to 15 min; at most cap − hours that cannot overlap with the day; beyond that
 * the shortfall and the light that would do
 *
 * @param lamp daily light wanted and natural daily light [mol m⁻² d⁻¹], 0 to 80: its 30th percentile for a fixed timer, the forecast for a daily one; light of the lamp [µmol m⁻² s⁻¹], 0 to 3000; longest day allowed [h], 0 to 24; hours of the day that the lamp cannot overlap [h], 0 to 24
 * @returns state; hours, rounded and exact [h]; what the lamp gives and what is short [mol m⁻² d⁻¹]; light that would do [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; arithmetic
 * @example lampHours({ target_mol_m2_d: 14, natural_mol_m2_d: 5, ppfd_umol_m2_s: 200, cap_h: 16 }).hours_h // 12.5
 */
export function lampHours(lamp: {
  readonly target_mol_m2_d: number;
  readonly natural_mol_m2_d: number;
  readonly ppfd_umol_m2_s: number;
  readonly cap_h: number;
  readonly cannotOverlap_h?: number;
}): LampHours {
  const { target_mol_m2_d, natural_mol_m2_d, ppfd_umol_m2_s, cap_h, cannotOverlap_h = 0 } = lamp;
  within("target_mol_m2_d", target_mol_m2_d, 0, 80);
  within("natural_mol_m2_d", natural_mol_m2_d, 0, 80);
  within("ppfd_umol_m2_s", ppfd_umol_m2_s, 0, 3000);
  within("cap_h", cap_h, 0, 24);
  within("cannotOverlap_h", cannotOverlap_h, 0, 24);
  const gap_mol = target_mol_m2_d - natural_mol_m2_d;
  const none = { hours_h: 0, exact_h: 0, lamp_mol_m2_d: 0, shortfall_mol_m2_d: 0, neededPpfd_umol_m2_s: 0 };
  if (gap_mol <= 0) return { state: "off", ...none };
  const most_h = Math.max(0, cap_h - cannotOverlap_h);
  const perHour_mol = mol_per_umol_h * ppfd_umol_m2_s;
  // A dark lamp would burn for ever: it burns as long as it may, and is short.
  const exact_h = Math.min(perHour_mol > 0 ? gap_mol / perHour_mol : 24, 24);
  const rounded_h = Math.round(exact_h / quarter_h) * quarter_h;
  const hours_h = Math.min(rounded_h, Math.floor(most_h / quarter_h) * quarter_h);
  const lamp_mol_m2_d = hours_h * perHour_mol;
  const isShort = exact_h > most_h || perHour_mol === 0;
  return {
    state: isShort ? "short" : "enough",
    hours_h,
    exact_h,
    lamp_mol_m2_d,
    shortfall_mol_m2_d: isShort ? Math.max(0, gap_mol - lamp_mol_m2_d) : 0,
    neededPpfd_umol_m2_s: isShort && most_h > 0 ? gap_mol / (mol_per_umol_h * most_h) : 0,
  };
}

/**
 * When a lamp goes on and off, and how long the plant's day becomes.
 *
 * Inside the daylight first; what does not fit extends the day at the end asked for, so that the day stays as short as can be
 *
 * @param lamp hours to burn [h], 0 to 24; civil dawn and dusk [h of the clock], 0 to 24; which end to extend, the one with the cheaper tariff
 * @returns on and off [h of the clock], 0 to 24, off may be smaller when it is past midnight; length of the plant's day [h]
 * @throws QuantityError outside those ranges or for a dusk before dawn
 * @source our assumption
 * @example lampTimes({ hours_h: 12, dawn_h: 7, dusk_h: 17, extend: "evening" }).off_h // 19
 */
export function lampTimes(lamp: {
  readonly hours_h: number;
  readonly dawn_h: number;
  readonly dusk_h: number;
  readonly extend: "morning" | "evening" | "both";
}): { readonly on_h: number; readonly off_h: number; readonly dayLength_h: number } {
  const { hours_h, dawn_h, dusk_h, extend } = lamp;
  within("hours_h", hours_h, 0, 24);
  within("dawn_h", dawn_h, 0, 24);
  within("dusk_h", dusk_h, dawn_h, 24);
  const daylight_h = dusk_h - dawn_h;
  const beyond_h = Math.max(0, hours_h - daylight_h);
  const early_h = extend === "morning" ? beyond_h : extend === "both" ? beyond_h / 2 : 0;
  const start_h = extend === "morning" && beyond_h === 0 ? dawn_h : dawn_h - early_h;
  // When the day has room, the lamp ends with it or begins with it.
  const on_h = beyond_h === 0 && extend !== "morning" ? dusk_h - hours_h : start_h;
  const onClock = (hour: number): number => ((hour % 24) + 24) % 24;
  return {
    on_h: onClock(on_h),
    off_h: onClock(on_h + hours_h),
    dayLength_h: Math.min(24, daylight_h + beyond_h),
  };
}

/**
 * Whether a timer should be set anew: at most once a week, unless the light is far off.
 *
 * @param timer hours set and hours wanted [h], 0 to 24; days since it was last set [d], 0 to 10000; error of the daily light that was counted on [mol m⁻² d⁻¹], -80 to 80
 * @returns whether to set it
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example resetTimer({ set_h: 10, wanted_h: 11, sinceSet_d: 3, error_mol_m2_d: 1 }) // false
 */
export function resetTimer(timer: {
  readonly set_h: number;
  readonly wanted_h: number;
  readonly sinceSet_d: number;
  readonly error_mol_m2_d: number;
}): boolean {
  within("set_h", timer.set_h, 0, 24);
  within("wanted_h", timer.wanted_h, 0, 24);
  within("sinceSet_d", timer.sinceSet_d, 0, 10_000);
  within("error_mol_m2_d", timer.error_mol_m2_d, -80, 80);
  if (Math.abs(timer.wanted_h - timer.set_h) < quarter_h) return false;
  return timer.sinceSet_d >= 7 || Math.abs(timer.error_mol_m2_d) > 3;
}

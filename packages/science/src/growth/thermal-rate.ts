import { within } from "../errors/index.ts";

/** Four temperatures between which something develops: none at the first, fastest from the second to the third, none at the last. */
export type ThermalClock = {
  readonly base_C: number;
  readonly optimumLow_C: number;
  readonly optimumHigh_C: number;
  readonly max_C: number;
};

function refuseOtherClock({ base_C, optimumLow_C, optimumHigh_C, max_C }: ThermalClock): void {
  within("base_C", base_C, -10, 40);
  within("optimumLow_C", optimumLow_C, -5, 50);
  within("optimumHigh_C", optimumHigh_C, -5, 55);
  within("max_C", max_C, 0, 70);
  within("optimumLow_C", optimumLow_C, base_C + 0.1, 50);
  within("optimumHigh_C", optimumHigh_C, optimumLow_C, 55);
  within("max_C", max_C, optimumHigh_C + 0.1, 70);
}

function trapezoid(air_C: number, { base_C, optimumLow_C, optimumHigh_C, max_C }: ThermalClock): number {
  if (air_C <= base_C || air_C >= max_C) return 0;
  if (air_C < optimumLow_C) return (air_C - base_C) / (optimumLow_C - base_C);
  if (air_C <= optimumHigh_C) return 1;
  return (max_C - air_C) / (max_C - optimumHigh_C);
}

/**
 * Rate of development at a temperature, as a share of the fastest: the linear function of four points.
 *
 * 0 up to the base, (T − Tb)/(To1 − Tb) to To1, 1 to To2, (Tm − T)/(Tm − To2) to Tm, 0 beyond. A "thermal day" is a day at 1.
 *
 * @param at temperature [°C], -40 to 60; base [°C], -10 to 40; lower optimum, above the base, to 50; upper optimum, not below the lower, to 55; maximum, above that, to 70
 * @returns share, 0 to 1; also thermal days per day
 * @throws QuantityError outside those ranges
 * @source DSSAT48
 * @see checks/growth-fruit.json 044-050
 * @example thermalRate_frac({ air_C: 13.25, base_C: 5.5, optimumLow_C: 21, optimumHigh_C: 28, max_C: 55 }) // 0.5
 */
export function thermalRate_frac(at: { readonly air_C: number } & ThermalClock): number {
  within("air_C", at.air_C, -40, 60);
  refuseOtherClock(at);
  return trapezoid(at.air_C, at);
}

/**
 * Degree-days that a day at a constant temperature brings on a clock.
 *
 * (To1 − Tb) times the rate: T − Tb up to the lower optimum, no more above it, less again beyond the upper one. For steps
 * shorter than a day multiply by their length; the mean over the hours of a day is the hourly trapezoid.
 *
 * @param at temperature [°C], -40 to 60; the four temperatures of the clock, as for the rate
 * @returns degree-days per day [°C d d⁻¹], 0 or more
 * @throws QuantityError outside those ranges
 * @source DSSAT48
 * @example thermalRate_Cd_per_d({ air_C: 22, base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 }) // 12
 */
export function thermalRate_Cd_per_d(at: { readonly air_C: number } & ThermalClock): number {
  within("air_C", at.air_C, -40, 60);
  refuseOtherClock(at);
  return (at.optimumLow_C - at.base_C) * trapezoid(at.air_C, at);
}

/**
 * Degree-days per day by temperature on one clock, for callers that ask for many temperatures: the clock is checked once.
 *
 * The same numbers as thermalRate_Cd_per_d. What is handed over does not check its temperature: outside -40 to 60 °C it answers as at
 * the end of the clock, 0.
 *
 * @param clock the four temperatures of the clock, as for the rate
 * @returns degree-days per day [°C d d⁻¹] of a temperature [°C]
 * @throws QuantityError outside those ranges
 * @source DSSAT48
 * @example thermalPaceOf({ base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 })(22) // 12
 */
export function thermalPaceOf(clock: ThermalClock): (air_C: number) => number {
  refuseOtherClock(clock);
  const span_C = clock.optimumLow_C - clock.base_C;
  return (air_C) => span_C * trapezoid(air_C, clock);
}

/**
 * Degree-days of logged hours on a clock: the hourly trapezoid.
 *
 * Sum over the readings of (To1 − Tb) times the rate, times the length of a reading over 24 h. A gap in the log must be
 * filled before; a day of 23 or 25 hours takes as many readings.
 *
 * @param log temperatures [reading][°C], -40 to 60, 1 to 100000 of them; length of one reading [h], 0.01 to 24, 1 unless given; the four temperatures of the clock, as for the rate
 * @returns degree-days [°C d], 0 or more
 * @throws QuantityError outside those ranges
 * @source DSSAT48
 * @example degreeDaysHourly_Cd({ air_C: [22, 10], length_h: 12, base_C: 10, optimumLow_C: 28, optimumHigh_C: 35, max_C: 55 }) // 6
 */
export function degreeDaysHourly_Cd(
  log: { readonly air_C: readonly number[]; readonly length_h?: number } & ThermalClock,
): number {
  const { air_C, length_h = 1 } = log;
  within("readings_n", air_C.length, 1, 100_000);
  within("length_h", length_h, 0.01, 24);
  refuseOtherClock(log);
  const rates = air_C.reduce((sum, each) => {
    within("air_C", each, -40, 60);
    return sum + trapezoid(each, log);
  }, 0);
  return (rates * (log.optimumLow_C - log.base_C) * length_h) / 24;
}

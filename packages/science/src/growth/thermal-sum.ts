import { within } from "../errors/index.ts";

/**
 * Days that a thermal sum takes at a constant temperature.
 *
 * d = sum / (min(T, upper) − Tb)
 *
 * @param phase thermal sum [°C d], 0 to 10000; temperature [°C], more than 0.1 above the base, to 60; base [°C], -10 to 40; temperature above which warmth counts no more [°C], more than 0.1 above the base, to 60, none unless given
 * @returns time [d]; falls with temperature
 * @throws QuantityError outside those ranges: at the base it would never end
 * @source DSSAT48
 * @see checks/growth-fruit.json 051, 052, 066-068
 * @example daysForSum_d({ thermalTime_Cd: 43.6, air_C: 25, base_C: 16.8 }) // 5.32
 */
export function daysForSum_d(phase: {
  readonly thermalTime_Cd: number;
  readonly air_C: number;
  readonly base_C: number;
  readonly upper_C?: number;
}): number {
  const { thermalTime_Cd, air_C, base_C, upper_C } = phase;
  within("thermalTime_Cd", thermalTime_Cd, 0, 10_000);
  within("base_C", base_C, -10, 40);
  within("air_C", air_C, -40, 60);
  within("air_C", air_C, base_C + 0.1, 60);
  if (upper_C !== undefined) {
    within("upper_C", upper_C, -10, 60);
    within("upper_C", upper_C, base_C + 0.1, 60);
  }
  return thermalTime_Cd / (Math.min(air_C, upper_C ?? air_C) - base_C);
}

/**
 * Mean temperature at which a thermal sum fell in so many days.
 *
 * T = Tb + sum / days. It tells which base a printed sum belongs to: the wrong one gives a temperature nobody grows at.
 *
 * @param phase thermal sum [°C d], 0 to 10000; time [d], 0.1 to 1000; base [°C], -10 to 40
 * @returns temperature [°C]
 * @throws QuantityError outside those ranges
 * @source Homma2022
 * @see checks/growth-fruit.json 058
 * @example meanTemperatureOfSum_C({ thermalTime_Cd: 156, days_d: 7, base_C: 0 }) // 22.3
 */
export function meanTemperatureOfSum_C(phase: {
  readonly thermalTime_Cd: number;
  readonly days_d: number;
  readonly base_C: number;
}): number {
  within("thermalTime_Cd", phase.thermalTime_Cd, 0, 10_000);
  within("days_d", phase.days_d, 0.1, 1000);
  within("base_C", phase.base_C, -10, 40);
  return phase.base_C + phase.thermalTime_Cd / phase.days_d;
}

/**
 * A thermal sum carried over to another base, so that both take the same days at one temperature.
 *
 * sum' = sum (T − Tb') / (T − Tb). Only near that temperature do the two agree.
 *
 * @param phase thermal sum [°C d], 0 to 10000; its base and the other one [°C], -10 to 40; temperature at which they agree [°C], more than 0.1 above both, to 60
 * @returns thermal sum [°C d] on the other base
 * @throws QuantityError outside those ranges
 * @source our assumption; arithmetic of the thermal sum
 * @example sumOnOtherBase_Cd({ thermalTime_Cd: 750, base_C: 10, otherBase_C: 13, air_C: 25 }) // 600
 */
export function sumOnOtherBase_Cd(phase: {
  readonly thermalTime_Cd: number;
  readonly base_C: number;
  readonly otherBase_C: number;
  readonly air_C: number;
}): number {
  const { thermalTime_Cd, base_C, otherBase_C, air_C } = phase;
  within("thermalTime_Cd", thermalTime_Cd, 0, 10_000);
  within("base_C", base_C, -10, 40);
  within("otherBase_C", otherBase_C, -10, 40);
  within("air_C", air_C, -40, 60);
  within("air_C", air_C, Math.max(base_C, otherBase_C) + 0.1, 60);
  return (thermalTime_Cd * (air_C - otherBase_C)) / (air_C - base_C);
}

import { within } from "../errors/index.ts";

/**
 * Share of a stage that is done in a day, linear in temperature.
 *
 * v = (T − T0) / K between the threshold and the cap; 0 below, held above.
 *
 * @param air temperature [°C], -50 to 60 (of the medium for what lives in it); threshold [°C], -10 to 30; degree-days [°C d], 1 to 5000; cap [°C], threshold to 60, none unless given
 * @returns rate [1/d], 0 or more
 * @throws QuantityError outside those ranges
 * @source Kersting1999; Kim2012; each pest's line in `pestClocks`
 * @see checks/pests.json 008, 115
 * @example stageRate_per_d({ air_C: 30, base_C: 6.2, stage_Cd: 108.9 }) // 0.2185
 */
export function stageRate_per_d(air: {
  readonly air_C: number;
  readonly base_C: number;
  readonly stage_Cd: number;
  readonly cap_C?: number;
}): number {
  const { air_C, base_C, stage_Cd, cap_C } = air;
  within("air_C", air_C, -50, 60);
  within("base_C", base_C, -10, 30);
  within("stage_Cd", stage_Cd, 1, 5000);
  if (cap_C !== undefined) {
    within("cap_C", cap_C, -10, 60);
    within("cap_C", cap_C, base_C, 60);
  }
  return Math.max(0, Math.min(air_C, cap_C ?? Number.POSITIVE_INFINITY) - base_C) / stage_Cd;
}

/**
 * The steady temperature at which a stage takes so long.
 *
 * T = T0 + K / D
 *
 * @param stage threshold [°C], -10 to 30; degree-days [°C d], 1 to 5000; duration [d], 0.1 to 1000
 * @returns temperature [°C]
 * @throws QuantityError outside those ranges
 * @source Kim2012
 * @see checks/pests.json 011
 * @example temperatureOfDuration_C({ base_C: 3, stage_Cd: 111.1, duration_d: 6.03 }) // 21.4
 */
export function temperatureOfDuration_C(stage: {
  readonly base_C: number;
  readonly stage_Cd: number;
  readonly duration_d: number;
}): number {
  within("base_C", stage.base_C, -10, 30);
  within("stage_Cd", stage.stage_Cd, 1, 5000);
  within("duration_d", stage.duration_d, 0.1, 1000);
  return stage.base_C + stage.stage_Cd / stage.duration_d;
}

/**
 * Threshold and degree-days from durations at several steady temperatures.
 *
 * Least squares of 1/D on T; T0 = −a/b, K = 1/b. Misleads through a plateau: a table is better interpolated.
 *
 * @param trials temperatures [°C], -10 to 50, and durations [d], 0.1 to 1000, as many of each, 2 to 100
 * @returns threshold [°C] and degree-days [°C d]
 * @throws QuantityError outside those ranges, and where warmth does not speed it
 * @source Assiut3738; Katayama1997
 * @see checks/pests.json 015, 021
 * @example thermalConstants({ temperatures_C: [25, 30], durations_d: [11.85, 8.84] }).base_C // 10.32
 */
export function thermalConstants(trials: {
  readonly temperatures_C: readonly number[];
  readonly durations_d: readonly number[];
}): { readonly base_C: number; readonly stage_Cd: number } {
  const { temperatures_C, durations_d } = trials;
  within("temperatures_n", temperatures_C.length, 2, 100);
  within("durations_n", durations_d.length, temperatures_C.length, temperatures_C.length);
  for (const each of temperatures_C) within("temperatures_C", each, -10, 50);
  for (const each of durations_d) within("durations_d", each, 0.1, 1000);
  const n = temperatures_C.length;
  const middle = temperatures_C.reduce((sum, each) => sum + each, 0) / n;
  const rate = durations_d.reduce((sum, each) => sum + 1 / each, 0) / n;
  let [across, along] = [0, 0];
  temperatures_C.forEach((each, i) => {
    across += (each - middle) * (1 / (durations_d[i] as number) - rate);
    along += (each - middle) ** 2;
  });
  const slope = across / along;
  // Where warmth does not speed it there is no threshold.
  within("slope_per_Cd", along > 0 ? slope : 0, 1e-6, 10);
  return { base_C: middle - rate / slope, stage_Cd: 1 / slope };
}

/**
 * Mean degree-days above a known threshold over several trials.
 *
 * @param trials temperatures [°C] and durations [d] as for thermalConstants, 1 to 100 of each; threshold [°C], -10 to 30
 * @returns degree-days [°C d]
 * @throws QuantityError outside those ranges
 * @source Silva1998
 * @see checks/pests.json 029
 * @example meanStageSum_Cd({ temperatures_C: [15, 25], durations_d: [13.3, 4.2], base_C: 10 }) // 64.8
 */
export function meanStageSum_Cd(trials: {
  readonly temperatures_C: readonly number[];
  readonly durations_d: readonly number[];
  readonly base_C: number;
}): number {
  const { temperatures_C, durations_d, base_C } = trials;
  within("temperatures_n", temperatures_C.length, 1, 100);
  within("durations_n", durations_d.length, temperatures_C.length, temperatures_C.length);
  within("base_C", base_C, -10, 30);
  return (
    temperatures_C.reduce((sum, air_C, i) => {
      within("temperatures_C", air_C, -10, 50);
      within("durations_d", durations_d[i] as number, 0.1, 1000);
      return sum + (durations_d[i] as number) * Math.max(0, air_C - base_C);
    }, 0) / temperatures_C.length
  );
}

/**
 * Duration of a stage from a table, interpolated in the rate.
 *
 * 1/D lies on a straight line between tabulated temperatures; outside them the end holds.
 *
 * @param table temperature [°C], -50 to 60; tabulated temperatures, rising [°C], -10 to 50; durations [d], 0.1 to 1000; as many of each, 2 to 50
 * @returns duration [d]
 * @throws QuantityError outside those ranges
 * @source Bradysia1998
 * @example tabledDuration_d({ air_C: 18, temperatures_C: [15, 20], durations_d: [7, 4.4] }) // 5.17
 */
export function tabledDuration_d(table: {
  readonly air_C: number;
  readonly temperatures_C: readonly number[];
  readonly durations_d: readonly number[];
}): number {
  const { air_C, temperatures_C, durations_d } = table;
  within("air_C", air_C, -50, 60);
  within("temperatures_n", temperatures_C.length, 2, 50);
  within("durations_n", durations_d.length, temperatures_C.length, temperatures_C.length);
  for (const each of temperatures_C) within("temperatures_C", each, -10, 50);
  for (const each of durations_d) within("durations_d", each, 0.1, 1000);
  return (
    1 /
    between(
      air_C,
      temperatures_C,
      durations_d.map((each) => 1 / each),
    )
  );
}

/**
 * A value on the straight lines between tabulated points, held outside them. The caller has looked at the numbers.
 *
 * @param at where
 * @param points where the table stands, rising
 * @param values what it says there
 * @returns the value
 * @source our assumption
 */
export function between(at: number, points: readonly number[], values: readonly number[]): number {
  const last = points.length - 1;
  if (at <= (points[0] as number)) return values[0] as number;
  if (at >= (points[last] as number)) return values[last] as number;
  let i = 1;
  while ((points[i] as number) < at) i++;
  const [from, to] = [points[i - 1] as number, points[i] as number];
  const share = (at - from) / (to - from);
  return (values[i - 1] as number) * (1 - share) + (values[i] as number) * share;
}

/**
 * Whether powdery mildew of pepper can germinate at a temperature.
 *
 * @param leaf_C temperature of the leaf [°C], -50 to 60
 * @returns yes between 10 and 37 °C
 * @throws QuantityError outside that range
 * @source Elad2007
 * @see checks/pests.json 111
 * @example mildewGerminates(20) // true
 */
export function mildewGerminates(leaf_C: number): boolean {
  within("leaf_C", leaf_C, -50, 60);
  return leaf_C >= 10 && leaf_C <= 37;
}

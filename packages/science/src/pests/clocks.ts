import { within } from "../errors/index.ts";
import { between } from "./development.ts";

/** The pests for which somebody printed a clock. */
export const pestNames = [
  "green peach aphid",
  "melon aphid",
  "foxglove aphid",
  "spider mite",
  "broad mite",
  "thrips",
  "greenhouse whitefly",
  "sweet potato whitefly",
  "fungus gnat",
] as const;
export type PestName = (typeof pestNames)[number];

/** Values against temperature, interpolated on straight lines, held outside. */
export type Curve = { readonly temperatures_C: readonly number[]; readonly values: readonly number[] };

/** Stages of a pest that hides: what each lasts, how many come through, what its females lay. */
export type HiddenStages = {
  /** rate of each stage [1/d] by temperature: egg, young, pupa */
  readonly egg: Curve;
  readonly young: Curve;
  readonly pupa: Curve;
  readonly hatch: Curve;
  readonly youngSurvive_frac: number;
  readonly emergence: Curve;
  /** end of an adult's life [1/d] by temperature */
  readonly dying: Curve;
  /** eggs of a female by temperature */
  readonly eggs: Curve;
  readonly female_frac: number;
};

export type PestClock = {
  readonly name: PestName;
  /** rate of increase [1/d] by temperature */
  readonly rate: Curve;
  /** birth to first birth, as a rate [1/d] by temperature */
  readonly firstBirth: Curve;
  /** development that stays out of sight before anything can be declared, as a rate [1/d] by temperature */
  readonly hidden: Curve;
  readonly stages?: HiddenStages;
  readonly source: string;
};

const of = (temperatures_C: readonly number[], values: readonly number[]): Curve => ({
  temperatures_C,
  values,
});
/** Durations, kept as rates: these lie on straight lines. */
const lasting = (temperatures_C: readonly number[], durations_d: readonly number[]): Curve =>
  of(
    temperatures_C,
    durations_d.map((each) => 1 / each),
  );
/** A straight line of rate above a threshold, up to a cap. */
const line = (base_C: number, stage_Cd: number, cap_C: number): Curve =>
  of([base_C, cap_C], [0, (cap_C - base_C) / stage_Cd]);

const aphidBirth = lasting([15, 18, 20, 22, 25, 30], [10, 8.1, 7.2, 6.5, 5.6, 5.2]);
const aphidHidden = lasting([15, 25], [7, 7]);
const gnatTemperatures = [10, 15, 20, 25, 28];

const gnat: HiddenStages = {
  egg: lasting(gnatTemperatures, [12.1, 7, 4.4, 3.4, 3.2]),
  young: lasting(gnatTemperatures, [38.3, 26.5, 13.4, 13.2, 12.7]),
  pupa: lasting(gnatTemperatures, [10.4, 7.1, 4.4, 3.3, 3.2]),
  hatch: of(gnatTemperatures, [0.76, 0.8, 0.82, 0.61, 0.55]),
  youngSurvive_frac: 1,
  emergence: of(gnatTemperatures, [0.61, 0.75, 0.77, 0.43, 0.65]),
  dying: lasting(gnatTemperatures, [10.4, 7, 4.2, 3, 3.3]),
  eggs: of(gnatTemperatures, [107, 130, 132, 87, 83]),
  female_frac: 1 / 3,
};
/** Shares of the sum are ours but for the egg (123.3 of 381.1); eggs and survival are set so that it grows about 0.05 a day at 20 °C. */
const whiteflyStages = (base_C: number, all_Cd: number, cap_C: number): HiddenStages => ({
  egg: line(base_C, all_Cd * 0.32, cap_C),
  young: line(base_C, all_Cd * 0.46, cap_C),
  pupa: line(base_C, all_Cd * 0.22, cap_C),
  hatch: of([15, 30], [0.9, 0.9]),
  youngSurvive_frac: 0.6,
  emergence: of([15, 30], [0.85, 0.85]),
  dying: of([10, 20, 30], [1 / 30, 1 / 20, 1 / 12]),
  eggs: of([10, 30], [45, 45]),
  female_frac: 0.5,
});

/**
 * Rates between printed values are interpolated by us; 0 at the threshold is ours.
 * @source each pest's own; values between printed ones are our assumption
 */
export const pestClocks: Readonly<Record<PestName, PestClock>> = {
  "green peach aphid": {
    name: "green peach aphid",
    rate: of([3, 15, 18, 20, 22, 25, 30, 32.5], [0, 0.18, 0.23, 0.27, 0.3, 0.34, 0.2, -0.1]),
    firstBirth: aphidBirth,
    hidden: aphidHidden,
    source: "Kim2012; Satar2008",
  },
  "melon aphid": {
    name: "melon aphid",
    rate: of([6.2, 15, 18, 20, 22, 25, 30, 35], [0, 0.177, 0.24, 0.28, 0.33, 0.4, 0.413, -0.1]),
    firstBirth: aphidBirth,
    hidden: aphidHidden,
    source: "Kersting1999",
  },
  "foxglove aphid": {
    name: "foxglove aphid",
    rate: of([3, 15, 18, 20, 22.5, 25, 27.5, 30], [0, 0.18, 0.22, 0.25, 0.27, 0.15, 0, -0.1]),
    firstBirth: aphidBirth,
    hidden: aphidHidden,
    source: "our assumption but for 22.5 °C",
  },
  "spider mite": {
    name: "spider mite",
    rate: of([10, 15, 18, 20, 22, 25, 30, 35], [0, 0.075, 0.12, 0.15, 0.18, 0.215, 0.29, 0.25]),
    firstBirth: lasting([15, 18, 20, 22, 25, 30], [33, 21, 17.5, 14.5, 12, 9.5]),
    hidden: aphidHidden,
    source: "Assiut3738; Herbert1981 but for 21 °C",
  },
  "broad mite": {
    name: "broad mite",
    rate: of([10, 15, 20, 25, 30, 36], [0, 0.1, 0.2, 0.3, 0.36, 0]),
    firstBirth: of([10, 15, 20, 25, 30], [0.01, 1 / 14.2, 1 / 7.6, 1 / 5.4, 1 / 4.3]),
    hidden: lasting([15, 25], [10, 10]),
    source: "Silva1998; rates are our assumption",
  },
  thrips: {
    name: "thrips",
    rate: of([9.5, 15, 18, 20, 22, 25, 30, 35], [0, 0.055, 0.083, 0.098, 0.121, 0.155, 0.198, 0.1]),
    firstBirth: lasting([15, 18, 20, 22, 25, 30], [37, 25.5, 21.5, 17.5, 14, 11]),
    hidden: line(9.5, 194 * 0.65, 31),
    source: "Katayama1997",
  },
  "greenhouse whitefly": {
    name: "greenhouse whitefly",
    rate: of([8.3, 15, 19, 22, 25, 30], [0, 0.028, 0.044, 0.061, 0.07, 0.05]),
    firstBirth: line(8.3, 381 * 1.1, 28),
    hidden: line(8.3, 381 * 0.78, 28),
    stages: whiteflyStages(8.3, 381, 28),
    source: "Osborne1982; eggs and survival are our assumption",
  },
  "sweet potato whitefly": {
    name: "sweet potato whitefly",
    rate: of([12.3, 20, 25, 30], [0, 0.045, 0.08, 0.11]),
    firstBirth: line(12.3, 313 * 1.1, 32),
    hidden: line(12.3, 313 * 0.78, 32),
    stages: whiteflyStages(12.3, 313, 32),
    source: "our assumption but for its degree-days",
  },
  "fungus gnat": {
    name: "fungus gnat",
    rate: of([8, 10, 15, 18, 20, 22, 25, 28], [0, 0.03, 0.074, 0.11, 0.136, 0.12, 0.094, 0.1]),
    firstBirth: lasting(gnatTemperatures, [62, 41.6, 22.7, 20.4, 19.6]),
    hidden: lasting(gnatTemperatures, [60.8, 40.6, 22.2, 19.9, 19.1]),
    stages: gnat,
    source: "Bradysia1998",
  },
};

/**
 * A clock's value at a temperature.
 *
 * @param curve temperatures, rising, and values
 * @param air_C temperature [°C]
 * @returns the value
 * @source our assumption: straight lines between tabulated points
 */
export const at = (curve: Curve, air_C: number): number => between(air_C, curve.temperatures_C, curve.values);

/**
 * What a pest's clock says at a steady temperature: how fast it grows a day, and the times to its first birth and out of hiding.
 *
 * @param asked pest; temperature [°C], -10 to 50 (of the medium for gnats)
 * @returns rate of increase [1/d]; birth to first birth and hidden time [d], 1000 where it stands still
 * @throws QuantityError outside that range
 * @source Kim2012; Kersting1999; Assiut3738; Silva1998; Katayama1997; Osborne1982; Bradysia1998; values between are our assumption
 * @example pestPace({ pest: "green peach aphid", air_C: 20 }).rate_per_d // 0.27
 */
export function pestPace(asked: { readonly pest: PestName; readonly air_C: number }): {
  readonly rate_per_d: number;
  readonly firstBirth_d: number;
  readonly hidden_d: number;
} {
  within("air_C", asked.air_C, -10, 50);
  const clock = pestClocks[asked.pest];
  const lasts = (curve: Curve): number => Math.min(1000, 1 / Math.max(0.001, at(curve, asked.air_C)));
  return {
    rate_per_d: at(clock.rate, asked.air_C),
    firstBirth_d: lasts(clock.firstBirth),
    hidden_d: lasts(clock.hidden),
  };
}

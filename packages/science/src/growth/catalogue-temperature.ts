import { byName, describeField, single } from "../catalogue/describe.ts";
import { assumed, choice, number, numbers, optional } from "../catalogue/input.ts";
import type { ScienceFunction, ScienceInput } from "../catalogue/types.ts";
import { temperatureAssumptions } from "./assumptions-temperature.ts";
import {
  cutoffs,
  daysForSum_d,
  degreeDayMethods,
  degreeDays_Cd,
  degreeDaysHourly_Cd,
  degreeDaysSum_Cd,
  developmentClock,
  fitThermalTime,
  growthAssumptions,
  meanTemperatureOfSum_C,
  saturatingRate_per_d,
  shortestTime_d,
  speciesGroups,
  sumOnOtherBase_Cd,
  thermalRate_Cd_per_d,
  thermalRate_frac,
  thermalTimeOfDay,
} from "./index.ts";

const describe = describeField("growth");

const clock: readonly ScienceInput[] = [
  number("base_C", -10, 40, 10),
  number("optimumLow_C", -5, 50, 28),
  number("optimumHigh_C", -5, 55, 35),
  number("max_C", 0, 70, 55),
];
const thresholds: readonly ScienceInput[] = [
  number("lower_C", -10, 40, 10),
  optional(number("upper_C", -10, 60, 28)),
  optional(choice("method", degreeDayMethods, "single sine")),
  optional(choice("cutoff", cutoffs, "horizontal")),
];
export const temperatureSettings = assumed(
  growthAssumptions,
  ...temperatureAssumptions.map(({ key }) => key),
);

export const temperatureCatalogue: readonly ScienceFunction[] = [
  describe("degreeDays_Cd", byName(degreeDays_Cd), {
    what: "Degree-days of one day from its lowest and highest temperature.",
    source: "Zalom1983; McMasterWilhelm1997 for the averages, MetEireann for the three branches",
    inputs: [
      number("airMin_C", -40, 60, 12),
      number("airMax_C", -40, 60, 26),
      optional(number("airMinNext_C", -40, 60, 13)),
      ...thresholds,
    ],
  }),
  describe("degreeDaysSum_Cd", byName(degreeDaysSum_Cd), {
    what: "Degree-days summed over consecutive days.",
    source: "Zalom1983",
    inputs: [numbers("airMin_C", -40, 60, [12, 13]), numbers("airMax_C", -40, 60, [26, 24]), ...thresholds],
  }),
  describe("thermalRate_frac", byName(thermalRate_frac), {
    what: "Rate of development at a temperature, as a share of the fastest: the linear function of four points.",
    source: "DSSAT48",
    inputs: [number("air_C", -40, 60, 22), ...clock],
  }),
  describe("thermalRate_Cd_per_d", byName(thermalRate_Cd_per_d), {
    what: "Degree-days that a day at a constant temperature brings on a clock.",
    source: "DSSAT48",
    inputs: [number("air_C", -40, 60, 22), ...clock],
  }),
  describe("degreeDaysHourly_Cd", byName(degreeDaysHourly_Cd), {
    what: "Degree-days of logged hours on a clock: the hourly trapezoid.",
    source: "DSSAT48",
    inputs: [numbers("air_C", -40, 60, [18, 24]), optional(number("length_h", 0.01, 24, 12)), ...clock],
  }),
  describe("saturatingRate_per_d", byName(saturatingRate_per_d), {
    what: "Rate of development that bends towards a greatest rate as it gets warmer.",
    source: "Dickson2024, form inferred",
    inputs: [
      number("air_C", -40, 60, 25),
      number("min_C", -10, 30, 9.3),
      number("rateMax_per_d", 0.0001, 1, 0.0488),
      number("curvature_per_C", 0.001, 2, 0.1),
    ],
  }),
  describe("shortestTime_d", single(shortestTime_d), {
    what: "Shortest time that a greatest rate allows.",
    source: "Dickson2024",
    inputs: [number("rateMax_per_d", 0.0001, 1, 0.0488)],
  }),
  describe("daysForSum_d", byName(daysForSum_d), {
    what: "Days that a thermal sum takes at a constant temperature.",
    source: "DSSAT48",
    inputs: [
      number("thermalTime_Cd", 0, 10_000, 460),
      number("air_C", -40, 60, 22),
      number("base_C", -10, 40, 10),
      optional(number("upper_C", -10, 60, 28)),
    ],
  }),
  describe("meanTemperatureOfSum_C", byName(meanTemperatureOfSum_C), {
    what: "Mean temperature at which a thermal sum fell in so many days.",
    source: "Homma2022",
    inputs: [
      number("thermalTime_Cd", 0, 10_000, 156),
      number("days_d", 0.1, 1000, 7),
      number("base_C", -10, 40, 0),
    ],
  }),
  describe("sumOnOtherBase_Cd", byName(sumOnOtherBase_Cd), {
    what: "A thermal sum carried over to another base, so that both take the same days at one temperature.",
    source: "our assumption; arithmetic of the thermal sum",
    inputs: [
      number("thermalTime_Cd", 0, 10_000, 750),
      number("base_C", -10, 40, 10),
      number("otherBase_C", -10, 40, 13),
      number("air_C", -40, 60, 25),
    ],
  }),
  describe("developmentClock", byName(developmentClock), {
    what: "Clock of development of a species group: the temperatures between which its thermal time runs.",
    source: "our assumption between published values that disagree widely; maximum DSSAT48",
    inputs: [choice("species", speciesGroups, "annuum"), ...temperatureSettings],
    fields: ["base_C", "optimumLow_C", "optimumHigh_C", "max_C"],
  }),
  describe("thermalTimeOfDay", byName(thermalTimeOfDay), {
    what: "Thermal time of a day of a species group, from logged temperatures where there are some, else from the lowest and highest.",
    source: "DSSAT48 for the trapezoid, Zalom1983 for the sine",
    inputs: [
      choice("species", speciesGroups, "annuum"),
      number("airMin_C", -40, 60, 18),
      number("airMax_C", -40, 60, 26),
      optional(numbers("air_C", -40, 60, [18, 20, 26, 22])),
      ...temperatureSettings,
    ],
    fields: ["thermalTime_Cd", "method", "lower_C", "upper_C", "cutoff"],
  }),
  describe("fitThermalTime", byName(fitThermalTime), {
    what: "Base temperature and thermal sum of a phase from the grower's own batches.",
    source: "our assumption; linear regression of rate on temperature",
    inputs: [
      numbers("air_C", -10, 50, [16, 18, 20, 24]),
      numbers("days_d", 0.5, 1000, [60, 45, 37, 26]),
      number("base_C", -10, 30, 10),
      number("thermalTime_Cd", 10, 5000, 420),
    ],
    fields: ["base_C", "thermalTime_Cd", "fittedBase_C", "fittedThermalTime_Cd"],
  }),
];

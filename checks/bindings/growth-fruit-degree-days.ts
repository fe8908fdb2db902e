import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import * as growth from "@sillwood/science/growth";
import * as units from "@sillwood/science/units";
import { type Alias, alias, type Rule, rule, ruleOn } from "../src/rules.ts";
import { readTable, tablePath } from "../src/tables.ts";

/** Sums in Fahrenheit are larger by the size of the degree. */
const fahrenheitDegrees_per_C = 9 / 5;

type Day = {
  readonly tmin_C: number;
  readonly tmax_C: number;
  readonly tmin_next_day_C: number;
  readonly lower_C: number;
  readonly upper_C: number;
  readonly cutoff: growth.Cutoff;
};

/** A day by one method: with what the row holds of an upper threshold, a cutoff and the next day. */
function dayRules(gives: string | RegExp, method: growth.DegreeDayMethod): Rule[] {
  const always = ["tmin_C", "tmax_C", "lower_C"] as const;
  const next = method.startsWith("double") ? (["tmin_next_day_C"] as const) : [];
  const shaped = /sine|triangle/.test(method);
  const more = shaped ? ([[], ["upper_C"], ["upper_C", "cutoff"]] as const) : ([[], ["upper_C"]] as const);
  return (method === "three branches" ? [[]] : more).map((has) =>
    ruleOn<Day>(gives, [...always, ...next, ...has], (v) =>
      growth.degreeDays_Cd({
        airMin_C: v.tmin_C,
        airMax_C: v.tmax_C,
        airMinNext_C: v.tmin_next_day_C ?? v.tmin_C,
        lower_C: v.lower_C,
        ...("upper_C" in v ? { upper_C: v.upper_C } : {}),
        ...("cutoff" in v ? { cutoff: v.cutoff } : {}),
        method,
      }),
    ),
  );
}

const shapes = ["single sine", "double sine", "single triangle", "double triangle"] as const;
const keyOf = (method: string): string => method.replace(" ", "_");

const shapeRules = shapes.flatMap((method) => {
  const celsius = `${keyOf(method)}_degC_day`;
  return [
    ...dayRules(celsius, method),
    rule(`${keyOf(method)}_degF_day`, [celsius], (v) => fahrenheitDegrees_per_C * (v[celsius] as number)),
  ];
});

type Series = {
  readonly daily_tmin_C: readonly number[];
  readonly daily_tmax_C: readonly number[];
  readonly lower_C: number;
  readonly upper_C: number;
  readonly what: string;
};

/** The daily values that another row of the table prints. */
const printedElsewhere = (key: string) => (v: { readonly daily_values_from_row: string }) =>
  readTable(tablePath("growth-fruit")).find(({ id }) => id === v.daily_values_from_row)?.inputs[key];

const seriesRules = [
  ruleOn("daily_tmin_C", ["daily_values_from_row"], printedElsewhere("daily_tmin_C")),
  ruleOn("daily_tmax_C", ["daily_values_from_row"], printedElsewhere("daily_tmax_C")),
  // Which method a printed total is of stands in the row's title.
  ruleOn<Series>("annual_degC_day", ["daily_tmin_C", "daily_tmax_C", "lower_C", "upper_C", "what"], (v) => {
    const method = shapes.find((each) => v.what.includes(keyOf(each)));
    return (
      method &&
      growth.degreeDaysSum_Cd({
        airMin_C: v.daily_tmin_C,
        airMax_C: v.daily_tmax_C,
        lower_C: v.lower_C,
        upper_C: v.upper_C,
        method,
      })
    );
  }),
];

type Place = { readonly file: string; readonly location: string; readonly year: number };

/** Days of a place and year, in the months asked for, out of the weather record that the package carries. */
function recorded({ file, location, year }: Place, fromMonth = 1, toMonth = 12) {
  const code = createRequire(import.meta.url).resolve("vega-datasets");
  const root = code.slice(0, code.lastIndexOf("vega-datasets/build") + "vega-datasets".length);
  const [head = "", ...lines] = readFileSync(`${root}/data/${file}`, "utf8").trim().split("\n");
  const column = (name: string): number => head.split(",").indexOf(name);
  const [place, date, high, low] = ["location", "date", "temp_max", "temp_min"].map(column) as [
    number,
    number,
    number,
    number,
  ];
  const days = lines
    .map((line) => line.split(","))
    .filter((cells) => {
      const [of = "", month = ""] = (cells[date] ?? "").split("-");
      return (
        (place < 0 || cells[place] === location) &&
        Number(of) === year &&
        Number(month) >= fromMonth &&
        Number(month) <= toMonth
      );
    });
  return {
    airMin_C: days.map((cells) => Number(cells[low])),
    airMax_C: days.map((cells) => Number(cells[high])),
  };
}

const placeNeeds = ["file", "location", "year"] as const;

const weatherRules = [
  ...shapes.map((method) =>
    ruleOn<Place & { lower_C: number; upper_C: number }>(
      `annual_${keyOf(method)}_degC_day`,
      [...placeNeeds, "lower_C", "upper_C"],
      (v) => growth.degreeDaysSum_Cd({ ...recorded(v), lower_C: v.lower_C, upper_C: v.upper_C, method }),
    ),
  ),
  ...shapes.map((method) =>
    // The thresholds of the summer total stand in its name.
    ruleOn<Place>(`may_to_sep_${keyOf(method)}_10_28_degC_day`, placeNeeds, (v) =>
      growth.degreeDaysSum_Cd({ ...recorded(v, 5, 9), lower_C: 10, upper_C: 28, method }),
    ),
  ),
  ruleOn<Place & { lower_C: number; upper_C: number; annual_average_method: string }>(
    "annual_average_degC_day",
    [...placeNeeds, "lower_C", "upper_C", "annual_average_method"],
    (v) =>
      growth.degreeDaysSum_Cd({
        ...recorded(v),
        lower_C: v.lower_C,
        ...(/no upper/.test(v.annual_average_method) ? {} : { upper_C: v.upper_C }),
        method: /method 2/.test(v.annual_average_method) ? "average, ends clipped" : "average, mean clipped",
      }),
  ),
];

const fahrenheit = (value: number): number => units.toCanonical({ value, kind: "temperature", unit: "°F" });

export const degreeDayAliases: readonly Alias[] = [
  alias("tmin_C", "tmin_F", fahrenheit),
  alias("tmax_C", "tmax_F", fahrenheit),
  alias("tmin_next_day_C", "tmin_next_day_F", fahrenheit),
  alias("lower_C", "lower_F", fahrenheit),
  alias("upper_C", "upper_F", fahrenheit),
  alias("lower_C", "base_F", fahrenheit),
  alias("lower_C", /^(base_C|Tb_C)$/),
];

export const degreeDayRules: readonly Rule[] = [
  ...shapeRules,
  ...dayRules(/^(average_)?method1_degC_day$/, "average, mean clipped"),
  ...dayRules(/^(average_)?method2_degC_day$/, "average, ends clipped"),
  ...dayRules("degC_day", "three branches"),
  ...seriesRules,
  ...weatherRules,
];

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as air from "../air/index.ts";
import * as chance from "../chance/index.ts";
import { QuantityError } from "../errors/index.ts";
import * as feed from "../feed/index.ts";
import * as fruit from "../fruit/index.ts";
import * as growth from "../growth/index.ts";
import * as light from "../light/index.ts";
import * as medium from "../medium/index.ts";
import * as pests from "../pests/index.ts";
import * as shape from "../shape/index.ts";
import * as sun from "../sun/index.ts";
import * as units from "../units/index.ts";
import * as water from "../water/index.ts";
import { catalogue, type InputValue, type ScienceFunction } from "./index.ts";

const fields: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  air,
  chance,
  feed,
  fruit,
  growth,
  light,
  medium,
  pests,
  shape,
  sun,
  units,
  water,
};

/** Public functions that cannot be run on plain values, each with the reason. */
const exempt: Readonly<Record<string, string>> = {
  seededGenerator: "gives a stream of chance, not a number",
  blockBootstrapIndices: "takes a stream of chance",
  groupBootstrapMean: "takes a stream of chance",
  paneView: "takes and gives a structure worked out once a place; windowLight asks it with plain values",
  paneFactors: "reads such a structure",
  paneLight: "reads such structures",
  windowDay: "reads such structures; windowLight asks it with plain values",
  overcastShare_frac: "reads views of panes",
  openSkyViews: "gives views like those of panes",
  windowBand: "reads views of panes",
  errorBudget: "takes named terms; combinedError is listed",
  windowErrors: "gives named terms",
  lampsLevel_umol_m2_s: "takes a list of lamps; each shape is listed",
  lampsPlanes: "takes a list of lamps",
  lampUtilisation_frac: "takes a list of lamps",
  mapRatio: "takes a list of readings with their places",
  mapError: "takes a list of readings with their places",
  windowDays_mol_m2_d: "reads such structures, for many days",
  referenceEtDailyArray: "fills an array of the caller's; the scalar twin is listed",
  referenceEtOfHours: "takes a day of station hours; its hour is listed as referenceEtHourly",
  fitThermalTimeRange: "takes a stream of chance",
  thermalPaceOf: "gives a function for many temperatures; one temperature is listed as thermalRate_Cd_per_d",
  relativeGrowthOf: "gives a function for many days; one day is listed as expectedRelativeGrowth_per_d",
  bestLook: "takes lists of signs; the what-is-wrong desk asks it",
  rankCauses: "takes lists of signs; the what-is-wrong desk asks it",
  signShare_frac: "takes a table of confirmed cases",
  clearancePath: "reads the response of a pest in one air and a list of acts",
  hiddenFloor_d: "reads such a response",
  pestResponse: "gives a structure shared by all plants in one air; pestPace is listed",
  carvedHull: "takes photos as masks",
  crowdedShare_frac: "takes a plant",
  crownLight: "takes a plant",
  leavesToPluck: "takes a plant",
  meanLight: "takes rays of light",
  skyRays: "gives rays of light",
  budsBelow: "takes a plant",
  cutLaw: "takes a plant",
  keptRows: "takes a plant",
  topmostOnly: "takes a plant",
  fitsOutline: "takes an outline",
  formOutline: "gives an outline",
  chancesBelow: "takes a plant",
  firstDirection: "takes a plant",
  mayPlan: "takes a plant",
  planBench: "takes a plant",
  planTerms: "takes a plant",
  planValue: "takes terms by name",
  takenBy: "takes a plant",
  additivePlan: "takes a plant",
  candidateCuts: "takes a plant",
  plansAlike_frac: "takes a plant",
  planSearch: "takes a plant",
  playedPlans: "takes a plant",
  bestPotAngle: "takes a plant",
  shootGrower: "takes a plant",
  sproutsAfter: "takes a plant",
  armsOf: "takes a plant",
  internode_mm: "takes a plant",
  plantTree: "gives a plant",
  sideOf_deg: "takes a plant",
  stemDirection: "takes a plant",
  bestCuts: "takes a tree as rows",
  preferredDirection: "takes a direction",
  azimuthOf_deg: "takes a direction",
  weeksAhead: "takes a plant",
  curveFromTwoFills: "takes two pots with their fills; one is listed as alphaFromAir_per_cm",
  curveOf: "takes a row of the table of media",
  curveEnsemble: "takes a row of the table of media",
  survivalDifference: "takes a list of words",
  conductivityOf_mS_cm: "takes masses by species",
  keepByBranch: "takes a list of branches",
  branchSag: "takes a branch and a list of weights; its parts are listed",
  fruitsBorne_n: "takes a branch; its parts are listed",
  readLabel: "takes a whole label; oxides and liquids are listed each",
  amountOf: "takes amounts by species",
  sumAmounts: "takes amounts by species",
  likelySlips: "takes the products of a mix",
  bestMix: "takes products, water, aims and limits",
  isMade: "tells two results apart",
  bestLinearMix: "takes products, water, aims and limits",
  shortfalls: "takes products, water, aims and limits",
  relaxedMix: "takes products, water, aims and limits",
  leastCost: "takes rows of numbers",
  clashes: "takes amounts by species",
  blendedWater: "takes two reports of water",
  closedIons: "gives ions, not a number",
  ionsOf: "takes amounts by species",
  waterAmounts_mg_L: "gives amounts by species",
  hardnessOf_mg_L: "takes a report of water",
  findUnit: "gives a row of the table of units",
};

const source = new URL("../", import.meta.url);

/** The pot filter acts on a state of its own, not on plain values; its working is shown by the watering craft. */
const ofFilter = new Set(
  readdirSync(new URL("water/", source))
    .filter((file) => file.startsWith("pot-filter") && !file.endsWith(".test.ts"))
    .flatMap((file) => [
      ...readFileSync(new URL(`water/${file}`, source), "utf8").matchAll(
        /^export (?:function|const) (\w+)/gm,
      ),
    ])
    .map(([, name]) => name),
);
const notFields = new Set(["errors", "catalogue"]);

const usualOf = (entry: ScienceFunction, withOptional: boolean): Record<string, InputValue> =>
  Object.fromEntries(
    entry.inputs.filter((input) => withOptional || !input.optional).map((input) => [input.name, input.usual]),
  );

describe("the catalogue", () => {
  it("knows every field there is", () => {
    const folders = readdirSync(source, { withFileTypes: true })
      .filter((each) => each.isDirectory() && !notFields.has(each.name))
      .map((each) => each.name);
    const listed = new Set(catalogue.map((entry) => entry.field));
    for (const folder of folders) expect(listed, folder).toContain(folder);
  });

  it("lists every public function of every field, once, and nothing else", () => {
    for (const [field, exports] of Object.entries(fields)) {
      const functions = Object.keys(exports).filter((name) => typeof exports[name] === "function");
      const listed = catalogue.filter((entry) => entry.field === field).map((entry) => entry.name);
      expect(listed.toSorted()).toEqual(
        functions.filter((name) => !(name in exempt) && !ofFilter.has(name)).toSorted(),
      );
    }
    const names = catalogue.map((entry) => entry.name);
    expect(new Set(names).size).toBe(names.length);
  });

  it("exempts only what exists", () => {
    for (const name of Object.keys(exempt)) {
      expect(Object.values(fields).some((exports) => typeof exports[name] === "function")).toBe(true);
    }
  });
});

const docblocks = new Map<string, { what: string; source: string; file: string }>();
for (const field of Object.keys(fields)) {
  for (const file of readdirSync(new URL(`${field}/`, source))) {
    if (file.endsWith(".test.ts")) continue;
    const text = readFileSync(new URL(`${field}/${file}`, source), "utf8");
    const pattern = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export function (\w+)/g;
    for (const [, doc = "", name = ""] of text.matchAll(pattern)) {
      const lines = doc.split("\n").map((line) => line.replace(/^\s*\*\s?/, "").trim());
      const cited = lines.find((line) => line.startsWith("@source "))?.slice("@source ".length) ?? "";
      docblocks.set(name, { what: lines.find((line) => line !== "") ?? "", source: cited, file: text });
    }
  }
}

describe.each(catalogue.map((entry) => [entry.name, entry] as const))("%s", (name, entry) => {
  it("says what its docstring says and cites what it cites", () => {
    expect(docblocks.get(name)).toMatchObject({ what: entry.what, source: entry.source });
  });

  it("takes what the function takes: no name twice, none that its file does not declare", () => {
    const names = entry.inputs.map((input) => input.name);
    expect(new Set(names).size).toBe(names.length);
    const assumptions = Object.values(fields[entry.field] ?? {})
      .flatMap((each) => (Array.isArray(each) ? (each as { key?: string }[]) : []))
      .map((each) => each.key);
    const declared = (input: string): boolean =>
      new RegExp(
        `readonly ${input}\\??:|function ${name}\\(${input}:|^  (readonly )?${input}\\??: (number|boolean)`,
        "m",
      ).test(docblocks.get(name)?.file ?? "") || assumptions.includes(input);
    // These take lists of parts or a belief, which the catalogue flattens under names of its own; or a pot and a curve of files beside.
    const flattened = ["momentMatch", "linearUpdate", "carryToOthers"];
    if (flattened.includes(name) || ["drainedPot", "tiltedAir_frac", "alphaFromAir_per_cm"].includes(name))
      return;
    expect(names.filter((input) => !declared(input))).toEqual([]);
  });

  it("cites a work of its field, or owns that it has none", () => {
    const works =
      Object.entries(fields[entry.field] ?? {}).find(([key]) => key.endsWith("Sources"))?.[1] ?? {};
    const owned = /^(our assumption|common practice, no source)/.test(entry.source);
    expect(owned || Object.keys(works as object).some((key) => entry.source.includes(key))).toBe(true);
  });

  it("gives finite numbers for usual values, with and without the optional ones, and as text", () => {
    for (const withOptional of [false, true]) {
      const usual = usualOf(entry, withOptional);
      const output = entry.evaluate(usual);
      expect(Object.keys(output)).toEqual(entry.result.fields.map((field) => field.name));
      for (const value of Object.values(output).flat()) {
        if (typeof value === "number") expect(Number.isFinite(value)).toBe(true);
        else expect(["string", "boolean"]).toContain(typeof value);
      }
      const asText = Object.entries(usual).map(([key, value]) => [key, String(value)]);
      expect(entry.evaluate(Object.fromEntries(asText))).toEqual(output);
    }
  });

  it("enforces the very range that it declares", () => {
    for (const input of entry.inputs) {
      if (input.kind !== "number" && input.kind !== "numbers") continue;
      const asInput = (value: number): InputValue =>
        input.kind === "number" ? value : [value, ...(input.usual as readonly number[]).slice(1)];
      const attempt = (value: number): unknown => {
        try {
          entry.evaluate({ ...usualOf(entry, true), [input.name]: asInput(value) });
          return undefined;
        } catch (error) {
          return error;
        }
      };
      for (const [end, outwards] of [
        [input.min, -1],
        [input.max, 1],
      ] as const) {
        if (!Number.isFinite(end)) continue;
        const step = Math.max(Math.abs(end) * 1e-6, 1e-9);
        // At the end itself only limits that follow from another input may object.
        const inside = attempt(end);
        if (inside !== undefined) {
          expect(inside, `${input.name} at ${end}: ${String(inside)}`).toBeInstanceOf(QuantityError);
          const { min, max } = inside as QuantityError;
          expect(
            min === input.min && max === input.max && (inside as QuantityError).name === input.name,
          ).toBe(false);
        }
        const outside = attempt(end + outwards * step) as QuantityError;
        expect(outside, `${input.name} past ${end}`).toBeInstanceOf(QuantityError);
        if (input.kind === "number") {
          expect([outside.name, outside.min, outside.max]).toEqual([input.name, input.min, input.max]);
        }
      }
      if (Number.isFinite(input.min))
        expect(attempt(Number.NaN), `${input.name} NaN`).toBeInstanceOf(QuantityError);
    }
  });
});

describe("reading values", () => {
  const entry = catalogue.find((each) => each.name === "vapourPressureFromMinimum_kPa");
  it("refuses what is missing, unknown or no number, by name", () => {
    expect(() => entry?.evaluate({ airMin_C: 10 })).toThrow("arid is missing; expected yes or no");
    expect(() => entry?.evaluate({ arid: true })).toThrow("airMin_C is missing; expected a number");
    expect(() => entry?.evaluate({ airMin_C: "warm", arid: true })).toThrow(
      "airMin_C is warm; expected a number in °C",
    );
    expect(() => entry?.evaluate({ airMin_C: "", arid: true })).toThrow(QuantityError);
    expect(() => entry?.evaluate({ airMin_C: 10, arid: "yes", wind: 2 })).toThrow(
      "takes no wind; it takes airMin_C, arid",
    );
  });
  it("reads yes and no", () => {
    expect(entry?.evaluate({ airMin_C: "10", arid: "yes" })).toEqual(
      entry?.evaluate({ airMin_C: 10, arid: true }),
    );
    expect(entry?.evaluate({ airMin_C: 10, arid: "no" })).not.toEqual(
      entry?.evaluate({ airMin_C: 10, arid: true }),
    );
  });
});

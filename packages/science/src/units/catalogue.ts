import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, optional, yesOrNo } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  canonicalUnit,
  decimalDegrees_deg,
  fromCanonical,
  radians_rad,
  toCanonical,
  unitTable,
} from "./index.ts";

const describe = describeField("units");
const kinds = [...new Set(unitTable.map((row) => row.kind))];
const unitSymbols = unitTable.flatMap((row) => [row.symbol, ...row.also]);

export const unitsCatalogue: readonly ScienceFunction[] = [
  describe("decimalDegrees_deg", byName(decimalDegrees_deg), {
    what: "Degrees, minutes and seconds of arc to decimal degrees.",
    source: "FAO56 eq. 22",
    inputs: [
      number("degrees_deg", 0, 180, 13),
      number("minutes_n", 0, 60, 44),
      optional(number("seconds_n", 0, 60, 0)),
      yesOrNo("northOrEast", true),
    ],
  }),
  describe("radians_rad", single(radians_rad), {
    what: "Degrees to radians.",
    source: "FAO56 eq. 22",
    inputs: [number("angle_deg", -360, 360, 45)],
  }),
  describe("toCanonical", byName(toCanonical), {
    what: "From the grower's unit to the one the engine keeps.",
    source: "NISTSP811",
    inputs: [
      number("value", -1e9, 1e9, 4),
      choice("kind", kinds, "volume"),
      choice("unit", unitSymbols, "US fl oz"),
    ],
  }),
  describe("fromCanonical", byName(fromCanonical), {
    what: "From the unit the engine keeps to the grower's.",
    source: "NISTSP811",
    inputs: [
      number("value", -1e9, 1e9, 4),
      choice("kind", kinds, "volume"),
      choice("unit", unitSymbols, "US fl oz"),
    ],
  }),
  describe("canonicalUnit", single(canonicalUnit), {
    what: "The symbol of the unit in which the engine keeps a kind of quantity.",
    source: "our assumption",
    inputs: [choice("kind", kinds, "volume")],
  }),
];

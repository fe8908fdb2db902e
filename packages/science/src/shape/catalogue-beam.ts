import { byName, describeField, single } from "../catalogue/describe.ts";
import { choice, number, optional } from "../catalogue/input.ts";
import type { ScienceFunction } from "../catalogue/types.ts";
import {
  bentShoot,
  evenSag_m,
  hangTest,
  loadSag,
  sectionMoment_m4,
  stiffnessError,
  taperedSag_m,
} from "./beam.ts";
import { woods } from "./bud-break.ts";
import { usualStiffness } from "./sag.ts";

const describe = describeField("shape");
const diameter = number("diameter_m", 0.0001, 1, 0.004);
const shoot = [number("length_m", 0.001, 5, 0.15), diameter, number("stiffness_Pa", 1e5, 1e11, 2e8)] as const;
const load = number("load_N", 0, 1000, 0.0981);

/** How shoots sag under fruit. */
export const beamCatalogue: readonly ScienceFunction[] = [
  describe("sectionMoment_m4", single(sectionMoment_m4), {
    what: "Second moment of area of a round section.",
    source: "EulerBernoulli",
    inputs: [diameter],
  }),
  describe("loadSag", byName(loadSag), {
    what: "Sag of the tip of a round shoot under a load somewhere on it, for small angles.",
    source: "EulerBernoulli",
    inputs: [load, ...shoot],
    fields: ["sag_m", "bending"],
  }),
  describe("evenSag_m", byName(evenSag_m), {
    what: "Sag of the tip of a round shoot under its own even weight, for small angles.",
    source: "EulerBernoulli",
    inputs: [number("loadPerLength_N_m", 0, 10_000, 0.654), ...shoot],
  }),
  describe("taperedSag_m", byName(taperedSag_m), {
    what: "Sag of the tip of a shoot that tapers evenly, under a load at the tip, for small angles.",
    source: "EulerBernoulli",
    inputs: [load, ...shoot, number("tipDiameter_m", 0.0001, 1, 0.002)],
  }),
  describe("bentShoot", single(bentShoot), {
    what: "How far the tip of a level shoot comes down under a load at its tip, however far it bends.",
    source: "Mattiasson1981",
    inputs: [number("bending", 0, 20, 1)],
    fields: ["drop_frac", "drawnIn_frac", "tip_rad"],
  }),
  describe("hangTest", byName(hangTest), {
    what: "Stiffness of a shoot from how far it sags under a weight that was hung on it: the hang test.",
    source: "EulerBernoulli",
    inputs: [
      number("hung_g", 0.1, 5000, 20),
      number("at_m", 0.01, 2, 0.12),
      number("sag_m", 0.0001, 1, 0.008),
      diameter,
      optional(number("gravity_m_s2", 9, 10, 9.80665)),
    ],
    fields: ["stiffness_Pa", "rigidity"],
  }),
  describe("stiffnessError", byName(stiffnessError), {
    what: "What a slip of the calliper does to a stiffness from a hang test.",
    source: "EulerBernoulli",
    inputs: [diameter, number("measured_m", 0.0001, 1, 0.0044)],
  }),
  describe("usualStiffness", single(usualStiffness), {
    what: "Stiffness to reckon with where nobody hung a weight on the shoot, by its wood.",
    source: "our assumption: no bending stiffness of green pepper stems was found",
    inputs: [choice("wood", woods, "green")],
    fields: ["stiffness_Pa", "factor"],
  }),
];

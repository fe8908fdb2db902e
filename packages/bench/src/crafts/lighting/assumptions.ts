import { dayLengthCaps, type LightStage, lightNeeds } from "@sillwood/science/light";
import type { Species } from "../../plants/batch-kinds.ts";
import { assumption, OURS, TRADE } from "../assumption.ts";
import type { Assumption } from "../craft.ts";

const LIGHT = "mol/m²d";

const aim = (key: string, what: string, stage: Exclude<LightStage, "outdoors">): Assumption => {
  const { aim_mol_m2_d, source } = lightNeeds[stage];
  return assumption(
    key,
    `daily light aimed at ${what}; least and most move with it`,
    aim_mol_m2_d,
    LIGHT,
    aim_mol_m2_d / 2,
    aim_mol_m2_d * 2,
    source,
    "length between leaves and share of flowers that set, over a few months",
  );
};
const cap = (key: string, what: string, value: number, source: string): Assumption =>
  assumption(
    key,
    `longest day, lamp and daylight together, ${what}`,
    value,
    "h",
    8,
    20,
    source,
    "flowers and leaves under a longer day",
  );

/** Values of the craft that are ours; each may be adjusted and is shown as assumed. */
export const lightingAssumptions: readonly Assumption[] = [
  aim("lightSeedling_mol_m2_d", "for seedlings", "seedling"),
  aim("lightTraining_mol_m2_d", "for plants in leaf", "training"),
  aim("lightFruiting_mol_m2_d", "from bud to fruit", "fruiting"),
  aim("lightHolding_mol_m2_d", "for plants at rest", "holding"),
  cap(
    "dayAnnuum_h",
    "for annuum and unknown species",
    dayLengthCaps.annuum.cap_h,
    dayLengthCaps.annuum.source,
  ),
  cap(
    "dayFrutescens_h",
    "for frutescens that shall flower",
    dayLengthCaps.frutescens.flowering_h,
    dayLengthCaps.frutescens.source,
  ),
  cap(
    "dayOthers_h",
    "for chinense, baccatum and pubescens",
    dayLengthCaps.chinense.cap_h,
    dayLengthCaps.chinense.source,
  ),
  assumption(
    "turnAfter_d",
    "days of light from one side after which a pot is turned",
    10,
    "d",
    3,
    60,
    TRADE,
    "watching how far shoots lean",
  ),
  assumption(
    "crownPerRim",
    "width of the crown over the width of the pot",
    1.4,
    "",
    0.6,
    4,
    OURS,
    "measuring the crown",
  ),
  assumption(
    "timerWorth_mol_m2_d",
    "change of daily light that is worth setting a timer anew",
    0.7,
    LIGHT,
    0.1,
    10,
    OURS,
    "your own judgement",
  ),
  assumption(
    "seatWorth_mol_m2_d",
    "gain of daily light that is worth moving a pot",
    1.5,
    LIGHT,
    0.2,
    20,
    OURS,
    "your own judgement",
  ),
];

export type AimKey =
  | "lightSeedling_mol_m2_d"
  | "lightTraining_mol_m2_d"
  | "lightFruiting_mol_m2_d"
  | "lightHolding_mol_m2_d";

export const capKeyOf = (species: Species): "dayAnnuum_h" | "dayFrutescens_h" | "dayOthers_h" =>
  species === "frutescens"
    ? "dayFrutescens_h"
    : species === "annuum" || species === "unknown"
      ? "dayAnnuum_h"
      : "dayOthers_h";

const byKey = new Map<string, Assumption>(lightingAssumptions.map((each) => [each.key, each]));

/** One of the craft's assumptions by its key. */
export const lightingAssumption = (key: string): Assumption => byKey.get(key) as Assumption;

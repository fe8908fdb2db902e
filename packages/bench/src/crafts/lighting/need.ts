import { dayLengthCap, type LightStage, lightNeeds } from "@sillwood/science/light";
import type { Species } from "../../plants/batch-kinds.ts";
import type { Read } from "../../readings.ts";
import type { Said } from "../../words/said.ts";
import type { Origin } from "../../working/working.ts";
import { type AimKey, capKeyOf } from "./assumptions.ts";

/** Need in figures, by the stage that growth or a look gives. */
export interface NeedFigures {
  readonly stage: NeedStage;
  readonly min_mol_m2_d: number;
  readonly aim_mol_m2_d: number;
  readonly max_mol_m2_d: number;
  readonly aimKey: AimKey;
  /** Where the stage comes from; the need itself is always a prior. */
  readonly stageOrigin: Origin;
  readonly stageFrom: Said;
}
export type NeedStage = Exclude<LightStage, "outdoors">;

/** First BBCH codes of leaf on the main stem, of buds, and of dying back. @source BBCH monograph (Meier 2001), from memory */
const LEAVES_bbch = 15;
const BUDS_bbch = 51;
const REST_bbch = 92;

/** What the light of a plant is for: 0 is how the house writes a plant at rest. */
const needStage = (stage_bbch: number): NeedStage =>
  stage_bbch < 1 || stage_bbch >= REST_bbch
    ? "holding"
    : stage_bbch < LEAVES_bbch
      ? "seedling"
      : stage_bbch < BUDS_bbch
        ? "training"
        : "fruiting";

const AIM_KEYS: Readonly<Record<NeedStage, AimKey>> = {
  seedling: "lightSeedling_mol_m2_d",
  training: "lightTraining_mol_m2_d",
  fruiting: "lightFruiting_mol_m2_d",
  holding: "lightHolding_mol_m2_d",
};

interface Asked {
  readonly read: Read;
  assumed(key: string): number;
}

/** The least a plant needs at its stage, mol m⁻² d⁻¹; numbers only, for steps. */
export function leastNeed_mol_m2_d(asked: Asked): number {
  const stage = needStage(asked.read("stage_bbch").value);
  const { min_mol_m2_d, aim_mol_m2_d } = lightNeeds[stage];
  return (asked.assumed(AIM_KEYS[stage]) / aim_mol_m2_d) * min_mol_m2_d;
}

export function needOf(asked: Asked): NeedFigures {
  const seen = asked.read("stage_bbch");
  const stage = needStage(seen.value);
  const published = lightNeeds[stage];
  const aimKey = AIM_KEYS[stage];
  const aim_mol_m2_d = asked.assumed(aimKey);
  const scale = aim_mol_m2_d / published.aim_mol_m2_d;
  return {
    stage,
    min_mol_m2_d: published.min_mol_m2_d * scale,
    aim_mol_m2_d,
    max_mol_m2_d: published.max_mol_m2_d * scale,
    aimKey,
    stageOrigin: seen.origin,
    stageFrom: seen.from,
  };
}

/** Longest day for a plant of this species at this stage, h, and the assumption it rests on. */
export function dayCap(
  species: Species,
  stage: NeedStage,
  assumed: (key: string) => number,
): { readonly cap_h: number; readonly key: string } {
  const key = capKeyOf(species);
  const known = species === "unknown" ? "annuum" : species;
  const flowersWanted = stage === "fruiting" || stage === "training";
  // Frutescens that shall not flower yet bears a longer day: the grower's number is for those that shall.
  const own = species === "frutescens" && !flowersWanted ? {} : { ownCap_h: assumed(key) };
  return { cap_h: dayLengthCap({ species: known, flowersWanted, ...own }).cap_h, key };
}

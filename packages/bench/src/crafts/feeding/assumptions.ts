import { DRY_MASS_FOR_WATER_g_L, feedStages, stageTargets } from "@sillwood/science/feed";
import { assumption, OURS, TRADE } from "../assumption.ts";
import type { Assumption } from "../craft.ts";

/** Stages as they stand in the names of their aims. */
const stageNames = {
  seedling: "Seedling",
  "in leaf": "Leaf",
  "in flower": "Flower",
  "in fruit": "Fruit",
  winter: "Winter",
  "after a hard cut": "Cut",
} as const;
export type FeedStageName = keyof typeof stageNames;
export const fed = ["N", "P", "K", "Ca", "Mg"] as const;
export type FedElement = (typeof fed)[number];

/** Key of the aim of an element at a stage. */
export const aimKey = (of: FedElement, stage: FeedStageName): string =>
  `feedAim${of}${stageNames[stage]}_mg_L`;

const aims: readonly Assumption[] = feedStages.flatMap((stage) =>
  fed.map((of) =>
    assumption(
      aimKey(of, stage),
      `${of} aimed at in a feed, water included, ${stage}`,
      stageTargets[stage].of[of].aim_mg_L,
      "mg/L",
      0,
      400,
      stageTargets[stage].evidence,
      "leaf analysis, or two plants fed otherwise beside these",
    ),
  ),
);

/** Values of the craft that nobody measured for this plant; each may be adjusted and is shown as assumed. */
export const feedingAssumptions: readonly Assumption[] = [
  ...aims,
  assumption(
    "feedLow_mg_L",
    "nitrogen in the water of the pot below which feed is due",
    30,
    "mg/L",
    5,
    150,
    OURS,
    "a pour-through read each week",
  ),
  assumption(
    "feedWaterHeld",
    "all water of a drained pot over what the plant can draw",
    1.4,
    "",
    1,
    3,
    OURS,
    "weighing the pot drained and dried out",
  ),
  assumption(
    "feedDryMass_g_L",
    "dry mass made for each litre of water used",
    DRY_MASS_FOR_WATER_g_L,
    "g/L",
    1,
    8,
    "from memory: 3 to 6 in the field, 2 to 4 on a sill",
    "nothing: it only sets the pace",
  ),
  assumption(
    "feedFreshLeast_d",
    "days that fresh medium is left without feed in any case",
    21,
    "d",
    0,
    120,
    TRADE,
    "a pour-through",
  ),
  assumption(
    "feedFrom_frac",
    "share of its water below which a pot is fed",
    0.75,
    "share",
    0.3,
    1,
    TRADE,
    "nothing: it is a habit of the hand",
  ),
  assumption(
    "feedDry_frac",
    "share of its water below which a pot is watered first and not fed",
    0.45,
    "share",
    0,
    0.7,
    TRADE,
    "nothing: it is a habit of the hand",
  ),
  assumption(
    "feedFresh_d",
    "days that fresh medium feeds by itself, where nobody keeps its ledger",
    56,
    "d",
    0,
    150,
    "our assumption: printed waiting times run from 2 weeks to 4 months",
    "a pour-through",
  ),
  assumption(
    "feedEvery_d",
    "days from feed to feed, where nobody keeps the ledger of the pot",
    10,
    "d",
    1,
    14,
    TRADE,
    "a pour-through",
  ),
  assumption(
    "feedMost_d",
    "longest time from feed to feed in growth",
    14,
    "d",
    3,
    60,
    TRADE,
    "a pour-through",
  ),
  assumption(
    "feedAfterCut_d",
    "days without feed after a hard cut, until new leaves",
    21,
    "d",
    0,
    60,
    TRADE,
    "seeing the first new leaf",
  ),
  assumption(
    "feedFirst_frac",
    "strength of the first feed in fresh medium or after a root wash",
    0.5,
    "share",
    0.1,
    1,
    TRADE,
    "a pour-through",
  ),
  assumption(
    "feedThrough_frac",
    "share of a feed that should run through",
    0.12,
    "share",
    0,
    0.4,
    "our assumption: 10 to 20 % on published beds",
    "measuring what runs out",
  ),
  assumption(
    "flushAt_mS_cm",
    "conductivity of the pot just watered from which plain water is run through",
    3.2,
    "mS/cm",
    1,
    8,
    "our assumption, from the threshold of Maas 1990 by the ratio of the methods",
    "a pour-through",
  ),
  assumption(
    "feedPure_frac",
    "share of rain or pure water in the water that feeds are mixed with",
    0,
    "share",
    0,
    1,
    OURS,
    "saying what is poured into the can",
  ),
];

import type { Aimed } from "./species.ts";

/** What a feed is aimed at. */
export const feedStages = [
  "seedling",
  "in leaf",
  "in flower",
  "in fruit",
  "winter",
  "after a hard cut",
] as const;
export type FeedStage = (typeof feedStages)[number];

/** A wanted concentration and the range in which nothing needs to be done about it. */
export type Target = { readonly aim_mg_L: number; readonly low_mg_L: number; readonly high_mg_L: number };
export type StageTargets = {
  readonly of: { readonly [Each in "N" | "P" | "K" | "Ca" | "Mg"]: Target };
  /** most, water included [mS/cm] */
  readonly conductivity_mS_cm: number;
  /** ammonium and urea, of all nitrogen */
  readonly ammoniumShare_frac: number;
  /** what the numbers rest on */
  readonly evidence: string;
};

const target = (aim_mg_L: number, low_mg_L: number, high_mg_L: number): Target => ({
  aim_mg_L,
  low_mg_L,
  high_mg_L,
});

const seedling = {
  N: target(50, 30, 75),
  P: target(8, 4, 15),
  K: target(50, 30, 90),
  Ca: target(50, 30, 120),
  Mg: target(15, 8, 40),
};

/**
 * Concentrations poured, water included, for a feed with every watering of which a tenth runs out; all adjustable.
 *
 * @source our assumption, drawn between BarTal2001 (116 to 130 N, ammonium at most 28) and a mass balance of field tissue
 */
export const stageTargets: Readonly<Record<FeedStage, StageTargets>> = {
  seedling: {
    of: seedling,
    conductivity_mS_cm: 1,
    ammoniumShare_frac: 0.35,
    evidence: "Nicola & Basoccu 1994, Acta Horticulturae 361, abstract: 42 mg N a seedling in 33 days",
  },
  "in leaf": {
    of: {
      N: target(130, 100, 180),
      P: target(15, 8, 30),
      K: target(140, 100, 200),
      Ca: target(100, 60, 160),
      Mg: target(30, 15, 50),
    },
    conductivity_mS_cm: 1.9,
    ammoniumShare_frac: 0.35,
    evidence: "Bar-Tal and others 2001, HortScience 36, abstract: N 116 to 130; mass balance of field pepper",
  },
  "in flower": {
    of: {
      N: target(110, 90, 140),
      P: target(15, 8, 25),
      K: target(150, 110, 200),
      Ca: target(110, 80, 160),
      Mg: target(32, 18, 50),
    },
    conductivity_mS_cm: 1.8,
    ammoniumShare_frac: 0.2,
    evidence: "Gyalai & Lantos, container pepper, abstract: N to K of 1 to 1.3 sets most fruit, 1 to 2 fewer",
  },
  "in fruit": {
    of: {
      N: target(110, 90, 140),
      P: target(15, 8, 25),
      K: target(150, 120, 220),
      Ca: target(120, 90, 160),
      Mg: target(35, 20, 50),
    },
    conductivity_mS_cm: 1.9,
    ammoniumShare_frac: 0.2,
    evidence:
      "Garcia Lozano and others 2005, Acta Horticulturae 697, abstract: K of 107 to 235 made no difference",
  },
  winter: {
    of: {
      N: target(60, 40, 100),
      P: target(8, 4, 15),
      K: target(70, 40, 120),
      Ca: target(60, 40, 120),
      Mg: target(20, 10, 40),
    },
    conductivity_mS_cm: 1.2,
    ammoniumShare_frac: 0.2,
    evidence: "our assumption: half of the summer's, since half is used",
  },
  "after a hard cut": {
    of: seedling,
    conductivity_mS_cm: 0.8,
    ammoniumShare_frac: 0.2,
    evidence: "common practice, no source: nothing until new leaves, then as a seedling",
  },
};

/** Lines that hold at every stage [mg/L]. @source BarTal2001 for ammonium; others from memory or common practice */
export const feedLimits = {
  ammoniumN_mg_L: 28,
  ammoniumShare_frac: 0.5,
  Na_mg_L: 50,
  Cl_mg_L: 70,
  B_mg_L: 1,
  potassiumToCalcium: 1.8,
} as const;

/** Micronutrients that suffice [mg/L]. @source our assumption, from published recipes */
export const microTargets: Readonly<Partial<Record<Aimed, Target>>> = {
  Fe: target(1.5, 0.8, 3),
  Mn: target(0.4, 0.2, 0.8),
  Zn: target(0.15, 0.05, 0.4),
  B: target(0.3, 0.1, 0.6),
  Cu: target(0.05, 0.02, 0.15),
  Mo: target(0.03, 0.005, 0.06),
  S: target(25, 15, 90),
};

/** What a miss of each counts. @source our assumption */
export const aimWeights: Readonly<Partial<Record<Aimed, number>>> = {
  N: 3,
  K: 2,
  Ca: 2,
  P: 1,
  Mg: 1,
  S: 0.3,
  Fe: 0.5,
  B: 0.5,
  Mn: 0.2,
  Zn: 0.2,
  Cu: 0.1,
  Mo: 0.1,
};

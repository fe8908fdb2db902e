import {
  developmentClock,
  type GrowthSettings as FieldSettings,
  type FruitClass,
  type NodeClock,
  nodeClock,
  phaseSums,
  relativeGrowthOf,
  type SpeciesGroup,
  stageSum_Cd,
  type ThermalClock,
  thermalPaceOf,
} from "@sillwood/science/growth";
import type { AirDay } from "../../places/ahead.ts";
import type { Sight } from "../craft.ts";
import { fieldKeys, growthAssumption } from "./assumptions.ts";
import type { DayGrowth } from "./day-growth.ts";
import { peppers } from "./pepper.ts";

const SCORE_80 = 1.2815515655446004;
const CM2_PER_M2 = 10_000;

/** Median wait for a stage from a code that was seen, and the sd of its logarithm. */
export interface Wait {
  readonly median_Cd: number;
  readonly sd_ln: number;
}

/** Everything that the steps of plants on one clock ask for; worked out once a run. */
export interface Clockwork {
  /** For the functions of the field: species, fruit and what was adjusted. */
  readonly plant: { readonly species: SpeciesGroup; readonly fruit: FruitClass } & FieldSettings;
  readonly clock: ThermalClock;
  readonly nodes: NodeClock;
  readonly budbreak_Cd: number;
  /** From sowing to open cotyledons. */
  readonly cotyledons_Cd: number;
  readonly cotyledonArea_m2: number;
  /** Development, nodes a day and nodes a day under fruit by temperature; relative growth by light and temperature. */
  readonly pace: (air_C: number) => number;
  readonly nodePace: (air_C: number) => number;
  readonly nodePaceFruiting: (air_C: number) => number;
  readonly relativeGrowth: (dli_mol_m2_d: number, air_C: number) => number;
  /** Lives as long as the run and its days; a weak map costs every step three times as much. */
  readonly days: Map<AirDay, DayGrowth>;
  readonly waits: Map<number, Wait>;
  readonly codes: Map<number, Codes>;
}

/** The assumptions of the craft, as adjusted, looked up once for all steps of a run. */
export interface Settings {
  readonly clockworks: readonly Clockwork[];
  readonly nurseryAir_C: number;
  readonly nurseryAirSd_C: number;
  readonly nurseryLight_mol_m2_d: number;
  readonly hardCut_frac: number;
  readonly budbreakSpread_frac: number;
  readonly regrowth_frac: number;
  readonly leafAreaMost_frac: number;
  readonly leafWander_frac: number;
  readonly growthSpread_frac: number;
  readonly nodeSpread_frac: number;
}

const known = new WeakMap<Sight["assumed"], Settings>();
let lastAssumed: Sight["assumed"] | undefined;
let last: Settings | undefined;

/** A book that adjusts an assumption runs anew, and is asked by another function. */
export function growthSettings({ assumed }: Pick<Sight, "assumed">): Settings {
  if (last !== undefined && assumed === lastAssumed) return last;
  let settings = known.get(assumed);
  if (!settings) {
    settings = settingsOf(assumed);
    known.set(assumed, settings);
  }
  lastAssumed = assumed;
  last = settings;
  return settings;
}

function settingsOf(assumed: Sight["assumed"]): Settings {
  const adjusted: Record<string, number> = {};
  for (const key of fieldKeys) {
    const value = assumed(key);
    // Left out where it is as assumed: the functions of the field then share one set of values.
    if (value !== growthAssumption(key).value) adjusted[key] = value;
  }
  return {
    clockworks: peppers.map((pepper) => clockworkOf({ ...pepper, ...adjusted }, assumed)),
    nurseryAir_C: assumed("nurseryAir_C"),
    nurseryAirSd_C: assumed("nurseryAirSd_C"),
    nurseryLight_mol_m2_d: assumed("nurseryLight_mol_m2_d"),
    hardCut_frac: assumed("hardCut_frac"),
    budbreakSpread_frac: assumed("budbreakSpread_frac"),
    regrowth_frac: assumed("regrowth_frac"),
    leafAreaMost_frac: assumed("leafAreaMost_frac"),
    leafWander_frac: assumed("leafWander_frac"),
    growthSpread_frac: assumed("growthSpread_frac"),
    nodeSpread_frac: assumed("nodeSpread_frac"),
  };
}

function nodePaceOf({ plastochron_Cd, ...clock }: NodeClock): (air_C: number) => number {
  const pace = thermalPaceOf(clock);
  return (air_C) => pace(air_C) / plastochron_Cd;
}

function clockworkOf(plant: Clockwork["plant"], assumed: Sight["assumed"]): Clockwork {
  const sums = phaseSums(plant);
  const clock = developmentClock(plant);
  const nodes = nodeClock({ ...plant, fruiting: false });
  return {
    plant,
    clock,
    nodes,
    pace: thermalPaceOf(clock),
    nodePace: nodePaceOf(nodes),
    nodePaceFruiting: nodePaceOf(nodeClock({ ...plant, fruiting: true })),
    relativeGrowth: relativeGrowthOf(plant),
    budbreak_Cd: sums.budbreak_Cd,
    cotyledons_Cd: sums.emergence_Cd + sums.cotyledon_Cd,
    cotyledonArea_m2: assumed("cotyledonArea_cm2") / CM2_PER_M2,
    days: new Map(),
    waits: new Map(),
    codes: new Map(),
  };
}

/** Wait for a stage, 0 to 81, from a code, 0 to 81; kept, since plants of one clock ask the same. */
export function waitFor({ plant, waits }: Clockwork, bbchStart: number, bbch: number): Wait {
  const key = bbchStart * 100 + bbch;
  let wait = waits.get(key);
  if (!wait) {
    const median_Cd = stageSum_Cd({ ...plant, bbchStart, bbch });
    const high_Cd = stageSum_Cd({ ...plant, bbchStart, bbch, probability: 0.9 });
    wait = { median_Cd, sd_ln: median_Cd > 0 ? Math.log(high_Cd / median_Cd) / SCORE_80 : 0 };
    waits.set(key, wait);
  }
  return wait;
}

/** Codes that a clock can show, ascending, and the warmth from a start after which each is reached. */
export interface Codes {
  readonly codes: readonly number[];
  readonly from_Cd: readonly number[];
}

/** Side shoots (21 to 29) run beside the buds and are not named. */
const isShown = (bbch: number) => bbch < 20 || bbch === 81 || (bbch > 50 && bbch < 80 && bbch % 10 !== 0);
const SHOWN = Array.from({ length: 82 }, (_, bbch) => bbch).filter(isShown);

export function codesFrom(clockwork: Clockwork, bbchStart: number): Codes {
  let found = clockwork.codes.get(bbchStart);
  if (!found) {
    found = { codes: SHOWN, from_Cd: SHOWN.map((bbch) => waitFor(clockwork, bbchStart, bbch).median_Cd) };
    clockwork.codes.set(bbchStart, found);
  }
  return found;
}

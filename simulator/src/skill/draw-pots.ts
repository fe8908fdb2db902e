import { type Ageing, age } from "../nursery/ageing.ts";
import { DAY_ms } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { drawPlant, drawVessel, type MediumName } from "../nursery/draw-plant.ts";
import { available_g } from "../nursery/medium.ts";
import { sharedWhims } from "../nursery/outdoor-air.ts";
import type { PotShape } from "../nursery/pot-shape.ts";
import { type PlantTraits, type Pot, potAvailable_g, type Vessel } from "../nursery/potted-plant.ts";
import type { Tended } from "../nursery/tend.ts";
import { drawEvents, type PotEvents } from "./draw-events.ts";
import { SHELF, SILL } from "./draw-place.ts";
import { drawn, RANGES } from "./ranges.ts";

export type Size = "small" | "middle" | "large";

export interface DrawnPot {
  readonly tended: Tended;
  readonly size: Size;
  /** What the grower believes is in it. */
  readonly medium: MediumName;
  readonly events: PotEvents;
}

const SIZES = ["small", "middle", "large"] as const;
const WIDTHS_cm = { small: [7.5, 10.5], middle: [11, 14], large: [15, 22] } as const;
/** Weighings per dry-down; a run's grower weighs all pots alike. */
const WEIGHINGS = [1, 0, 2, 4] as const;

/** A tree in a pot, with all that will happen to it. */
export function drawPot(
  key: number,
  run: number,
  from_ms: number,
  days_n: number,
  all_n: number,
  chance: Chance,
): DrawnPot {
  const { pot: potRanges } = RANGES;
  const size = SIZES[key % 3] as Size;
  const medium = chance.pick(["spongy", "spongy", "bark", "gritty"] as const);
  const vessel = pressed(
    drawVessel(drawShape(size, chance), medium, chance.under("vessel")),
    drawn(chance, potRanges.pressed_frac),
  );
  const { leafArea_m2, fresh_g, traits } = drawPlant(vessel, chance.under("plant"));
  const bench = chance.happens(0.5) ? SILL : SHELF;
  const events = drawEvents(key, bench, from_ms, days_n, chance.under("events"));
  const plant = drawVigour(traits, leafArea_m2, vessel, chance.under("vigour"));
  const pot: Pot = {
    at_ms: from_ms,
    plant,
    vessel,
    bench,
    spot: key,
    light_frac: drawn(chance, potRanges.light_frac),
    surface_g: 0,
    root_g: vessel.medium.rootWilt_g * 1.2,
    saucer_g: 0,
    leafArea_m2,
    fresh_g,
    roots_frac: 1,
    poured_g: 0,
    evaporated_g: 0,
    drunk_g: 0,
    lost_g: 0,
    next: 0,
    happenings: events.happenings,
    whims: drawWhims(all_n, chance.under("whims")),
    growing: { owed_m2: 0, wait_Cd: 0, light_mol_m2_d: 6 },
    ageing: drawAgeing(vessel, chance.under("filling")),
  };
  // The pot was filled before the run began: let it be as old as that before it is given its water.
  age(pot, pot.ageing as Ageing, 0);
  const filled_frac = chance.between(0.2, 1);
  const { surfaceDry_g, surfaceFull_g, rootWilt_g, rootFull_g } = pot.vessel.medium;
  pot.surface_g = surfaceDry_g + (surfaceFull_g - surfaceDry_g) * filled_frac;
  pot.root_g = rootWilt_g + (rootFull_g - rootWilt_g) * filled_frac;
  pot.lost_g = 0;
  const weighings_n = WEIGHINGS[run % 4] as 0 | 1 | 2 | 4;
  const tended: Tended = {
    key,
    pot,
    usual_mL: Math.max(30, Math.round((potAvailable_g(pot) * drawn(chance, potRanges.usual_frac)) / 10) * 10),
    weighings_n,
    weighAt_ms: weighings_n > 0 ? [from_ms + chance.between(1, 4) * DAY_ms] : [],
    watered_ms: from_ms - 2 * DAY_ms,
    interval_d: chance.between(3, 8),
    misfelt_frac: drawn(chance, RANGES.person.misfelt_frac),
    from_ms,
    until_ms: from_ms + days_n * DAY_ms,
  };
  return { tended, size, medium: believed(medium, chance), events };
}

/** Some do not know what is in the pot, and some are wrong. @source our assumption */
function believed(medium: MediumName, chance: Chance): MediumName {
  if (chance.happens(0.15)) return "unknown";
  return chance.happens(0.08) ? chance.pick(["spongy", "bark", "gritty"] as const) : medium;
}

/** The same mix pressed in harder or less hard holds more or less, also at wilting. */
function pressed(vessel: Vessel, by: number): Vessel {
  const { medium } = vessel;
  return {
    ...vessel,
    medium: { ...medium, rootFull_g: medium.rootFull_g * by, rootWilt_g: medium.rootWilt_g * by },
  };
}

function drawVigour(traits: PlantTraits, leafArea_m2: number, vessel: Vessel, chance: Chance): PlantTraits {
  const { plant } = RANGES;
  // Nobody leaves a tree in a pot that it drinks dry within a day; it is cut back before.
  const bearable_m2 = available_g(vessel.medium) / 4500;
  return {
    ...traits,
    growth_frac_d: Math.max(0, drawn(chance, plant.growth_frac_d)),
    leafAreaMax_m2: Math.max(
      leafArea_m2 * 1.02,
      Math.min(bearable_m2, leafArea_m2 * drawn(chance, plant.most_frac)),
    ),
    vigour: {
      base_C: drawn(chance, plant.base_C),
      regrows_frac: drawn(chance, plant.regrows_frac),
      breaks_Cd: drawn(chance, plant.breaks_Cd),
      flush_d: drawn(chance, plant.flush_d),
      keepsAt_mol_m2_d: drawn(chance, plant.keepsAt_mol_m2_d),
      falls_frac_d: drawn(chance, plant.falls_frac_d),
    },
  };
}

function drawAgeing(vessel: Vessel, chance: Chance): Ageing {
  const { filling } = RANGES;
  const roots_frac = drawn(chance, filling.rootsNow_frac);
  return {
    traits: {
      slumps_frac_y: drawn(chance, filling.slumps_frac_y),
      tightens_frac_y: drawn(chance, filling.tightens_frac_y),
      rootsMost_frac: roots_frac + drawn(chance, filling.rootsMore_frac),
      rootsPace_per_d: drawn(chance, filling.rootsPace_per_d),
      repels_frac_y: drawn(chance, filling.repels_frac_y),
      salt_g_L: drawn(chance, filling.salt_g_L),
    },
    fresh: vessel.medium,
    age_d: 0,
    roots_frac,
    salt_g: 0,
    day: -1,
  };
}

/** Heavy-tailed days with a short memory, on a swing over weeks. */
function drawWhims(all_n: number, chance: Chance): Float64Array {
  const { pot } = RANGES;
  const whims = sharedWhims(all_n, drawn(chance, pot.whims_frac), chance.under("days"));
  const sd = drawn(chance, pot.swing_frac);
  const memory = drawn(chance, pot.swingMemory);
  let log = chance.normal(0, sd);
  return whims.map((whim) => {
    log = memory * log + Math.sqrt(1 - memory ** 2) * chance.normal(0, sd);
    return whim * Math.exp(log);
  });
}

function drawShape(size: Size, chance: Chance): PotShape {
  const [low, high] = WIDTHS_cm[size];
  const width_cm = Math.round(chance.between(low, high) * 2) / 2;
  const depth_cm = Math.round(width_cm * chance.between(0.5, 1) * 2) / 2;
  if (chance.happens(0.7)) return { form: "round", top_cm: width_cm, depth_cm };
  return {
    form: chance.happens(0.5) ? "oval" : "rectangular",
    length_cm: width_cm * 1.2,
    width_cm: width_cm * 0.85,
    depth_cm,
  };
}

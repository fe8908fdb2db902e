import {
  type PaneView,
  paneFactors,
  paneView,
  usualGlazings,
  veils,
  windowDay_n,
  windowDays_mol_m2_d,
} from "@sillwood/science/light";
import { extraterrestrialRadiation_MJ_m2_d } from "@sillwood/science/sun";
import type { Site } from "../site.ts";
import { type Pane, UNASKED_LEFT_frac } from "./windows.ts";

/** Daily light at a spot behind its panes, parted so that a calibration can take hold of the sky's share alone. */
export interface WindowLight {
  /** On a level leaf, mol m⁻² d⁻¹: from sky and ground, and straight from the sun. */
  readonly diffuse_mol_m2_d: number;
  readonly direct_mol_m2_d: number;
  /** On leaves at all angles: half the spherical light. */
  readonly diffuseAround_mol_m2_d: number;
  readonly directAround_mol_m2_d: number;
}

/** What a spot sees through its panes, worked out once, and the days asked of it so far. */
interface WindowTable {
  readonly views: readonly PaneView[];
  readonly skyShare_frac: number;
  readonly rows: Map<number, Float64Array>;
}

/** Days of the year and clearnesses between which light is drawn straight: it bends little in eight days or a sixth of Kt. */
const DAY_STEP_d = 8;
const CLEARNESSES = [0.05, 0.2, 0.35, 0.5, 0.65, 0.82] as const;
/** The sun moves 7.5° in it; the crown's nine points smooth what falls between. */
const STEP_min = 30;
const CROWN_m = 0.2;
/** Spots of a large house, twice over; tables are small and made again at need. */
const TABLES_MAX_n = 400;

const LEVEL = 0;
const SPHERE = 2;
const PLANES_n = (windowDay_n - 1) / 2;

const tables = new Map<string, WindowTable>();
/** A spot asks with the same list of panes day after day. */
const tablesOf = new WeakMap<readonly Pane[], WindowTable>();

function tableOf(panes: readonly Pane[]): WindowTable {
  let table = tablesOf.get(panes);
  if (!table) {
    const key = JSON.stringify(panes);
    table = tables.get(key) ?? newTable(panes);
    if (tables.size >= TABLES_MAX_n && !tables.has(key)) tables.clear();
    tables.set(key, table);
    tablesOf.set(panes, table);
  }
  return table;
}

function newTable(panes: readonly Pane[]): WindowTable {
  const views = panes.map((pane) =>
    paneView({
      facing_deg: pane.faces_deg,
      left_m: pane.left_m,
      right_m: pane.right_m,
      bottom_m: pane.bottom_m,
      top_m: pane.top_m,
      distance_m: pane.fromGlass_m,
      revealDepth_m: pane.recess_m,
      glazing: {
        ...usualGlazings[pane.glazing],
        ...(pane.visible_frac === undefined ? {} : { unitTransmittance_frac: pane.visible_frac }),
      },
      veil_frac: veils[pane.veil].through_frac * UNASKED_LEFT_frac,
      horizon_deg: pane.opposite_deg,
      crownWidth_m: CROWN_m,
    }),
  );
  let skyShare_frac = 0;
  for (const view of views) {
    const { overcast, ground } = paneFactors(view);
    skyShare_frac += overcast.level_frac + ground.level_frac;
  }
  return { views, skyShare_frac, rows: new Map<number, Float64Array>() };
}

/** What of an evenly grey sky's light outdoors reaches a level leaf, by geometry and glass alone. */
export const skyShare_frac = (panes: readonly Pane[]): number =>
  panes.length > 0 ? tableOf(panes).skyShare_frac : 0;

/** Light of one day with this clearness; panes are those of one spot. */
export function windowLight(
  panes: readonly Pane[],
  kt: number,
  dayOfYear_d: number,
  site: Site,
): WindowLight {
  const table = tableOf(panes);
  const day = (dayOfYear_d - 1) / DAY_STEP_d;
  const before = Math.floor(day);
  const later_frac = day - before;
  let above = 1;
  while (above < CLEARNESSES.length - 1 && kt > (CLEARNESSES[above] as number)) above++;
  const [low, high] = [CLEARNESSES[above - 1] as number, CLEARNESSES[above] as number];
  const clearer_frac = Math.max(0, Math.min(1, (kt - low) / (high - low)));
  let diffuse_mol_m2_d = 0;
  let direct_mol_m2_d = 0;
  let diffuseSphere = 0;
  let directSphere = 0;
  for (let corner = 0; corner < 4; corner++) {
    const isLater = corner >= 2;
    const isClearer = corner % 2 === 1;
    const weight = (isLater ? later_frac : 1 - later_frac) * (isClearer ? clearer_frac : 1 - clearer_frac);
    if (weight === 0) continue;
    const row = rowOf(table, isLater ? before + 1 : before, isClearer ? above : above - 1, site.latitude_deg);
    diffuse_mol_m2_d += weight * (row[LEVEL] as number);
    direct_mol_m2_d += weight * (row[PLANES_n + LEVEL] as number);
    diffuseSphere += weight * (row[SPHERE] as number);
    directSphere += weight * (row[PLANES_n + SPHERE] as number);
  }
  return {
    diffuse_mol_m2_d,
    direct_mol_m2_d,
    diffuseAround_mol_m2_d: diffuseSphere / 2,
    directAround_mol_m2_d: directSphere / 2,
  };
}

const YEAR_STEPS_n = Math.ceil(366 / DAY_STEP_d);

function rowOf(table: WindowTable, step: number, clearness_n: number, latitude_deg: number): Float64Array {
  const key =
    (step % (YEAR_STEPS_n + 1)) * 100_000 + clearness_n * 10_000 + Math.round((latitude_deg + 90) * 50);
  let row = table.rows.get(key);
  if (!row) {
    const dayOfYear_d = ((step * DAY_STEP_d) % 366) + 1;
    const held_deg = Math.max(-66, Math.min(66, latitude_deg));
    const above_MJ = extraterrestrialRadiation_MJ_m2_d({ latitude_deg: held_deg, dayOfYear_d });
    row = windowDays_mol_m2_d({
      views: table.views,
      latitude_deg: held_deg,
      daysOfYear_d: [dayOfYear_d],
      solarDays_MJ_m2_d: [above_MJ * (CLEARNESSES[clearness_n] as number)],
      step_min: STEP_min,
    });
    table.rows.set(key, row);
  }
  return row;
}

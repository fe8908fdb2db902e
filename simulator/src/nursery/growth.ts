import { rootWetness_frac } from "./medium.ts";
import type { PlantTraits, Pot } from "./potted-plant.ts";

/** How a plant answers to cuts and to poor light; plants without it only grow on. */
export interface Vigour {
  /** Warmth that counts starts here. */
  readonly base_C: number;
  /** Share of what a cut took that new shoots bring back on top of usual growth. */
  readonly regrows_frac: number;
  /** Warmth that buds need to break after a cut. */
  readonly breaks_Cd: number;
  /** Days in which shoots bring back what is owed, in the best light and warmth. */
  readonly flush_d: number;
  /** Light of a day on the outer leaf below which leaves yellow and fall. */
  readonly keepsAt_mol_m2_d: number;
  /** Share of the leaves that fall in a day in the dark. */
  readonly falls_frac_d: number;
}

/** What a plant remembers of cuts and light; mutable. */
export interface Growing {
  owed_m2: number;
  /** Warmth still wanted before the buds of the last cut break. */
  wait_Cd: number;
  /** Light of the last days on the outer leaf. */
  light_mol_m2_d: number;
}

/** Days over which a leaf remembers light. @source our assumption */
const MEMORY_d = 5;
/** Half of a leaf's mass is drawn back into the plant or lost with the water in it before it falls. @source our assumption */
const FALLEN_frac = 0.5;

/**
 * Leaf area and mass over a step: growth by light, warmth, water and room; shoots after a cut; leaves that fall.
 *
 * @param shaded_umol_m2_s light on the mean leaf
 * @param outer_umol_m2_s light on the outer leaf
 * @param open how far the roots let the leaves work, 0 to 1
 */
export function grow(
  pot: Pot,
  shaded_umol_m2_s: number,
  outer_umol_m2_s: number,
  air_C: number,
  open: number,
  step_h: number,
): void {
  const { plant } = pot;
  const light = shaded_umol_m2_s / (shaded_umol_m2_s + 200);
  const warmth = Math.max(0, Math.min(1, (air_C - 10) / 14));
  const room = 1 - pot.leafArea_m2 / plant.leafAreaMax_m2;
  const grown_m2 =
    pot.leafArea_m2 * plant.growth_frac_d * 2 * light * warmth * open * Math.max(0, room) * (step_h / 24);
  pot.leafArea_m2 += grown_m2;
  pot.fresh_g += grown_m2 * plant.tissue_g_m2 + plant.swelling_g_d * warmth * open * (step_h / 24);
  // A plant that hangs for days drops leaves: a sixth of them a day.
  if (rootWetness_frac(pot, pot.vessel.medium) < 0.01) drop(pot, plant, (step_h / 24) * 0.16);
  if (plant.vigour && pot.growing)
    answer(pot, plant, plant.vigour, pot.growing, light * open, outer_umol_m2_s, air_C, step_h);
}

function answer(
  pot: Pot,
  plant: PlantTraits,
  vigour: Vigour,
  growing: Growing,
  able: number,
  outer_umol_m2_s: number,
  air_C: number,
  step_h: number,
): void {
  const step_d = step_h / 24;
  const today_mol_m2_d = (outer_umol_m2_s * 86_400) / 1e6;
  growing.light_mol_m2_d += (today_mol_m2_d - growing.light_mol_m2_d) * Math.min(1, step_d / MEMORY_d);
  const warm_C = Math.max(0, air_C - vigour.base_C);
  growing.wait_Cd = Math.max(0, growing.wait_Cd - warm_C * step_d);
  if (growing.owed_m2 > 0 && growing.wait_Cd === 0) {
    const warmth = Math.min(1, warm_C / 14);
    const back_m2 = growing.owed_m2 * Math.min(1, ((2 * able * warmth) / vigour.flush_d) * step_d);
    growing.owed_m2 -= back_m2;
    pot.leafArea_m2 += back_m2;
    pot.fresh_g += back_m2 * plant.tissue_g_m2;
  }
  const short_frac = 1 - growing.light_mol_m2_d / vigour.keepsAt_mol_m2_d;
  if (short_frac > 0) drop(pot, plant, vigour.falls_frac_d * short_frac * step_d);
}

/** What a cut takes, and what the plant then owes itself. */
export function trim(pot: Pot, taken_frac: number): void {
  const taken_m2 = pot.leafArea_m2 * taken_frac;
  pot.leafArea_m2 -= taken_m2;
  pot.fresh_g -= taken_m2 * pot.plant.tissue_g_m2;
  if (!pot.plant.vigour || !pot.growing) return;
  pot.growing.owed_m2 += taken_m2 * pot.plant.vigour.regrows_frac;
  pot.growing.wait_Cd = pot.plant.vigour.breaks_Cd;
}

function drop(pot: Pot, plant: PlantTraits, share_frac: number): void {
  const dropped_m2 = pot.leafArea_m2 * Math.min(1, share_frac);
  pot.leafArea_m2 -= dropped_m2;
  pot.fresh_g -= dropped_m2 * plant.tissue_g_m2 * FALLEN_frac;
}

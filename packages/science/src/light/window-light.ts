import { veilTransmittance_frac } from "./glass.ts";
import { paneView } from "./pane-view.ts";
import { windowDay } from "./window-days.ts";

/**
 * Daily light at a leaf behind one window on one day, from plain values: what `paneView` and `windowDay` give together.
 *
 * @param window direction the pane faces [°], 0 to 360; edges from the leaf's foot on the glass [m], -20 to 20; distance to the glass [m], 0.02 to 20; depth of the reveal [m], 0 to 2; panes, 1 to 3, with the transmittance of one or of the unit; what hangs before it; heights opposite round the compass from north [°], 0 to 90; width of the crown [m], 0 to 3; latitude [°], -90 to 90; day of the year, 1 to 366; radiation of the day [MJ m⁻² d⁻¹], 0 to 50, a clear day when left out; calibration of the spot, 0.05 to 5
 * @returns light [mol m⁻² d⁻¹] on a level leaf, its parts from sky and ground and straight from the sun; on a leaf that faces the window; half of that from all around, which is what leaves at all angles catch; outdoors
 * @throws QuantityError outside those ranges
 * @source HowellCatalog; MoonSpencer1942; DuffieBeckman2013; Erbs1982; FaustLogan2018
 * @see checks/sun-light.json 110, 112
 * @example windowLight({ facing_deg: 180, left_m: -0.6, right_m: 0.6, bottom_m: 0, top_m: 1.4, distance_m: 0.3, panes_n: 2, latitude_deg: 40, dayOfYear_d: 355 }).level_mol_m2_d // 10.97
 */
export function windowLight(window: {
  readonly facing_deg: number;
  readonly left_m: number;
  readonly right_m: number;
  readonly bottom_m: number;
  readonly top_m: number;
  readonly distance_m: number;
  readonly panes_n: number;
  readonly latitude_deg: number;
  readonly dayOfYear_d: number;
  readonly solar_MJ_m2_d?: number;
  readonly revealDepth_m?: number;
  readonly paneTransmittance_frac?: number;
  readonly unitTransmittance_frac?: number;
  readonly dusty?: boolean;
  readonly insectScreen?: boolean;
  readonly netCurtain?: boolean;
  readonly frameInOpening?: boolean;
  readonly horizon_deg?: readonly number[];
  readonly crownWidth_m?: number;
  readonly spotRatio?: number;
  readonly groundAlbedo?: number;
  readonly facadeBrightness_frac?: number;
  readonly overcastBelow_frac?: number;
}): {
  readonly level_mol_m2_d: number;
  readonly levelDiffuse_mol_m2_d: number;
  readonly levelDirect_mol_m2_d: number;
  readonly facing_mol_m2_d: number;
  readonly halfSphere_mol_m2_d: number;
  readonly outdoors_mol_m2_d: number;
} {
  const { dusty = false, insectScreen = false, netCurtain = false, frameInOpening = false } = window;
  const view = paneView({
    ...window,
    glazing: window,
    veil_frac: veilTransmittance_frac({ dusty, insectScreen, netCurtain, frameInOpening }),
  });
  const { diffuse, direct, all, outdoors_mol_m2_d } = windowDay({ ...window, views: [view] });
  return {
    level_mol_m2_d: all.level_mol_m2_d,
    levelDiffuse_mol_m2_d: diffuse.level_mol_m2_d,
    levelDirect_mol_m2_d: direct.level_mol_m2_d,
    facing_mol_m2_d: all.facing_mol_m2_d,
    halfSphere_mol_m2_d: all.sphere_mol_m2_d / 2,
    outdoors_mol_m2_d,
  };
}

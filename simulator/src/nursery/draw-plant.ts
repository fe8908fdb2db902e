import type { Chance } from "./chance.ts";
import { available_g, type MediumTraits } from "./medium.ts";
import { medium_mL, opening_cm2, type PotShape } from "./pot-shape.ts";
import type { PlantTraits, Vessel } from "./potted-plant.ts";

export type MediumName = "spongy" | "bark" | "gritty" | "unknown";

interface Range {
  readonly low: number;
  readonly high: number;
}

/** Ranges of what a medium holds: drained, at wilting, dry mass per mL, bypass when dry. All our assumption, wide on purpose. */
const MEDIA: Readonly<Record<MediumName, { full: Range; wilt: Range; density: Range; bypassDry: Range }>> = {
  spongy: { full: r(0.42, 0.74), wilt: r(0.08, 0.24), density: r(0.09, 0.18), bypassDry: r(0.3, 0.65) },
  bark: { full: r(0.3, 0.58), wilt: r(0.05, 0.2), density: r(0.17, 0.3), bypassDry: r(0.2, 0.5) },
  gritty: { full: r(0.18, 0.45), wilt: r(0.03, 0.12), density: r(0.5, 0.95), bypassDry: r(0.1, 0.3) },
  unknown: { full: r(0.26, 0.66), wilt: r(0.06, 0.2), density: r(0.12, 0.7), bypassDry: r(0.15, 0.6) },
};

function r(low: number, high: number): Range {
  return { low, high };
}

const within = (chance: Chance, range: Range) => chance.between(range.low, range.high);

/** Fills a pot with a medium of that name; how much it holds is nobody's but the nursery's to know. */
export function drawVessel(shape: PotShape, name: MediumName, chance: Chance): Vessel {
  const ranges = MEDIA[name];
  const filled_frac = chance.between(0.82, 0.95);
  const volume_mL = medium_mL(shape, filled_frac, chance.between(0.65, 0.9));
  const height_cm = shape.depth_cm * filled_frac;
  const opening = opening_cm2(shape);
  const layer_cm = Math.min(height_cm * 0.4, chance.between(1.2, 2.6));
  const surface_mL = Math.min(volume_mL * 0.4, opening * layer_cm * 0.95);
  const root_mL = volume_mL - surface_mL;
  // Shallow pots keep more water per litre: the drained suction at the surface is the height of the pot.
  const shallow = (9 - height_cm) * 0.006;
  const full = Math.min(0.78, within(chance, ranges.full) + shallow);
  const wilt = within(chance, ranges.wilt);
  const medium: MediumTraits = {
    surfaceFull_g: surface_mL * (full - 0.03),
    rootFull_g: root_mL * (full + 0.01),
    surfaceDry_g: surface_mL * chance.between(0.03, 0.08),
    rootWilt_g: root_mL * wilt,
    rise_g_h: (opening / 100) * chance.between(1, 4.5),
    bypassMoist_frac: chance.between(0.01, 0.12),
    bypassDry_frac: within(chance, ranges.bypassDry),
    crust_frac: chance.between(0.2, 0.65),
    surfaceRoots_frac: chance.between(0.03, 0.25),
    halfShut_frac: chance.between(0.72, 0.98),
  };
  const clay = chance.happens(0.4);
  return {
    shape,
    medium,
    hardware_g:
      volume_mL * within(chance, ranges.density) +
      opening * shape.depth_cm * (clay ? 0.25 : 0.045) +
      chance.between(3, 25),
    saucerHolds_g: chance.happens(0.7) ? chance.between(20, 90) : 0,
  };
}

/** A trained tree for a vessel; leaf area goes with the opening, from cut-back sticks to full heads. */
export function drawPlant(
  vessel: Vessel,
  chance: Chance,
): { readonly traits: PlantTraits; readonly leafArea_m2: number; readonly fresh_g: number } {
  const opening_m2 = opening_cm2(vessel.shape) / 10_000;
  const leafArea_m2 = opening_m2 * chance.logNormal(1.7, 0.55);
  // A head that drinks its pot dry within a day would not have been left in it.
  const bearable_m2 = Math.min(leafArea_m2, available_g(vessel.medium) / 6500);
  const tissue_g_m2 = chance.between(280, 560);
  const traits: PlantTraits = {
    leaf: {
      assimilationMax_umol_m2_s: chance.between(9, 22),
      halfLight_umol_m2_s: chance.between(120, 380),
      g1: chance.between(2.5, 7),
      g0_mol_m2_s: chance.between(0.006, 0.045),
      width_m: chance.between(0.015, 0.042),
    },
    density: chance.between(1.1, 3),
    growth_frac_d: Math.max(0, chance.normal(0.008, 0.009)),
    leafAreaMax_m2: bearable_m2 * chance.between(1.1, 2.2),
    tissue_g_m2,
    swelling_g_d: Math.max(0, chance.normal(0.12, 0.18)) * (opening_m2 / 0.0113),
  };
  return { traits, leafArea_m2: bearable_m2, fresh_g: bearable_m2 * tissue_g_m2 + chance.between(10, 60) };
}

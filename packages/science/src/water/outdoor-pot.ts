import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { waterAssumptions } from "./assumptions.ts";

/**
 * Ground area that a crown covers.
 *
 * A = π/4 · w1 · w2. This, not the rim of the pot, is the area that reference ET acts on: 600 mL a day on the rim of an
 * 11.4 L pot would be 11.8 mm.
 *
 * @param crown its two widths, crosswise [cm], 0 to 500
 * @returns area [m²]
 * @throws QuantityError outside those ranges
 * @source Beeson2010 for the area; an ellipse our assumption
 * @example crownProjection_m2({ width_cm: 60, crossWidth_cm: 50 }) // 0.2356
 */
export function crownProjection_m2(crown: {
  readonly width_cm: number;
  readonly crossWidth_cm: number;
}): number {
  within("width_cm", crown.width_cm, 0, 500);
  within("crossWidth_cm", crown.crossWidth_cm, 0, 500);
  return (Math.PI / 4) * (crown.width_cm / 100) * (crown.crossWidth_cm / 100);
}

/**
 * Water that one container plant outdoors transpires.
 *
 * 1000 ETo · Kcb · F · A · Ks. With a measured crown Kcb is 1, whatever the stage; a stage value times the crown's area
 * would count the crown twice.
 *
 * @param plant reference ET [mm d⁻¹], 0 to 20; crown projection [m²], 0 to 20; isolation factor, 1 to 1.8; stress coefficient, 0 to 1; basal coefficient, 0 to 1.5, 1 unless given
 * @returns water [g d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 80; isolation factor our assumption
 * @example outdoorTranspiration_g_d({ referenceEt_mm_d: 5, crown_m2: 0.2 }) // 1300
 */
export function outdoorTranspiration_g_d(plant: {
  readonly referenceEt_mm_d: number;
  readonly crown_m2: number;
  readonly isolationFactor?: number;
  readonly stressCoefficient?: number;
  readonly basalCoefficient?: number;
}): number {
  const { referenceEt_mm_d, crown_m2, stressCoefficient = 1, basalCoefficient = 1 } = plant;
  within("referenceEt_mm_d", referenceEt_mm_d, 0, 20);
  within("crown_m2", crown_m2, 0, 20);
  within("stressCoefficient", stressCoefficient, 0, 1);
  within("basalCoefficient", basalCoefficient, 0, 1.5);
  const { isolationFactor } = valuesOf(waterAssumptions, plant);
  return 1000 * referenceEt_mm_d * basalCoefficient * isolationFactor * crown_m2 * stressCoefficient;
}

/**
 * The same from the sunlit leaf area, to cross-check: the reference sward has 2.88 m² of leaf per m², half of it active.
 *
 * 1000 ETo · LA / 1.44
 *
 * @param plant reference ET [mm d⁻¹], 0 to 20; sunlit leaf area, one side [m²], 0 to 20
 * @returns water [g d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 5 and Box 5
 * @example outdoorTranspirationByLeaf_g_d({ referenceEt_mm_d: 5, leafArea_m2: 0.36 }) // 1250
 */
export function outdoorTranspirationByLeaf_g_d(plant: {
  readonly referenceEt_mm_d: number;
  readonly leafArea_m2: number;
}): number {
  within("referenceEt_mm_d", plant.referenceEt_mm_d, 0, 20);
  within("leafArea_m2", plant.leafArea_m2, 0, 20);
  return (1000 * plant.referenceEt_mm_d * plant.leafArea_m2) / 1.44;
}

/**
 * Water that evaporates from the medium of a container outdoors.
 *
 * 1000 ETo · Ke · A(rim)
 *
 * @param pot reference ET [mm d⁻¹], 0 to 20; evaporation coefficient, 0 to 2; area of the rim [m²], 0 to 5
 * @returns water [g d⁻¹]
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 80
 * @example outdoorEvaporation_g_d({ referenceEt_mm_d: 5, evaporationCoefficient: 0.6, rim_m2: 0.05 }) // 150
 */
export function outdoorEvaporation_g_d(pot: {
  readonly referenceEt_mm_d: number;
  readonly evaporationCoefficient: number;
  readonly rim_m2: number;
}): number {
  within("referenceEt_mm_d", pot.referenceEt_mm_d, 0, 20);
  within("evaporationCoefficient", pot.evaporationCoefficient, 0, 2);
  within("rim_m2", pot.rim_m2, 0, 5);
  return 1000 * pot.referenceEt_mm_d * pot.evaporationCoefficient * pot.rim_m2;
}

/**
 * Rain that gets into a pot under its plant.
 *
 * 1000 P · A(rim) (1 − umbrella) + stemflow; nothing when the rain is below a fifth of the day's reference ET, as it dries
 * on the leaves. Carry half of it as its standard deviation: one weighing after rain is worth more than this.
 *
 * @param rain depth [mm], 0 to 500; area of the rim [m²], 0 to 5; share that the crown keeps off, 0.3 to 0.7; stemflow [g], 0 to 5000; reference ET of the day [mm d⁻¹], 0 to 20
 * @returns water [g] and its standard deviation [g]
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example rainIntoPot({ rain_mm: 10, rim_m2: 0.05, referenceEt_mm_d: 3 }).water_g // 250
 */
export function rainIntoPot(rain: {
  readonly rain_mm: number;
  readonly rim_m2: number;
  readonly referenceEt_mm_d: number;
  readonly umbrella_frac?: number;
  readonly stemflow_g?: number;
}): { readonly water_g: number; readonly sd_g: number } {
  const { rain_mm, rim_m2, referenceEt_mm_d, stemflow_g = 0 } = rain;
  within("rain_mm", rain_mm, 0, 500);
  within("rim_m2", rim_m2, 0, 5);
  within("referenceEt_mm_d", referenceEt_mm_d, 0, 20);
  within("stemflow_g", stemflow_g, 0, 5000);
  const { umbrella_frac } = valuesOf(waterAssumptions, rain);
  const counts = rain_mm >= 0.2 * referenceEt_mm_d;
  const water_g = counts ? 1000 * rain_mm * rim_m2 * (1 - umbrella_frac) + stemflow_g : 0;
  return { water_g, sd_g: 0.5 * water_g };
}

/**
 * Depth that an amount of water makes on a surface.
 *
 * 1 g on 1 m² is 0.001 mm
 *
 * @param water amount [g], 0 to 1e7; surface [m²], 0.0001 to 1000
 * @returns depth [mm]
 * @throws QuantityError outside those ranges
 * @source our assumption; the density of water
 * @see checks/air-water.json 099-101
 * @example depthOnSurface_mm({ water_g: 160, surface_m2: 0.0508 }) // 3.15
 */
export function depthOnSurface_mm(water: { readonly water_g: number; readonly surface_m2: number }): number {
  within("water_g", water.water_g, 0, 1e7);
  within("surface_m2", water.surface_m2, 1e-4, 1000);
  return water.water_g / (1000 * water.surface_m2);
}

/**
 * Surface on which an amount of water makes a depth.
 *
 * @param water amount [g], 0 to 1e7; depth [mm], 0.001 to 1e5
 * @returns surface [m²]
 * @throws QuantityError outside those ranges
 * @source our assumption; the density of water
 * @see checks/air-water.json 099
 * @example surfaceOfDepth_m2({ water_g: 600, depth_mm: 11.8 }) // 0.0508
 */
export function surfaceOfDepth_m2(water: { readonly water_g: number; readonly depth_mm: number }): number {
  within("water_g", water.water_g, 0, 1e7);
  within("depth_mm", water.depth_mm, 1e-3, 1e5);
  return water.water_g / (1000 * water.depth_mm);
}

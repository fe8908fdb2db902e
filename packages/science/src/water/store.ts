import { within } from "../errors/index.ts";

/**
 * Suction of the water at a height above the bottom of a drained pot.
 *
 * 9.81 kPa per metre; 0 at the bottom
 *
 * @param height_cm height above the bottom [cm], 0 to 200
 * @returns suction [kPa]
 * @throws QuantityError outside that range
 * @source Passioura2006
 * @see checks/air-water.json 103
 * @example suctionAtHeight_kPa(10) // 0.981
 */
export function suctionAtHeight_kPa(height_cm: number): number {
  within("height_cm", height_cm, 0, 200);
  return (9.81 * height_cm) / 100;
}

/**
 * Share of water in a drained pot, from the water that the medium holds at each suction.
 *
 * θcc = (1/H) ∫ θ(9.81 z) dz over the height; straight lines between the points of the curve, flat beyond them. Halving
 * the height raises the share of water and cuts the air.
 *
 * @param pot height of the medium [cm], 1 to 100; suctions [kPa], rising from 0 to 100; share of water at each, 0 to 1
 * @returns share of the volume that is water, 0 to 1; falls with height
 * @throws QuantityError outside those ranges, or when suctions do not rise
 * @source Passioura2006
 * @example containerCapacity_frac({ height_cm: 10, suctions_kPa: [0, 1, 5], waters_frac: [0.9, 0.6, 0.4] }) // 0.753
 */
export function containerCapacity_frac(pot: {
  readonly height_cm: number;
  readonly suctions_kPa: readonly number[];
  readonly waters_frac: readonly number[];
}): number {
  const { height_cm, suctions_kPa, waters_frac } = pot;
  within("height_cm", height_cm, 1, 100);
  within("suctions_n", suctions_kPa.length, 1, 1000);
  within("waters_n", waters_frac.length, suctions_kPa.length, suctions_kPa.length);
  let before = -1e-12;
  for (const suction of suctions_kPa) {
    within("suction_kPa", suction, 0, 100);
    within("suction_kPa", suction, before + 1e-12, 100);
    before = suction;
  }
  for (const water of waters_frac) within("water_frac", water, 0, 1);
  const top = suctionAtHeight_kPa(height_cm);
  // Trapezoids between the points of the curve that lie in the pot: exact for straight lines.
  const inside = suctions_kPa.filter((suction) => suction > 0 && suction < top);
  const edges = [0, ...inside, top];
  let area = 0;
  for (let i = 1; i < edges.length; i += 1) {
    const low = edges[i - 1] ?? NaN;
    const high = edges[i] ?? NaN;
    const mean = (waterAt(suctions_kPa, waters_frac, low) + waterAt(suctions_kPa, waters_frac, high)) / 2;
    area += mean * (high - low);
  }
  return area / top;
}

function waterAt(suctions: readonly number[], waters: readonly number[], suction: number): number {
  for (let i = 0; i < suctions.length; i += 1) {
    const here = suctions[i] ?? NaN;
    if (suction > here) continue;
    if (i === 0) return waters[0] ?? NaN;
    const before = suctions[i - 1] ?? NaN;
    const share = (suction - before) / (here - before);
    return (waters[i - 1] ?? NaN) + share * ((waters[i] ?? NaN) - (waters[i - 1] ?? NaN));
  }
  return waters[waters.length - 1] ?? NaN;
}

/**
 * Water that a pot can give its plant between drained and lasting wilt, estimated from the medium.
 *
 * V (θcc − θw), 1 mL = 1 g. A supervised dry-down with a scale halves the uncertainty (12 instead of 25 %).
 *
 * @param pot volume of the medium [mL], 1 to 1e6; share of water drained and at wilting, 0 to 1, drained not below wilting
 * @returns store [g]
 * @throws QuantityError outside those ranges
 * @source our assumption; definition of the store
 * @example potStore_g({ medium_mL: 700, drainedWater_frac: 0.6, wiltingWater_frac: 0.15 }) // 315
 */
export function potStore_g(pot: {
  readonly medium_mL: number;
  readonly drainedWater_frac: number;
  readonly wiltingWater_frac: number;
}): number {
  within("medium_mL", pot.medium_mL, 1, 1e6);
  within("drainedWater_frac", pot.drainedWater_frac, 0, 1);
  within("wiltingWater_frac", pot.wiltingWater_frac, 0, 1);
  within("wiltingWater_frac", pot.wiltingWater_frac, 0, pot.drainedWater_frac);
  return pot.medium_mL * (pot.drainedWater_frac - pot.wiltingWater_frac);
}

/**
 * Water that a rooted field soil can give, and the part that is given freely.
 *
 * TAW = 1000 (θfc − θwp) Zr; RAW = p TAW
 *
 * @param soil share of water at field capacity and at wilting, 0 to 1; root depth [m], 0.01 to 5; depletion given freely, 0.1 to 0.8
 * @returns both depths [mm]
 * @throws QuantityError outside those ranges
 * @source FAO56 eqs 82 and 83
 * @see checks/air-water.json 093, 094
 * @example soilStore({ fieldCapacity_frac: 0.32, wiltingWater_frac: 0.15, rootDepth_m: 0.8, depletionFreely_frac: 0.4 }).total_mm // 136
 */
export function soilStore(soil: {
  readonly fieldCapacity_frac: number;
  readonly wiltingWater_frac: number;
  readonly rootDepth_m: number;
  readonly depletionFreely_frac: number;
}): { readonly total_mm: number; readonly freely_mm: number } {
  within("fieldCapacity_frac", soil.fieldCapacity_frac, 0, 1);
  within("wiltingWater_frac", soil.wiltingWater_frac, 0, 1);
  within("wiltingWater_frac", soil.wiltingWater_frac, 0, soil.fieldCapacity_frac);
  within("rootDepth_m", soil.rootDepth_m, 0.01, 5);
  within("depletionFreely_frac", soil.depletionFreely_frac, 0.1, 0.8);
  const total_mm = 1000 * (soil.fieldCapacity_frac - soil.wiltingWater_frac) * soil.rootDepth_m;
  return { total_mm, freely_mm: soil.depletionFreely_frac * total_mm };
}

import { within } from "../errors/index.ts";

/**
 * How far a thirsty plant uses less than it would.
 *
 * Ks = 1 for r ≤ p, else (1 − r)/(1 − p); r is the depletion as a share of the store
 *
 * @param pot depletion, 0 to 1.5 (counted as 1 beyond 1); threshold p, 0 to 0.95
 * @returns stress coefficient, 0 to 1; falls with depletion
 * @throws QuantityError outside those ranges
 * @source FAO56 eq. 84
 * @see checks/air-water.json 095
 * @example stressCoefficient({ depletion_frac: 0.8, threshold_frac: 0.6 }) // 0.5
 */
export function stressCoefficient(pot: {
  readonly depletion_frac: number;
  readonly threshold_frac: number;
}): number {
  within("depletion_frac", pot.depletion_frac, 0, 1.5);
  within("threshold_frac", pot.threshold_frac, 0, 0.95);
  if (pot.depletion_frac <= pot.threshold_frac) return 1;
  return Math.max(0, (1 - pot.depletion_frac) / (1 - pot.threshold_frac));
}

/**
 * A dry-down day by day: the stress of a day comes from the depletion at the end of the day before.
 *
 * @param soil store and depletion at the start [mm or g], store 0.1 to 1e6, depletion 0 to the store; use without stress [same unit per day], 0 to 1e5; threshold, 0 to 0.95; days, 1 to 1000
 * @returns stress coefficient and depletion at the end, of each day [day]
 * @throws QuantityError outside those ranges
 * @source FAO56 example 37
 * @see checks/air-water.json 095
 * @example dryDown({ store: 160, depletionStart: 55, usePerDay: 6, threshold_frac: 0.4, days_n: 3 }).depletions[2] // 72.8
 */
export function dryDown(soil: {
  readonly store: number;
  readonly depletionStart: number;
  readonly usePerDay: number;
  readonly threshold_frac: number;
  readonly days_n: number;
}): { readonly stressCoefficients: readonly number[]; readonly depletions: readonly number[] } {
  const { store, depletionStart, usePerDay, threshold_frac, days_n } = soil;
  within("store", store, 0.1, 1e6);
  within("depletionStart", depletionStart, 0, 1e6);
  within("depletionStart", depletionStart, 0, store);
  within("usePerDay", usePerDay, 0, 1e5);
  within("threshold_frac", threshold_frac, 0, 0.95);
  within("days_n", days_n, 1, 1000);
  const stressCoefficients: number[] = [];
  const depletions: number[] = [];
  let depletion = depletionStart;
  for (let day = 0; day < days_n; day += 1) {
    const stress = stressCoefficient({ depletion_frac: depletion / store, threshold_frac });
    depletion = Math.min(store, depletion + stress * usePerDay);
    stressCoefficients.push(stress);
    depletions.push(depletion);
  }
  return { stressCoefficients, depletions };
}

/**
 * Depletion without loss of growth in the field, adjusted for the demand of the air.
 *
 * p = p(table) + 0.04 (5 − ETc), held to 0.1..0.8. Rests on suction in soils: not for peat, which holds almost all its
 * water below 10 kPa.
 *
 * @param crop table value, 0.1 to 0.8; crop evapotranspiration [mm d⁻¹], 0 to 20
 * @returns share of the store, 0.1 to 0.8; falls with demand
 * @throws QuantityError outside those ranges
 * @source FAO56 Table 22, footnote
 * @see checks/air-water.json 097
 * @example adjustedFieldDepletion_frac({ depletionTable_frac: 0.3, cropEt_mm_d: 5 }) // 0.3
 */
export function adjustedFieldDepletion_frac(crop: {
  readonly depletionTable_frac: number;
  readonly cropEt_mm_d: number;
}): number {
  within("depletionTable_frac", crop.depletionTable_frac, 0.1, 0.8);
  within("cropEt_mm_d", crop.cropEt_mm_d, 0, 20);
  return Math.min(0.8, Math.max(0.1, crop.depletionTable_frac + 0.04 * (5 - crop.cropEt_mm_d)));
}

/**
 * Depletion at which use begins to fall, from three measured water contents.
 *
 * (full − decline)/(full − stop)
 *
 * @param medium share of water when full, where use begins to fall, and where it stops, 0 to 1, in falling order
 * @returns share of the store, 0 to 1
 * @throws QuantityError outside those ranges
 * @source our assumption; definition of relative depletion
 * @see checks/air-water.json 102
 * @example useDeclineThreshold_frac({ fullWater_frac: 0.5, declineWater_frac: 0.28, stopWater_frac: 0.16 }) // 0.647
 */
export function useDeclineThreshold_frac(medium: {
  readonly fullWater_frac: number;
  readonly declineWater_frac: number;
  readonly stopWater_frac: number;
}): number {
  const { fullWater_frac, declineWater_frac, stopWater_frac } = medium;
  within("fullWater_frac", fullWater_frac, 0, 1);
  within("declineWater_frac", declineWater_frac, 0, 1);
  within("stopWater_frac", stopWater_frac, 0, 1);
  within("declineWater_frac", declineWater_frac, 0, fullWater_frac);
  within("stopWater_frac", stopWater_frac, 0, declineWater_frac);
  within("stopWater_frac", stopWater_frac, 0, fullWater_frac - 1e-9);
  return (fullWater_frac - declineWater_frac) / (fullWater_frac - stopWater_frac);
}

/**
 * Whether a pot this full counts as airless: hardly depleted, and low or full of roots.
 *
 * @param pot depletion, 0 to 1.5; height of the medium [cm], 1 to 100; whether roots fill it
 * @returns true when its hours count as airless
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example isAirless({ depletion_frac: 0.05, height_cm: 7, rootbound: false }) // true
 */
export function isAirless(pot: {
  readonly depletion_frac: number;
  readonly height_cm: number;
  readonly rootbound: boolean;
}): boolean {
  within("depletion_frac", pot.depletion_frac, 0, 1.5);
  within("height_cm", pot.height_cm, 1, 100);
  return pot.depletion_frac < 0.1 && (pot.height_cm < 9 || pot.rootbound);
}

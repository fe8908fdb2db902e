import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type WaterSettings, waterAssumptions } from "./assumptions.ts";
import { capturedShare_frac, type RewettingKind } from "./pour.ts";

export type RewettingPlan = {
  /** one entry a pour [pour] */
  readonly pours_g: readonly number[];
  readonly wait_min: number;
  readonly total_g: number;
  /** bone dry: standing the pot in water to its rim for 20 to 30 min is as good or better */
  readonly soakInstead: boolean;
};

/**
 * Pours that bring a pot back to full: one while it is moist, several with waits once it sheds water.
 *
 * While r > 0.6 each pour is at most a quarter of the store and keeps only its captured share; then the rest at once, with
 * the leaching share. Stop by weight: done at 0.95 of the drained weight.
 *
 * @param pot depletion [g], 0 to 1e5, not above 1.2 × store; store [g], 1 to 1e6; leaching share of the last pour, 0 to 0.5; kind of medium; any of the field's rewetting assumptions
 * @returns pours [g] in order, wait between them [min], their sum [g], whether a soak is advised instead
 * @throws QuantityError outside those ranges
 * @source our assumption; pulses and waits are common practice, no source
 * @example rewettingPlan({ depletion_g: 190, store_g: 200, leaching_frac: 0, rewetting: "peat" }).wait_min // 15
 */
export function rewettingPlan(
  pot: {
    readonly depletion_g: number;
    readonly store_g: number;
    readonly leaching_frac: number;
    readonly rewetting: RewettingKind;
  } & WaterSettings,
): RewettingPlan {
  const { depletion_g, store_g, leaching_frac, rewetting } = pot;
  within("store_g", store_g, 1, 1e6);
  within("depletion_g", depletion_g, 0, 1e5);
  within("depletion_g", depletion_g, 0, 1.2 * store_g);
  within("leaching_frac", leaching_frac, 0, 0.5);
  const set = valuesOf(waterAssumptions, pot);
  const pours_g: number[] = [];
  let left = depletion_g;
  while (left / store_g > 0.6) {
    const pour = Math.min(set.pulseMax_frac * store_g, left);
    pours_g.push(pour);
    left -= pour * capturedShare_frac({ ...pot, depletion_frac: left / store_g, rewetting });
  }
  if (left > 0) {
    const captured = capturedShare_frac({ ...pot, depletion_frac: left / store_g, rewetting });
    pours_g.push(left / (captured * (1 - leaching_frac)));
  }
  return {
    pours_g,
    wait_min: pours_g.length > 1 ? set.pulseWait_min : 0,
    total_g: pours_g.reduce((sum, each) => sum + each, 0),
    soakInstead: depletion_g / store_g > 0.85,
  };
}

/**
 * Whether two pours show a dry core: together they added less than half of what was poured. Then soak from below.
 *
 * @param pours poured [g], 1 to 1e5, and weight gained [g], 0 to 1e5, of each of two pours, water in the saucer not counted
 * @returns true when the core is dry
 * @throws QuantityError outside those ranges
 * @source our assumption
 * @example hasDryCore({ firstPour_g: 50, firstGain_g: 15, secondPour_g: 50, secondGain_g: 20 }) // true
 */
export function hasDryCore(pours: {
  readonly firstPour_g: number;
  readonly firstGain_g: number;
  readonly secondPour_g: number;
  readonly secondGain_g: number;
}): boolean {
  within("firstPour_g", pours.firstPour_g, 1, 1e5);
  within("firstGain_g", pours.firstGain_g, 0, 1e5);
  within("secondPour_g", pours.secondPour_g, 1, 1e5);
  within("secondGain_g", pours.secondGain_g, 0, 1e5);
  return pours.firstGain_g + pours.secondGain_g < 0.5 * (pours.firstPour_g + pours.secondPour_g);
}

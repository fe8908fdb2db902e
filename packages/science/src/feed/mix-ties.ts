import { conductivityAt_mS_cm, isAllowed, misfitAt, TIE } from "./mix-measure.ts";
import type { CompiledMix } from "./mix-problem.ts";
import { type BoxRows, leastOverBox } from "./mix-relax.ts";
import { mayHoldOne, replaced, spreadOut } from "./mix-search.ts";

export type Tied = { readonly steps: Int32Array; readonly conductivity_mS_cm: number };

/** Whether one mix comes before another: lower conductivity, then fewer steps of the first product, of the second... */
function comesFirst(one: Tied, other: Tied): boolean {
  const apart = one.conductivity_mS_cm - other.conductivity_mS_cm;
  if (Math.abs(apart) > TIE) return apart < 0;
  for (let index_n = 0; index_n < one.steps.length; index_n++) {
    const difference = (one.steps[index_n] as number) - (other.steps[index_n] as number);
    if (difference !== 0) return difference < 0;
  }
  return false;
}

/**
 * Of all mixes of a choice whose misfit is within a hair of the least one, that of the lowest conductivity, then of the fewest
 * steps in the order of products.
 *
 * More of a product never lowers conductivity: the lowest corner of a box bounds it, and where that corner is one of the
 * ties it comes before all others of its box.
 * @source our assumption
 */
export function bestOfTies(
  mix: CompiledMix,
  chosen: readonly number[],
  rows: BoxRows,
  misfit: number,
  known: Tied | undefined,
): Tied | undefined {
  let best = known;
  const boxes = [
    {
      low: Int32Array.from(chosen, (index_n) => mix.least[index_n] as number),
      high: Int32Array.from(chosen, (index_n) => mix.most[index_n] as number),
    },
  ];
  const at = new Float64Array(chosen.length);
  for (let box = boxes.pop(); box; box = boxes.pop()) {
    const { low, high } = box;
    at.set(low);
    if (leastOverBox(rows, low, high, at, 40, misfit + 2 * TIE) > misfit + 2 * TIE) continue;
    if (!mayHoldOne(mix, chosen, low, high)) continue;
    const corner = spreadOut(mix, chosen, low);
    const conductivity_mS_cm = conductivityAt_mS_cm(mix, corner);
    if (best && conductivity_mS_cm > best.conductivity_mS_cm + TIE) continue;
    if (misfitAt(mix, corner) <= misfit + TIE && isAllowed(mix, corner)) {
      const tied = { steps: corner, conductivity_mS_cm };
      if (!best || comesFirst(tied, best)) best = tied;
      continue;
    }
    let split = -1;
    let room = 0;
    for (let place_n = 0; place_n < at.length; place_n++) {
      const here = (high[place_n] as number) - (low[place_n] as number);
      if (here > room) {
        room = here;
        split = place_n;
      }
    }
    if (split < 0) continue;
    const middle = (low[split] as number) + Math.floor((room - 1) / 2);
    boxes.push({ low: replaced(low, split, middle + 1), high }, { low, high: replaced(high, split, middle) });
  }
  return best;
}

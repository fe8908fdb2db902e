import { conductivityAt_mS_cm, isAllowed, lineAt, misfitAt } from "./mix-measure.ts";
import type { CompiledMix } from "./mix-problem.ts";
import { type BoxRows, leastOverBox } from "./mix-relax.ts";

/** What a limit weighs as a row: heavy enough to bind, light enough to keep the arithmetic clean. */
const LIMIT_WEIGHT = 1e5;
const HAIR = 1e-9;

/**
 * The rows of the products of one choice.
 *
 * @source our assumption, the definition
 */
export function rowsOf(mix: CompiledMix, chosen: readonly number[]): BoxRows {
  const all = [
    ...mix.aims,
    ...[...mix.limits, ...mix.prunes].map((row) => ({
      ...row,
      low: Number.NEGATIVE_INFINITY,
      high: 0,
      weight: LIMIT_WEIGHT,
    })),
  ];
  return {
    variables_n: chosen.length,
    rows_n: all.length,
    lines: Float64Array.from(all.flatMap((row) => chosen.map((index_n) => row.steps[index_n] as number))),
    base: Float64Array.from(all, ({ base }) => base),
    low: Float64Array.from(all, ({ low }) => low),
    high: Float64Array.from(all, ({ high }) => high),
    weight: Float64Array.from(all, ({ weight }) => weight),
  };
}

/**
 * Steps of all products from those of the chosen.
 *
 * @source our assumption, the definition
 */
export function spreadOut(mix: CompiledMix, chosen: readonly number[], steps: ArrayLike<number>): Int32Array {
  const all = new Int32Array(mix.products.length);
  chosen.forEach((index_n, place_n) => {
    all[index_n] = steps[place_n] as number;
  });
  return all;
}

export type Found = { readonly misfit: number; readonly steps: Int32Array };

/** A box of steps, and where the one that it was cut from had its least. */
type Box = {
  readonly low: Int32Array<ArrayBuffer>;
  readonly high: Int32Array<ArrayBuffer>;
  readonly from: Float64Array;
};

/**
 * The best mix of just these products, if it is better than what is known: boxes of steps are split until none can hold one.
 *
 * @param mix the problem
 * @param chosen places of the products, each of which is used
 * @param best what must be undercut
 * @returns what undercuts it, or nothing
 * @source our assumption
 */
export function searchChoice(
  mix: CompiledMix,
  chosen: readonly number[],
  rows: BoxRows,
  best: number,
): Found | undefined {
  const low = Int32Array.from(chosen, (index_n) => mix.least[index_n] as number);
  const high = Int32Array.from(chosen, (index_n) => mix.most[index_n] as number);
  if (low.some((least, place_n) => least > (high[place_n] as number))) return undefined;
  let found: Found | undefined;
  let toBeat = best;
  const look = (steps: ArrayLike<number>) => {
    const all = spreadOut(mix, chosen, steps);
    const misfit = misfitAt(mix, all);
    if (misfit < toBeat && isAllowed(mix, all)) {
      toBeat = misfit;
      found = { misfit, steps: all };
    }
  };
  const middle = Float64Array.from(low, (least, place_n) => (least + (high[place_n] as number)) / 2);
  const boxes: Box[] = [{ low, high, from: middle }];
  const rounded = new Int32Array(chosen.length);
  for (let box = boxes.pop(); box; box = boxes.pop()) {
    const { low: least, high: most } = box;
    const at = box.from.slice();
    for (let place_n = 0; place_n < at.length; place_n++)
      at[place_n] = Math.min(
        most[place_n] as number,
        Math.max(least[place_n] as number, at[place_n] as number),
      );
    if (leastOverBox(rows, least, most, at, 40, toBeat - 1e-11) >= toBeat - 1e-11) continue;
    if (!mayHoldOne(mix, chosen, least, most)) continue;
    for (let place_n = 0; place_n < at.length; place_n++)
      rounded[place_n] = Math.round(at[place_n] as number);
    look(rounded);
    for (let place_n = 0; place_n < at.length; place_n++)
      rounded[place_n] = Math.max(least[place_n] as number, Math.floor((at[place_n] as number) + 1e-9));
    look(rounded);
    const split_n = widest(least, most, at);
    if (split_n < 0) continue;
    const cut = Math.min((most[split_n] as number) - 1, Math.floor(at[split_n] as number));
    const below = { low: least, high: replaced(most, split_n, cut), from: at };
    const above = { low: replaced(least, split_n, cut + 1), high: most, from: at };
    // The half in which the bound lies is looked through first.
    if ((at[split_n] as number) > cut + 0.5) boxes.push(below, above);
    else boxes.push(above, below);
  }
  return found;
}

/** The same steps with one of them another. */
export const replaced = (
  steps: Int32Array<ArrayBuffer>,
  place_n: number,
  step_n: number,
): Int32Array<ArrayBuffer> => {
  const copy = steps.slice();
  copy[place_n] = step_n;
  return copy;
};

/** The variable to split: the one furthest from a whole step, of equals the one with the most room. */
function widest(low: Int32Array, high: Int32Array, at: Float64Array): number {
  let place = -1;
  let most = -1;
  for (let place_n = 0; place_n < at.length; place_n++) {
    const room = (high[place_n] as number) - (low[place_n] as number);
    if (room <= 0) continue;
    const off = Math.abs((at[place_n] as number) - Math.round(at[place_n] as number));
    const merit = (off > 1e-7 ? 1 + off : 0) + room * 1e-9;
    if (merit > most) {
      most = merit;
      place = place_n;
    }
  }
  return place;
}

/**
 * Whether a box can hold an allowed mix: each line at its best corner, and conductivity at its lowest.
 *
 * @source our assumption, the definition
 */
export function mayHoldOne(
  mix: CompiledMix,
  chosen: readonly number[],
  low: ArrayLike<number>,
  high: ArrayLike<number>,
): boolean {
  for (const row of mix.limits) {
    let least = row.base;
    for (let place_n = 0; place_n < chosen.length; place_n++) {
      const step = row.steps[chosen[place_n] as number] as number;
      least += step * ((step > 0 ? low[place_n] : high[place_n]) as number);
    }
    if (least > HAIR) return false;
  }
  const lowest = spreadOut(mix, chosen, low);
  for (const row of mix.prunes) if (lineAt(row, lowest) > HAIR) return false;
  const { conductivity } = mix;
  if (!conductivity || conductivity.most_mS_cm === Number.POSITIVE_INFINITY) return true;
  // Ions alone carry more than ions among others: where even that is little enough, the full sum is not needed.
  if (lineAt(conductivity.alone, lowest) <= 0) return true;
  return conductivityAt_mS_cm(mix, lowest) <= conductivity.most_mS_cm + HAIR;
}

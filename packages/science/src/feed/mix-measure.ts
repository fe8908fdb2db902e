import { conductivityUnchecked_mS_cm, type IonName, ionNames } from "./conductivity.ts";
import type { CompiledMix, MixRow } from "./mix-problem.ts";

/** Misfits within this of each other are the same. */
export const TIE = 1e-9;
/** Arithmetic of a limit that is met exactly. */
const HAIR = 1e-9;

/**
 * Where a line stands at these steps.
 *
 * @source our assumption, the definition
 */
export function lineAt(row: MixRow, steps: ArrayLike<number>): number {
  let value = row.base;
  for (let index_n = 0; index_n < steps.length; index_n++)
    value += (row.steps[index_n] as number) * (steps[index_n] as number);
  return value;
}

/**
 * Weighted squares of what lies outside the ranges.
 *
 * @source our assumption, the definition
 */
export function misfitAt(mix: CompiledMix, steps: ArrayLike<number>): number {
  let sum = 0;
  for (const aim of mix.aims) {
    const value = lineAt(aim, steps);
    const miss = value > aim.high ? value - aim.high : value < aim.low ? aim.low - value : 0;
    sum += aim.weight * miss * miss;
  }
  return sum;
}

/** Names of the limits that these steps pass, conductivity left out. */
export const passedLimits = (mix: CompiledMix, steps: ArrayLike<number>): readonly string[] =>
  mix.limits.filter((row) => lineAt(row, steps) > HAIR).map(({ name }) => name);

const ions: Partial<Record<IonName, number>> = {};

/**
 * Conductivity of the mix by the full sum of ions [mS/cm].
 *
 * @source our assumption, the definition
 */
export function conductivityAt_mS_cm(mix: CompiledMix, steps: ArrayLike<number>): number {
  if (!mix.conductivity) return 0;
  const { water, steps: perStep } = mix.conductivity;
  for (let ion_n = 0; ion_n < ionNames.length; ion_n++) {
    let amount = water[ion_n] as number;
    for (let index_n = 0; index_n < steps.length; index_n++)
      amount += (perStep[index_n]?.[ion_n] as number) * (steps[index_n] as number);
    ions[ionNames[ion_n] as IonName] = amount;
  }
  return conductivityUnchecked_mS_cm(ions);
}

/**
 * Whether a mix keeps all limits.
 *
 * @source our assumption, the definition
 */
export function isAllowed(mix: CompiledMix, steps: ArrayLike<number>): boolean {
  for (const row of mix.limits) if (lineAt(row, steps) > HAIR) return false;
  const most = mix.conductivity?.most_mS_cm ?? Number.POSITIVE_INFINITY;
  return most === Number.POSITIVE_INFINITY || conductivityAt_mS_cm(mix, steps) <= most + HAIR;
}

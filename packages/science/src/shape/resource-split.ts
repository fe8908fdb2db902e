import { within } from "../errors/index.ts";

/**
 * How the strength of a stem is shared at a fork.
 *
 * v_m = v λ Qm / (λ Qm + (1 - λ) Ql), v_l = v - v_m; Q is the light that each arm catches
 *
 * @param fork strength below, 0 to 1e6; share for the main arm at equal light, 0.05 to 0.95; light of the arms in one unit, 0 to 1e9
 * @returns strength of main and side arm; halves where neither catches light
 * @throws QuantityError outside those ranges
 * @source Palubicki2009
 * @example resourceSplit({ strength: 6, mainShare_frac: 0.5, lightMain: 1, lightSide: 2 }).side // 4
 */
export function resourceSplit(fork: {
  readonly strength: number;
  readonly mainShare_frac: number;
  readonly lightMain: number;
  readonly lightSide: number;
}): { readonly main: number; readonly side: number } {
  const { strength, mainShare_frac, lightMain, lightSide } = fork;
  within("strength", strength, 0, 1e6);
  within("mainShare_frac", mainShare_frac, 0.05, 0.95);
  within("lightMain", lightMain, 0, 1e9);
  within("lightSide", lightSide, 0, 1e9);
  const weighed = mainShare_frac * lightMain + (1 - mainShare_frac) * lightSide;
  const main = weighed > 0 ? (strength * mainShare_frac * lightMain) / weighed : strength / 2;
  return { main, side: strength - main };
}

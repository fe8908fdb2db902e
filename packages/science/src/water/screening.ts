import type { ScreeningNote } from "../air/index.ts";

/**
 * Look over the weight of a pot beside what was expected.
 *
 * @param weighing weight, expected weight and its standard deviation [g], any value; whether it was watered or rained on since
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenWeight({ weight_g: 1400, expected_g: 786, sd_g: 9, wateredSince: false })[0].level // "look"
 */
export function screenWeight(weighing: {
  readonly weight_g: number;
  readonly expected_g: number;
  readonly sd_g: number;
  readonly wateredSince: boolean;
}): readonly ScreeningNote[] {
  const { weight_g, expected_g, sd_g, wateredSince } = weighing;
  const quantity = "weight_g";
  if (!(weight_g > 0))
    return [{ level: "refuse", quantity, what: "not above 0 g", likelyCause: "tare left on" }];
  const off = (weight_g - expected_g) / Math.max(sd_g, 1e-9);
  if (Math.abs(off) <= 4) return [];
  const what = `${Math.abs(off).toFixed(1)} standard deviations ${off > 0 ? "above" : "below"} what was expected`;
  const heavier = wateredSince
    ? "stake or label added, or another pot"
    : "another pot, or water in the saucer";
  return [
    { level: "look", quantity, what, likelyCause: off > 0 ? heavier : "another pot, or a tare left on" },
  ];
}

/**
 * Look over a poured volume.
 *
 * @param pour volume [mL], believed store of the pot [g], and weight gained [g] when it was weighed before and after; any value
 * @returns notes, none when all is usual
 * @source our assumption
 * @example screenPour({ poured_mL: 0.3, store_g: 200 })[0].likelyCause // "litres entered as mL"
 */
export function screenPour(pour: {
  readonly poured_mL: number;
  readonly store_g: number;
  readonly gain_g?: number;
}): readonly ScreeningNote[] {
  const { poured_mL, store_g, gain_g } = pour;
  const notes: ScreeningNote[] = [];
  const quantity = "poured_mL";
  if (!(poured_mL > 0)) {
    notes.push({ level: "refuse", quantity, what: "not above 0 mL", likelyCause: "nothing was poured" });
  } else if (poured_mL > 3 * store_g) {
    const what = "more than three times what the pot holds";
    notes.push({ level: "refuse", quantity, what, likelyCause: "another unit entered as mL" });
  } else if (poured_mL < 0.01 * store_g) {
    const what = "less than a hundredth of what the pot holds";
    notes.push({ level: "look", quantity, what, likelyCause: "litres entered as mL" });
  }
  if (gain_g !== undefined && gain_g < 0 && poured_mL > 0) {
    const what = "water was poured, yet the weight fell";
    notes.push({ level: "look", quantity, what, likelyCause: "another pot, or something was taken off" });
  }
  return notes;
}

/**
 * Look over the share of a pot's daily use that falls in the dark.
 *
 * @param nightShare_frac learned share, any value
 * @returns notes, none up to 0.35
 * @source our assumption
 * @example screenNightShare(0.5)[0].level // "look"
 */
export function screenNightShare(nightShare_frac: number): readonly ScreeningNote[] {
  if (nightShare_frac <= 0.35) return [];
  const what = "more than 35 % of the use falls in the dark";
  return [
    {
      level: "look",
      quantity: "nightShare_frac",
      what,
      likelyCause: "leaking pot, or draught from a heater",
    },
  ];
}

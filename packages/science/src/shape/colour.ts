import { within } from "../errors/index.ts";

/**
 * Indices that part green leaf from what is not.
 *
 * r, g, b = shares of R + G + B; ExG = 2g - r - b, ExR = 1.4 r - g; leaf where ExG - ExR > 0. Red fruit and bark are not leaf: the
 * index labels, it does not find the plant
 *
 * @param pixel red, green, blue, each 0 to 255
 * @returns excess green, excess red, their difference; all 0 for black
 * @throws QuantityError outside those ranges
 * @source MeyerCamargoNeto2008; coefficients from memory
 * @example leafColour({ red: 60, green: 120, blue: 40 }).difference // 0.8
 */
export function leafColour(pixel: { readonly red: number; readonly green: number; readonly blue: number }): {
  readonly excessGreen: number;
  readonly excessRed: number;
  readonly difference: number;
} {
  within("red", pixel.red, 0, 255);
  within("green", pixel.green, 0, 255);
  within("blue", pixel.blue, 0, 255);
  const sum = pixel.red + pixel.green + pixel.blue;
  if (sum === 0) return { excessGreen: 0, excessRed: 0, difference: 0 };
  const excessGreen = (2 * pixel.green - pixel.red - pixel.blue) / sum;
  const excessRed = (1.4 * pixel.red - pixel.green) / sum;
  return { excessGreen, excessRed, difference: excessGreen - excessRed };
}

/**
 * The level that best parts a histogram in two, and what each level would give.
 *
 * Between-class variance w0 w1 (m0 - m1)², class 0 the levels below the threshold; the first maximum wins
 *
 * @param histogram counts at levels 0, 1, 2 ... [level], 0 to 1e12, two levels at least
 * @returns threshold; between- and within-class variance of thresholds 1, 2 ...
 * @throws QuantityError outside those ranges, or where nothing was counted
 * @source Otsu1979
 * @example otsuThreshold([8, 7, 2, 6, 9, 4]).threshold_n // 3
 */
export function otsuThreshold(histogram_n: readonly number[]): {
  readonly threshold_n: number;
  readonly between: readonly number[];
  readonly inside: readonly number[];
} {
  within("levels_n", histogram_n.length, 2, 65_536);
  let all = 0;
  let first = 0;
  let second = 0;
  histogram_n.forEach((count, level) => {
    within("histogram_n", count, 0, 1e12);
    all += count;
    first += count * level;
    second += count * level * level;
  });
  within("counted_n", all, 1, 1e15);
  const total = second / all - (first / all) ** 2;
  const between: number[] = [];
  let below = 0;
  let belowFirst = 0;
  let best = 1;
  for (let threshold = 1; threshold < histogram_n.length; threshold += 1) {
    const count = histogram_n[threshold - 1] as number;
    below += count;
    belowFirst += count * (threshold - 1);
    const above = all - below;
    const apart = below > 0 && above > 0 ? belowFirst / below - (first - belowFirst) / above : 0;
    const variance = (below / all) * (above / all) * apart * apart;
    between.push(variance);
    if (variance > (between[best - 1] as number) + 1e-12) best = threshold;
  }
  return { threshold_n: best, between, inside: between.map((each) => Math.max(0, total - each)) };
}

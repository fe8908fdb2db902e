import { within } from "../errors/index.ts";

/** A stream of chance that the same seed always repeats. */
export type Generator = {
  /** 0 included, 1 excluded */
  readonly uniform: () => number;
  readonly normal: () => number;
  /** heavy-tailed, centre 0, not scaled to unit variance */
  readonly studentT: (degreesOfFreedom: number) => number;
  /** whole number from 0 to below n */
  readonly index: (count_n: number) => number;
};

/** Spread a text over 128 bits (four FNV-1a runs with a final avalanche), so that near seeds give unlike streams. */
function wordsOf(seed: string): [number, number, number, number] {
  const word = (start: number): number => {
    let hash = start >>> 0;
    for (let i = 0; i < seed.length; i += 1) {
      hash = Math.imul(hash ^ seed.charCodeAt(i), 0x01000193);
      hash ^= hash >>> 15;
    }
    hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
    hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
    return (hash ^ (hash >>> 16)) >>> 0;
  };
  const words: [number, number, number, number] = [
    word(0x811c9dc5),
    word(0x9e3779b9),
    word(0x7f4a7c15),
    word(0xf39cc060),
  ];
  // The all-zero state is the one from which the generator never moves.
  if (words.every((each) => each === 0)) words[0] = 1;
  return words;
}

const rotate = (x: number, by: number): number => (x << by) | (x >>> (32 - by));

/**
 * A seeded generator of chance (xoshiro128**), the same on every device.
 *
 * Normal draws by the polar method, one pair at a time; Student t as a normal over the root of a chi-square.
 *
 * @param seed any text, such as a pot's id and a date
 * @returns the generator; it carries its own state
 * @source BlackmanVigna2018
 */
export function seededGenerator(seed: string): Generator {
  let [a, b, c, d] = wordsOf(seed);
  const next = (): number => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
  // 53 bits, so that quantiles of long samples do not show steps.
  const uniform = (): number => ((next() >>> 5) * 67108864 + (next() >>> 6)) / 9007199254740992;
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      if (square > 0 && square < 1) {
        const scale = Math.sqrt((-2 * Math.log(square)) / square);
        spare = y * scale;
        return x * scale;
      }
    }
  };
  /** Gamma with shape ≥ 1 by Marsaglia and Tsang's squeeze; smaller shapes by a power of a uniform. */
  const gamma = (shape: number): number => {
    if (shape < 1) return gamma(shape + 1) * (1 - uniform()) ** (1 / shape);
    const base = shape - 1 / 3;
    const width = 1 / Math.sqrt(9 * base);
    for (;;) {
      const x = normal();
      const v = (1 + width * x) ** 3;
      if (v > 0 && Math.log(1 - uniform()) < 0.5 * x * x + base - base * v + base * Math.log(v))
        return base * v;
    }
  };
  return {
    uniform,
    normal,
    studentT: (degreesOfFreedom) => {
      within("degreesOfFreedom", degreesOfFreedom, 0.5, 1e6);
      return normal() / Math.sqrt((2 * gamma(degreesOfFreedom / 2)) / degreesOfFreedom);
    },
    index: (count_n) => {
      within("count_n", count_n, 1, 4294967295);
      return Math.floor(uniform() * count_n);
    },
  };
}

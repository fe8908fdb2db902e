/**
 * Seeded chance for the nursery. Every part of a run draws from a stream of its own, named by a label, so that one
 * more draw in one place changes nothing in another.
 */
export interface Chance {
  /** From 0 (included) to 1 (excluded). */
  uniform(): number;
  between(low: number, high: number): number;
  /** Whole number, both ends included. */
  whole(low: number, high: number): number;
  normal(mean: number, sd: number): number;
  /** exp of a normal: `median` times a factor whose log has the given sd. */
  logNormal(median: number, sdOfLog: number): number;
  /** Student t with few degrees of freedom, scaled to sd 1: mostly calm, sometimes wild. */
  heavyTailed(degreesOfFreedom: number): number;
  happens(probability: number): boolean;
  pick<Item>(items: readonly Item[]): Item;
  /** A stream of its own under this one. */
  under(label: string | number): Chance;
}

/** Makes the stream of a seed. Same seed, same draws, on every machine. */
export function chanceOf(seed: string | number): Chance {
  return streamOf(String(seed));
}

function streamOf(name: string): Chance {
  const next = generator(name);
  const normal = normalsFrom(next);
  const chance: Chance = {
    uniform: next,
    between: (low, high) => low + (high - low) * next(),
    whole: (low, high) => low + Math.floor((high - low + 1) * next()),
    normal: (mean, sd) => mean + sd * normal(),
    logNormal: (median, sdOfLog) => median * Math.exp(sdOfLog * normal()),
    heavyTailed: (degreesOfFreedom) => {
      let sum = 0;
      for (let i = 0; i < degreesOfFreedom; i++) sum += normal() ** 2;
      const t = normal() / Math.sqrt(sum / degreesOfFreedom);
      return t / Math.sqrt(degreesOfFreedom / (degreesOfFreedom - 2));
    },
    happens: (probability) => next() < probability,
    pick: (items) => {
      const item = items[Math.floor(next() * items.length)];
      if (item === undefined) throw new RangeError("nothing to pick from");
      return item;
    },
    under: (label) => streamOf(`${name}/${label}`),
  };
  return chance;
}

/** Small fast counting generator on four 32-bit words. @source Doty-Humphrey (2010), PractRand: sfc32 */
function generator(name: string): () => number {
  let [a, b, c, d] = wordsOf(name);
  const step = () => {
    const t = (a + b + d) | 0;
    d = (d + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + t;
    c |= 0;
    return t >>> 0;
  };
  for (let i = 0; i < 15; i++) step();
  // 53 bits, so that no two neighbouring doubles are out of reach.
  return () => ((step() >>> 5) * 67_108_864 + (step() >>> 6)) / 9_007_199_254_740_992;
}

/** Four words from a text by FNV-1a with different starts. @source Fowler, Noll and Vo (FNV-1a, 32 bit) */
function wordsOf(text: string): [number, number, number, number] {
  const word = (start: number) => {
    let hash = start;
    for (let i = 0; i < text.length; i++) {
      hash ^= text.charCodeAt(i);
      hash = Math.imul(hash, 0x01000193);
    }
    hash ^= hash >>> 15;
    return Math.imul(hash, 0x2c1b3c6d) | 0;
  };
  return [word(0x811c9dc5), word(0x1b873593), word(0x9e3779b9), 1];
}

/** Polar method. @source Marsaglia and Bray (1964), SIAM Review 6 */
function normalsFrom(next: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * next() - 1;
      const v = 2 * next() - 1;
      const s = u * u + v * v;
      if (s > 0 && s < 1) {
        const scale = Math.sqrt((-2 * Math.log(s)) / s);
        spare = v * scale;
        return u * scale;
      }
    }
  };
}

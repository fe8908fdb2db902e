/** Draws from a seeded source. */
export interface Draw {
  chance(share: number): boolean;
  below(limit: number): number;
  pick<Item>(items: readonly Item[]): Item;
}

export const drawOf = (random: () => number): Draw => ({
  chance: (share) => random() < share,
  below: (limit) => Math.floor(random() * limit),
  pick: (items) => items[Math.floor(random() * items.length)] as never,
});

const NUMBERS = [0, -0, -1, 1e308, 5e-324, 2 ** 53, 0.1, 1e21, -2147483649, 65_536];
const TEXTS = [
  "",
  " ",
  "null",
  "NaN",
  "__proto__",
  "constructor",
  "../../etc/passwd",
  "%00",
  "' or 1=1 --",
  "<script>alert(1)</script>",
  "=cmd()",
  "\u0000",
  "\ud800",
  "\u202e",
  "𝔘🌶️",
  "0193a5c8-7b1e-7abc-8def-0123456789ab",
  "f".repeat(64),
  "2026-11-25T13:45:38.123Z/0004",
  "x".repeat(3000),
];

/** A text that nobody types by mistake. */
export function oddText(draw: Draw): string {
  if (draw.chance(0.7)) return draw.pick(TEXTS);
  const letter = () => String.fromCodePoint(draw.chance(0.7) ? 32 + draw.below(95) : draw.below(0x3000));
  return Array.from({ length: draw.below(40) }, letter).join("");
}

/** Any JSON value, as deep as said. */
export function oddValue(draw: Draw, depth_n: number): unknown {
  const kind = draw.below(depth_n > 0 ? 7 : 5);
  if (kind === 0) return draw.pick(NUMBERS);
  if (kind === 1) return oddText(draw);
  if (kind === 2) return draw.chance(0.5);
  if (kind === 3) return null;
  if (kind === 4) return draw.below(1_000_000) - 500_000;
  const inner = () => oddValue(draw, depth_n - 1);
  if (kind === 5) return Array.from({ length: draw.below(5) }, inner);
  return Object.fromEntries(Array.from({ length: draw.below(5) }, () => [oddText(draw), inner()]));
}

/** A value with one of its parts replaced, left out, doubled or buried; now and then as it was. */
export function spoilt(draw: Draw, value: unknown): unknown {
  const places: (string | number)[][] = [];
  const visit = (part: unknown, path: (string | number)[]) => {
    places.push(path);
    if (part !== null && typeof part === "object")
      for (const [key, inner] of Object.entries(part)) visit(inner, [...path, key]);
  };
  visit(value, []);
  const copy: unknown = structuredClone(value);
  if (draw.chance(0.1)) return copy;
  const path = draw.pick(places);
  const last = path.at(-1);
  if (last === undefined) return oddValue(draw, 3);
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], copy) as Record<string, unknown>;
  const act = draw.below(5);
  if (act === 0) delete holder[last];
  else if (act === 1) holder[`${last}`.slice(0, 3)] = holder[last];
  else if (act === 2) holder[last] = deep(draw.below(40));
  else holder[last] = oddValue(draw, 2);
  return copy;
}

const deep = (levels_n: number): unknown =>
  Array.from({ length: levels_n }).reduce<unknown>((inner) => [inner], 1);

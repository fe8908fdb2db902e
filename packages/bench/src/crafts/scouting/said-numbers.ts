/** "99 in 100": never with decimals that nobody could know; near the ends "over" and "under". */
export function fraction(share: number, over = "over", under = "under"): string {
  const of = Math.round(share * 100);
  if (share > 0.995) return `${over} 99 in 100`;
  if (share < 0.005) return `${under} 1 in 100`;
  return `${of} in 100`;
}

export const list = (items: readonly string[], and = "and"): string =>
  items.length < 2 ? (items[0] ?? "") : `${items.slice(0, -1).join(", ")} ${and} ${items.at(-1)}`;

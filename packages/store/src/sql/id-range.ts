/**
 * Ids begin with their time, so the ids of a month lie side by side in the key and no second index is needed to find them.
 *
 * @param month `2026-11`, in UTC; anything else gives the range of all ids
 */
export function idRange(month: string): { readonly from: string; readonly until: string } {
  const parts = /^(\d{4})-(\d\d)$/.exec(month);
  if (!parts) return { from: "0", until: "g" };
  const [year, number] = [Number(parts[1]), Number(parts[2])];
  return { from: prefix(Date.UTC(year, number - 1)), until: `${prefix(Date.UTC(year, number) - 1)}-g` };
}

function prefix(at_ms: number): string {
  const time = at_ms.toString(16).padStart(12, "0");
  return `${time.slice(0, 8)}-${time.slice(8)}`;
}

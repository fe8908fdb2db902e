/** Value at a share of the ascending list, between neighbours. */
export function quantile(dates_ms: readonly number[], share: number): number {
  if (dates_ms.length === 0) return Number.NaN;
  const place = Math.min(Math.max(share * dates_ms.length - 0.5, 0), dates_ms.length - 1);
  const low = dates_ms[Math.floor(place)] as number;
  const high = dates_ms[Math.ceil(place)] as number;
  return low + (high - low) * (place - Math.floor(place));
}

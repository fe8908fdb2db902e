const DAY_ms = 86_400_000;

/** A calendar date so many days on; dates know no clock, so this is plain arithmetic. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_ms).toISOString().slice(0, 10);
}

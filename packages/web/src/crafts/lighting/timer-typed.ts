/** 17.5 as "17:30", past midnight as the next day's clock. */
export function clockOf(hour_h: number): string {
  const minutes_min = Math.round(hour_h * 60) % 1440;
  return `${String(Math.floor(minutes_min / 60)).padStart(2, "0")}:${String(minutes_min % 60).padStart(2, "0")}`;
}

/** "17:30" as 17.5; undefined when it is no time of day. */
export function hourOf(clock: string): number | undefined {
  const match = /^(\d{1,2}):([0-5]\d)$/.exec(clock);
  const hour_h = match ? Number(match[1]) + Number(match[2]) / 60 : Number.NaN;
  return hour_h >= 0 && hour_h < 24 ? hour_h : undefined;
}

/** The data of `bench.timer`. A lamp that goes off before it went on burns through the night; one that does so at once, all day. */
export function timerData(
  on_h: number | undefined,
  off_h: number | undefined,
): { readonly from_h: number; readonly hours_h: number } | undefined {
  if (on_h === undefined || off_h === undefined) return undefined;
  const hours_h = off_h > on_h ? off_h - on_h : off_h - on_h + 24;
  return { from_h: on_h, hours_h: Math.round(hours_h * 60) / 60 };
}

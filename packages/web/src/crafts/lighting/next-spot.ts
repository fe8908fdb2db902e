interface Bench {
  readonly spots: readonly {
    readonly spot: string;
    readonly along_m: number;
    readonly fromGlass_m: number;
  }[];
}

/**
 * The spot to which an arrow leads: left and right in standing order, from one bench to the next; up to the glass and down into
 * the room the nearest that lies there, and where none does, the bench before or after.
 */
export function nextSpot(
  benches: readonly Bench[],
  from: string | undefined,
  direction: "left" | "right" | "up" | "down",
): string | undefined {
  const all = benches.flatMap(({ spots }) => spots);
  const at = all.findIndex(({ spot }) => spot === from);
  if (at < 0) return all[0]?.spot;
  if (direction === "left") return all[at - 1]?.spot;
  if (direction === "right") return all[at + 1]?.spot;
  const here = all[at] as (typeof all)[number];
  const bench_n = benches.findIndex(({ spots }) => spots.some(({ spot }) => spot === from));
  const beyond = (depth_m: number) =>
    direction === "up" ? depth_m < here.fromGlass_m - 0.02 : depth_m > here.fromGlass_m + 0.02;
  const nearest = (spots: Bench["spots"]) =>
    [...spots].sort(
      (a, b) =>
        Math.hypot(a.along_m - here.along_m, a.fromGlass_m - here.fromGlass_m) -
        Math.hypot(b.along_m - here.along_m, b.fromGlass_m - here.fromGlass_m),
    )[0]?.spot;
  return (
    nearest((benches[bench_n]?.spots ?? []).filter(({ fromGlass_m }) => beyond(fromGlass_m))) ??
    nearest(benches[bench_n + (direction === "up" ? -1 : 1)]?.spots ?? [])
  );
}

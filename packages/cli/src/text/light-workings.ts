import type { LightPage } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";

/** A working, and the bench, spot or swap that it is of. */
export interface OfLight {
  readonly of: string;
  readonly working: Working;
}

/** Workings of the page by a part of their title, or `all`, in the order in which benches and spots stand. */
export function lightWorkings({ benches, seats }: LightPage, wanted: string): readonly OfLight[] {
  const all: OfLight[] = benches.flatMap(({ name, spots, advice, energy, worth }) => [
    ...spots.flatMap((spot) =>
      [spot.light.working, spot.need?.working, spot.short?.working].flatMap((working) =>
        working ? [{ of: [name, spot.name, spot.number].filter(Boolean).join(" "), working }] : [],
      ),
    ),
    ...[advice?.working, advice?.energy.working, energy?.working, worth?.working].flatMap((working) =>
      working ? [{ of: name, working }] : [],
    ),
  ]);
  const ofSeats: OfLight[] = [
    ...seats.swaps.map(({ said, working }) => ({ of: said, working })),
    ...(seats.working ? [{ of: seats.said, working: seats.working }] : []),
  ];
  const find = wanted.toLowerCase();
  return [...all, ...ofSeats].filter(
    ({ working }) => find === "all" || working.title.toLowerCase().includes(find),
  );
}

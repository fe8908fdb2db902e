import type { PlantId } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";

interface Place {
  readonly spot: string;
  readonly plant?: PlantId | undefined;
}

/** The moves that bring a plant to a spot. Onto a taken spot the two change seats, so that Undo takes both back at once. */
export function movesTo(spots: readonly Place[], plant: PlantId, to: string): readonly Draft[] {
  const from = spots.find((spot) => spot.plant === plant)?.spot;
  if (from === to) return [];
  const other = spots.find(({ spot }) => spot === to)?.plant;
  const move = (who: PlantId, where: string): Draft => ({
    kind: "plant.moved",
    on: [who],
    data: { to: where },
  });
  return [move(plant, to), ...(other !== undefined && from !== undefined ? [move(other, from)] : [])];
}

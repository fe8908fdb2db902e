import { chanceOf } from "../nursery/chance.ts";
import { drawFruitNature, type FruitNature } from "./fruit-nature.ts";
import { drawFruitingAir, type FruitingAir } from "./fruiting-air.ts";

export { type Fruit, type Hand, type Life, liveBearing } from "./bearing-plant.ts";
export type { FruitKind, FruitNature } from "./fruit-nature.ts";
export type { FruitingAir } from "./fruiting-air.ts";

export interface BearingPlant {
  readonly name: string;
  readonly nature: FruitNature;
  readonly air: FruitingAir;
}

/** Some plants in flower, each in a room of its own; the same seed gives the same plants. */
export function bearingPlants(seed: number, plants_n: number, days_n: number): readonly BearingPlant[] {
  const chance = chanceOf(`fruit ${seed}`);
  return Array.from({ length: plants_n }, (_, each) => ({
    name: `fruit ${seed} ${each}`,
    nature: drawFruitNature(chance.under(`nature ${each}`)),
    air: drawFruitingAir(days_n, chance.under(`air ${each}`)),
  }));
}

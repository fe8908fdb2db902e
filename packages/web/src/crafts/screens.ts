import type { PlantId } from "@sillwood/bench/book";
import type { crafts } from "@sillwood/bench/crafts";
import type { Draft, PlantPage } from "@sillwood/bench/round";
import type { ComponentType, LazyExoticComponent } from "react";

/** The crafts of the registry by name; a craft without a line in the map does not compile. */
export type CraftName = (typeof crafts)[number]["name"];

/** What a craft gives to the screens of the house. Pages of its own go into its folder. */
export interface CraftScreens {
  /** Its drawn mark, always beside its word. */
  readonly mark: ComponentType;
  /** Its own pages: paths under `/craft/`, each fetched when it is wanted; the first is where its row on the desk leads. */
  readonly pages?: readonly {
    readonly path: `/craft/${string}`;
    readonly screen: LazyExoticComponent<ComponentType>;
  }[];
  /** Where a craft has more to say of a bench: its page for it. */
  readonly ofBench?: (bench: string) => string;
  /** A drawing for the pot in hand, from what the craft knows of it. */
  readonly atThePot?: ComponentType<{ readonly page: PlantPage }>;
  /** The entry for a weight read off the scale. */
  readonly weighed?: (plant: PlantId, weight_g: number, isConfirmed: boolean) => Draft;
  /** The entry for water given outside the round. */
  readonly watered?: (plant: PlantId, volume_mL: number) => Draft;
  /** The entries for signs that a person saw while asking what is wrong, in the order in which they must be read. */
  readonly seen?: (plant: PlantId, signs: readonly string[]) => readonly Draft[];
  /** The entry for "it is wet already". */
  readonly foundWet?: (plant: PlantId) => Draft;
  /** The most a pot can hold, for a digit too many. */
  readonly most_mL?: (page: PlantPage) => number | undefined;
}

import type { HeatType } from "@sillwood/science/fruit";
import {
  developmentClock,
  type FruitClass,
  phaseSums,
  type SpeciesGroup,
  type ThermalClock,
  thermalPaceOf,
} from "@sillwood/science/growth";
import type { Habit, PlantFacts } from "../../plants/facts.ts";
import type { Sight } from "../craft.ts";

/** What ripening of a kind of pepper depends on. */
export interface Pepper {
  readonly species: SpeciesGroup;
  readonly clock: ThermalClock;
  readonly pace: (air_C: number) => number;
  /** Flower to ripe on that clock, as assumed; the pace is that of fruit a little warmer than the air it hangs in. */
  readonly ripe_Cd: number;
}

const FRUIT: Readonly<Record<Habit, FruitClass>> = {
  thin: "long",
  fat: "bell",
  lantern: "long",
  tiny: "small",
  unknown: "long",
};
/** What people call such a pepper, for its usual heat; none where the kind says nothing. */
export const HEAT_OF_HABIT: Readonly<Record<Habit, HeatType | undefined>> = {
  thin: "cayenne",
  fat: "jalapeno",
  lantern: "habanero",
  tiny: "bird",
  unknown: undefined,
};

const made = new Map<string, Pepper>();

/** The pepper that a plant is, by its cultivar's species, else by its kind of fruit. */
export function pepperOf(
  { habit }: PlantFacts,
  { species, assumed }: Pick<Sight, "species" | "assumed">,
): Pepper {
  const above_C = assumed("fruitAboveAir_C");
  const group: SpeciesGroup =
    species !== undefined && species !== "unknown" ? species : habit === "lantern" ? "chinense" : "annuum";
  const key = `${group}/${FRUIT[habit]}/${above_C}`;
  let pepper = made.get(key);
  if (!pepper) {
    const clock = developmentClock({ species: group });
    const { ripe_Cd } = phaseSums({ species: group, fruit: FRUIT[habit] });
    const pace = thermalPaceOf(clock);
    pepper = { species: group, clock, pace: (air_C) => pace(air_C + above_C), ripe_Cd };
    made.set(key, pepper);
  }
  return pepper;
}

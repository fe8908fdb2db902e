import type { Pepper } from "@sillwood/science/growth";
import type { Habit, PlantFacts } from "../../plants/facts.ts";
import type { Sight } from "../craft.ts";

/** The clocks that plants run on. Slices name them by their place here: add at the end only. */
export const peppers = [
  { species: "annuum", fruit: "long" },
  { species: "annuum", fruit: "small" },
  { species: "annuum", fruit: "bell" },
  { species: "chinense", fruit: "long" },
  { species: "frutescens", fruit: "small" },
  { species: "baccatum", fruit: "long" },
  { species: "pubescens", fruit: "long" },
] as const satisfies readonly Pepper[];

type Species = (typeof peppers)[number]["species"];

/** Species that a kind of fruit most likely belongs to, where no cultivar says it. @source our assumption */
const SPECIES_OF_HABIT: Readonly<Record<Habit, Species>> = {
  thin: "annuum",
  fat: "annuum",
  lantern: "chinense",
  tiny: "annuum",
  unknown: "annuum",
};
const ANNUUM_BY_HABIT: Readonly<Record<Habit, number>> = { thin: 0, fat: 2, lantern: 0, tiny: 1, unknown: 0 };
const PLACE: Readonly<Record<Exclude<Species, "annuum">, number>> = {
  chinense: 3,
  frutescens: 4,
  baccatum: 5,
  pubescens: 6,
};

const written = ({ species }: Pick<Sight, "species">): Species | undefined =>
  species === undefined || species === "unknown" ? undefined : species;

/** Whether a cultivar says the species; else it is guessed from the kind of fruit. */
export const isSpeciesWritten = (sight: Pick<Sight, "species">): boolean => written(sight) !== undefined;

/** Place in `peppers` of the clock that a plant runs on. */
export function pepperOf({ habit }: Pick<PlantFacts, "habit">, sight: Pick<Sight, "species">): number {
  const species = written(sight) ?? SPECIES_OF_HABIT[habit];
  return species === "annuum" ? ANNUUM_BY_HABIT[habit] : PLACE[species];
}

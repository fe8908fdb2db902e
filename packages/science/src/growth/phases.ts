import { valuesOf } from "../assumption.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";
import { developmentClock, type SpeciesGroup } from "./species.ts";
import { sumOnOtherBase_Cd } from "./thermal-sum.ts";

/** How annuum fruit is built: small or ornamental, long (jalapeño, cayenne) or bell. Other species have one fruit each. */
export const fruitClasses = ["small", "long", "bell"] as const;
export type FruitClass = (typeof fruitClasses)[number];

/** A plant as far as its phases depend on it; long fruit unless given. */
export type Pepper = { readonly species: SpeciesGroup; readonly fruit?: FruitClass } & GrowthSettings;

/** Base of the clock on which the sums are written. */
const written_C = 10;
/** Temperature near which most of the records lie that the sums were derived from. */
const agree_C = 25;
/** Base of the radicle's sum. Sachs1980, fitted. */
const radicleBase_C = 11.44;

/** Species whose seed is slow. */
export const isSlow = (species: SpeciesGroup): boolean => species === "chinense" || species === "pubescens";

function ripeKey({ species, fruit = "long" }: Pepper) {
  if (species === "chinense") return "ripeChinense_Cd";
  if (species === "pubescens") return "ripePubescens_Cd";
  if (species === "baccatum") return "ripeLong_Cd";
  if (species === "frutescens") return "ripeSmall_Cd";
  return ({ small: "ripeSmall_Cd", long: "ripeLong_Cd", bell: "ripeBell_Cd" } as const)[fruit];
}

/** Thermal sums of the phases of a plant [°C d], all on its own clock. */
export type PhaseSums = {
  readonly radicle_Cd: number;
  readonly emergence_Cd: number;
  readonly cotyledon_Cd: number;
  readonly transplant_Cd: number;
  readonly flower_Cd: number;
  readonly set_Cd: number;
  readonly fullSize_Cd: number;
  readonly ripe_Cd: number;
  readonly budbreak_Cd: number;
};

/**
 * Thermal sums of the phases of a plant, on the clock of its species.
 *
 * The assumed sums are carried over by equal days at 25 °C (or at the optimum, where that is lower), so that whoever sets a
 * base does not change how long a phase takes there. Slow seed adds its delay to the seedling's time.
 *
 * @param plant species group; for annuum how its fruit is built, long unless given; any of the field's temperature and phase assumptions
 * @returns sums [°C d]: sowing to radicle, to emergence, from there to open cotyledons; sowing to 4 to 6 true leaves; from there to the first open flower; from open flower to visible set, to full size, to ripe colour; from a hard cut to the first new leaf
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source our assumption, derived from published days and rates; emergence from Knott1997
 * @example phaseSums({ species: "chinense" }).ripe_Cd // 600
 */
export function phaseSums(plant: Pepper): PhaseSums {
  const set = valuesOf(growthAssumptions, plant);
  const clock = developmentClock(plant);
  const air_C = Math.min(agree_C, clock.optimumLow_C);
  const carried = (thermalTime_Cd: number, base_C: number): number =>
    sumOnOtherBase_Cd({ thermalTime_Cd, base_C, otherBase_C: clock.base_C, air_C });
  const emergence = (sum_Cd: number): number => carried(sum_Cd, set.emergenceBase_C);
  const onTen = (sum_Cd: number): number => carried(sum_Cd, written_C);
  const slow = isSlow(plant.species);
  const delay_Cd = slow ? emergence(set.emergenceSlow_Cd) - emergence(set.emergence_Cd) : 0;
  return {
    radicle_Cd: carried(set.radicle_Cd, radicleBase_C),
    emergence_Cd: emergence(slow ? set.emergenceSlow_Cd : set.emergence_Cd),
    cotyledon_Cd: onTen(set.cotyledon_Cd),
    transplant_Cd: onTen(set.transplant_Cd) + Math.max(0, delay_Cd),
    flower_Cd: onTen(set.flower_Cd),
    set_Cd: onTen(set.set_Cd),
    fullSize_Cd: onTen(set.fullSize_Cd),
    ripe_Cd: onTen(set[ripeKey(plant)]),
    budbreak_Cd: onTen(set.budbreak_Cd),
  };
}

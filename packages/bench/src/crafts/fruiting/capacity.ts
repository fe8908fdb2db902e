import {
  fruitsToKeep,
  growthWarmth_frac,
  learnedBudget,
  naturalLoad_n,
  sizeOfLoad,
  source_g_d,
} from "@sillwood/science/fruit";
import type { Reading } from "../../working/reading.ts";
import type { Origin } from "../../working/working.ts";
import { weakest } from "../../working/working.ts";
import type { Sight } from "../craft.ts";
import { dryKey, freshKey, fruitSettings } from "./assumptions.ts";
import { type Ripening, ripeningOf } from "./ripe.ts";
import type { FruitSlice } from "./slice.ts";
import { type Course, flowerAir } from "./warmth.ts";

/** Fruit ripens no slower than this for the sum's sake: beyond, it does not ripen. */
const SLOWEST_d = 150;
/** Weighed fruits from which their own mean replaces the kind's usual mass. */
const OWN_MASS_n = 3;
/** Fruit this full was not held back by its fellows. */
const FULL_frac = 0.85;

/** What one plant can carry, with everything it came from. */
export interface Capacity {
  readonly light_mol_d: number;
  readonly lightOrigin: Origin;
  readonly lightFrom: Reading["from"];
  readonly warmth_frac: number;
  readonly source_g_d: number;
  readonly fresh_g: number;
  readonly freshOrigin: Origin;
  readonly dry_frac: number;
  readonly dryMassFull_g: number;
  readonly toRipe_d: number;
  readonly ripening: Ripening;
  readonly learned: number;
  readonly fruits_n: number;
  readonly low_n: number;
  readonly high_n: number;
  readonly show_n: number;
  /** Whole fruits advised, by what the grower wants. */
  readonly keep_n: number;
  readonly natural_n: number;
  readonly aim: "full" | "many";
  readonly origin: Origin;
}

/** How many fruits the light can feed. */
export function capacityOf(slice: FruitSlice, course: Course, sight: Sight, now_ms: number): Capacity {
  const { plant } = sight;
  const settings = fruitSettings(sight);
  const light = sight.read("lightCaught_mol_d");
  const light_mol_d = Math.min(500, Math.max(0, light.value));
  const air = flowerAir(sight.airAt(plant.spot, sight.dateOf(now_ms)));
  const warmth_frac = growthWarmth_frac({ airDay_C: air.day_C, airNight_C: air.night_C });
  const made_g_d = source_g_d({ lightCaught_mol_d: light_mol_d, warmth_frac, ...settings });
  const isWeighed = slice.weighed_n >= OWN_MASS_n;
  const usual_g = sight.assumed(freshKey(plant.habit));
  const dry_frac = sight.assumed(dryKey(plant.habit));
  // Fruit that its fellows held back says nothing of its full size: the larger of the two is taken.
  const own_g = isWeighed ? slice.weighed_g / slice.weighed_n : 0;
  const fresh_g = own_g > usual_g ? own_g : usual_g;
  const dryMassFull_g = Math.min(100, Math.max(0.001, fresh_g * dry_frac));
  const ripening = ripeningOf(slice, sight);
  const days = ripening.toRipe_Cd / Math.max(0.01, course.month_Cd_d);
  const toRipe_d = Math.min(SLOWEST_d, Math.max(25, days));
  const bearing = { source_g_d: made_g_d, dryMassFull_g, toRipe_d, ...settings };
  const lightCaughtSpread_frac = Math.min(
    0.8,
    Math.max(0.05, light_mol_d > 0 ? light.sd / light_mol_d : 0.8),
  );
  const reckoned = fruitsToKeep({ ...bearing, lightCaughtSpread_frac });
  const learned = learnedOf(slice, reckoned.fruits_n, own_g / usual_g, isWeighed, settings);
  const found = fruitsToKeep({ ...bearing, lightCaughtSpread_frac, ...learned });
  const natural_n = naturalLoad_n(bearing) * (learned?.learned ?? 1);
  const wanted = slice.aim === "many" ? natural_n : found.fruits_n;
  return {
    light_mol_d,
    lightOrigin: light.origin,
    lightFrom: light.from,
    warmth_frac,
    source_g_d: made_g_d,
    fresh_g,
    freshOrigin: own_g > usual_g ? "learned" : "assumed",
    dry_frac,
    dryMassFull_g,
    toRipe_d,
    ripening,
    learned: learned?.learned ?? 1,
    fruits_n: found.fruits_n,
    low_n: found.low_n,
    high_n: found.high_n,
    show_n: found.show_n,
    keep_n: Math.round(wanted),
    natural_n,
    aim: slice.aim,
    origin: learned ? "learned" : weakest([light.origin, "assumed"]),
  };
}

/** What the first harvest shows: the mass it carried over the mass reckoned, where it carried as much as that. */
function learnedOf(
  slice: FruitSlice,
  reckoned_n: number,
  size_frac: number,
  isWeighed: boolean,
  settings: object,
): { readonly learned: number; readonly learnedSpread_frac: number } | undefined {
  if (!isWeighed || reckoned_n <= 0) return undefined;
  const carried_n = slice.picked_n + (slice.fruits?.n ?? 0);
  const pickedOverReckoned = (Math.min(1.2, size_frac) * carried_n) / reckoned_n;
  const saysLittle = pickedOverReckoned < 1 && size_frac >= FULL_frac;
  if (saysLittle) return undefined;
  return learnedBudget({
    pickedOverReckoned: Math.min(20, Math.max(0.05, pickedOverReckoned)),
    weighed_n: slice.weighed_n,
    ...settings,
  });
}

/** What so many fruits come to on this plant: size of each, ripe mass of all. */
export function loadOf(
  { source_g_d: made_g_d, dryMassFull_g, toRipe_d, dry_frac, learned }: Capacity,
  fruits_n: number,
  sight: Sight,
): { readonly size_frac: number; readonly mass_g: number } {
  const { size_frac, dryMass_g } = sizeOfLoad({
    source_g_d: made_g_d * learned,
    dryMassFull_g,
    toRipe_d,
    fruits_n,
    ...fruitSettings(sight),
  });
  return { size_frac, mass_g: dryMass_g / dry_frac };
}

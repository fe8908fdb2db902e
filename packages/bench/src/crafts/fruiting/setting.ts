import { type PollenMover, pollinated_frac, setChance_frac, warmthSet_frac } from "@sillwood/science/fruit";
import type { Sight } from "../craft.ts";
import { fruitSettings } from "./assumptions.ts";
import type { Capacity } from "./capacity.ts";
import type { FruitSlice } from "./slice.ts";
import { flowerAir } from "./warmth.ts";

const DAY_ms = 86_400_000;

/** What the flowers of today may come to, and what holds them back. */
export interface Setting {
  readonly chance_frac: number;
  readonly moved: PollenMover;
  readonly visits_n: number;
  readonly pollinated_frac: number;
  readonly warmth_frac: number;
  readonly sourceOverDemand: number;
  /** The chance with pollen moved by hand, twice. */
  readonly brushed_frac: number;
  /** What costs most of it. */
  readonly most: "pollen" | "warmth" | "load" | "nothing";
}

/** Chance of set of a flower that is open now. */
export function settingOf(slice: FruitSlice, capacity: Capacity, sight: Sight, now_ms: number): Setting {
  const settings = fruitSettings(sight);
  const today = sight.airAt(sight.plant.spot, sight.dateOf(now_ms));
  const air = flowerAir(today);
  const visits_n = slice.brushes_ms.filter((at_ms) => now_ms - at_ms < 2.5 * DAY_ms).length;
  const moved: PollenMover = today.outdoors ? "open air" : visits_n > 0 ? "by hand" : "still air";
  const pollen = pollinated_frac({ moved, visits_n, ...settings });
  const warmth = warmthSet_frac({
    airDay_C: air.day_C,
    airMax_C: air.max_C,
    airNight_C: air.night_C,
    ...settings,
  });
  const { source_g_d, dryMassFull_g, toRipe_d } = capacity;
  const vegetative_g_d = sight.assumed("vegetativeShare_frac") * source_g_d;
  const demand_g_d = ((slice.fruits?.n ?? 0) * dryMassFull_g) / toRipe_d + vegetative_g_d;
  const sourceOverDemand = demand_g_d > 0 ? Math.min(1000, source_g_d / demand_g_d) : 0;
  const chance = (pollinated: number) =>
    setChance_frac({ sourceOverDemand, pollinated_frac: pollinated, warmthSet_frac: warmth, ...settings });
  const chance_frac = chance(pollen);
  const fed = warmth * pollen > 0 ? chance_frac / (sight.assumed("bestSet_frac") * warmth * pollen) : 1;
  const least = Math.min(pollen, warmth, fed);
  return {
    chance_frac,
    moved,
    visits_n,
    pollinated_frac: pollen,
    warmth_frac: warmth,
    sourceOverDemand,
    brushed_frac: chance(
      today.outdoors ? 1 : pollinated_frac({ moved: "by hand", visits_n: 2, ...settings }),
    ),
    most: least > 0.9 ? "nothing" : least === fed ? "load" : least === pollen ? "pollen" : "warmth",
  };
}

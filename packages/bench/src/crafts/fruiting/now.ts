import { once } from "../../working/once.ts";
import type { Outward } from "../craft.ts";
import { type Capacity, capacityOf } from "./capacity.ts";
import { pepperOf } from "./pepper.ts";
import { type Ripe, ripeDates } from "./ripe.ts";
import { type Setting, settingOf } from "./setting.ts";
import type { FruitSlice } from "./slice.ts";
import { type Course, courseAhead } from "./warmth.ts";

/** What is reckoned of a plant's fruit, each part when it is first asked for: most plants of a round are asked for none. */
export interface FruitNow {
  readonly course: () => Course;
  readonly capacity: () => Capacity;
  readonly setting: () => Setting;
  /** Cohorts by their middle date, ripe ones first, those that cannot ripen last. */
  readonly ripe: () => readonly Ripe[];
}

export function fruitNow(slice: FruitSlice, sight: Outward): FruitNow {
  const { now_ms } = sight;
  const course = once(() => courseAhead(pepperOf(sight.plant, sight), sight, sight.plant.spot, now_ms));
  const capacity = once(() => capacityOf(slice, course(), sight, now_ms));
  return {
    course,
    capacity,
    setting: once(() => settingOf(slice, capacity(), sight, now_ms)),
    ripe: once(() =>
      slice.cohorts.length === 0
        ? []
        : slice.cohorts
            .map((cohort) => ripeDates(cohort, slice, course(), sight, now_ms))
            .toSorted((a, b) => (a.dates_ms[10] ?? Infinity) - (b.dates_ms[10] ?? Infinity)),
    ),
  };
}

import { type FruitAssumptionKey, fruitAssumptions } from "@sillwood/science/fruit";
import type { Habit } from "../../plants/facts.ts";
import { assumption } from "../assumption.ts";
import type { Assumption, Sight } from "../craft.ts";

/** Numbers of the field that this craft's advice rests on, each with what settles it. */
const REPLACED_BY: Readonly<Partial<Record<FruitAssumptionKey, string>>> = {
  lightUse_g_MJ: "the weight of the first fruits picked",
  photonEnergy_MJ_mol: "a reading of the lamp's spectrum",
  vegetativeShare_frac: "leaves counted twice, some weeks apart, with fruit on",
  fruitShare_frac: "the weight of the first fruits picked",
  setThreshold: "fruits counted two weeks after flowers",
  setSlope: "fruits counted two weeks after flowers",
  stillAirSet_frac: "one branch left alone, one brushed, both counted after two weeks",
  bestSet_frac: "fruits counted two weeks after brushed flowers",
  heatSet_frac: "fruits counted two weeks after a hot spell",
  hot_C: "fruits counted two weeks after a hot spell",
  coldNight_C: "fruits counted two weeks after cold nights",
  coldNightSet_frac: "fruits counted two weeks after cold nights",
  lightUseSpread_frac: "the weight of the first fruits picked",
  fruitShareSpread_frac: "the weight of the first fruits picked",
  fruitMassSpread_frac: "the weight of five ripe fruits",
  ripeTimeSpread_frac: "dates of ripe fruit in your own book",
  floorMargin_C: "one fruit that ripened, or did not, in a cool place",
  breaker_frac: "the days from first colour to ripe of a few tagged fruits",
};

const remembered = "from memory";
const fresh = (key: string, what: string, value: number, low: number, high: number): Assumption =>
  assumption(
    key,
    `fresh mass of a full ripe fruit, ${what}`,
    value,
    "g",
    low,
    high,
    remembered,
    "the weight of five ripe fruits",
  );
const dry = (key: string, what: string, value: number): Assumption =>
  assumption(
    key,
    `dry share of a ripe fruit, ${what}`,
    value,
    "share",
    0.04,
    0.3,
    remembered,
    "a fruit weighed fresh and dried",
  );

const own: readonly Assumption[] = [
  fresh("freshThin_g", "thin-fruited kinds", 8, 2, 20),
  fresh("freshFat_g", "fat-fruited kinds", 20, 8, 250),
  fresh("freshLantern_g", "lantern-fruited kinds", 8, 3, 20),
  fresh("freshTiny_g", "tiny, upright kinds", 2.5, 0.3, 8),
  fresh("freshUnknown_g", "of a kind that nobody named", 7, 0.3, 250),
  dry("dryThin_frac", "thin-fruited kinds", 0.12),
  dry("dryFat_frac", "fat-fruited kinds", 0.083),
  dry("dryLantern_frac", "lantern-fruited kinds", 0.1),
  dry("dryTiny_frac", "tiny, upright kinds", 0.13),
  dry("dryUnknown_frac", "of a kind that nobody named", 0.11),
  assumption(
    "fruitAboveAir_C",
    "how much warmer than the air fruit hangs, over day and night",
    0.5,
    "°C",
    0,
    3,
    "our assumption, from 1 to 3 °C under a strong lamp by day",
    "a thermometer at a fruit",
  ),
  assumption(
    "keepsOpen_d",
    "days that a flower stays open",
    3,
    "d",
    1,
    7,
    "our assumption, from the days on which a stigma takes pollen",
    "one flower looked at each morning",
  ),
];

/** Values that nobody measured on this plant; each may be adjusted and is shown as assumed. */
export const fruitingAssumptions: readonly Assumption[] = [
  ...fruitAssumptions.flatMap(({ key, what, value, unit, min, max, source }) => {
    const replacedBy = REPLACED_BY[key];
    return replacedBy === undefined ? [] : [assumption(key, what, value, unit, min, max, source, replacedBy)];
  }),
  ...own,
];

const byKey = new Map(fruitingAssumptions.map((each) => [each.key, each]));

/** One of the craft's assumptions by its key. */
export function fruitingAssumption(key: string): Assumption {
  const found = byKey.get(key);
  if (!found) throw new Error(`fruiting has no assumption ${key}`);
  return found;
}

export type Settings = { readonly [Key in FruitAssumptionKey]?: number };
const fieldKeys = fruitAssumptions.map(({ key }) => key).filter((key) => REPLACED_BY[key] !== undefined);
const known = new WeakMap<Sight["assumed"], Settings>();

/** What the grower adjusted of the field's numbers, for its functions; a book that adjusts one is asked by another function. */
export function fruitSettings({ assumed }: Pick<Sight, "assumed">): Settings {
  let settings = known.get(assumed);
  if (!settings) {
    settings = Object.fromEntries(
      fieldKeys.flatMap((key) =>
        assumed(key) === fruitingAssumption(key).value ? [] : [[key, assumed(key)]],
      ),
    );
    known.set(assumed, settings);
  }
  return settings;
}

const NAMES: Readonly<Record<Habit, string>> = {
  thin: "Thin",
  fat: "Fat",
  lantern: "Lantern",
  tiny: "Tiny",
  unknown: "Unknown",
};
export const freshKey = (habit: Habit): string => `fresh${NAMES[habit]}_g`;
export const dryKey = (habit: Habit): string => `dry${NAMES[habit]}_frac`;

import { valuesOf } from "../assumption.ts";
import { within } from "../errors/index.ts";
import { type FruitSettings, fruitAssumptions } from "./assumptions.ts";
import { along } from "./demand.ts";

type Stand = {
  readonly source_g_d: number;
  readonly vegetative_g_d: number;
  readonly flowers_per_d: number;
  readonly dryMassFull_g: number;
} & Pick<FruitSettings, "setThreshold">;

function refuseOtherStand(stand: Stand): number {
  within("source_g_d", stand.source_g_d, 0, 1000);
  within("vegetative_g_d", stand.vegetative_g_d, 0, 1000);
  within("flowers_per_d", stand.flowers_per_d, 0.01, 100);
  within("dryMassFull_g", stand.dryMassFull_g, 0.001, 100);
  return valuesOf(fruitAssumptions, stand).setThreshold;
}

/**
 * Flowers that set, and the mass that they reach, when nobody thins: the daily balance of source and demand.
 *
 * Each day q = S/(F + V), F the sinks of all living fruit. A flower of that day sets if q is above the threshold, else it drops;
 * then every fruit gains its sink times min(1, S/(F + V)). Flowers open over the days given; the rest ripens after.
 *
 * @param stand source, and demand of leaves, stems and roots [g d⁻¹], 0 to 1000; flowers a day, 0.01 to 100; full dry mass of a fruit [g], 0.001 to 100; days from flower to ripe [d], 5 to 300; days of flowering, 1 to 1000; threshold
 * @returns flowers, fruits set, share of flowers that set, mean dry mass of a fruit at harvest [g]
 * @throws QuantityError outside those ranges
 * @source Wubs2009
 * @see checks/growth-fruit.json 124-135
 * @example fruitSetRun({ source_g_d: 2.4, vegetative_g_d: 1.9, flowers_per_d: 0.5, dryMassFull_g: 8, toRipe_d: 60, flowering_d: 200 }).fruits_n // 70
 */
export function fruitSetRun(stand: Stand & { readonly toRipe_d: number; readonly flowering_d: number }): {
  readonly flowers_n: number;
  readonly fruits_n: number;
  readonly set_frac: number;
  readonly dryMass_g: number;
} {
  const threshold = refuseOtherStand(stand);
  const { source_g_d, vegetative_g_d, flowers_per_d, dryMassFull_g, toRipe_d } = stand;
  within("toRipe_d", toRipe_d, 5, 300);
  within("flowering_d", stand.flowering_d, 1, 1000);
  const flowering_d = Math.floor(stand.flowering_d);
  const sinkAt = (age: number): number =>
    along(dryMassFull_g, (age + 1) / toRipe_d) - along(dryMassFull_g, age / toRipe_d);
  const living: { age: number; mass_g: number }[] = [];
  const demand = (): number => vegetative_g_d + living.reduce((sum, { age }) => sum + sinkAt(age), 0);
  let carried = 0;
  let flowers_n = 0;
  let fruits_n = 0;
  let harvested_g = 0;
  for (let day = 0; day < flowering_d || living.length > 0; day += 1) {
    const q = source_g_d / Math.max(1e-12, demand());
    if (day < flowering_d) {
      // A hair is added so that ten tenths of a flower are one.
      carried += flowers_per_d + 1e-12;
      for (; carried >= 1; carried -= 1) {
        flowers_n += 1;
        if (q <= threshold) continue;
        fruits_n += 1;
        living.push({ age: 0, mass_g: 0 });
      }
    }
    const fed = Math.min(1, source_g_d / Math.max(1e-12, demand()));
    for (const fruit of living) {
      fruit.mass_g += fed * sinkAt(fruit.age);
      fruit.age += 1;
    }
    for (let each = living.length - 1; each >= 0; each -= 1) {
      const fruit = living[each] as { age: number; mass_g: number };
      if (fruit.age < toRipe_d) continue;
      harvested_g += fruit.mass_g;
      living.splice(each, 1);
    }
  }
  return {
    flowers_n,
    fruits_n,
    set_frac: flowers_n > 0 ? fruits_n / flowers_n : 0,
    dryMass_g: fruits_n > 0 ? harvested_g / fruits_n : 0,
  };
}

/**
 * Share of flowers that set in the long run, in closed form. Fails for large fruit and for a threshold of 1, where set swings.
 *
 * f = (S/θ − V)/(r W), between 0 and 1
 *
 * @param stand as for the run, without its times
 * @returns share, 0 to 1
 * @throws QuantityError outside the run's ranges
 * @source our assumption, derived from Wubs2009
 * @see checks/growth-fruit.json 136-141
 * @example steadySet_frac({ source_g_d: 2.4, vegetative_g_d: 1.9, flowers_per_d: 0.5, dryMassFull_g: 8 }) // 0.725
 */
export function steadySet_frac(stand: Stand): number {
  const threshold = refuseOtherStand(stand);
  const { source_g_d, vegetative_g_d, flowers_per_d, dryMassFull_g } = stand;
  const share = (source_g_d / threshold - vegetative_g_d) / (flowers_per_d * dryMassFull_g);
  return Math.min(1, Math.max(0, share));
}

/**
 * Chance that one flower of one plant sets.
 *
 * p = best × pollination × temperature / (1 + exp(−(q − θ)/slope))
 *
 * @param flower source over the whole demand, 0 to 1000; chance by pollination and by temperature against the best, 0 to 1; any of the field's assumptions
 * @returns chance, below 1
 * @throws QuantityError outside those ranges
 * @source Wubs2009 for the threshold, RedHot for the best; softness our assumption
 * @example setChance_frac({ sourceOverDemand: 1.2, pollinated_frac: 1, warmthSet_frac: 1 }) // 0.85
 */
export function setChance_frac(
  flower: {
    readonly sourceOverDemand: number;
    readonly pollinated_frac: number;
    readonly warmthSet_frac: number;
  } & FruitSettings,
): number {
  const { sourceOverDemand, pollinated_frac, warmthSet_frac } = flower;
  within("sourceOverDemand", sourceOverDemand, 0, 1000);
  within("pollinated_frac", pollinated_frac, 0, 1);
  within("warmthSet_frac", warmthSet_frac, 0, 1);
  const { setThreshold, setSlope, bestSet_frac } = valuesOf(fruitAssumptions, flower);
  const fed = 1 / (1 + Math.exp(-(sourceOverDemand - setThreshold) / setSlope));
  return bestSet_frac * pollinated_frac * warmthSet_frac * fed;
}

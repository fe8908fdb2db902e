import type { Chance } from "../nursery/chance.ts";
import { type FruitNature, pace } from "./fruit-nature.ts";
import type { FruitingAir } from "./fruiting-air.ts";

const MJ_PER_mol = 0.215;
/** Share of what leaves make that leaves, stem and roots want first, when nothing is short. */
const WANTS_frac = 0.4;
/** A fruit past this age has a stalk that no longer lets go. */
const HELD_d = 16;
/** Reserve that wood and leaves lend, in days of what the plant makes. */
const RESERVE_d = 3;
/** Days on end without anything for young fruit after which all of them go. */
const STARVED_d = 6;

export interface Fruit {
  readonly opened_d: number;
  /** Development behind it, 1 is ripe; its own pace against the plant's. */
  way: number;
  readonly own: number;
  dry_g: number;
  readonly full_g: number;
  broke_d: number | undefined;
  ripe_d: number | undefined;
  gone: "dropped" | "pinched" | undefined;
}

export interface Life {
  readonly fruits: readonly Fruit[];
  readonly flowers_n: number;
  /** Leaf area at the end over that at the start. */
  readonly leaves_ratio: number;
  /** A day came on which all young fruit went at once. */
  readonly droppedAll: boolean;
  readonly caught_mol_d: readonly number[];
}

/** Leaves on hand to keep by number on a day: given what hangs, how many stay; undefined leaves them alone. */
export type Hand = (day: number, hanging: readonly Fruit[], caught_mol_d: number) => number | undefined;

/**
 * One plant from its first flowers on. Leaves make dry mass of light; growth asks by size: fruit by its age, leaves always; what is
 * short is shared by demand, through a small reserve. Hungry flowers and young fruit drop, a starved plant drops all that is young.
 * Fruit pulls in logistic growth along its own development, which follows a bent curve of its own temperature.
 */
export function liveBearing(nature: FruitNature, air: FruitingAir, hand: Hand, chance: Chance): Life {
  const days_n = air.means_C.length;
  const rate24 = pace(24, nature);
  const fruits: Fruit[] = [];
  const caught: number[] = [];
  const { crown_m2, extinction, lightUse_g_MJ, fresh_g, dry_frac } = nature;
  const opens = chance.under("flowers");
  const fates = chance.under("fates");
  let leafArea_m2 = nature.leafArea_m2;
  let reserve_g = 0;
  let starved_d = 0;
  let droppedAll = false;
  let flowers_n = 0;
  let waiting = 0;
  for (let day = 0; day < days_n; day += 1) {
    const mean_C = air.means_C[day] as number;
    const dawnToDusk_C = mean_C + air.swing_C / 2;
    const light = crown_m2 * (1 - Math.exp((-extinction * leafArea_m2) / crown_m2));
    const caught_mol_d = (air.lights_mol_m2_d[day] as number) * light;
    caught.push(caught_mol_d);
    const warm = Math.min(1, Math.max(0, (dawnToDusk_C - 6) / 18));
    const made_g = lightUse_g_MJ * MJ_PER_mol * caught_mol_d * warm;
    const hanging = fruits.filter(({ gone, ripe_d }) => gone === undefined && ripe_d === undefined);
    const dayWay = pace(mean_C + nature.sunlit_C / 2, nature) / rate24 / nature.ripeAt24_d;
    const pull = hanging.map(({ way, own, full_g }) => {
      const at = (x: number) => 1 / (1 + Math.exp(-9 * (x - 0.5)));
      return full_g * (at(Math.min(1, way + dayWay * own)) - at(way));
    });
    const fruitWants_g = pull.reduce((sum, each) => sum + each, 0);
    const leavesWant_g = WANTS_frac * made_g;
    const wants_g = fruitWants_g + leavesWant_g;
    const lent_g = Math.min(reserve_g, Math.max(0, wants_g - made_g));
    const fed = wants_g > 0 ? Math.min(1, (made_g + lent_g) / wants_g) : 1;
    reserve_g = Math.min(RESERVE_d * made_g, reserve_g - lent_g + Math.max(0, made_g - wants_g));
    leafArea_m2 += leavesWant_g * fed * 0.02 * (crown_m2 * 4 > leafArea_m2 ? 1 : 0) - leafArea_m2 * 0.003;
    const q = wants_g > 0 ? (made_g + lent_g) / wants_g : 4;
    starved_d = q < 0.35 ? starved_d + 1 : 0;
    hanging.forEach((fruit, each) => {
      fruit.dry_g += (pull[each] as number) * fed;
      fruit.way += dayWay * fruit.own;
      if (fruit.broke_d === undefined && fruit.way >= 0.8) fruit.broke_d = day;
      if (fruit.way >= 1) fruit.ripe_d = day;
      const age_d = day - fruit.opened_d;
      const isYoung = age_d < HELD_d;
      const hazard = isYoung ? 0.006 + 0.09 / (1 + Math.exp((q - 0.8 * nature.holds) / 0.07)) : 0;
      if (fates.happens(hazard)) fruit.gone = "dropped";
    });
    if (starved_d >= STARVED_d) {
      const young = hanging.filter(({ opened_d, gone }) => gone === undefined && day - opened_d < 2 * HELD_d);
      if (young.length > 0) droppedAll = true;
      for (const fruit of young) fruit.gone = "dropped";
      starved_d = 0;
    }
    waiting += nature.flowers_per_d * Math.min(1, q) * (day < days_n - 75 ? 1 : 0);
    for (; waiting >= 1; waiting -= 1) {
      flowers_n += 1;
      const holds = 0.8 / (1 + Math.exp(-(q - nature.holds) / 0.1));
      const own = opens.logNormal(1, 0.05);
      const full_g = fresh_g * dry_frac * opens.logNormal(1, 0.08);
      if (!opens.happens(holds)) continue;
      fruits.push({
        opened_d: day,
        way: 0,
        own,
        dry_g: 0,
        full_g,
        broke_d: undefined,
        ripe_d: undefined,
        gone: undefined,
      });
    }
    const now = fruits.filter(({ gone, ripe_d }) => gone === undefined && ripe_d === undefined);
    const keep_n = hand(day, now, caught_mol_d);
    if (keep_n !== undefined)
      for (const fruit of now
        .toSorted((a, b) => b.opened_d - a.opened_d)
        .slice(0, Math.max(0, now.length - keep_n)))
        if (fruit.way < 0.5) fruit.gone = "pinched";
  }
  return {
    fruits,
    flowers_n,
    leaves_ratio: leafArea_m2 / nature.leafArea_m2,
    droppedAll,
    caught_mol_d: caught,
  };
}

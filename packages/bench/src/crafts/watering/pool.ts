import type { PlantId } from "../../book/entry.ts";
import type { Member } from "../craft.ts";
import type { WaterSlice } from "./slice.ts";

/** What the pots of one bench say together of the last days' demand. */
export interface Pooled {
  /** Common error of the demand, ln. */
  readonly ln: number;
  readonly sd: number;
  /** How many neighbours' weights it rests on. */
  readonly from_n: number;
}

/** Common errors of a bench come and go within days. @source air-water sheet section 8, pooling (assumption there) */
const BENCH_SD = 0.15;
const FADE_per_d = 0.7;
const DAY_ms = 86_400_000;
const OLDEST_d = 7;
/** Variance of what is a pot's own and not the bench's. @source our assumption */
const OWN_WAYS_2 = 0.01;

export const NO_POOL: Pooled = { ln: 0, sd: BENCH_SD, from_n: 0 };

/**
 * Bench factor for each pot from the recent surprises of the others: their mean by precision, shrunk towards none.
 * A pot's own weights are left out, since they moved its own state already.
 */
export function poolOf(members: readonly Member<WaterSlice>[], now_ms: number): ReadonlyMap<PlantId, Pooled> {
  const told = members.map((member) => evidenceOf(member.slice, now_ms));
  let weight = 0;
  let sum = 0;
  let count_n = 0;
  for (const each of told) {
    weight += each.weight;
    sum += each.sum;
    count_n += each.count_n;
  }
  const prior = 1 / BENCH_SD ** 2;
  return new Map(
    members.map((member, index) => {
      const own = told[index] as Evidence;
      const others = Math.max(0, weight - own.weight);
      const from_n = count_n - own.count_n;
      const ln = from_n === 0 ? 0 : (sum - own.sum) / (others + prior);
      return [member.plant.id, { ln, sd: Math.sqrt(1 / (others + prior)), from_n }];
    }),
  );
}

interface Evidence {
  readonly weight: number;
  readonly sum: number;
  readonly count_n: number;
}

function evidenceOf(slice: WaterSlice, now_ms: number): Evidence {
  let weight = 0;
  let sum = 0;
  let count_n = 0;
  for (const error of slice.errors) {
    const age_d = (now_ms - error.at_ms) / DAY_ms;
    if (!(age_d >= 0) || age_d > OLDEST_d) continue;
    const kept = FADE_per_d ** age_d;
    // An old surprise says kept times itself of today, with the rest of the bench's variance as doubt.
    const precision = 1 / (error.variance + BENCH_SD ** 2 * (1 - kept * kept) + OWN_WAYS_2);
    weight += kept * kept * precision;
    sum += kept * precision * error.ln;
    count_n++;
  }
  return { weight, sum, count_n };
}

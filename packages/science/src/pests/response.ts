import { within } from "../errors/index.ts";
import { CHAIN_n, type ChainHour, chainHour, chainThroughHour, inStage_n } from "./chain.ts";
import { at, type PestClock, type PestName, pestClocks } from "./clocks.ts";

/** Beyond so many on a small plant nobody need be told how many. */
export const VERY_MANY_n = 200;

/** What grows out of one egg (or one animal of the steady mixture), day by day from its start. */
export type HiddenResponse = {
  readonly eggs_n: Float64Array;
  readonly young_n: Float64Array;
  readonly pupae_n: Float64Array;
  readonly adults_n: Float64Array;
  /** summed from the start to the end of each day */
  readonly adultDays_d: Float64Array;
};

/**
 * How one pest lives in one air, shared by all plants that stand in it: what one founder becomes, whatever its first day.
 * Index 0 is the start of the first day, index i the end of the i-th.
 */
export type PestResponse = {
  readonly clock: PestClock;
  readonly days_n: number;
  /** rate of increase summed from the start */
  readonly growth: Float64Array;
  /** share of birth to first birth done, summed from the start */
  readonly births: Float64Array;
  /** share of the hidden development done, summed from the start */
  readonly hidden: Float64Array;
  /** growth at which a newborn of that day begins to multiply, half its first birth over */
  lagGrowth(day: number, pace: number): number;
  /** from eggs laid, or from the steady mixture of ages, at the start of that day */
  hiddenFrom(day: number, from: "eggs" | "mixture"): HiddenResponse;
};

const MIXING_d = 90;

/**
 * Works out how a pest lives in an air given hour by hour.
 *
 * R = Σ r(T)/24; chains of stages are run once for each first day that is asked about.
 *
 * @param pest pest with a clock
 * @param hours_C temperatures [day][hour °C], -50 to 60, 24 a day, up to 1000 days; of the medium for gnats, of the leaves for others
 * @returns the shared response
 * @throws QuantityError outside those ranges
 * @source the pest's own clock; sharing is our assumption of one air
 */
export function pestResponse(pest: PestName, hours_C: readonly Float64Array[]): PestResponse {
  const clock = pestClocks[pest];
  within("days_n", hours_C.length, 1, 1000);
  const days_n = hours_C.length;
  const growth = new Float64Array(days_n + 1);
  const births = new Float64Array(days_n + 1);
  const hidden = new Float64Array(days_n + 1);
  hours_C.forEach((hours, day) => {
    within("hours_n", hours.length, 24, 24);
    let [grown, born, passed] = [0, 0, 0];
    for (const air_C of hours) {
      within("air_C", air_C, -50, 60);
      grown += at(clock.rate, air_C);
      born += at(clock.firstBirth, air_C);
      passed += at(clock.hidden, air_C);
    }
    growth[day + 1] = (growth[day] as number) + grown / 24;
    births[day + 1] = (births[day] as number) + born / 24;
    hidden[day + 1] = (hidden[day] as number) + passed / 24;
  });
  const runs = new Map<string, HiddenResponse>();
  // What an hour does to a chain is the same for all that began before it.
  let chainHours: readonly (readonly ChainHour[])[] | undefined;
  const hoursOf = (): readonly (readonly ChainHour[])[] => {
    const { stages } = clock;
    chainHours ??= stages
      ? hours_C.map((hours) => Array.from(hours, (air_C) => chainHour(stages, air_C)))
      : [];
    return chainHours;
  };
  return {
    clock,
    days_n,
    growth,
    births,
    hidden,
    lagGrowth(day, pace) {
      const start = births[Math.min(days_n, Math.max(0, day))] as number;
      let end = Math.min(days_n, Math.max(0, day));
      while (end < days_n && ((births[end] as number) - start) * pace < 0.5) end++;
      return ((births[end] as number) - start) * pace < 0.5
        ? Number.POSITIVE_INFINITY
        : (growth[end] as number);
    },
    hiddenFrom(day, from) {
      const key = `${from} ${day}`;
      let run = runs.get(key);
      if (!run) {
        run = runFrom(clock, hours_C, hoursOf(), Math.min(days_n, Math.max(0, day)), from);
        runs.set(key, run);
      }
      return run;
    },
  };
}

function runFrom(
  clock: PestClock,
  hours_C: readonly Float64Array[],
  chainHours: readonly (readonly ChainHour[])[],
  first: number,
  from: "eggs" | "mixture",
): HiddenResponse {
  const { stages } = clock;
  const left = hours_C.length - first;
  const response = {
    eggs_n: new Float64Array(left + 1),
    young_n: new Float64Array(left + 1),
    pupae_n: new Float64Array(left + 1),
    adults_n: new Float64Array(left + 1),
    adultDays_d: new Float64Array(left + 1),
  };
  if (!stages) return response;
  const chain =
    from === "eggs" ? oneEgg() : steadyMixture(clock, hours_C[Math.min(first, hours_C.length - 1)]);
  const write = (day: number): void => {
    response.eggs_n[day] = inStage_n(chain, 0);
    response.young_n[day] = inStage_n(chain, 1);
    response.pupae_n[day] = inStage_n(chain, 2);
    response.adults_n[day] = chain[CHAIN_n - 1] as number;
  };
  write(0);
  for (let day = 0; day < left; day++) {
    let adults = 0;
    for (const hour of chainHours[first + day] as readonly ChainHour[]) {
      chainThroughHour(chain, hour);
      adults += chain[CHAIN_n - 1] as number;
    }
    write(day + 1);
    response.adultDays_d[day + 1] = (response.adultDays_d[day] as number) + adults / 24;
  }
  return response;
}

function oneEgg(): Float64Array {
  const chain = new Float64Array(CHAIN_n);
  chain[0] = 1;
  return chain;
}

/** All ages as they settle when the pest has lived there for long, one animal in all. */
function steadyMixture(clock: PestClock, hours: Float64Array | undefined): Float64Array {
  const chain = oneEgg();
  const mean_C = hours ? hours.reduce((sum, each) => sum + each, 0) / hours.length : 20;
  const { stages } = clock;
  if (!stages) return chain;
  // Below its threshold nothing settles: the mixture of a cool room stands in.
  const hour = chainHour(stages, Math.max(15, mean_C));
  for (let i = 0; i < MIXING_d * 24; i++) chainThroughHour(chain, hour);
  const all = chain.reduce((sum, each) => sum + each, 0);
  for (let i = 0; i < CHAIN_n; i++) chain[i] = (chain[i] as number) / all;
  return chain;
}

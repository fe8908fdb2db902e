import { within } from "../errors/index.ts";

/** A fungus gnat population in classes of a day: females only. */
export type DailyClasses = {
  readonly eggClasses_n: number;
  readonly larvaClasses_n: number;
  readonly pupaClasses_n: number;
  readonly adultClasses_n: number;
  /** daughters' eggs that a female lays in a day */
  readonly daughters_per_d: number;
  readonly hatch_frac: number;
  readonly emergence_frac: number;
};

const REFUSED = ["eggClasses_n", "larvaClasses_n", "pupaClasses_n", "adultClasses_n"] as const;

function refuseOther(classes: DailyClasses): void {
  for (const name of REFUSED) within(name, classes[name], 1, 200);
  within("daughters_per_d", classes.daughters_per_d, 0, 10_000);
  within("hatch_frac", classes.hatch_frac, 0, 1);
  within("emergence_frac", classes.emergence_frac, 0, 1);
}

type Removal = {
  /** share of the adults that a card takes each day */
  readonly capture_frac?: number;
  /** share of larvae that a drench kills, and the days of drenches */
  readonly kill_frac?: number;
  readonly killDays_d?: readonly number[];
};

/** One day: births from the adults at its start, then ageing and survival, then the card, then the drench. */
function step(state: Float64Array, classes: DailyClasses, capture_frac: number, kill_frac: number): void {
  const egg = classes.eggClasses_n;
  const larva = egg + classes.larvaClasses_n;
  const pupa = larva + classes.pupaClasses_n;
  const all = pupa + classes.adultClasses_n;
  let births = 0;
  for (let i = pupa; i < all; i++) births += (state[i] as number) * classes.daughters_per_d;
  for (let i = all - 1; i > 0; i--) {
    const enters = i === egg ? classes.hatch_frac : i === pupa ? classes.emergence_frac : 1;
    state[i] = (state[i - 1] as number) * enters;
  }
  state[0] = births;
  for (let i = pupa; i < all; i++) state[i] = (state[i] as number) * (1 - capture_frac);
  for (let i = egg; i < larva; i++) state[i] = (state[i] as number) * (1 - kill_frac);
}

const sum = (state: Float64Array, from: number, to: number): number =>
  state.subarray(from, to).reduce((total, each) => total + each, 0);

/**
 * Fungus gnats by day from newly emerged females, with cards that take adults and drenches that kill larvae.
 *
 * Each day: births from the adults at its start; ageing with survival; card; drench on the days named.
 *
 * @param run classes of a day by stage, 1 to 200 each; eggs of daughters per female per day, 0 to 10000; shares that hatch and emerge, 0 to 1; females, 0 to 1000000; days, 0 to 400; share of adults taken a day, 0 to 1, none unless given; share of larvae killed, 0 to 1, and days of it
 * @returns eggs, larvae, pupae and adults at the end of the last day
 * @throws QuantityError outside those ranges
 * @source Leslie1945; Bradysia1998 for the rates
 * @see checks/pests.json 090
 * @example gnatsByDay({ eggClasses_n: 4, larvaClasses_n: 13, pupaClasses_n: 5, adultClasses_n: 4, daughters_per_d: 16.475, hatch_frac: 0.816, emergence_frac: 0.771, females_n: 10, days_d: 21 }).pupae_n // 537.74
 */
export function gnatsByDay(
  run: DailyClasses & Removal & { readonly females_n: number; readonly days_d: number },
): {
  readonly eggs_n: number;
  readonly larvae_n: number;
  readonly pupae_n: number;
  readonly adults_n: number;
} {
  refuseOther(run);
  const { females_n, days_d, capture_frac = 0, kill_frac = 0, killDays_d = [] } = run;
  within("females_n", females_n, 0, 1_000_000);
  within("days_d", days_d, 0, 400);
  within("capture_frac", capture_frac, 0, 1);
  within("kill_frac", kill_frac, 0, 1);
  const egg = run.eggClasses_n;
  const larva = egg + run.larvaClasses_n;
  const pupa = larva + run.pupaClasses_n;
  const state = new Float64Array(pupa + run.adultClasses_n);
  state[pupa] = females_n;
  for (let day = 1; day <= days_d; day++)
    step(state, run, capture_frac, killDays_d.includes(day) ? kill_frac : 0);
  return {
    eggs_n: sum(state, 0, egg),
    larvae_n: sum(state, egg, larva),
    pupae_n: sum(state, larva, pupa),
    adults_n: sum(state, pupa, state.length),
  };
}

/**
 * Daily multiplication and net reproduction of such a population at its steady mixture of ages.
 *
 * Power iteration of the day's step; R0 is what one new female leaves of new females.
 *
 * @param run classes, eggs and shares as for gnatsByDay; share of adults taken a day, 0 to 1, none unless given
 * @returns multiplication a day; rate [1/d]; daughters per female
 * @throws QuantityError outside those ranges
 * @source Leslie1945
 * @see checks/pests.json 088, 089
 * @example steadyGnats({ eggClasses_n: 4, larvaClasses_n: 13, pupaClasses_n: 5, adultClasses_n: 4, daughters_per_d: 16.475, hatch_frac: 0.816, emergence_frac: 0.771 }).multiplication_n // 1.1649
 */
export function steadyGnats(run: DailyClasses & Pick<Removal, "capture_frac">): {
  readonly multiplication_n: number;
  readonly rate_per_d: number;
  readonly netReproduction_n: number;
} {
  refuseOther(run);
  const { capture_frac = 0 } = run;
  within("capture_frac", capture_frac, 0, 1);
  let mothers = 0;
  for (let age = 0, alive = 1 - capture_frac; age < run.adultClasses_n; age++, alive *= 1 - capture_frac)
    mothers += alive;
  const netReproduction_n = run.daughters_per_d * run.hatch_frac * run.emergence_frac * mothers;
  if (netReproduction_n <= 0) return { multiplication_n: 0, rate_per_d: -5, netReproduction_n: 0 };
  // The sum over a female's days in closed form: λ^-a times a geometric row equals one.
  const before = run.eggClasses_n + run.larvaClasses_n + run.pupaClasses_n;
  const each = run.daughters_per_d * run.hatch_frac * run.emergence_frac;
  let [low, high] = [1e-3, 20];
  for (let i = 0; i < 200; i++) {
    const lambda = (low + high) / 2;
    let total = 0;
    for (let age = 0; age < run.adultClasses_n; age++)
      total += each * (1 - capture_frac) ** (age + 1) * lambda ** -(before + age + 1);
    if (total > 1) low = lambda;
    else high = lambda;
  }
  const multiplication_n = (low + high) / 2;
  return { multiplication_n, rate_per_d: Math.log(multiplication_n), netReproduction_n };
}

/**
 * Share of the adults that a card would have to take every day just to hold a gnat population where it is.
 *
 * @param classes classes, eggs and shares as for gnatsByDay
 * @returns share, 0 where it does not grow
 * @throws QuantityError outside those ranges
 * @source Leslie1945
 * @see checks/pests.json 089
 * @example captureToHold_frac({ eggClasses_n: 4, larvaClasses_n: 13, pupaClasses_n: 5, adultClasses_n: 4, daughters_per_d: 16.475, hatch_frac: 0.816, emergence_frac: 0.771 }) // 0.912
 */
export function captureToHold_frac(classes: DailyClasses): number {
  let [low, high] = [0, 1];
  if (steadyGnats(classes).multiplication_n <= 1) return 0;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (steadyGnats({ ...classes, capture_frac: middle }).multiplication_n > 1) low = middle;
    else high = middle;
  }
  return high;
}

/**
 * Aphids from one newborn, by day, and the rule that stands in for such a run.
 *
 * Every young that lives bears from the day after its d-th, so many a day for so many days; rule exp(r (t − d/2)).
 *
 * @param colony time from birth to first birth, whole [d], 1 to 100; young a day, 0.01 to 100; days of bearing, whole, 1 to 200; share that lives, 0 to 1; time [d], whole, 0 to 100
 * @returns animals by the run and by the rule, and the rate [1/d] of the run
 * @throws QuantityError outside those ranges
 * @source Leslie1945; the rule is our assumption
 * @see checks/pests.json 073
 * @example aphidColony({ firstBirth_d: 7, young_per_d: 3.5, bearing_d: 15, survival_frac: 0.9, time_d: 14 }).byRule_n // 25.4
 */
export function aphidColony(colony: {
  readonly firstBirth_d: number;
  readonly young_per_d: number;
  readonly bearing_d: number;
  readonly survival_frac: number;
  readonly time_d: number;
}): { readonly byRun_n: number; readonly byRule_n: number; readonly rate_per_d: number } {
  const { firstBirth_d, young_per_d, bearing_d, survival_frac, time_d } = colony;
  within("firstBirth_d", firstBirth_d, 1, 100);
  within("young_per_d", young_per_d, 0.01, 100);
  within("bearing_d", bearing_d, 1, 200);
  within("survival_frac", survival_frac, 0, 1);
  within("time_d", time_d, 0, 100);
  const [first, bearing, days] = [firstBirth_d, bearing_d, time_d].map(Math.round) as [
    number,
    number,
    number,
  ];
  const born = new Float64Array(days + 1);
  born[0] = 1;
  for (let day = 1; day <= days; day++)
    for (let age = first + 1; age <= first + bearing && age <= day; age++)
      born[day] = (born[day] as number) + (born[day - age] as number) * young_per_d * survival_frac;
  // Nobody dies of age within the time that such a run is asked about.
  const byRun_n = born.reduce((total, each) => total + each, 0);
  const sumAt = (rate: number): number => {
    let total = 0;
    for (let age = first + 1; age <= first + bearing; age++)
      total += young_per_d * survival_frac * Math.exp(-rate * age);
    return total;
  };
  let [low, high] = [-2, 6];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (sumAt(middle) > 1) low = middle;
    else high = middle;
  }
  const rate_per_d = (low + high) / 2;
  return { byRun_n, byRule_n: Math.exp(Math.max(0, rate_per_d * (time_d - firstBirth_d / 2))), rate_per_d };
}

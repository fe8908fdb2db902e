import { valuesOf } from "../assumption.ts";
import { normalProbability, normalQuantile } from "../chance/normal.ts";
import { within } from "../errors/index.ts";
import { type GrowthSettings, growthAssumptions } from "./assumptions.ts";
import { isSlow } from "./phases.ts";
import type { SpeciesGroup } from "./species.ts";
import type { ThermalClock } from "./thermal-rate.ts";

/** Normal seedlings per seed by temperature of the medium. Knott1997, row pepper. */
const shares = [
  { medium_C: 5, share_frac: 0 },
  { medium_C: 10, share_frac: 0.01 },
  { medium_C: 15, share_frac: 0.7 },
  { medium_C: 20, share_frac: 0.96 },
  { medium_C: 25, share_frac: 0.98 },
  { medium_C: 30, share_frac: 0.95 },
  { medium_C: 35, share_frac: 0.7 },
  { medium_C: 40, share_frac: 0 },
] as const;
/** Fewer seedlings than this are called none. @source our assumption */
const worthSowing_frac = 0.05;
const score80 = normalQuantile(0.9);

/**
 * Share of good seed that gives a normal seedling, by the temperature of the medium.
 *
 * Between the tabulated temperatures by straight lines; 0 up to 5 and from 40 °C. Above 30 °C the survivors are quick but fewer.
 *
 * @param medium_C temperature of the medium [°C], -10 to 60
 * @returns share, 0 to 0.98
 * @throws QuantityError outside that range
 * @source Knott1997
 * @see checks/growth-fruit.json 059-065
 * @example germinatedShare_frac(20) // 0.96
 */
export function germinatedShare_frac(medium_C: number): number {
  within("medium_C", medium_C, -10, 60);
  const next = shares.findIndex((each) => each.medium_C >= medium_C);
  const above = shares[next];
  const below = shares[next - 1];
  if (!above || !below) return 0;
  const along = (medium_C - below.medium_C) / (above.medium_C - below.medium_C);
  return below.share_frac + along * (above.share_frac - below.share_frac);
}

type Seed = { readonly species?: SpeciesGroup } & GrowthSettings;

function seedNumbers(seed: Seed) {
  const set = valuesOf(growthAssumptions, seed);
  const slow = isSlow(seed.species ?? "annuum");
  const share = slow ? set.emergenceSlowSpread_frac : set.emergenceSpread_frac;
  return {
    base_C: set.emergenceBase_C,
    plateau_C: set.emergencePlateau_C,
    sum_Cd: slow ? set.emergenceSlow_Cd : set.emergence_Cd,
    sdLn: Math.sqrt(Math.log(1 + share * share)),
  };
}

/**
 * Clock of emergence: the temperatures of the medium between which seed moves.
 *
 * Flat from the plateau to 40 °C: heat lowers the share that comes, not the pace of those that do.
 *
 * @param seed any of the field's emergence assumptions
 * @returns base, lower and upper optimum, maximum [°C]
 * @throws QuantityError when a set value lies outside the range of its assumption
 * @source Knott1997 for the plateau; maximum our assumption
 * @example emergenceClock({}).optimumLow_C // 25
 */
export function emergenceClock(seed: GrowthSettings): ThermalClock {
  const { base_C, plateau_C } = seedNumbers(seed);
  return { base_C, optimumLow_C: plateau_C, optimumHigh_C: 40, max_C: 45 };
}

/**
 * Days to emergence at a constant temperature of the medium, their range, and the share that comes.
 *
 * rate = (min(T, 25) − 10.5) / 118 a day. Too cold, or so hot that fewer than one in twenty come: no emergence.
 *
 * @param seed temperature of the medium [°C], -10 to 60; species group, annuum unless given; any of the field's emergence assumptions
 * @returns whether it emerges; rate [d⁻¹]; median days and their 80 % range [d], null where it does not emerge; share of good seed
 * @throws QuantityError outside those ranges
 * @source Knott1997
 * @see checks/growth-fruit.json 059-065
 * @example emergence({ medium_C: 20 }).days_d // 12.42
 */
export function emergence(seed: { readonly medium_C: number } & Seed): {
  readonly emerges: boolean;
  readonly rate_per_d: number;
  readonly days_d: number | null;
  readonly low_d: number | null;
  readonly high_d: number | null;
  readonly germinated_frac: number;
} {
  const germinated_frac = germinatedShare_frac(seed.medium_C);
  const { base_C, plateau_C, sum_Cd, sdLn } = seedNumbers(seed);
  const warmth_C = Math.min(seed.medium_C, plateau_C) - base_C;
  if (warmth_C <= 0 || germinated_frac < worthSowing_frac) {
    return { emerges: false, rate_per_d: 0, days_d: null, low_d: null, high_d: null, germinated_frac };
  }
  const days_d = sum_Cd / warmth_C;
  const factor = Math.exp(score80 * sdLn);
  return {
    emerges: true,
    rate_per_d: 1 / days_d,
    days_d,
    low_d: days_d / factor,
    high_d: days_d * factor,
    germinated_frac,
  };
}

/**
 * Share of sown seed that has emerged after so much thermal time of the medium; for one seed, the chance that it has.
 *
 * germinated share × Φ(ln(sum / θ) / σ)
 *
 * @param seed thermal time of the medium since sowing [°C d], 0 to 5000, on the clock of emergence; share of seed that will come, 0 to 1; species group, annuum unless given; any of the field's emergence assumptions
 * @returns share, 0 to the share that will come; rises with thermal time
 * @throws QuantityError outside those ranges
 * @source our assumption for the spread; sum from Knott1997
 * @example emergedShare_frac({ thermalTime_Cd: 118, germinated_frac: 0.9 }) // 0.45
 */
export function emergedShare_frac(
  seed: { readonly thermalTime_Cd: number; readonly germinated_frac: number } & Seed,
): number {
  const { thermalTime_Cd, germinated_frac } = seed;
  within("thermalTime_Cd", thermalTime_Cd, 0, 5000);
  within("germinated_frac", germinated_frac, 0, 1);
  const { sum_Cd, sdLn } = seedNumbers(seed);
  if (thermalTime_Cd === 0) return 0;
  return germinated_frac * normalProbability(Math.log(thermalTime_Cd / sum_Cd) / sdLn);
}

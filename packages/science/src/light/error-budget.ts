import { within } from "../errors/index.ts";

/** 80 % of a normal distribution lies within so many standard deviations. */
const eighty_sd = 1.2816;

/** Terms of the light at a window or under a lamp, one standard deviation, relative (sheet of the field). */
export const lightErrors_frac = {
  "radiation outdoors: station": 0.05,
  "radiation outdoors: forecast of the next day": 0.22,
  "radiation outdoors: climate, single day": 0.35,
  "photons per energy": 0.04,
  "split and sky at a window": 0.15,
  glass: 0.05,
  "distance, 3 cm": 0.1,
  "map of lamps": 0.1,
  "ageing of lamps": 0.05,
} as const;
export type LightErrorName = keyof typeof lightErrors_frac;

export type ErrorTerm = { readonly name: string; readonly error_frac: number };

export type ErrorBudget = {
  /** one standard deviation, relative */
  readonly error_frac: number;
  /** ends of the 80 % range, as factors of the number */
  readonly low_frac: number;
  readonly high_frac: number;
  readonly largest: string;
  /** error that would be left, were the largest term halved */
  readonly halved_frac: number;
};

/**
 * The error of a number of light from those of its parts, and which part to narrow first.
 *
 * Root of the sum of squares; 80 % range as factors, exp(±1.2816 s) with s² = ln(1 + error²), so that light is never below 0
 *
 * @param terms name and relative error of each, 0 to 3
 * @returns error, its 80 % range, the largest term and what halving it would leave
 * @throws QuantityError outside that range or without a term
 * @source our assumption; arithmetic of independent errors
 */
export function errorBudget(terms: readonly ErrorTerm[]): ErrorBudget {
  within("terms_n", terms.length, 1, 100);
  for (const { error_frac } of terms) within("error_frac", error_frac, 0, 3);
  const total = (list: readonly ErrorTerm[]): number =>
    Math.sqrt(list.reduce((sum, { error_frac }) => sum + error_frac ** 2, 0));
  const error_frac = total(terms);
  const largest = terms.reduce((most, term) => (term.error_frac > most.error_frac ? term : most));
  const halved = terms.map((term) =>
    term === largest ? { ...term, error_frac: term.error_frac / 2 } : term,
  );
  const sdLn = Math.sqrt(Math.log(1 + error_frac * error_frac));
  return {
    error_frac,
    low_frac: Math.exp(-eighty_sd * sdLn),
    high_frac: Math.exp(eighty_sd * sdLn),
    largest: largest.name,
    halved_frac: total(halved),
  };
}

/**
 * Root of the sum of squares of independent relative errors, with its 80 % range.
 *
 * @param errors_frac relative errors, one standard deviation each [term], 0 to 3
 * @returns error; ends of the 80 % range as factors; which of them is the largest, from 0; error were that one halved
 * @throws QuantityError outside that range or without a term
 * @source our assumption; arithmetic of independent errors
 * @example combinedError([0.05, 0.04, 0.15, 0.05, 0.1]).error_frac // 0.1977
 */
export function combinedError(errors_frac: readonly number[]): {
  readonly error_frac: number;
  readonly low_frac: number;
  readonly high_frac: number;
  readonly largest_n: number;
  readonly halved_frac: number;
} {
  for (const error_frac of errors_frac) within("errors_frac", error_frac, 0, 3);
  const { largest, ...budget } = errorBudget(
    errors_frac.map((error_frac, i) => ({ name: String(i), error_frac })),
  );
  return { ...budget, largest_n: Number(largest) };
}

/**
 * The parts of the error of daily light at a window.
 *
 * A calibration by two readings halves what geometry, glass and sky model leave open
 *
 * @param window where the radiation outdoors comes from; whether the spot was calibrated; whether its distance to the glass was measured
 * @returns terms for `errorBudget`
 * @source our assumption
 */
export function windowErrors(window: {
  readonly outdoors: "station" | "forecast of the next day" | "climate, single day";
  readonly calibrated: boolean;
  readonly measured: boolean;
}): readonly ErrorTerm[] {
  const model = window.calibrated ? 0.5 : 1;
  const outdoors: LightErrorName = `radiation outdoors: ${window.outdoors}`;
  const term = (name: LightErrorName, scale = 1): ErrorTerm => ({
    name,
    error_frac: scale * lightErrors_frac[name],
  });
  return [
    term(outdoors),
    term("photons per energy"),
    term("split and sky at a window", model),
    term("glass", model),
    term("distance, 3 cm", window.measured ? model * 0.5 : model),
  ];
}

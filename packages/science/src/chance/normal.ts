import { within } from "../errors/index.ts";

const invSqrt2Pi = 0.3989422804014327;

/**
 * Density of the standard normal distribution.
 *
 * φ(z) = exp(−z²/2) / √(2π)
 *
 * @param z standard score, any finite number
 * @returns density
 * @throws QuantityError when not finite
 * @source our assumption; the definition
 * @example normalDensity(0) // 0.39894
 */
export function normalDensity(z: number): number {
  within("z", z, -1e9, 1e9);
  return invSqrt2Pi * Math.exp(-0.5 * z * z);
}

// Cody's rational approximations of erf near 0 and of the scaled complement elsewhere; relative error below 1e-15.
const nearZero = {
  top: [
    3.1611237438705656, 113.864154151050156, 377.485237685302021, 3209.37758913846947, 0.185777706184603153,
  ],
  bottom: [23.6012909523441209, 244.024637934444173, 1282.61652607737228, 2844.23683343917062],
} as const;
const middle = {
  top: [
    0.564188496988670089, 8.88314979438837594, 66.1191906371416295, 298.635138197400131, 881.95222124176909,
    1712.04761263407058, 2051.07837782607147, 1230.33935479799725, 2.15311535474403846e-8,
  ],
  bottom: [
    15.7449261107098347, 117.693950891312499, 537.181101862009858, 1621.38957456669019, 3290.79923573345963,
    4362.61909014324716, 3439.36767414372164, 1230.33935480374942,
  ],
} as const;
const far = {
  top: [
    0.305326634961232344, 0.360344899949804439, 0.125781726111229246, 0.0160837851487422766,
    6.58749161529837803e-4, 0.0163153871373020978,
  ],
  bottom: [
    2.56852019228982242, 1.87295284992346725, 0.527905102951428412, 0.0605183413124413191,
    0.00233520497626869185,
  ],
} as const;

const at = (list: readonly number[], i: number): number => list[i] ?? 0;

/** exp(y²) erfc(y) for y > 0.46875, so that ratios of tails do not underflow. */
function scaledComplement(y: number): number {
  if (y <= 4) {
    let top = at(middle.top, 8) * y;
    let bottom = y;
    for (let i = 0; i < 7; i += 1) {
      top = (top + at(middle.top, i)) * y;
      bottom = (bottom + at(middle.bottom, i)) * y;
    }
    return (top + at(middle.top, 7)) / (bottom + at(middle.bottom, 7));
  }
  const inverse = 1 / (y * y);
  let top = at(far.top, 5) * inverse;
  let bottom = inverse;
  for (let i = 0; i < 4; i += 1) {
    top = (top + at(far.top, i)) * inverse;
    bottom = (bottom + at(far.bottom, i)) * inverse;
  }
  const correction = (inverse * (top + at(far.top, 4))) / (bottom + at(far.bottom, 4));
  return (0.5641895835477563 - correction) / y;
}

function erfNearZero(x: number): number {
  const square = x * x;
  let top = at(nearZero.top, 4) * square;
  let bottom = square;
  for (let i = 0; i < 3; i += 1) {
    top = (top + at(nearZero.top, i)) * square;
    bottom = (bottom + at(nearZero.bottom, i)) * square;
  }
  return (x * (top + at(nearZero.top, 3))) / (bottom + at(nearZero.bottom, 3));
}

/**
 * Standard normal distribution function: the chance of a score at most z.
 *
 * Φ(z) = erfc(−z/√2) / 2, good to about 15 digits, also in the lower tail
 *
 * @param z standard score, any finite number
 * @returns probability, 0 to 1; increases with z
 * @throws QuantityError when not finite
 * @source Cody1969
 * @see checks/air-water.json 115-117
 * @example normalProbability(1.2815515655446004) // 0.9
 */
export function normalProbability(z: number): number {
  within("z", z, -1e9, 1e9);
  const y = Math.abs(z) / Math.SQRT2;
  if (y <= 0.46875) return 0.5 + 0.5 * erfNearZero(z / Math.SQRT2);
  const tail = 0.5 * Math.exp(-y * y) * scaledComplement(y);
  return z < 0 ? tail : 1 - tail;
}

/**
 * Density over probability, φ(z)/Φ(z), without underflow far down the lower tail.
 *
 * @param z standard score, any finite number
 * @returns ratio; falls with z, about −z far below 0
 * @throws QuantityError when not finite
 * @source Cody1969
 * @example inverseMillsRatio(0) // 0.79788
 */
export function inverseMillsRatio(z: number): number {
  within("z", z, -1e9, 1e9);
  if (z > -1) return normalDensity(z) / normalProbability(z);
  // φ(z)/Φ(z) = √(2/π) / (exp(y²) erfc(y)) with y = −z/√2: both exponentials cancel.
  return 0.7978845608028654 / scaledComplement(-z / Math.SQRT2);
}

const centre = {
  top: [
    3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
    45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
  ],
  bottom: [
    1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867,
    39307.89580009271061, 28729.085735721942674, 5226.495278852545925,
  ],
} as const;
const side = {
  top: [
    1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504,
    1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 7.7454501427834140764e-4,
  ],
  bottom: [
    1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459,
    0.0151986665636164571966, 5.475938084995344946e-4, 1.05075007164441684324e-9,
  ],
} as const;
const tails = {
  top: [
    6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123,
    0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7,
  ],
  bottom: [
    1, 0.59983220655588793769, 0.13692988092273580531, 0.0148753612908506148525, 7.868691311456132591e-4,
    1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15,
  ],
} as const;

const polynomial = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i -= 1) sum = sum * x + at(coefficients, i);
  return sum;
};

/**
 * Standard normal quantile, the inverse of the distribution function, good to about 15 digits.
 *
 * @param probability chance, 1e-300 to 1 − 1e-16
 * @returns standard score; increases with probability
 * @throws QuantityError outside that range
 * @source Wichura1988
 * @see checks/air-water.json 117
 * @example normalQuantile(0.9) // 1.28155
 */
export function normalQuantile(probability: number): number {
  within("probability", probability, 1e-300, 1 - 1e-16);
  const fromHalf = probability - 0.5;
  if (Math.abs(fromHalf) <= 0.425) {
    const r = 0.180625 - fromHalf * fromHalf;
    return (fromHalf * polynomial(centre.top, r)) / polynomial(centre.bottom, r);
  }
  const r = Math.sqrt(-Math.log(fromHalf < 0 ? probability : 1 - probability));
  const score =
    r <= 5
      ? polynomial(side.top, r - 1.6) / polynomial(side.bottom, r - 1.6)
      : polynomial(tails.top, r - 5) / polynomial(tails.bottom, r - 5);
  return fromHalf < 0 ? -score : score;
}

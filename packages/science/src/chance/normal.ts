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
  top: [3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694, 0.18577770618460315],
  bottom: [23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171],
} as const;
const middle = {
  top: [
    0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001, 881.952221241769,
    1712.0476126340707, 2051.0783778260716, 1230.3393547979972, 2.1531153547440383e-8,
  ],
  bottom: [
    15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597,
    4362.619090143247, 3439.3676741437216, 1230.3393548037495,
  ],
} as const;
const far = {
  top: [
    0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275,
    0.0006587491615298378, 0.016315387137302097,
  ],
  bottom: [
    2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132, 0.0023352049762686918,
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
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
    67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  bottom: [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
    28729.085735721943, 5226.495278852546,
  ],
} as const;
const side = {
  top: [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
    0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  bottom: [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
    0.0005475938084995345, 1.0507500716444169e-9,
  ],
} as const;
const tails = {
  top: [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
    0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
  ],
  bottom: [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
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

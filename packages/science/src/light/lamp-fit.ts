import { within } from "../errors/index.ts";

/** A lamp known from readings under its middle: E = K/(h² + c²). */
export type LampFit = {
  readonly quality: "fitted" | "point-like" | "rejected";
  /** K [µmol s⁻¹]; null when rejected */
  readonly strength_umol_s: number | null;
  /** c [m], the size the lamp behaves as; null when rejected */
  readonly size_m: number | null;
  readonly why: string;
};

const rejected = (why: string): LampFit => ({
  quality: "rejected",
  strength_umol_s: null,
  size_m: null,
  why,
});

/**
 * Strength and size of a lamp from two readings or more under its middle.
 *
 * 1/E = (h² + c²)/K is a straight line in h², fitted by least squares of relative errors; with two readings
 * c² = (E2 h2² − E1 h1²)/(E1 − E2), K = E1 (h1² + c²). A c² below −0.25 h1² is rejected, one below 0 counts as 0
 *
 * @param readings heights from the diodes to the sensor [reading][m], 0.01 to 20, two of them at least 1 cm apart; light read there [reading][µmol m⁻² s⁻¹], 0.1 to 10000; the same number of both, 2 to 50
 * @returns quality, strength and size, and why it was rejected
 * @throws QuantityError outside those ranges
 * @source HowellCatalog, form of a disc on its axis; limits our assumption
 * @see checks/sun-light.json 107
 * @example fitLamp({ heights_m: [0.3, 0.6], readings_umol_m2_s: [153.924, 66.516] }).size_m // 0.3398
 */
export function fitLamp(readings: {
  readonly heights_m: readonly number[];
  readonly readings_umol_m2_s: readonly number[];
}): LampFit {
  const { heights_m, readings_umol_m2_s } = readings;
  within("readings_n", heights_m.length, 2, 50);
  within("readings_n", readings_umol_m2_s.length, heights_m.length, heights_m.length);
  for (const height_m of heights_m) within("heights_m", height_m, 0.01, 20);
  for (const reading of readings_umol_m2_s) within("readings_umol_m2_s", reading, 0.1, 10_000);
  const spread_m = Math.max(...heights_m) - Math.min(...heights_m);
  if (spread_m < 0.01) return rejected("heights less than 1 cm apart tell nothing of its size");
  // Weights E²: a relative error of a reading is one of 1/E times E.
  let [sum, sumX, sumY, sumXX, sumXY] = [0, 0, 0, 0, 0];
  heights_m.forEach((height_m, i) => {
    const reading = readings_umol_m2_s[i] as number;
    const weight = reading * reading;
    const [x, y] = [height_m * height_m, 1 / reading];
    sum += weight;
    sumX += weight * x;
    sumY += weight * y;
    sumXX += weight * x * x;
    sumXY += weight * x * y;
  });
  const slope = (sum * sumXY - sumX * sumY) / (sum * sumXX - sumX * sumX);
  if (!(slope > 0)) return rejected("light does not fall with height: walls reflect, or a reading is wrong");
  const strength_umol_s = 1 / slope;
  const square_m2 = (sumY / sum) * strength_umol_s - sumX / sum;
  const nearest_m = Math.min(...heights_m);
  if (square_m2 < -0.25 * nearest_m ** 2) {
    return rejected(
      "light falls faster than from a point: a reading is wrong, or the height was not from the diodes",
    );
  }
  if (square_m2 < 0) {
    const nearest = readings_umol_m2_s[heights_m.indexOf(nearest_m)] as number;
    return { quality: "point-like", strength_umol_s: nearest * nearest_m ** 2, size_m: 0, why: "" };
  }
  return { quality: "fitted", strength_umol_s, size_m: Math.sqrt(square_m2), why: "" };
}

/**
 * Strength of a lamp from one reading under its middle and its size: rough, to be labelled so.
 *
 * c = R for a disc, 0.57 of the side for a panel (of the root of its sides), 0.37 of the length for a strip, 0 for a point
 *
 * @param lamp form; length of the lit part (a disc: its diameter) and width [m], 0.001 to 10, width as length when left out; height of the reading [m], 0.01 to 20; light read [µmol m⁻² s⁻¹], 0.1 to 10000
 * @returns strength [µmol s⁻¹] and size [m]
 * @throws QuantityError outside those ranges
 * @source our assumption; 0.57 from the square panel of checks/sun-light.json 107, 0.37 from the strip half its length below
 * @example roughLamp({ form: "rectangle", length_m: 0.6, height_m: 0.3, ppfd_umol_m2_s: 153.924 }).strength_umol_s // 31.9
 */
export function roughLamp(lamp: {
  readonly form: "point" | "disc" | "rectangle" | "strip";
  readonly length_m: number;
  readonly width_m?: number;
  readonly height_m: number;
  readonly ppfd_umol_m2_s: number;
}): { readonly strength_umol_s: number; readonly size_m: number } {
  const { form, length_m, width_m = length_m, height_m, ppfd_umol_m2_s } = lamp;
  within("length_m", length_m, 0.001, 10);
  within("width_m", width_m, 0.001, 10);
  within("height_m", height_m, 0.01, 20);
  within("ppfd_umol_m2_s", ppfd_umol_m2_s, 0.1, 10_000);
  const sizes_m = {
    point: 0,
    disc: length_m / 2,
    rectangle: 0.57 * Math.sqrt(length_m * width_m),
    strip: 0.37 * length_m,
  };
  const size_m = sizes_m[form];
  return { strength_umol_s: ppfd_umol_m2_s * (height_m ** 2 + size_m ** 2), size_m };
}

/**
 * Light under the middle of a lamp whose strength and size are known from readings, at another height.
 *
 * E = K / (h² + c²)
 *
 * @param lamp strength K [µmol s⁻¹], 0 to 100000; size c [m], 0 to 10; height [m], 0.01 to 20
 * @returns light [µmol m⁻² s⁻¹]
 * @throws QuantityError outside those ranges
 * @source HowellCatalog, form of a disc on its axis
 * @see checks/sun-light.json 107
 * @example fittedLamp_umol_m2_s({ strength_umol_s: 31.626, size_m: 0.3398, height_m: 1 }) // 28.35
 */
export function fittedLamp_umol_m2_s(lamp: {
  readonly strength_umol_s: number;
  readonly size_m: number;
  readonly height_m: number;
}): number {
  within("strength_umol_s", lamp.strength_umol_s, 0, 100_000);
  within("size_m", lamp.size_m, 0, 10);
  within("height_m", lamp.height_m, 0.01, 20);
  return lamp.strength_umol_s / (lamp.height_m ** 2 + lamp.size_m ** 2);
}

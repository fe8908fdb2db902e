import { within } from "../errors/index.ts";

/** What a meter shows: conductivity, or "dissolved" by one of three factors [mg/L per mS/cm]. */
export const meterScales = ["mS/cm", "uS/cm", "ppm 500", "ppm 535", "ppm 700"] as const;
export type MeterScale = (typeof meterScales)[number];

const perUnit: Readonly<Record<MeterScale, number>> = {
  "mS/cm": 1,
  "uS/cm": 1000,
  "ppm 500": 500,
  "ppm 535": 535,
  "ppm 700": 700,
};

/**
 * What a meter of a scale shows at a conductivity.
 *
 * @param conductivity_mS_cm at 25 °C [mS/cm], 0 to 100
 * @param scale of the meter
 * @returns the number on the display, in the unit of the scale
 * @throws QuantityError outside that range
 * @source our assumption, the definition of the scales
 * @see checks/feed.json FEED-051
 * @example meterReading({ conductivity_mS_cm: 2.4, scale: "ppm 500" }) // 1200
 */
export function meterReading({
  conductivity_mS_cm,
  scale,
}: {
  readonly conductivity_mS_cm: number;
  readonly scale: MeterScale;
}): number {
  within("conductivity_mS_cm", conductivity_mS_cm, 0, 100);
  return conductivity_mS_cm * perUnit[scale];
}

/**
 * Conductivity that a number on a meter's display means.
 *
 * @param reading on the display, 0 to 100 000
 * @param scale of the meter
 * @returns conductivity [mS/cm]
 * @throws QuantityError outside that range
 * @source our assumption, the definition of the scales
 * @example conductivityRead_mS_cm({ reading: 700, scale: "ppm 700" }) // 1
 */
export function conductivityRead_mS_cm({
  reading,
  scale,
}: {
  readonly reading: number;
  readonly scale: MeterScale;
}): number {
  within("reading", reading, 0, 100_000);
  return reading / perUnit[scale];
}

/**
 * Conductivity at 25 °C from one read without compensation at another temperature.
 *
 * EC25 = EC / (1 + 0.02 (T − 25))
 *
 * @param conductivity_mS_cm as read [mS/cm], 0 to 100
 * @param water_C temperature of the water [°C], 5 to 35
 * @returns conductivity at 25 °C [mS/cm]
 * @throws QuantityError outside those ranges
 * @source common practice, no source; 2 % a degree, ions 2 to 3 %
 * @example conductivityAt25_mS_cm({ conductivity_mS_cm: 1.8, water_C: 20 }) // 2
 */
export function conductivityAt25_mS_cm({
  conductivity_mS_cm,
  water_C,
}: {
  readonly conductivity_mS_cm: number;
  readonly water_C: number;
}): number {
  within("conductivity_mS_cm", conductivity_mS_cm, 0, 100);
  within("water_C", water_C, 5, 35);
  return conductivity_mS_cm / (1 + 0.02 * (water_C - 25));
}

/** A slip that would make a meter show what it shows. */
export type Slip = {
  readonly slip:
    | "wrong unit"
    | "wrong scale"
    | "water only"
    | "one part twice"
    | "one part missing"
    | "half the water"
    | "twice the water"
    | "not compensated";
  /** the product it concerns, where it concerns one */
  readonly part?: string;
  readonly scale?: MeterScale;
  /** what the meter should show if this had happened */
  readonly conductivity_mS_cm: number;
  /** how far off that still is, as a share of what was read */
  readonly off_frac: number;
};

/** A reading may be this far from the sum before anything is asked. @source common practice, no source */
export const METER_BAND_frac = 0.15;

/**
 * Slips that explain a reading, the nearest first; empty when the reading is as it should be.
 *
 * @param read_mS_cm what was read, taken at its word [mS/cm]
 * @param expected_mS_cm what the mix should show
 * @param water_mS_cm what the water alone shows
 * @param parts what each product adds to it
 * @param scale the meter's scale as it was told
 * @param water_C temperature of the mix, where the meter may not compensate [°C]
 * @param band_frac how far a reading may be off, 0.01 to 0.5
 * @returns slips whose own reading is within the band of what was read
 * @throws QuantityError outside those ranges
 * @source our assumption
 */
export function likelySlips({
  read_mS_cm,
  expected_mS_cm,
  water_mS_cm,
  parts,
  scale = "mS/cm",
  water_C = 25,
  band_frac = METER_BAND_frac,
}: {
  readonly read_mS_cm: number;
  readonly expected_mS_cm: number;
  readonly water_mS_cm: number;
  readonly parts: readonly { readonly part: string; readonly adds_mS_cm: number }[];
  readonly scale?: MeterScale;
  readonly water_C?: number;
  readonly band_frac?: number;
}): readonly Slip[] {
  within("read_mS_cm", read_mS_cm, 0, 100_000);
  within("expected_mS_cm", expected_mS_cm, 0, 100);
  within("water_mS_cm", water_mS_cm, 0, 100);
  within("water_C", water_C, 5, 35);
  within("band_frac", band_frac, 0.01, 0.5);
  if (Math.abs(read_mS_cm - expected_mS_cm) <= band_frac * Math.max(expected_mS_cm, 0.05)) return [];
  const added_mS_cm = expected_mS_cm - water_mS_cm;
  const tried: Omit<Slip, "off_frac">[] = [
    { slip: "water only", conductivity_mS_cm: water_mS_cm },
    { slip: "half the water", conductivity_mS_cm: water_mS_cm + 2 * added_mS_cm },
    { slip: "twice the water", conductivity_mS_cm: water_mS_cm + added_mS_cm / 2 },
    ...parts.flatMap(({ part, adds_mS_cm }): Omit<Slip, "off_frac">[] => [
      { slip: "one part twice", part, conductivity_mS_cm: expected_mS_cm + adds_mS_cm },
      { slip: "one part missing", part, conductivity_mS_cm: expected_mS_cm - adds_mS_cm },
    ]),
    { slip: "not compensated", conductivity_mS_cm: expected_mS_cm * (1 + 0.02 * (water_C - 25)) },
    { slip: "wrong unit", conductivity_mS_cm: expected_mS_cm * 1000 },
    ...meterScales
      .filter((each) => each !== scale && each !== "mS/cm" && each !== "uS/cm")
      .map(
        (each): Omit<Slip, "off_frac"> => ({
          slip: "wrong scale",
          scale: each,
          conductivity_mS_cm: (expected_mS_cm * perUnit[each]) / perUnit[scale],
        }),
      ),
  ];
  return tried
    .map((each) => ({
      ...each,
      off_frac: Math.abs(each.conductivity_mS_cm - read_mS_cm) / Math.max(read_mS_cm, 0.01),
    }))
    .filter(({ off_frac }) => off_frac <= band_frac)
    .toSorted((one, other) => one.off_frac - other.off_frac);
}

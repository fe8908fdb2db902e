import { alphaFromAir_per_cm } from "./calibrate.ts";
import type { RetentionCurve } from "./retention.ts";
import type { PotShape } from "./shape.ts";

/** Where a porosity comes from: measured at home, printed in a work, or from memory and wide. */
export type PorosityOrigin = "measured" | "published" | "assumed";

/** A medium or a part of one: its porosity with the height and the way it was measured, which it can't be used without. */
export type Porosity = {
  readonly porosity_frac: number;
  /** air after draining in the reference pot */
  readonly air_frac: number;
  /** one standard deviation of that air, packing and batch counted */
  readonly airSd_frac: number;
  readonly residualWater_frac: number;
  /** n of the curve */
  readonly steepness: number;
  readonly bulkDensity_g_mL: number;
  readonly reference: "4-inch pot" | "7.6 cm core" | "own pot";
  readonly fill_cm: number;
  readonly origin: PorosityOrigin;
  readonly source: string;
  /** coarse grains that drain by themselves; a shallow tray wants only such */
  readonly granular: boolean;
  /** loss of air a year in the pot */
  readonly yearlyLoss_frac: number;
  readonly peat_frac: number;
};

const straight = (height_cm: number): PotShape => ({
  form: "round",
  bottomLength_cm: 7.6,
  bottomWidth_cm: 7.6,
  topLength_cm: 7.6,
  topWidth_cm: 7.6,
  innerHeight_cm: height_cm,
});

/** Pots in which porosities are printed; the sizes of the first are our assumption. */
const REFERENCE_POTS: Readonly<Record<"4-inch pot" | "7.6 cm core", PotShape>> = {
  "4-inch pot": {
    form: "round",
    bottomLength_cm: 7,
    bottomWidth_cm: 7,
    topLength_cm: 9.8,
    topWidth_cm: 9.8,
    innerHeight_cm: 9.5,
  },
  "7.6 cm core": straight(7.6),
};

const row = (
  [porosity_frac, air_frac, airSd_frac, bulkDensity_g_mL]: readonly [number, number, number, number],
  rest: Partial<Porosity> & Pick<Porosity, "source">,
): Porosity => ({
  porosity_frac,
  air_frac,
  airSd_frac,
  bulkDensity_g_mL,
  residualWater_frac: 0.15,
  steepness: 1.5,
  reference: "4-inch pot",
  fill_cm: 8.5,
  origin: "published",
  granular: false,
  yearlyLoss_frac: 0.15,
  peat_frac: 0,
  ...rest,
});

const PRINTED = { source: "ArkansasUnit7" } as const;
const CORE = { reference: "7.6 cm core", fill_cm: 7.6 } as const;
const REMEMBERED = {
  ...CORE,
  origin: "assumed",
  source: "from memory, wide: wants a porosity test",
} as const;

/** Media and parts that bags hold. Printed ones carry ±4 points of packing and batch; remembered ones half their range. */
export const media = {
  "peat and perlite 80:20": row([0.79, 0.1, 0.04, 0.108], { ...PRINTED, peat_frac: 0.8 }),
  "peat and perlite 70:30": row([0.8, 0.11, 0.04, 0.101], { ...PRINTED, peat_frac: 0.7 }),
  "coir and perlite 80:20": row([0.81, 0.08, 0.04, 0.09], { ...PRINTED, yearlyLoss_frac: 0.3 }),
  "coir and bark 50:50": row([0.78, 0.13, 0.04, 0.14], { ...PRINTED, yearlyLoss_frac: 0.3 }),
  "peat and bark 50:50": row([0.8, 0.22, 0.04, 0.13], { ...PRINTED, peat_frac: 0.5, yearlyLoss_frac: 0.3 }),
  "peat, vermiculite and perlite 50:25:25": row([0.86, 0.24, 0.04, 0.11], { ...PRINTED, peat_frac: 0.5 }),
  "peat, vermiculite and bark 40:30:30": row([0.82, 0.28, 0.04, 0.16], { ...PRINTED, peat_frac: 0.4 }),
  peat: row([0.98, 0.11, 0.04, 0.11], {
    ...CORE,
    residualWater_frac: 0.2,
    peat_frac: 1,
    source: "IJA2012",
  }),
  bark: row([0.79, 0.31, 0.04, 0.18], {
    ...CORE,
    steepness: 1.8,
    yearlyLoss_frac: 0.3,
    source: "IJA2012",
  }),
  coir: row([0.94, 0.2, 0.1, 0.08], { ...REMEMBERED, yearlyLoss_frac: 0.3 }),
  perlite: row([0.7, 0.32, 0.06, 0.1], {
    ...REMEMBERED,
    residualWater_frac: 0.1,
    steepness: 1.8,
    granular: true,
    yearlyLoss_frac: 0.05,
  }),
  pumice: row([0.7, 0.38, 0.06, 0.5], {
    ...REMEMBERED,
    residualWater_frac: 0.15,
    steepness: 1.8,
    granular: true,
    yearlyLoss_frac: 0.05,
  }),
  "clay granules": row([0.7, 0.38, 0.06, 0.62], {
    ...REMEMBERED,
    residualWater_frac: 0.15,
    steepness: 1.8,
    granular: true,
    yearlyLoss_frac: 0.05,
  }),
  vermiculite: row([0.82, 0.2, 0.06, 0.13], REMEMBERED),
  sand: row([0.39, 0.04, 0.02, 1.5], {
    ...REMEMBERED,
    residualWater_frac: 0.05,
    steepness: 2.68,
    yearlyLoss_frac: 0,
  }),
} as const satisfies Readonly<Record<string, Porosity>>;

export type MediumName = keyof typeof media;
export const mediumNames = Object.keys(media) as readonly MediumName[];

/** Curves that were worked out, by porosity: a few bags are asked about again and again. */
const known = new WeakMap<object, RetentionCurve>();

/**
 * The retention curve of a medium from its porosity in the pot it was measured in.
 *
 * α from the air there; saturated water is the porosity, n and residual water are those usual for such a medium
 *
 * @param of porosity with its reference; for one measured at home, the pot it was measured in
 * @returns the curve
 * @throws QuantityError where no medium holds that much air in that pot
 * @source VanGenuchten1980, fitted as of MilksFontenoLarson1989
 */
export function curveOf(of: Porosity, own?: PotShape & { readonly fill_cm: number }): RetentionCurve {
  const had = known.get(of);
  if (had) return had;
  const pot = of.reference === "own pot" ? (own ?? straight(of.fill_cm)) : REFERENCE_POTS[of.reference];
  const asked = {
    residualWater_frac: of.residualWater_frac,
    saturatedWater_frac: of.porosity_frac,
    steepness: of.steepness,
  };
  const alpha_per_cm = alphaFromAir_per_cm({
    ...pot,
    fill_cm: of.fill_cm,
    air_frac: of.air_frac,
    ...asked,
  });
  const curve = { ...asked, alpha_per_cm };
  known.set(of, curve);
  return curve;
}

/**
 * The same with the n of the curve at the ends of what is usual (1.3 and 1.8), each fitted to the same air: what not knowing the shape costs.
 *
 * @param of porosity with its reference
 * @returns curves with n 1.3 and 1.8
 * @throws QuantityError where no medium holds that much air in that pot
 * @source VanGenuchten1980; the ends are our assumption
 */
export function curveEnsemble(of: Porosity): readonly [RetentionCurve, RetentionCurve] {
  return [curveOf({ ...of, steepness: 1.3 }), curveOf({ ...of, steepness: 1.8 })];
}

/** Blends whose porosity was published together: what a measured blend may be expected to lie within. */
export const blendsSeen = {
  blends_n: 127,
  air_frac: [0.051, 0.404],
  water_frac: [0.248, 0.594],
  bulkDensity_g_mL: [0.35, 1],
} as const;

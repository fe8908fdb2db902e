import { within } from "../errors/index.ts";
import { conductivityAtLeast_mS_cm, type IonName, type Ions, ionNames } from "./conductivity.ts";
import { type Aimed, type Amounts, amountOf } from "./species.ts";
import { closedIons, ionsOf } from "./water.ts";

/** A bottle or bag on the shelf with the tool that measures it. */
export type MixProduct = {
  readonly id: string;
  /** in a unit of the product: a gram or a millilitre [mg] */
  readonly contents_mg: Amounts;
  /** whether its label declares chloride: then open charges are closed with it */
  readonly declaresChloride?: boolean;
  /** one step of the tool, in units of the product */
  readonly step: number;
  /** most steps that may be taken */
  readonly most_n: number;
  /** least steps when it is used at all */
  readonly least_n?: number;
  /** products that may not be used together with this one */
  readonly notWith?: readonly string[];
};

/** A wanted concentration in the mix, with the range in which a miss counts nothing. */
export type MixAim = {
  readonly of: Aimed;
  readonly aim_mg_L: number;
  readonly low_mg_L?: number;
  readonly high_mg_L?: number;
  readonly weight: number;
  /** whether the upper end may not be passed at all */
  readonly hard?: boolean;
};

/** What a mix may not pass. */
export type MixLimits = {
  readonly ammoniumShare_frac?: number;
  readonly ammoniumN_mg_L?: number;
  readonly Na_mg_L?: number;
  readonly Cl_mg_L?: number;
  readonly B_mg_L?: number;
  readonly potassiumToCalcium?: number;
  /** by the full sum of ions [mS/cm] */
  readonly conductivity_mS_cm?: number;
  /** any other line: so much a unit of each product in a litre, and what the water has */
  readonly lines?: readonly {
    readonly name: string;
    readonly perUnit: Readonly<Record<string, number>>;
    readonly water: number;
    readonly most: number;
  }[];
};

export type MixProblem = {
  readonly products: readonly MixProduct[];
  readonly volume_L: number;
  readonly water_mg_L: Amounts;
  readonly aims: readonly MixAim[];
  readonly limits?: MixLimits;
  /** most products in one mix */
  readonly products_n?: number;
};

/** One straight line of the problem, in tool steps: what is there without any product, and what a step of each adds. */
export type MixRow = { readonly name: string; readonly base: number; readonly steps: Float64Array };
/** A line with the edges between which a miss counts nothing, and what it counts beyond. */
export type AimRow = MixRow & {
  readonly of: Aimed;
  readonly low: number;
  readonly high: number;
  readonly weight: number;
  /** what a miss counts where it is not squared */
  readonly linearWeight: number;
};

/** The problem in tool steps, products in the order of their ids, so that the order in which they are given means nothing. */
export type CompiledMix = {
  readonly products: readonly MixProduct[];
  readonly least: Int32Array;
  readonly most: Int32Array;
  /** a miss, squared and weighted: (value − edge)², the weight over the square of the aim */
  readonly aims: readonly AimRow[];
  /** must not be above 0; scaled so that 1 is the limit itself */
  readonly limits: readonly MixRow[];
  /** must not be above 0 wherever the conductivity is within its limit: a bound to prune with */
  readonly prunes: readonly MixRow[];
  readonly conductivity?: {
    readonly most_mS_cm: number;
    readonly water: Float64Array;
    readonly steps: readonly Float64Array[];
    /** never below the conductivity; 0 at its limit */
    readonly alone: MixRow;
  };
};

/** Far beyond where feeds are: the bound below the conductivity holds up to here. */
const PRUNE_STRENGTH_mol_L = 0.08;
const PRUNE_DIVALENT_mmol_L = 25;

/**
 * Puts a mixing problem into straight lines over tool steps.
 *
 * @param problem products, water, aims and limits; 1 to 40 products, 0.05 to 100 000 L
 * @returns lines, products in the order of their ids
 * @throws QuantityError for a volume, a step or a number of products outside its range; RangeError for an id given twice
 * @source our assumption
 */
export function compiledMix(problem: MixProblem): CompiledMix {
  const { volume_L, water_mg_L, limits = {} } = problem;
  within("volume_L", volume_L, 0.05, 100_000);
  within("products_n", problem.products.length, 1, 40);
  const products = problem.products.toSorted((one, other) => (one.id < other.id ? -1 : 1));
  for (const [index_n, product] of products.entries()) {
    if (product.id === products[index_n + 1]?.id)
      throw new RangeError(`two products are called ${product.id}`);
    within("step", product.step, 1e-6, 1e6);
    within("most_n", product.most_n, 0, 1e6);
  }
  const perStep = (value: (product: MixProduct) => number): Float64Array =>
    Float64Array.from(products, (product) => (value(product) * product.step) / volume_L);
  const row = (of: Aimed) => perStep(({ contents_mg }) => amountOf(contents_mg, of));
  const aims = problem.aims.map((aim): AimRow => {
    const scale = aim.aim_mg_L > 0 ? aim.aim_mg_L : Math.max(aim.high_mg_L ?? 0, 1);
    return {
      name: aim.of,
      of: aim.of,
      base: amountOf(water_mg_L, aim.of),
      steps: row(aim.of),
      low: aim.aim_mg_L > 0 ? (aim.low_mg_L ?? aim.aim_mg_L) : 0,
      high: aim.high_mg_L ?? aim.aim_mg_L,
      weight: aim.weight / scale ** 2,
      linearWeight: aim.weight / scale,
    };
  });
  const lines: MixRow[] = [];
  const limit = (name: string, base: number, steps: Float64Array, most: number) => {
    const scale = Math.max(Math.abs(most), 1e-6);
    lines.push({ name, base: (base - most) / scale, steps: steps.map((each) => each / scale) });
  };
  const ammonium = (amounts: Amounts) => (amounts.NH4N ?? 0) + (amounts.ureaN ?? 0);
  const share = limits.ammoniumShare_frac;
  if (share !== undefined) {
    const over = (amounts: Amounts) => ammonium(amounts) - share * amountOf(amounts, "N");
    lines.push({
      name: "ammonium share",
      base: over(water_mg_L),
      steps: perStep(({ contents_mg }) => over(contents_mg)),
    });
  }
  if (limits.ammoniumN_mg_L !== undefined)
    limit(
      "ammonium",
      water_mg_L.NH4N ?? 0,
      perStep(({ contents_mg }) => contents_mg.NH4N ?? 0),
      limits.ammoniumN_mg_L,
    );
  for (const of of ["Na", "Cl", "B"] as const) {
    const most = limits[`${of}_mg_L`];
    if (most !== undefined) limit(of, water_mg_L[of] ?? 0, row(of), most);
  }
  if (limits.potassiumToCalcium !== undefined) {
    const ratio = limits.potassiumToCalcium;
    const over = (amounts: Amounts) => ((amounts.K ?? 0) - ratio * (amounts.Ca ?? 0)) / 100;
    lines.push({
      name: "potassium to calcium",
      base: over(water_mg_L),
      steps: perStep(({ contents_mg }) => over(contents_mg)),
    });
  }
  for (const aim of problem.aims)
    if (aim.hard && aim.high_mg_L !== undefined)
      limit(aim.of, amountOf(water_mg_L, aim.of), row(aim.of), aim.high_mg_L);
  for (const { name, perUnit, water, most } of limits.lines ?? [])
    limit(
      name,
      water,
      perStep(({ id }) => perUnit[id] ?? 0),
      most,
    );
  const conductivity = conductivityRows(problem, products);
  return {
    products,
    least: Int32Array.from(products, ({ least_n }) => Math.max(1, Math.ceil(least_n ?? 1))),
    most: Int32Array.from(products, ({ most_n }) => Math.floor(most_n)),
    aims,
    limits: lines,
    ...conductivity,
  };
}

const vector = (ions: Ions, times: number): Float64Array =>
  Float64Array.from(ionNames, (name) => (ions[name] ?? 0) * times);
const named = (ions: Float64Array): Ions =>
  Object.fromEntries(ionNames.map((name, index_n) => [name, ions[index_n] as number])) as Record<
    IonName,
    number
  >;

function conductivityRows(
  { volume_L, water_mg_L, limits }: MixProblem,
  products: readonly MixProduct[],
): Pick<CompiledMix, "conductivity" | "prunes"> {
  const most_mS_cm = limits?.conductivity_mS_cm ?? Number.POSITIVE_INFINITY;
  const water = vector(closedIons(ionsOf(water_mg_L)), 1);
  const steps = products.map((product) =>
    vector(closedIons(ionsOf(product.contents_mg), product.declaresChloride), product.step / volume_L),
  );
  const least = (ions: Float64Array) =>
    conductivityAtLeast_mS_cm(named(ions), PRUNE_STRENGTH_mol_L, PRUNE_DIVALENT_mmol_L);
  const prunes =
    most_mS_cm <= 3
      ? [
          {
            name: "conductivity",
            base: (least(water) - most_mS_cm) / most_mS_cm,
            steps: Float64Array.from(steps, (each) => least(each) / most_mS_cm),
          },
        ]
      : [];
  const alone = (ions: Float64Array) => conductivityAtLeast_mS_cm(named(ions), 0, 0);
  return {
    prunes,
    conductivity: {
      most_mS_cm,
      water,
      steps,
      alone: {
        name: "conductivity of ions alone",
        base: Number.isFinite(most_mS_cm) ? alone(water) - most_mS_cm : 0,
        steps: Float64Array.from(steps, alone),
      },
    },
  };
}

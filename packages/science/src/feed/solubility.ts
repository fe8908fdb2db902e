import { within } from "../errors/index.ts";
import { freeIons } from "./conductivity.ts";

/** Grams that dissolve in a litre of water, by its temperature. @source handbook tables as quoted on grower pages; opened */
const solubilities: Readonly<Record<string, readonly (readonly [water_C: number, dissolved_g_L: number])[]>> =
  {
    "potassium nitrate": [
      [5, 133],
      [10, 170],
      [20, 209],
      [25, 316],
      [30, 370],
      [40, 458],
    ],
    "ammonium sulphate": [
      [5, 710],
      [10, 730],
      [20, 750],
    ],
    "calcium nitrate": [
      [5, 1020],
      [10, 1130],
      [20, 1290],
    ],
    "magnesium nitrate": [
      [5, 680],
      [10, 690],
      [20, 710],
      [25, 720],
    ],
    "monoammonium phosphate": [
      [5, 250],
      [10, 295],
      [20, 374],
      [25, 410],
      [30, 464],
      [40, 567],
    ],
    "monopotassium phosphate": [
      [5, 110],
      [10, 180],
      [20, 230],
      [25, 250],
      [30, 300],
      [40, 340],
    ],
    "potassium chloride": [
      [5, 229],
      [10, 238],
      [20, 255],
      [25, 264],
      [30, 275],
    ],
    "potassium sulphate": [
      [5, 80],
      [10, 90],
      [20, 111],
      [25, 120],
    ],
    urea: [
      [5, 780],
      [10, 850],
      [20, 1060],
      [25, 1200],
    ],
    "magnesium sulphate": [
      [5, 600],
      [10, 650],
      [20, 710],
    ],
    gypsum: [
      [5, 2.4],
      [25, 2.67],
    ],
  };
export const dissolvingSalts = Object.keys(solubilities) as readonly string[];

/**
 * How much of a salt dissolves in a litre, straight between the temperatures of the table.
 *
 * @param salt one of `dissolvingSalts`
 * @param water_C temperature of the water, at its coldest in store [°C], 0 to 45; beyond the table its end counts
 * @returns dissolved [g/L]
 * @throws QuantityError outside that range
 * @throws RangeError for a salt that is not in the table
 * @source common practice, no source: handbook values as growers' pages quote them; magnesium sulphate from memory
 * @example solubility_g_L({ salt: "potassium nitrate", water_C: 20 }) // 209
 */
export function solubility_g_L({
  salt,
  water_C,
}: {
  readonly salt: string;
  readonly water_C: number;
}): number {
  within("water_C", water_C, 0, 45);
  const table = solubilities[salt];
  if (!table) throw new RangeError(`salt is ${salt}; expected one of ${dissolvingSalts.join(", ")}`);
  let before = table[0] ?? [0, 0];
  for (const row of table) {
    if (water_C <= row[0]) {
      const part = row[0] === before[0] ? 0 : (water_C - before[0]) / (row[0] - before[0]);
      return before[1] + Math.max(0, part) * (row[1] - before[1]);
    }
    before = row;
  }
  return before[1];
}

/** A stock is made no stronger than this share of what dissolves. @source common practice, no source */
export const STOCK_OF_SOLUBLE_frac = 0.7;

/**
 * What of an attempted stock dissolves, and what lies at the bottom.
 *
 * @param attempted_g_L product weighed in [g/L], 0 to 3000
 * @param dissolves_g_L what dissolves at that temperature [g/L], 0 to 3000
 * @returns dissolved and left over [g/L]
 * @throws QuantityError outside those ranges
 * @source our assumption, the definition
 * @see checks/feed.json FEED-065
 * @example dissolved({ attempted_g_L: 300, dissolves_g_L: 209 }) // {"dissolved_g_L":209,"left_g_L":91}
 */
export function dissolved({
  attempted_g_L,
  dissolves_g_L,
}: {
  readonly attempted_g_L: number;
  readonly dissolves_g_L: number;
}): { readonly dissolved_g_L: number; readonly left_g_L: number } {
  within("attempted_g_L", attempted_g_L, 0, 3000);
  within("dissolves_g_L", dissolves_g_L, 0, 3000);
  const dissolved_g_L = Math.min(attempted_g_L, dissolves_g_L);
  return { dissolved_g_L, left_g_L: attempted_g_L - dissolved_g_L };
}

/** Solubility product of gypsum, as its logarithm. @source PHREEQC */
const GYPSUM_LOG_K = -4.58;
/** Beyond this the coefficients of activity are not to be believed [mol/L]. */
const ACTIVITY_END_mol_L = 0.5;

/**
 * Saturation of gypsum: below 0 it stays dissolved, above it falls out.
 *
 * SI = log10(a_Ca a_SO4) + 4.58, free ions, ionic strength held at 0.5 mol/L
 *
 * @param ions totals dissolved [mmol/L], 0 to 5000 each; what is left out is not there
 * @returns saturation index; its sign is what counts
 * @throws QuantityError outside those ranges
 * @source PHREEQC; activities by Davies
 * @see checks/feed.json FEED-067
 * @example gypsumIndex({ Ca_mmol_L: 500, Mg_mmol_L: 200, SO4_mmol_L: 200 }) > 0 // true
 */
export function gypsumIndex(ions: {
  readonly Ca_mmol_L: number;
  readonly SO4_mmol_L: number;
  readonly Mg_mmol_L?: number;
  readonly K_mmol_L?: number;
  readonly NO3_mmol_L?: number;
}): number {
  for (const [name, value] of Object.entries(ions)) within(name, value, 0, 5000);
  const free = freeIons(ions);
  const held = Math.min(free.ionicStrength_mol_L, ACTIVITY_END_mol_L);
  const root = Math.sqrt(held);
  const logActivity = -0.5085 * 4 * (root / (1 + root) - 0.3 * held);
  const product = (free.Ca_mmol_L / 1000) * (free.SO4_mmol_L / 1000);
  return product <= 0 ? -99 : Math.log10(product) + 2 * logActivity - GYPSUM_LOG_K;
}

/** What must not stand in one concentrate, and which of them is in it. */
export type Clash =
  | "calcium and sulphate"
  | "calcium and phosphate"
  | "iron and phosphate"
  | "calcium and hard water";

/** Calcium with phosphate in a stock is refused above this of each [mmol/L]. @source common practice, no source */
const CALCIUM_PHOSPHATE_mmol_L = 20;

/**
 * What must not meet in one concentrate.
 *
 * @param stock_mg_L what the concentrate would hold, by species [mg/L]
 * @param ironChelated whether its iron is a chelate
 * @returns pairs that would fall out; empty where all may stand in one bottle
 * @source PHREEQC for gypsum; common practice, no source for the rest
 */
export function clashes(
  stock_mg_L: {
    readonly Ca?: number;
    readonly S?: number;
    readonly P?: number;
    readonly Fe?: number;
    readonly Mg?: number;
    readonly HCO3?: number;
  },
  { ironChelated = true }: { readonly ironChelated?: boolean } = {},
): readonly Clash[] {
  const Ca_mmol_L = (stock_mg_L.Ca ?? 0) / 40.078;
  const SO4_mmol_L = (stock_mg_L.S ?? 0) / 32.06;
  const P_mmol_L = (stock_mg_L.P ?? 0) / 30.974;
  const found: Clash[] = [];
  if (
    Ca_mmol_L > 0 &&
    SO4_mmol_L > 0 &&
    gypsumIndex({
      Ca_mmol_L: Math.min(5000, Ca_mmol_L),
      Mg_mmol_L: Math.min(5000, (stock_mg_L.Mg ?? 0) / 24.305),
      SO4_mmol_L: Math.min(5000, SO4_mmol_L),
    }) > 0
  )
    found.push("calcium and sulphate");
  if (Ca_mmol_L > CALCIUM_PHOSPHATE_mmol_L && P_mmol_L > CALCIUM_PHOSPHATE_mmol_L)
    found.push("calcium and phosphate");
  if (!ironChelated && (stock_mg_L.Fe ?? 0) > 0 && P_mmol_L > CALCIUM_PHOSPHATE_mmol_L)
    found.push("iron and phosphate");
  if (
    (stock_mg_L.HCO3 ?? 0) > 150 &&
    Ca_mmol_L > 1.5 &&
    SO4_mmol_L === 0 &&
    P_mmol_L > CALCIUM_PHOSPHATE_mmol_L
  )
    found.push("calcium and hard water");
  return found;
}

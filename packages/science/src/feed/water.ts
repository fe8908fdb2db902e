import { within } from "../errors/index.ts";
import type { Ions } from "./conductivity.ts";
import type { Amounts } from "./species.ts";

/** Carbonate hardness as a mass: 1 mmol of charge is 50.04 mg CaCO3. @source IUPAC2013 */
export const CARBONATE_mg_per_mmol = 50.04;
const HCO3_mg_per_mmol = 61.02;

/** What a water brings, per litre: a report of the works, or a strip. What is left out is taken as none. */
export type WaterReport = {
  readonly Ca_mg_L?: number;
  readonly Mg_mg_L?: number;
  readonly K_mg_L?: number;
  readonly Na_mg_L?: number;
  readonly Cl_mg_L?: number;
  readonly sulphateS_mg_L?: number;
  readonly nitrateN_mg_L?: number;
  readonly P_mg_L?: number;
  readonly B_mg_L?: number;
  readonly Fe_mg_L?: number;
  /** as CaCO3 */
  readonly alkalinity_mg_L?: number;
};
const waterNames = [
  "Ca_mg_L",
  "Mg_mg_L",
  "K_mg_L",
  "Na_mg_L",
  "Cl_mg_L",
  "sulphateS_mg_L",
  "nitrateN_mg_L",
  "P_mg_L",
  "B_mg_L",
  "Fe_mg_L",
  "alkalinity_mg_L",
] as const satisfies readonly (keyof WaterReport)[];

/**
 * Water that nobody has read a report of: the median of North American greenhouse waters.
 *
 * @source Argo1997
 */
export const usualWater = {
  Ca_mg_L: 40,
  Mg_mg_L: 11,
  Na_mg_L: 13,
  Cl_mg_L: 14,
  sulphateS_mg_L: 8,
  B_mg_L: 0.02,
  alkalinity_mg_L: 130,
} as const satisfies WaterReport;

/** How far such a guess may be off each way, as a share: tap waters differ that much. @source our assumption */
export const USUAL_WATER_SPREAD_frac = 0.6;

/**
 * What a water brings, by species [mg/L].
 *
 * @source our assumption, the definition
 */
export function waterAmounts_mg_L(water: WaterReport): Amounts {
  for (const name of waterNames) within(name, water[name] ?? 0, 0, 5000);
  return {
    Ca: water.Ca_mg_L ?? 0,
    Mg: water.Mg_mg_L ?? 0,
    K: water.K_mg_L ?? 0,
    Na: water.Na_mg_L ?? 0,
    Cl: water.Cl_mg_L ?? 0,
    S: water.sulphateS_mg_L ?? 0,
    NO3N: water.nitrateN_mg_L ?? 0,
    P: water.P_mg_L ?? 0,
    B: water.B_mg_L ?? 0,
    Fe: water.Fe_mg_L ?? 0,
    HCO3: ((water.alkalinity_mg_L ?? 0) / CARBONATE_mg_per_mmol) * HCO3_mg_per_mmol,
  };
}

const molar = {
  N: 14.007,
  P: 30.974,
  K: 39.098,
  Ca: 40.078,
  Mg: 24.305,
  S: 32.06,
  Na: 22.99,
  Cl: 35.45,
} as const;

/**
 * Ions of amounts by species [mg/L]; urea, micronutrients and chelates carry nothing.
 *
 * @source our assumption, the definition
 */
export function ionsOf(amounts: Amounts): Ions {
  return {
    NO3_mmol_L: (amounts.NO3N ?? 0) / molar.N,
    NH4_mmol_L: (amounts.NH4N ?? 0) / molar.N,
    H2PO4_mmol_L: (amounts.P ?? 0) / molar.P,
    K_mmol_L: (amounts.K ?? 0) / molar.K,
    Ca_mmol_L: (amounts.Ca ?? 0) / molar.Ca,
    Mg_mmol_L: (amounts.Mg ?? 0) / molar.Mg,
    SO4_mmol_L: (amounts.S ?? 0) / molar.S,
    Na_mmol_L: (amounts.Na ?? 0) / molar.Na,
    Cl_mmol_L: (amounts.Cl ?? 0) / molar.Cl,
    HCO3_mmol_L: (amounts.HCO3 ?? 0) / HCO3_mg_per_mmol,
  };
}

/**
 * Charge of cations less that of anions [mmol/L].
 *
 * @source our assumption, the definition
 */
const chargeOf = (ions: Ions): number =>
  (ions.NH4_mmol_L ?? 0) +
  (ions.K_mmol_L ?? 0) +
  (ions.Na_mmol_L ?? 0) +
  2 * ((ions.Ca_mmol_L ?? 0) + (ions.Mg_mmol_L ?? 0)) -
  (ions.NO3_mmol_L ?? 0) -
  (ions.H2PO4_mmol_L ?? 0) -
  (ions.Cl_mmol_L ?? 0) -
  (ions.HCO3_mmol_L ?? 0) -
  2 * (ions.SO4_mmol_L ?? 0);

/**
 * Ions with their charges closed as a label leaves them open: too many cations are taken as sulphates (chlorides where the
 * label declares chloride), too many anions as sodium.
 *
 * @param ions as declared [mmol/L]
 * @param chloride whether the label declares chloride
 * @returns ions in balance [mmol/L]
 * @source our assumption
 */
export function closedIons(ions: Ions, chloride = false): Ions {
  const charge = chargeOf(ions);
  if (charge > 0)
    return chloride
      ? { ...ions, Cl_mmol_L: (ions.Cl_mmol_L ?? 0) + charge }
      : { ...ions, SO4_mmol_L: (ions.SO4_mmol_L ?? 0) + charge / 2 };
  return { ...ions, Na_mmol_L: (ions.Na_mmol_L ?? 0) - charge };
}

/**
 * How far the charges of a water report are from balance: above 0.1 something is wrong or missing, above 0.05 look again.
 *
 * |cations − anions| / (cations + anions)
 *
 * @param water report [mg/L], 0 to 5000 each, alkalinity as CaCO3
 * @returns share, 0 to 1; 0 for pure water
 * @throws QuantityError outside those ranges
 * @source StandardMethods, as quoted
 * @see checks/feed.json FEED-049
 * @example ionImbalance_frac({ Ca_mg_L: 40, alkalinity_mg_L: 100 }) // 0.001
 */
export function ionImbalance_frac(water: WaterReport): number {
  const ions = ionsOf(waterAmounts_mg_L(water));
  const cations =
    (ions.K_mmol_L ?? 0) + (ions.Na_mmol_L ?? 0) + 2 * ((ions.Ca_mmol_L ?? 0) + (ions.Mg_mmol_L ?? 0));
  const charge = chargeOf(ions);
  const all = 2 * cations - charge;
  return all === 0 ? 0 : Math.abs(charge) / all;
}

/**
 * Sodium, or potassium where that salt regenerates it, that a softener puts in for the hardness it takes out.
 *
 * @param hardness_mg_L hardness taken out, as CaCO3 [mg/L], 0 to 1500
 * @param salt that regenerates the softener
 * @returns sodium or potassium added [mg/L]
 * @throws QuantityError outside that range
 * @source our assumption, exchange by charge: 22.99 or 39.098 over 50.04
 * @see checks/feed.json FEED-063
 * @example softenerAdds_mg_L({ hardness_mg_L: 150 }) // 68.9
 */
export function softenerAdds_mg_L({
  hardness_mg_L,
  salt = "sodium",
}: {
  readonly hardness_mg_L: number;
  readonly salt?: "sodium" | "potassium";
}): number {
  within("hardness_mg_L", hardness_mg_L, 0, 1500);
  return (hardness_mg_L / CARBONATE_mg_per_mmol) * (salt === "sodium" ? molar.Na : molar.K);
}

/**
 * Least share of pure water (rain, reverse osmosis) that brings one component of a tap water down to its limit.
 *
 * f = (c_tap − limit) / (c_tap − c_pure)
 *
 * @param tap_mg_L in the tap water [mg/L], 0 to 5000
 * @param most_mg_L limit [mg/L], 0 to 5000
 * @param pure_mg_L in the pure water [mg/L], 0 to 5000, less than the limit
 * @returns share of pure water, 0 to 1
 * @throws QuantityError outside those ranges
 * @source our assumption, the mixing of two waters
 * @see checks/feed.json FEED-064
 * @example pureShare_frac({ tap_mg_L: 200, most_mg_L: 50 }) // 0.75
 */
export function pureShare_frac({
  tap_mg_L,
  most_mg_L,
  pure_mg_L = 0,
}: {
  readonly tap_mg_L: number;
  readonly most_mg_L: number;
  readonly pure_mg_L?: number;
}): number {
  within("tap_mg_L", tap_mg_L, 0, 5000);
  within("most_mg_L", most_mg_L, 0, 5000);
  within("pure_mg_L", pure_mg_L, 0, 5000);
  if (tap_mg_L <= most_mg_L) return 0;
  if (pure_mg_L >= most_mg_L) return 1;
  return (tap_mg_L - most_mg_L) / (tap_mg_L - pure_mg_L);
}

/**
 * Two waters poured together: a share of the second in the first.
 *
 * @source our assumption, the definition
 */
export const blendedWater = (tap: WaterReport, pure: WaterReport, pure_frac: number): WaterReport =>
  Object.fromEntries(
    waterNames.map((name) => [name, (tap[name] ?? 0) * (1 - pure_frac) + (pure[name] ?? 0) * pure_frac]),
  );

/** Where advice for small pots draws its lines. @source UMassFeed for alkalinity; others from memory or common practice */
export const waterLimits = {
  alkalinityAct_mg_L: 150,
  alkalinityLow_mg_L: 50,
  Na_mg_L: 50,
  Cl_mg_L: 70,
  B_mg_L: 0.5,
  hardness_mg_L: 150,
  conductivity_mS_cm: 0.7,
} as const;

/**
 * Hardness as CaCO3 [mg/L] from calcium and magnesium.
 *
 * @source our assumption, the definition
 */
export const hardnessOf_mg_L = (water: WaterReport): number =>
  CARBONATE_mg_per_mmol * 2 * ((water.Ca_mg_L ?? 0) / molar.Ca + (water.Mg_mg_L ?? 0) / molar.Mg);

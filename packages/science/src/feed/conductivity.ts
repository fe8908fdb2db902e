import { within } from "../errors/index.ts";

/** Ions that carry current in feeds and waters, all optional, as totals dissolved; phosphate counts as H2PO4. */
export type Ions = {
  readonly K_mmol_L?: number;
  readonly Na_mmol_L?: number;
  readonly NH4_mmol_L?: number;
  readonly Ca_mmol_L?: number;
  readonly Mg_mmol_L?: number;
  readonly Cl_mmol_L?: number;
  readonly NO3_mmol_L?: number;
  readonly SO4_mmol_L?: number;
  readonly HCO3_mmol_L?: number;
  readonly H2PO4_mmol_L?: number;
  readonly H_mmol_L?: number;
};
export type IonName = keyof Ions;

const KELVIN = 298.15;
const FARADAY = 96_485.33;
const GAS = 8.314463;

/** Charge and diffusion coefficient [1e-9 m²/s] of each ion. @source PHREEQC */
const ionTable: Readonly<Record<IonName, readonly [charge: number, diffusion: number]>> = {
  K_mmol_L: [1, 1.96],
  Na_mmol_L: [1, 1.33],
  NH4_mmol_L: [1, 1.98],
  Ca_mmol_L: [2, 0.793],
  Mg_mmol_L: [2, 0.705],
  Cl_mmol_L: [-1, 2.03],
  NO3_mmol_L: [-1, 1.9],
  SO4_mmol_L: [-2, 1.07],
  HCO3_mmol_L: [-1, 1.18],
  H2PO4_mmol_L: [-1, 0.846],
  H_mmol_L: [1, 9.31],
};
export const ionNames = Object.keys(ionTable) as readonly IonName[];

/** Stability of the pairs at no ionic strength [L/mol]. @source PHREEQC, log K 2.25 and 2.37 */
const PAIR_Ca = 10 ** 2.25;
const PAIR_Mg = 10 ** 2.37;
const DEBYE_HUECKEL = 0.5085;
/** Davies' activity coefficient holds to here [mol/L]; beyond it stands still rather than rise again. */
const DAVIES_END_mol_L = 0.5;

/** log10 of the activity coefficient of a single charge; of z it is z² times that. */
function davies(ionicStrength_mol_L: number): number {
  const held = Math.min(ionicStrength_mol_L, DAVIES_END_mol_L);
  const root = Math.sqrt(held);
  return -DEBYE_HUECKEL * (root / (1 + root) - 0.3 * held);
}

/** How much less an ion carries among others than alone: activity coefficient to the power of the method. */
function hindrance(charge_n: number, ionicStrength_mol_L: number): number {
  const z = Math.abs(charge_n);
  const power = ionicStrength_mol_L <= 0.36 * z ? 0.6 / Math.sqrt(z) : Math.sqrt(ionicStrength_mol_L) / z;
  return 10 ** (davies(ionicStrength_mol_L) * z * z * power);
}

/**
 * Calcium, magnesium and sulphate that stay free when the rest pairs up, with the ionic strength that comes of it.
 *
 * @source our assumption, the definition
 */
export function freeIons(ions: Ions): {
  readonly Ca_mmol_L: number;
  readonly Mg_mmol_L: number;
  readonly SO4_mmol_L: number;
  readonly ionicStrength_mol_L: number;
} {
  const totalCa = ions.Ca_mmol_L ?? 0;
  const totalMg = ions.Mg_mmol_L ?? 0;
  const totalSO4 = ions.SO4_mmol_L ?? 0;
  let singles = 0;
  for (const name of ionNames) {
    const charge = ionTable[name][0];
    if (charge === 1 || charge === -1) singles += ions[name] ?? 0;
  }
  let Ca = totalCa;
  let Mg = totalMg;
  let SO4 = totalSO4;
  const strength = () => (0.5 * (singles + 4 * (Ca + Mg + SO4))) / 1000;
  if (totalSO4 > 0 && totalCa + totalMg > 0)
    for (let loop_n = 0; loop_n < 50; loop_n++) {
      const both = 10 ** (davies(strength()) * 8);
      const pairCa = (PAIR_Ca * both) / 1000;
      const pairMg = (PAIR_Mg * both) / 1000;
      const nextSO4 = (SO4 + totalSO4 / (1 + pairCa * Ca + pairMg * Mg)) / 2;
      const moved = Math.abs(nextSO4 - SO4);
      SO4 = nextSO4;
      Ca = (Ca + totalCa / (1 + pairCa * SO4)) / 2;
      Mg = (Mg + totalMg / (1 + pairMg * SO4)) / 2;
      if (moved < 1e-12 * totalSO4) break;
    }
  return { Ca_mmol_L: Ca, Mg_mmol_L: Mg, SO4_mmol_L: SO4, ionicStrength_mol_L: strength() };
}

const CONDUCTING = FARADAY ** 2 / (GAS * KELVIN);
/** mS/cm from S/m. */
const mS_cm_per_S_m = 10;

/**
 * The same without looking over the ions: for searches that ask it thousands of times.
 *
 * @source our assumption, the definition
 */
export function conductivityUnchecked_mS_cm(ions: Ions): number {
  const free = freeIons(ions);
  const ionicStrength_mol_L = free.ionicStrength_mol_L;
  const one = hindrance(1, ionicStrength_mol_L);
  const two = hindrance(2, ionicStrength_mol_L);
  let sum = 0;
  for (const name of ionNames) {
    const [charge, diffusion] = ionTable[name];
    const double = charge === 2 || charge === -2;
    const amount = double ? free[name as "Ca_mmol_L" | "Mg_mmol_L" | "SO4_mmol_L"] : (ions[name] ?? 0);
    sum += charge * charge * diffusion * 1e-9 * amount * (double ? two : one);
  }
  return mS_cm_per_S_m * CONDUCTING * sum;
}

/**
 * Electrical conductivity at 25 °C as the sum of what each ion carries, with activities and the pairs CaSO4 and MgSO4.
 *
 * EC = 10 Σ z² D F²/(RT) m γ^α;  log γ = −0.5085 z² (√I/(1+√I) − 0.3 I);  α = 0.6/√z up to I = 0.36 z, else √I/z
 *
 * @param ions totals dissolved [mmol/L], 0 to 500 each; what is left out is not there
 * @returns conductivity [mS/cm]; within 5 % from 0.2 to 4, not to be used above
 * @throws QuantityError outside those ranges
 * @source Appelo2010 with the constants of PHREEQC
 * @see checks/feed.json FEED-041
 * @example conductivity_mS_cm({ K_mmol_L: 10, Cl_mmol_L: 10 }) // 1.409
 */
export function conductivity_mS_cm(ions: Ions): number {
  for (const name of ionNames) within(name, ions[name] ?? 0, 0, 500);
  return conductivityUnchecked_mS_cm(ions);
}

/** Conductivity beyond which the sum of ions is not to be used [mS/cm]. @source our assumption, from its test on salts */
export const CONDUCTIVITY_TRUSTED_TO_mS_cm = 4;

/**
 * Least that ions carry as long as the ionic strength stays under one and calcium and magnesium under another: a line below
 * the conductivity, for pruning.
 *
 * @param ions totals dissolved [mmol/L]
 * @param ionicStrength_mol_L greatest ionic strength [mol/L]
 * @param divalent_mmol_L greatest calcium and magnesium together, and greatest sulphate [mmol/L]
 * @returns conductivity [mS/cm], never above the full model inside those bounds
 * @source Appelo2010, its terms at the far end of their range
 */
export function conductivityAtLeast_mS_cm(
  ions: Ions,
  ionicStrength_mol_L: number,
  divalent_mmol_L: number,
): number {
  const one = hindrance(1, ionicStrength_mol_L);
  const free = 1 / (1 + (PAIR_Mg * divalent_mmol_L) / 1000);
  const two = hindrance(2, ionicStrength_mol_L) * free;
  let sum = 0;
  for (const name of ionNames) {
    const [charge, diffusion] = ionTable[name];
    const times = Math.abs(charge) === 2 ? two : one;
    sum += charge * charge * diffusion * 1e-9 * (ions[name] ?? 0) * times;
  }
  return mS_cm_per_S_m * CONDUCTING * sum;
}

/**
 * Conductivity of a feed by the charge of its cations alone: a rough second opinion for feeds from 1 to 3 mS/cm.
 *
 * EC = 0.095 Σ cations + 0.19
 *
 * @param cations_mmol_L charge of all cations [mmol/L], 0 to 100
 * @returns conductivity [mS/cm]
 * @throws QuantityError outside that range
 * @source Sonneveld1999
 * @example conductivityByCations_mS_cm(9.5) // 1.0925
 */
export function conductivityByCations_mS_cm(cations_mmol_L: number): number {
  within("cations_mmol_L", cations_mmol_L, 0, 100);
  return 0.095 * cations_mmol_L + 0.19;
}

import { within } from "../errors/index.ts";

/** Photons per joule at the plug of kinds of lamps: low and high of what is on the market, and who measured. */
export const lampEfficacies = {
  "LED bar": { low_umol_J: 2.3, high_umol_J: 3, source: "from memory" },
  "LED of 2014": { low_umol_J: 1.66, high_umol_J: 1.7, source: "NelsonBugbee2014" },
  "LED screw-in bulb": { low_umol_J: 1.3, high_umol_J: 2, source: "from memory" },
  "high pressure sodium, double-ended": { low_umol_J: 1.66, high_umol_J: 1.7, source: "NelsonBugbee2014" },
  "high pressure sodium, mogul": { low_umol_J: 1.02, high_umol_J: 1.02, source: "NelsonBugbee2014" },
  "high pressure sodium, 400 W": { low_umol_J: 0.94, high_umol_J: 0.94, source: "Runkle2018" },
  "ceramic metal halide": { low_umol_J: 1.46, high_umol_J: 1.46, source: "NelsonBugbee2014" },
  fluorescent: { low_umol_J: 0.95, high_umol_J: 0.95, source: "NelsonBugbee2014" },
} as const;

/** Least distance from lamp to young leaves [m]: common practice, no source. */
export const lampClearances_m = {
  "high pressure sodium": 0.6,
  "metal halide": 0.6,
  fluorescent: 0.05,
  "LED bar": 0.25,
} as const;

/** A leaf under a lamp should stay cooler than this [°C]; from memory: measure it. */
export const hottestLeaf_C = 32;

/**
 * Photons that leave a lamp, from its power and efficacy, less dimming and ageing.
 *
 * PPF = efficacy × W × dimming × (1 − loss × hours/1000); dimming of LEDs is near linear in power
 *
 * @param lamp power at the plug [W], 0 to 5000; efficacy [µmol J⁻¹], 0.1 to 5; dimming, 0 to 1; hours burnt [h], 0 to 200000; output lost per 1000 h, 0 to 0.2, 0.01 when left out
 * @returns photon flux [µmol s⁻¹], never below half the fresh lamp's by ageing
 * @throws QuantityError outside those ranges
 * @source our assumption; loss and linear dimming from memory
 * @example lampFlux_umol_s({ power_W: 36, efficacy_umol_J: 2.4 }) // 86.4
 */
export function lampFlux_umol_s(lamp: {
  readonly power_W: number;
  readonly efficacy_umol_J: number;
  readonly dimming_frac?: number;
  readonly burnt_h?: number;
  readonly lossPer1000h_frac?: number;
}): number {
  const { power_W, efficacy_umol_J, dimming_frac = 1, burnt_h = 0, lossPer1000h_frac = 0.01 } = lamp;
  within("power_W", power_W, 0, 5000);
  within("efficacy_umol_J", efficacy_umol_J, 0.1, 5);
  within("dimming_frac", dimming_frac, 0, 1);
  within("burnt_h", burnt_h, 0, 200_000);
  within("lossPer1000h_frac", lossPer1000h_frac, 0, 0.2);
  // Past half its light a lamp is replaced, not reckoned with.
  const left_frac = Math.max(0.5, 1 - (lossPer1000h_frac * burnt_h) / 1000);
  return power_W * efficacy_umol_J * dimming_frac * left_frac;
}

/**
 * Photons a lamp gives per electricity.
 *
 * 3.6 × efficacy
 *
 * @param efficacy_umol_J photons per joule at the plug [µmol J⁻¹], 0.1 to 5
 * @returns photons [mol kWh⁻¹]
 * @throws QuantityError outside that range
 * @source NelsonBugbee2014
 * @see checks/sun-light.json 102
 * @example photonsPerEnergy_mol_kWh(1.7) // 6.12
 */
export function photonsPerEnergy_mol_kWh(efficacy_umol_J: number): number {
  within("efficacy_umol_J", efficacy_umol_J, 0.1, 5);
  return 3.6 * efficacy_umol_J;
}

/**
 * Electricity and money that lamps take.
 *
 * kWh = W h days / 1000, money = kWh × price, the cheap hours at their own
 *
 * @param lamp power at the plug with its driver [W], 0 to 100000; hours a day [h], 0 to 24, and those of them in cheap hours; days, 0 to 10000; prices [hundredths of the currency per kWh], 0 to 1000
 * @returns energy [kWh]; cost [hundredths of the currency]
 * @throws QuantityError outside those ranges, or for more cheap hours than hours
 * @source our assumption; arithmetic
 * @example lampCost({ power_W: 100, hours_h: 14, days_n: 30, price_minor_per_kWh: 30 }).cost_minor // 1260
 */
export function lampCost(lamp: {
  readonly power_W: number;
  readonly hours_h: number;
  readonly days_n: number;
  readonly price_minor_per_kWh: number;
  readonly cheapHours_h?: number;
  readonly cheapPrice_minor_per_kWh?: number;
}): { readonly energy_kWh: number; readonly cost_minor: number } {
  const { power_W, hours_h, days_n, price_minor_per_kWh } = lamp;
  const { cheapHours_h = 0, cheapPrice_minor_per_kWh = price_minor_per_kWh } = lamp;
  within("power_W", power_W, 0, 100_000);
  within("hours_h", hours_h, 0, 24);
  within("days_n", days_n, 0, 10_000);
  within("price_minor_per_kWh", price_minor_per_kWh, 0, 1000);
  within("cheapHours_h", cheapHours_h, 0, 24);
  within("cheapHours_h", cheapHours_h, 0, hours_h);
  within("cheapPrice_minor_per_kWh", cheapPrice_minor_per_kWh, 0, 1000);
  const perHour_kWh = (power_W * days_n) / 1000;
  const dear = (hours_h - cheapHours_h) * price_minor_per_kWh;
  return {
    energy_kWh: perHour_kWh * hours_h,
    cost_minor: perHour_kWh * (dear + cheapHours_h * cheapPrice_minor_per_kWh),
  };
}

/**
 * What each pot has to bear of a cost, by its share of the photons delivered.
 *
 * @param lamp cost [hundredths of the currency], 0 to 1e9; photons that reach each pot [pot][any one unit], 0 to 1e9
 * @returns cost of each pot [pot][hundredths of the currency]; equal parts when no light reaches any
 * @throws QuantityError outside those ranges or without a pot
 * @source our assumption
 * @example costOfPots_minor({ cost_minor: 300, photons_umol_s: [10, 20] })[1] // 200
 */
export function costOfPots_minor(lamp: {
  readonly cost_minor: number;
  readonly photons_umol_s: readonly number[];
}): readonly number[] {
  within("cost_minor", lamp.cost_minor, 0, 1e9);
  within("pots_n", lamp.photons_umol_s.length, 1, 100_000);
  for (const photons of lamp.photons_umol_s) within("photons_umol_s", photons, 0, 1e9);
  const all = lamp.photons_umol_s.reduce((sum, photons) => sum + photons, 0);
  return lamp.photons_umol_s.map((photons) =>
    all > 0 ? (lamp.cost_minor * photons) / all : lamp.cost_minor / lamp.photons_umol_s.length,
  );
}

/**
 * How much warmer a ventilated cabinet becomes by its lamps: nearly all of their power ends as heat.
 *
 * dT = W / (1.2 × 1005 × flow)
 *
 * @param cabinet power at the plug [W], 0 to 5000; air drawn through [m³ s⁻¹], 0.0001 to 10
 * @returns rise over the room [°C]
 * @throws QuantityError outside those ranges
 * @source our assumption; heat capacity of air at 20 °C from memory
 * @example cabinetRise_C({ power_W: 100, airflow_m3_s: 0.02 }) // 4.15
 */
export function cabinetRise_C(cabinet: { readonly power_W: number; readonly airflow_m3_s: number }): number {
  within("power_W", cabinet.power_W, 0, 5000);
  within("airflow_m3_s", cabinet.airflow_m3_s, 0.0001, 10);
  return cabinet.power_W / (1.2 * 1005 * cabinet.airflow_m3_s);
}

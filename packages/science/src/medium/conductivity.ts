import { within } from "../errors/index.ts";

/** Conductivity that a millimole of charge adds to a litre, as in dilute mixed solutions [mS cm⁻¹ for each mmol L⁻¹]. */
const MS_PER_CHARGE = 0.1;
/** Molar mass over charge of each ion, g for each mole of charge; nitrogen counted as the element. */
const MASS_PER_CHARGE: Readonly<Record<string, number>> = {
  NO3N: 14.007,
  NH4N: 14.007,
  P: 30.974,
  K: 39.098,
  Ca: 20.039,
  Mg: 12.153,
  S: 16.03,
  Na: 22.99,
  Cl: 35.453,
  HCO3: 61.017,
};

/**
 * Conductivity of a solution from what is dissolved in it.
 *
 * EC = 0.1 × half the charges of all ions [mmol L⁻¹]; urea and trace elements carry next to none
 *
 * @param solution masses of ions in a litre [mg L⁻¹], 0 to 1e6 each, by element (bicarbonate as the ion)
 * @returns conductivity at 25 °C [mS cm⁻¹]; within about a tenth up to 3
 * @throws QuantityError outside those ranges
 * @source Sonneveld1999: EC is about a tenth of the cations' charge
 * @example conductivityOf_mS_cm({ K: 39.098, Cl: 35.453 }) // 0.1
 */
export function conductivityOf_mS_cm(solution: Readonly<Record<string, number>>): number {
  let charges = 0;
  for (const ion in solution) {
    const mass_mg_L = solution[ion] as number;
    within("mass_mg_L", mass_mg_L, 0, 1e6);
    const each = MASS_PER_CHARGE[ion];
    if (each !== undefined) charges += mass_mg_L / each;
  }
  return (MS_PER_CHARGE * charges) / 2;
}

import { within } from "../errors/index.ts";

/**
 * Thermal time of a coated fertiliser: days at the label's temperature that a day at another one counts for.
 *
 * θ = Q10^((T − T_label)/10)
 *
 * @param medium_C temperature of the medium [°C], -10 to 50
 * @param label_C temperature for which the label speaks [°C], 15 to 30
 * @param q10 how much faster ten degrees make it, 1.2 to 3
 * @returns days of the label in a day
 * @throws QuantityError outside those ranges
 * @source common practice, no source; 21 °C as in Nackley2023
 * @example labelDays({ medium_C: 31 }) // 2
 */
export function labelDays({
  medium_C,
  label_C = 21,
  q10 = 2,
}: {
  readonly medium_C: number;
  readonly label_C?: number;
  readonly q10?: number;
}): number {
  within("medium_C", medium_C, -10, 50);
  within("label_C", label_C, 15, 30);
  within("q10", q10, 1.2, 3);
  return q10 ** ((medium_C - label_C) / 10);
}

/**
 * How long a coated fertiliser lasts at a constant temperature.
 *
 * @param life_d on the label [d], 20 to 800
 * @param medium_C temperature of the medium [°C], -10 to 50
 * @param label_C temperature for which the label speaks [°C], 15 to 30
 * @param q10 how much faster ten degrees make it, 1.2 to 3
 * @returns time to nine tenths released [d]
 * @throws QuantityError outside those ranges
 * @source common practice, no source; 21 °C as in Nackley2023
 * @see checks/feed.json FEED-084
 * @example coatedLife_d({ life_d: 180, medium_C: 31 }) // 90
 */
export function coatedLife_d({
  life_d,
  medium_C,
  label_C = 21,
  q10 = 2,
}: {
  readonly life_d: number;
  readonly medium_C: number;
  readonly label_C?: number;
  readonly q10?: number;
}): number {
  within("life_d", life_d, 20, 800);
  return life_d / labelDays({ medium_C, label_C, q10 });
}

/**
 * Share of a coated fertiliser that is out after so many days of the label: nine tenths at its age.
 *
 * F = 1 − exp(−k θ), k = −ln(0.1)/life
 *
 * @param life_d on the label [d], 20 to 800
 * @param labelDays_d thermal time, in days at the label's temperature [d], 0 to 5000
 * @returns share released, 0 to 1
 * @throws QuantityError outside those ranges
 * @source common practice, no source: nine tenths at the label's age
 * @example coatedReleased_frac({ life_d: 180, labelDays_d: 180 }) // 0.9
 */
export function coatedReleased_frac({
  life_d,
  labelDays_d,
}: {
  readonly life_d: number;
  readonly labelDays_d: number;
}): number {
  within("life_d", life_d, 20, 800);
  within("labelDays_d", labelDays_d, 0, 5000);
  return 1 - Math.exp((Math.log(0.1) * labelDays_d) / life_d);
}

/** What is counted in feeds, waters and pots: forms of nitrogen, elements, and bicarbonate as the ion. */
export const species = [
  "NO3N",
  "NH4N",
  "ureaN",
  "P",
  "K",
  "Ca",
  "Mg",
  "S",
  "Na",
  "Cl",
  "HCO3",
  "B",
  "Cu",
  "Fe",
  "Mn",
  "Mo",
  "Zn",
] as const;
export type Species = (typeof species)[number];

/** An amount of some species; what is not named is not there. The unit stands in the name of whoever holds it. */
export type Amounts = Readonly<Partial<Record<Species, number>>>;

/** What can be aimed at and limited: a species, or all nitrogen together. */
export const aimed = ["N", "P", "K", "Ca", "Mg", "S", "Na", "Cl", "B", "Cu", "Fe", "Mn", "Mo", "Zn"] as const;
export type Aimed = (typeof aimed)[number];

/**
 * Amount of what is aimed at; nitrogen is the sum of its forms.
 *
 * @param amounts by species, in any one unit
 * @param of what is asked for
 * @returns in the same unit; 0 where none is named
 * @source our assumption, the definition
 * @example amountOf({ NO3N: 80, NH4N: 20 }, "N") // 100
 */
export function amountOf(amounts: Amounts, of: Aimed): number {
  if (of === "N") return (amounts.NO3N ?? 0) + (amounts.NH4N ?? 0) + (amounts.ureaN ?? 0);
  return amounts[of] ?? 0;
}

/**
 * Sum of amounts, each times a factor.
 *
 * @param parts pairs of amounts and factor
 * @returns by species, in the unit of the amounts times that of the factors
 * @source our assumption, the definition
 */
export function sumAmounts(parts: readonly (readonly [Amounts, number])[]): Amounts {
  const sum: Partial<Record<Species, number>> = {};
  for (const [amounts, times] of parts)
    for (const [each, amount] of Object.entries(amounts) as [Species, number][])
      sum[each] = (sum[each] ?? 0) + amount * times;
  return sum;
}

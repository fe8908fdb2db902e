import { within } from "../errors/index.ts";

function checkSides(name: string, sides: readonly number[]): void {
  within("sides_n", sides.length, 4, 4);
  for (const side of sides) within(name, side, 0, 10_000);
}

/**
 * How one-sided the light on a crown is, and where it comes from.
 *
 * Front less back and right less left make a direction; its length over the sum of all four is 0 for even light and up to 1 for
 * light on one side only
 *
 * @param sides_mol_m2_d light on front, right, back and left [side][mol m⁻² d⁻¹], 0 to 10000
 * @returns share one-sided; direction it comes from, clockwise from the front [°], 0 to 360
 * @throws QuantityError outside that range or for another number of sides
 * @source our assumption
 * @example oneSidedness([10, 5, 0, 5]).oneSided_frac // 0.5
 */
export function oneSidedness(sides_mol_m2_d: readonly number[]): {
  readonly oneSided_frac: number;
  readonly from_deg: number;
} {
  checkSides("sides_mol_m2_d", sides_mol_m2_d);
  const [front, right, back, left] = sides_mol_m2_d as [number, number, number, number];
  const sum = front + right + back + left;
  if (sum === 0) return { oneSided_frac: 0, from_deg: 0 };
  const ahead = front - back;
  const aside = right - left;
  const turn_deg = (Math.atan2(aside, ahead) * 180) / Math.PI;
  return { oneSided_frac: Math.min(1, Math.hypot(ahead, aside) / sum), from_deg: (turn_deg + 360) % 360 };
}

/** Turned clockwise seen from above, a crown's right side comes to the front's place of what it looked at before. */
const turned = (sides: readonly number[], quarters: number): readonly number[] =>
  sides.map((_, side) => sides[(((side + quarters) % 4) + 4) % 4] as number);

/**
 * Light that each side of a crown has received after a row of quarter turns.
 *
 * After n quarter turns clockwise (seen from above) the crown's front looks where its right looked before
 *
 * @param crown light that reaches the four sides of the place [front, right, back, left as the crown stood first][mol m⁻² d⁻¹], 0 to 10000; quarter turns from the first stand in each spell [spell], 0 to 3; length of each [spell][d], 0 to 10000
 * @returns light received by front, right, back and left of the crown [mol m⁻²]
 * @throws QuantityError outside those ranges or for lists that differ in length
 * @source our assumption
 * @example lightAfterTurns_mol_m2({ sides_mol_m2_d: [8, 2, 0, 2], quarters_n: [0, 2], spells_d: [5, 5] })[0] // 40
 */
export function lightAfterTurns_mol_m2(crown: {
  readonly sides_mol_m2_d: readonly number[];
  readonly quarters_n: readonly number[];
  readonly spells_d: readonly number[];
}): readonly number[] {
  const { sides_mol_m2_d, quarters_n, spells_d } = crown;
  checkSides("sides_mol_m2_d", sides_mol_m2_d);
  within("spells_n", spells_d.length, quarters_n.length, quarters_n.length);
  const received = [0, 0, 0, 0];
  quarters_n.forEach((quarters, spell) => {
    within("quarters_n", quarters, 0, 3);
    const length_d = spells_d[spell] as number;
    within("spells_d", length_d, 0, 10_000);
    turned(sides_mol_m2_d, Math.round(quarters)).forEach((side, at) => {
      received[at] = (received[at] as number) + side * length_d;
    });
  });
  return received;
}

/**
 * The quarter turn that would best even out what the sides of a crown have received.
 *
 * Of the four stands, the one after which the sides differ least when it is kept for a while
 *
 * @param crown light received by front, right, back and left [side][mol m⁻²], 0 to 10000; light that reaches the four sides of the place from where the front looks now, clockwise [mol m⁻² d⁻¹], 0 to 10000; days the next stand will last [d], 0.1 to 365
 * @returns quarter turns clockwise, 0 to 3, the fewest of equals
 * @throws QuantityError outside those ranges
 * @source our assumption; quarter turns are common practice
 * @example bestTurn_n({ received_mol_m2: [56, 14, 0, 14], sides_mol_m2_d: [8, 2, 0, 2], keep_d: 7 }) // 2
 */
export function bestTurn_n(crown: {
  readonly received_mol_m2: readonly number[];
  readonly sides_mol_m2_d: readonly number[];
  readonly keep_d: number;
}): number {
  checkSides("received_mol_m2", crown.received_mol_m2);
  checkSides("sides_mol_m2_d", crown.sides_mol_m2_d);
  within("keep_d", crown.keep_d, 0.1, 365);
  const unevenness = (quarters: number): number => {
    const after = turned(crown.sides_mol_m2_d, quarters).map(
      (side, at) => side * crown.keep_d + (crown.received_mol_m2[at] as number),
    );
    const mean = after.reduce((sum, side) => sum + side, 0) / 4;
    return after.reduce((sum, side) => sum + (side - mean) ** 2, 0);
  };
  return [0, 1, 2, 3].reduce((best, quarters) =>
    unevenness(quarters) < unevenness(best) * (1 - 1e-9) - 1e-12 ? quarters : best,
  );
}

import type { Chance } from "../nursery/chance.ts";

/** Air and light of one indoor bench over the months that fruit takes. */
export interface FruitingAir {
  /** Mean of each day, and how far day and night lie from it. */
  readonly means_C: readonly number[];
  readonly swing_C: number;
  /** What the grower believes the room to be, for the days to come. */
  readonly believed_C: number;
  /** What the logger reads too much. */
  readonly bias_C: number;
  /** Photons on a level leaf each day. */
  readonly lights_mol_m2_d: readonly number[];
}

/** A heated room is steady, a sill follows weather in spells of days; light of a window wanders far more than that of a lamp. */
export function drawFruitingAir(days_n: number, chance: Chance): FruitingAir {
  const room_C = chance.between(18, 26);
  const spell_C = chance.between(0.4, 1.8);
  const keeps = chance.between(0.6, 0.9);
  const drift_C = chance.normal(0, 1);
  const light_mol_m2_d = chance.between(5, 18);
  const byWindow = chance.happens(0.5);
  let off_C = 0;
  let dull = 0;
  const means_C: number[] = [];
  const lights: number[] = [];
  for (let day = 0; day < days_n; day += 1) {
    off_C = keeps * off_C + chance.normal(0, spell_C * Math.sqrt(1 - keeps ** 2));
    means_C.push(room_C + off_C + (drift_C * day) / days_n);
    dull = 0.5 * dull + chance.normal(0, byWindow ? 0.35 : 0.04);
    lights.push(light_mol_m2_d * Math.exp(dull - (byWindow ? 0.08 : 0)));
  }
  return {
    means_C,
    swing_C: chance.between(0.5, 4),
    believed_C: room_C + chance.normal(0, 0.8),
    bias_C: chance.normal(0, 0.5),
    lights_mol_m2_d: lights,
  };
}

import { type SoluteSpecies, soluteSpecies } from "../../book/effects.ts";

/** Masses by species, in the order of `soluteSpecies`, mg. */
export type Masses = readonly number[];

/** The solutes of one pot: start + poured in = held + drained + taken up + left with the old medium, to the last milligram. */
export interface SoluteLedger {
  readonly held_mg: Masses;
  /** poured, fed and in fresh medium since the start, the start included */
  readonly in_mg: Masses;
  readonly drained_mg: Masses;
  readonly taken_mg: Masses;
  /** went out with old medium, or was put right by a reading */
  readonly removed_mg: Masses;
  /** water in the pot when this was last true, mL */
  readonly water_mL: number;
}

const N = soluteSpecies.length;
export const noMasses: Masses = new Array<number>(N).fill(0);
const place = new Map<string, number>(soluteSpecies.map((species, i) => [species, i]));

export const massesOf = (of: Readonly<Partial<Record<SoluteSpecies, number>>>): Masses =>
  soluteSpecies.map((species) => of[species] ?? 0);
export const massOf = (of: Masses, species: SoluteSpecies): number =>
  of[place.get(species) as number] as number;

/** Species that ride in with the water that roots draw quickly, slowly, or not at all. */
const QUICK = new Set<string>(["NO3N", "NH4N", "ureaN", "P", "K"]);
const SLOW = new Set<string>(["Ca", "Mg", "S", "B", "Cu", "Fe", "Mn", "Mo", "Zn"]);
const pace = soluteSpecies.map((species) => (QUICK.has(species) ? 2 : SLOW.has(species) ? 1 : 0));

export interface Uptake {
  readonly massFlow_frac: number;
  readonly massFlowSlow_frac: number;
}

/**
 * What is still held after the plant has drawn the pot down: dm = u (m/W) dW, so that m goes with W to the power u. Sodium,
 * chloride and bicarbonate stay.
 */
export function heldAt(ledger: SoluteLedger, water_mL: number, uptake: Uptake): Masses {
  const left = water_mL / ledger.water_mL;
  if (left >= 1) return ledger.held_mg;
  const kept = [1, left ** uptake.massFlowSlow_frac, left ** uptake.massFlow_frac] as const;
  const held = new Array<number>(N);
  for (let i = 0; i < N; i++)
    held[i] = (ledger.held_mg[i] as number) * (kept[pace[i] as 0 | 1 | 2] as number);
  return held;
}

/** The ledger after the plant has drawn the pot down to so much water. */
export function drawn(ledger: SoluteLedger, water_mL: number, uptake: Uptake): SoluteLedger {
  const held_mg = heldAt(ledger, water_mL, uptake);
  if (held_mg === ledger.held_mg) return { ...ledger, water_mL: Math.max(ledger.water_mL, 0.1) };
  const taken_mg = ledger.taken_mg.map(
    (taken, i) => taken + (ledger.held_mg[i] as number) - (held_mg[i] as number),
  );
  return { ...ledger, held_mg, taken_mg, water_mL };
}

export interface Pouring {
  /** water that enters and stays, and that runs out, mL */
  readonly kept_mL: number;
  readonly leachate_mL: number;
  /** all that the pour brings, source water and feed, mg */
  readonly poured_mg: Masses;
  readonly leachingEfficiency: number;
}

/**
 * The ledger after a pour: what stays mixes with what is held, what runs out displaces the mixture (science `watered`, without its
 * checks: this runs at every watering of every pot).
 */
export function poured(ledger: SoluteLedger, pour: Pouring): SoluteLedger {
  const { kept_mL, leachate_mL, poured_mg } = pour;
  const all_mL = kept_mL + leachate_mL;
  const water_mL = ledger.water_mL + kept_mL;
  const left = Math.exp((-pour.leachingEfficiency * leachate_mL) / water_mL);
  const held_mg = new Array<number>(N);
  const in_mg = new Array<number>(N);
  const drained_mg = new Array<number>(N);
  for (let i = 0; i < N; i++) {
    const before = ledger.held_mg[i] as number;
    const brought = poured_mg[i] as number;
    const strength = all_mL > 0 ? brought / all_mL : 0;
    const mixed = (before + strength * kept_mL) / water_mL;
    const most = before + brought;
    const after = Math.min(most, Math.max(0, (strength + (mixed - strength) * left) * water_mL));
    held_mg[i] = after;
    in_mg[i] = (ledger.in_mg[i] as number) + brought;
    drained_mg[i] = (ledger.drained_mg[i] as number) + most - after;
  }
  return { ...ledger, held_mg, in_mg, drained_mg, water_mL };
}

/** The ledger after a share of the medium was replaced by fresh with its charge. */
export function renewed(
  ledger: SoluteLedger,
  renewed_frac: number,
  charge_mg: Masses,
  water_mL: number,
): SoluteLedger {
  return {
    ...ledger,
    held_mg: ledger.held_mg.map(
      (held, i) => held * (1 - renewed_frac) + (charge_mg[i] as number) * renewed_frac,
    ),
    in_mg: ledger.in_mg.map((all, i) => all + (charge_mg[i] as number) * renewed_frac),
    removed_mg: ledger.removed_mg.map((gone, i) => gone + (ledger.held_mg[i] as number) * renewed_frac),
    water_mL,
  };
}

/** The ledger put right by a meter: everything held is more or less by one factor. */
export function putRight(ledger: SoluteLedger, factor: number): SoluteLedger {
  return {
    ...ledger,
    held_mg: ledger.held_mg.map((held) => held * factor),
    removed_mg: ledger.removed_mg.map((gone, i) => gone + (ledger.held_mg[i] as number) * (1 - factor)),
  };
}

export const startLedger = (charge_mg: Masses, water_mL: number): SoluteLedger => ({
  held_mg: charge_mg,
  in_mg: charge_mg,
  drained_mg: noMasses,
  taken_mg: noMasses,
  removed_mg: noMasses,
  water_mL,
});

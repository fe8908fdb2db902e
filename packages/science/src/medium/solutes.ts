import { within } from "../errors/index.ts";

/**
 * Masses of what is dissolved in a pot, one number a species, in an order of the caller's [mg]. A row of plain numbers: the
 * ledger of a pot is stepped at every watering.
 */
export type Solutes = readonly number[];

/** What a watering did to the solutes of a pot: nothing is lost, every milligram is kept or has drained. */
export type Displaced = {
  readonly held_mg: number[];
  readonly drained_mg: number[];
  readonly water_mL: number;
  readonly leachate_mL: number;
};

/**
 * A watering of a pot: what fills it mixes with what it holds, what runs out displaces the mixture and never takes more than there is.
 *
 * mixed e1 = (M + Ci F)/(W + F); after L of leachate e2 = Ci + (e1 − Ci) exp(−f L / W'); drained = M + Ci (F + L) − e2 W'
 *
 * @param pot held by species [mg], 0 to 1e9 each; water in the pot [mL], 0.1 to 1e6; entering and staying F and running out L [mL], 0 to 1e6; concentration poured by species [mg L⁻¹], 0 to 1e6; leaching efficiency f, 0.3 to 1.5
 * @returns held and drained by species [mg], water [mL], leachate [mL]
 * @throws QuantityError outside those ranges, or when the lists differ in length
 * @source our assumption; exponential displacement in a mixed pot, as of UCANR salts in pots
 * @see checks/medium-repot.json 080 to 083
 * @example watered({ held_mg: [100], water_mL: 100, kept_mL: 100, leachate_mL: 0, poured_mg_L: [500], leachingEfficiency: 0.8 }).held_mg // [150]
 */
export function watered(pot: {
  readonly held_mg: Solutes;
  readonly water_mL: number;
  readonly kept_mL: number;
  readonly leachate_mL: number;
  readonly poured_mg_L: Solutes;
  readonly leachingEfficiency: number;
}): Displaced {
  const { held_mg, water_mL, kept_mL, leachate_mL, poured_mg_L, leachingEfficiency } = pot;
  within("water_mL", water_mL, 0.1, 1e6);
  within("kept_mL", kept_mL, 0, 1e6);
  within("leachate_mL", leachate_mL, 0, 1e6);
  within("leachingEfficiency", leachingEfficiency, 0.3, 1.5);
  within("species_n", poured_mg_L.length, held_mg.length, held_mg.length);
  const after_mL = water_mL + kept_mL;
  const left = Math.exp((-leachingEfficiency * leachate_mL) / after_mL);
  const held = new Array<number>(held_mg.length);
  const drained = new Array<number>(held_mg.length);
  for (let i = 0; i < held.length; i += 1) {
    const before = held_mg[i] as number;
    const poured = (poured_mg_L[i] as number) / 1000;
    within("held_mg", before, 0, 1e9);
    within("poured_mg_L", poured * 1000, 0, 1e6);
    const mixed = (before + poured * kept_mL) / after_mL;
    const in_mg = before + poured * (kept_mL + leachate_mL);
    const after = Math.min(in_mg, Math.max(0, (poured + (mixed - poured) * left) * after_mL));
    held[i] = after;
    drained[i] = in_mg - after;
  }
  return { held_mg: held, drained_mg: drained, water_mL: after_mL, leachate_mL };
}

/**
 * Conductivity of the water of a pot after a flush.
 *
 * C = Cin + (C0 − Cin) exp(−f V / Wc)
 *
 * @param pot conductivity before and of the water [mS cm⁻¹], 0 to 30; volume run through [mL], 0 to 1e6; water at capacity [mL], 1 to 1e6; leaching efficiency f, 0.3 to 1.5, 0.8 unless given
 * @returns conductivity [mS cm⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; exponential displacement in a mixed pot
 * @see checks/medium-repot.json 080
 * @example flushedSalt_mS_cm({ before_mS_cm: 5, waterEc_mS_cm: 0.4, flush_mL: 1000, capacityWater_mL: 300, leachingEfficiency: 0.6 }) // 1.02
 */
export function flushedSalt_mS_cm(pot: {
  readonly before_mS_cm: number;
  readonly waterEc_mS_cm: number;
  readonly flush_mL: number;
  readonly capacityWater_mL: number;
  readonly leachingEfficiency?: number;
}): number {
  const { before_mS_cm, waterEc_mS_cm, flush_mL, capacityWater_mL, leachingEfficiency = 0.8 } = pot;
  within("before_mS_cm", before_mS_cm, 0, 30);
  within("waterEc_mS_cm", waterEc_mS_cm, 0, 30);
  within("flush_mL", flush_mL, 0, 1e6);
  within("capacityWater_mL", capacityWater_mL, 1, 1e6);
  within("leachingEfficiency", leachingEfficiency, 0.3, 1.5);
  const left = Math.exp((-leachingEfficiency * flush_mL) / capacityWater_mL);
  return waterEc_mS_cm + (before_mS_cm - waterEc_mS_cm) * left;
}

export type FlushPlan = {
  readonly total_mL: number;
  readonly doses_mL: readonly number[];
  readonly wait_min: number;
};

/**
 * How to bring the salts of a pot down: water in a few doses with waits between, so that it wets through.
 *
 * V = −(Wc/f) ln((Cgoal − Cin)/(C0 − Cin)), in 4 doses above one capacity, else 3
 *
 * @param pot conductivity now, wanted and of the water [mS cm⁻¹], 0 to 30; water at capacity [mL], 1 to 1e6; leaching efficiency f, 0.3 to 1.5, 0.8 unless given
 * @returns volume and doses [mL], wait between them [min]; no dose where nothing is to be done
 * @throws QuantityError outside those ranges, and where the goal is not above the water's own salts
 * @source UCANR for doses and the empty saucer; exponential displacement
 * @example flushPlan({ before_mS_cm: 4, goal_mS_cm: 1.5, waterEc_mS_cm: 0.5, capacityWater_mL: 250 }).total_mL // 391.5
 */
export function flushPlan(pot: {
  readonly before_mS_cm: number;
  readonly goal_mS_cm: number;
  readonly waterEc_mS_cm: number;
  readonly capacityWater_mL: number;
  readonly leachingEfficiency?: number;
}): FlushPlan {
  const { before_mS_cm, goal_mS_cm, waterEc_mS_cm, capacityWater_mL, leachingEfficiency = 0.8 } = pot;
  within("before_mS_cm", before_mS_cm, 0, 30);
  within("waterEc_mS_cm", waterEc_mS_cm, 0, 30);
  within("goal_mS_cm", goal_mS_cm, 0, 30);
  within("capacityWater_mL", capacityWater_mL, 1, 1e6);
  within("leachingEfficiency", leachingEfficiency, 0.3, 1.5);
  if (before_mS_cm <= goal_mS_cm) return { total_mL: 0, doses_mL: [], wait_min: 0 };
  within("goal_mS_cm", goal_mS_cm, waterEc_mS_cm + 0.01, 30);
  const share = (goal_mS_cm - waterEc_mS_cm) / (before_mS_cm - waterEc_mS_cm);
  const total_mL = (-capacityWater_mL / leachingEfficiency) * Math.log(share);
  const doses_n = total_mL > capacityWater_mL ? 4 : 3;
  return { total_mL, doses_mL: new Array<number>(doses_n).fill(total_mL / doses_n), wait_min: 5 };
}

/**
 * Where the salts of a pot settle when every watering leaches the same share and the plant takes up none.
 *
 * leachate EC = ECi / LF; pore water at capacity ECi [1 + (F/Wc) x/(1 − x)], x = exp(−f L/Wc), L = F LF/(1 − LF)
 *
 * @param pot conductivity of the water [mS cm⁻¹], 0.01 to 20; water at capacity and each refill [mL], 1 to 1e6; share leached, 0.01 to 0.9; leaching efficiency f, 0.3 to 1.5, 0.8 unless given
 * @returns pore water at capacity and mean leachate [mS cm⁻¹]
 * @throws QuantityError outside those ranges
 * @source our assumption; balance of mass
 * @see checks/medium-repot.json 081 to 083
 * @example steadySalt({ waterEc_mS_cm: 1.5, capacityWater_mL: 250, refill_mL: 120, leaching_frac: 0.1 }).pore_mS_cm // 18.02
 */
export function steadySalt(pot: {
  readonly waterEc_mS_cm: number;
  readonly capacityWater_mL: number;
  readonly refill_mL: number;
  readonly leaching_frac: number;
  readonly leachingEfficiency?: number;
}): { readonly pore_mS_cm: number; readonly leachate_mS_cm: number } {
  const { waterEc_mS_cm, capacityWater_mL, refill_mL, leaching_frac, leachingEfficiency = 0.8 } = pot;
  within("waterEc_mS_cm", waterEc_mS_cm, 0.01, 20);
  within("capacityWater_mL", capacityWater_mL, 1, 1e6);
  within("refill_mL", refill_mL, 1, 1e6);
  within("leaching_frac", leaching_frac, 0.01, 0.9);
  within("leachingEfficiency", leachingEfficiency, 0.3, 1.5);
  const leachate_mL = (refill_mL * leaching_frac) / (1 - leaching_frac);
  const left = Math.exp((-leachingEfficiency * leachate_mL) / capacityWater_mL);
  return {
    pore_mS_cm: waterEc_mS_cm * (1 + ((refill_mL / capacityWater_mL) * left) / (1 - left)),
    leachate_mS_cm: waterEc_mS_cm / leaching_frac,
  };
}

/**
 * Waterings from below, which never leach, until the pore water at capacity reaches a limit.
 *
 * each adds ECi F (1 − u) / Wc; rounded up
 *
 * @param pot water at capacity and each refill [mL], 1 to 1e6; conductivity of the water [mS cm⁻¹], 0.01 to 20, of the pore water now and at the limit, 0 to 30; share taken up, 0 to 0.95
 * @returns waterings, 0 where the limit is reached
 * @throws QuantityError outside those ranges
 * @source UCANR for why; balance of mass
 * @see checks/medium-repot.json 084
 * @example wateringsFromBelow_n({ capacityWater_mL: 250, refill_mL: 120, waterEc_mS_cm: 0.5, pore_mS_cm: 0.6, limit_mS_cm: 2, uptake_frac: 0 }) // 6
 */
export function wateringsFromBelow_n(pot: {
  readonly capacityWater_mL: number;
  readonly refill_mL: number;
  readonly waterEc_mS_cm: number;
  readonly pore_mS_cm: number;
  readonly limit_mS_cm: number;
  readonly uptake_frac: number;
}): number {
  within("capacityWater_mL", pot.capacityWater_mL, 1, 1e6);
  within("refill_mL", pot.refill_mL, 1, 1e6);
  within("waterEc_mS_cm", pot.waterEc_mS_cm, 0.01, 20);
  within("pore_mS_cm", pot.pore_mS_cm, 0, 30);
  within("limit_mS_cm", pot.limit_mS_cm, 0, 30);
  within("uptake_frac", pot.uptake_frac, 0, 0.95);
  const each = (pot.waterEc_mS_cm * pot.refill_mL * (1 - pot.uptake_frac)) / pot.capacityWater_mL;
  return Math.max(0, Math.ceil((pot.limit_mS_cm - pot.pore_mS_cm) / each - 1e-9));
}

/**
 * Water that leaches a pot through, by the rule of thumb.
 *
 * multiple × volume of the pot
 *
 * @param pot volume [mL], 10 to 1e6; multiple, 0.5 to 10, 2 unless given
 * @returns water [mL]
 * @throws QuantityError outside those ranges
 * @source UCANR
 * @see checks/medium-repot.json 079
 * @example leachByRule_mL({ medium_mL: 1183 }) // 2366
 */
export function leachByRule_mL(pot: { readonly medium_mL: number; readonly volumes?: number }): number {
  within("medium_mL", pot.medium_mL, 10, 1e6);
  within("volumes", pot.volumes ?? 2, 0.5, 10);
  return pot.medium_mL * (pot.volumes ?? 2);
}

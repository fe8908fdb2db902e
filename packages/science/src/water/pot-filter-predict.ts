import {
  CAPACITY,
  DEPLETION,
  DRAINED,
  GROWTH,
  LEAF,
  type PotState,
  SURFACE,
  tidy,
} from "./pot-filter-state.ts";

/** How fast beliefs wander and how strongly use falls when dry; per pot, from assumptions. */
export interface PotNoise {
  /** Relative sd of one day's use. */
  readonly day_frac: number;
  /** Random walk of the ln leaf factor, per root day. */
  readonly leaf_per_rootDay: number;
  readonly surface_per_rootDay: number;
  /** Days over which a learned factor fades back to the model; infinite for never. */
  readonly fade_d: number;
  /** Random walk of the drained weight as a share of it, per root day, and its floor. */
  readonly drained_frac: number;
  readonly drainedFloor_g: number;
  /** Random walk of the capacity as a share of it, per root day. */
  readonly capacity_frac: number;
  /** Depletion as a share of capacity beyond which leaves use less (p_t). */
  readonly stressFrom_frac: number;
}

/** What one step asks of the pot. */
export interface PotDemand {
  readonly dt_d: number;
  /** Leaf model over the step, unstressed, at factor one. */
  readonly leaf_g: number;
  /** Surface model over the step, at factor one and at the present dryness of the surface. */
  readonly surface_g: number;
  /** Rain that reached the medium. */
  readonly rain_g: number;
}

/** The state after a step, and the water it used. */
export interface PotStep {
  readonly state: PotState;
  readonly leafUse_g: number;
  readonly surfaceUse_g: number;
  /** Rain kept, and rain that ran through. */
  readonly rainKept_g: number;
  readonly rainDrained_g: number;
  /** What the floors of the filter took off or put on, so that the ledger closes. */
  readonly putRight_g: number;
}

/** A step that may use more than this share of the capacity is cut finer. */
const LARGE_STEP_frac = 0.2;
const MOST_PARTS_n = 12;
const DEPLETION_VARIANCE = 7;
/** Rain into a pot is known to about half of it. @source air-water sheet section 6 */
const RAIN_SD_frac = 0.5;

/**
 * One step of the pot filter without observation (F1, F2): depletion grows by the use of leaves and surface, the
 * drained weight by growth, doubts grow; use falls in a straight line once depletion passes the stress threshold.
 *
 * D += e^a X_leaf Ks(D/W) + e^b X_surface - rain;  c += m · leaf use;  P = F P Fᵀ + Q,
 * with the day's error divided by the step, so that two half days add up to one daily error.
 *
 * @param state 35 numbers
 * @param demand what the step asks, all values 0 or more and finite
 * @param noise how beliefs wander
 * @returns state after the step and where the water went
 * @source FAO56 eq. 84 (shape of Ks); extended Kalman filter; noise scaling: our assumption
 */
export function predictPot(state: PotState, demand: PotDemand, noise: PotNoise): PotStep {
  const next = state.slice();
  const { dt_d } = demand;
  if (!(dt_d > 0)) {
    return { state: next, leafUse_g: 0, surfaceUse_g: 0, rainKept_g: 0, rainDrained_g: 0, putRight_g: 0 };
  }
  const before_g = next[DEPLETION] as number;
  const leafFull_g = Math.exp(next[LEAF] as number) * demand.leaf_g;
  const surfaceFull_g = Math.exp(next[SURFACE] as number) * demand.surface_g;
  const share = (leafFull_g + surfaceFull_g) / (LARGE_STEP_frac * (next[CAPACITY] as number));
  const parts_n = share > 1 ? Math.min(MOST_PARTS_n, Math.ceil(share)) : 1;
  const fade = noise.fade_d === Infinity ? 1 : Math.exp(-dt_d / parts_n / noise.fade_d);
  const used = { leaf_g: 0, surface_g: 0 };
  for (let part = 0; part < parts_n; part++) {
    advance(next, leafFull_g / parts_n, surfaceFull_g / parts_n, dt_d / parts_n, fade, noise, used);
  }
  let rainKept_g = 0;
  let rainDrained_g = 0;
  if (demand.rain_g > 0) {
    const depletion_g = next[DEPLETION] as number;
    rainKept_g = Math.min(demand.rain_g, depletion_g);
    rainDrained_g = demand.rain_g - rainKept_g;
    next[DEPLETION] = depletion_g - rainKept_g;
    next[DEPLETION_VARIANCE] = (next[DEPLETION_VARIANCE] as number) + (RAIN_SD_frac * rainKept_g) ** 2;
  }
  tidy(next);
  const use_g = used.leaf_g + used.surface_g;
  const putRight_g = (next[DEPLETION] as number) - before_g - use_g + rainKept_g;
  return {
    state: next,
    leafUse_g: used.leaf_g,
    surfaceUse_g: used.surface_g,
    rainKept_g,
    rainDrained_g,
    putRight_g,
  };
}

// Written out by hand: a general matrix product here costs twenty times as much, and this is where folding spends
// its time. x holds means at 0..6 and the upper triangle of the covariance at 7..34 (D a b c m W eye, by rows).
function advance(
  x: number[],
  leafFull_g: number,
  surface_g: number,
  dt_d: number,
  fade: number,
  noise: PotNoise,
  used: { leaf_g: number; surface_g: number },
): void {
  const D = x[0] as number;
  const c = x[3] as number;
  const m = x[GROWTH] as number;
  const W = x[CAPACITY] as number;
  const r = D / W;
  const from = noise.stressFrom_frac;
  const stressed = r > from;
  const ks = stressed ? Math.max(0, (1 - r) / (1 - from)) : 1;
  const slope = stressed && r < 1 ? -leafFull_g / ((1 - from) * W) : 0;
  const leaf_g = leafFull_g * ks;
  const dD = 1 + slope;
  // A pot that is nearly empty is as empty as it is large: depletion then follows the capacity.
  const dW = -slope * r;
  const p00 = x[7] as number;
  const p01 = x[8] as number;
  const p02 = x[9] as number;
  const p03 = x[10] as number;
  const p04 = x[11] as number;
  const p05 = x[12] as number;
  const p06 = x[13] as number;
  const p11 = x[14] as number;
  const p12 = x[15] as number;
  const p13 = x[16] as number;
  const p14 = x[17] as number;
  const p15 = x[18] as number;
  const p16 = x[19] as number;
  const p22 = x[20] as number;
  const p23 = x[21] as number;
  const p24 = x[22] as number;
  const p25 = x[23] as number;
  const p26 = x[24] as number;
  const p33 = x[25] as number;
  const p34 = x[26] as number;
  const p35 = x[27] as number;
  const p36 = x[28] as number;
  const p44 = x[29] as number;
  const p45 = x[30] as number;
  const p46 = x[31] as number;
  const p55 = x[32] as number;
  const p56 = x[33] as number;
  // Row of the depletion: F_D P.
  const d0 = dD * p00 + leaf_g * p01 + surface_g * p02 + dW * p05;
  const d1 = dD * p01 + leaf_g * p11 + surface_g * p12 + dW * p15;
  const d2 = dD * p02 + leaf_g * p12 + surface_g * p22 + dW * p25;
  const d3 = dD * p03 + leaf_g * p13 + surface_g * p23 + dW * p35;
  const d4 = dD * p04 + leaf_g * p14 + surface_g * p24 + dW * p45;
  const d5 = dD * p05 + leaf_g * p15 + surface_g * p25 + dW * p55;
  const d6 = dD * p06 + leaf_g * p16 + surface_g * p26 + dW * p56;
  // Row of the drained weight: F_c P.
  const g = m * leaf_g;
  const c1 = p13 + g * p11 + leaf_g * p14;
  const c2 = p23 + g * p12 + leaf_g * p24;
  const c3 = p33 + g * p13 + leaf_g * p34;
  const c4 = p34 + g * p14 + leaf_g * p44;
  const c5 = p35 + g * p15 + leaf_g * p45;
  const c6 = p36 + g * p16 + leaf_g * p46;
  const use_g = leaf_g + surface_g;
  const perDay_d = Math.min(dt_d, 1);
  const fade2 = fade * fade;
  x[7] = dD * d0 + leaf_g * d1 + surface_g * d2 + dW * d5 + (noise.day_frac * use_g) ** 2 / perDay_d;
  x[8] = fade * d1;
  x[9] = fade * d2;
  x[10] = d3 + g * d1 + leaf_g * d4;
  x[11] = d4;
  x[12] = d5;
  x[13] = d6;
  x[14] = fade2 * p11 + noise.leaf_per_rootDay ** 2 * dt_d;
  x[15] = fade2 * p12;
  x[16] = fade * c1;
  x[17] = fade * p14;
  x[18] = fade * p15;
  x[19] = fade * p16;
  x[20] = fade2 * p22 + noise.surface_per_rootDay ** 2 * dt_d;
  x[21] = fade * c2;
  x[22] = fade * p24;
  x[23] = fade * p25;
  x[24] = fade * p26;
  x[25] = c3 + g * c1 + leaf_g * c4 + Math.max(noise.drainedFloor_g, noise.drained_frac * c) ** 2 * dt_d;
  x[26] = c4;
  x[27] = c5;
  x[28] = c6;
  x[29] = p44 + GROWTH_WANDERS_2 * dt_d;
  x[32] = p55 + (noise.capacity_frac * W) ** 2 * dt_d;
  x[DEPLETION] = D + use_g;
  x[LEAF] = fade * (x[LEAF] as number);
  x[SURFACE] = fade * (x[SURFACE] as number);
  x[DRAINED] = c + m * leaf_g;
  used.leaf_g += leaf_g;
  used.surface_g += surface_g;
}

/** Growth per gram of water wanders slowly through the year. @source our assumption */
const GROWTH_WANDERS_2 = 0.0005 ** 2;

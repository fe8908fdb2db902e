import { within } from "../errors/index.ts";
import { sectionMoment_m4 } from "./beam.ts";
import type { Wood } from "./bud-break.ts";

const GRAVITY = 9.806_65;
const SEGMENTS_n = 24;
const STEP = 1;
const MOST_TURNS_n = 400;
const CLOSE_rad = 1e-6;
/** Green wood gives with time: the sag of weeks over that of the hour. From memory; the sheet's 1.5 to 2. */
const CREEP = 1.75;
const MOST_BENDING = 40;

/** A branch as somebody can name it in half a minute. */
export type Branch = {
  readonly length_m: number;
  readonly diameter_m: number;
  /** thinner at the tip; half as thick unless given */
  readonly tipDiameter_m?: number;
  /** of its base over level, upright 90 */
  readonly lean_deg: number;
  readonly stiffness_Pa: number;
};

/** Weights hung on it beyond what it carried when it was looked at. */
export type Hung = { readonly at_frac: number; readonly hung_g: number };

type Chain = { readonly ds: number; readonly lean: number; readonly flex: readonly number[] };

function chainOf({
  length_m,
  diameter_m,
  tipDiameter_m = diameter_m / 2,
  lean_deg,
  stiffness_Pa,
}: Branch): Chain {
  within("length_m", length_m, 0.001, 5);
  within("diameter_m", diameter_m, 0.0001, 1);
  within("tipDiameter_m", tipDiameter_m, 0.0001, 1);
  within("lean_deg", lean_deg, -90, 90);
  within("stiffness_Pa", stiffness_Pa, 1e5, 1e11);
  const ds = length_m / SEGMENTS_n;
  const flex = Array.from({ length: SEGMENTS_n }, (_, joint) => {
    const thick_m = diameter_m + ((tipDiameter_m - diameter_m) * joint) / SEGMENTS_n;
    // The first joint stands for half a segment only: the base is held.
    return (joint === 0 ? 0.5 : 1) * (ds / (stiffness_Pa * sectionMoment_m4(thick_m)));
  });
  return { ds, lean: (lean_deg * Math.PI) / 180, flex };
}

/** Places of the segment ends for such slopes: x outwards, y up. */
function placed(slopes: readonly number[], ds: number) {
  const x = [0];
  const y = [0];
  slopes.forEach((slope, each) => {
    x.push((x[each] as number) + ds * Math.cos(slope));
    y.push((y[each] as number) + ds * Math.sin(slope));
  });
  return { x, y };
}

/** Bending moment at each joint from weights at places along the chain [N at segment ends, 0 to n]. */
function moments(weights: readonly number[], x: readonly number[]): number[] {
  const found = new Array<number>(SEGMENTS_n).fill(0);
  let load = 0;
  let lever = 0;
  for (let joint = SEGMENTS_n; joint > 0; joint -= 1) {
    load += weights[joint] as number;
    lever += (weights[joint] as number) * (x[joint] as number);
    found[joint - 1] = lever - load * (x[joint - 1] as number);
  }
  return found;
}

function settled(chain: Chain, weights: readonly number[], bending: number): number[] {
  let slopes = new Array<number>(SEGMENTS_n).fill(chain.lean);
  const steps = Math.max(1, Math.ceil(bending / STEP));
  for (let step = 1; step <= steps; step += 1) {
    const loads = weights.map((each) => (each * step) / steps);
    const share = Math.min(0.5, 1 / (1 + (bending * step) / steps / 2));
    for (let turn = 0; turn < MOST_TURNS_n; turn += 1) {
      const { x } = placed(slopes, chain.ds);
      const moment = moments(loads, x);
      let bent = chain.lean;
      let most = 0;
      const next = slopes.map((slope, joint) => {
        bent -= (moment[joint] as number) * (chain.flex[joint] as number);
        const change = share * (bent - slope);
        most = Math.max(most, Math.abs(change));
        return slope + change;
      });
      slopes = next;
      if (most < CLOSE_rad) break;
    }
  }
  return slopes;
}

type Laden = {
  readonly chain: Chain;
  readonly weights: readonly number[];
  /** Twice the turn of the tip as a small angle: P L²/(E I) for an even shoot, and what a taper makes of it. */
  readonly full: number;
};

function laden(branch: Branch, hung: readonly Hung[]): Laden {
  const chain = chainOf(branch);
  within("hung_n", hung.length, 0, 200);
  const weights = new Array<number>(SEGMENTS_n + 1).fill(0);
  for (const { at_frac, hung_g } of hung) {
    within("at_frac", at_frac, 0, 1);
    within("hung_g", hung_g, 0, 5000);
    const load_N = (hung_g / 1000) * GRAVITY;
    const at = at_frac * SEGMENTS_n;
    const below = Math.min(SEGMENTS_n - 1, Math.floor(at));
    weights[below] = (weights[below] as number) + load_N * (below + 1 - at);
    weights[below + 1] = (weights[below + 1] as number) + load_N * (at - below);
  }
  const level = Array.from({ length: SEGMENTS_n + 1 }, (_, joint) => joint * chain.ds);
  const turns = moments(weights, level).map((moment, joint) => moment * (chain.flex[joint] as number));
  return { chain, weights, full: 2 * turns.reduce((sum, each) => sum + each, 0) };
}

function hanging({ length_m }: Branch, { chain, weights, full }: Laden, factor: number) {
  // Past this any branch hangs straight down: heavier weights would only take longer.
  const borne = factor * (full > MOST_BENDING ? MOST_BENDING / full : 1);
  const slopes = settled(
    chain,
    weights.map((each) => each * borne),
    full * borne,
  );
  const { x, y } = placed(slopes, chain.ds);
  const straight_m = length_m * Math.sin(chain.lean);
  return {
    drop_frac: Math.max(0, (straight_m - (y[SEGMENTS_n] as number)) / length_m),
    tip_rad: slopes[SEGMENTS_n - 1] as number,
    base_N_m: moments(weights, x)[0] as number,
  };
}

function judged({ diameter_m, stiffness_Pa }: Branch, lean: number, now: ReturnType<typeof hanging>) {
  const strain_frac = (32 * now.base_N_m) / (Math.PI * diameter_m ** 3) / stiffness_Pa;
  const turnsDown = lean > 0 && now.tip_rad < 0;
  const verdict =
    now.drop_frac > 0.2 || strain_frac > 0.02 || turnsDown
      ? ("too much" as const)
      : now.drop_frac > 0.1
        ? ("sags" as const)
        : ("bears it" as const);
  return { strain_frac, verdict };
}

/**
 * How far a branch comes down under weights that are hung on it, now and after weeks, and whether that is too far.
 *
 * A chain of 24 segments; at each joint the moment of all weights further out turns it by M ds/(E I), half at the base; weights are
 * put on in steps and the turn is taken in parts, since the plain iteration runs away. The shape that was seen carries what hung
 * there: only what is new is given. Amber from 10 % of the length, red from 20 %, or where the base is strained by 2 % of its
 * stiffness, or a tip that pointed up points down.
 *
 * @param branch length [m], 0.001 to 5; diameter at the base and at the tip [m], 0.0001 to 1, half as thick there unless given; lean of the base over level [°], -90 to 90; stiffness [Pa], 100000 to 1e11
 * @param hung weights: distance along the branch as a share, 0 to 1; mass [g], 0 to 5000; up to 200 of them
 * @returns drop of the tip as a share of the length, now and after weeks; slope of the tip over level [°]; strain at the base, stress over stiffness; what that means
 * @throws QuantityError outside those ranges
 * @source EulerBernoulli in a chain, checked against Mattiasson1981; limits and creep our assumption
 */
export function branchSag(
  branch: Branch,
  hung: readonly Hung[],
): {
  readonly drop_frac: number;
  readonly dropWeeks_frac: number;
  readonly tip_deg: number;
  readonly strain_frac: number;
  readonly verdict: "bears it" | "sags" | "too much";
} {
  const load = laden(branch, hung);
  const now = hanging(branch, load, 1);
  return {
    drop_frac: now.drop_frac,
    dropWeeks_frac: hanging(branch, load, CREEP).drop_frac,
    tip_deg: (now.tip_rad * 180) / Math.PI,
    ...judged(branch, load.chain.lean, now),
  };
}

/** So bent a branch has long sagged, whatever its lean: there is no need to settle it. */
const SURELY_BENT = 6;

/**
 * How many like fruits a branch bears before it sags, hung evenly over its outer two thirds.
 *
 * @param branch as for its sag
 * @param fruit_g fresh mass of one fruit [g], 0.05 to 1000
 * @returns fruits, 0 to 60
 * @throws QuantityError outside those ranges
 * @source our assumption; limits as for its sag
 */
export function fruitsBorne_n(branch: Branch, fruit_g: number): number {
  within("fruit_g", fruit_g, 0.05, 1000);
  const bears = (fruits_n: number): boolean => {
    const load = laden(
      branch,
      Array.from({ length: fruits_n }, (_, each) => ({
        at_frac: 1 / 3 + (2 / 3) * ((each + 0.5) / fruits_n),
        hung_g: fruit_g,
      })),
    );
    if (load.full * Math.cos(load.chain.lean) > SURELY_BENT) return false;
    return judged(branch, load.chain.lean, hanging(branch, load, 1)).verdict === "bears it";
  };
  // Most branches bear few: from one upwards, then between.
  let most = 0;
  let over = 1;
  while (over <= MOST_BORNE_n && bears(over)) {
    most = over;
    over *= 2;
  }
  over = Math.min(over, MOST_BORNE_n + 1);
  while (over - most > 1) {
    const tried = Math.floor((most + over) / 2);
    if (bears(tried)) most = tried;
    else over = tried;
  }
  return most;
}

const MOST_BORNE_n = 60;

/**
 * Stiffness to reckon with where nobody hung a weight on the shoot, by its wood.
 *
 * green 0.10 GPa, half-woody 0.5, woody 2; each may be a third or three times that
 *
 * @param wood how old the shoot is
 * @returns stiffness [Pa]; factor by which it may be off, one way in six
 * @throws nothing
 * @source our assumption: no bending stiffness of green pepper stems was found
 */
export function usualStiffness(wood: Wood): {
  readonly stiffness_Pa: number;
  readonly factor: number;
} {
  return {
    green: { stiffness_Pa: 1e8, factor: 3 },
    semi: { stiffness_Pa: 5e8, factor: 3 },
    woody: { stiffness_Pa: 2e9, factor: 2.5 },
  }[wood];
}

import { normalProbability } from "@sillwood/science/chance";
import {
  blendAir,
  curveOf,
  drainedPot,
  type MediumName,
  media,
  type PotShape,
} from "@sillwood/science/medium";
import type { Filled } from "./kinds.ts";

/** What the composer aims at, and how it weighs what else a mix brings. */
export interface Aim {
  readonly shape: PotShape;
  readonly fill_cm: number;
  readonly airWanted_frac: number;
  readonly wetted_frac: number;
  readonly unavailable_frac: number;
  readonly scoops_n: number;
}

/** A mix as the objective sees it. */
export interface Judged {
  readonly recipe: Filled["recipe"];
  readonly air_frac: number;
  readonly airLow_frac: number;
  readonly airHigh_frac: number;
  readonly chance_frac: number;
  readonly available_frac: number;
  /** chance of enough air + half the share of water for the plant − 0.02 for each bag after the first */
  readonly worth: number;
}

const WATER_WEIGHT = 0.5;
const BAG_COST = 0.02;
/** A band of ±8 points as 80 %. @source medium-repot sheet 5 */
const BLEND_SD_frac = 0.08 / 1.2816;
const MOST_PARTS_n = 4;

interface Part {
  readonly part: MediumName;
  readonly air_frac: number;
  readonly airSd_frac: number;
  readonly water_frac: number;
  readonly unavailable_frac: number;
}

/** Each bag alone in this pot: worked out once, so that thousands of mixes cost a few sums each. */
export function partsIn(bags: readonly MediumName[], aim: Aim): readonly Part[] {
  return bags.map((part) => {
    const of = media[part];
    const curve = curveOf(of);
    const { air_frac, water_frac } = drainedPot({ ...aim.shape, ...curve, fill_cm: aim.fill_cm });
    const deep = { ...aim.shape, innerHeight_cm: Math.max(13, aim.shape.innerHeight_cm) };
    const six = drainedPot({ ...deep, ...curve, fill_cm: 13 }).water_frac;
    return {
      part,
      air_frac: Math.max(0, air_frac),
      airSd_frac: of.airSd_frac,
      water_frac,
      unavailable_frac: aim.unavailable_frac * six,
    };
  });
}

/** The objective for one mix, in whole scoops of each part. */
export function judged(parts: readonly Part[], scoops: readonly number[], aim: Aim): Judged {
  const all = scoops.reduce((sum, each) => sum + each, 0);
  const shares = scoops.map((each) => each / all);
  const used_n = scoops.filter((each) => each > 0).length;
  const { air_frac } = blendAir({ parts_frac: shares, airs_frac: parts.map((each) => each.air_frac) });
  const own = Math.hypot(...parts.map((each, i) => each.airSd_frac * (shares[i] as number)));
  const sd = used_n > 1 ? Math.hypot(BLEND_SD_frac, own) : own;
  const mean = (pick: (of: Part) => number) =>
    parts.reduce((sum, of, i) => sum + (shares[i] as number) * pick(of), 0);
  const porosity = mean((of) => of.air_frac + of.water_frac);
  const available_frac = Math.max(
    0.03,
    aim.wetted_frac * Math.max(0, porosity - air_frac) - mean((of) => of.unavailable_frac),
  );
  const chance_frac = normalProbability((air_frac - aim.airWanted_frac) / sd);
  return {
    recipe: parts.flatMap(({ part }, i) =>
      (scoops[i] as number) > 0 ? [{ part, scoops_n: scoops[i] as number }] : [],
    ),
    air_frac,
    airLow_frac: Math.max(0, air_frac - 1.2816 * sd),
    airHigh_frac: Math.min(0.95, air_frac + 1.2816 * sd),
    chance_frac,
    available_frac,
    worth: chance_frac + WATER_WEIGHT * available_frac - BAG_COST * (used_n - 1),
  };
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/**
 * The best mixes of these bags for this pot, in whole scoops, best first: every mix of at most four bags and so many scoops is
 * judged, so that none is missed; 2 + 2 scoops are 1 + 1.
 */
export function compose(bags: readonly MediumName[], aim: Aim, keep_n = 3): readonly Judged[] {
  const parts = partsIn(bags, aim);
  const best: Judged[] = [];
  const scoops = new Array<number>(parts.length).fill(0);
  const look = (from: number, left: number, used_n: number, divisor: number): void => {
    if (used_n > 0 && divisor === 1) {
      const one = judged(parts, scoops, aim);
      const last = best[keep_n - 1];
      if (!last || one.worth > last.worth) {
        best.push(one);
        best.sort((a, b) => b.worth - a.worth);
        best.length = Math.min(best.length, keep_n);
      }
    }
    if (used_n === MOST_PARTS_n) return;
    for (let i = from; i < parts.length; i++) {
      for (let n = 1; n <= left; n++) {
        scoops[i] = n;
        look(i + 1, left - n, used_n + 1, common(divisor, n));
      }
      scoops[i] = 0;
    }
  };
  look(0, aim.scoops_n, 0, 0);
  return best;
}

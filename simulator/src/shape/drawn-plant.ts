import type { Chance } from "../nursery/chance.ts";

/** A joint of a plant that was made up: where it is, what it carries. Millimetres from the foot of the trunk. */
export interface DrawnJoint {
  readonly id: string;
  readonly below?: string;
  readonly right_mm: number;
  readonly away_mm: number;
  readonly up_mm: number;
  readonly caliper_mm: number;
  readonly leaves_n: number;
  readonly leafLength_mm: number;
  readonly leafWidth_mm: number;
  readonly leafTowards_deg: number;
  readonly flowers_n: number;
  readonly fruit_n: number;
}

interface Way {
  readonly below: string;
  readonly at: readonly [number, number, number];
  readonly lean_rad: number;
  readonly around_rad: number;
  readonly caliper_mm: number;
  readonly order: number;
}

const GOLDEN_deg = 137.5;

/**
 * A pepper kept small: a bare trunk, a fork at its top, arms that fork again about every third joint, a twig here and there that was
 * let go. Arms bend upwards as they grow. Chance draws every length, angle and leaf.
 */
export function drawnPlant(chance: Chance, leaves_n: number): readonly DrawnJoint[] {
  const joints: DrawnJoint[] = [];
  let leaves = 0;
  const add = (
    below: string | undefined,
    at: readonly [number, number, number],
    caliper_mm: number,
    leafy: boolean,
  ): string => {
    const id = String(joints.length + 1);
    const length = Math.round(chance.normal(46, 7));
    const count = leafy && leaves < leaves_n ? (chance.uniform() < 0.35 ? 2 : 1) : 0;
    leaves += count;
    const round = (value: number) => Math.round(value * 10) / 10;
    joints.push({
      id,
      ...(below === undefined ? {} : { below }),
      right_mm: round(at[0]),
      away_mm: round(at[1]),
      up_mm: round(at[2]),
      caliper_mm: round(Math.max(1.2, caliper_mm)),
      leaves_n: count,
      leafLength_mm: Math.max(18, Math.min(80, length)),
      leafWidth_mm: Math.max(9, Math.min(40, Math.round(length * 0.48))),
      leafTowards_deg: Math.round((joints.length * GOLDEN_deg + chance.normal(0, 12) + 720) % 360),
      flowers_n: count > 0 && chance.uniform() < 0.12 ? 1 : 0,
      fruit_n: count > 0 && chance.uniform() < 0.06 ? 1 : 0,
    });
    return id;
  };
  const trunk_mm = chance.normal(10, 0.8);
  let below = add(undefined, [0, 0, 0], trunk_mm, false);
  let at: readonly [number, number, number] = [0, 0, 0];
  for (let joint = 0; joint < 4; joint += 1) {
    at = [at[0] + chance.normal(0.5, 1.5), at[1] + chance.normal(0, 1.5), at[2] + chance.normal(15, 2)];
    below = add(below, at, trunk_mm * (1 - 0.05 * joint), joint === 3);
  }
  const around = chance.uniform() * 2 * Math.PI;
  const ways: Way[] = [0, 1, 2].map((arm) => ({
    below,
    at,
    lean_rad: chance.normal(0.85, 0.12),
    around_rad: around + (arm * 2 * Math.PI) / 3 + chance.normal(0, 0.2),
    caliper_mm: trunk_mm * (0.58 - 0.06 * arm),
    order: 1,
  }));
  while (leaves < leaves_n && ways.length > 0) {
    const way = ways.shift() as Way;
    ways.push(...grown(way, chance, add));
  }
  return joints;
}

/** Three or four joints of an arm, then its fork; now and then a twig on the way. */
function grown(
  way: Way,
  chance: Chance,
  add: (below: string, at: readonly [number, number, number], caliper_mm: number, leafy: boolean) => string,
): readonly Way[] {
  let { below, at, lean_rad } = way;
  const next: Way[] = [];
  const joints_n = 3 + (chance.uniform() < 0.4 ? 1 : 0);
  for (let joint = 0; joint < joints_n; joint += 1) {
    const length = Math.max(7, chance.normal(18 - 2 * way.order, 3));
    lean_rad *= 0.86;
    at = [
      at[0] + length * Math.sin(lean_rad) * Math.cos(way.around_rad),
      at[1] + length * Math.sin(lean_rad) * Math.sin(way.around_rad),
      at[2] + length * Math.cos(lean_rad),
    ];
    below = add(below, at, way.caliper_mm * (1 - 0.07 * joint), true);
    if (joint === 1 && chance.uniform() < 0.5)
      next.push({
        below,
        at,
        lean_rad: 1.1,
        around_rad: way.around_rad + chance.normal(1.3, 0.3),
        caliper_mm: way.caliper_mm * 0.5,
        order: way.order + 1,
      });
  }
  for (const side of [1, -1])
    next.push({
      below,
      at,
      lean_rad: lean_rad + 0.4,
      around_rad: way.around_rad + side * chance.normal(0.7, 0.2),
      caliper_mm: way.caliper_mm * 0.7,
      order: way.order + 1,
    });
  return next;
}

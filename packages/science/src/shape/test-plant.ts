import { type Generator, seededGenerator } from "../chance/index.ts";
import type { StemNode } from "./tree.ts";
import { along, levelDirection, type Triple, unit } from "./vector.ts";

/**
 * A small pepper grown by rule and chance, for tests: a trunk, a fork, branches with leaves.
 *
 * @source our assumption
 */
export function testPlant(seed: string, leaves_n = 60): readonly StemNode[] {
  const chance = seededGenerator(seed);
  const nodes: StemNode[] = [];
  const add = (
    parent: string | undefined,
    position_mm: Triple,
    caliper_mm: number,
    leaf: boolean,
  ): string => {
    const id = `n${nodes.length}`;
    nodes.push({
      id,
      parent,
      position_mm,
      caliper_mm,
      wood: caliper_mm > 6 ? "woody" : caliper_mm > 4 ? "semi" : "green",
      leaf_cm2: leaf ? 6 + 6 * chance.uniform() : 0,
      leafLength_mm: leaf ? 40 + 20 * chance.uniform() : 0,
      azimuth_deg: (nodes.length * 137.5) % 360,
      flowers_n: leaf && chance.uniform() < 0.1 ? 1 : 0,
      fruit_g: leaf && chance.uniform() < 0.05 ? 2 : 0,
      bud: true,
    });
    return id;
  };
  let below = add(undefined, [0, 0, 0], 10, false);
  let at: Triple = [0, 0, 0];
  for (let node = 0; node < 5; node += 1) {
    at = along(at, unit([0.1 * chance.normal(), 0.1 * chance.normal(), 1]), 16);
    below = add(below, at, 9 - node * 0.3, node > 2);
  }
  const open: { below: string; at: Triple; direction: Triple; caliper_mm: number }[] = [
    { below, at, direction: [0.4, 0.1, 0.9], caliper_mm: 6 },
    { below, at, direction: [-0.4, -0.1, 0.9], caliper_mm: 5.5 },
  ];
  while (nodes.filter(({ leaf_cm2 }) => leaf_cm2 > 0).length < leaves_n) {
    const branch = open.shift();
    if (!branch) break;
    grow(branch, chance, add, open);
  }
  return nodes;
}

function grow(
  from: { below: string; at: Triple; direction: Triple; caliper_mm: number },
  chance: Generator,
  add: (parent: string, at: Triple, caliper_mm: number, leaf: boolean) => string,
  open: { below: string; at: Triple; direction: Triple; caliper_mm: number }[],
): void {
  let { below, at } = from;
  for (let node = 0; node < 4; node += 1) {
    at = along(
      at,
      unit(along(from.direction, [chance.normal(), chance.normal(), chance.normal()], 0.15)),
      14 + 6 * chance.uniform(),
    );
    below = add(below, at, Math.max(1, from.caliper_mm - 0.3 * node), true);
    if (node === 2)
      open.push({
        below,
        at,
        direction: unit(along(from.direction, levelDirection(360 * chance.uniform()), 0.8)),
        caliper_mm: Math.max(1, from.caliper_mm * 0.6),
      });
  }
  open.push({
    below,
    at,
    direction: unit(along(from.direction, levelDirection(360 * chance.uniform()), 0.5)),
    caliper_mm: Math.max(1, from.caliper_mm * 0.8),
  });
}

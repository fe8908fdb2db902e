import { valuesOf } from "../assumption.ts";
import { type Generator, seededGenerator } from "../chance/index.ts";
import { within } from "../errors/index.ts";
import { shapeAssumptions } from "./assumptions.ts";
import { meanLight } from "./crown-light.ts";
import { keptRows } from "./cuts.ts";
import { type Bench, chancesBelow } from "./plan-score.ts";
import { armsOf, internode_mm, type StemNode, stemDirection } from "./tree.ts";
import { preferredDirection, shootCourse, shootStart } from "./tropism.ts";
import { radialAt, type Triple } from "./vector.ts";

/** The warmth to come and the plant's own clock: thermal time of new nodes, with the base it was found on. */
export type Growing = {
  readonly air_C: number;
  readonly leafy: { readonly base_C: number; readonly plastochron_Cd: number };
  readonly flowering: { readonly base_C: number; readonly plastochron_Cd: number };
  readonly weeks_n: number;
};

/** One shoot that grows in the weeks ahead: from a bud below a cut, or a tip that goes on. */
export type Sprout = {
  readonly row: number;
  readonly isNew: boolean;
  /** Chance that it grows at all. */
  readonly chance_frac: number;
  readonly start: Triple;
  readonly preferred: Triple;
  readonly internode_mm: number;
  readonly leaf_mm: number;
  /** Multiple of the plant's plastochron. */
  readonly slow: number;
  readonly isFlowering: boolean;
};

const BUDS_n = 6;
const LEAST_CHANCE_frac = 0.03;
const USUAL_INTERNODE_mm = 18;
const USUAL_LEAF_mm = 45;

const median = (values: readonly number[], otherwise: number): number => {
  if (values.length === 0) return otherwise;
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] as number;
};

/**
 * What will grow after a set of cuts: live tips that stay, and buds below the cuts by their chances.
 *
 * @source our assumption
 */
export function sproutsAfter(bench: Bench, cuts: readonly number[]): readonly Sprout[] {
  const { tree, settings, light_frac } = bench;
  const set = valuesOf(shapeAssumptions, settings);
  const kept = keptRows(tree, cuts);
  const preferred = preferredDirection(meanLight(bench.sky), set.lightPull);
  const lengths = tree.nodes.map((_, row) => internode_mm(tree, row));
  const branchLengths = lengths.filter((length, row) => length > 2 && tree.axis[row] !== 0);
  const own_mm = median(
    branchLengths,
    median(
      lengths.filter((each) => each > 2),
      USUAL_INTERNODE_mm,
    ),
  );
  const leaf_mm = median(
    tree.nodes.flatMap((node) => (node.leafLength_mm > 5 ? [node.leafLength_mm] : [])),
    USUAL_LEAF_mm,
  );
  const stretch = (row: number) => 1 + set.shadeStretch_frac * (1 - Math.min(1, light_frac[row] as number));
  const sprouts: Sprout[] = [];
  tree.nodes.forEach((node, row) => {
    if (kept[row] !== 1 || armsOf(tree, row).length > 0 || !node.bud) return;
    const forked = hasFork(bench, row);
    const shared = { row, isNew: false, chance_frac: 1, preferred, leaf_mm, isFlowering: forked };
    const start = stemDirection(tree, row);
    sprouts.push({ ...shared, start, internode_mm: own_mm * stretch(row), slow: 1 });
    // Above the first fork each unit ends in a flower and forks: its weaker arm is drawn once.
    if (forked)
      sprouts.push({
        ...shared,
        start: shootStart(start, radialAt(start, tree.azimuths_deg[row] as number), Math.PI / 6),
        internode_mm: own_mm * stretch(row) * set.weakArmShort_frac,
        slow: set.weakArmSlow,
      });
  });
  const chances = new Map<number, number>();
  for (const cut of cuts)
    for (const { row, chance_frac } of chancesBelow(bench, cut, BUDS_n))
      if (kept[row] === 1) chances.set(row, Math.max(chances.get(row) ?? 0, chance_frac));
  for (const [row, chance_frac] of chances) {
    if (chance_frac < LEAST_CHANCE_frac) continue;
    const tangent = stemDirection(tree, row);
    sprouts.push({
      row,
      isNew: true,
      chance_frac,
      start: shootStart(
        tangent,
        radialAt(tangent, tree.azimuths_deg[row] as number),
        (set.insertion_deg * Math.PI) / 180,
      ),
      preferred,
      internode_mm: own_mm * stretch(row),
      leaf_mm,
      slow: 1,
      isFlowering: false,
    });
  }
  return sprouts;
}

const hasFork = ({ tree }: Bench, row: number): boolean => {
  for (let at = row; at >= 0; at = tree.parent[at] as number) if (armsOf(tree, at).length > 1) return true;
  return false;
};

/** How one draw differs from the middle: of the whole plant, and of each sprout. All 0 is the middle itself. */
type Luck = { readonly pace: number; readonly straighten: number; readonly length: number };
type SproutLuck = {
  readonly grows: number;
  readonly lag: number;
  readonly azimuth: number;
  readonly rise: number;
  readonly length: number;
};

const MIDDLE: Luck = { pace: 0, straighten: 0, length: 0 };
const MIDDLE_SPROUT: SproutLuck = { grows: 0.5, lag: 0, azimuth: 0, rise: 0, length: 0 };
const STRAIGHTEN_SPREAD_frac = 0.35;
/** Half of the spread of lengths is the plant's, the other half each shoot's own. @source our assumption */
const SHARED = Math.SQRT1_2;

const luckOf = (seed: string): Luck => {
  const { normal } = seededGenerator(seed);
  return { pace: normal(), straighten: normal(), length: normal() };
};
const sproutLuck = ({ uniform, normal }: Generator): SproutLuck => ({
  grows: uniform(),
  lag: normal(),
  azimuth: normal(),
  rise: normal(),
  length: normal(),
});

/** A shoot of one draw after so many weeks: its course, and where its leaves stand. */
export type GrownShoot = {
  readonly row: number;
  readonly isNew: boolean;
  readonly course_mm: readonly Triple[];
  readonly length_mm: number;
  readonly nodes_n: number;
  readonly leaf_mm: number;
};

/** Grows the sprouts of a plan in one draw, the same chance for the same bud whatever the plan. */
export type Grower = (
  sprouts: readonly Sprout[],
  draw: number | "middle",
  week: number,
) => readonly GrownShoot[];

/**
 * A grower of shoots by node rules on thermal time: nodes by the plastochron, internodes by a logistic, direction by tropism.
 *
 * x(τ) = xf / (1 + exp(-k (τ - 2P))), k = 4.4/(4P); draw "middle" has no chance in it, and only buds that rather grow than not
 *
 * @param growing mean air temperature [°C], -10 to 50; clocks; weeks, 1 to 12
 * @param seed any text
 * @throws QuantityError outside those ranges
 * @source our assumption; logistic growth of organs
 */
export function shootGrower(bench: Bench, growing: Growing, seed: string): Grower {
  within("air_C", growing.air_C, -10, 50);
  within("weeks_n", growing.weeks_n, 1, 12);
  for (const { base_C, plastochron_Cd } of [growing.leafy, growing.flowering]) {
    within("base_C", base_C, -5, 30);
    within("plastochron_Cd", plastochron_Cd, 5, 1000);
  }
  const set = valuesOf(shapeAssumptions, bench.settings);
  const plants = new Map<number, Luck>();
  const shoots = new Map<string, SproutLuck>();
  const ofDraw = (draw: number): Luck => {
    const known = plants.get(draw) ?? luckOf(`${seed}|${draw}`);
    plants.set(draw, known);
    return known;
  };
  const ofSprout = (draw: number, sprout: Sprout): SproutLuck => {
    const key = `${draw}|${bench.tree.ids[sprout.row]}|${sprout.isNew ? "new" : sprout.slow}`;
    const known = shoots.get(key) ?? sproutLuck(seededGenerator(`${seed}|${key}`));
    shoots.set(key, known);
    return known;
  };
  return (sprouts, draw, week) => {
    const luck = draw === "middle" ? MIDDLE : ofDraw(draw);
    const grown: GrownShoot[] = [];
    for (const sprout of sprouts) {
      const own = draw === "middle" ? MIDDLE_SPROUT : ofSprout(draw, sprout);
      if (own.grows >= sprout.chance_frac) continue;
      const clock = sprout.isFlowering ? growing.flowering : growing.leafy;
      const plastochron =
        clock.plastochron_Cd * sprout.slow * Math.exp(set.plastochronSpread_frac * luck.pace);
      const lag = sprout.isNew
        ? set.breakLag_n * clock.plastochron_Cd * Math.exp(set.breakLagSpread_frac * own.lag)
        : 0;
      const tau = week * 7 * Math.max(0, growing.air_C - clock.base_C) - lag;
      if (tau <= 0) continue;
      const factor = Math.exp(set.lengthSpread_frac * SHARED * (luck.length + own.length));
      const nodes_n = Math.floor(tau / plastochron) + 1;
      let length_mm = 0;
      for (let node = 0; node < nodes_n; node += 1)
        length_mm += sprout.internode_mm * factor * grownShare(tau - node * plastochron, plastochron);
      const node = bench.tree.nodes[sprout.row] as StemNode;
      const course_mm = shootCourse(node.position_mm, swung(sprout.start, own, set), sprout.preferred, {
        length_mm,
        straighten_mm: set.straighten_mm * Math.exp(STRAIGHTEN_SPREAD_frac * luck.straighten),
      });
      grown.push({
        row: sprout.row,
        isNew: sprout.isNew,
        course_mm,
        length_mm,
        nodes_n,
        leaf_mm: sprout.leaf_mm,
      });
    }
    return grown;
  };
}

const grownShare = (age_Cd: number, plastochron: number): number => {
  const k = 4.4 / (4 * plastochron);
  return 1 / (1 + Math.exp(-k * (age_Cd - 2 * plastochron)));
};

/** A start turned within its cone: aside by compass, up or down by steepness. */
function swung(
  start: Triple,
  own: SproutLuck,
  set: { readonly azimuthSpread_deg: number; readonly elevationSpread_deg: number },
): Triple {
  if (own.azimuth === 0 && own.rise === 0) return start;
  const turn = (set.azimuthSpread_deg * own.azimuth * Math.PI) / 180;
  const level = Math.hypot(start[0], start[1]);
  const rise = Math.atan2(start[2], level) + (set.elevationSpread_deg * own.rise * Math.PI) / 180;
  const around = Math.atan2(start[1], start[0]) + turn;
  const flat = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, rise));
  return [Math.cos(flat) * Math.cos(around), Math.cos(flat) * Math.sin(around), Math.sin(flat)];
}

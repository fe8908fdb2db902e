import { within } from "../errors/index.ts";
import { keptRows } from "./cuts.ts";
import { fitsOutline, overlap_frac } from "./outline.ts";
import type { Bench, PlanTerms } from "./plan-score.ts";
import { type Grower, type GrownShoot, type Sprout, sproutsAfter } from "./preview.ts";
import type { StemNode } from "./tree.ts";
import type { Triple } from "./vector.ts";

/** The week at which plans are judged. @source our assumption */
const JUDGED_WEEK = 6;

/**
 * The terms of a plan in one draw, with what was worked out before handed in.
 *
 * @source our assumption
 */
export function grownTerms(
  bench: Bench,
  cuts: readonly number[],
  sprouts: readonly Sprout[],
  now: PlanTerms,
  grower: Grower,
  draw: number | "middle",
): PlanTerms {
  const { picture, tree, outline } = bench;
  const foot = (tree.nodes[0] as StemNode).position_mm;
  const kept = keptRows(tree, cuts);
  const covered = new Uint8Array(picture.cells_n);
  let outside = 0;
  let length = 0;
  for (let row = 0; row < kept.length; row += 1) {
    if (kept[row] !== 1) continue;
    for (const cell of picture.covers[row] as Int32Array) covered[cell] = 1;
    outside += bench.outside_mm[row] as number;
    length += bench.length_mm[row] as number;
  }
  for (const shoot of grower(sprouts, draw, JUDGED_WEEK)) {
    const { course_mm } = shoot;
    const step_mm = shoot.length_mm / Math.max(1, course_mm.length - 1);
    const every = Math.max(1, Math.round((course_mm.length - 1) / shoot.nodes_n));
    course_mm.forEach((place, at) => {
      if (at === 0) return;
      length += step_mm;
      if (!fitsOutline(outline, place, foot)) outside += step_mm;
      if (at % every === 0) for (const cell of picture.cellsOf(place, shoot.leaf_mm * 0.5)) covered[cell] = 1;
    });
  }
  return { ...now, outline: overlap_frac(picture, covered), inside: length > 0 ? 1 - outside / length : 1 };
}

/** A week of the preview: the crown's height and width, 10, 50 and 90 in a hundred, and the chance that a tip is outside. */
export type WeekAhead = {
  readonly week: number;
  readonly height_mm: readonly [number, number, number];
  readonly width_mm: readonly [number, number, number];
  readonly outside_frac: number;
};

/** Where the tip of one sprout is at the last week: 10, 50, 90 in a hundred on each axis, of the draws in which it grows. */
export type TipAhead = {
  readonly row: number;
  readonly isNew: boolean;
  readonly chance_frac: number;
  readonly low_mm: Triple;
  readonly middle_mm: Triple;
  readonly high_mm: Triple;
  readonly length_mm: readonly [number, number, number];
};

const quantile = (sorted: readonly number[], share: number): number => {
  const at = share * (sorted.length - 1);
  const low = sorted[Math.floor(at)] as number;
  return low + (at - Math.floor(at)) * ((sorted[Math.ceil(at)] as number) - low);
};
const three = (values: readonly number[]): readonly [number, number, number] => {
  const sorted = values.toSorted((a, b) => a - b);
  return [quantile(sorted, 0.1), quantile(sorted, 0.5), quantile(sorted, 0.9)];
};

/**
 * The weeks after a plan, by seeded draws.
 *
 * @param draws_n 10 to 2000
 * @returns each week with its spread, and where each tip will be at the last
 * @throws QuantityError outside that range
 * @source our assumption
 */
export function weeksAhead(
  bench: Bench,
  cuts: readonly number[],
  grower: Grower,
  ask: { readonly weeks_n: number; readonly draws_n: number },
): { readonly weeks: readonly WeekAhead[]; readonly tips: readonly TipAhead[] } {
  within("draws_n", ask.draws_n, 10, 2000);
  within("weeks_n", ask.weeks_n, 1, 12);
  const sprouts = sproutsAfter(bench, cuts);
  const foot = (bench.tree.nodes[0] as StemNode).position_mm;
  const still = keptPlaces(bench, cuts);
  const weeks: WeekAhead[] = [];
  let last: (readonly GrownShoot[])[] = [];
  for (let week = 0; week <= ask.weeks_n; week += 1) {
    last = Array.from({ length: ask.draws_n }, (_, draw) => grower(sprouts, draw, week));
    const heights: number[] = [];
    const widths: number[] = [];
    let outside_n = 0;
    for (const shoots of last) {
      const tips = shoots.map(({ course_mm }) => course_mm.at(-1) as Triple);
      const places = [...still, ...tips];
      heights.push(Math.max(...places.map((place) => place[2] - foot[2])));
      widths.push(
        Math.max(...places.map((place) => place[0])) - Math.min(...places.map((place) => place[0])),
      );
      if (tips.some((tip) => !fitsOutline(bench.outline, tip, foot))) outside_n += 1;
    }
    weeks.push({
      week,
      height_mm: three(heights),
      width_mm: three(widths),
      outside_frac: outside_n / ask.draws_n,
    });
  }
  return { weeks, tips: tipsOf(sprouts, last) };
}

function keptPlaces({ tree }: Bench, cuts: readonly number[]): readonly Triple[] {
  const kept = keptRows(tree, cuts);
  return tree.nodes.flatMap(({ position_mm }, row) => (kept[row] === 1 ? [position_mm] : []));
}

function tipsOf(sprouts: readonly Sprout[], draws: readonly (readonly GrownShoot[])[]): readonly TipAhead[] {
  return sprouts.flatMap((sprout) => {
    const grown = draws.flatMap((shoots) =>
      shoots.filter(({ row, isNew }) => row === sprout.row && isNew === sprout.isNew),
    );
    if (grown.length === 0) return [];
    const ends = grown.map(({ course_mm }) => course_mm.at(-1) as Triple);
    const axes = [0, 1, 2].map((axis) => three(ends.map((end) => end[axis] as number)));
    const of = (which: 0 | 1 | 2): Triple => axes.map((axis) => axis[which]) as unknown as Triple;
    return [
      {
        row: sprout.row,
        isNew: sprout.isNew,
        chance_frac: sprout.chance_frac,
        low_mm: of(0),
        middle_mm: of(1),
        high_mm: of(2),
        length_mm: three(grown.map(({ length_mm }) => length_mm)),
      },
    ];
  });
}

import {
  type Bench,
  formOutline,
  type Grower,
  keptRows,
  learntBreak_frac,
  leavesToPluck,
  planBench,
  shootGrower,
  sproutsAfter,
  type Tree,
  takenBy,
  topmostOnly,
} from "@sillwood/science/shape";
import type { Json } from "../../book/entry.ts";
import { type Outward, PageError } from "../craft.ts";
import { type Around, aroundOf } from "./around.ts";
import { againstCut, cutFigures, restEnd_ms } from "./cut-effect.ts";
import { cutPageWorking } from "./cut-working.ts";
import { type Aimed, CUT, PLANNED } from "./kinds.ts";
import type { CutShown, PlanShown, PlansShown, TrimAsk, WeekShown } from "./page-shape.ts";
import { chosenPlans, huntPlans, playedOwn, rowOf } from "./plan-hunt.ts";
import type { TrimSlice } from "./slice.ts";
import { treeOf } from "./tree-of.ts";
import { goneIds, markOf, type Projection, projectionsOf } from "./views.ts";
import { trimPageWords } from "./words-page.ts";

/** A traced plant made ready to be asked about cuts. */
export interface Judged {
  readonly tree: Tree;
  readonly bench: Bench;
  readonly around: Around;
  readonly grower: Grower;
  readonly aim: Aimed;
  readonly isAimOurs: boolean;
  readonly projections: { readonly front: Projection; readonly side: Projection };
  readonly warn_frac: number;
  readonly most_frac: number;
  readonly sight: Outward;
  nameOf(node: string): string;
}

const WEEKS_n = 8;
const PLUCK_n = 3;
const PLUCK_LOOKED_n = 8;
/** Where light at its spot is short of its need a trim may take half. @source our assumption */
const DIM_mol_m2_d = 5;

type Ready = Pick<Judged, "tree" | "bench" | "around" | "grower">;

/** What was made ready for a trace stays while that trace does: searches go on in it. Keeping it changes no answer. */
const made = new WeakMap<object, Map<string, Ready>>();
const MOST_KEPT_n = 6;

export function judgedPlant(slice: TrimSlice, sight: Outward, ask: TrimAsk): Judged | undefined {
  const trace = ask.trace ?? slice.trace;
  if (!trace) return undefined;
  const words = trimPageWords(sight.say);
  const around = aroundOf(slice, trace.frontFaces_deg, sight);
  const tree = treeOf(trace);
  const aim = ask.aim ?? slice.aim ?? usualAim(tree);
  const settings = {
    insertion_deg: sight.assumed("insertion_deg"),
    lightPull: sight.assumed("lightPull"),
    straighten_mm: sight.assumed("straighten_mm"),
    firstBreak_frac: learntBreak_frac({
      before_frac: sight.assumed("firstBreak_frac"),
      watched_n: slice.watched_n,
      grown_n: slice.grown_n,
    }),
  };
  const key = JSON.stringify([aim, around, settings]);
  const known = made.get(trace) ?? new Map<string, Ready>();
  made.set(trace, known);
  let ready = known.get(key);
  if (!ready) {
    const bench = planBench(tree, formOutline(aim), around.sky, settings);
    ready = { tree, bench, around, grower: shootGrower(bench, around.growing, `trim ${sight.plant.id}`) };
    if (known.size >= MOST_KEPT_n) known.delete(known.keys().next().value as string);
    known.set(key, ready);
  }
  const dim = sight.airAt(sight.plant.spot, sight.dateOf(sight.now_ms)).dli_mol_m2_d < DIM_mol_m2_d;
  const ease = dim ? 0.5 : 1;
  return {
    ...ready,
    aim,
    isAimOurs: ask.aim === undefined && slice.aim === undefined,
    projections: projectionsOf(trace, ready.tree),
    warn_frac: sight.assumed("trimWarn_frac") * ease,
    most_frac: sight.assumed("trimMost_frac") * ease,
    sight,
    nameOf: (node) => {
      const row = rowOf(tree, node);
      return row < 0 ? node : words.name(tree.axis[row] as number, tree.rank[row] as number);
    },
  };
}

/** A dome of nearly the plant's own height and width: asks for nothing that is not there. */
function usualAim(tree: Tree): Aimed {
  let top_mm = 40;
  let half_mm = 20;
  let foot_mm = Number.POSITIVE_INFINITY;
  tree.nodes.forEach(({ position_mm, leaf_cm2 }) => {
    top_mm = Math.max(top_mm, position_mm[2]);
    half_mm = Math.max(half_mm, Math.abs(position_mm[0]), Math.abs(position_mm[1]));
    if (leaf_cm2 > 0) foot_mm = Math.min(foot_mm, position_mm[2]);
  });
  const round = (mm: number) => Math.round(mm / 5) * 5;
  const top = Math.min(3000, Math.max(20, round(top_mm * 0.95)));
  return {
    form: "dome",
    top_mm: top,
    foot_mm: Math.max(0, Math.min(top - 10, round(Math.min(foot_mm, top_mm / 3)))),
    width_mm: Math.min(3000, Math.max(20, round(half_mm * 1.8))),
  };
}

/** One cut after others, in words and numbers. */
export function cutShown(judged: Judged, before: readonly number[], row: number, letter?: string): CutShown {
  const { tree, bench, around, sight, projections } = judged;
  const words = trimPageWords(sight.say);
  const against = againstCut(tree, row);
  const below = Math.max(0, tree.parent[row] as number);
  const node = tree.ids[below] as string;
  const gone = tree.ids[row] as string;
  const name = judged.nameOf(node);
  const figures = cutFigures(
    bench,
    around,
    before,
    row === 0 ? tree.nodes.length - 1 : row,
    sight.assumed("leafRegrowth_per_d"),
  );
  const lines = {
    where: words.cut.where(name),
    takes: words.cut.takes(figures, judged.warn_frac),
    brings: words.cut.brings(figures),
    opens: words.cut.opens(figures, judged.nameOf),
    loses: words.cut.loses(figures),
    outline: words.cut.outline(figures),
    again: words.cut.again(restEnd_ms(sight.now_ms, figures.rest_d)),
  };
  return {
    ...(letter === undefined ? {} : { letter }),
    node,
    gone,
    isLegal: against === undefined,
    ...(against === undefined ? {} : { why: words.against(against) }),
    ...lines,
    said: words.cut.said(lines),
    goneNodes: goneIds(tree, [row]),
    marks: {
      front: markOf(tree, Math.max(1, row), projections.front),
      side: markOf(tree, Math.max(1, row), projections.side),
    },
    figures,
    working: cutPageWorking(judged, name, figures),
    draft: { kind: CUT, on: [sight.plant.id], data: takenBody(node, gone, letter, figures) },
  };
}

function takenBody(node: string, gone: string, letter: string | undefined, figures: CutShown["figures"]) {
  const round = (value: number, digits: number) => Number(value.toFixed(digits));
  return {
    node,
    gone,
    ...(letter === undefined ? {} : { letter }),
    kept_frac: round(1 - figures.area_frac, 4),
    lit_frac: round(figures.lit_frac, 4),
    mass_g: round(figures.mass_g, 1),
    flowers_n: figures.flowers_n,
    fruit_n: figures.fruit_n,
  };
}

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
const letterOf = (at: number): string =>
  at < 26 ? (LETTERS[at] as string) : `${LETTERS[Math.floor(at / 26) - 1]}${LETTERS[at % 26]}`;

export function plansShown(judged: Judged, tries_n: number): PlansShown {
  const words = trimPageWords(judged.sight.say);
  const hunt = huntPlans(judged.bench, judged.most_frac, tries_n);
  const { tried_n, about_n } = hunt.state;
  return {
    tried_n,
    about_n: Math.max(tried_n, about_n),
    isDone: hunt.isDone,
    said: words.plans.tried(tried_n, Math.max(tried_n, about_n), hunt.isDone),
    plans: chosenPlans(judged.bench, hunt, judged.warn_frac, judged.grower).map((chosen) =>
      planShown(judged, chosen.key, chosen.cuts, chosen.beatsNothing_frac),
    ),
  };
}

/** A plan put together by hand; refuses cuts that may not be made. */
export function ownPlan(judged: Judged, gone: readonly string[]): PlanShown {
  const { tree, bench, grower } = judged;
  const words = trimPageWords(judged.sight.say);
  const rows = gone.map((id) => {
    const row = rowOf(tree, id);
    if (row < 0) throw new PageError(`own is ${JSON.stringify(id)}; expected ids of nodes of this plant`);
    const against = againstCut(tree, row);
    if (against) throw new PageError(`own is ${JSON.stringify(id)}: ${words.against(against)}`);
    return row;
  });
  const cuts = topmostOnly(tree, rows);
  return planShown(judged, "own", cuts, playedOwn(bench, cuts, takenBy(bench, cuts).lit_frac, grower));
}

function planShown(
  judged: Judged,
  key: PlanShown["key"],
  cuts: readonly number[],
  beats_frac: number,
): PlanShown {
  const { tree, bench, sight } = judged;
  const words = trimPageWords(sight.say).plans;
  const taken_frac = takenBy(bench, cuts).lit_frac;
  const shown = cuts.map((row, at) => cutShown(judged, cuts.slice(0, at), row, letterOf(at)));
  const kept = keptRows(tree, cuts);
  return {
    key,
    name: words.names[key],
    said: cuts.length === 0 ? words.saidNothing : words.said(cuts.length, taken_frac),
    cuts: shown,
    goneNodes: goneIds(tree, cuts),
    taken_frac,
    beats: cuts.length === 0 ? words.nothingBeside : words.beats(beats_frac),
    beatsNothing_frac: beats_frac,
    ...(taken_frac > judged.warn_frac ? { warning: words.warning(taken_frac, judged.warn_frac) } : {}),
    pluck:
      cuts.length === 0
        ? []
        : leavesToPluck(tree, kept, bench.sky, PLUCK_LOOKED_n, bench.settings)
            .filter(({ useless, worth }) => useless || worth > 1)
            .slice(0, PLUCK_n)
            .map(({ row, share_frac }) => words.pluck(judged.nameOf(tree.ids[row] as string), share_frac)),
    weeks: weeksOf(judged, cuts),
    ...(cuts.length > 0 && (key === "light" || key === "middle" || key === "bold" || key === "own")
      ? {
          draft: {
            kind: PLANNED,
            on: [sight.plant.id],
            data: { plan: key, cuts: shown.map(({ draft }) => draft.data) } as Json,
          },
        }
      : {}),
  };
}

function weeksOf(judged: Judged, cuts: readonly number[]): readonly WeekShown[] {
  const { bench, grower, projections, tree, sight } = judged;
  const words = trimPageWords(sight.say).plans;
  const sprouts = sproutsAfter(bench, cuts);
  const kept = keptRows(tree, cuts);
  const stands_mm = Math.max(
    0,
    ...tree.nodes.flatMap(({ position_mm }, row) => (kept[row] === 1 ? [position_mm[2]] : [])),
  );
  return Array.from({ length: WEEKS_n + 1 }, (_, week) => {
    const shoots = grower(sprouts, "middle", week);
    const height_mm = Math.max(stands_mm, ...shoots.map(({ course_mm }) => course_mm.at(-1)?.[2] ?? 0));
    const every = (course: (typeof shoots)[number]["course_mm"]) =>
      course.filter((_place, at) => at % 2 === 0 || at === course.length - 1);
    return {
      week,
      said: words.week(week, height_mm, shoots.length),
      front: shoots.map(({ course_mm }) => every(course_mm).map((place) => projections.front.point(place))),
      side: shoots.map(({ course_mm }) => every(course_mm).map((place) => projections.side.point(place))),
    };
  });
}

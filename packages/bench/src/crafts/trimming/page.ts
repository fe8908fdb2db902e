import {
  bestPotAngle,
  formOutline,
  leafShares_frac,
  planTerms,
  trainedHeight,
} from "@sillwood/science/shape";
import type { Json } from "../../book/entry.ts";
import { PageError, type World, type WorldMember } from "../craft.ts";
import { againstCut } from "./cut-effect.ts";
import { cutShown, type Judged, judgedPlant, ownPlan, plansShown } from "./judged-plant.ts";
import { trimLimits } from "./limits.ts";
import type { Level, NodeRow, PlantTrim, TrimAsk, TrimPage, TrimRow } from "./page-shape.ts";
import { rowOf } from "./plan-hunt.ts";
import { readTrimAsk } from "./read-ask.ts";
import type { TrimSlice } from "./slice.ts";
import { bendDates } from "./tasks.ts";
import { viewOf } from "./views.ts";
import { trimPageWords } from "./words-page.ts";
import type { TrimPageWords } from "./words-page-shape.ts";
import { limitWorking, restWorking } from "./workings.ts";

/** How far a pot is tipped at most. @source our assumption */
const MOST_TIP_deg = 30;

/** Screen 6 and `sillwood cut`. */
export function trimPage(world: World, json: Json): TrimPage {
  const ask = readTrimAsk(json);
  const members = world.members as readonly WorldMember<TrimSlice>[];
  const words = trimPageWords(world.say);
  const rows = members.map((member): TrimRow => {
    const level = levelOf(member.slice);
    return {
      plant: member.plant.id,
      number: world.numberOf(member.plant.id),
      kind: world.kindOf(member.plant),
      level,
      said: levelSaid(member.slice, words),
    };
  });
  const traced_n = rows.filter(({ level }) => level === "traced").length;
  const member = ask.plant === undefined ? undefined : members.find(({ plant }) => plant.id === ask.plant);
  if (ask.plant !== undefined && !member)
    throw new PageError(`plant is ${JSON.stringify(ask.plant)}; expected the id of a plant that lives`);
  return {
    now_ms: world.now_ms,
    said: rows.length === 0 ? words.noPlants : words.list(traced_n, rows.length),
    plants: member ? [] : rows,
    ...(member ? { plant: plantTrim(world, member, ask) } : {}),
    cautions: words.cautions,
    figures: { plants_n: rows.length, traced_n },
  };
}

const levelOf = (slice: TrimSlice): Level => (slice.trace ? "traced" : slice.sketch ? "sketched" : "nothing");

function levelSaid({ trace, sketch }: TrimSlice, words: TrimPageWords): string {
  if (trace) return words.traced(trace.nodes.length, trace.error_mm, trace.unseen_n ?? 0);
  return sketch ? words.sketched(sketch.height_mm, sketch.trunk_mm, sketch.leaves_n) : words.nothing;
}

function plantTrim(world: World, member: WorldMember<TrimSlice>, ask: TrimAsk): PlantTrim {
  const { slice, sight, plant } = member;
  const words = trimPageWords(world.say);
  const limits = trimLimits(slice, sight, world.say).filter(({ work }) => work === "cut");
  const rest = restWorking(slice, sight);
  const judged = judgedPlant(slice, sight, ask);
  const common = {
    plant: plant.id,
    number: world.numberOf(plant.id),
    kind: world.kindOf(plant),
    level: levelOf(slice),
    levelSaid: levelSaid(
      ask.trace ? { ...slice, trace: { ...ask.trace, at_ms: 0, entry: "" as never } } : slice,
      words,
    ),
    held: limits.map(({ why, until_ms }) => words.held(why, until_ms)),
    ...(slice.sketch && !slice.trace ? { sketch: sketchShown(slice, words) } : {}),
    ...(slice.plan ? { keptPlan: slice.plan.cuts } : {}),
    bends: slice.bends.map((bend) => ({
      node: bend.node,
      said: words.bend(bend.by, judged ? judged.nameOf(bend.node) : bend.node, bendDates(bend, sight).off_ms),
    })),
    workings: [limitWorking(sight), ...(rest ? [rest] : [])],
  };
  if (!judged) return { ...common, nodes: [], figures: {} };
  return { ...common, ...tracedParts(judged, ask, words), ...(slice.trace ? { trace: slice.trace } : {}) };
}

function tracedParts(judged: Judged, ask: TrimAsk, words: TrimPageWords) {
  const { tree, aim, projections } = judged;
  const rowAsked = ask.node === undefined ? -1 : rowOf(tree, ask.node);
  if (ask.node !== undefined && rowAsked < 0)
    throw new PageError(`node is ${JSON.stringify(ask.node)}; expected one of ${tree.ids.join(", ")}`);
  const height_mm = Math.max(...tree.nodes.map(({ position_mm }) => position_mm[2]));
  const trunk_mm = tree.nodes[0]?.caliper_mm ?? 0;
  const asked = trainedHeight(trunk_mm);
  const plans = ask.tries_n === undefined ? undefined : plansShown(judged, ask.tries_n);
  const own = ask.own && ask.own.length > 0 ? ownPlan(judged, ask.own) : undefined;
  return {
    aim: {
      aimed: aim,
      said: words.aim(aim),
      origin: judged.isAimOurs ? ("assumed" as const) : ("measured" as const),
    },
    views: {
      front: viewOf(tree, projections.front, aim, "front"),
      side: viewOf(tree, projections.side, aim, "side"),
    },
    nodes: tree.ids.map((id, row): NodeRow => {
      const why = againstCut(tree, row);
      return {
        id,
        name: judged.nameOf(id),
        branch: tree.axis[row] as number,
        isLegal: why === undefined,
        ...(why === undefined ? {} : { why: words.against(why) }),
      };
    }),
    ...(rowAsked >= 0 ? { node: cutShown(judged, [], rowAsked) } : {}),
    ...(plans || own
      ? {
          plans: {
            ...(plans ?? { tried_n: 0, about_n: 0, isDone: true, said: "", plans: [] }),
            plans: [...(plans?.plans ?? []), ...(own ? [own] : [])],
          },
        }
      : {}),
    proportions: words.height(trunk_mm, asked.low_mm, asked.high_mm, height_mm),
    ...(ask.potAngle === true ? { potAngle: angleSaid(judged, words) } : {}),
    figures: {
      height_mm,
      trunk_mm,
      leafArea_cm2: tree.nodes.reduce((sum, { leaf_cm2 }) => sum + leaf_cm2, 0),
      overlap_frac: planTerms(judged.bench, []).outline,
      warn_frac: judged.warn_frac,
    },
  };
}

function angleSaid({ tree, aim }: Judged, words: TrimPageWords): string {
  const angle = bestPotAngle(tree, formOutline(aim), MOST_TIP_deg);
  return words.potAngle(angle.roll_deg, angle.pitch_deg, angle.overlap_frac, angle.upright_frac);
}

function sketchShown({ sketch }: TrimSlice, words: TrimPageWords) {
  const calipers_mm = sketch?.branches_mm ?? [];
  const asked = trainedHeight(sketch?.trunk_mm ?? 1);
  return {
    said: words.height(sketch?.trunk_mm ?? 1, asked.low_mm, asked.high_mm, sketch?.height_mm ?? 0),
    shares:
      calipers_mm.length > 0
        ? leafShares_frac({ calipers_mm }).map((share, branch) => words.share(branch + 1, share))
        : [],
  };
}

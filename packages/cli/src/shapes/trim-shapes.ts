import type { CutShown, PlanShown, TrimPage } from "@sillwood/bench/crafts/trimming";

/** The stable shape of the page of trimming (docs/cli.md): the engine's own objects may change under it. */
export const trimShape = ({ said, plants, plant, cautions, figures }: TrimPage) => ({
  said,
  plants: plants.map((row) => ({ plant: row.plant, number: row.number, level: row.level, said: row.said })),
  plant: plant
    ? {
        plant: plant.plant,
        number: plant.number,
        level: plant.level,
        said: plant.levelSaid,
        held: plant.held,
        aim: plant.aim ? { ...plant.aim.aimed, said: plant.aim.said, origin: plant.aim.origin } : null,
        nodes: plant.nodes.map(({ id, name, branch, isLegal, why }) => ({
          node: id,
          name,
          branch_n: branch,
          mayCut: isLegal,
          why: why ?? null,
        })),
        cut: plant.node ? cutShape(plant.node) : null,
        plans: plant.plans
          ? {
              tried_n: plant.plans.tried_n,
              about_n: plant.plans.about_n,
              done: plant.plans.isDone,
              plans: plant.plans.plans.map(planShape),
            }
          : null,
        bends: plant.bends,
        proportions: plant.proportions ?? null,
        potAngle: plant.potAngle ?? null,
        figures: plant.figures,
      }
    : null,
  cautions,
  figures,
});

const cutShape = ({ letter, node, gone, isLegal, why, said, goneNodes, figures, draft }: CutShown) => ({
  letter: letter ?? null,
  node,
  gone,
  mayCut: isLegal,
  why: why ?? null,
  said,
  goneNodes,
  ...figures,
  draft: { kind: draft.kind, on: draft.on, data: draft.data },
});

const planShape = (plan: PlanShown) => ({
  plan: plan.key,
  said: plan.said,
  taken_frac: plan.taken_frac,
  beatsNothing_frac: plan.beatsNothing_frac,
  warning: plan.warning ?? null,
  cuts: plan.cuts.map(cutShape),
  goneNodes: plan.goneNodes,
  pluck: plan.pluck,
  weeks: plan.weeks.map(({ week, said }) => ({ week, said })),
  draft: plan.draft ? { kind: plan.draft.kind, on: plan.draft.on, data: plan.draft.data } : null,
});

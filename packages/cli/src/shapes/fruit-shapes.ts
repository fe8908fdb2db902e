import type { CohortSaid, FruitPage, PlantFruit, PlantLine } from "@sillwood/bench/crafts/fruiting";
import { iso } from "./instants.ts";
import { workingShape } from "./page-shapes.ts";

/** The stable shape of the page of fruit (docs/cli.md): the engine's own objects may change under it. */
export const fruitShape = (page: FruitPage) => ({
  said: page.said,
  open: {
    flowers_n: page.open.flowers_n,
    said: page.open.said,
    how: page.open.how,
    due_n: page.open.due_n,
    plants: page.open.plants.map((each) => ({ ...line(each), open_n: each.open_n, due: each.isDue })),
    drafts: page.open.acts.map(({ kind, on, data }) => ({ kind, on: [on], data })),
  },
  thin: page.thin.map(line),
  pick: page.pick.map((each) => ({
    ...line(each),
    fruits_n: each.fruits_n,
    tag: each.tag,
    seen: each.isSeen,
    draft: { kind: each.act.kind, on: [each.plant], data: each.act.data },
  })),
  calendar: page.calendar.map((each) => ({
    ...line(each),
    fruits_n: each.fruits_n,
    dates: each.dates_ms.map(iso),
  })),
  stuck: page.stuck.map(line),
  plants: page.plants.map(line),
  plant: page.plant ? plantShape(page.plant) : null,
  cautions: page.cautions.map(({ key, said }) => ({ key, said })),
  figures: page.figures,
});

const line = ({ plant, number, kind, said }: PlantLine) => ({ plant, number, kind, said });

const cohort = (each: CohortSaid) => ({
  tag: each.tag,
  branch: each.branch ?? null,
  fruits_n: each.fruits_n,
  state: each.state,
  said: each.said,
  dates: each.dates_ms.map(iso),
  working: workingShape(each.working),
});

const plantShape = (plant: PlantFruit) => ({
  ...line(plant),
  aim: plant.aim,
  keep_n: plant.keep_n,
  has_n: plant.has_n ?? null,
  feeds: { said: plant.feeds.said, working: workingShape(plant.feeds.working) },
  total: plant.totalSaid,
  keeping: plant.trySaid ?? null,
  branches: plant.branches.map(({ act, ...each }) => ({
    branch: each.branch,
    said: each.said,
    keep_n: each.keep_n,
    has_n: each.has_n ?? null,
    open_n: each.open_n ?? null,
    bears_n: each.bears_n,
    leaf_frac: each.leaf_frac,
    draft: act ? { kind: act.kind, on: [plant.plant], data: act.data } : null,
  })),
  price: plant.priceSaid,
  price_frac: plant.price_frac,
  set: { said: plant.set.said, working: workingShape(plant.set.working) },
  dropped: plant.droppedSaid ?? null,
  ripe: plant.ripe.map(cohort),
  pickStage: plant.pickStage,
  pick: plant.pickSaid,
  early: plant.earlySaid,
  store: plant.storeSaid,
  heat: plant.heatSaid,
  seed: plant.seedSaid,
  lots: plant.lots,
});

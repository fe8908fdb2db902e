import type { ComponentType, LazyExoticComponent } from "react";
import { craftPages } from "../crafts/index.ts";
import { onDemand } from "../words/on-demand.ts";

/**
 * Every page of the house by its path. The round comes with the first script; everything else is fetched when it is
 * wanted (from the cache, offline) so that the first screen stays light.
 */
export interface Page {
  readonly path: string;
  readonly screen: LazyExoticComponent<ComponentType>;
}

const page = <Name extends string>(
  path: string,
  load: () => Promise<{ readonly [Key in Name]: ComponentType }>,
  name: Name,
): Page => ({ path, screen: onDemand(async () => (await load())[name]) });

export const pages: readonly Page[] = [
  page("/walk/:bench", () => import("./walk/walk.tsx"), "Walk"),
  page("/whole/:bench", () => import("./walk/whole-bench.tsx"), "WholeBench"),
  page("/weigh/:bench", () => import("./weigh/weigh-run.tsx"), "WeighRun"),
  page("/plant/:plant", () => import("./plant/plant-screen.tsx"), "PlantScreen"),
  page("/print/round", () => import("../print/round-sheet.tsx"), "RoundSheet"),
  page("/print/labels", () => import("../print/labels.tsx"), "Labels"),
  page("/print/plant/:plant", () => import("../print/plant-card.tsx"), "PlantCard"),
  page("/first", () => import("../pages/first-run/first-run.tsx"), "FirstRun"),
  page("/plants", () => import("../pages/plants/plants.tsx"), "Plants"),
  page("/plants/list", () => import("../pages/read-list/read-list.tsx"), "ReadList"),
  page("/new/:kind", () => import("../pages/plants/new-thing.tsx"), "NewThing"),
  page("/bench/new", () => import("../pages/benches/new-bench.tsx"), "NewBench"),
  page("/bench/:bench/change", () => import("../pages/benches/change-bench.tsx"), "ChangeBench"),
  page("/bench/:bench", () => import("../pages/benches/bench-screen.tsx"), "BenchScreen"),
  page("/benches", () => import("../pages/benches/benches-screen.tsx"), "Benches"),
  page("/desk", () => import("../pages/desk/desk.tsx"), "Desk"),
  page("/book", () => import("../pages/book/log-screen.tsx"), "LogScreen"),
  page("/book/take", () => import("../pages/book/take-out.tsx"), "TakeOut"),
  page("/write/:kind?/:on?", () => import("../pages/book/write-entry.tsx"), "WriteEntry"),
  page("/right/:entry", () => import("../pages/book/put-right.tsx"), "PutRight"),
  page("/wrong", () => import("../pages/wrong/wrong-which.tsx"), "WrongWhich"),
  page("/wrong/:plant", () => import("../pages/wrong/wrong-screen.tsx"), "WrongScreen"),
  page("/reckon", () => import("../pages/reckoner/reckoner.tsx"), "Reckoner"),
  page("/reckon/:sum", () => import("../pages/reckoner/sum-screen.tsx"), "SumScreen"),
  page("/away", () => import("../pages/away/away-screen.tsx"), "Away"),
  page("/supplies", () => import("../pages/supplies/supplies-screen.tsx"), "Supplies"),
  page("/settings", () => import("../pages/settings/settings-screen.tsx"), "SettingsScreen"),
  page("/settings/assumed", () => import("../pages/settings/assumed-screen.tsx"), "AssumedScreen"),
  page("/settings/people", () => import("../pages/people/people-screen.tsx"), "PeopleScreen"),
  page("/pair/:code?", () => import("../pages/people/pair-screen.tsx"), "PairScreen"),
  page("/settings/cautions", () => import("../pages/settings/cautions-screen.tsx"), "CautionsScreen"),
  page("/sheet/:code", () => import("../print/type-back.tsx"), "TypeBack"),
  ...craftPages,
];

export const hasPage = (path: string): boolean => pages.some((one) => one.path === path);

/** Words of the lowest strip, in their order; `holds` are the paths under which the word stands out. */
export const stripPlaces: readonly {
  readonly name: "round" | "plants" | "desk" | "book" | "number";
  readonly to: string;
  readonly holds: readonly string[];
}[] = [
  { name: "round", to: "/", holds: ["/", "/walk", "/weigh", "/whole", "/print/round", "/sheet"] },
  { name: "plants", to: "/plants", holds: ["/plants", "/plant", "/new", "/first", "/bench", "/benches"] },
  {
    name: "desk",
    to: "/desk",
    holds: ["/desk", "/craft", "/wrong", "/reckon", "/away", "/supplies", "/settings"],
  },
  { name: "book", to: "/book", holds: ["/book", "/write", "/right"] },
  { name: "number", to: "/number", holds: ["/number"] },
];

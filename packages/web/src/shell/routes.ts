import { type ComponentType, type LazyExoticComponent, lazy } from "react";

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
): Page => ({ path, screen: lazy(async () => ({ default: (await load())[name] })) });

export const pages: readonly Page[] = [
  page("/walk/:bench", () => import("./walk/walk.tsx"), "Walk"),
  page("/whole/:bench", () => import("./walk/whole-bench.tsx"), "WholeBench"),
  page("/weigh/:bench", () => import("./weigh/weigh-run.tsx"), "WeighRun"),
  page("/plant/:plant", () => import("./plant/plant-screen.tsx"), "PlantScreen"),
  page("/print/round", () => import("../print/round-sheet.tsx"), "RoundSheet"),
  page("/print/labels", () => import("../print/labels.tsx"), "Labels"),
  page("/print/plant/:plant", () => import("../print/plant-card.tsx"), "PlantCard"),
  page("/sheet/:code", () => import("../print/type-back.tsx"), "TypeBack"),
];

export const hasPage = (path: string): boolean => pages.some((one) => one.path === path);

/** Words of the lowest strip, in their order; `holds` are the paths under which the word stands out. */
export const stripPlaces: readonly {
  readonly name: "round" | "plants" | "desk" | "book" | "number";
  readonly to: string;
  readonly holds: readonly string[];
}[] = [
  { name: "round", to: "/", holds: ["/", "/walk", "/weigh", "/whole", "/print/round", "/sheet"] },
  { name: "number", to: "/number", holds: ["/number"] },
];

import type { Mix } from "@sillwood/science/feed";
import { stageTargets } from "@sillwood/science/feed";
import type { Working } from "../../working/working.ts";
import type { World } from "../craft.ts";
import { aimKey, type FedElement } from "./assumptions.ts";
import type { MixElement } from "./page-shape.ts";
import type { Wanted } from "./recipe.ts";
import type { FeedSlice } from "./slice.ts";
import { feedPageWords } from "./words-page.ts";

/** How the mix came about: what was aimed at, what comes out, what it rests on. */
export function recipeWorking(
  mix: Mix,
  wanted: Wanted,
  elements: readonly MixElement[],
  world: World<FeedSlice>,
): Working {
  const { say } = world;
  const words = feedPageWords(say).working;
  const { group } = wanted;
  const number = (value: number, digits_n = 0) => say.number(value, digits_n);
  return {
    title: words.title,
    result: say.list(
      mix.doses.map(
        ({ steps_n, id }) =>
          `${steps_n} × ${wanted.bottles.find(({ supply }) => supply.id === id)?.supply.name ?? id}`,
      ),
    ),
    unit: "",
    origin: "assumed",
    formula: words.formula,
    sum: words.sum(number(mix.misfit, 4)),
    inputs: [
      ...elements.map(({ of, value_mg_L, low_mg_L, high_mg_L }) => ({
        name: of,
        said: words.aimed(
          number(world.assumed(aimKey(of as FedElement, group.stage)) * group.strength_frac),
          number(low_mg_L),
          number(high_mg_L),
          number(value_mg_L),
        ),
        value: value_mg_L,
        unit: "mg/L",
        origin: "assumed" as const,
        from: stageTargets[group.stage].evidence,
        assumption: aimKey(of as FedElement, group.stage),
      })),
      ...wanted.bottles
        .filter(({ supply }) => mix.doses.some(({ id }) => id === supply.id))
        .map(({ supply }) => ({
          name: supply.name,
          said: words.label,
          unit: "",
          origin: "measured" as const,
          from: supply.readAt_ms === undefined ? words.label : say.day(supply.readAt_ms, world.now_ms),
        })),
    ],
    source: words.source,
    notes: [words.minimum],
  };
}

import type { PlantId } from "@sillwood/bench/book";
import { type Desk, logPage, plantPage, weighingRun } from "@sillwood/bench/pages";
import { pageAnswers } from "../pages/answers/index.ts";
import { quantile } from "../parts/quantile.ts";
import type { FirstQuestion } from "./answers.ts";
import type { Answering, AnswerOf, ArgsOf, FoundPlant, QuestionName } from "./questions.ts";

const DAY_ms = 86_400_000;

/** How the engine answers what is asked behind the first screen. */
export const laterAnswers: {
  readonly [Name in Exclude<QuestionName, FirstQuestion>]: (
    desk: Desk,
    args: ArgsOf<Name>,
  ) => Answering<AnswerOf<Name>>;
} = {
  ...pageAnswers,
  plant: (desk, { plant }) => {
    const page = plantPage(desk, plant);
    return page ? { ...page, isMediumUnknown: desk.facts(plant)?.medium === "unknown" } : null;
  },
  number: findNumber,
  weighing: (desk, { bench, onlyFew }) => weighingRun(desk, bench, onlyFew ?? false),
  ranges: (desk, { plants }) =>
    Object.fromEntries(
      plants.flatMap((plant) => {
        const dates_ms = desk.view(plant as PlantId)?.outlooks.find(({ outlook }) => outlook.line)?.outlook
          .line?.dates_ms;
        return dates_ms?.length
          ? [[plant, (quantile(dates_ms, 0.9) - quantile(dates_ms, 0.1)) / DAY_ms]]
          : [];
      }),
    ),
  log: logPage,
};

/** Plants that carry a number, also the second of two that were given the same one. */
function findNumber(desk: Desk, { number }: ArgsOf<"number">): readonly FoundPlant[] {
  return desk.ledger.plants().flatMap((plant) => {
    if (desk.facts(plant)?.number !== number) return [];
    const page = plantPage(desk, plant);
    return page
      ? [
          {
            plant,
            number: page.number,
            kind: page.kind,
            ...(page.ended === undefined ? {} : { ended: page.ended }),
          },
        ]
      : [];
  });
}

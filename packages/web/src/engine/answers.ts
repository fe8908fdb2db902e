import type { Desk } from "@sillwood/bench/pages";
import { theRound } from "@sillwood/bench/round";
import type { Answering, AnswerOf, ArgsOf, Person, QuestionName } from "./questions.ts";

/** What the first screen asks: who is here, and the round. */
export type FirstQuestion = "round" | "people";

const firstAnswers: {
  readonly [Name in FirstQuestion]: (desk: Desk, args: ArgsOf<Name>) => Answering<AnswerOf<Name>>;
} = {
  round: (desk, { minutes, otherEnd }) =>
    theRound(desk, { ...(minutes === undefined ? {} : { minutes }), ...(otherEnd ? { otherEnd } : {}) }),
  people: ({ ledger }): readonly Person[] =>
    [...ledger.house().people.roles].map(([id, role]) => ({ id, role })),
};

const isFirst = (name: QuestionName): name is FirstQuestion => name in firstAnswers;

/** How the engine answers all else comes (from the cache, offline) with the first such question, or once a first screen stands. */
export const loadLater = () => import("./later-answers.ts");

/** The answer from a desk that stands at the asked moment. */
export async function answerAt<Name extends QuestionName>(
  desk: Desk,
  name: Name,
  args: ArgsOf<Name>,
): Promise<AnswerOf<Name>> {
  const answers = isFirst(name) ? firstAnswers : (await loadLater()).laterAnswers;
  const answer = answers[name as keyof typeof answers] as (
    desk: Desk,
    args: ArgsOf<Name>,
  ) => Answering<AnswerOf<Name>>;
  return answer(desk, args);
}

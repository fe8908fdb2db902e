import type { AwayPlan } from "@sillwood/bench/crafts";
import type { Desk } from "@sillwood/bench/pages";
import { wrap } from "./wrap.ts";

const REMEDIES_n = 3;

/** The plan of an absence as lines: least lasting first, what helps with its sum, the sitter's sheet by day. */
export function awayText(plan: AwayPlan, desk: Desk, width_n: number, sitterOnly: boolean): string {
  const german = desk.say.language === "de";
  const words = german
    ? {
        sitter: "Für die Vertretung",
        back: "Am Tag der Rückkehr",
        others: (n: number) => `${n} weitere halten durch.`,
      }
    : {
        sitter: "For the sitter",
        back: "On the day of return",
        others: (n: number) => `${n} more will last.`,
      };
  const sitter = [
    words.sitter,
    ...plan.sitterHow.flatMap((line) => wrap(line, width_n, 2, 2)),
    ...sitterDays(plan, desk, width_n),
  ];
  if (sitterOnly) return sitter.join("\n");
  const telling = plan.plants.filter(({ remedies }) => remedies.length > 0);
  const plants = telling.flatMap(({ said, remedies }) => [
    ...wrap(said, width_n, 2, 4),
    ...remedies
      .slice(0, REMEDIES_n)
      .flatMap((remedy) => [...wrap(`${remedy.said}`, width_n, 6, 8), ...wrap(remedy.sum, width_n, 10, 12)]),
  ]);
  const rest_n = plan.plants.length - telling.length;
  return [
    ...wrap(plan.said, width_n, 0, 0),
    "",
    ...plants,
    ...(rest_n > 0 ? [`  ${words.others(rest_n)}`] : []),
    "",
    ...sitter,
    ...(plan.back.length > 0
      ? ["", words.back, ...plan.back.flatMap(({ said }) => wrap(said, width_n, 2, 4))]
      : []),
  ].join("\n");
}

function sitterDays(plan: AwayPlan, desk: Desk, width_n: number): string[] {
  const lines: string[] = [];
  let day = "";
  for (const { at_ms, said } of plan.sitter) {
    const today = desk.say.day(at_ms);
    if (today !== day) lines.push(`  ${today}`);
    day = today;
    lines.push(...wrap(said, width_n, 4, 6));
  }
  return lines;
}

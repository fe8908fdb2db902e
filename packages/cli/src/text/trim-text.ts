import type { CutShown, PlanShown, TrimPage } from "@sillwood/bench/crafts/trimming";
import { wrap } from "./wrap.ts";

/** The page of trimming as text: what is known, what is held, then plan after plan with its cuts and the last week. */
export function trimText(page: TrimPage, width_n: number): string {
  const { plant } = page;
  if (!plant)
    return [
      ...wrap(page.said, width_n),
      ...page.plants.flatMap(({ number, kind, said }) => wrap(`${number}  ${kind}: ${said}`, width_n, 2, 4)),
    ].join("\n");
  const line = (said: string | undefined) => (said ? wrap(said, width_n) : []);
  const blocks = [
    [
      ...wrap(`${plant.number}  ${plant.kind}: ${plant.levelSaid}`, width_n),
      ...plant.held.flatMap(line),
      ...line(plant.aim?.said),
      ...line(plant.proportions),
      ...line(plant.potAngle),
      ...line(plant.sketch?.said),
      ...(plant.sketch?.shares ?? []).flatMap((said) => wrap(said, width_n, 2, 4)),
      ...plant.bends.flatMap(({ said }) => wrap(said, width_n, 2, 4)),
    ],
    ...(plant.node ? [cutLines(plant.node, width_n)] : []),
    ...(plant.plans?.plans ?? []).map((plan) => planLines(plan, width_n)),
    line(plant.plans?.said),
    page.cautions.flatMap(line),
  ];
  return blocks
    .filter((block) => block.length > 0)
    .map((block) => block.join("\n"))
    .join("\n\n");
}

function planLines(plan: PlanShown, width_n: number): string[] {
  return [
    ...wrap(`${plan.name}: ${plan.said}; ${plan.beats}`, width_n),
    ...(plan.warning === undefined ? [] : wrap(plan.warning, width_n, 2, 2)),
    ...plan.cuts.flatMap((cut) => cutLines(cut, width_n)),
    ...plan.pluck.flatMap((said) => wrap(said, width_n, 2, 4)),
    ...wrap(plan.weeks.at(-1)?.said ?? "", width_n, 2, 4),
  ];
}

const cutLines = (cut: CutShown, width_n: number): string[] => [
  ...wrap(`${cut.letter ?? "-"}  ${cut.said}`, width_n, 2, 5),
  ...(cut.why === undefined ? [] : wrap(cut.why, width_n, 5, 5)),
];

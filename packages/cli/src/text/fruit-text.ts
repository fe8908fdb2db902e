import type { FruitPage, PlantFruit, PlantLine } from "@sillwood/bench/crafts/fruiting";
import type { Desk } from "@sillwood/bench/pages";
import { cliWords } from "../words/words.ts";
import { columns } from "./columns.ts";
import { MARK } from "./marks.ts";
import { wrap } from "./wrap.ts";

/** The page of fruit as text: of one plant everything, of all what is open, to thin, to pick and to come. */
export function fruitText(page: FruitPage, desk: Desk, width_n: number): string {
  const { care } = cliWords(desk.say.language);
  const cares = page.cautions.flatMap(({ said }) => wrap(`${care}: ${said}`, width_n, 0, 2));
  const blocks = page.plant ? plantBlocks(page.plant, width_n) : allBlocks(page, desk, width_n);
  return [...blocks, cares].map((block) => block.join("\n")).join("\n\n");
}

function allBlocks(page: FruitPage, desk: Desk, width_n: number): string[][] {
  const { fruit: words } = cliWords(desk.say.language);
  const { open } = page;
  const part = (title: string, lines: readonly PlantLine[]): string[][] =>
    lines.length === 0
      ? []
      : [
          [
            title,
            ...columns(
              lines.map(({ number, said, kind }) => [number, said, kind]),
              { indent_n: 2, right: [0] },
            ).flatMap((row) => (row.length <= width_n ? [row] : wrap(row.trimStart(), width_n, 2, 6))),
          ],
        ];
  return [
    wrap(page.said, width_n),
    ...(open.plants.length === 0
      ? [wrap(open.said, width_n)]
      : part(open.due_n > 0 ? `${open.said}: ${open.how}` : open.said, open.plants)),
    ...part(words.pick, page.pick),
    ...part(words.thin, page.thin),
    ...part(words.coming, page.calendar),
    ...part(words.stuck, page.stuck),
    ...part(words.plants, page.plants),
  ];
}

function plantBlocks(plant: PlantFruit, width_n: number): string[][] {
  const line = (text: string | undefined) => (text === undefined ? [] : wrap(text, width_n, 2, 4));
  return [
    [
      ...wrap(
        `${plant.number}  ${plant.kind}   ${plant.feeds.said} ${MARK[plant.feeds.working.origin]}`,
        width_n,
      ),
      ...plant.branches.flatMap(({ branch, said }) => line(`${branch}  ${said}`)),
      ...line(plant.totalSaid),
      ...line(plant.trySaid),
      ...line(plant.priceSaid),
    ],
    [...line(plant.set.said), ...line(plant.droppedSaid)],
    ...(plant.ripe.length === 0
      ? []
      : [plant.ripe.flatMap(({ tag, said, working }) => line(`${tag}  ${said} ${MARK[working.origin]}`))]),
    [...line(plant.pickSaid), ...line(plant.earlySaid), ...line(plant.storeSaid)],
    [
      ...line(plant.heatSaid),
      ...line(plant.seedSaid),
      ...plant.lots.flatMap(({ lot, said }) => line(`${lot}: ${said}`)),
    ],
  ];
}

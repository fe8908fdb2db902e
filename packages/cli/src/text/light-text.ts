import type { BenchLight, LightPage, SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Desk } from "@sillwood/bench/pages";
import { cliWords } from "../words/words.ts";
import { columns } from "./columns.ts";
import { MARK } from "./marks.ts";
import { wrap } from "./wrap.ts";

/** The page of light as text: the answer, then bench after bench with a line a spot, lamps, the reading worth most, seats. */
export function lightText(page: LightPage, desk: Desk, width_n: number): string {
  const { light: words, care } = cliWords(desk.say.language);
  const cautions = page.benches.some(({ lamps }) => lamps.length > 0) ? page.cautions : [];
  const blocks: string[][] = [
    wrap(page.said, width_n),
    ...page.benches.map((bench) => benchLines(bench, page, desk, width_n)),
    ...(page.benches.length > 0
      ? [
          [
            words.seats,
            ...wrap(page.seats.said, width_n, 2, 4),
            ...page.seats.swaps.flatMap(({ said }) => wrap(said, width_n, 4, 6)),
          ],
        ]
      : []),
    ...(cautions.length > 0 ? [cautions.flatMap(({ said }) => wrap(`${care}: ${said}`, width_n, 0, 2))] : []),
  ];
  return blocks.map((block) => block.join("\n")).join("\n\n");
}

function benchLines(bench: BenchLight, page: LightPage, desk: Desk, width_n: number): string[] {
  const { light: words } = cliWords(desk.say.language);
  const { advice, timer, worth, unsure } = bench;
  const line = (text: string | undefined) => (text ? wrap(text, width_n, 2, 4) : []);
  return [
    `${bench.name}   ${bench.windowSaid}`,
    ...line(bench.said),
    ...columns(
      bench.spots.map((spot) => spotCells(spot, desk)),
      { indent_n: 2, right: [2] },
    ).flatMap((row) => wrapRow(row, width_n)),
    // All benches are an overview; what was missed and how long a pot stood the same way round belongs to one bench.
    ...(page.benches.length > 1 ? [] : bench.spots).flatMap(({ number, debtSaid, turnSaid }) =>
      [debtSaid, turnSaid].flatMap((said) => (said ? wrap(`${number}: ${said}`, width_n, 4, 6) : [])),
    ),
    ...line(timer && `${words.timer}: ${timer.said} ${MARK[timer.origin]}`),
    ...line(advice?.said),
    ...line(advice?.waitSaid),
    ...line(advice?.shortSaid),
    ...line((advice?.energy ?? bench.energy)?.said),
    ...line(unsure?.said),
    ...(unsure?.cases ?? []).flatMap(({ said, mid_mol_m2_d }) =>
      wrap(`${said}: ${desk.say.number(mid_mol_m2_d, 1)}`, width_n, 4, 6),
    ),
    ...line(unsure?.ask),
    ...line(worth?.said),
    ...(bench.read.length > 0 ? [`  ${words.read}`] : []),
    ...bench.read.flatMap(({ at_ms, spotSaid, said }) =>
      wrap(`${desk.say.day(at_ms, page.now_ms)}, ${spotSaid}: ${said}`, width_n, 4, 6),
    ),
  ];
}

/** Spot, pot, light, its range, what is wanted, and how that goes through the year. */
function spotCells(spot: SpotLit, desk: Desk): readonly string[] {
  const { light: words } = cliWords(desk.say.language);
  const number = (value: number) => desk.say.number(value, 1);
  const { light, need } = spot;
  return [
    spot.name,
    spot.number ?? words.free,
    number(light.mid_mol_m2_d),
    `${MARK[light.origin]} ${words.range(number(light.low_mol_m2_d), number(light.high_mol_m2_d))}`,
    need ? words.wants(number(need.min_mol_m2_d)) : "",
    spot.short?.said ?? "",
  ];
}

/** A row that is too long goes on under its own text. */
const wrapRow = (row: string, width_n: number): readonly string[] =>
  row.length <= width_n ? [row] : wrapLate(row, width_n);

/** Columns stand by runs of blanks, which a plain wrap would close: only what is beyond the width is wrapped. */
function wrapLate(row: string, width_n: number): readonly string[] {
  const cut = row.lastIndexOf(" ", width_n);
  if (cut <= 12) return [row];
  return [row.slice(0, cut).trimEnd(), ...wrap(row.slice(cut + 1), width_n, 8, 8)];
}

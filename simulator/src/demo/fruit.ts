import type { LocalDay } from "../nursery/calendar.ts";
import { ROLES, SHELF, STORY } from "./cast.ts";
import { evening, grower, type Hands, type Pending } from "./setting-up.ts";

/** Open flowers that the grower counted the evening before: nine on six plants of the shelf. */
const OPEN: readonly number[] = [2, 1, 2, 1, 1, 2];
/** A shelf plant whose branches were named in half a minute: thickness mm, length cm, lean, leaves, fruits counted. */
const BRANCHED = 105;
const BRANCHES = [
  ["A", 5, 12, 55, 34, 5],
  ["B", 4.5, 11, 40, 22, 2],
  ["C", 4, 12, 25, 20, 4],
  ["D", 0.8, 12, 10, 6, 2],
] as const;
const DAY_ms = 86_400_000;

/** What the grower wrote of flowers and fruit: what is open, what hangs where, what was tagged, picked and kept for seed. */
export function fruitWritten(hands: Hands, days: readonly LocalDay[]): Pending[] {
  const last = days.length - 1;
  const plant = (number: number) => hands.names.plant(ROLES.findIndex((role) => role.number === number));
  const write = (
    before_d: number,
    kind: string,
    number: number,
    data: Parameters<typeof grower>[4],
    hour: number,
  ) => grower(hands, evening(days, Math.max(1, last - before_d), hour), kind, [plant(number)], data);
  /** The date so many days before the demo day. */
  const dateOf = (before_d: number): string =>
    new Date(Date.parse(`${(days[last] as LocalDay).date}T12:00:00Z`) - before_d * DAY_ms)
      .toISOString()
      .slice(0, 10);
  const shelf = ROLES.filter(({ bench, number }) => bench === SHELF && number !== STORY.died).map(
    ({ number }) => number,
  );
  const [first = 0, second = 0] = shelf;
  return [
    ...OPEN.map((open_n, each) =>
      write(1, "fruiting.flowered", shelf[each] as number, { open_n, buds_n: open_n * 3 }, 18.5 + each / 60),
    ),
    ...BRANCHES.flatMap(([branch, thickness_mm, length_cm, lean_deg, leaves_n, fruits_n], each) => [
      write(
        5,
        "plant.branched",
        BRANCHED,
        { branch, thickness_mm, length_cm, lean_deg, leaves_n },
        19.4 + each / 60,
      ),
      write(2, "fruiting.counted", BRANCHED, { branch, fruits_n }, 18.2 + each / 60),
    ]),
    write(25, "fruiting.tagged", 127, { fruits_n: 3, tag: "red", branch: "A", openedOn: dateOf(34) }, 19),
    write(60, "fruiting.tagged", first, { fruits_n: 2, tag: "blue", openedOn: dateOf(62) }, 19),
    write(9, "fruiting.coloured", first, { tag: "blue", colour: "turning" }, 19.2),
    write(1, "fruiting.coloured", first, { tag: "blue", colour: "ripe" }, 18.9),
    write(40, "fruiting.tagged", second, { fruits_n: 4, tag: "white", openedOn: dateOf(43) }, 19.1),
    write(12, "fruiting.picked", 123, { fruits_n: 3, mass_g: 21, colour: "ripe" }, 18.6),
    write(11, "fruiting.seeded", 123, { lot: "123-1", fruits_n: 1, seeds_n: 40, kept: "none" }, 18.7),
  ];
}

import type { LocalDay } from "../nursery/calendar.ts";
import { COLD, ROLES, STORY } from "./cast.ts";
import { evening, grower, type Hands, type Pending } from "./setting-up.ts";

/** Under the warm lamps one plant was looked at well for long: it may go. */
const READY = 140;
/** Days before the demo day on which the seven of the cold room, and that one, were set apart. */
const CAME_d: Readonly<Record<number, number>> = {
  131: 110,
  132: 32,
  134: 75,
  135: 75,
  136: 60,
  137: 60,
  138: 32,
  140: 110,
};
/** One of them had aphids, found and treated. */
const APHIDS = { number: 134, found_d: 45, sprays_d: [44, 40, 36] } as const;
/** The last looks were on the Saturday before. */
const LAST_LOOK_d = 3;

/** What the grower wrote of the plants that are kept apart: when they came, weekly looks, cards, a course against aphids. */
export function scoutingWritten(hands: Hands, days: readonly LocalDay[]): Pending[] {
  const last = days.length - 1;
  const write = (
    before_d: number,
    kind: string,
    number: number,
    data: Parameters<typeof grower>[4],
    hour: number,
  ) => grower(hands, evening(days, Math.max(1, last - before_d), hour), kind, [plant(number)], data);
  const plant = (number: number) => hands.names.plant(ROLES.findIndex((role) => role.number === number));
  const apart = [
    ...ROLES.filter(
      ({ bench, number }) => bench === COLD && number !== STORY.sold && number !== STORY.died,
    ).map(({ number }) => number),
    READY,
  ];
  // Windows stay shut in winter and have nets: this grower trusts the rooms more than we do.
  const trusted = grower(hands, evening(days, 20, 20.9), "assumption.set", ["book"], {
    key: "pestArrives_per_d",
    value: 0.0002,
  });
  const written = apart.flatMap((number, place) => {
    const came_d = CAME_d[number] ?? 40;
    const minute = (kind: number) => 20.3 + place * 0.03 + kind * 0.006;
    const looks: Pending[] = [];
    for (let before_d = LAST_LOOK_d; before_d < came_d; before_d += 7) {
      const isFind = number === APHIDS.number && before_d === APHIDS.found_d;
      looks.push(
        write(
          before_d,
          "scouting.looked",
          number,
          {
            way: "lens",
            tips_n: 3,
            leaves_n: number === READY ? 12 : 6,
            stem: true,
            found: isFind ? [{ pest: "aphid", count_n: 7 }] : [],
          },
          minute(1),
        ),
      );
      if (number === READY || place % 2 === 0)
        looks.push(write(before_d, "scouting.looked", number, { way: "tap", found: [] }, minute(2)));
      if (number === READY || number === 136)
        looks.push(write(before_d, "scouting.card", number, { out_d: 7, cards_n: 1, caught: [] }, minute(3)));
    }
    const sprays =
      number === APHIDS.number
        ? APHIDS.sprays_d.map((before_d) =>
            write(
              before_d,
              "scouting.treated",
              number,
              {
                tool: "soap",
                against: ["aphid"],
                product: "Rinsewell soap",
                registration: "invented 12-4",
                strength_frac: 0.02,
                volume_mL: 400,
                reentry_h: 12,
                preharvest_d: 1,
                coverage_frac: 0.85,
                course_n: 3,
                every_d: 4,
              },
              minute(4),
            ),
          )
        : [];
    return [
      write(
        came_d,
        "scouting.arrived",
        number,
        {
          from: number === 138 ? "bought" : number === READY ? "own room" : "outdoors",
          washed: number !== 138,
        },
        minute(0),
      ),
      ...looks,
      ...sprays,
    ];
  });
  return [trusted, ...written];
}

import type { LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { drawnPlant } from "../shape/drawn-plant.ts";
import { ROLES } from "./cast.ts";
import { evening, grower, type Hands, type Pending } from "./setting-up.ts";

/** Traced before the winter's trim: a usual one and a large one; a third was only sketched. */
const TRACED = [
  { number: 127, leaves_n: 34, before_d: 6 },
  { number: 123, leaves_n: 150, before_d: 5 },
] as const;
const SKETCHED = 125;

/** What the grower wrote of the shape of plants: two traced over photos that are not kept any more, one sketched in half a minute. */
export function shapesWritten(hands: Hands, days: readonly LocalDay[], chance: Chance): Pending[] {
  const last = days.length - 1;
  const write = (
    number: number,
    before_d: number,
    kind: string,
    data: Parameters<typeof grower>[4],
    hour = 20.4,
  ) => {
    const key = ROLES.findIndex((role) => role.number === number);
    return key < 0
      ? []
      : [grower(hands, evening(days, last - before_d, hour), kind, [hands.names.plant(key)], data)];
  };
  return [
    ...TRACED.flatMap(({ number, leaves_n, before_d }) => {
      const nodes = drawnPlant(chance.under(`plant ${number}`), leaves_n).map((joint) => ({ ...joint }));
      return write(number, before_d, "trimming.traced", {
        nodes,
        distance_mm: 900,
        focal_px: 1444,
        frontFaces_deg: 180,
        error_mm: 1.6,
        unseen_n: number === 123 ? 2 : 0,
      });
    }),
    ...write(127, 5, "trimming.aimed", { form: "dome", top_mm: 150, foot_mm: 50, width_mm: 150 }, 20.5),
    ...write(SKETCHED, 4, "trimming.sketched", {
      height_mm: 190,
      trunk_mm: 11,
      branches_mm: [6, 5, 4],
      leaves_n: 58,
    }),
  ];
}

import type { LocalDay } from "../nursery/calendar.ts";
import { dayAfter } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { countLeaves } from "../nursery/measure.ts";
import type { Tended } from "../nursery/tend.ts";
import { ROLES, SHELF, SILL, SITE, STORY, SUPPLIES } from "./cast.ts";
import { STORY_DAYS } from "./pots.ts";
import { evening, grower, type Hands, type Pending } from "./setting-up.ts";

/** Free places at the ends of the benches, for the two that are moved. */
const FREE_ON_SILL = 13;
const FREE_ON_SHELF = 20;

/** What happens to single plants, batches and supplies over the months, as the grower wrote it in the evening. */
export function stories(
  hands: Hands,
  days: readonly LocalDay[],
  tended: readonly Tended[],
  chance: Chance,
): Pending[] {
  const plant = (number: number) => [hands.names.plant(ROLES.findIndex((role) => role.number === number))];
  const write = (
    day: number,
    kind: string,
    on: readonly string[],
    data: Parameters<typeof grower>[4],
    hour = 19.2,
  ) => grower(hands, evening(days, day, hour), kind, on, data);
  const last = days.length - 1;
  const { toSill_d, released_d, sold_d, rots_d, died_d, repotted_d, trims_d } = STORY_DAYS;
  const spongy = hands.book.name(evening(days, 1));
  return [
    ...supplies(hands, days, spongy),
    write(9, "batch.lost", [hands.batches.late], { count_n: 4, why: "damped off" }),
    write(27, "batch.lost", [hands.batches.late], { count_n: 1, why: "knocked off the tray" }),
    write(31, "batch.split", [hands.batches.late], {
      into: hands.book.name(evening(days, 31)),
      name: "Late tray, potted on",
      count_n: 10,
    }),
    write(toSill_d, "plant.moved", plant(STORY.toSill), { to: hands.names.spot(SILL, FREE_ON_SILL) }),
    write(released_d, "plant.moved", plant(STORY.released), { to: hands.names.spot(SHELF, FREE_ON_SHELF) }),
    write(sold_d, "plant.ended", plant(STORY.sold), { how: "sold" }, 14),
    write(rots_d + 2, "plant.noted", plant(STORY.died), {
      text: "Stem base soft and brown, smells of cellar. Roots next.",
    }),
    write(died_d, "plant.ended", plant(STORY.died), { how: "died" }, 9),
    write(repotted_d, "plant.potted", plant(STORY.repotted), {
      pot: { form: "round", top_cm: 14, depth_cm: 10 },
      medium: "spongy",
    }),
    write(repotted_d, "supply.used", [spongy], { amount: 1100, why: `repotting ${STORY.repotted}` }, 19.3),
    ...STORY.trimmed.flatMap((number, i) => {
      const day = trims_d[i] as number;
      const key = ROLES.findIndex((role) => role.number === number);
      const pot = tended[key]?.pot;
      return [
        write(
          day,
          "plant.noted",
          plant(number),
          { text: "Cut back to the second node all round, about a third of the leaves." },
          19.1,
        ),
        ...(pot
          ? [
              write(
                day,
                "plant.measured",
                plant(number),
                { ...countLeaves({ ...pot, leafArea_m2: pot.leafArea_m2 * 0.7 }, chance) },
                19.2,
              ),
            ]
          : []),
      ];
    }),
    write(55, "plant.measured", plant(127), { height_cm: 24, caliper_mm: 9, stage: "in flower" }),
    write(74, "plant.measured", plant(123), { height_cm: 27, caliper_mm: 11, stage: "in fruit" }),
    write(110, "plant.noted", plant(129), { text: "Leans to the glass; turned a quarter." }),
    write(last - 6, "plant.noted", plant(STORY.repellent), {
      text: "Water runs off the top and down the wall; the middle stays pale.",
    }),
    leftByHelper(hands, days, last - 20),
    write(last - 2, "watering.looked", plant(STORY.rotten), { look: "drooping", yes: true }, 8.15),
    write(last - 2, "watering.looked", plant(STORY.rotten), { look: "heavy", yes: true }, 8.16),
    write(
      last - 2,
      "round.left",
      plant(STORY.rotten),
      { text: "droops, pot is heavy", case: ["droops", "heavy"] },
      8.2,
    ),
  ];
}

/** The helper was not sure and said so. */
function leftByHelper(hands: Hands, days: readonly LocalDay[], day: number): Pending {
  const at_ms = evening(days, day, 7.3);
  const on = [hands.names.plant(ROLES.findIndex((role) => role.number === 128))];
  return {
    typed_ms: at_ms,
    act: () => {
      const data = { task: "watering:water", reason: "not sure" };
      hands.book.write({
        kind: "round.skipped",
        on,
        data,
        at_ms,
        by: hands.helper.id,
        device: hands.helper.device,
      });
      return undefined;
    },
  };
}

function supplies(hands: Hands, days: readonly LocalDay[], spongy: string): Pending[] {
  return SUPPLIES.map((supply, i) => {
    const day = i === 0 ? 2 : 4 + i * 17;
    const { name, what, amount, unit, price_minor } = supply;
    const on = [i === 0 ? spongy : hands.book.name(evening(days, day))];
    return grower(hands, evening(days, day, 20), "supply.bought", on, {
      name,
      what,
      amount,
      unit,
      price_minor,
      currency: SITE.currency,
      ...("lot" in supply ? { lot: supply.lot } : {}),
      ...("expiresAfter_d" in supply
        ? { expires: dayAfter((days[day] as LocalDay).date, supply.expiresAfter_d) }
        : {}),
    });
  });
}

import type { LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { COLD, ROLES, SHELF, SILL, STORY } from "./cast.ts";
import { evening, grower, type Hands, type Pending } from "./setting-up.ts";

/** Three strips end to end over the lamp shelf; its pots get about 190 µmol/m²s, fourteen hours a day. */
const STRIPS_along_m = [-1.2, 0, 1.2] as const;
const SHELF_umol_m2_s = 190;
/** What of an evenly grey sky reaches the pots of the cold room: its panes pass 0.7, and they see a fifth of the sky. */
const COLD_ratio = 0.7 * 0.2;
/** In flower, in fruit or in leaf still, when the others of both windows are cut back and rest. */
const AWAKE: ReadonlySet<number> = new Set([123, 127, STORY.toSill]);

/**
 * What the grower wrote of light: the window of the cold room is drawn and was read once inside and outside, the lamps and their
 * timer are written, electricity has a price. Of the south sill only the direction is known.
 */
export function lightWritten(hands: Hands, days: readonly LocalDay[], chance: Chance): Pending[] {
  const { names } = hands;
  const write = (
    day: number,
    kind: string,
    on: readonly string[],
    data: Parameters<typeof grower>[4],
    hour = 20.1,
  ) => grower(hands, evening(days, day, hour), kind, on, data);
  const last = days.length - 1;
  const onBenches = (...benches: readonly number[]) =>
    ROLES.flatMap(({ number, bench }, key) =>
      benches.includes(bench) && number !== STORY.died && !AWAKE.has(number) ? [names.plant(key)] : [],
    );
  const shelf = names.bench(SHELF);
  const cold = names.bench(COLD);
  return [
    ...STRIPS_along_m.map((along_m, i) =>
      write(1, "bench.lamp", [shelf], {
        lamp_n: i + 1,
        form: "strip",
        source: "white LED",
        length_m: 1.15,
        width_m: 0.06,
        power_W: 58,
        efficacy_umol_J: 2.4,
        above_m: 0.3,
        along_m,
        fromGlass_m: 0.25,
      }),
    ),
    write(1, "bench.timer", [shelf], { from_h: 7, hours_h: 14 }, 20.2),
    ...[3, 10, 18].map((place, i) =>
      write(
        21,
        "light.lamp",
        [names.spot(SHELF, place)],
        {
          ppfd_umol_m2_s: Math.round(SHELF_umol_m2_s * chance.logNormal(1, 0.05)),
        },
        21.1 + i / 60,
      ),
    ),
    write(2, "bench.window", [cold], {
      faces_deg: 90,
      width_m: 1.1,
      height_m: 1.2,
      sill_m: -0.05,
      glazing: "double",
      opposite_deg: 12,
      recess_m: 0.12,
    }),
    ...[0, 2, 4, 6].map((place, i) =>
      write(
        2,
        "spot.stands",
        [names.spot(COLD, place)],
        {
          along_m: Number((-0.45 + i * 0.3).toFixed(2)),
          fromGlass_m: 0.3,
        },
        20.3 + i / 60,
      ),
    ),
    ...[1, 3, 5, 7].map((place, i) =>
      write(
        2,
        "spot.stands",
        [names.spot(COLD, place)],
        {
          along_m: Number((-0.45 + i * 0.3).toFixed(2)),
          fromGlass_m: 0.62,
        },
        20.4 + i / 60,
      ),
    ),
    coldRead(hands, days),
    write(3, "supply.tariff", ["book"], { price_minor_kWh: 13 }),
    // Cut back and cold or dark, most of them rest in winter; in summer nobody writes so.
    ...(isWinter((days[last - 8] as LocalDay).date)
      ? [write(last - 8, "plant.measured", onBenches(SILL, COLD), { stage: "at rest" })]
      : []),
    write(
      last - 3,
      "lighting.turned",
      [...onBenches(SILL, COLD), ...awake(hands)],
      { clockwise_deg: 90 },
      8.4,
    ),
  ];
}

const isWinter = (date: string) => ["11", "12", "01", "02"].includes(date.slice(5, 7));

const awake = ({ names }: Hands) =>
  ROLES.flatMap(({ number }, key) => (AWAKE.has(number) ? [names.plant(key)] : []));

/** Read one grey noon, at a pot next to the glass. */
function coldRead(hands: Hands, days: readonly LocalDay[]): Pending {
  const outside_lux = 8200;
  return grower(hands, evening(days, 88, 12.2), "light.pair", [hands.names.spot(COLD, 2)], {
    inside_lux: Math.round((outside_lux * COLD_ratio) / 10) * 10,
    outside_lux,
    sky: "evenly grey",
  });
}

import type { BookWriter } from "../book/book-writer.ts";
import type { Json } from "../book/line.ts";
import type { Names } from "../book/notes-to-book.ts";
import { DAY_ms, dayAfter, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { countLeaves, measureTree } from "../nursery/measure.ts";
import type { Tended } from "../nursery/tend.ts";
import { BENCHES, CULTIVARS, ROLES, SITE } from "./cast.ts";

/** Entries still to be written: when they were typed, and how. What an act hands back is written in its turn. */
export interface Pending {
  readonly typed_ms: number;
  readonly act: () => readonly Pending[] | undefined;
}

export interface Hands {
  readonly book: BookWriter;
  readonly names: Names;
  readonly grower: { readonly id: string; readonly device: string };
  readonly helper: { readonly id: string; readonly device: string };
  readonly batches: Readonly<Record<"spring" | "early" | "late", string>>;
  readonly cultivars: Readonly<Record<string, string>>;
}

/** One entry of the grower's, as something pending. */
export function grower(
  hands: Hands,
  at_ms: number,
  kind: string,
  on: readonly string[],
  data: Json,
  files?: readonly string[],
): Pending {
  return {
    typed_ms: at_ms,
    act: () => {
      hands.book.write({
        kind,
        on,
        data,
        at_ms,
        by: hands.grower.id,
        device: hands.grower.device,
        ...(files ? { files } : {}),
      });
      return undefined;
    },
  };
}

/** The first evening: the site, the benches, the cultivars, the batches and every plant are written into the empty book. */
export function settingUp(
  hands: Hands,
  first: LocalDay,
  tended: readonly Tended[],
  chance: Chance,
): Pending[] {
  let at_ms = first.midnight_ms + 18 * 3_600_000;
  const next = () => {
    at_ms += chance.whole(8, 40) * 1000;
    return at_ms;
  };
  const write = (kind: string, on: readonly string[], data: Json) => grower(hands, next(), kind, on, data);
  const { names } = hands;
  return [
    write("person.joined", [hands.grower.id], { role: "grower" }),
    write("person.joined", [hands.helper.id], { role: "helper" }),
    write("site.described", ["book"], SITE),
    write("site.habits", ["book"], { minutes: 60, weekdays: [0, 1, 2, 3, 4, 5, 6], hour_h: 7 }),
    ...BENCHES.map((bench, index) =>
      write("bench.laid", [bench.id], {
        name: bench.name,
        place: bench.place,
        outdoors: bench.outdoors,
        order_n: index + 1,
        spots: Array.from({ length: bench.spots_n }, (_, place) => ({
          id: names.spot(index, place),
          name: `${bench.mark}${place + 1}`,
        })),
        ...("windowFaces_deg" in bench ? { windowFaces_deg: bench.windowFaces_deg } : {}),
        ...("quarantine" in bench ? { quarantine: bench.quarantine } : {}),
      }),
    ),
    ...CULTIVARS.map(({ key, name, species, habit, fruit, restricted }) =>
      write("cultivar.described", [hands.cultivars[key] as string], {
        name,
        species,
        habit,
        fruit,
        propagationRestricted: restricted,
      }),
    ),
    ...batches(hands, first, write),
    ...plants(hands, first, tended, write, chance),
  ];
}

type Write = (kind: string, on: readonly string[], data: Json) => Pending;

function batches(hands: Hands, first: LocalDay, write: Write): Pending[] {
  const sown = (days_d: number) => dayAfter(first.date, -days_d);
  return [
    write("batch.started", [hands.batches.early], {
      name: "Early sowing",
      habit: "thin",
      count_n: 12,
      sownOn: sown(420),
      seedLot: "E-02",
    }),
    write("batch.started", [hands.batches.spring], {
      name: "Spring sowing",
      habit: "fat",
      cultivar: hands.cultivars["thumb"],
      count_n: 18,
      sownOn: sown(140),
      seedLot: "S-11",
    }),
    write("batch.started", [hands.batches.late], {
      name: "Late tray",
      habit: "lantern",
      cultivar: hands.cultivars["moth"],
      count_n: 30,
      sownOn: sown(24),
      seedLot: "L-07",
    }),
  ];
}

function plants(
  hands: Hands,
  first: LocalDay,
  tended: readonly Tended[],
  write: Write,
  chance: Chance,
): Pending[] {
  const places = new Map<number, number>();
  return ROLES.flatMap((role, key) => {
    const place = places.get(role.bench) ?? 0;
    places.set(role.bench, place + 1);
    const cultivar = CULTIVARS.find((one) => one.key === role.cultivar);
    const age_d = role.batch === "spring" ? 140 : role.batch === "early" ? 420 : chance.whole(300, 1100);
    const brought = write("plant.brought", [hands.names.plant(key)], {
      number: role.number,
      habit: cultivar?.habit ?? "unknown",
      cultivar: hands.cultivars[role.cultivar],
      ...(role.batch ? { batch: hands.batches[role.batch] } : {}),
      sownOn: dayAfter(first.date, -age_d),
      pot: { ...role.pot },
      medium: role.medium,
      spot: hands.names.spot(role.bench, place),
    });
    const pot = tended[key]?.pot;
    if (!pot || !chance.happens(0.7)) return [brought];
    return [
      brought,
      write("plant.measured", [hands.names.plant(key)], {
        ...measureTree(chance),
        ...countLeaves(pot, chance),
        stage: "in leaf",
      }),
    ];
  });
}

/** Instant of an hour on a later day; the demo's evenings stay clear of the clock changes. */
export const evening = (days: readonly LocalDay[], day: number, hour = 19): number =>
  (days[day] as LocalDay).midnight_ms + Math.round((hour / 24) * DAY_ms);

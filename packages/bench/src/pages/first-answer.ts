import type { DeviceId, PersonId, PlantId } from "../book/entry.ts";
import { penOf } from "../book/write.ts";
import type { AnyCraft } from "../crafts/craft.ts";
import { createLedger } from "../house/ledger.ts";
import type { Site } from "../places/site.ts";
import type { Habit } from "../plants/facts.ts";
import type { Medium, Pot } from "../plants/pot.ts";
import type { Draft, PlantPage } from "../round/pages.ts";
import { sayFor } from "../words/say-for.ts";
import { type Asked, deskAt } from "./desk.ts";
import { plantPage } from "./plant-page.ts";
import { pageWords } from "./words.ts";

/** Four facts of a newcomer; each may be "not sure". */
export interface FourFacts {
  readonly habit: Habit;
  readonly pot?: Pot;
  readonly medium: Medium;
  readonly place: { readonly window_deg: number } | "outdoors" | "unknown";
  /** Lift it: the one question asked at once. */
  readonly lifted?: "heavy" | "light";
}

/** Ids that the entries of a first plant use; made by the device. */
export interface FirstIds {
  readonly plant: PlantId;
  readonly bench: string;
  readonly spot: string;
}

/** What KEEP THIS PLANT writes: a bench for the place, the plant on it, and how heavy it felt. */
export function firstDrafts(
  facts: FourFacts,
  ids: FirstIds,
  number: number,
  benchName: string,
): readonly Draft[] {
  const { habit, pot, medium, place, lifted } = facts;
  const outdoors = place === "outdoors";
  return [
    {
      kind: "bench.laid",
      on: [ids.bench],
      data: {
        name: benchName,
        place: outdoors ? "table" : "sill",
        outdoors,
        order_n: 0,
        spots: [{ id: ids.spot, name: "1" }],
        ...(typeof place === "object" ? { windowFaces_deg: place.window_deg } : {}),
      },
    },
    {
      kind: "plant.brought",
      on: [ids.plant],
      data: { number, habit, medium, spot: ids.spot, ...(pot ? { pot } : {}) } as Draft["data"],
    },
    ...(lifted
      ? [
          {
            kind: "watering.looked",
            on: [ids.plant],
            data: { look: lifted === "heavy" ? "heavy" : "light", yes: true },
          },
        ]
      : []),
  ];
}

const NOBODY = "01980000-0000-7000-8000-00000000000a" as DeviceId;

/** The answer that stands from the first fact on: a book of one plant, asked as any other. */
export function firstAnswer(
  crafts: readonly AnyCraft[],
  facts: FourFacts,
  site: Site,
  asked: Asked,
): PlantPage | undefined {
  const ids: FirstIds = {
    plant: "01980000-0000-7000-8000-00000000000b" as PlantId,
    bench: "first",
    spot: "first-1",
  };
  const ledger = createLedger({ crafts, site });
  const pen = penOf({
    device: NOBODY,
    by: NOBODY as PersonId,
    zone: site.zone,
    kinds: ledger.kinds,
    now_ms: () => asked.now_ms,
    random: () => 0.5,
  });
  const known = firstDrafts(facts, ids, 1, "1").filter(({ kind }) => ledger.kinds.find(kind));
  ledger.add(known.map((draft) => pen.write(draft)));
  return plantPage(deskAt(ledger, asked), ids.plant);
}

/** The usual place of somebody whose site is not written: the middle of the device's zone, shown as assumed. */
export function assumedSite(zone: string, asked: Pick<Asked, "language" | "units">): Site {
  const say = sayFor({ ...asked, zone, nameOf: (id) => id });
  const offset_h = zoneOffset_h(zone);
  // Most chilli growers with a windowsill live in the temperate north; zones south of the equator are named for it.
  const south =
    /^(Australia|Antarctica)\/|Johannesburg|Buenos_Aires|Auckland|Sao_Paulo|Santiago|Montevideo/.test(zone);
  return {
    name: pageWords(say).unknown(),
    latitude_deg: south ? -35 : 45,
    longitude_deg: Math.max(-180, Math.min(180, offset_h * 15)),
    elevation_m: 100,
    zone,
    currency: asked.units === "us" ? "USD" : "EUR",
    assumed: true,
  };
}

function zoneOffset_h(zone: string): number {
  const parts = new Intl.DateTimeFormat("en", { timeZone: zone, timeZoneName: "longOffset" }).formatToParts(
    Date.UTC(2026, 0, 15),
  );
  const match = /GMT([+-])(\d\d):(\d\d)/.exec(parts.find(({ type }) => type === "timeZoneName")?.value ?? "");
  return match ? (match[1] === "-" ? -1 : 1) * (Number(match[2]) + Number(match[3]) / 60) : 0;
}

import { type Desk, inWalkingOrder, kindSaid } from "@sillwood/bench/pages";
import { benchesInOrder } from "@sillwood/bench/places";
import type { ThingsSeen } from "./seen.ts";

export function thingsSeen(desk: Desk): ThingsSeen {
  const { ledger, say, now_ms } = desk;
  const { places, batches, supplies } = ledger.house();
  const benches = benchesInOrder(places);
  return {
    plants: inWalkingOrder(desk).map((plant) => {
      const facts = desk.facts(plant);
      const bench = places.benchOfSpot.get(facts?.spot ?? "");
      return {
        id: plant,
        name: desk.numberOf(plant),
        beside: facts ? kindSaid(facts, ledger, say.language, now_ms) : "",
        ...(bench ? { bench } : {}),
        ...(facts?.number === undefined ? {} : { number: facts.number }),
      };
    }),
    benches: benches.map(({ id, name }) => ({ id, name, beside: "" })),
    spots: benches.flatMap(({ id, name, spots }) =>
      spots.map((spot) => ({ id: spot.id, name: `${name} ${spot.name}`, beside: "", bench: id })),
    ),
    batches: [...batches.batches.values()]
      .filter(({ count_n, mergedInto }) => count_n > 0 && mergedInto === undefined)
      .map(({ id, name, count_n }) => ({ id, name, beside: say.number(count_n) })),
    cultivars: [...batches.cultivars.values()].map(({ id, name }) => ({ id, name, beside: "" })),
    supplies: [...supplies.values()].map(({ id, name, lot }) => ({ id, name, beside: lot ?? "" })),
  };
}

import type { Entry } from "../book/entry.ts";
import type { AnyEntryKind } from "../book/kinds.ts";
import { type IssuedDays, issuedDays } from "../issued/issued.ts";
import { issuedKinds } from "../issued/kinds.ts";
import { peopleKinds } from "../people/kinds.ts";
import { foldPeople, noPeople, type People } from "../people/people.ts";
import { placeKinds } from "../places/kinds.ts";
import { lightKinds } from "../places/light/kinds.ts";
import { foldPlaces, noPlaces, type Places } from "../places/places.ts";
import type { Site } from "../places/site.ts";
import { batchKinds } from "../plants/batch-kinds.ts";
import { type Batches, foldBatches, noBatches } from "../plants/batches.ts";
import { plantKinds } from "../plants/kinds.ts";
import { type Absence, roundKinds } from "../round/kinds.ts";
import { supplyKinds } from "../supplies/kinds.ts";
import { foldSupplies, type Supplies } from "../supplies/supplies.ts";
import { bookKinds } from "./book-kinds.ts";

/** All kinds that are the house's own; crafts add theirs. */
export const houseKinds: readonly AnyEntryKind[] = [
  ...Object.values(bookKinds),
  ...Object.values(plantKinds),
  ...Object.values(batchKinds),
  ...Object.values(placeKinds),
  ...Object.values(lightKinds),
  ...Object.values(peopleKinds),
  ...Object.values(supplyKinds),
  ...Object.values(roundKinds),
  ...Object.values(issuedKinds),
];

/** Everything that is not a plant: places, people, batches, supplies, absences. Folded from nothing whenever it changes. */
export interface House {
  readonly places: Places;
  readonly people: People;
  readonly batches: Batches;
  readonly supplies: Supplies;
  readonly absences: readonly Absence[];
  /** Forecasts kept as issued, by book day. */
  readonly issued: IssuedDays;
}

export const emptyHouse = (site: Site): House => ({
  places: noPlaces(site),
  people: noPeople,
  batches: noBatches,
  supplies: new Map(),
  absences: [],
  issued: issuedDays([]),
});

export function foldHouse(house: House, entry: Entry): House {
  const places = foldPlaces(house.places, entry);
  const people = foldPeople(house.people, entry);
  const batches = foldBatches(house.batches, entry);
  const supplies = foldSupplies(house.supplies, entry);
  const absences =
    entry.kind === roundKinds.away.kind
      ? [...house.absences, entry.data as unknown as Absence]
      : house.absences;
  return { places, people, batches, supplies, absences, issued: house.issued };
}

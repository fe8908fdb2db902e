import type { EntryId, PersonId } from "../../book/entry.ts";
import type { Sight } from "../craft.ts";
import type { Arrived, Card, Confirmed, Exposed, Looked, Released, Treated } from "./kinds.ts";

/** What happened, as far as pests go; the newest last. Everything else is worked out from it when somebody asks. */
export type ScoutAct = { readonly at_ms: number; readonly entry: EntryId; readonly by: PersonId } & (
  | { readonly act: "look"; readonly data: Looked }
  | { readonly act: "card"; readonly data: Card }
  | { readonly act: "treat"; readonly data: Treated }
  | { readonly act: "arrive"; readonly data: Arrived }
  | { readonly act: "expose"; readonly data: Exposed }
  | { readonly act: "release"; readonly data: Released }
  | { readonly act: "confirm"; readonly data: Confirmed }
);

/** Plain data; a plant that nobody scouted keeps two short lists for ever. */
export interface ScoutSlice {
  readonly acts: readonly ScoutAct[];
  /** Where it stood, the newest last: pests live in the air of those places. */
  readonly stood: readonly { readonly at_ms: number; readonly spot: string }[];
  readonly problems: readonly { readonly entry: EntryId; readonly at_ms: number }[];
}

/** Acts and moves kept: some years of weekly looks tell no more than the last ones. */
export const ACTS_n = 80;
export const STOOD_n = 8;

export const startSlice = ({ plant, at_ms }: Sight): ScoutSlice => ({
  acts: [],
  stood: plant.spot === undefined ? [] : [{ at_ms, spot: plant.spot }],
  problems: [],
});

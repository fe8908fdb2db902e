import type { Member, World } from "../craft.ts";
import type { LightSlice, readingsOf } from "./slice.ts";
import type { TurnPart } from "./turn.ts";

/**
 * The slice as it is kept: apart what people do and what is read once a week, and in one list of numbers what changes at every
 * midnight of every plant, so that a step writes that list and no more.
 */
export interface LightKept {
  readonly known: LightKnown;
  readonly now: LightNow;
}

/** In the order of `LightSlice`. */
export type LightNow = readonly [
  at_ms: number,
  oneSided_d: number,
  front_mol_m2: number,
  other_mol_m2: number,
  quarter0_mol_m2: number,
  quarter1_mol_m2: number,
  quarter2_mol_m2: number,
  quarter3_mol_m2: number,
  week_mol_m2_d: number,
  around_mol_m2_d: number,
  side_frac: number,
  last_mol_m2_d: number,
  lightSd_frac: number,
  debt_mol_m2: number,
];

export type LightKnown = Omit<
  LightSlice,
  | "at_ms"
  | "oneSided_d"
  | "front_mol_m2"
  | "other_mol_m2"
  | `quarter${0 | 1 | 2 | 3}_mol_m2`
  | "week_mol_m2_d"
  | "around_mol_m2_d"
  | "side_frac"
  | "last_mol_m2_d"
  | "lightSd_frac"
  | "debt_mol_m2"
>;

/** Field by field, so that all have one shape. */
export const knownWith = (
  known: LightKnown,
  readings: ReturnType<typeof readingsOf>,
  lightOrigin: LightKnown["lightOrigin"],
): LightKnown => ({
  turned_deg: known.turned_deg,
  turns_n: known.turns_n,
  turnedAt_ms: known.turnedAt_ms,
  lightOrigin,
  catching_m2: readings.catching_m2,
  catchingSd_m2: readings.catchingSd_m2,
  leafOrigin: readings.leafOrigin,
  need_mol_m2_d: readings.need_mol_m2_d,
  readAt_ms: readings.readAt_ms,
  movedAt_ms: known.movedAt_ms,
  beforeMove_mol_m2_d: known.beforeMove_mol_m2_d,
  lean: known.lean,
  problems: known.problems,
});

export const kept = (slice: LightSlice): LightKept => ({
  known: knownWith(slice, slice, slice.lightOrigin),
  now: [
    slice.at_ms,
    slice.oneSided_d,
    slice.front_mol_m2,
    slice.other_mol_m2,
    slice.quarter0_mol_m2,
    slice.quarter1_mol_m2,
    slice.quarter2_mol_m2,
    slice.quarter3_mol_m2,
    slice.week_mol_m2_d,
    slice.around_mol_m2_d,
    slice.side_frac,
    slice.last_mol_m2_d,
    slice.lightSd_frac,
    slice.debt_mol_m2,
  ],
});

/** The same by name, for who asks about one plant. */
export function lightOf({ known, now }: LightKept): LightSlice {
  return {
    ...known,
    at_ms: now[0],
    oneSided_d: now[1],
    front_mol_m2: now[2],
    other_mol_m2: now[3],
    quarter0_mol_m2: now[4],
    quarter1_mol_m2: now[5],
    quarter2_mol_m2: now[6],
    quarter3_mol_m2: now[7],
    week_mol_m2_d: now[8],
    around_mol_m2_d: now[9],
    side_frac: now[10],
    last_mol_m2_d: now[11],
    lightSd_frac: now[12],
    debt_mol_m2: now[13],
  };
}

/** What the pots of a bench tell one another: a page asks all neighbours for these few. */
export const turnParts = (members: readonly Member<LightKept>[]): readonly Member<TurnPart>[] =>
  members.map(({ plant, slice: { known, now } }) => ({
    plant,
    slice: { oneSided_d: now[1], side_frac: now[10], week_mol_m2_d: now[8], turns_n: known.turns_n },
  }));

/** The same world; its members are still looked up when they are first asked for. */
export function worldByName(world: World<LightKept>): World<LightSlice> {
  let members: World<LightSlice>["members"] | undefined;
  return {
    now_ms: world.now_ms,
    say: world.say,
    places: world.places,
    supplies: world.supplies,
    calendar: world.calendar,
    airAt: world.airAt,
    assumed: world.assumed,
    airIn: world.airIn,
    numberOf: world.numberOf,
    kindOf: world.kindOf,
    speciesOf: world.speciesOf,
    get members() {
      members ??= world.members.map((member) => ({ ...member, slice: lightOf(member.slice) }));
      return members;
    },
  };
}

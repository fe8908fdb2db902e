import { lightCaught_mol_d } from "@sillwood/science/light";
import type { EntryId } from "../../book/entry.ts";
import { rimDiameter_cm, USUAL_POT } from "../../plants/pot.ts";
import type { Origin } from "../../working/working.ts";
import type { Sight } from "../craft.ts";
import { leastNeed_mol_m2_d } from "./need.ts";

/** Everything the craft keeps of one plant, by name; `kept.ts` holds the form in which it is stepped and stored. */
export interface LightSlice {
  readonly at_ms: number;
  /** Clockwise since it was brought in, 0 to 360: a direction on the plant lies at its azimuth then plus this now. */
  readonly turned_deg: number;
  readonly turns_n: number;
  /** Last turn; until one is written, when it was brought in. */
  readonly turnedAt_ms: number;
  /** Days since then, each counted by the share of its light that came from one side. */
  readonly oneSided_d: number;
  /** Light since then on the quarter towards the light, and on each of the other three. */
  readonly front_mol_m2: number;
  readonly other_mol_m2: number;
  /** Light that each quarter of the plant had over the last four weeks, fading; the first is what faced north when it came. */
  readonly quarter0_mol_m2: number;
  readonly quarter1_mol_m2: number;
  readonly quarter2_mol_m2: number;
  readonly quarter3_mol_m2: number;
  /** Means over about a week: level light, light from all around, share from one side. */
  readonly week_mol_m2_d: number;
  readonly around_mol_m2_d: number;
  readonly side_frac: number;
  /** Level light of the last day. */
  readonly last_mol_m2_d: number;
  readonly lightSd_frac: number;
  readonly lightOrigin: Origin;
  /** Level ground that would catch as much as its leaves do, and its doubt; read once a week. */
  readonly catching_m2: number;
  readonly catchingSd_m2: number;
  readonly leafOrigin: Origin;
  /** Least daily light at its stage, read once a week. */
  readonly need_mol_m2_d: number;
  readonly readAt_ms: number;
  /** Need less light, adding up, forgotten over two weeks. */
  readonly debt_mol_m2: number;
  readonly movedAt_ms: number | undefined;
  /** Weekly light before that move. */
  readonly beforeMove_mol_m2_d: number;
  readonly lean: Lean | undefined;
  readonly problems: readonly LightProblem[];
}

export interface Lean {
  readonly towards: "window" | "away" | "left" | "right";
  readonly lean_deg: number;
  readonly at_ms: number;
}

export interface LightProblem {
  readonly entry: EntryId;
  readonly at_ms: number;
}

/** The slice of a plant at the moment it enters the book: as if it had stood in this light before. */
export function startSlice(sight: Sight): LightSlice {
  const day = sight.airAt(sight.plant.spot, sight.dateOf(sight.at_ms));
  return withReadings(
    {
      at_ms: sight.at_ms,
      turned_deg: 0,
      turns_n: 0,
      turnedAt_ms: sight.at_ms,
      oneSided_d: 0,
      front_mol_m2: 0,
      other_mol_m2: 0,
      quarter0_mol_m2: 0,
      quarter1_mol_m2: 0,
      quarter2_mol_m2: 0,
      quarter3_mol_m2: 0,
      week_mol_m2_d: day.dli_mol_m2_d,
      around_mol_m2_d: day.daylight.around_mol_m2_d,
      side_frac: day.daylight.fromSide_frac,
      last_mol_m2_d: day.dli_mol_m2_d,
      lightSd_frac: day.daylight.sd_frac,
      lightOrigin: day.light.origin,
      catching_m2: 0,
      catchingSd_m2: 0,
      leafOrigin: "assumed",
      need_mol_m2_d: 0,
      readAt_ms: sight.at_ms,
      debt_mol_m2: 0,
      movedAt_ms: undefined,
      beforeMove_mol_m2_d: 0,
      lean: undefined,
      problems: [],
    },
    sight,
  );
}

/** The slice with what other crafts say of the plant looked up again. */
export const withReadings = (slice: LightSlice, sight: Sight): LightSlice => ({
  ...slice,
  ...readingsOf(sight),
});

/** What other crafts say of the plant: stage, leaves; and how wide its crown is taken. */
export function readingsOf(
  sight: Sight,
): Pick<LightSlice, "catching_m2" | "catchingSd_m2" | "leafOrigin" | "need_mol_m2_d" | "readAt_ms"> {
  const leaves = sight.read("leafArea_m2");
  const rim_m = rimDiameter_cm(sight.plant.pot ?? USUAL_POT) / 100;
  const crownArea_m2 = Math.max(0.0001, (Math.PI / 4) * (rim_m * sight.assumed("crownPerRim")) ** 2);
  const catchingOf = (leafArea_m2: number) =>
    lightCaught_mol_d({
      dli_mol_m2_d: 1,
      leafArea_m2: Math.max(0, Math.min(20, leafArea_m2)),
      crownArea_m2: Math.min(20, crownArea_m2),
    });
  return {
    catching_m2: catchingOf(leaves.value),
    catchingSd_m2: (catchingOf(leaves.value + leaves.sd) - catchingOf(leaves.value - leaves.sd)) / 2,
    leafOrigin: leaves.origin,
    need_mol_m2_d: leastNeed_mol_m2_d(sight),
    readAt_ms: sight.at_ms,
  };
}

/** How one-sided its light was since the last turn: 0 for even light, 1 for light on one quarter only. */
export function asymmetry_frac({ front_mol_m2, other_mol_m2 }: LightSlice): number {
  const all = front_mol_m2 + 3 * other_mol_m2;
  return all > 0 ? (front_mol_m2 - other_mol_m2) / all : 0;
}

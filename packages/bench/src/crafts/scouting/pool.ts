import { ownSight_frac } from "@sillwood/science/pests";
import type { PersonId, PlantId } from "../../book/entry.ts";
import type { Member } from "../craft.ts";
import { DEFAULT_SIGHT_frac } from "./assumptions.ts";
import type { Pest } from "./pests.ts";
import type { ScoutAct, ScoutSlice } from "./slice.ts";

/** What the plants of one bench tell one another: where something was found, and how well each person sees. */
export interface ScoutPool {
  readonly finds: readonly { readonly plant: PlantId; readonly pest: Pest; readonly at_ms: number }[];
  /** Sight of a person over the usual, for who looked twice with somebody. */
  readonly eyes: Readonly<Record<PersonId, number>>;
}

const RECHECK_ms = 2 * 86_400_000;

const foundBy = (act: ScoutAct) =>
  act.act === "look" ? act.data.found : act.act === "card" ? act.data.caught : [];

export function scoutPool(members: readonly Member<ScoutSlice>[]): ReadonlyMap<PlantId, ScoutPool> {
  const finds: { plant: PlantId; pest: Pest; at_ms: number }[] = [];
  const counts = new Map<PersonId, { foundToo_n: number; missed_n: number }>();
  for (const { plant, slice } of members)
    for (const [i, act] of slice.acts.entries()) {
      for (const { pest } of foundBy(act)) finds.push({ plant: plant.id, pest, at_ms: act.at_ms });
      if (act.act === "look" && act.data.found.length > 0) lookedBefore(slice.acts, i, act.by, counts);
    }
  if (finds.length === 0) return new Map();
  const eyes = Object.fromEntries(
    [...counts].map(([by, looks]) => [by, ownSight_frac(looks) / DEFAULT_SIGHT_frac]),
  );
  const pool: ScoutPool = { finds, eyes };
  return new Map(members.map(({ plant }) => [plant.id, pool]));
}

/** Whoever looked at the same plant within two days before a find saw it too, or missed it. */
function lookedBefore(
  acts: readonly ScoutAct[],
  at: number,
  finder: PersonId,
  counts: Map<PersonId, { foundToo_n: number; missed_n: number }>,
): void {
  const find = acts[at] as ScoutAct;
  for (let i = at - 1; i >= 0; i--) {
    const before = acts[i] as ScoutAct;
    if (find.at_ms - before.at_ms > RECHECK_ms) return;
    if (before.act !== "look" || before.by === finder) continue;
    const count = counts.get(before.by) ?? { foundToo_n: 0, missed_n: 0 };
    if (before.data.found.length > 0) count.foundToo_n += 1;
    else count.missed_n += 1;
    counts.set(before.by, count);
  }
}

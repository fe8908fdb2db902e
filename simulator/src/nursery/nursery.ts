import type { BenchAir } from "./bench-air.ts";
import type { Chance } from "./chance.ts";
import type { Note } from "./notes.ts";
import type { Person } from "./people.ts";
import { advance, copyOf, type Pot } from "./potted-plant.ts";
import { type Tended, tend } from "./tend.ts";

/** Somebody walks along a bench. What is not visited is not watered, weighed or written about. */
export interface Visit {
  readonly at_ms: number;
  readonly bench: number;
  readonly person: Person;
  /** What they do at each pot; the usual round when not said. */
  readonly does?: Act;
  /** False when it is an errand, not a round: then nobody writes that the bench was walked. */
  readonly round?: false;
}

/** Does something at a pot and writes of it. */
export type Act = (
  tended: Tended,
  neighbour: Tended | undefined,
  person: Person,
  at_ms: number,
  chance: Chance,
  notes: Note[],
) => void;

/** An instant at which the hidden state of a pot is kept. */
interface Probe {
  readonly at_ms: number;
  readonly key: number;
}

export interface Snapshot extends Probe {
  readonly pot: Pot;
}

interface NurseryRun {
  readonly notes: readonly Note[];
  readonly snapshots: readonly Snapshot[];
}

/**
 * Lets people walk through a nursery and keeps what they wrote and, apart from it, what was true.
 *
 * @param tended in walking order on their benches; driven to the last visit or probe in which they occur
 */
export function runNursery(
  benches: readonly BenchAir[],
  tended: readonly Tended[],
  visits: readonly Visit[],
  probes: readonly Probe[],
  chance: Chance,
): NurseryRun {
  const notes: Note[] = [];
  const snapshots: Snapshot[] = [];
  const byKey = new Map(tended.map((each) => [each.key, each]));
  const streams = new Map(tended.map((each) => [each.key, chance.under(`pot ${each.key}`)]));
  const walks = chance.under("walks");
  const events = [...visits, ...probes].sort((a, b) => a.at_ms - b.at_ms);
  for (const event of events) {
    if ("key" in event) {
      const each = byKey.get(event.key);
      if (!each || event.at_ms < each.pot.at_ms || event.at_ms > each.until_ms) continue;
      advance(each.pot, event.at_ms, benches);
      snapshots.push({ ...event, pot: copyOf(each.pot) });
      continue;
    }
    walk(event);
  }
  notes.sort((a, b) => a.at_ms - b.at_ms);
  return { notes, snapshots };

  function walk(visit: Visit): void {
    let at_ms = visit.at_ms;
    let neighbour: Tended | undefined;
    const passed: number[] = [];
    for (const each of tended) {
      // A pot may have been carried to another bench since yesterday: bring it to now before asking where it stands.
      if (each.from_ms > at_ms || each.until_ms <= at_ms) continue;
      advance(each.pot, at_ms, benches);
      if (each.pot.bench !== visit.bench) continue;
      const stream = streams.get(each.key) as Chance;
      (visit.does ?? tend)(each, neighbour, visit.person, at_ms, stream, notes);
      passed.push(each.key);
      neighbour = each;
      at_ms += Math.round(walks.between(25, 70)) * 1000;
    }
    if (visit.round === false || passed.length === 0 || !walks.happens(visit.person.writesWalk_frac)) return;
    const minutes = Math.max(1, Math.round((at_ms - visit.at_ms) / 60_000));
    notes.push({
      at_ms: at_ms + 20_000,
      by: visit.person.key,
      pots: passed,
      what: "walked",
      bench: visit.bench,
      minutes,
    });
  }
}

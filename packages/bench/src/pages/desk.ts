import type { PlantId } from "../book/entry.ts";
import type { Outlook, Outward } from "../crafts/craft.ts";
import type { Ledger, PlantState } from "../house/index.ts";
import { addDays, weekdayOf } from "../places/time.ts";
import type { PlantFacts } from "../plants/facts.ts";
import type { Held } from "../round/pages.ts";
import type { Limit, Task } from "../round/task.ts";
import type { Language, Say, UnitSystem } from "../words/say.ts";
import { sayFor } from "../words/say-for.ts";
import { nameBook } from "./names.ts";

/** When and how a page is asked for. Time is an argument: the same book gives the same page on every device. */
export interface Asked {
  readonly now_ms: number;
  readonly language: Language;
  readonly units: UnitSystem;
  /** Zone in which the person reads; the site's when left out. */
  readonly zone?: string;
}

/** One plant as all crafts see it now: what to do, what is held and by whom. */
export interface PlantView {
  readonly plant: PlantId;
  readonly facts: PlantFacts;
  readonly state: PlantState;
  /** What each craft sees, in the order of the registry. */
  readonly outwards: readonly Outward[];
  readonly outlooks: readonly { readonly craft: string; readonly outlook: Outlook }[];
  readonly limits: readonly Limit[];
  /** Free to be done. */
  readonly tasks: readonly Task[];
  readonly held: readonly Held[];
}

/** A ledger asked at one moment in one language: pages are drawn from it. */
export interface Desk {
  readonly ledger: Ledger;
  readonly now_ms: number;
  readonly say: Say;
  /** Instants of the coming rounds by the grower's habit, without absences, ascending. */
  readonly visits_ms: readonly number[];
  numberOf(id: string): string;
  view(plant: PlantId): PlantView | undefined;
  /** Plants that are alive, in book order. */
  living(): readonly PlantId[];
  facts(plant: PlantId): PlantFacts | undefined;
}

/** Days that forecasts look ahead. */
export const AHEAD_d = 30;

export function deskAt(ledger: Ledger, asked: Asked): Desk {
  const { now_ms, language, units } = asked;
  const names = nameBook(ledger, language);
  const say = sayFor({
    language,
    units,
    zone: asked.zone ?? ledger.house().places.site.zone,
    nameOf: names.nameOf,
  });
  const views = new Map<PlantId, PlantView | undefined>();
  const states = new Map<PlantId, PlantState | undefined>();
  const pooled = new Map<string, readonly ReadonlyMap<PlantId, unknown>[]>();
  const visits_ms = visitsAhead(ledger, now_ms);
  const today = ledger.calendar.dateOf(now_ms);
  const datesAhead = Array.from({ length: AHEAD_d + 1 }, (_, i) => addDays(today, i));

  function state(plant: PlantId): PlantState | undefined {
    if (!states.has(plant)) states.set(plant, ledger.stateAt(plant, now_ms));
    return states.get(plant);
  }
  const benchOf = (facts: PlantFacts) => ledger.house().places.benchOfSpot.get(facts.spot ?? "") ?? "";

  /** What the plants of one bench tell one another, craft by craft; worked out once a bench. */
  function poolOf(bench: string): readonly ReadonlyMap<PlantId, unknown>[] {
    let pools = pooled.get(bench);
    if (!pools) {
      const states = livingOn(ledger, bench).flatMap((plant) => state(plant) ?? []);
      pools = ledger.crafts.map((craft, i) =>
        craft.pool
          ? craft.pool(
              states.map(({ facts, slices }) => ({ plant: facts, slice: slices[i] })),
              now_ms,
            )
          : new Map(),
      );
      pooled.set(bench, pools);
    }
    return pools;
  }

  function outwardsOf(now: PlantState): readonly Outward[] {
    const { facts } = now;
    const pools = poolOf(benchOf(facts));
    const sight = ledger.runner().sight(now);
    const seed = `${facts.id}/${today}`;
    return ledger.crafts.map((_, i) => ({
      ...sight,
      now_ms,
      visits_ms,
      pooled: pools[i]?.get(facts.id),
      seed,
      say,
      datesAhead,
    }));
  }

  function look(plant: PlantId): PlantView | undefined {
    const now = state(plant);
    if (!now) return undefined;
    const { facts } = now;
    const outwards = outwardsOf(now);
    if (facts.ended)
      return { plant, facts, state: now, outwards, outlooks: [], limits: [], tasks: [], held: [] };
    const outlooks = ledger.crafts.map((craft, i) => ({
      craft: craft.name,
      outlook: craft.outlook(now.slices[i], outwards[i] as Outward),
    }));
    const limits = ledger.crafts.flatMap((craft, i) =>
      craft.limits(now.slices[i], outwards[i] as Outward, say),
    );
    const allowedToday = new Set(
      facts.rounds.overrode
        .filter(({ at_ms }) => ledger.calendar.dateOf(at_ms) === today)
        .map(({ work }) => work),
    );
    const tasks: Task[] = [];
    const held: Held[] = [];
    for (const task of outlooks.flatMap(({ outlook }) => outlook.tasks)) {
      const limit = limits.find(
        (one) => forbids(one, task, now_ms) && (one.firm || !allowedToday.has(task.work)),
      );
      if (limit) held.push({ task, limit });
      else tasks.push(task);
    }
    return { plant, facts, state: now, outwards, outlooks, limits, tasks, held };
  }

  return {
    ledger,
    now_ms,
    say,
    visits_ms,
    numberOf: names.numberOf,
    view(plant) {
      if (!views.has(plant)) views.set(plant, look(plant));
      return views.get(plant);
    },
    living: () => ledger.plants().filter((plant) => !ledger.lastState(plant)?.facts.ended),
    facts: (plant) => ledger.lastState(plant)?.facts,
  };
}

const benches = new WeakMap<
  Ledger,
  { readonly revision: number; readonly living: ReadonlyMap<string, readonly PlantId[]> }
>();

/** Living plants of a bench, in book order; those of no bench under "". Looked up once for as long as no fact of any plant changes. */
function livingOn(ledger: Ledger, bench: string): readonly PlantId[] {
  const revision = ledger.factsRevision;
  let known = benches.get(ledger);
  if (known?.revision !== revision) {
    known = { revision, living: livingByBench(ledger) };
    benches.set(ledger, known);
  }
  return known.living.get(bench) ?? [];
}

function livingByBench(ledger: Ledger): ReadonlyMap<string, readonly PlantId[]> {
  const { benchOfSpot } = ledger.house().places;
  const groups = new Map<string, PlantId[]>();
  for (const plant of ledger.plants()) {
    const facts = ledger.lastState(plant)?.facts;
    if (!facts || facts.ended) continue;
    const bench = benchOfSpot.get(facts.spot ?? "") ?? "";
    const group = groups.get(bench);
    if (group) group.push(plant);
    else groups.set(bench, [plant]);
  }
  return groups;
}

const forbids = (limit: Limit, task: Task, now_ms: number) =>
  limit.work === task.work &&
  limit.from_ms <= now_ms &&
  (limit.until_ms === undefined || limit.until_ms > now_ms);

/** Instants of the coming rounds by the grower's habit, without the days of absence. */
function visitsAhead(ledger: Ledger, now_ms: number): number[] {
  const { places, absences } = ledger.house();
  const { weekdays, hour_h = 7.5 } = places.habits;
  const visits: number[] = [];
  const today = ledger.calendar.dateOf(now_ms);
  for (let ahead_d = 0; ahead_d <= AHEAD_d; ahead_d++) {
    const date = addDays(today, ahead_d);
    if (!weekdays.includes(weekdayOf(date))) continue;
    const at_ms = ledger.calendar.hour_ms(date, hour_h);
    if (at_ms > now_ms && !absences.some((away) => away.from_ms <= at_ms && at_ms < away.to_ms))
      visits.push(at_ms);
  }
  return visits;
}

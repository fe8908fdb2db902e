import type { Entry, PlantId } from "@sillwood/bench/book";
import { type AnyCraft, crafts } from "@sillwood/bench/crafts";
import { createLedger, type Ledger } from "@sillwood/bench/house";
import { type Desk, deskAt } from "@sillwood/bench/pages";
import type { SkillCase, SkillPot, SkillRun } from "@sillwood/simulator/skill-runs";

/** One forecast with its truth, both in days from the moment asked. */
export interface Scored {
  readonly pot: string;
  readonly size: SkillPot["size"];
  /** Weighings a cycle that the grower means to make, and those of this cycle that the book held. */
  readonly weighings_n: SkillPot["weighings_n"];
  readonly inCycle_n: number;
  readonly keeper: SkillCase["keeper"];
  /** In the ten days after a move or cut, and whether the book could tell of the last one. */
  readonly afterMoveOrTrim: "written" | "unwritten" | undefined;
  readonly lead_d: number;
  /** Twenty equally likely dates, ascending. */
  readonly dates_d: readonly number[];
  readonly past: Past;
}

/** What the notes alone say at the moment asked; baselines rest on it. */
export interface Past {
  readonly sinceWatering_d: number;
  /** Intervals between waterings, oldest first, days. */
  readonly intervals_d: readonly number[];
  /** Days to the threshold by the slope of the dry-down; undefined without the weights for it. */
  readonly slope_d?: number;
}

const DAY_ms = 86_400_000;
/** Beyond this lead neither truth nor forecast is told apart (the simulator looks no further either). */
export const HORIZON_d = 40;
const NEAR_EVENT_d = 10;

/** Taken until the book says where its benches stand. */
export const SITE = {
  name: "skill",
  latitude_deg: 47.6,
  longitude_deg: -122.3,
  elevation_m: 20,
  zone: "America/Los_Angeles",
  currency: "USD",
  assumed: true,
};

/** Every case of a run, forecast from what the book held at its moment and nothing later; by all crafts unless some are left out. */
export function forecastRun(run: SkillRun, by: readonly AnyCraft[] = crafts): Scored[] {
  const moments = run.pots
    .flatMap((pot) => pot.cases.map((one) => ({ pot, one })))
    .sort((a, b) => a.one.at_ms - b.one.at_ms);
  const lines = [...run.lines].sort((a, b) => typedAt_ms(a) - typedAt_ms(b));
  const ledger = createLedger({ crafts: by, site: SITE });
  let taken = 0;
  const scored: Scored[] = [];
  let desk: Desk | undefined;
  for (const { pot, one } of moments) {
    const fresh: Entry[] = [];
    while (taken < lines.length && typedAt_ms(lines[taken] as SkillRun["lines"][number]) <= one.at_ms) {
      fresh.push(lines[taken++] as unknown as Entry);
    }
    for (const file of fresh.flatMap(({ files }) => files ?? []))
      ledger.addSeries(file, run.files.get(file) as string);
    if (fresh.length > 0) ledger.add(fresh);
    // Pots asked at one moment share a desk: what a bench's plants tell one another is then worked out once.
    if (!desk || desk.now_ms !== one.at_ms || fresh.length > 0)
      desk = deskAt(ledger, { now_ms: one.at_ms, language: "en", units: "metric" });
    scored.push(scoreCase(desk, pot, one));
  }
  return scored;
}

const typedAt_ms = (line: { readonly clock: string }) => Date.parse(line.clock.slice(0, 24));

function scoreCase(desk: Desk, pot: SkillPot, one: SkillCase): Scored {
  const plant = pot.plant as PlantId;
  const view = desk.view(plant);
  const figures = view?.outlooks[0]?.outlook.figures;
  const dates_ms = figures?.["dates_ms"];
  if (!Array.isArray(dates_ms))
    throw new Error(`no dates for ${pot.number} at ${new Date(one.at_ms).toISOString()}`);
  const limit = (days: number) => Math.min(HORIZON_d, Math.max(0, days));
  return {
    pot: pot.plant,
    size: pot.size,
    weighings_n: pot.weighings_n,
    inCycle_n: one.inCycle_n,
    keeper: one.keeper,
    afterMoveOrTrim: afterMoveOrTrim(one),
    lead_d: limit(one.lead_d),
    dates_d: (dates_ms as number[]).map((at_ms) => limit((at_ms - one.at_ms) / DAY_ms)),
    past: pastOf(desk.ledger, plant, one.at_ms),
  };
}

/** Unwritten if either was: the one that the book knows does not tell of the other. */
function afterMoveOrTrim(one: SkillCase): Scored["afterMoveOrTrim"] {
  const near = [
    { since_d: one.sinceMove_d, written: one.moveWritten },
    { since_d: one.sinceTrim_d, written: one.trimWritten },
  ].filter(({ since_d }) => since_d !== undefined && since_d < NEAR_EVENT_d);
  if (near.length === 0) return undefined;
  return near.every(({ written }) => written) ? "written" : "unwritten";
}

function pastOf(ledger: Ledger, plant: PlantId, now_ms: number): Past {
  const events = ledger.eventsOf(plant).map(({ entry }) => entry);
  const waterings = events.filter(({ kind }) => kind === "watering.watered").map(({ at_ms }) => at_ms);
  // Pours within half a day are one watering.
  const distinct = waterings.filter(
    (at_ms, i) => i === 0 || at_ms - (waterings[i - 1] as number) > DAY_ms / 2,
  );
  const last_ms = distinct.at(-1) ?? events[0]?.at_ms ?? now_ms;
  const slope_d = slopeOf(events, last_ms, now_ms);
  return {
    sinceWatering_d: (now_ms - last_ms) / DAY_ms,
    intervals_d: distinct.slice(1).map((at_ms, i) => (at_ms - (distinct[i] as number)) / DAY_ms),
    ...(slope_d === undefined ? {} : { slope_d }),
  };
}

/** Believed full weight: the heaviest just-drained weighing of the last three. Store: what the usual pot and medium hold. */
function slopeOf(events: readonly Entry[], last_ms: number, now_ms: number): number | undefined {
  const weights = events
    .filter(({ kind }) => kind === "watering.weighed")
    .map(({ at_ms, data }) => ({ at_ms, ...(data as { weight_g: number; state: string }) }));
  const sinceWatering = weights.filter(({ at_ms, state }) => at_ms > last_ms && state === "as found");
  const full = weights
    .filter(({ state }) => state === "just drained")
    .slice(-3)
    .map(({ weight_g }) => weight_g);
  const allTime = weights.map(({ weight_g }) => weight_g);
  const full_g = full.length > 0 ? Math.max(...full) : allTime.length > 3 ? Math.max(...allTime) : undefined;
  const latest = sinceWatering.at(-1);
  const earlier = sinceWatering.find(({ at_ms }) => latest && latest.at_ms - at_ms >= DAY_ms);
  const light = allTime.length > 3 ? Math.min(...allTime) : undefined;
  if (!latest || full_g === undefined || light === undefined || full_g <= light) return undefined;
  const [used_g, over_d] = earlier
    ? [earlier.weight_g - latest.weight_g, (latest.at_ms - earlier.at_ms) / DAY_ms]
    : [full_g - latest.weight_g, (latest.at_ms - last_ms) / DAY_ms];
  if (over_d < 0.5 || used_g <= 0) return undefined;
  // The grower waters at about the lightest weights seen: that is where the slope is taken to.
  const left_g = latest.weight_g - light;
  return (left_g / used_g) * over_d - (now_ms - latest.at_ms) / DAY_ms;
}

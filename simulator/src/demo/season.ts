import type { BenchAir } from "../nursery/bench-air.ts";
import { instantOf, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import type { Note } from "../nursery/notes.ts";
import { runNursery, type Snapshot, type Visit } from "../nursery/nursery.ts";
import { advance, copyOf, potAvailable_g, potDepletion_g } from "../nursery/potted-plant.ts";
import type { Tended } from "../nursery/tend.ts";
import { glance, soak, soakOnly, weigh } from "./acts.ts";
import { COLD, ROLES, SHELF, SILL, SITE, STORY, YARD } from "./cast.ts";
import { GROWER, HELPER } from "./people.ts";

/** Days for which the helper was away before the demo day; nobody walked the sill. */
const AWAY_d = 2;
const LATEST_SOAK_d = AWAY_d + 1;
const EARLIEST_SOAK_d = 18;
/** A pot counts as plainly due from here on. */
const DUE_frac = 0.58;
const TOO_DRY_frac = 0.97;

interface Season {
  readonly notes: readonly Note[];
  /** The hidden state of every pot at the end. */
  readonly truth: readonly Snapshot[];
  /** Days before the demo day on which the whole sill was watered. */
  readonly soak_d: number;
}

/**
 * Lives through the demo's months. The last watering of the sill is set so many days back that most of its pots are
 * due on the demo day, whatever the time of year: some weeks in winter, a few days in summer.
 *
 * @param days from the first to the demo day
 */
export function liveThrough(
  benches: readonly BenchAir[],
  tended: readonly Tended[],
  days: readonly LocalDay[],
  now_ms: number,
  chance: Chance,
): Season {
  const today = days.length - 1;
  const split = today - EARLIEST_SOAK_d;
  const early = runNursery(
    benches,
    tended,
    usualVisits(days.slice(0, split), chance.under("visits")),
    [],
    chance.under("early"),
  );
  const onSill = tended.filter(({ pot, key }) => pot.bench === SILL && ROLES[key]?.number !== STORY.sold);
  const soak_d = chooseSoak(benches, onSill, days, now_ms);
  const late = runNursery(
    benches,
    tended,
    lateVisits(days, split, today - soak_d, chance.under("late visits")),
    tended.map(({ key }) => ({ key, at_ms: now_ms })),
    chance.under("late"),
  );
  return { notes: [...early.notes, ...late.notes], truth: late.snapshots, soak_d };
}

/** Tries each day on copies of the pots and takes the one after which most are due and none has wilted. */
function chooseSoak(
  benches: readonly BenchAir[],
  onSill: readonly Tended[],
  days: readonly LocalDay[],
  now_ms: number,
): number {
  let best = { soak_d: LATEST_SOAK_d, score: Number.NEGATIVE_INFINITY };
  for (let soak_d = LATEST_SOAK_d; soak_d < EARLIEST_SOAK_d; soak_d++) {
    const at_ms = morning(days[days.length - 1 - soak_d] as LocalDay, 7.2);
    let score = 0;
    for (const { pot } of onSill) {
      const { medium } = pot.vessel;
      const trial = { ...copyOf(pot), at_ms, surface_g: medium.surfaceFull_g, root_g: medium.rootFull_g };
      advance(trial, now_ms, benches);
      const gone_frac = potDepletion_g(trial) / potAvailable_g(trial);
      score += gone_frac > TOO_DRY_frac ? -1 : gone_frac >= DUE_frac ? 1 : 0;
      score -= 0.1 * Math.abs(gone_frac - 0.72);
    }
    if (score > best.score) best = { soak_d, score };
  }
  return best.soak_d;
}

const morning = (day: LocalDay, hour: number) => Math.round(instantOf(SITE.zone, day.date, hour));

/** The helper has the sill but on Sundays; the grower the rest. */
function usualVisits(days: readonly LocalDay[], chance: Chance): Visit[] {
  return days.slice(1).flatMap((day, index) => {
    const visits: Visit[] = [];
    if (day.weekday !== 0)
      visits.push({ at_ms: morning(day, chance.between(7, 7.2)), bench: SILL, person: HELPER });
    visits.push(...growersVisits(day, index, chance));
    // Every other Wednesday evening ten pots of the sill go over the scale.
    if (day.weekday === 3 && Math.floor(index / 7) % 2 === 0)
      visits.push({
        at_ms: morning(day, 19.3),
        bench: SILL,
        person: GROWER,
        does: weigh([118, 119, 121, 122, 123, 124, 125, 126, 127, 129]),
        round: false,
      });
    return visits;
  });
}

function growersVisits(day: LocalDay, index: number, chance: Chance): Visit[] {
  const warm = day.dayOfYear_d > 120 && day.dayOfYear_d < 275;
  const visits: Visit[] = [];
  if (!chance.happens(0.06))
    visits.push({ at_ms: morning(day, chance.between(7.45, 7.6)), bench: SHELF, person: GROWER });
  if (index % 2 === 0) visits.push({ at_ms: morning(day, 8.1), bench: COLD, person: GROWER });
  if (warm || index % 2 === 1) visits.push({ at_ms: morning(day, 8.3), bench: YARD, person: GROWER });
  return visits;
}

/** From the split on: rounds as ever, the great watering, glances at pots that are still wet, two days without anybody. */
function lateVisits(days: readonly LocalDay[], split: number, soakDay: number, chance: Chance): Visit[] {
  const today = days.length - 1;
  return days.slice(split, today).flatMap((day, offset) => {
    const index = split + offset;
    const visits = growersVisits(day, index, chance);
    const at_ms = morning(day, chance.between(7, 7.2));
    if (index < soakDay && day.weekday !== 0) visits.push({ at_ms, bench: SILL, person: HELPER });
    if (index === soakDay) visits.push({ at_ms, bench: SILL, person: HELPER, does: soak });
    if (index > soakDay && index < today - AWAY_d)
      visits.push({ at_ms, bench: SILL, person: HELPER, does: glance });
    // The tree with the bad roots hangs for the first time and gets a good drink, which does not help.
    if (index === today - 5)
      visits.push({
        at_ms: morning(day, 19.6),
        bench: SHELF,
        person: GROWER,
        does: soakOnly([STORY.rotten]),
        round: false,
      });
    // The evening before, the grower passes the sill with the scale under an arm.
    if (index === today - 1)
      visits.push({
        at_ms: morning(day, 20.1),
        bench: SILL,
        person: GROWER,
        does: weigh([119, STORY.repellent]),
        round: false,
      });
    return visits;
  });
}

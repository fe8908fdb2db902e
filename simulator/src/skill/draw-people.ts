import { DAY_ms, instantOf, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import type { Act, Visit } from "../nursery/nursery.ts";
import type { Person, Scale } from "../nursery/people.ts";
import { emptySaucer } from "../nursery/potted-plant.ts";
import { give, settle } from "../nursery/tend.ts";
import { ZONE } from "./draw-place.ts";
import { drawn, RANGES } from "./ranges.ts";

/** How somebody decides: hands and eyes, a number of days, or days of the week. */
export type PersonKind = "by feel" | "every few days" | "by weekday";

export interface Keeper {
  readonly person: Person;
  readonly kind: PersonKind;
  /** For people who go by days of the week. */
  readonly weekdays: readonly number[];
  /** Writes in the evening, from memory. */
  readonly writesLate: boolean;
  /** Days of which nothing got into the book. */
  readonly lostDays: ReadonlySet<string>;
}

export interface Absence {
  readonly from_ms: number;
  readonly to_ms: number;
  readonly written: boolean;
}

export interface Crew {
  readonly keepers: readonly Keeper[];
  /** Who keeps which bench, as an index of the above. */
  readonly ofBench: readonly number[];
  readonly visits: readonly Visit[];
  readonly away?: Absence;
}

/** Who waters how. @source our assumption */
const KINDS = [
  ...Array<PersonKind>(13).fill("by feel"),
  ...Array<PersonKind>(4).fill("every few days"),
  ...Array<PersonKind>(3).fill("by weekday"),
];
/** Rounds that are planned and not walked. */
const LEFT_OUT_frac = 0.04;
/** A run of more than so many days may have an absence in it, after the first weeks. */
const AWAY_FROM_d = 60;
const SETTLED_d = 28;
/** An absence for which few ask anybody. */
const SHORT_d = 5;

/** Draws the people of a run, when they walk, and when they are away. */
export function drawCrew(days: readonly LocalDay[], chance: Chance): Crew {
  const from_ms = (days[0] as LocalDay).midnight_ms;
  const keepers = [drawKeeper("grower", days, from_ms, chance.under("grower"))];
  const shared = chance.happens(0.35);
  if (shared) keepers.push(drawKeeper("helper", days, from_ms, chance.under("helper")));
  const ofBench = [0, shared ? 1 : 0];
  const away = drawAbsence(days, chance.under("away"));
  const rounds = ofBench.flatMap((who, bench) =>
    drawRounds(days, bench, keepers[who] as Keeper, chance.under(`rounds ${bench}`)),
  );
  return {
    keepers,
    ofBench,
    visits: [
      ...rounds.filter(({ at_ms }) => !away || at_ms < away.from_ms || at_ms >= away.to_ms),
      ...(away ? sitterVisits(away, keepers[0] as Keeper, chance.under("sitter")) : []),
    ],
    ...(away ? { away } : {}),
  };
}

function drawKeeper(key: string, days: readonly LocalDay[], from_ms: number, chance: Chance): Keeper {
  const { person } = RANGES;
  const kind = chance.pick(KINDS);
  const [lowest, highest] = person.dryAtLimits_frac;
  const wetTo_frac = drawn(chance, person.wetTo_frac);
  const loses_frac = chance.pick([0, 0, 0.02, 0.06]);
  return {
    kind,
    weekdays: chance.pick([[6], [0], [3, 6], [1, 4], [2, 5], [1, 3, 5], [0, 2, 4, 6]]),
    writesLate: chance.happens(0.3),
    lostDays: new Set(days.filter(() => chance.happens(loses_frac)).map(({ date }) => date)),
    person: {
      key,
      dryAt_frac: Math.max(lowest, Math.min(highest, drawn(chance, person.dryAt_frac))),
      goesBySurface_frac: drawn(chance, person.goesBySurface_frac),
      wobble_frac: drawn(chance, person.wobble_frac),
      ...(kind === "every few days" ? { habit_d: chance.whole(...person.everyDays_d) } : {}),
      sparesWet_frac: drawn(chance, person.sparesWet_frac),
      eye: {
        bias_frac: drawn(chance, person.eyeBias_frac),
        scatter_frac: drawn(chance, person.eyeScatter_frac),
        wetTo_frac,
        moistTo_frac: wetTo_frac + drawn(chance, person.moistOver_frac),
      },
      pours: chance.happens(0.5) ? "jug" : "until it runs",
      hand_frac: drawn(chance, person.hand_frac),
      writesWalk_frac: chance.pick([0, 0, 0.5, 0.8, 0.95, 1]),
      writesLook_frac: chance.pick([0, 0.1, 0.3, 0.6, 0.9]),
      saysDrained_frac: drawn(chance, person.saysDrained_frac),
      emptiesSaucer_frac: drawn(chance, person.emptiesSaucer_frac),
      forgets_frac: chance.pick([0, 0, 0.01, 0.03, 0.1]),
      scaleStep_g: chance.pick([0.1, 1, 1, 1, 2, 5, 10]),
      scale: drawScale(days.length, from_ms, chance.under("scale")),
      wrongPot_frac: drawn(chance, person.wrongPot_frac),
      turnsDigits_frac: drawn(chance, person.turnsDigits_frac),
    },
  };
}

/** A zero that walks from day to day and is set right now and then; on some days the tare is forgotten. */
function drawScale(days_n: number, from_ms: number, chance: Chance): Scale {
  const { scale } = RANGES;
  const step_g = drawn(chance, scale.driftPerDay_g);
  const slips = drawn(chance, scale.tareSlipPerDay);
  let zero_g = 0;
  return {
    from_ms,
    gain_frac: drawn(chance, scale.gain_frac),
    zero_g: Float64Array.from({ length: days_n }, () => {
      zero_g = chance.happens(0.1) ? 0 : zero_g + chance.normal(0, step_g);
      // A saucer still tared shows less, one left under the pot shows more.
      const slip_g = chance.happens(slips) ? drawn(chance, scale.tareSlip_g) * chance.pick([-1, -1, 1]) : 0;
      return zero_g + slip_g;
    }),
  };
}

/** Rounds on visiting days only, in the morning or after work, now and then left out. */
function drawRounds(days: readonly LocalDay[], bench: number, keeper: Keeper, chance: Chance): Visit[] {
  const walks =
    keeper.kind === "by weekday" && chance.happens(0.5)
      ? keeper.weekdays
      : chance.pick([
          [0, 1, 2, 3, 4, 5, 6],
          [0, 1, 2, 3, 4, 5, 6],
          [1, 2, 3, 4, 5],
          [1, 3, 5, 6],
          [1, 3, 5],
          [2, 6],
        ]);
  const hour = chance.pick([7, 7, 7.4, 8.3, 17.5, 19]);
  return days.flatMap((day) => {
    if (!walks.includes(day.weekday) || chance.happens(LEFT_OUT_frac)) return [];
    const at_ms = Math.round(instantOf(ZONE, day.date, hour + chance.between(0, 1.2))) + bench * 12 * 60_000;
    const person =
      keeper.kind === "by weekday"
        ? { ...keeper.person, watersToday: keeper.weekdays.includes(day.weekday) }
        : keeper.person;
    return [{ at_ms, bench, person }];
  });
}

function drawAbsence(days: readonly LocalDay[], chance: Chance): Absence | undefined {
  if (days.length <= AWAY_FROM_d || !chance.happens(0.35)) return undefined;
  const length_d = chance.whole(4, 15);
  const first = chance.whole(SETTLED_d, days.length - length_d - 1);
  const from_ms = (days[first] as LocalDay).midnight_ms;
  return { from_ms, to_ms: from_ms + length_d * DAY_ms, written: chance.happens(0.5) };
}

/** A neighbour comes every few days, gives every pot something, and writes nothing. For a few days most leave nobody. */
function sitterVisits(away: Absence, keeper: Keeper, chance: Chance): Visit[] {
  const short = away.to_ms - away.from_ms <= SHORT_d * DAY_ms;
  if (chance.happens(short ? 0.7 : 0.12)) return [];
  const every_d = chance.whole(2, 5);
  const share_frac = chance.between(0.3, 1.2);
  const sits: Act = (tended, _neighbour, person, at_ms, stream) => {
    give(tended, person, stream, tended.usual_mL * share_frac);
    settle(tended, at_ms, stream);
    if (stream.happens(0.3)) emptySaucer(tended.pot);
  };
  const visits: Visit[] = [];
  for (let at_ms = away.from_ms + 1.4 * DAY_ms; at_ms < away.to_ms; at_ms += every_d * DAY_ms)
    for (const bench of [0, 1])
      visits.push({
        at_ms: Math.round(at_ms) + bench * 600_000,
        bench,
        person: keeper.person,
        does: sits,
        round: false,
      });
  return visits;
}

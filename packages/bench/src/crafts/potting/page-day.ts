import { leavesToLeave_frac, standingTime_min } from "@sillwood/science/medium";
import type { Json } from "../../book/entry.ts";
import { USUAL_POT } from "../../plants/pot.ts";
import type { Draft } from "../../round/pages.ts";
import type { World, WorldMember } from "../craft.ts";
import { repotDue } from "./due.ts";
import { isOpen } from "./fold.ts";
import { CUT, DRAINED, LIFTED, PLACED, type Prepared, WASHED } from "./kinds.ts";
import { potLimits } from "./limits.ts";
import { potSaid } from "./page-mix.ts";
import { type Clock, type DayPage, type OnTheRail, type StepName, stepNames } from "./page-shape.ts";
import type { PotSlice, PottingDay } from "./slice.ts";
import { pottingWords } from "./words.ts";
import type { PageWords } from "./words-page.en.ts";

const MIN_ms = 60_000;
const DAY_ms = 86_400_000;
const SOON_d = 30;
const MOST_DUE_n = 12;
/** Roots kept by taking off a quarter. @source medium-repot sheet 11: a third at most */
const USUAL_ROOTS_frac = 0.75;
/** Colder than this no roots are worked at, warmer than that nothing is said. @source trade: 10 to 15.6 °C passes with a note */
const REFUSED_C = 8;

/** Whether a medium (or the place of the work) is warm enough: common practice, no source. */
function warmthOf(medium_C: number, coldest_C: number): "good" | "note" | "refused" {
  if (medium_C < REFUSED_C) return "refused";
  return medium_C < Math.max(coldest_C, 15.7) ? "note" : "good";
}

/** The potting day: who stands where on the rail, what comes next, which clocks run. */
export function dayPage(world: World<PotSlice>, words: PageWords): DayPage {
  const { now_ms, say } = world;
  const on = world.members.filter(({ slice }) => isOpen(slice.day, now_ms));
  const rail = on.map((member) => railOf(member, world, words));
  const dues = world.members
    .filter(({ slice }) => !isOpen(slice.day, now_ms))
    .map((member) => ({ member, due: repotDue(member.slice, member.sight) }))
    .sort((a, b) => a.due.due_ms - b.due.due_ms);
  const soon = dues.filter(({ due }) => due.due_ms - now_ms < SOON_d * DAY_ms);
  const saidOf = (age_d: number) => words.dueSaid(Math.round(age_d / 30.4));
  const next = dues[0];
  const prepared = on.map(({ slice }) => slice.day?.prepared).filter((each) => each !== undefined);
  const last = prepared.sort((a, b) => b.at_ms - a.at_ms)[0];
  return {
    what: "day",
    said:
      rail.length > 0
        ? words.daySaid(rail.length)
        : soon.length > 0 || !next
          ? soon.length > 0
            ? words.daySaid(0)
            : words.dayEmpty
          : words.dayNext(
              world.numberOf(next.member.plant.id),
              say.day(next.due.due_ms, now_ms),
              saidOf(next.due.age_d),
            ),
    rail,
    ...(last ? { warmth: warmth(last, world, words) } : {}),
    due: dues.slice(0, MOST_DUE_n).map(({ member, due }) => ({
      plant: member.plant.id,
      number: world.numberOf(member.plant.id),
      said: saidOf(due.age_d),
    })),
    held: heldOf(world, words),
    care: pottingWords(say).care,
  };
}

function warmth(
  prepared: Prepared & { readonly at_ms: number },
  world: World<PotSlice>,
  words: PageWords,
): NonNullable<DayPage["warmth"]> {
  const { say, now_ms } = world;
  const coldest_C = world.assumed("coldest_C");
  const state = warmthOf(prepared.medium_C, coldest_C);
  const [water, medium] = [say.temperature(prepared.water_C), say.temperature(prepared.medium_C)];
  if (state === "refused") return { state, said: words.mediumRefused(medium) };
  if (prepared.water_C < coldest_C) {
    if (prepared.room_C < coldest_C + 0.5)
      return {
        state: "wait",
        said: words.warmNever(say.temperature(prepared.room_C), say.temperature(coldest_C)),
      };
    const wait_min = standingTime_min({
      water_C: prepared.water_C,
      wanted_C: coldest_C,
      room_C: prepared.room_C,
    });
    const until_ms = prepared.at_ms + wait_min * MIN_ms;
    if (until_ms > now_ms)
      return {
        state: "wait",
        said: words.warmWait(water, say.temperature(coldest_C), say.minutes(Math.ceil(wait_min))),
        until_ms,
      };
  }
  if (state === "note") return { state, said: words.mediumNote(medium) };
  return { state: "good", said: words.warmGood(water, medium) };
}

const doneAt = (day: PottingDay, step: StepName): number | undefined => day[`${step}_ms`];

function railOf(
  { plant, slice }: WorldMember<PotSlice>,
  world: World<PotSlice>,
  words: PageWords,
): OnTheRail {
  const day = slice.day as PottingDay;
  const done = stepNames.flatMap((step) => {
    const at_ms = doneAt(day, step);
    return at_ms === undefined ? [] : [{ step, at_ms }];
  });
  // A step that was left out is behind as soon as a later one is done.
  const last = done[done.length - 1]?.step;
  const next = stepNames[last === undefined ? 0 : stepNames.indexOf(last) + 1];
  const clocks = clocksOf(day, next, world, words);
  const pot = plant.pot ?? USUAL_POT;
  const leave_frac = leavesToLeave_frac({ rootsKept_frac: USUAL_ROOTS_frac });
  const how: Readonly<Record<StepName, readonly string[]>> = {
    lift: [words.how.lift],
    cut: [words.how.cut(world.say.percent(Math.round(20 * leave_frac) / 20))],
    wash: [words.how.wash(world.say.minutes(world.assumed("bareRoots_min"))), words.how.roots],
    pot: [words.how.pot(potSaid(pot, words)), words.how.soak],
    drain: [words.how.drain],
    place: [words.how.place],
  };
  const draft = (kind: string, data: Json): Draft => ({ kind, on: [plant.id], data });
  const drafts: Readonly<Record<StepName, readonly Draft[]>> = {
    lift: [draft(LIFTED, {})],
    cut: [draft(CUT, { leavesKept_frac: Math.round(20 * leave_frac) / 20 })],
    wash: [draft(WASHED, { rootsKept_frac: USUAL_ROOTS_frac })],
    pot: [draft("plant.potted", { medium: plant.medium })],
    drain: [draft(DRAINED, {})],
    place: [draft(PLACED, {})],
  };
  return {
    plant: plant.id,
    number: world.numberOf(plant.id),
    kind: world.kindOf(plant),
    done,
    ...(next ? { next } : {}),
    clocks,
    how: next ? how[next] : [],
    drafts: next ? drafts[next] : [],
    ...(next === "cut" ? { leftOut: { step: "wash" as const, drafts: drafts.wash } } : {}),
    ...(next === "wash" ? { leftOut: { step: "pot" as const, drafts: drafts.pot } } : {}),
    asksWeight: next === "drain",
  };
}

function clocksOf(
  day: PottingDay,
  next: StepName | undefined,
  world: World<PotSlice>,
  words: PageWords,
): readonly Clock[] {
  const { now_ms, say } = world;
  const clock = (key: Clock["key"], until_ms: number, saying: (time: string) => string): Clock => {
    const said = saying(say.time(until_ms));
    const isPast = until_ms <= now_ms;
    return { key, until_ms, isPast, said: isPast ? words.past(said) : said };
  };
  if (next === "pot" && day.wash_ms !== undefined)
    return [clock("roots", day.wash_ms + world.assumed("bareRoots_min") * MIN_ms, words.clockRoots)];
  if (next === "drain" && day.pot_ms !== undefined)
    return [clock("drain", day.pot_ms + world.assumed("drain_min") * MIN_ms, words.clockDrain)];
  return [];
}

function heldOf(world: World<PotSlice>, words: PageWords): DayPage["held"] {
  const { now_ms, say } = world;
  return world.members.flatMap(({ plant, slice, sight }) => {
    const placed_ms = slice.day?.place_ms;
    if (placed_ms === undefined || now_ms - placed_ms > DAY_ms) return [];
    const limits = potLimits(slice, sight, say).filter(({ work }) => ["feed", "cut", "spray"].includes(work));
    if (limits.length === 0) return [];
    const works = limits.map(({ work, until_ms }) =>
      words.until(words.work[work] ?? work, say.day(until_ms as number, now_ms)),
    );
    return [{ number: world.numberOf(plant.id), said: words.heldSaid(say.list(works)) }];
  });
}

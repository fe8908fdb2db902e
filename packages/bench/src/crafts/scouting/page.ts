import { cardTrend } from "@sillwood/science/pests";
import type { Json } from "../../book/entry.ts";
import { PageError, type World, type WorldMember } from "../craft.ts";
import { airOf } from "./air-hours.ts";
import { courseSaid, readCourse, sprayGates } from "./course.ts";
import { RELEASED } from "./kinds.ts";
import { isFoundNow, labelUntil, releaseInForce } from "./limits.ts";
import { saidOf } from "./outlook.ts";
import type { Evidence, GateSaid, PlantScout, ScoutAsk, ScoutPage, ScoutRow } from "./page-shape.ts";
import { allPests, isClocked, type Pest, tools } from "./pests.ts";
import type { ScoutPool } from "./pool.ts";
import { type Gate, isWatched, type PestBelief, type Reckoned, reckoned } from "./reckon.ts";
import { fraction } from "./said-numbers.ts";
import type { ScoutSlice } from "./slice.ts";
import { scoutTasks } from "./tasks.ts";
import { GUIDED, type Planned } from "./watch.ts";
import { scoutingWords } from "./words.ts";
import { pageWords } from "./words-page.ts";
import { cleanWorking } from "./workings.ts";

const DAY_ms = 86_400_000;
/** Warm enough to shorten every clock, as far as a plant bears it. @source the pest sheet: 22 to 25 °C */
const WARM_C = 24;

type Member = WorldMember<ScoutSlice>;

/** Screen 7, `sillwood scout` and `sillwood clear`. */
export function scoutPage(world: World<ScoutSlice>, json: Json): ScoutPage {
  const ask = (typeof json === "object" && json !== null ? json : {}) as ScoutAsk;
  const words = scoutingWords(world.say);
  const page = pageWords(world.say);
  const watched = world.members.filter(({ slice }) => isWatched(slice, world.now_ms));
  const rows = watched
    .map((member) => rowOf(world, member))
    .sort((one, other) => Number(one.quarantine) - Number(other.quarantine));
  const apart = rows.filter(({ state }) => state !== "released");
  const member =
    ask.plant === undefined ? undefined : world.members.find(({ plant }) => plant.id === ask.plant);
  if (ask.plant !== undefined && !member)
    throw new PageError(`plant is ${JSON.stringify(ask.plant)}; expected a living plant of this book`);
  return {
    said:
      watched.length === 0 ? page.empty : page.head(apart.length, rows.filter(({ isDue }) => isDue).length),
    rows,
    pests: allPests.map((key) => ({ key, said: words.pest(key), hasClock: isClocked(key) })),
    tools: tools.map((key) => ({ key, said: words.tool(key) })),
    cautions: page.cautions,
    ...(member ? { plant: plantScout(world, member, ask) } : {}),
    others: world.members
      .filter(({ slice }) => !isWatched(slice, world.now_ms))
      .map(({ plant }) => ({ plant: plant.id, number: world.numberOf(plant.id) })),
  };
}

const benchOf = (world: World<ScoutSlice>, { plant }: Member) =>
  world.places.benches.get(world.places.benchOfSpot.get(plant.spot ?? "") ?? "");

function rowOf(world: World<ScoutSlice>, member: Member): ScoutRow {
  const { slice, sight, plant } = member;
  const page = pageWords(world.say);
  const pool = sight.pooled as ScoutPool | undefined;
  const bench = benchOf(world, member);
  const isReleased = releaseInForce(slice, pool, plant.id, "sell");
  const at = isReleased ? undefined : reckoned(slice, sight);
  const isFound = allPests.some((pest) => isFoundNow(slice, pest));
  const state = isReleased
    ? "released"
    : isFound
      ? "found"
      : at?.sell.open
        ? "may be sold"
        : at?.move.open
          ? "may move"
          : "kept apart";
  const last = slice.acts.findLast((act) => act.act === "release");
  return {
    plant: plant.id,
    number: world.numberOf(plant.id),
    kind: world.kindOf(plant),
    bench: bench?.name ?? "",
    quarantine: bench?.quarantine === true,
    state,
    said: isReleased
      ? page.rowReleased(world.say.day(last?.at_ms ?? world.now_ms, world.now_ms))
      : isFound
        ? page.rowFound
        : at
          ? gateSaid(at.sell, "sell", world, member).said
          : page.notYet,
    isDue: scoutTasks(slice, sight).some(({ work }) => work === "look"),
  };
}

function gateSaid(gate: Gate, to: "move" | "sell", world: World<ScoutSlice>, { sight }: Member): GateSaid {
  const page = pageWords(world.say);
  return {
    ...gate,
    said: gate.open
      ? page.gateOpen(to)
      : gate.best_ms === undefined && gate.early_ms === undefined
        ? page.gateShut(to)
        : page.gateDate(to, saidOf(gate, sight)),
  };
}

/** On a staff of three stretches: up to the gate to move, up to the gate to sell, beyond. */
function onStaff(free: number, move: number, sell: number): number {
  const logit = (share: number) => Math.log(Math.max(1e-4, share) / Math.max(1e-5, 1 - share));
  const [from, m, s, end] = [logit(0.2), logit(move), logit(sell), logit(0.9995)];
  const at = logit(free);
  const part = (low: number, high: number) => Math.max(0, Math.min(1, (at - low) / (high - low)));
  return (part(from, m) + part(m, s) + part(s, end)) / 3;
}

function plantScout(world: World<ScoutSlice>, member: Member, ask: ScoutAsk): PlantScout {
  const { slice, sight, plant } = member;
  const { say, now_ms } = world;
  const page = pageWords(say);
  const at = reckoned(slice, sight);
  const bench = benchOf(world, member);
  const here = world.members.findIndex((each) => each.plant.id === plant.id);
  const [before, after] = [world.members[here - 1], world.members[here + 1]];
  const near = [before, after].filter(
    (each): each is Member => each !== undefined && benchOf(world, each) === bench && bench !== undefined,
  );
  const { touch_ms } = labelUntil(slice);
  const shut: GateSaid = { open: false, said: page.notYet };
  const spot = bench?.spots.find(({ id }) => id === plant.spot)?.name;
  return {
    plant: plant.id,
    number: world.numberOf(plant.id),
    kind: world.kindOf(plant),
    place: [bench?.name, spot].filter(Boolean).join(", "),
    ...(before ? { before: before.plant.id } : {}),
    ...(after ? { after: after.plant.id } : {}),
    near: near.map((each) => ({ plant: each.plant.id, number: world.numberOf(each.plant.id) })),
    guided: GUIDED,
    isWatched: at !== undefined,
    evidence: at ? at.pests.map((belief) => evidenceOf(belief, world, member)) : [],
    gates: at
      ? { move: gateSaid(at.move, "move", world, member), sell: gateSaid(at.sell, "sell", world, member) }
      : { move: shut, sell: shut },
    ...(at ? saidOfPlant(at, world, member) : {}),
    ...(touch_ms > now_ms
      ? { labelSaid: page.label(`${say.day(touch_ms, now_ms)} ${say.time(touch_ms)}`) }
      : {}),
    courses: at ? coursesSaid(at, world) : [],
    sprayGates: sprayGates(world, member),
    ...(ask.course === undefined ? {} : { course: courseSaid(readCourse(ask.course, say), world, member) }),
    figures: figures(at),
  };
}

const figures = (at: Reckoned | undefined): Record<string, number | string> =>
  at
    ? {
        clean_frac: at.free.mid,
        cleanLow_frac: at.free.low,
        cleanHigh_frac: at.free.high,
        looks_n: at.looks_n,
      }
    : {};

function evidenceOf(belief: PestBelief, world: World<ScoutSlice>, member: Member): Evidence {
  const words = scoutingWords(world.say);
  const page = pageWords(world.say);
  const { sight } = member;
  const [move, sell] = [sight.assumed("clearMove"), sight.assumed("clearSell")];
  const isInfested = belief.of.state === "infested";
  return {
    key: belief.pest,
    name: words.pest(belief.pest),
    said: isInfested ? words.found : page.evidence(fraction(belief.free.mid), belief.looks_n),
    low: onStaff(belief.free.low, move, sell),
    mid: onStaff(belief.free.mid, move, sell),
    high: onStaff(belief.free.high, move, sell),
    ghost: onStaff(belief.next_frac, move, sell),
    free_frac: belief.free.mid,
    dateSaid: isInfested ? page.gateShut("sell") : gateSaid(belief.move, "move", world, member).said,
  };
}

function saidOfPlant(at: Reckoned, world: World<ScoutSlice>, member: Member): Partial<PlantScout> {
  const { say, now_ms } = world;
  const { slice, sight, plant } = member;
  const words = scoutingWords(say);
  const page = pageWords(say);
  const [move, sell] = [sight.assumed("clearMove"), sight.assumed("clearSell")];
  const names = (pests: readonly Pest[]) => say.list(pests.map((pest) => words.pest(pest)));
  const holder = at.pests.find(({ pest }) => pest === at.holder);
  const isReleased = releaseInForce(slice, sight.pooled as ScoutPool | undefined, plant.id, "sell");
  const { spells } = sight.airAt(plant.spot, sight.dateOf(now_ms));
  const day = sight.airAt(plant.spot, sight.dateOf(now_ms));
  const mean_C = spells.reduce((sum, { air_C }) => sum + air_C, 0) / Math.max(1, spells.length);
  const cheapest =
    holder && !at.sell.open && holder.of.state !== "infested" ? bestMinute(holder, member) : undefined;
  const warm = at.sell.open ? undefined : warmer(at, member);
  const trend = trendOf(slice);
  return {
    together: {
      key: "together",
      name: page.together,
      said: page.evidence(fraction(at.free.mid), at.looks_n),
      low: onStaff(at.free.low, move, sell),
      mid: onStaff(at.free.mid, move, sell),
      high: onStaff(at.free.high, move, sell),
      ghost: onStaff(
        at.pests.reduce((product, { next_frac }) => product * next_frac, 1),
        move,
        sell,
      ),
      free_frac: at.free.mid,
      dateSaid: gateSaid(at.sell, "sell", world, member).said,
    },
    ...(holder && !at.sell.open
      ? {
          holderSaid: page.holder(
            words.pest(holder.pest),
            holder.of.state === "infested"
              ? words.found
              : holder.floor_ms > now_ms
                ? page.hides
                : page.tooFew,
          ),
        }
      : {}),
    habitSaid: page.habit(say.day(at.habit_ms, now_ms)),
    ...(at.unseen.length + at.held.length > 0
      ? { unseenSaid: page.unseen(names([...at.unseen, ...at.held])) }
      : {}),
    ...(cheapest ? { cheapestSaid: page.cheapest(cheapest, words.pest(holder?.pest ?? "aphid")) } : {}),
    ...(warm !== undefined && warm >= 2 ? { warmSaid: page.warm(warm, say.temperature(WARM_C)) } : {}),
    ...(trend
      ? {
          trendSaid: page.trend(
            trend.says,
            trend.says === "none" ? undefined : `${say.number(trend.doubling_d, 0)} d`,
          ),
        }
      : {}),
    ...(day.air.origin === "assumed" ? { staleSaid: page.stale(say.temperature(mean_C)) } : {}),
    working: cleanWorking(at, sight),
    ...(at.sell.open && !isReleased
      ? {
          release: {
            kind: RELEASED,
            on: [plant.id],
            data: {
              to: "sell",
              free_frac: at.free.mid,
              low_frac: at.free.low,
              high_frac: at.free.high,
              looks_n: at.looks_n,
              ...(at.holder ? { holder: at.holder } : {}),
            },
          },
        }
      : {}),
  };
}

/** Ways of looking and their minutes: which brings most against what holds. */
const CANDIDATES: readonly { readonly planned: Planned; readonly minutes: number }[] = [
  { planned: { look: GUIDED }, minutes: 1 },
  { planned: { look: { way: "lens", leaves_n: 12 } }, minutes: 1.5 },
  { planned: { look: { way: "tap" } }, minutes: 0.5 },
  { planned: { look: { way: "disc" } }, minutes: 1.5 },
  { planned: { cards_n: 1 }, minutes: 0.7 },
];

function bestMinute(holder: PestBelief, { slice, sight }: Member): string | undefined {
  const lnOdds = (share: number) => Math.log(share / Math.max(1e-9, 1 - share));
  let best: { readonly planned: Planned; readonly worth: number } | undefined;
  for (const { planned, minutes } of CANDIDATES) {
    const after = reckoned(slice, sight, { plan: [planned] })?.pests.find(({ pest }) => pest === holder.pest);
    const worth = (lnOdds(after?.next_frac ?? 0) - lnOdds(holder.free.mid)) / minutes;
    if (worth > 0.005 && (!best || worth > best.worth)) best = { planned, worth };
  }
  if (!best) return undefined;
  const words = scoutingWords(sight.say);
  return "look" in best.planned
    ? words.method(best.planned.look)
    : pageWords(sight.say).card(best.planned.cards_n);
}

/** Days that a warm quarantine would save from now on. */
function warmer(at: Reckoned, { slice, sight }: Member): number | undefined {
  if (at.sell.best_ms === undefined) return undefined;
  const air = airOf(slice, sight, at.start_ms);
  const hours_C = air.hours_C.map((hours, day) =>
    day < air.today_d ? hours : hours.map((air_C) => Math.max(WARM_C, air_C)),
  );
  const warm = reckoned(slice, sight, { air: { ...air, hours_C, key: `${air.key}/warm` } });
  return warm?.sell.best_ms === undefined
    ? undefined
    : Math.round((at.sell.best_ms - warm.sell.best_ms) / DAY_ms);
}

/** Trend of what cards caught, all pests together but gnats apart: theirs come in cohorts. */
function trendOf(slice: ScoutSlice) {
  const cards = slice.acts.flatMap((act) =>
    act.act === "card" && !act.data.lost && act.data.out_d !== undefined ? [act] : [],
  );
  if (cards.length < 4) return undefined;
  const first_ms = cards[0]?.at_ms ?? 0;
  const trend = cardTrend({
    times_d: cards.map(({ at_ms }) => (at_ms - first_ms) / DAY_ms),
    counts_n: cards.map(({ data }) => data.caught.reduce((sum, { count_n }) => sum + count_n, 0)),
    exposures_d: cards.map(({ data }) => (data.out_d ?? 1) * (data.cards_n ?? 1)),
  });
  return trend.says === "too little" ? undefined : trend;
}

function coursesSaid(at: Reckoned, world: World<ScoutSlice>): readonly string[] {
  const words = scoutingWords(world.say);
  return at.pests.flatMap(({ pest, of }) =>
    of.state === "treated" && of.course
      ? [
          pageWords(world.say).course(
            words.pest(pest),
            of.course.given_n,
            of.course.wanted_n,
            fraction(of.course.cleared_frac),
          ),
        ]
      : [],
  );
}

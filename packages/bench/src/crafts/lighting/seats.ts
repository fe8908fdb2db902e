import type { AirDay } from "../../places/ahead.ts";
import { benchesInOrder } from "../../places/places.ts";
import { addDays } from "../../places/time.ts";
import { type Working, type WorkingInput, weakest } from "../../working/working.ts";
import type { World, WorldMember } from "../craft.ts";
import { assign } from "./assign.ts";
import { dayCap, type NeedFigures, needOf } from "./need.ts";
import type { Seats, Swap } from "./page-shape.ts";
import type { LightSlice } from "./slice.ts";
import { usualDate } from "./usual-date.ts";
import { lightPageWords } from "./words-page.ts";
import { assumedInput, LIGHT, lightSaid, withLight } from "./workings.ts";

/** Pots weighed against each other in one go; larger houses are seated bench by bench. */
const TOGETHER_n = 250;
const SWAPS_n = 3;
/** Light beyond what is useful costs less than light that is missing; an hour past the day-length cap costs a mole. @source our assumption */
const TOO_MUCH_frac = 0.1;
const PAST_CAP_mol_per_h = 1;
/** A hand's work, so that nobody moves for nothing. @source our assumption */
const HAND_mol_m2_d = 0.05;
/** Light of a place known no better than this draws nobody there: first say which way its window faces. @source our assumption */
const UNKNOWN_SD_frac = 0.5;
const NOT_THERE_mol_m2_d = 1000;

interface Seat {
  readonly spot: string;
  readonly bench: string;
  readonly day: AirDay;
}
interface Guest {
  readonly member: WorldMember<LightSlice>;
  readonly need: NeedFigures;
  readonly cap_h: number;
  readonly seat: number;
}

/** Which pots would stand better elsewhere in a month: indoors, and never into or out of quarantine. */
export function seatsOf(world: World<LightSlice>, month: number): Seats {
  const words = lightPageWords(world.say).seats;
  const seats = seatsIn(world, month);
  const guests = guestsAt(world, seats);
  const groups =
    guests.length <= TOGETHER_n
      ? [guests]
      : [...new Set(seats.map(({ bench }) => bench))].map((bench) =>
          guests.filter((guest) => seats[guest.seat]?.bench === bench),
        );
  const found = groups.map((group) => seatGroup(world, group, seats, groups.length > 1));
  const swaps = found
    .flatMap(({ moves }) => moves)
    .sort((a, b) => b.gain_mol_m2_d - a.gain_mol_m2_d)
    .slice(0, SWAPS_n);
  const allGain_mol_m2_d = found.reduce((sum, { gain_mol_m2_d }) => sum + gain_mol_m2_d, 0);
  const first = swaps[0];
  return {
    said: first ? words.better(first.said) : guests.length > 1 ? words.best : words.few,
    swaps,
    allMoves_n: found.reduce((sum, { moved_n }) => sum + moved_n, 0),
    allGain_mol_m2_d,
    ...(first ? { working: first.working } : {}),
  };
}

function seatsIn({ places, airAt, calendar, now_ms }: World<LightSlice>, month: number): readonly Seat[] {
  const today = calendar.dateOf(now_ms);
  const middle = `${today.slice(0, 4)}-${String(month).padStart(2, "0")}-15`;
  const date = usualDate(today, middle < today ? addDays(middle, 365) : middle);
  return benchesInOrder(places)
    .filter(({ outdoors, quarantine }) => !outdoors && !quarantine)
    .flatMap((bench) => bench.spots.map(({ id }) => ({ spot: id, bench: bench.id, day: airAt(id, date) })));
}

/** Pots that stand alone at their spot: where two share one, nobody is told to move. */
function guestsAt(world: World<LightSlice>, seats: readonly Seat[]): readonly Guest[] {
  const seatOf = new Map(seats.map(({ spot }, i) => [spot, i]));
  const standing = new Map<number, WorldMember<LightSlice>[]>();
  for (const member of world.members) {
    const seat = seatOf.get(member.plant.spot ?? "");
    if (seat !== undefined) standing.set(seat, [...(standing.get(seat) ?? []), member]);
  }
  return [...standing].flatMap(([seat, members]) =>
    members.map((member) => {
      const need = needOf(member.sight);
      const { cap_h } = dayCap(world.speciesOf(member.plant), need.stage, world.assumed);
      return { member, need, cap_h, seat };
    }),
  );
}

/** Need not met, mol m⁻² d⁻¹: what is missing, a share of what is too much, hours past the cap. */
function unmet({ need, cap_h }: Guest, { day }: Seat): number {
  const light = day.dli_mol_m2_d;
  const missing = Math.max(0, need.min_mol_m2_d - light);
  const over = Math.max(0, light - need.max_mol_m2_d);
  return missing + TOO_MUCH_frac * over + PAST_CAP_mol_per_h * Math.max(0, day.daylight.lamp_h - cap_h);
}

function costOf(guest: Guest, at: number, seat: Seat): number {
  if (at === guest.seat) return unmet(guest, seat);
  return seat.day.daylight.sd_frac > UNKNOWN_SD_frac
    ? NOT_THERE_mol_m2_d
    : unmet(guest, seat) + HAND_mol_m2_d;
}

interface Group {
  readonly moves: readonly Swap[];
  readonly gain_mol_m2_d: number;
  readonly moved_n: number;
}

function seatGroup(
  world: World<LightSlice>,
  guests: readonly Guest[],
  seats: readonly Seat[],
  ownBenchOnly: boolean,
): Group {
  const taken = new Map<number, Guest[]>();
  for (const guest of guests) taken.set(guest.seat, [...(taken.get(guest.seat) ?? []), guest]);
  const single = guests.filter((guest) => taken.get(guest.seat)?.length === 1);
  const own = new Set(single.map(({ seat }) => seats[seat]?.bench));
  const open = seats.flatMap((seat, i) =>
    (taken.get(i)?.length ?? 0) <= 1 && (!ownBenchOnly || own.has(seat.bench)) ? [i] : [],
  );
  if (single.length === 0 || open.length < single.length) return { moves: [], gain_mol_m2_d: 0, moved_n: 0 };
  const cost = single.map((guest) => open.map((seat) => costOf(guest, seat, seats[seat] as Seat)));
  const columnOf = assign(cost);
  const here = single.map((guest) => open.indexOf(guest.seat));
  // Hands are weighed when seats are chosen; what is said is the light alone.
  const unmetOf = (columns: readonly number[]) =>
    columns.reduce(
      (sum, column, row) => sum + unmet(single[row] as Guest, seats[open[column] as number] as Seat),
      0,
    );
  const gain_mol_m2_d = Math.max(0, unmetOf(here) - unmetOf(columnOf));
  const moved_n = gain_mol_m2_d > 1e-9 ? columnOf.filter((column, row) => column !== here[row]).length : 0;
  const moves: Swap[] = [];
  const least = world.assumed("seatWorth_mol_m2_d");
  const now = [...here];
  for (let n = 0; n < SWAPS_n; n++) {
    const best = bestStep(cost, now, columnOf);
    if (!best || best.gain < least) break;
    moves.push(swapOf(world, single, best, open, seats));
    now[best.row] = best.column;
    if (best.other !== undefined) now[best.other] = best.from;
  }
  return { moves, gain_mol_m2_d, moved_n };
}

interface Step {
  readonly row: number;
  readonly from: number;
  readonly column: number;
  readonly other: number | undefined;
  readonly gain: number;
}

/** The step towards the best order that gains most by itself: one pot goes to its seat, who stands there takes the old one. */
function bestStep(
  cost: readonly (readonly number[])[],
  now: readonly number[],
  columnOf: readonly number[],
): Step | undefined {
  let best: Step | undefined;
  now.forEach((from, row) => {
    const column = columnOf[row] as number;
    if (column === from) return;
    const other = now.indexOf(column);
    const at = (who: number, where: number) => cost[who]?.[where] as number;
    const gain = at(row, from) - at(row, column) + (other < 0 ? 0 : at(other, column) - at(other, from));
    if (!best || gain > best.gain) best = { row, from, column, other: other < 0 ? undefined : other, gain };
  });
  return best;
}

function swapOf(
  world: World<LightSlice>,
  single: readonly Guest[],
  step: Step,
  open: readonly number[],
  seats: readonly Seat[],
): Swap {
  const { say, numberOf } = world;
  const words = lightPageWords(say);
  const from = seats[open[step.from] as number] as Seat;
  const to = seats[open[step.column] as number] as Seat;
  const guest = single[step.row] as Guest;
  const other = step.other === undefined ? undefined : (single[step.other] as Guest);
  const gain_mol_m2_d =
    unmet(guest, from) - unmet(guest, to) + (other ? unmet(other, to) - unmet(other, from) : 0);
  const number = numberOf(guest.member.plant.id);
  const light = (seat: Seat) => lightSaid(seat.day.dli_mol_m2_d, say);
  const said = other
    ? words.seats.swap(
        number,
        numberOf(other.member.plant.id),
        light(from),
        light(to),
        other.need.min_mol_m2_d <= from.day.dli_mol_m2_d,
      )
    : words.seats.move(number, say.name(to.spot), light(from), light(to));
  const who = [{ guest, old: from, next: to }, ...(other ? [{ guest: other, old: to, next: from }] : [])];
  const inputs: WorkingInput[] = who.flatMap(({ guest: one, old, next }) => {
    const name = numberOf(one.member.plant.id);
    const seatInput = (seat: Seat): WorkingInput => ({
      name: words.working.lightAt(name, say.name(seat.spot)),
      said: withLight(seat.day.dli_mol_m2_d, say),
      value: seat.day.dli_mol_m2_d,
      unit: LIGHT,
      origin: seat.day.light.origin,
      from: seat.day.light.from(say),
    });
    return [
      assumedInput(
        one.need.aimKey,
        one.need.aim_mol_m2_d,
        withLight(one.need.aim_mol_m2_d, say),
        words.working.needOf(name),
      ),
      seatInput(old),
      seatInput(next),
    ];
  });
  const working: Working = {
    title: words.working.seat,
    result: words.seats.gain(lightSaid(gain_mol_m2_d, say)),
    value: gain_mol_m2_d,
    unit: LIGHT,
    origin: weakest(inputs.map(({ origin }) => origin)),
    formula: words.working.seatFormula,
    sum: words.working.seatSum(
      who.map(({ guest: one, old, next }) => ({
        number: numberOf(one.member.plant.id),
        before: lightSaid(unmet(one, old), say),
        after: lightSaid(unmet(one, next), say),
      })),
      lightSaid(gain_mol_m2_d, say),
    ),
    inputs,
    source: words.working.sourceSeat,
    notes: [words.working.seatNote],
  };
  const moved = (one: Guest, spot: string) => ({
    kind: "plant.moved",
    on: [one.member.plant.id],
    data: { to: spot },
  });
  return {
    key: `${guest.member.plant.id}:${to.spot}`,
    plant: guest.member.plant.id,
    number,
    from: from.spot,
    to: to.spot,
    ...(other ? { other: { plant: other.member.plant.id, number: numberOf(other.member.plant.id) } } : {}),
    gain_mol_m2_d,
    said,
    drafts: [moved(guest, to.spot), ...(other ? [moved(other, from.spot)] : [])],
    working,
  };
}

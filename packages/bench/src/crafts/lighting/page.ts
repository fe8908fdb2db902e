import type { Json } from "../../book/entry.ts";
import { placeOfSpot } from "../../places/light/layout.ts";
import { compassSaid } from "../../places/light/sentences.ts";
import { type Bench, benchesInOrder } from "../../places/places.ts";
import type { Working } from "../../working/working.ts";
import { PageError, type World, type WorldMember } from "../craft.ts";
import { cautionsOf } from "./cautions.ts";
import { checkReading } from "./check-reading.ts";
import { debtSaid } from "./debt.ts";
import { energyOf } from "./energy.ts";
import { lampAdvice, timerSaid } from "./lamp-advice.ts";
import { dayCap, type NeedFigures, needOf } from "./need.ts";
import type {
  BenchLight,
  LightAsk,
  LightPage,
  MonthBar,
  Need,
  ReadAsk,
  SpotLit,
  SpotMonth,
  WindowDrawn,
} from "./page-shape.ts";
import { contoursOf, lampsDrawn, planOf, windowsDrawn } from "./plan.ts";
import { placesWithout, readingsOf, readingsShown } from "./read-taken.ts";
import { type MonthLight, monthsOf, yearOf } from "./season.ts";
import { seatsOf } from "./seats.ts";
import { type Before, shortOf } from "./short.ts";
import type { LightSlice } from "./slice.ts";
import { unsureWindow } from "./unsure.ts";
import { lightPageWords } from "./words-page.ts";
import { fromWorking, LIGHT, lightInputs, lightSaid, needWorking, Z80 } from "./workings.ts";
import { type Readable, worthReading } from "./worth.ts";

const DAY_ms = 86_400_000;
/** Light above what is useful by so much is worth saying. @source our assumption */
const BRIGHT_ratio = 1.25;
const ONE_SIDED_frac = 0.25;

/** Screen 3 and `sillwood light`. */
export function lightPage(world: World<LightSlice>, json: Json): LightPage {
  const ask = readAsk(json);
  const { places, calendar, now_ms, say } = world;
  const words = lightPageWords(say);
  const month = ask.month ?? Number(calendar.dateOf(now_ms).slice(5, 7));
  const all = benchesInOrder(places);
  if (ask.bench !== undefined && !places.benches.has(ask.bench))
    throw new PageError(
      `bench is ${JSON.stringify(ask.bench)}; expected one of ${all.map(({ id }) => id).join(", ") || "none: no bench yet"}`,
    );
  const shown = ask.bench === undefined ? all : all.filter(({ id }) => id === ask.bench);
  const benches = shown.map((bench) => benchLight(world, bench, month));
  const planted = benches.flatMap(({ spots }) => spots.filter(({ need }) => need !== undefined));
  const short_n = planted.filter(({ state }) => state === "short").length;
  const toSet = benches.flatMap(({ name, advice }) =>
    advice?.change ? [words.page.setLamp(name, advice.said)] : [],
  );
  const reading = ask.read && readingOf(world, ask.read, month);
  const head =
    all.length === 0
      ? words.page.noBench
      : planted.length === 0
        ? words.page.noPlants
        : words.page.head(short_n, planted.length, words.month(month));
  const energies = benches.flatMap(({ energy }) => energy ?? []);
  return {
    now_ms,
    month,
    monthSaid: words.month(month),
    said: [head, ...toSet].join(" "),
    benches,
    seats: seatsOf(world, month),
    ...(reading ? { reading } : {}),
    cautions: cautionsOf(world, benches),
    figures: {
      month_n: month,
      benches_n: benches.length,
      plants_n: planted.length,
      short_n,
      lamps_kWh_d: energies.reduce((sum, { kWh_d }) => sum + kWh_d, 0),
      lampsCost_minor_d: energies.reduce((sum, { cost_minor_d = 0 }) => sum + cost_minor_d, 0),
    },
  };
}

function readAsk(json: Json): LightAsk {
  if (typeof json !== "object" || json === null || Array.isArray(json))
    throw new PageError("what is asked of light is no object; expected {bench, month, read}, each optional");
  const { bench, month, read, ...others } = json as Readonly<Record<string, Json | undefined>>;
  const [other] = Object.keys(others);
  if (other !== undefined) throw new PageError(`${other} is asked of light; expected bench, month or read`);
  if (bench !== undefined && typeof bench !== "string")
    throw new PageError(`bench is ${JSON.stringify(bench)}; expected the id of a bench`);
  if (
    month !== undefined &&
    !(typeof month === "number" && Number.isInteger(month) && month >= 1 && month <= 12)
  )
    throw new PageError(`month is ${JSON.stringify(month)}; expected 1 to 12, a whole number`);
  return {
    ...(bench === undefined ? {} : { bench }),
    ...(month === undefined ? {} : { month: month as number }),
    ...(read === undefined ? {} : { read: toRead(read) }),
  };
}

function toRead(read: Json): ReadAsk {
  const { spot, kind, data, at_ms } = (read ?? {}) as Readonly<Record<string, Json | undefined>>;
  if (typeof spot !== "string")
    throw new PageError(`read.spot is ${JSON.stringify(spot) ?? "missing"}; expected the id of a spot`);
  if (kind !== "light.pair" && kind !== "light.lamp")
    throw new PageError(
      `read.kind is ${JSON.stringify(kind) ?? "missing"}; expected light.pair or light.lamp`,
    );
  if (data === undefined) throw new PageError("read.data is missing; expected the data of the reading");
  if (at_ms !== undefined && typeof at_ms !== "number")
    throw new PageError(`read.at_ms is ${JSON.stringify(at_ms)}; expected an instant in ms`);
  return { spot, kind, data, ...(at_ms === undefined ? {} : { at_ms }) };
}

function readingOf(world: World<LightSlice>, read: ReadAsk, month: number) {
  const bench = world.places.benches.get(world.places.benchOfSpot.get(read.spot) ?? "");
  if (!bench) throw new PageError(`read.spot is ${JSON.stringify(read.spot)}; expected a spot of a bench`);
  const member = world.members.find(({ plant }) => plant.spot === read.spot);
  return checkReading(world, bench, read, month, member && needOf(member.sight));
}

function benchLight(world: World<LightSlice>, bench: Bench, month: number): BenchLight {
  const { say, calendar, now_ms, places } = world;
  const words = lightPageWords(say);
  const windows = windowsDrawn(world, bench);
  const lamps = lampsDrawn(world, bench);
  const plan = planOf(world, bench, windows, lamps);
  const today = calendar.dateOf(now_ms);
  const middle = `${today.slice(0, 4)}-${String(month).padStart(2, "0")}-15`;
  const taken = readingsOf(world, bench);
  const last = taken[0];
  const airBefore = last && world.airIn(placesWithout(places, last.entry));
  const readables: Readable[] = [];
  const spots = bench.spots.flatMap((spot): SpotLit[] => {
    const scan = yearOf(world, world.airAt, spot.id);
    const before: Before | undefined =
      last && airBefore
        ? {
            entry: last.entry,
            scan: yearOf(world, airBefore, spot.id),
            said: `${last.said}, ${say.day(last.at_ms, now_ms)}`,
          }
        : undefined;
    const here = world.members.filter(({ plant }) => plant.spot === spot.id);
    const lit = (member: WorldMember<LightSlice> | undefined): SpotLit => {
      const need = member && needOf(member.sight);
      if (need) readables.push({ spot: spot.id, need, scan });
      return spotLit(world, spot, monthsOf(scan), month, {
        member,
        need,
        short:
          member &&
          need &&
          shortOf(world, {
            scan,
            need,
            cap_h: dayCap(world.speciesOf(member.plant), need.stage, world.assumed).cap_h,
            before,
          }),
      });
    };
    return here.length > 0 ? here.map(lit) : [lit(undefined)];
  });
  const plants_n = spots.filter(({ plant }) => plant !== undefined).length;
  const hasLamp = lamps.length > 0 && !bench.outdoors;
  const isThisMonth = month === Number(today.slice(5, 7));
  const advice = hasLamp ? lampAdvice(world, bench, isThisMonth ? undefined : middle) : undefined;
  const timer = hasLamp ? timerSaid(world, bench) : undefined;
  const worth = bench.outdoors ? undefined : worthReading(world, bench, readables);
  const contours = contoursOf(world, bench, plan, middle);
  const unsure = unsureWindow(world, bench, middle);
  return {
    bench: bench.id,
    name: bench.name,
    outdoors: bench.outdoors,
    quarantine: bench.quarantine ?? false,
    windowSaid: bench.outdoors
      ? words.page.openSky
      : windows.length > 0
        ? say.list(windows.map((window) => windowShort(window, words, say.language)))
        : hasLamp
          ? words.page.lampOnly
          : words.page.noWindow,
    windows: bench.outdoors ? [] : windows,
    lamps: hasLamp ? lamps : [],
    ...(timer ? { timer } : {}),
    plan,
    spots,
    ...(contours ? { contours } : {}),
    said: benchSaid(spots, words),
    ...(advice ? { advice } : {}),
    ...(timer
      ? {
          energy: energyOf(
            world,
            bench,
            timer.outSince_ms === undefined ? timer : { ...timer, hours_h: 0 },
            plants_n,
          ),
        }
      : {}),
    ...(worth ? { worth } : {}),
    ...(unsure ? { unsure } : {}),
    read: readingsShown(taken, world),
  };
}

const windowShort = (
  { faces_deg, glazing, origin }: WindowDrawn,
  words: ReturnType<typeof lightPageWords>,
  language: "en" | "de",
) =>
  words.page.window(
    compassSaid(faces_deg, language),
    origin === "assumed" ? undefined : words.glazing[glazing],
  );

/** The bench in one line: its worst spot, and at how many it is so. */
function benchSaid(spots: readonly SpotLit[], words: ReturnType<typeof lightPageWords>): string {
  const shorts = spots.flatMap(({ short }) => (short && short.state !== "never short" ? [short] : []));
  const planted_n = spots.filter(({ plant }) => plant !== undefined).length;
  if (planted_n === 0) return words.page.allFree;
  const worst =
    shorts.find(({ state }) => state === "short always") ??
    [...shorts].sort((a, b) => ((a.from?.date ?? "") < (b.from?.date ?? "") ? -1 : 1))[0];
  return worst ? words.page.bench(worst.said, shorts.length, planted_n) : words.page.enoughAllYear;
}

interface Standing {
  readonly member: WorldMember<LightSlice> | undefined;
  readonly need: NeedFigures | undefined;
  readonly short: SpotLit["short"] | undefined;
}

function spotLit(
  world: World<LightSlice>,
  spot: Bench["spots"][number],
  months: readonly MonthLight[],
  month: number,
  { member, need, short }: Standing,
): SpotLit {
  const { say, places, now_ms } = world;
  const words = lightPageWords(say);
  const light = months[month - 1] as MonthLight;
  const place = placeOfSpot(places, spot.id, now_ms);
  const slice = member?.slice;
  const number = member && world.numberOf(member.plant.id);
  const [mid, dull, sunny] = [light.mid_mol_m2_d, light.dull_mol_m2_d, light.sunny_mol_m2_d].map((each) =>
    lightSaid(each, say),
  ) as [string, string, string];
  const days = dull === sunny ? undefined : words.page.fromTo(dull, sunny);
  const side_frac = light.day.daylight.fromSide_frac;
  const debt = member && need && debtSaid(world, member, need);
  return {
    spot: spot.id,
    name: spot.name,
    along_m: place.along_m,
    fromGlass_m: place.fromGlass_m,
    placeOrigin: place.measured ? "measured" : "assumed",
    ...(member && number !== undefined
      ? { plant: member.plant.id, number, kind: world.kindOf(member.plant) }
      : {}),
    light: spotMonth(world, light, need),
    ...(need ? { need: needSaid(world, need) } : {}),
    state: stateOf(light, need),
    said:
      number !== undefined && need
        ? words.page.spot(spot.name, number, mid, lightSaid(need.min_mol_m2_d, say), days)
        : words.page.freeSpot(spot.name, mid, days),
    year: months.map((one) => monthBar(one, need, words)),
    ...(short ? { short } : {}),
    ...(slice && side_frac >= ONE_SIDED_frac
      ? { turnSaid: words.page.turned((now_ms - slice.turnedAt_ms) / DAY_ms, side_frac) }
      : {}),
    ...(debt === undefined ? {} : { debtSaid: debt }),
  };
}

function stateOf(
  { mid_mol_m2_d, sky_mol_m2_d }: MonthLight,
  need: NeedFigures | undefined,
): SpotLit["state"] {
  if (!need) return "free";
  if (mid_mol_m2_d < need.min_mol_m2_d) return "short";
  // Under the open sky a hardened plant takes what there is.
  return sky_mol_m2_d === 0 && mid_mol_m2_d > BRIGHT_ratio * need.max_mol_m2_d ? "bright" : "enough";
}

function monthBar(
  light: MonthLight,
  need: NeedFigures | undefined,
  words: ReturnType<typeof lightPageWords>,
): MonthBar {
  const name = words.month(light.month);
  return {
    month: light.month,
    name,
    letter: name.slice(0, 1),
    mid_mol_m2_d: light.mid_mol_m2_d,
    dull_mol_m2_d: light.dull_mol_m2_d,
    sunny_mol_m2_d: light.sunny_mol_m2_d,
    ...(need ? { need_mol_m2_d: need.min_mol_m2_d } : {}),
  };
}

const needSaid = ({ say }: World<LightSlice>, need: NeedFigures): Need => ({
  min_mol_m2_d: need.min_mol_m2_d,
  aim_mol_m2_d: need.aim_mol_m2_d,
  max_mol_m2_d: need.max_mol_m2_d,
  stageSaid: lightPageWords(say).stage[need.stage],
  origin: "assumed",
  working: needWorking(need, say),
});

function spotMonth({ say }: World<LightSlice>, light: MonthLight, need: NeedFigures | undefined): SpotMonth {
  const words = lightPageWords(say);
  const { working } = words;
  const low_mol_m2_d = light.mid_mol_m2_d * Math.exp(-Z80 * light.sd_frac);
  const high_mol_m2_d = light.mid_mol_m2_d * Math.exp(Z80 * light.sd_frac);
  const parts = { window: light.window_mol_m2_d, lamp: light.lamp_mol_m2_d, sky: light.sky_mol_m2_d };
  const { origin, from } = light.day.light;
  const said = (value: number) => lightSaid(value, say);
  const needs = need && needWorking(need, say);
  const slip: Working = {
    title: working.monthLight(words.month(light.month)),
    result: `${said(light.mid_mol_m2_d)} ${LIGHT} (${words.range(said(low_mol_m2_d), said(high_mol_m2_d))})`,
    value: light.mid_mol_m2_d,
    unit: LIGHT,
    low: low_mol_m2_d,
    high: high_mol_m2_d,
    origin,
    formula: working.monthFormula,
    sum: working.monthSum(said(parts.window), said(parts.lamp), said(parts.sky), said(light.mid_mol_m2_d)),
    inputs: [
      ...lightInputs(parts, light.day.light, say),
      {
        name: working.doubt,
        said: `±${say.percent(light.sd_frac)}`,
        value: light.sd_frac,
        unit: "share",
        origin,
        from: working.doubtFrom,
      },
      ...(needs ? [fromWorking(needs, needs.source)] : []),
    ],
    source: working.sourceLight,
    movesMost: parts.lamp > parts.window ? working.movesLamp : working.movesWindow,
    notes: [working.bandNote(said(light.dull_mol_m2_d), said(light.sunny_mol_m2_d))],
  };
  return {
    mid_mol_m2_d: light.mid_mol_m2_d,
    dull_mol_m2_d: light.dull_mol_m2_d,
    sunny_mol_m2_d: light.sunny_mol_m2_d,
    window_mol_m2_d: parts.window,
    lamp_mol_m2_d: parts.lamp,
    sky_mol_m2_d: parts.sky,
    low_mol_m2_d,
    high_mol_m2_d,
    origin,
    from: from(say),
    working: slip,
  };
}

import type { BenchAir } from "../nursery/bench-air.ts";
import { DAY_ms, HOUR_ms, instantOf, type LocalDay, localDays } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { drawPlant, drawVessel, type MediumName } from "../nursery/draw-plant.ts";
import type { Visit } from "../nursery/nursery.ts";
import { type Ground, outdoorAir, sharedWhims } from "../nursery/outdoor-air.ts";
import { drawPerson, type Person } from "../nursery/people.ts";
import type { PotShape } from "../nursery/pot-shape.ts";
import { type Happening, potAvailable_g } from "../nursery/potted-plant.ts";
import { roomAir } from "../nursery/room-air.ts";
import type { Tended } from "../nursery/tend.ts";
import { shiftedSeattle } from "../seattle.ts";

/** A grower with two benches, a window and a lamp, all drawn. */
export interface DrawnRun {
  readonly name: string;
  readonly zone: string;
  readonly ground: Ground;
  readonly from_ms: number;
  readonly days: readonly LocalDay[];
  readonly benches: readonly BenchAir[];
  readonly windowFaces_deg: number;
  readonly person: Person;
  readonly visits: readonly Visit[];
  readonly tended: readonly Tended[];
  readonly sizes: readonly ("small" | "middle" | "large")[];
  readonly media: readonly MediumName[];
  readonly moves: readonly LoggedMove[];
  readonly chance: Chance;
}

/** A move that the grower wrote down. */
interface LoggedMove {
  readonly key: number;
  readonly at_ms: number;
  readonly bench: number;
}

const ZONE = "America/Los_Angeles";
const WEIGHINGS = [1, 0, 2, 4] as const;
/** Share of growers who water by the calendar. @source our assumption */
const HABITUAL_frac = 0.2;

/** Draws the people, rooms, weather and plants of one run, from ranges wider than anybody would assume. */
export function drawRun(
  index: number,
  pots_n: number,
  days_n: number,
  horizon_d: number,
  chance: Chance,
): DrawnRun {
  // A start in the record's first two and a half years leaves room for the horizon.
  const from = new Date(Date.UTC(2024, 0, 1) + chance.whole(0, 900) * DAY_ms).toISOString().slice(0, 10);
  const all_n = days_n + horizon_d + 2;
  const days = localDays(ZONE, from, all_n);
  const warmer_C = chance.normal(0, 4);
  const weather = shiftedSeattle(from, all_n, 12).map((day) => ({
    ...day,
    tMax_C: day.tMax_C + warmer_C,
    tMin_C: day.tMin_C + warmer_C,
  }));
  const ground = {
    latitude_deg: chance.between(38, 54),
    longitude_deg: -122.3,
    elevation_m: chance.between(0, 700),
  };
  const sky = outdoorAir(days, weather, ground, chance.under("sky"));
  const faces_deg = chance.pick([90, 135, 180, 180, 225, 270]);
  const rooms = chance.under("rooms");
  const room = () => ({
    day_C: rooms.between(16, 24),
    night_C: rooms.between(12, 19),
    leaks_frac: rooms.between(0.3, 0.9),
    moisture_kPa: rooms.between(0.05, 0.6),
    wind_m_s: rooms.between(0.03, 0.3),
  });
  const on_h = rooms.whole(5, 9);
  const benches = [
    roomAir(
      days,
      sky,
      room(),
      {
        window: {
          faces_deg,
          glass_frac: rooms.between(0.45, 0.85),
          horizon_deg: rooms.between(0, 22),
          sky_frac: rooms.between(0.12, 0.45),
        },
      },
      chance.under("sill"),
    ),
    roomAir(
      days,
      sky,
      room(),
      { lamp: { ppfd_umol_m2_s: rooms.between(80, 380), on_h, off_h: on_h + rooms.whole(10, 16) } },
      chance.under("shelf"),
    ),
  ];
  const person = drawPerson("grower", chance.happens(HABITUAL_frac), chance.under("grower"));
  const from_ms = (days[0] as LocalDay).midnight_ms;
  const potted = Array.from({ length: pots_n }, (_, key) =>
    drawPot(key, index, from_ms, days_n, chance.under(`pot ${key}`)),
  );
  return {
    name: `run ${index}`,
    zone: ZONE,
    ground,
    from_ms,
    days,
    benches,
    windowFaces_deg: faces_deg,
    person,
    visits: drawVisits(days.slice(0, days_n), person, chance.under("visits")),
    tended: potted.map(({ tended }) => tended),
    sizes: potted.map(({ size }) => size),
    media: potted.map(({ medium }) => medium),
    moves: potted.flatMap(({ moves }) => moves),
    chance,
  };
}

/** Rounds on visit days only, in the morning, now and then left out. */
function drawVisits(days: readonly LocalDay[], person: Person, chance: Chance): Visit[] {
  const weekdays = chance.pick([
    [0, 1, 2, 3, 4, 5, 6],
    [0, 1, 2, 3, 4, 5, 6],
    [1, 2, 3, 4, 5],
    [1, 3, 5, 6],
    [1, 3, 5],
    [2, 6],
  ]);
  return days.flatMap((day) => {
    if (!weekdays.includes(day.weekday) || chance.happens(0.04)) return [];
    const at_ms = instantOf(ZONE, day.date, chance.between(7, 8.4));
    return [0, 1].map((bench) => ({ at_ms: Math.round(at_ms + bench * 12 * 60_000), bench, person }));
  });
}

function drawPot(key: number, run: number, from_ms: number, days_n: number, chance: Chance) {
  const size = (["small", "middle", "large"] as const)[key % 3] as "small" | "middle" | "large";
  const shape = drawShape(size, chance);
  const medium = chance.pick(["spongy", "spongy", "bark", "gritty"] as const);
  const vessel = drawVessel(shape, medium, chance.under("vessel"));
  const { traits, leafArea_m2, fresh_g } = drawPlant(vessel, chance.under("plant"));
  const bench = chance.happens(0.5) ? 0 : 1;
  const { happenings, moves } = drawHappenings(key, bench, from_ms, days_n, chance.under("happenings"));
  const { medium: traitsOfMedium } = vessel;
  const filled_frac = chance.between(0.3, 1);
  const pot = {
    at_ms: from_ms,
    plant: traits,
    vessel,
    bench,
    light_frac: chance.between(0.6, 1.25),
    surface_g:
      traitsOfMedium.surfaceDry_g +
      (traitsOfMedium.surfaceFull_g - traitsOfMedium.surfaceDry_g) * filled_frac,
    root_g: traitsOfMedium.rootWilt_g + (traitsOfMedium.rootFull_g - traitsOfMedium.rootWilt_g) * filled_frac,
    saucer_g: 0,
    leafArea_m2,
    fresh_g,
    roots_frac: 1,
    poured_g: 0,
    evaporated_g: 0,
    drunk_g: 0,
    lost_g: 0,
    next: 0,
    happenings,
    whims: sharedWhims(days_n + 60, chance.between(0.08, 0.3), chance.under("whims")),
  };
  const weighings_n = WEIGHINGS[run % 4] as 0 | 1 | 2 | 4;
  const tended: Tended = {
    key,
    pot,
    usual_mL: Math.max(30, Math.round((potAvailable_g(pot) * chance.between(0.45, 0.95)) / 10) * 10),
    weighings_n,
    weighAt_ms: weighings_n > 0 ? [from_ms + chance.between(1, 4) * DAY_ms] : [],
    watered_ms: from_ms - 2 * DAY_ms,
    interval_d: chance.between(3, 8),
    from_ms,
    until_ms: from_ms + days_n * DAY_ms,
  };
  // What the grower believes is in the pot; some do not know.
  const named: MediumName = chance.happens(0.15) ? "unknown" : medium;
  return { tended, size, medium: named, moves };
}

function drawShape(size: "small" | "middle" | "large", chance: Chance): PotShape {
  const [low, high] = { small: [8, 10.5], middle: [11, 14], large: [15, 20] }[size] as [number, number];
  const width_cm = Math.round(chance.between(low, high) * 2) / 2;
  const depth_cm = Math.round(width_cm * chance.between(0.55, 0.95) * 2) / 2;
  if (chance.happens(0.7)) return { form: "round", top_cm: width_cm, depth_cm };
  return {
    form: chance.happens(0.5) ? "oval" : "rectangular",
    length_cm: width_cm * 1.2,
    width_cm: width_cm * 0.85,
    depth_cm,
  };
}

/** Cuts and moves; half of the moves between benches are written down, cuts and shifts along a bench are not. */
function drawHappenings(key: number, bench: number, from_ms: number, days_n: number, chance: Chance) {
  const happenings: Happening[] = [];
  const moves: LoggedMove[] = [];
  const some = (mean_d: number, act: (at_ms: number) => void) => {
    let day = -mean_d * Math.log(1 - chance.uniform());
    while (day < days_n) {
      act(from_ms + day * DAY_ms);
      day += 4 - mean_d * Math.log(1 - chance.uniform());
    }
  };
  let stands = bench;
  some(70, (at_ms) => happenings.push({ at_ms, what: "trim", taken_frac: chance.between(0.1, 0.55) }));
  some(90, (at_ms) => happenings.push({ at_ms, what: "sip", volume_mL: chance.between(20, 90) }));
  some(60, (at_ms) =>
    happenings.push({ at_ms, what: "move", bench: -1, light_frac: chance.between(0.6, 1.25) }),
  );
  some(110, (at_ms) =>
    happenings.push({
      at_ms: Math.round(at_ms / HOUR_ms) * HOUR_ms,
      what: "move",
      bench: -2,
      light_frac: chance.between(0.6, 1.25),
    }),
  );
  happenings.sort((a, b) => a.at_ms - b.at_ms);
  return {
    happenings: happenings.map((each) => {
      if (each.what !== "move") return each;
      if (each.bench === -2) {
        stands = 1 - stands;
        if (chance.happens(0.7)) moves.push({ key, at_ms: each.at_ms, bench: stands });
      }
      return { ...each, bench: stands };
    }),
    moves,
  };
}

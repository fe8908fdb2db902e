import type { BenchAir } from "../nursery/bench-air.ts";
import { DAY_ms, type LocalDay, localDays } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import type { ShelfLamp } from "../nursery/lamp-light.ts";
import { type LivedInRoom, livedInRoom } from "../nursery/lived-in-room.ts";
import { type Ground, outdoorAir, type SkyHours } from "../nursery/outdoor-air.ts";
import { type Opposite, type Pane, type WindowPlace, windowLight } from "../nursery/window-light.ts";
import { shiftedSeattle } from "../seattle.ts";
import { drawn, RANGES } from "./ranges.ts";

export const ZONE = "America/Los_Angeles";
export const SPOTS_n = 12;
export const SILL = 0;
export const SHELF = 1;

/** Where a run takes place: two benches, a window and a lamp, under a sky. */
export interface Place {
  readonly from_ms: number;
  readonly days: readonly LocalDay[];
  readonly ground: Ground;
  readonly sky: SkyHours;
  readonly benches: readonly BenchAir[];
  readonly rooms: readonly LivedInRoom[];
  readonly window: {
    readonly pane: Pane;
    readonly opposite: Opposite;
    readonly places: readonly WindowPlace[];
  };
  readonly lamps: readonly (DrawnLamp | undefined)[];
}

/** A lamp with what stands on its label. */
export interface DrawnLamp {
  readonly lamp: ShelfLamp;
  readonly power_W: number;
  readonly length_m: number;
  readonly aside_m: readonly number[];
}

/** Draws ground, weather, rooms, window and lamps. */
export function drawPlace(all_n: number, chance: Chance): Place {
  const { place } = RANGES;
  const from = new Date(Date.UTC(2024, 0, 1) + chance.whole(...place.startsAfter_d) * DAY_ms)
    .toISOString()
    .slice(0, 10);
  const days = localDays(ZONE, from, all_n);
  const ground = {
    latitude_deg: drawn(chance, place.latitude_deg),
    longitude_deg: -122.3,
    elevation_m: drawn(chance, place.elevation_m),
  };
  const sky = outdoorAir(
    days,
    drawWeather(from, all_n, chance.under("weather")),
    ground,
    chance.under("sky"),
  );
  const window = drawWindow(chance.under("window"));
  const lights = chance.under("lights");
  const lamps = [
    // One sill in four has a lamp over it for the dark months.
    lights.happens(0.25) ? drawLamp(all_n, lights.under("sill lamp")) : undefined,
    drawLamp(all_n, lights.under("shelf lamp")),
  ];
  const rooms = [drawRoom(chance.under("sill room")), drawRoom(chance.under("shelf room"))];
  const places = windowLight(
    sky,
    ground,
    window.pane,
    window.opposite,
    {
      surfaces_m2: drawn(lights, RANGES.window.surfaces_m2),
      reflectance_frac: drawn(lights, RANGES.window.reflectance_frac),
    },
    window.places,
    drawn(lights, RANGES.window.turned_frac),
  );
  const stray_frac = drawn(lights, RANGES.lamp.stray_frac);
  const benches = rooms.map((room, bench) =>
    livedInRoom(
      days,
      sky,
      bench === SHELF ? { ...room, chill_frac: 0, radiator_C: 0 } : room,
      {
        ...(bench === SILL ? { window: { pane: window.pane, places } } : {}),
        ...(lamps[bench] ? { lamp: lamps[bench] as DrawnLamp } : {}),
        stray_frac: bench === SHELF ? stray_frac : 0,
      },
      SPOTS_n,
      chance.under(`room ${bench}`),
    ),
  );
  return { from_ms: (days[0] as LocalDay).midnight_ms, days, ground, sky, benches, rooms, window, lamps };
}

/** The record under another climate: warmer or colder, with wider days and less rain. */
function drawWeather(from: string, all_n: number, chance: Chance) {
  const warmer_C = drawn(chance, RANGES.place.warmer_C);
  const swing_frac = drawn(chance, RANGES.place.swing_frac);
  const rain_frac = drawn(chance, RANGES.place.rain_frac);
  return shiftedSeattle(from, all_n, 12).map((day) => {
    const middle_C = (day.tMax_C + day.tMin_C) / 2 + warmer_C;
    const half_C = ((day.tMax_C - day.tMin_C) / 2) * swing_frac;
    return {
      ...day,
      tMax_C: middle_C + half_C,
      tMin_C: middle_C - half_C,
      rain_mm: day.rain_mm * rain_frac,
    };
  });
}

function drawWindow(chance: Chance) {
  const { window } = RANGES;
  const wall_deg = chance.pick([
    0, 45, 90, 90, 135, 135, 135, 180, 180, 180, 180, 225, 225, 225, 270, 270, 315,
  ]);
  const clear_frac =
    drawn(chance, window.clear_frac) * (chance.happens(0.12) ? drawn(chance, window.curtain_frac) : 1);
  const pane: Pane = {
    faces_deg: (wall_deg + drawn(chance, window.facesOff_deg) + 360) % 360,
    width_m: drawn(chance, window.width_m),
    height_m: drawn(chance, window.height_m),
    foot_m: drawn(chance, window.foot_m),
    reveal_m: drawn(chance, window.reveal_m),
    panes_n: chance.pick([1, 2, 2, 2, 3] as const),
    extinction: drawn(chance, window.extinction),
    clear_frac,
    heat_frac: drawn(chance, window.heat_frac),
  };
  const from_deg = chance.between(-80, 40);
  const side = chance.happens(0.4)
    ? {
        from_deg,
        to_deg: from_deg + chance.between(15, 70),
        height_deg: drawn(chance, window.sideHeight_deg),
      }
    : undefined;
  const opposite: Opposite = {
    roofs_deg: drawn(chance, window.roofs_deg),
    ...(side ? { side } : {}),
    brow_deg: chance.happens(0.3) ? drawn(chance, window.brow_deg) : 90,
    ground_frac: drawn(chance, window.ground_frac),
    walls_frac: drawn(chance, window.walls_frac),
  };
  const firstRow_m = drawn(chance, window.firstRow_m);
  const rowApart_m = drawn(chance, window.rowApart_m);
  const half_m = (pane.width_m / 2) * drawn(chance, window.spread_frac);
  // Two rows of six, the second behind the first.
  const places = Array.from({ length: SPOTS_n }, (_, spot) => ({
    aside_m: half_m * ((Math.floor(spot / 2) - 2.5) / 2.5),
    back_m: firstRow_m + (spot % 2) * rowApart_m,
  }));
  return { pane, opposite, places };
}

function drawLamp(all_n: number, chance: Chance): DrawnLamp {
  const { lamp } = RANGES;
  const length_m = drawn(chance, lamp.length_m);
  const power_W = Math.round(drawn(chance, lamp.power_W));
  const lit =
    (power_W * drawn(chance, lamp.efficacy_umol_J) * drawn(chance, lamp.lands_frac)) /
    drawn(chance, lamp.area_m2);
  const [low, high] = lamp.ppfd_umol_m2_s;
  const on_h = chance.whole(...lamp.on_h);
  const burns_h = chance.whole(...lamp.burns_h);
  const changes = chance.happens(0.3);
  return {
    power_W,
    length_m,
    aside_m: Array.from({ length: SPOTS_n }, (_, spot) => (length_m / 2) * ((spot - 5.5) / 5.5)),
    lamp: {
      ppfd_umol_m2_s: Math.max(low, Math.min(high, lit)),
      hangs_m: drawn(chance, lamp.hangs_m),
      thrownBack_frac: drawn(chance, lamp.thrownBack_frac),
      fades_frac_y: drawn(chance, lamp.fades_frac_y),
      on_h,
      burns_h,
      slipsPerDay: drawn(chance, lamp.slipsPerDay),
      ...(changes
        ? {
            change: {
              day: chance.whole(20, Math.max(21, all_n - 45)),
              on_h,
              burns_h: Math.max(8, Math.min(18, burns_h + chance.pick([-4, -3, -2, 2, 3, 4]))),
            },
          }
        : {}),
    },
  };
}

function drawRoom(chance: Chance): LivedInRoom {
  const { room } = RANGES;
  const day_C = drawn(chance, room.day_C);
  return {
    day_C,
    night_C: Math.min(day_C, drawn(chance, room.night_C)),
    wakes_h: drawn(chance, room.wakes_h),
    sleeps_h: drawn(chance, room.sleeps_h),
    outAtWork_C: chance.happens(0.4) ? drawn(chance, room.outAtWork_C) : 0,
    heatsBelow_C: drawn(chance, room.heatsBelow_C),
    gains_C: drawn(chance, room.gains_C),
    slow_h: drawn(chance, room.slow_h),
    leaks_frac: drawn(chance, room.leaks_frac),
    chill_frac: drawn(chance, room.chill_frac),
    radiator_C: chance.happens(0.4) ? drawn(chance, room.radiator_C) : 0,
    moisture_kPa: drawn(chance, room.moisture_kPa),
    airs_per_h: drawn(chance, room.airs_per_h),
    wind_m_s: drawn(chance, room.wind_m_s),
    fan_m_s: chance.happens(0.3) ? drawn(chance, room.fan_m_s) : 0,
    lampWarmth_C: drawn(chance, room.lampWarmth_C),
  };
}

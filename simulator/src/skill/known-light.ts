import { DAY_ms, HOUR_ms, instantOf, type LocalDay } from "../nursery/calendar.ts";
import type { Chance } from "../nursery/chance.ts";
import { SHELF, SILL, SPOTS_n, ZONE } from "./draw-place.ts";
import type { DrawnRun } from "./draw-run.ts";

/** What the grower could say of the light of a bench when asked: roughly measured, partly wrong, never what was drawn. */
export interface KnownLight {
  readonly window?: {
    readonly faces_deg: number;
    readonly width_cm: number;
    readonly height_cm: number;
    /** Lower edge of the glass over the rims of the pots' trees; negative below. */
    readonly foot_cm: number;
    readonly panes_n: number;
    readonly curtain: boolean;
    /** Height of what stands opposite, by eye. */
    readonly roofs_deg: number;
    /** From the glass and right of its middle seen from outside, by spot. */
    readonly spots: readonly { readonly back_cm: number; readonly aside_cm: number }[];
  };
  readonly lamp?: {
    readonly power_W: number;
    readonly length_cm: number;
    readonly hangs_cm: number;
    /** As set on the clock, day by day of change. */
    readonly hours: readonly { readonly from_ms: number; readonly on_h: number; readonly off_h: number }[];
  };
  readonly lux: readonly LuxPair[];
}

/** A meter held level outdoors and then at a spot, within two minutes. */
export interface LuxPair {
  readonly at_ms: number;
  readonly spot: number;
  readonly outdoors_lux: number;
  readonly spot_lux: number;
}

/** Lux of a µmol m⁻² s⁻¹ of daylight and of white lamps. @source Thimijan and Heins 1983, HortScience 18 (from memory): 54; white diodes about 68 */
const DAYLIGHT_lux = 54;
const LAMP_lux = 68;
const MONTH_d = 30;

/** What could be said of each bench, drawn once a run. */
export function knownLight(run: DrawnRun, chance: Chance): KnownLight[] {
  return [SILL, SHELF].map((bench) => {
    const own = chance.under(bench);
    return {
      ...(bench === SILL ? { window: windowAsTold(run, own.under("window")) } : {}),
      ...lampAsTold(run, bench, own.under("lamp")),
      lux: run.tools.light === "none" ? [] : luxPairs(run, bench, own.under("lux")),
    };
  });
}

const toFive = (true_cm: number, chance: Chance, sdOfLog: number) =>
  Math.round((true_cm * chance.logNormal(1, sdOfLog)) / 5) * 5;

/** An eighth of the circle, sometimes the next one. */
export function facesAsTold_deg(run: DrawnRun, chance: Chance): number {
  const eighth =
    Math.round(run.window.pane.faces_deg / 45) + (chance.happens(0.1) ? chance.pick([-1, 1]) : 0);
  return (((eighth * 45) % 360) + 360) % 360;
}

function windowAsTold(run: DrawnRun, chance: Chance): NonNullable<KnownLight["window"]> {
  const { pane, opposite, places } = run.window;
  return {
    faces_deg: facesAsTold_deg(run, run.chance.under("compass")),
    width_cm: Math.max(20, toFive(pane.width_m * 100, chance, 0.05)),
    height_cm: Math.max(20, toFive(pane.height_m * 100, chance, 0.05)),
    foot_cm: Math.round(pane.foot_m * 20 + chance.normal(0, 1)) * 5,
    panes_n: chance.happens(0.15) ? chance.pick([1, 2, 3]) : pane.panes_n,
    curtain: pane.clear_frac < 0.5,
    roofs_deg: Math.max(0, Math.round((opposite.roofs_deg * chance.logNormal(1, 0.35)) / 5) * 5),
    spots: places.map(({ back_m, aside_m }) => ({
      back_cm: Math.max(5, toFive(back_m * 100, chance, 0.15)),
      aside_cm: Math.round(aside_m * 20 + chance.normal(0, 1)) * 5,
    })),
  };
}

function lampAsTold(run: DrawnRun, bench: number, chance: Chance): Pick<KnownLight, "lamp"> {
  const drawnLamp = run.lamps[bench];
  if (!drawnLamp) return {};
  const { lamp, power_W, length_m } = drawnLamp;
  const set = (from_ms: number, { on_h, burns_h }: { readonly on_h: number; readonly burns_h: number }) => ({
    from_ms,
    on_h,
    off_h: (on_h + burns_h) % 24,
  });
  const changed = lamp.change && run.days[lamp.change.day];
  return {
    lamp: {
      power_W,
      length_cm: toFive(length_m * 100, chance, 0.04),
      hangs_cm: Math.max(10, toFive(lamp.hangs_m * 100, chance, 0.12)),
      hours: [
        set(run.from_ms, lamp),
        ...(lamp.change && changed ? [set(changed.midnight_ms, lamp.change)] : []),
      ],
    },
  };
}

/** Once a month or so, about noon. One meter reads both, so that what it is off by is the same in both. */
function luxPairs(run: DrawnRun, bench: number, chance: Chance): LuxPair[] {
  const air = run.benches[bench];
  const lamp = run.lamps[bench];
  const pairs: LuxPair[] = [];
  for (let day = chance.whole(1, 9); day < run.days_n; day += chance.whole(MONTH_d - 10, MONTH_d + 20)) {
    const at_ms =
      instantOf(ZONE, (run.days[day] as LocalDay).date, 0) + Math.round(chance.between(0.46, 0.58) * DAY_ms);
    const spot = chance.whole(0, SPOTS_n - 1);
    const i = Math.floor((at_ms - run.from_ms) / HOUR_ms);
    const inside = air?.spots?.[spot]?.level_umol_m2_s[i];
    if (inside === undefined) continue;
    const lux = (umol: number, per: number) =>
      Math.max(1, Math.round(umol * per * run.tools.meter * chance.logNormal(1, 0.06)));
    pairs.push({
      at_ms,
      spot,
      outdoors_lux: lux(run.sky.air.ppfd_umol_m2_s[i] as number, DAYLIGHT_lux),
      spot_lux: lux(inside, bench === SHELF && lamp ? LAMP_lux : DAYLIGHT_lux),
    });
  }
  return pairs;
}

/** A day's light as somebody makes it of one reading at noon: times the hours of light, as if it were noon all day. */
export function lightFromLux_mol_m2_d(pair: LuxPair, hours_h: number, lamp: boolean): number {
  const ppfd_umol_m2_s = pair.spot_lux / (lamp ? LAMP_lux : DAYLIGHT_lux);
  return (ppfd_umol_m2_s * hours_h * 3600) / 1e6;
}

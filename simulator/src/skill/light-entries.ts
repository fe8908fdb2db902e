import type { Json } from "../book/line.ts";
import type { Chance } from "../nursery/chance.ts";
import { SHELF, SILL } from "./draw-place.ts";
import type { DrawnRun } from "./draw-run.ts";
import type { KnownLight, LuxPair } from "./known-light.ts";

/** Something a grower wrote of the light of a place: of the bench, or of one of its spots. */
export interface LightEntry {
  readonly kind: string;
  readonly bench: number;
  readonly spot?: number;
  readonly data: Json;
  readonly at_ms: number;
}

/** Not everybody measures a window or reads the label of a lamp when first asked. @source our assumption */
const DRAWS_WINDOW_frac = 0.6;
const MEASURES_SPOTS_frac = 0.5;
const READS_LABEL_frac = 0.75;
/** Out of the sun's reach an outdoor meter stays below this under an evenly grey sky, lux. @source our assumption */
const GREY_lux = 25_000;

/** Windows, lamps, clocks and pairs of lux as the growers of a run told them to the book. */
export function lightEntries(run: DrawnRun, known: readonly KnownLight[], chance: Chance): LightEntry[] {
  return [SILL, SHELF].flatMap((bench) => {
    const own = chance.under(bench);
    const { window, lamp, lux } = known[bench] as KnownLight;
    return [
      ...(window && own.happens(DRAWS_WINDOW_frac)
        ? windowEntries(run, bench, window, own.under("window"))
        : []),
      ...(lamp && own.happens(READS_LABEL_frac) ? lampEntries(run, bench, lamp) : []),
      ...(run.tools.light === "lux" && bench === SILL ? lux.map((pair) => pairEntry(bench, pair)) : []),
    ];
  });
}

function windowEntries(
  run: DrawnRun,
  bench: number,
  window: NonNullable<KnownLight["window"]>,
  chance: Chance,
): LightEntry[] {
  const { panes_n } = window;
  const glazing = panes_n === 1 ? "single" : panes_n === 2 ? "double" : "triple";
  const at_ms = run.from_ms + 90_000;
  const held = (value: number, low: number, high: number) => Math.max(low, Math.min(high, value));
  return [
    {
      kind: "bench.window",
      bench,
      at_ms,
      data: {
        faces_deg: window.faces_deg,
        width_m: held(window.width_cm / 100, 0.2, 8),
        height_m: held(window.height_cm / 100, 0.2, 4),
        sill_m: held(window.foot_cm / 100, -2, 2),
        glazing,
        veil: window.curtain ? "net curtain" : "none",
        opposite_deg: held(window.roofs_deg, 0, 80),
      },
    },
    ...(chance.happens(MEASURES_SPOTS_frac)
      ? window.spots.map(({ back_cm, aside_cm }, spot) => ({
          kind: "spot.stands",
          bench,
          spot,
          at_ms,
          // Told from outside; the book sees the window from inside.
          data: { along_m: held(-aside_cm / 100, -6, 6), fromGlass_m: held(back_cm / 100, 0.02, 6) },
        }))
      : []),
  ];
}

function lampEntries(run: DrawnRun, bench: number, lamp: NonNullable<KnownLight["lamp"]>): LightEntry[] {
  const burns_h = ({ on_h, off_h }: { readonly on_h: number; readonly off_h: number }) =>
    (off_h - on_h + 24) % 24 || 24;
  return [
    {
      kind: "bench.lamp",
      bench,
      at_ms: run.from_ms + 95_000,
      data: {
        form: "strip",
        source: "white LED",
        length_m: Math.max(0.02, Math.min(4, lamp.length_cm / 100)),
        power_W: Math.max(1, Math.round(lamp.power_W)),
        above_m: Math.max(0.03, Math.min(4, lamp.hangs_cm / 100)),
      },
    },
    ...lamp.hours.map((hours) => ({
      kind: "bench.timer",
      bench,
      at_ms: hours.from_ms + 100_000,
      data: { from_h: hours.on_h % 24, hours_h: burns_h(hours) },
    })),
  ];
}

const pairEntry = (bench: number, pair: LuxPair): LightEntry => ({
  kind: "light.pair",
  bench,
  spot: pair.spot,
  at_ms: pair.at_ms,
  data: {
    inside_lux: Math.max(1, Math.min(150_000, pair.spot_lux)),
    outside_lux: Math.max(50, Math.min(150_000, pair.outdoors_lux)),
    sky: pair.outdoors_lux < GREY_lux ? "evenly grey" : "broken",
  },
});

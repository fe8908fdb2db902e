import type { SurfaceLayer, UnwrittenHabit } from "@sillwood/science/water";
import type { Sight } from "../craft.ts";

/** When a pot would be watered, written or not: not every day is a visit, and eyes differ. @source our assumption */
const UNWRITTEN = { pourPerDay_frac: 0.8, dry: { at_frac: 0.55, spread_frac: 0.2 } } as const;

/** The assumptions that every step of a pot asks for, as adjusted. */
export interface WaterSettings {
  readonly demandNoise_frac: number;
  readonly leafWander: number;
  readonly stressFrom_frac: number;
  readonly unwritten: UnwrittenHabit;
  readonly leafLight_frac: number;
  /** Of the leaves' loss outdoors. */
  readonly outdoors_frac: number;
  readonly umbrella_frac: number;
  /** Of the surface that is not covered. */
  readonly bare_frac: number;
  readonly layer: SurfaceLayer;
}

const known = new WeakMap<Sight["assumed"], WaterSettings>();
let lastAssumed: Sight["assumed"] | undefined;
let last: WaterSettings | undefined;

/** Looked up once for all steps of a run: a book that adjusts an assumption runs anew, and is asked by another function. */
export function waterSettings({ assumed }: Sight): WaterSettings {
  if (last !== undefined && assumed === lastAssumed) return last;
  let settings = known.get(assumed);
  if (!settings) {
    settings = settingsOf(assumed);
    known.set(assumed, settings);
  }
  lastAssumed = assumed;
  last = settings;
  return settings;
}

function settingsOf(assumed: Sight["assumed"]): WaterSettings {
  const readilyEvaporable_mm = assumed("surfaceReady_mm");
  return {
    demandNoise_frac: assumed("demandNoise_frac"),
    leafWander: assumed("leafWander"),
    stressFrom_frac: assumed("stressFrom_frac"),
    unwritten: { ...UNWRITTEN, unwritten_frac: assumed("unwrittenPour_frac") },
    leafLight_frac: assumed("leafLight_frac"),
    outdoors_frac: assumed("isolation_frac") * assumed("sunlitLeaf_frac"),
    umbrella_frac: assumed("umbrella_frac"),
    bare_frac: 1 - assumed("surfaceCover_frac"),
    layer: {
      readilyEvaporable_mm,
      totalEvaporable_mm: Math.max(readilyEvaporable_mm + 1, assumed("surfaceTotal_mm")),
    },
  };
}

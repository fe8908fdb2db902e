import {
  fitLamp,
  fittedLamp_umol_m2_s,
  type Lamp,
  type LampShape,
  lampFlux_umol_s,
  lampsLevel_umol_m2_s,
  type MapReading,
  mapError,
  mapRatio,
  ppfdFromLux_umol_m2_s,
} from "@sillwood/science/light";
import type { Origin } from "../../working/working.ts";
import type { Bench, From, Places } from "../places.ts";
import type { LampData, UnderLampData } from "./kinds.ts";
import { placeOfSpot, type SpotPlace } from "./layout.ts";
import { inForceByNumber } from "./said.ts";
import { lampHoursAt } from "./windows.ts";

/** Light of all lamps of a bench at one spot. */
export interface LampLight {
  readonly ppfd_umol_m2_s: number;
  readonly from_h: number;
  readonly hours_h: number;
  /** Relative sd of the strength. */
  readonly sd_frac: number;
  readonly power_W: number;
  readonly origin: Origin;
  readonly readings_n: number;
}

/** Photons per joule at the plug where the label does not say. @source sun-light sheet section 9 (Nelson and Bugbee 2014; LED from memory) */
const USUAL_EFFICACY_umol_J: Readonly<Record<LampData["source"], number>> = {
  "white LED": 2.2,
  fluorescent: 0.95,
  "metal halide": 1.46,
  "high pressure sodium": 1.3,
  "red and blue": 2.2,
};
/** A lamp is built over the pots: above the row when nobody said where. @source our assumption */
const OVER_ROW_m = 0.25;
/**
 * By label, by its watts alone, where nobody measured where the spot lies under the lamp, and what a map leaves beside its own error. Watts
 * alone: fittings differ by a third in photons a joule, and by as much in what reaches the shelf; clocks slip. Ends of a shelf and its back
 * row get two thirds of its middle. @source sun-light sheet section 11; first three our assumption
 */
const SD = { label: 0.2, guessed: 0.5, unmeasuredPlace: 0.3, ownReading: 0.1, ageing: 0.05 } as const;

/** Lamps in force at an instant, as the science takes them: x along the bench, y from the glass, z above the leaves. */
export function lampsAt(
  places: Places,
  bench: string,
  at_ms: number,
): readonly { readonly lamp: Lamp; readonly data: LampData }[] {
  return inForceByNumber(places.light.lamps.get(bench), ({ lamp_n = 1 }) => lamp_n, at_ms).map(
    ({ data }) => ({
      data,
      lamp: {
        ...shapeOf(data),
        flux_umol_s: lampFlux_umol_s({
          power_W: data.power_W,
          efficacy_umol_J: data.efficacy_umol_J ?? USUAL_EFFICACY_umol_J[data.source],
        }),
        x_m: data.along_m ?? 0,
        y_m: data.fromGlass_m ?? OVER_ROW_m,
        z_m: data.above_m,
      },
    }),
  );
}

function shapeOf({ form, length_m = 0.1, width_m, beam_deg }: LampData): LampShape {
  if (form === "point") return { shape: "point", ...(beam_deg === undefined ? {} : { beam_deg }) };
  if (form === "disc") return { shape: "disc", radius_m: length_m / 2 };
  if (form === "strip") return { shape: "strip", length_m };
  return { shape: "rectangle", length_m, width_m: width_m ?? length_m };
}

/** The light of the lamps of a bench at one of its spots; undefined where no lamp was written. */
export function lampLight(places: Places, bench: Bench, spot: string, at_ms: number): LampLight | undefined {
  const lamps = lampsAt(places, bench.id, at_ms);
  if (lamps.length === 0) return undefined;
  const at = underLamps(placeOfSpot(places, spot, at_ms), lamps);
  const modelled = levelAt(lamps, at);
  const readings = mapReadings(places, bench, lamps, at_ms);
  const ratio = readings.length > 0 ? mapRatio(readings, { x_m: at.along_m, y_m: at.fromGlass_m }) : 1;
  const isLabelled = lamps.every(({ data }) => data.efficacy_umol_J !== undefined);
  const { from_h, hours_h } = lampHoursAt(places, bench.id, at_ms);
  return {
    ppfd_umol_m2_s: modelled * ratio,
    from_h,
    hours_h,
    sd_frac: places.light.underLamps.has(spot)
      ? Math.hypot(SD.ownReading, SD.ageing)
      : readings.length > 0
        ? Math.min(isLabelled ? SD.label : SD.guessed, Math.hypot(mapError(readings).error_frac, SD.ageing))
        : isLabelled
          ? Math.hypot(SD.label, at.measured ? 0 : SD.unmeasuredPlace)
          : Math.hypot(SD.guessed, at.measured ? 0 : SD.unmeasuredPlace),
    power_W: lamps.reduce((sum, { data }) => sum + data.power_W, 0),
    origin: readings.length > 0 ? "measured" : isLabelled ? "learned" : "assumed",
    readings_n: readings.length,
  };
}

/** Pots in a row that nobody measured stand under the lit length, not beside it: that is why the lamp hangs there. */
function underLamps(
  at: SpotPlace,
  lamps: readonly { readonly lamp: Lamp; readonly data: LampData }[],
): SpotPlace {
  if (at.measured) return at;
  const ends = lamps.flatMap(({ lamp, data }) => {
    const half_m = 0.45 * (data.length_m ?? 2 * data.above_m);
    return [lamp.x_m - half_m, lamp.x_m + half_m];
  });
  return { ...at, along_m: Math.max(Math.min(...ends), Math.min(Math.max(...ends), at.along_m)) };
}

const levelAt = (lamps: readonly { readonly lamp: Lamp }[], at: SpotPlace, lower_m = 0): number =>
  lampsLevel_umol_m2_s(
    lamps.map(({ lamp }) => lamp),
    { x_m: at.along_m, y_m: at.fromGlass_m, z_m: -lower_m },
  );

/** What was read under the lamps against what their labels say, spot by spot. */
function mapReadings(
  places: Places,
  bench: Bench,
  lamps: readonly { readonly lamp: Lamp; readonly data: LampData }[],
  at_ms: number,
): MapReading[] {
  const first = lamps[0] as (typeof lamps)[number];
  const found: MapReading[] = [];
  for (const { id } of [...bench.spots, { id: bench.id }]) {
    const read = (places.light.underLamps.get(id) ?? []).filter((one) => one.at_ms <= at_ms);
    if (read.length === 0) continue;
    const at = underLamps(placeOfSpot(places, id, at_ms), lamps);
    const ratio = ratioRead(read, first.data, (above_m) => levelAt(lamps, at, above_m - first.data.above_m));
    if (ratio !== undefined)
      found.push({
        x_m: at.along_m,
        y_m: at.fromGlass_m,
        ratio: Math.max(MOST_OFF ** -1, Math.min(MOST_OFF, ratio)),
      });
  }
  return found;
}

/** A reading further from the label than this is a slip of a meter or of the label; it still says which way. */
const MOST_OFF = 8;

/** Measured over modelled at the leaves: by strength and size where two heights were read, else the middle of the ratios. */
function ratioRead(
  read: readonly From<UnderLampData>[],
  lamp: LampData,
  modelledAt: (above_m: number) => number,
): number | undefined {
  const all = read.flatMap(({ data }) => {
    const ppfd = data.ppfd_umol_m2_s ?? umolOfLux(data.under_lux ?? 0, lamp.source);
    const above_m = data.above_m ?? lamp.above_m;
    return ppfd === undefined || modelledAt(above_m) <= 0 ? [] : [{ ppfd, above_m }];
  });
  if (all.length === 0) return undefined;
  const heights = new Map(all.map(({ above_m, ppfd }) => [above_m, ppfd]));
  if (heights.size >= 2) {
    const fit = fitLamp({ heights_m: [...heights.keys()], readings_umol_m2_s: [...heights.values()] });
    if (fit.strength_umol_s !== null && fit.size_m !== null)
      return (
        fittedLamp_umol_m2_s({
          strength_umol_s: fit.strength_umol_s,
          size_m: fit.size_m,
          height_m: lamp.above_m,
        }) / modelledAt(lamp.above_m)
      );
  }
  const ln = all.reduce((sum, { ppfd, above_m }) => sum + Math.log(ppfd / modelledAt(above_m)), 0);
  return Math.exp(ln / all.length);
}

/** Of red and blue lamps lux says nothing. */
const umolOfLux = (illuminance_lx: number, source: LampData["source"]): number | undefined =>
  source === "red and blue" ? undefined : ppfdFromLux_umol_m2_s({ illuminance_lx, source });

import { civilElevation_deg, extraterrestrialRadiation_MJ_m2_d, sunDay } from "@sillwood/science/sun";
import type { Said } from "../../words/said.ts";
import { whence } from "../../words/whence.ts";
import type { WhenceWords } from "../../words/whence-shape.ts";
import { type Origin, weakest } from "../../working/working.ts";
import type { Daylight } from "../ahead.ts";
import type { LitData } from "../kinds.ts";
import { type Bench, type From, inForceAt, type Places } from "../places.ts";
import type { Records } from "../records.ts";
import type { Site } from "../site.ts";
import { type Calibration, calibrationOf } from "./calibration.ts";
import { type Clearness, clearnessOf } from "./clearness.ts";
import { type LampLight, lampLight } from "./lamp-light.ts";
import { windowLight } from "./window-light.ts";
import { type Pane, panesOf, windowsAllRound } from "./windows.ts";

/** Light of a spot on one day, whether by window, lamp or as somebody typed it, and where the number comes from. */
export interface SpotLight {
  readonly daylight: Daylight;
  readonly lampFrom_h: number;
  /** Hours of light, where somebody typed them. */
  readonly litHours_h?: number;
  readonly origin: Origin;
  readonly from: Said;
}

/** Where not even the direction of the window is known: a factor of two either way. @source our assumption */
const UNKNOWN_SD_frac = 0.7;
/**
 * A daily light that somebody typed stands until something newer, and for every spot of its bench. Under a lamp a meter is off by an
 * eighth and a phone by a third, ends and back rows get a third less, hours change; behind a window one day or one noon is read, a dull day
 * is a third of a bright one, and the season goes on. @source our assumption; of the meters: sun-light sheet section 11
 */
const TYPED_SD_frac = { lamp: 0.45, window: 0.7, sun: 0.35 } as const;
const LAMP_ON_h = 6;
const LAMP_HOURS_h = 14;
/** Half the spherical light of a lamp overhead over the level one. @source our assumption, after a wide lamp close above */
const LAMP_AROUND_per_level = 0.75;
const UMOL_PER_MOL = 1e6;
const SECONDS_PER_h = 3600;
const NOON_ms = 12 * 3_600_000;
/** Photons that plants use per solar energy: share 0.45, of which each joule holds 4.57 µmol. @source sun-light sheet section 4 */
const PHOTONS_mol_MJ = 0.45 * 4.57;

/** The sky over a site on one date: what all its spots share. */
export interface SkyDay {
  readonly date: string;
  readonly dayOfYear_d: number;
  readonly clear: Clearness;
  readonly outdoors_mol_m2_d: number;
  readonly sunUp_h: number;
  /** From civil dawn to civil dusk. */
  readonly dayLength_h: number;
}

export function skyDay(
  date: string,
  from_ms: number,
  dayOfYear_d: number,
  records: Records,
  site: Site,
): SkyDay {
  const clear = clearnessOf(date, records, site);
  const noon = {
    noon_ms: from_ms + NOON_ms,
    latitude_deg: site.latitude_deg,
    longitude_deg: site.longitude_deg,
  };
  const above_MJ = extraterrestrialRadiation_MJ_m2_d({ latitude_deg: site.latitude_deg, dayOfYear_d });
  return {
    date,
    dayOfYear_d,
    clear,
    outdoors_mol_m2_d: above_MJ * clear.kt * PHOTONS_mol_MJ,
    sunUp_h: sunDay(noon).daylight_h,
    dayLength_h: sunDay({ ...noon, threshold_deg: civilElevation_deg }).daylight_h,
  };
}

/** What gives a spot its light, whatever the sky: it changes with what is written of the place, not with the date. */
export interface LightSources {
  readonly typed: LitData | undefined;
  readonly panes: readonly Pane[];
  readonly lamp: LampLight | undefined;
  readonly calibration: Calibration | undefined;
}

const NO_SOURCES: LightSources = { typed: undefined, panes: [], lamp: undefined, calibration: undefined };

/** @param at_ms the instant at which windows, lamps and readings must be in force: the end of the day */
export function lightSources(
  places: Places,
  bench: Bench | undefined,
  spot: string,
  at_ms: number,
): LightSources {
  const typed = typedLight(places, bench, spot, at_ms);
  if (typed) return { ...NO_SOURCES, typed: typed.data };
  if (!bench) return NO_SOURCES;
  const panes = panesOf(places, bench, spot, at_ms);
  const lamp = lampLight(places, bench, spot, at_ms);
  const calibration = calibrationOf(places, bench, spot, panes, at_ms);
  return { typed: undefined, panes, lamp, calibration };
}

/** Instants from which on `lightSources` of a spot may be others, ascending: something was written of it, its bench or a neighbour. */
export function lightInstants_ms(
  { lit, light }: Places,
  bench: Bench | undefined,
  spot: string,
): readonly number[] {
  const ids = new Set([spot, ...(bench ? [bench.id, ...bench.spots.map(({ id }) => id)] : [])]);
  const { windows, stands, lamps, lampHours, outages, pairs, underLamps } = light;
  const instants_ms = new Set<number>();
  for (const said of [lit, windows, stands, lamps, lampHours, outages, pairs, underLamps])
    for (const id of ids) for (const { at_ms } of said.get(id) ?? []) instants_ms.add(at_ms);
  return [...instants_ms].sort((a, b) => a - b);
}

export function spotLight(
  sources: LightSources,
  bench: Bench | undefined,
  sky: SkyDay,
  site: Site,
): SpotLight {
  const { typed, panes, lamp, calibration } = sources;
  if (typed) return typedAs(typed, bench, sky);
  if (!bench || !calibration || (panes.length === 0 && !lamp)) return unknownLight(sky, site);
  const window = throughPanes(panes, calibration.ratio_frac, sky, site);
  const lamp_mol_m2_d = lamp ? (lamp.ppfd_umol_m2_s * lamp.hours_h * SECONDS_PER_h) / UMOL_PER_MOL : 0;
  const all_mol_m2_d = window.level_mol_m2_d + lamp_mol_m2_d;
  // Of one geometry: what is wrong with the light of the sky is mostly wrong with the beam, too.
  const windowSd_mol_m2_d =
    calibration.skySd_frac * window.sky_mol_m2_d +
    calibration.beamSd_frac * (window.level_mol_m2_d - window.sky_mol_m2_d);
  const sd_mol_m2_d = Math.hypot(windowSd_mol_m2_d, (lamp?.sd_frac ?? 0) * lamp_mol_m2_d);
  return {
    daylight: {
      window_mol_m2_d: window.level_mol_m2_d,
      lamp_mol_m2_d,
      sky_mol_m2_d: 0,
      dull_mol_m2_d: window.dull_mol_m2_d + lamp_mol_m2_d,
      sunny_mol_m2_d: window.sunny_mol_m2_d + lamp_mol_m2_d,
      sd_frac: all_mol_m2_d > 0 ? sd_mol_m2_d / all_mol_m2_d : UNKNOWN_SD_frac,
      around_mol_m2_d: window.around_mol_m2_d + lamp_mol_m2_d * LAMP_AROUND_per_level,
      fromSide_deg: panes[0]?.faces_deg ?? 0,
      fromSide_frac: all_mol_m2_d > 0 ? window.level_mol_m2_d / all_mol_m2_d : 0,
      dayLength_h: Math.max(panes.length > 0 ? sky.dayLength_h : 0, lamp?.hours_h ?? 0),
      lamp_h: lamp?.hours_h ?? 0,
      lamp_umol_m2_s: lamp?.ppfd_umol_m2_s ?? 0,
      outdoors_mol_m2_d: sky.outdoors_mol_m2_d,
    },
    lampFrom_h: lamp?.from_h ?? LAMP_ON_h,
    ...cameFrom(bench, panes, lamp, calibration),
  };
}

interface Through {
  readonly level_mol_m2_d: number;
  /** Of it what comes from sky and ground. */
  readonly sky_mol_m2_d: number;
  readonly dull_mol_m2_d: number;
  readonly sunny_mol_m2_d: number;
  readonly around_mol_m2_d: number;
}

/** Through all panes: the mean of the equally likely days of the season, or the one day that was seen. */
function throughPanes(panes: readonly Pane[], ratio_frac: number, sky: SkyDay, site: Site): Through {
  if (panes.length === 0)
    return { level_mol_m2_d: 0, sky_mol_m2_d: 0, dull_mol_m2_d: 0, sunny_mol_m2_d: 0, around_mol_m2_d: 0 };
  const days = sky.clear.days.map((kt) => {
    const light = windowLight(panes, kt, sky.dayOfYear_d, site);
    return {
      sky: light.diffuse_mol_m2_d * ratio_frac,
      level: light.diffuse_mol_m2_d * ratio_frac + light.direct_mol_m2_d,
      around: light.diffuseAround_mol_m2_d * ratio_frac + light.directAround_mol_m2_d,
    };
  });
  const mean = (of: (day: (typeof days)[number]) => number) =>
    days.reduce((sum, day) => sum + of(day), 0) / days.length;
  const levels = days.map(({ level }) => level).sort((a, b) => a - b);
  return {
    level_mol_m2_d: mean(({ level }) => level),
    sky_mol_m2_d: mean(({ sky }) => sky),
    dull_mol_m2_d: levelAt(levels, 0.2),
    sunny_mol_m2_d: levelAt(levels, 0.8),
    around_mol_m2_d: mean(({ around }) => around),
  };
}

/** Quantile of equally likely days, each standing in the middle of its share. */
function levelAt(ascending: readonly number[], probability: number): number {
  const place = Math.max(0, Math.min(ascending.length - 1, probability * ascending.length - 0.5));
  const low = Math.floor(place);
  const high = Math.min(ascending.length - 1, low + 1);
  return (
    (ascending[low] as number) + (place - low) * ((ascending[high] as number) - (ascending[low] as number))
  );
}

/** A typed daily light counts until a window, a lamp or a reading of the place is written later. */
function typedLight(
  places: Places,
  bench: Bench | undefined,
  spot: string,
  at_ms: number,
): From<LitData> | undefined {
  const said =
    inForceAt(places.lit.get(spot), at_ms) ?? (bench && inForceAt(places.lit.get(bench.id), at_ms));
  if (!said || !bench) return said;
  const { windows, lamps, pairs, underLamps } = places.light;
  const newer = [windows, lamps, pairs, underLamps].some((all) =>
    [bench.id, spot].some((id) => all.get(id)?.some((one) => one.at_ms > said.at_ms && one.at_ms <= at_ms)),
  );
  return newer ? undefined : said;
}

function typedAs(data: LitData, bench: Bench | undefined, sky: SkyDay): SpotLight {
  const { dli_mol_m2_d, light, hours_h } = data;
  const { days } = sky.clear;
  const mean = days.reduce((sum, kt) => sum + kt, 0) / days.length;
  const lamp_h = light === "lamp" ? (hours_h ?? LAMP_HOURS_h) : 0;
  return {
    daylight: {
      window_mol_m2_d: light === "window" ? dli_mol_m2_d : 0,
      lamp_mol_m2_d: light === "lamp" ? dli_mol_m2_d : 0,
      sky_mol_m2_d: light === "sun" ? dli_mol_m2_d : 0,
      dull_mol_m2_d: light === "lamp" ? dli_mol_m2_d : (dli_mol_m2_d * levelAt(days, 0.2)) / mean,
      sunny_mol_m2_d: light === "lamp" ? dli_mol_m2_d : (dli_mol_m2_d * levelAt(days, 0.8)) / mean,
      sd_frac: TYPED_SD_frac[light],
      around_mol_m2_d: dli_mol_m2_d * (light === "window" ? WINDOW_AROUND_per_level : LAMP_AROUND_per_level),
      fromSide_deg: bench?.windowFaces_deg ?? 0,
      fromSide_frac: light === "window" ? 1 : 0,
      dayLength_h: light === "lamp" ? lamp_h : sky.dayLength_h,
      lamp_h,
      lamp_umol_m2_s: lamp_h > 0 ? (dli_mol_m2_d * UMOL_PER_MOL) / (lamp_h * SECONDS_PER_h) : 0,
      outdoors_mol_m2_d: sky.outdoors_mol_m2_d,
    },
    lampFrom_h: 12 - lamp_h / 2,
    ...(hours_h === undefined ? {} : { litHours_h: hours_h }),
    origin: "measured",
    from: whence(({ light }) => light.written(bench?.name)),
  };
}

/** Half the spherical light behind a window over the level one. @source our assumption, after the patches of an open window */
const WINDOW_AROUND_per_level = 1.1;

/** A usual window in each of the four directions, as likely as one another. */
function unknownLight(sky: SkyDay, site: Site): SpotLight {
  const cases = windowsAllRound.map((panes) => throughPanes(panes, 1, sky, site));
  const mean = (of: (one: Through) => number) => cases.reduce((sum, one) => sum + of(one), 0) / cases.length;
  return {
    daylight: {
      window_mol_m2_d: mean(({ level_mol_m2_d }) => level_mol_m2_d),
      lamp_mol_m2_d: 0,
      sky_mol_m2_d: 0,
      dull_mol_m2_d: mean(({ dull_mol_m2_d }) => dull_mol_m2_d),
      sunny_mol_m2_d: mean(({ sunny_mol_m2_d }) => sunny_mol_m2_d),
      sd_frac: UNKNOWN_SD_frac,
      around_mol_m2_d: mean(({ around_mol_m2_d }) => around_mol_m2_d),
      fromSide_deg: 0,
      fromSide_frac: 0,
      dayLength_h: sky.dayLength_h,
      lamp_h: 0,
      lamp_umol_m2_s: 0,
      outdoors_mol_m2_d: sky.outdoors_mol_m2_d,
    },
    lampFrom_h: LAMP_ON_h,
    origin: "assumed",
    from: whence(({ light }) => light.directionUnknown),
  };
}

function cameFrom(
  bench: Bench,
  panes: readonly Pane[],
  lamp: LampLight | undefined,
  calibration: Calibration,
): Pick<SpotLight, "origin" | "from"> {
  const origins: Origin[] = [];
  if (panes.length > 0) origins.push(calibration.origin);
  if (lamp) origins.push(lamp.origin);
  const window = ({ light }: WhenceWords) =>
    calibration.pairs_n > 0
      ? light.paired(bench.name, calibration.pairs_n)
      : panes[0]?.origin === "assumed"
        ? light.guessed
        : light.window(bench.name);
  return {
    origin: weakest(origins),
    from: whence((words, say) =>
      say.list([
        ...(panes.length > 0 ? [window(words)] : []),
        ...(lamp ? [words.light.lamp(bench.name)] : []),
      ]),
    ),
  };
}

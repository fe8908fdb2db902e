import { within } from "../errors/index.ts";
import { clearSkyGlobal_W_m2 } from "../sun/clear-sky.ts";
import type { PaneView } from "./pane-view.ts";
import { planes_n } from "./pane-view.ts";

/**
 * Share of the light outdoors that a level leaf gets behind its panes on an evenly overcast day, as modelled.
 *
 * Overcast sky and ground; the sun stays out of it
 *
 * @param views of `paneView`, all of one place
 * @returns share of the light on open level ground
 * @source MoonSpencer1942; HowellCatalog
 */
export function overcastShare_frac(views: readonly PaneView[]): number {
  return views.reduce(
    (sum, view) => sum + (view.skyFactors_frac[planes_n] as number) + (view.groundFactors_frac[0] as number),
    0,
  );
}

export type SpotCalibration = {
  /** multiplies modelled light from sky and ground, never the beam */
  readonly spotRatio: number;
  readonly state: "accepted" | "ask";
  /** what to ask for, when the ratio is not to be believed */
  readonly ask: string;
};

/**
 * Calibration of a spot from two readings within two minutes on an evenly overcast day: at the leaf, and outdoors under open sky.
 *
 * k = (inside/outside as read) / (inside/outside as modelled); the meter's gain and its lux constant cancel. Believed between
 * 0.2 and 1.5
 *
 * @param spot readings at the leaf and outdoors, in the same unit whatever it is, 0.01 to 200000; share modelled, 0.00001 to 1
 * @returns ratio; whether it is accepted; what to ask about when it is not
 * @throws QuantityError outside those ranges, or when it is brighter inside than outside
 * @source our assumption; common practice of daylight factors
 * @example spotCalibration({ readInside: 1400, readOutside: 9000, modelled_frac: 0.2 }).spotRatio // 0.778
 */
export function spotCalibration(spot: {
  readonly readInside: number;
  readonly readOutside: number;
  readonly modelled_frac: number;
}): SpotCalibration {
  const { readInside, readOutside, modelled_frac } = spot;
  within("readInside", readInside, 0.01, 200_000);
  within("readOutside", readOutside, 0.01, 200_000);
  within("modelled_frac", modelled_frac, 0.00001, 1);
  within("readInside", readInside, 0.01, readOutside);
  const spotRatio = readInside / readOutside / modelled_frac;
  if (spotRatio > 0.2 && spotRatio < 1.5) return { spotRatio, state: "accepted", ask: "" };
  const ask =
    spotRatio <= 0.2
      ? "a tree, a balcony or a house outside, a curtain, dirty glass, or the wrong window size"
      : "sun between the readings, a reading outdoors in the shade, the distance to the glass, or the wrong direction (a compass shows magnetic north: add the declination)";
  return { spotRatio, state: "ask", ask };
}

/**
 * Gain of a meter from one reading in full sun: clear sky, sun above 30°, held level.
 *
 * expected PPFD = Haurwitz × 0.45 × 4.57, lux = that × 54; right within 12 %
 *
 * @param meter elevation of the sun as seen [°], 30 to 90; reading, 0.01 to 200000, and its unit
 * @returns light expected in the meter's unit; factor for its readings; relative error of that, one standard deviation
 * @throws QuantityError outside those ranges: a lower sun makes it useless
 * @source Haurwitz1945; FaustLogan2018; ThimijanHeins1983; error our assumption
 * @example meterGain({ apparentElevation_deg: 50, reading: 1600, inLux: false }).gain // 1.001
 */
export function meterGain(meter: {
  readonly apparentElevation_deg: number;
  readonly reading: number;
  readonly inLux: boolean;
}): { readonly expected: number; readonly gain: number; readonly error_frac: number } {
  within("apparentElevation_deg", meter.apparentElevation_deg, 30, 90);
  within("reading", meter.reading, 0.01, 200_000);
  const ppfd_umol_m2_s = clearSkyGlobal_W_m2(meter.apparentElevation_deg) * 0.45 * 4.57;
  const expected = meter.inLux ? ppfd_umol_m2_s * 54 : ppfd_umol_m2_s;
  return { expected, gain: expected / meter.reading, error_frac: 0.12 };
}

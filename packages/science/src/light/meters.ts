import type { ScreeningNote } from "../air/index.ts";
import { within } from "../errors/index.ts";
import { clearSkyGlobal_W_m2 } from "../sun/clear-sky.ts";

/** Working errors of meters, one standard deviation, relative: our own grading, from memory; phones are no meters (Energies2022). */
export const meterErrors_frac = {
  "phone without diffuser": 0.4,
  "phone with diffuser, calibrated": 0.2,
  "cheap lux meter": 0.15,
  "quantum sensor": 0.075,
} as const;

const note = (level: ScreeningNote["level"], quantity: string, what: string, likelyCause: string) => ({
  level,
  quantity,
  what,
  likelyCause,
});

/** Light under a clear sky at its brightest may be passed by cloud edges; a tenth more is another error. */
const aboveClear_frac = 1.1;

/**
 * Look over a reading of light before it is used.
 *
 * @param reading value, any, and whether it is in lux, else in µmol m⁻² s⁻¹; elevation of the sun as seen [°], -90 to 90; whether it was taken indoors without lamps; how far the sensor was off level [°], 0 to 90; distance from the shadow of one's body [m], 0 to 100
 * @returns notes, none when all is usual
 * @throws QuantityError for the angles and the distance outside those ranges
 * @source our assumption
 * @example screenLightReading({ reading: 140000, inLux: true, apparentElevation_deg: 60, indoors: false })[0].level // "refuse"
 */
export function screenLightReading(reading: {
  readonly reading: number;
  readonly inLux: boolean;
  readonly apparentElevation_deg: number;
  readonly indoors: boolean;
  readonly offLevel_deg?: number;
  readonly fromShadow_m?: number;
}): readonly ScreeningNote[] {
  const {
    reading: value,
    inLux,
    apparentElevation_deg,
    indoors,
    offLevel_deg = 0,
    fromShadow_m = 1,
  } = reading;
  within("apparentElevation_deg", apparentElevation_deg, -90, 90);
  within("offLevel_deg", offLevel_deg, 0, 90);
  within("fromShadow_m", fromShadow_m, 0, 100);
  const notes: ScreeningNote[] = [];
  const most = inLux ? 130_000 : 2300;
  if (!(value >= 0)) notes.push(note("refuse", "reading", "below 0, or no number", "a slip of the pen"));
  else if (value > most) {
    const unit = inLux ? "lx" : "µmol m⁻² s⁻¹";
    notes.push(
      note("refuse", "reading", `more than ${most} ${unit}`, "another unit, or a meter that reads high"),
    );
  } else if (apparentElevation_deg < -6 && indoors && value > (inLux ? 5 * 54 : 5)) {
    notes.push(
      note("look", "reading", "light at night without lamps", "a lamp, or the clock of another zone"),
    );
  } else if (indoors) {
    const clear = clearSkyGlobal_W_m2(apparentElevation_deg) * 0.45 * 4.57 * (inLux ? 54 : 1);
    if (value > aboveClear_frac * clear + (inLux ? 270 : 5)) {
      notes.push(
        note("refuse", "reading", "brighter than a clear sky outdoors", "a lamp was on, or another unit"),
      );
    }
  }
  if (offLevel_deg > 10) {
    notes.push(note("refuse", "offLevel_deg", "more than 10° off level", "the sensor was tilted"));
  }
  if (fromShadow_m < 0.1) {
    notes.push(note("refuse", "fromShadow_m", "within 0.1 m of a shadow of one's own", "stand aside"));
  }
  return notes;
}

/**
 * Look over a run of readings for a meter at its end: phones clip bright light to one value.
 *
 * @param readings in any one unit, in order, any value
 * @returns notes, none when all is usual: three equal readings or more at the highest value are a flat top
 * @source our assumption
 * @example screenFlatTop([200, 900, 1000, 1000, 1000, 400])[0].level // "refuse"
 */
export function screenFlatTop(readings: readonly number[]): readonly ScreeningNote[] {
  const highest = readings.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  let run = 0;
  for (const value of readings) {
    run = value === highest ? run + 1 : 0;
    if (run >= 3) {
      return [note("refuse", "readings", `flat at ${highest}`, "the meter cannot read brighter light")];
    }
  }
  return [];
}

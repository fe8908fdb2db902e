import { within } from "../errors/index.ts";
import { rad_per_deg } from "../units.ts";

/** Horizon by whole degrees of the compass, from one height or evenly spaced ones from north. Not exported by the field. */
export const horizonTable_rad = (horizon_deg: number | readonly number[]): Float64Array => {
  const given = typeof horizon_deg === "number" ? [horizon_deg] : horizon_deg;
  within("directions_n", given.length, 1, 360);
  for (const height_deg of given) within("horizon_deg", height_deg, 0, 90);
  return Float64Array.from({ length: 361 }, (_, azimuth_deg) => {
    const place = (azimuth_deg / 360) * given.length;
    const before = Math.floor(place);
    const from = given[before % given.length] as number;
    const to = given[(before + 1) % given.length] as number;
    return (from + (to - from) * (place - before)) * rad_per_deg;
  });
};

const degreesOfTurn = 180 / Math.PI;

/** Height of the horizon in a direction of any turn [rad]. Not exported by the field. */
export const horizonAt_rad = (horizon_rad: Float64Array, azimuth_rad: number): number => {
  const turns = azimuth_rad * degreesOfTurn;
  const place = turns - 360 * Math.floor(turns / 360);
  const before = Math.floor(place);
  const from = horizon_rad[before] as number;
  return from + ((horizon_rad[before + 1] ?? from) - from) * (place - before);
};

/** A place or a direction: right, away from the camera of the front photo, up. */
export type Triple = readonly [number, number, number];

/** Difference of two places. @source our assumption */
export function minus(a: Triple, b: Triple): Triple {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** One place moved by a multiple of a direction. @source our assumption */
export function along(a: Triple, direction: Triple, times: number): Triple {
  return [a[0] + direction[0] * times, a[1] + direction[1] * times, a[2] + direction[2] * times];
}

/** Inner product. @source our assumption */
export function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Length. @source our assumption */
export function norm(a: Triple): number {
  return Math.hypot(a[0], a[1], a[2]);
}

/** The direction of a vector; upright for one of no length. @source our assumption */
export function unit(a: Triple): Triple {
  const length = norm(a);
  return length > 1e-12 ? [a[0] / length, a[1] / length, a[2] / length] : [0, 0, 1];
}

/** Level direction of a compass angle, counted from X towards Y. @source our assumption */
export function levelDirection(azimuth_deg: number): Triple {
  const angle = (azimuth_deg * Math.PI) / 180;
  return [Math.cos(angle), Math.sin(angle), 0];
}

/** Compass angle of a direction, from X towards Y, 0 to 360. @source our assumption */
export function azimuthOf_deg(direction: Triple): number {
  return ((Math.atan2(direction[1], direction[0]) * 180) / Math.PI + 360) % 360;
}

/** The part of a level direction that stands across a stem: where an axil's shoot leaves it. @source our assumption */
export function radialAt(tangent: Triple, azimuth_deg: number): Triple {
  const level = levelDirection(azimuth_deg);
  const across = along(level, tangent, -dot(level, tangent));
  // A stem that lies in that very direction has no side there: its upper side is taken.
  return norm(across) > 1e-6 ? unit(across) : unit(along([0, 0, 1], tangent, -tangent[2]));
}

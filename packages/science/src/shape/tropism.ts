import { within } from "../errors/index.ts";
import { along, dot, type Triple, unit } from "./vector.ts";

const degrees = 180 / Math.PI;

/** The angle left after a stretch of shoot, rad. */
const relaxed = (start: number, stretches: number): number =>
  2 * Math.atan(Math.tan(start / 2) * Math.exp(-stretches));

/**
 * Angle of a shoot from the direction it turns to, so far along it.
 *
 * tan(A/2) = tan(A0/2) exp(-s/Lc): the steady state of dC/dt = -β sin A - γ C, with Lc = γ/β
 *
 * @param shoot angle at its base [°], 0 to 179; distance along it over the straightening length, 0 to 100
 * @returns angle [°]
 * @throws QuantityError outside those ranges
 * @source Bastien2013; closed form derived here
 * @example shootAngle_deg({ start_deg: 90, stretches: 1 }) // 40.4
 */
export function shootAngle_deg(shoot: { readonly start_deg: number; readonly stretches: number }): number {
  within("start_deg", shoot.start_deg, 0, 179);
  within("stretches", shoot.stretches, 0, 100);
  return relaxed(shoot.start_deg / degrees, shoot.stretches) * degrees;
}

/**
 * Angle from upright at which a shoot settles between gravity and light.
 *
 * Direction of z + M l, l the direction of the light
 *
 * @param pull pull of light against gravity, 0 to 10; direction of the light from upright [°], 0 to 180
 * @returns angle from upright, towards the light [°]
 * @throws QuantityError outside those ranges
 * @source Bastien2015; form of the balance from memory
 * @example setAngle_deg({ lightPull: 0.5, lightFromVertical_deg: 90 }) // 26.57
 */
export function setAngle_deg(pull: {
  readonly lightPull: number;
  readonly lightFromVertical_deg: number;
}): number {
  within("lightPull", pull.lightPull, 0, 10);
  within("lightFromVertical_deg", pull.lightFromVertical_deg, 0, 180);
  const angle = pull.lightFromVertical_deg / degrees;
  return Math.atan2(pull.lightPull * Math.sin(angle), 1 + pull.lightPull * Math.cos(angle)) * degrees;
}

/**
 * Where a shoot leaves its axil: part along the stem, part away from it.
 *
 * e0 = cos ψ t + sin ψ r
 *
 * @source our assumption
 */
export function shootStart(tangent: Triple, radial: Triple, insertion_rad: number): Triple {
  return unit(along(along([0, 0, 0], tangent, Math.cos(insertion_rad)), radial, Math.sin(insertion_rad)));
}

/**
 * The direction to which shoots turn: up, drawn towards the mean light.
 *
 * @source Bastien2015; form of the balance from memory
 */
export function preferredDirection(light: Triple, lightPull: number): Triple {
  return unit(along([0, 0, 1], light, lightPull));
}

/**
 * Direction of a shoot so far along it, turning in the plane of its start and the preferred direction.
 *
 * @source Bastien2013; closed form derived here
 */
function shootDirection(start: Triple, preferred: Triple, stretches: number): Triple {
  const cosine = Math.max(-1, Math.min(1, dot(start, preferred)));
  const angle0 = Math.acos(cosine);
  if (angle0 < 1e-6) return preferred;
  // Straight against it there is no plane: such a shoot leaves it by any side, here by X.
  const across =
    angle0 > Math.PI - 1e-6
      ? unit(along([1, 0, 0], preferred, -preferred[0]))
      : unit(along(start, preferred, -cosine));
  const angle = relaxed(Math.min(angle0, Math.PI - 1e-6), stretches);
  return along(along([0, 0, 0], preferred, Math.cos(angle)), across, Math.sin(angle));
}

const STEP_mm = 4;

/**
 * The course of a shoot of a length, as places a few millimetres apart.
 *
 * @source Bastien2013; closed form derived here
 */
export function shootCourse(
  base_mm: Triple,
  start: Triple,
  preferred: Triple,
  shoot: { readonly length_mm: number; readonly straighten_mm: number },
): readonly Triple[] {
  const steps = Math.max(1, Math.min(100, Math.ceil(shoot.length_mm / STEP_mm)));
  const step_mm = shoot.length_mm / steps;
  const places: Triple[] = [base_mm];
  let place = base_mm;
  for (let step = 0; step < steps; step += 1) {
    const middle_mm = (step + 0.5) * step_mm;
    place = along(place, shootDirection(start, preferred, middle_mm / shoot.straighten_mm), step_mm);
    places.push(place);
  }
  return places;
}

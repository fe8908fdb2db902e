import { within } from "../errors/index.ts";
import { type RetentionCurve, waterOf, withinCurve } from "./retention.ts";
import { areaOf, type PotShape, volumeBetween, withinShape } from "./shape.ts";

/** What stands under a pot: water in a saucer (or a dished floor), or a wick or sand bed that pulls. */
export type Underneath = {
  readonly standing_cm?: number;
  readonly baseSuction_cm?: number;
};

const PANELS_n = 200;

/**
 * ∫ f dz from `from` to `to` by Simpson's rule on z = from + span t²: the curve bends like a broken power at the bottom,
 * where the squares crowd the points. `f` is asked in order of height.
 *
 * @source our assumption; a part of the functions beside it
 */
function integrated(f: (z: number) => number, from: number, to: number): number {
  const span = to - from;
  if (span <= 0) return 0;
  let sum = 0;
  for (let i = 1; i <= PANELS_n; i += 1) {
    const t = i / PANELS_n;
    const weight = i === PANELS_n ? 1 : i % 2 === 1 ? 4 : 2;
    // At t = 0 the factor 2 t is 0.
    sum += weight * 2 * t * f(from + span * t * t);
  }
  return (sum * span) / (3 * PANELS_n);
}

/**
 * Water held below a height of a drained pot, unchecked [mL].
 *
 * @source our assumption; a part of the functions beside it
 */
function drainedWater_mL(pot: PotShape & RetentionCurve & { readonly fill_cm: number } & Underneath): number {
  const standing = Math.min(pot.standing_cm ?? 0, pot.fill_cm);
  const pull = pot.baseSuction_cm ?? 0;
  const below = volumeBetween(pot, 0, standing) * waterOf(pot, pull);
  return below + integrated((z) => waterOf(pot, z - standing + pull) * areaOf(pot, z), standing, pot.fill_cm);
}

/**
 * Water and air of a medium in a pot once it has drained: the same medium holds less air the lower it stands.
 *
 * θ at each height is the curve at the suction h = max(0, z − d) + h0; shares are its mean over the volume. Drained an hour
 * at least, wetted through, one medium. A pot watered from dry takes up less.
 *
 * @param pot inner shape and curve; height of fill [cm], 0.5 to 100, not above the rim; water standing at the base [cm], 0 to 50; suction at the base [cm], 0 to 100
 * @returns volume of medium [mL]; shares of water and of air; their sum is the saturated water
 * @throws QuantityError outside those ranges
 * @source MilksFontenoLarson1989; VanGenuchten1980 for the curve
 * @see checks/medium-repot.json 025 to 040
 * @example drainedPot({ form: "round", bottomLength_cm: 10, bottomWidth_cm: 10, topLength_cm: 10, topWidth_cm: 10, innerHeight_cm: 10, fill_cm: 5, residualWater_frac: 0.045, saturatedWater_frac: 0.43, alpha_per_cm: 0.145, steepness: 2.68 }).air_frac // 0.0233
 */
export function drainedPot(pot: PotShape & RetentionCurve & { readonly fill_cm: number } & Underneath): {
  readonly medium_mL: number;
  readonly water_frac: number;
  readonly air_frac: number;
} {
  withinShape(pot);
  withinCurve(pot);
  within("fill_cm", pot.fill_cm, 0.5, 100);
  within("fill_cm", pot.fill_cm, 0.5, pot.innerHeight_cm);
  within("standing_cm", pot.standing_cm ?? 0, 0, 50);
  within("baseSuction_cm", pot.baseSuction_cm ?? 0, 0, 100);
  const medium_mL = volumeBetween(pot, 0, pot.fill_cm);
  const water_frac = drainedWater_mL(pot) / medium_mL;
  return { medium_mL, water_frac, air_frac: pot.saturatedWater_frac - water_frac };
}

/**
 * Air of a shallow tray that is stood on its edge after watering: the far side comes to hang high above the hole.
 *
 * Suction at a point is its height above the hole at the low edge, z cos φ + x sin φ, averaged over the section.
 *
 * @param tray curve; depth of medium [cm], 0.5 to 100; length of the section [cm], 1 to 200; tilt [°], 0 to 80
 * @returns share of air; at 0° that of the level tray
 * @throws QuantityError outside those ranges
 * @source MilksFontenoLarson1989 for the equilibrium; tilting is common practice, no source
 * @see checks/medium-repot.json 039
 * @example tiltedAir_frac({ residualWater_frac: 0.15, saturatedWater_frac: 0.8, alpha_per_cm: 0.182, steepness: 1.5, fill_cm: 4.2, length_cm: 12, tilt_deg: 45 }) // 0.1333
 */
export function tiltedAir_frac(
  tray: RetentionCurve & { readonly fill_cm: number; readonly length_cm: number; readonly tilt_deg: number },
): number {
  withinCurve(tray);
  within("fill_cm", tray.fill_cm, 0.5, 100);
  within("length_cm", tray.length_cm, 1, 200);
  within("tilt_deg", tray.tilt_deg, 0, 80);
  const tilt = (tray.tilt_deg * Math.PI) / 180;
  const [up, along] = [Math.cos(tilt), Math.sin(tilt)];
  const row = (z: number): number =>
    integrated((x) => waterOf(tray, z * up + x * along), 0, tray.length_cm) / tray.length_cm;
  return tray.saturatedWater_frac - integrated(row, 0, tray.fill_cm) / tray.fill_cm;
}

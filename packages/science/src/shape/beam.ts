import { within } from "../errors/index.ts";

/** Standard gravity [m s⁻²]. CGPM 1901. */
const GRAVITY = 9.806_65;

/** A straight shoot that is held at its base. */
type Shoot = { readonly length_m: number; readonly stiffness_Pa: number };
type Round = Shoot & { readonly diameter_m: number };

function refuseOtherShoot({ length_m, stiffness_Pa }: Shoot): void {
  within("length_m", length_m, 0.001, 5);
  within("stiffness_Pa", stiffness_Pa, 1e5, 1e11);
}

/**
 * Second moment of area of a round section.
 *
 * I = π d⁴/64
 *
 * @param diameter_m diameter [m], 0.0001 to 1
 * @returns second moment of area [m⁴]
 * @throws QuantityError outside that range
 * @source EulerBernoulli
 * @see checks/shape-trim.json 022
 * @example sectionMoment_m4(0.004) * 1e12 // 12.566
 */
export function sectionMoment_m4(diameter_m: number): number {
  within("diameter_m", diameter_m, 0.0001, 1);
  return (Math.PI * diameter_m ** 4) / 64;
}

/**
 * Sag of the tip of a round shoot under a load somewhere on it, for small angles.
 *
 * P a² (3 L − a)/(6 E I); at the tip P L³/(3 E I). Right within 3 % below P L²/(E I) = 0.5
 *
 * @param shoot load [N], 0 to 1000, across the shoot; its distance from the base [m], 0 to the length, the tip unless given; length [m], 0.001 to 5; diameter [m], 0.0001 to 1; stiffness [Pa], 100000 to 1e11
 * @returns sag of the tip [m]; P L²/(E I) without unit
 * @throws QuantityError outside those ranges
 * @source EulerBernoulli
 * @see checks/shape-trim.json 022
 * @example loadSag({ load_N: 0.0981, length_m: 0.15, diameter_m: 0.004, stiffness_Pa: 2e8 }).sag_m // 0.04391
 */
export function loadSag(shoot: Round & { readonly load_N: number; readonly at_m?: number }): {
  readonly sag_m: number;
  readonly bending: number;
} {
  const { load_N, length_m, diameter_m, stiffness_Pa, at_m = length_m } = shoot;
  within("load_N", load_N, 0, 1000);
  refuseOtherShoot(shoot);
  within("at_m", at_m, 0, length_m);
  const rigidity = stiffness_Pa * sectionMoment_m4(diameter_m);
  return {
    sag_m: (load_N * at_m ** 2 * (3 * length_m - at_m)) / (6 * rigidity),
    bending: (load_N * length_m ** 2) / rigidity,
  };
}

/**
 * Sag of the tip of a round shoot under its own even weight, for small angles.
 *
 * w L⁴/(8 E I)
 *
 * @param shoot load of a length [N m⁻¹], 0 to 10000; length, diameter and stiffness as under one load
 * @returns sag of the tip [m]
 * @throws QuantityError outside those ranges
 * @source EulerBernoulli
 * @example evenSag_m({ loadPerLength_N_m: 0.654, length_m: 0.15, diameter_m: 0.004, stiffness_Pa: 2e8 }) // 0.0165
 */
export function evenSag_m(shoot: Round & { readonly loadPerLength_N_m: number }): number {
  within("loadPerLength_N_m", shoot.loadPerLength_N_m, 0, 10_000);
  refuseOtherShoot(shoot);
  const rigidity = shoot.stiffness_Pa * sectionMoment_m4(shoot.diameter_m);
  return (shoot.loadPerLength_N_m * shoot.length_m ** 4) / (8 * rigidity);
}

/**
 * Sag of the tip of a shoot that tapers evenly, under a load at the tip, for small angles.
 *
 * 64 P L³/(3 π E d0³ d1)
 *
 * @param shoot load at the tip [N], 0 to 1000; length and stiffness as under one load; diameter at the base and at the tip [m], 0.0001 to 1
 * @returns sag of the tip [m]
 * @throws QuantityError outside those ranges
 * @source EulerBernoulli
 * @see checks/shape-trim.json 025
 * @example taperedSag_m({ load_N: 0.0981, length_m: 0.15, diameter_m: 0.004, tipDiameter_m: 0.002, stiffness_Pa: 2e8 }) // 0.08782
 */
export function taperedSag_m(
  shoot: Round & { readonly load_N: number; readonly tipDiameter_m: number },
): number {
  const { load_N, length_m, diameter_m, tipDiameter_m, stiffness_Pa } = shoot;
  within("load_N", load_N, 0, 1000);
  refuseOtherShoot(shoot);
  within("diameter_m", diameter_m, 0.0001, 1);
  within("tipDiameter_m", tipDiameter_m, 0.0001, 1);
  return (64 * load_N * length_m ** 3) / (3 * Math.PI * stiffness_Pa * diameter_m ** 3 * tipDiameter_m);
}

/** Steps along the shoot, and halvings of the angle sought: five digits with room to spare. */
const STEPS_n = 400;
const HALVINGS_n = 44;

/** Shape from the tip inwards for a tip that slopes so far: slope at the base, drop and shortening, for a shoot of length 1. */
function fromTip(bending: number, tip_rad: number) {
  const h = 1 / STEPS_n;
  let slope = tip_rad;
  let turn = 0;
  let drop = 0;
  let along = 0;
  // Fourth order in slope and its turn; drop and length by Simpson's rule over the same half steps.
  for (let step = 0; step < STEPS_n; step += 1) {
    const k1 = bending * Math.cos(slope);
    const half = slope - (h / 2) * turn;
    const k2 = bending * Math.cos(half);
    const k3 = bending * Math.cos(half - (h * h * k1) / 4);
    const k4 = bending * Math.cos(slope - h * turn - (h * h * k2) / 2);
    const middle = slope - (h / 2) * turn - (h * h * k1) / 8;
    const next = slope - h * turn - (h * h * (k1 + k2 + k3)) / 6;
    turn += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6;
    drop += (h * (Math.sin(slope) + 4 * Math.sin(middle) + Math.sin(next))) / 6;
    along += (h * (Math.cos(slope) + 4 * Math.cos(middle) + Math.cos(next))) / 6;
    slope = next;
  }
  return { base_rad: slope, drop, along };
}

/**
 * How far the tip of a level shoot comes down under a load at its tip, however far it bends.
 *
 * EI θ'' = −P cos θ with θ = 0 at the base and θ' = 0 at the tip, solved from the tip inwards
 *
 * @param bending P L²/(E I), 0 to 20
 * @returns drop of the tip and how far it draws in, as shares of the length; slope of the tip [rad]
 * @throws QuantityError outside that range
 * @source Mattiasson1981
 * @see checks/shape-trim.json 018-020, 023
 * @example bentShoot(1).drop_frac // 0.30172
 */
export function bentShoot(bending: number): {
  readonly drop_frac: number;
  readonly drawnIn_frac: number;
  readonly tip_rad: number;
} {
  within("bending", bending, 0, 20);
  let low = 0;
  let high = Math.PI / 2;
  for (let step = 0; step < HALVINGS_n; step += 1) {
    const tip = (low + high) / 2;
    if (fromTip(bending, tip).base_rad > 0) high = tip;
    else low = tip;
  }
  const tip_rad = (low + high) / 2;
  const { drop, along } = fromTip(bending, tip_rad);
  return { drop_frac: drop, drawnIn_frac: 1 - along, tip_rad };
}

/**
 * Stiffness of a shoot from how far it sags under a weight that was hung on it: the hang test.
 *
 * E I = m g a³/(3 δ), δ read at the weight; E from the diameter
 *
 * @param test mass hung on a nearly level shoot [g], 0.1 to 5000; distance from the base [m], 0.01 to 2; sag at the weight [m], 0.0001 to 1; diameter [m], 0.0001 to 1; gravity [m s⁻²], 9 to 10, standard unless given
 * @returns stiffness [Pa]; stiffness of the shoot [N m²]
 * @throws QuantityError outside those ranges
 * @source EulerBernoulli
 * @see checks/shape-trim.json 026
 * @example hangTest({ hung_g: 20, at_m: 0.12, sag_m: 0.008, diameter_m: 0.005 }).stiffness_Pa / 1e9 // 0.460
 */
export function hangTest(test: {
  readonly hung_g: number;
  readonly at_m: number;
  readonly sag_m: number;
  readonly diameter_m: number;
  readonly gravity_m_s2?: number;
}): { readonly stiffness_Pa: number; readonly rigidity: number } {
  const { hung_g, at_m, sag_m, diameter_m, gravity_m_s2 = GRAVITY } = test;
  within("hung_g", hung_g, 0.1, 5000);
  within("at_m", at_m, 0.01, 2);
  within("sag_m", sag_m, 0.0001, 1);
  within("gravity_m_s2", gravity_m_s2, 9, 10);
  const rigidity = ((hung_g / 1000) * gravity_m_s2 * at_m ** 3) / (3 * sag_m);
  return { stiffness_Pa: rigidity / sectionMoment_m4(diameter_m), rigidity };
}

/**
 * What a slip of the calliper does to a stiffness from a hang test.
 *
 * E ~ d⁻⁴
 *
 * @param calliper true and measured diameter [m], 0.0001 to 1
 * @returns stiffness found over the true one
 * @throws QuantityError outside that range
 * @source EulerBernoulli
 * @see checks/shape-trim.json 027
 * @example stiffnessError({ diameter_m: 0.005, measured_m: 0.0055 }) // 0.683
 */
export function stiffnessError(calliper: {
  readonly diameter_m: number;
  readonly measured_m: number;
}): number {
  within("diameter_m", calliper.diameter_m, 0.0001, 1);
  within("measured_m", calliper.measured_m, 0.0001, 1);
  return (calliper.diameter_m / calliper.measured_m) ** 4;
}

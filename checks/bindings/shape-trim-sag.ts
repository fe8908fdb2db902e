import * as shape from "@sillwood/science/shape";
import { type Alias, type Rule, rule } from "../src/rules.ts";

const sectional = ["P_N", "L_m", "d_m", "E_Pa"] as const;
const shootOf = (v: { readonly [K in (typeof sectional)[number]]: number }) => ({
  load_N: v.P_N,
  length_m: v.L_m,
  diameter_m: v.d_m,
  stiffness_Pa: v.E_Pa,
});
const hang = ["mass_kg", "a_m", "sag_m", "d_m", "g_m_s2"] as const;
const hangOf = (v: { readonly [K in (typeof hang)[number]]: number }) =>
  shape.hangTest({
    hung_g: 1000 * v.mass_kg,
    at_m: v.a_m,
    sag_m: v.sag_m,
    diameter_m: v.d_m,
    gravity_m_s2: v.g_m_s2,
  });

/** Rows on the sag of branches, known by the quantities they hold. */
export const sagRules: readonly Rule[] = [
  rule("I_m4", ["d_m"], (v) => shape.sectionMoment_m4(v.d_m)),
  rule("delta_m", sectional, (v) => shape.loadSag(shootOf(v)).sag_m),
  rule("delta_m", [...sectional, "a_m"], (v) => shape.loadSag({ ...shootOf(v), at_m: v.a_m }).sag_m),
  rule("delta_m", ["w_N_m", "L_m", "d_m", "E_Pa"], (v) =>
    shape.evenSag_m({
      loadPerLength_N_m: v.w_N_m,
      length_m: v.L_m,
      diameter_m: v.d_m,
      stiffness_Pa: v.E_Pa,
    }),
  ),
  rule("delta_m", ["P_N", "L_m", "dRoot_m", "dTip_m", "E_Pa"], (v) =>
    shape.taperedSag_m({
      load_N: v.P_N,
      length_m: v.L_m,
      diameter_m: v.dRoot_m,
      tipDiameter_m: v.dTip_m,
      stiffness_Pa: v.E_Pa,
    }),
  ),
  rule("alpha", sectional, (v) => shape.loadSag(shootOf(v)).bending),
  rule("PL2_over_EI", sectional, (v) => shape.loadSag(shootOf(v)).bending),
  rule("tipDrop_over_L", ["PL2_over_EI"], (v) => shape.bentShoot(v.PL2_over_EI).drop_frac),
  rule("tipAxialShift_over_L", ["PL2_over_EI"], (v) => shape.bentShoot(v.PL2_over_EI).drawnIn_frac),
  rule("tipSlope_rad", ["PL2_over_EI"], (v) => shape.bentShoot(v.PL2_over_EI).tip_rad),
  rule("tipDrop_m", ["tipDrop_over_L", "L_m"], (v) => v.tipDrop_over_L * v.L_m),
  rule("EI_Nm2", hang, (v) => hangOf(v).rigidity),
  rule("E_GPa", hang, (v) => hangOf(v).stiffness_Pa / 1e9),
  rule("E_ratio", ["d_m", "dMeasured_m"], (v) =>
    shape.stiffnessError({ diameter_m: v.d_m, measured_m: v.dMeasured_m }),
  ),
];
export const sagAliases: readonly Alias[] = [];

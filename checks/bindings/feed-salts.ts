import * as feed from "@sillwood/science/feed";
import { saltYield_frac } from "@sillwood/science/medium";
import * as units from "@sillwood/science/units";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

const mL_per_US_fluid_ounce = units.toCanonical({ value: 1, kind: "volume", unit: "US fl oz" });
const L_per_US_gallon = units.toCanonical({ value: 1, kind: "volume", unit: "US gal" }) / 1000;
const atoms = feed.atomicMass_g_mol;

/** Salts of laboratory recipes: key of their amount, formula with its waters, what a mole brings. */
const salts = [
  ["KNO3_mM", "KNO3", { N: 1, K: 1 }],
  ["CaNO32_mM", "Ca(NO3)2.4H2O", { N: 2, Ca: 1 }],
  ["KH2PO4_mM", "KH2PO4", { P: 1, K: 1 }],
  ["NH4H2PO4_mM", "NH4H2PO4", { N: 1, P: 1 }],
  ["MgSO4_mM", "MgSO4.7H2O", { Mg: 1, S: 1 }],
  ["K2SO4_mM", "K2SO4", { K: 2, S: 1 }],
  ["NH4NO3_mM", "NH4NO3", { N: 2 }],
  ["CaCl2_mM", "CaCl2.2H2O", { Ca: 1, Cl: 2 }],
] as const;
const printed: Readonly<Record<string, string>> = {
  KNO3_mM: "KNO3_g_L",
  CaNO32_mM: "CaNO3_4H2O_g_L",
  KH2PO4_mM: "KH2PO4_g_L",
  NH4H2PO4_mM: "NH4H2PO4_g_L",
  MgSO4_mM: "MgSO4_7H2O_g_L",
  K2SO4_mM: "K2SO4_g_L",
  NH4NO3_mM: "NH4NO3_g_L",
  CaCl2_mM: "CaCl2_2H2O_g_L",
};

type Recipe = Readonly<Record<string, number>>;
/** Which salts a row holds is only known from the row: what all of them bring, over those that are there. */
export function ofRecipe(inputs: Readonly<Record<string, unknown>>): Readonly<Record<string, number>> {
  const given = salts.filter(([key]) => typeof inputs[key] === "number");
  if (given.length === 0) return {};
  const sums: Record<string, number> = {};
  for (const [key, formula, brings] of given) {
    const amount_mmol_L = inputs[key] as number;
    sums[printed[key] ?? key] = (amount_mmol_L * feed.molarMass_g_mol(formula)) / 1000;
    for (const [atom, count] of Object.entries(brings as Recipe))
      sums[`${atom}_mg_L`] = (sums[`${atom}_mg_L`] ?? 0) + amount_mmol_L * count * atoms[atom as feed.Atom];
  }
  return sums;
}

/** Conductivity of a list of ions [mmol/L], whichever are named. */
export function ofIons(inputs: Readonly<Record<string, unknown>>): number | undefined {
  const ions = Object.entries(inputs).filter(
    ([key, value]) =>
      /^(K|Na|NH4|Ca|Mg|Cl|NO3|SO4|HCO3|H2PO4|H)_mmol_L$/.test(key) && typeof value === "number",
  );
  return ions.length < 2 ? undefined : feed.conductivity_mS_cm(Object.fromEntries(ions) as feed.Ions);
}

type Gypsum = {
  readonly Ca_mmol_L: number;
  readonly SO4_mmol_L: number;
  readonly Mg_mmol_L: number;
  readonly stock_factor: number;
};
const gypsumNeeds = ["Ca_mmol_L", "SO4_mmol_L", "Mg_mmol_L", "stock_factor"] as const;
const gypsum = (v: Gypsum, times: number) =>
  feed.gypsumIndex({
    Ca_mmol_L: v.Ca_mmol_L * times,
    SO4_mmol_L: v.SO4_mmol_L * times,
    Mg_mmol_L: v.Mg_mmol_L * times,
    // The rest of the recipe: potassium nitrate, by the ionic strength of the feed.
    K_mmol_L: 6 * times,
    NO3_mmol_L: 12 * times,
  });

type Pot = {
  readonly Cin_mg_L: number;
  readonly I_mL: number;
  readonly ET_mL: number;
  readonly Wmax_mL: number;
  readonly C0_mg_L: number;
};
const potNeeds = ["Cin_mg_L", "I_mL", "ET_mL", "Wmax_mL", "C0_mg_L"] as const;
const pot = (v: Pot, waterings_n: number) =>
  feed.mixedPotSalt({
    feed_mg_L: v.Cin_mg_L,
    pour_mL: v.I_mL,
    use_mL: v.ET_mL,
    holds_mL: v.Wmax_mL,
    start_mg_L: v.C0_mg_L,
    waterings_n,
  });

type Factors = { readonly factor_uS_cm_per_mg_L: Readonly<Record<string, number>> } & Readonly<
  Record<string, unknown>
>;
export const ofFactors = (inputs: Readonly<Record<string, unknown>>) => {
  const factors = (inputs as Factors).factor_uS_cm_per_mg_L;
  if (!factors) return {};
  const amount = (ion: string) => inputs[`${ion}_mg_L`] as number;
  return {
    TDS_mg_L: Object.keys(factors).reduce((sum, ion) => sum + amount(ion), 0),
    EC_inf_uS_cm: Object.entries(factors).reduce((sum, [ion, factor]) => sum + factor * amount(ion), 0),
  };
};

const acidNames = ["N", "P", "K", "Ca", "Mg", "S", "Cl", "Na"] as const;
/** Pounds of carbonate a short ton from shares of elements: 2000 lb. */
export function ofAcidity(inputs: Readonly<Record<string, unknown>>): number | undefined {
  const shares = acidNames.flatMap((of) =>
    typeof inputs[`${of}_pct`] === "number"
      ? [[`${of}_frac`, (inputs[`${of}_pct`] as number) / 100] as const]
      : [],
  );
  return shares.length === 0 ? undefined : 2 * feed.potentialAcidity_mg_g(Object.fromEntries(shares));
}

const five = ["N", "P", "K", "Ca", "Mg"] as const;

/** How much gypsum dissolves: where its index is nothing. */
function gypsumDissolves_g_L(): number {
  let [low, high] = [0.1, 100];
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (feed.gypsumIndex({ Ca_mmol_L: middle, SO4_mmol_L: middle }) < 0) low = middle;
    else high = middle;
  }
  return (low * feed.molarMass_g_mol("CaSO4.2H2O")) / 1000;
}

export const saltRules: readonly Rule[] = [
  ...["solubility_g_L", "gypsum_g_L", "dissolved_g_L"].flatMap((name) =>
    ["salt", "log_Ksp", "log_K", "pK"].map((need) =>
      ruleOn<Record<string, unknown>>(name, [need], gypsumDissolves_g_L),
    ),
  ),
  ...[500, 535, 700].flatMap((factor) => [
    rule(`TDS_${factor}_ppm`, ["EC_mS_cm"], ({ EC_mS_cm }) =>
      feed.meterReading({ conductivity_mS_cm: EC_mS_cm, scale: `ppm ${factor}` as feed.MeterScale }),
    ),
    rule("EC_mS_cm", [`TDS_${factor}_ppm`], (v) =>
      feed.conductivityRead_mS_cm({
        reading: v[`TDS_${factor}_ppm`] as number,
        scale: `ppm ${factor}` as feed.MeterScale,
      }),
    ),
  ]),
  rule("EC_mS_cm", ["TDS_ppm", "factor"], ({ TDS_ppm, factor }) => TDS_ppm / factor),
  rule("EC_mS_cm", ["TDS_ppm", "scale"], ({ TDS_ppm, scale }) => TDS_ppm / scale),
  rule("EC25_mS_cm", ["EC_T_mS_cm", "T_C"], (v) =>
    feed.conductivityAt25_mS_cm({ conductivity_mS_cm: v.EC_T_mS_cm, water_C: v.T_C }),
  ),
  rule("EC25_mS_cm", ["EC_mS_cm", "T_C"], (v) =>
    feed.conductivityAt25_mS_cm({ conductivity_mS_cm: v.EC_mS_cm, water_C: v.T_C }),
  ),
  rule("S_mg_L", ["fl_oz", "volume_usgal", "mass_fraction", "specific_gravity"], (v) => acid(v).S_mg_L),
  rule(
    "alkalinity_removed_mg_L_CaCO3",
    ["fl_oz", "volume_usgal", "mass_fraction", "specific_gravity"],
    (v) => acid(v).alkalinity_mg_L,
  ),
  rule("Na_added_mg_L", ["hardness_mg_L_CaCO3"], (v) =>
    feed.softenerAdds_mg_L({ hardness_mg_L: v.hardness_mg_L_CaCO3 }),
  ),
  rule("K_added_mg_L", ["hardness_mg_L_CaCO3"], (v) =>
    feed.softenerAdds_mg_L({ hardness_mg_L: v.hardness_mg_L_CaCO3, salt: "potassium" }),
  ),
  rule("K_intended_g_L", ["attempt_g_L", "K_pct"], (v) => (v.attempt_g_L * v.K_pct) / 100),
  rule(
    "K_dissolved_g_L",
    ["attempt_g_L", "solubility_g_L", "K_pct"],
    (v) =>
      (feed.dissolved({ attempted_g_L: v.attempt_g_L, dissolves_g_L: v.solubility_g_L }).dissolved_g_L *
        v.K_pct) /
      100,
  ),
  rule(
    "K_lost_g_L",
    ["attempt_g_L", "solubility_g_L", "K_pct"],
    (v) =>
      (feed.dissolved({ attempted_g_L: v.attempt_g_L, dissolves_g_L: v.solubility_g_L }).left_g_L * v.K_pct) /
      100,
  ),
  ruleOn<Gypsum>("SI_feed_below", gypsumNeeds, (v) => gypsum(v, 1)),
  ruleOn<Gypsum>("SI_stock_above", gypsumNeeds, (v) => gypsum(v, v.stock_factor)),
  rule(
    "yield_pct",
    ["ECe_dS_m", "threshold_dS_m", "slope_pct"],
    (v) =>
      100 *
      saltYield_frac({
        saturated_mS_cm: v.ECe_dS_m,
        threshold_mS_cm: v.threshold_dS_m,
        slope_per_mS_cm: v.slope_pct / 100,
      }),
  ),
  rule(
    "C50_threshold_slope",
    ["threshold_dS_m", "slope_frac"],
    (v) =>
      feed.halfYieldSalt({ threshold_mS_cm: v.threshold_dS_m, slope_cm_per_mS: v.slope_frac }).line_mS_cm,
  ),
  rule(
    "C50_discount",
    ["threshold_dS_m", "slope_frac"],
    (v) =>
      feed.halfYieldSalt({ threshold_mS_cm: v.threshold_dS_m, slope_cm_per_mS: v.slope_frac }).curve_mS_cm,
  ),
  ...five.flatMap((of) => [
    rule(
      `${of}_pct`,
      [`${of}_kg_ha`, "DM_kg_ha"],
      (v) => (100 * (v[`${of}_kg_ha`] as number)) / (v.DM_kg_ha as number),
    ),
    rule(
      `${of}_g_plant`,
      [`${of}_kg_ha`, "plants_ha"],
      (v) => (1000 * (v[`${of}_kg_ha`] as number)) / (v.plants_ha as number),
    ),
    rule(`${of}_mg_L`, [`${of}_frac`, "WUE_gDM_L"], (v) =>
      feed.balancedFeed_mg_L({ tissue_frac: v[`${of}_frac`] as number, growth_g_L: v.WUE_gDM_L as number }),
    ),
  ]),
  rule("DM_g_plant", ["DM_kg_ha", "plants_ha"], (v) => (1000 * v.DM_kg_ha) / v.plants_ha),
  // What 100 g of fruit take with them, by our table of fruit.
  ...five.map((of) =>
    rule(`${of}_mg`, ["protein_g", "water_pct"], () => feed.demand_mg({ of, transpired_L: 0, fruit_g: 100 })),
  ),
  rule(
    "N_pct_DM",
    ["protein_g", "N_to_protein", "water_pct"],
    (v) => v.protein_g / v.N_to_protein / ((100 - v.water_pct) / 100),
  ),
  ...(
    [
      ["N", 600],
      ["P", 300],
      ["K", 500],
    ] as const
  ).map(([of, g_m3]) => rule(`${of}_mg`, ["pot_volume_L"], ({ pot_volume_L }) => g_m3 * pot_volume_L)),
  rule("N_mg_L_total", ["N_mmol_L_total_yield"], (v) => v.N_mmol_L_total_yield * atoms.N),
  rule("N_mg_L_quality", ["N_mmol_L_quality"], (v) => v.N_mmol_L_quality * atoms.N),
  rule("NH4N_max_mg_L", ["NH4_max_mmol_L"], (v) => v.NH4_max_mmol_L * atoms.N),
  ...(["N", "P", "K", "Ca", "Mg"] as const).flatMap((of) => [
    rule(`${of}_mg_L`, [`${of}_mmol_L`], (v) => (v[`${of}_mmol_L`] as number) * atoms[of]),
    rule(`${of}_min_mg_L`, [`${of}_min_mmol_L`], (v) => (v[`${of}_min_mmol_L`] as number) * atoms[of]),
    rule(`${of}_opt_mg_L`, [`${of}_opt_mmol_L`], (v) => (v[`${of}_opt_mmol_L`] as number) * atoms[of]),
    rule(
      `${of}_mg_plant`,
      [`${of}_mmol_L`, "volume_mL"],
      (v) => ((v[`${of}_mmol_L`] as number) * atoms[of] * (v.volume_mL as number)) / 1000,
    ),
  ]),
  ...[1, 5, 10, 20, 26, 50, 52, 100].map((count) =>
    ruleOn<Pot>(`C_after_${count}_mg_L`, potNeeds, (v) => pot(v, count).after_mg_L),
  ),
  ruleOn<Pot>("C_steady_mg_L", potNeeds, (v) => pot(v, 1).steady_mg_L),
  ruleOn<{ T_C: readonly number[]; label_months: number; T_ref_C: number; Q10: number }>(
    "months",
    ["T_C", "label_months", "T_ref_C", "Q10"],
    (v) =>
      v.T_C.map(
        (medium_C) =>
          feed.coatedLife_d({ life_d: v.label_months * 30, medium_C, label_C: v.T_ref_C, q10: v.Q10 }) / 30,
      ),
  ),
  ...[/^C_n?_mg_L$/, /^C(n|_n|_every_n|_nth)_mg_L$/].map((name) =>
    rule(name, ["C1_mg_L", "n"], (v) =>
      feed.seldomFeed_mg_L({ each_mg_L: v.C1_mg_L, every_n: v.n, most_mg_L: 1000 }),
    ),
  ),
  ...["f", "f_pure", "f_RO", "f_rain", "pure_frac"].map((name) =>
    ruleOn<{ tap_mg_L: Readonly<Record<string, number>>; limit_mg_L: Readonly<Record<string, number>> }>(
      name,
      ["tap_mg_L", "limit_mg_L"],
      (v) =>
        Math.max(
          ...Object.entries(v.limit_mg_L).map(([of, most_mg_L]) =>
            feed.pureShare_frac({ tap_mg_L: v.tap_mg_L[of] ?? 0, most_mg_L }),
          ),
        ),
    ),
  ),
];

function acid(v: {
  readonly fl_oz: number;
  readonly volume_usgal: number;
  readonly mass_fraction: number;
  readonly specific_gravity: number;
}) {
  return feed.sulphuricAcid({
    acid_mL_L: (v.fl_oz * mL_per_US_fluid_ounce) / (v.volume_usgal * L_per_US_gallon),
    acid_frac: v.mass_fraction,
    density_g_mL: v.specific_gravity,
  });
}

import * as feed from "@sillwood/science/feed";
import * as units from "@sillwood/science/units";
import { type Alias, alias, type Rule, rule, ruleOn } from "../src/rules.ts";

const percent = (share: number): number => 100 * share;
const oxides = [
  ["P", "P2O5"],
  ["K", "K2O"],
  ["Ca", "CaO"],
  ["Mg", "MgO"],
  ["S", "SO3"],
] as const;
const share = (atom: feed.Atom, formula: string) => feed.elementShare_frac({ atom, formula });

const oxideRules: Rule[] = oxides.flatMap(([atom, oxide]) => [
  rule(`${atom}_pct`, [`${oxide}_pct`], (v) => (v[`${oxide}_pct`] as number) * share(atom, oxide)),
  rule(`${oxide}_pct`, [`${atom}_pct`], (v) => (v[`${atom}_pct`] as number) / share(atom, oxide)),
]);

const fractions = [
  ["Ca", "CaO"],
  ["Mg", "MgO"],
  ["S", "SO3"],
  ["P", "P2O5"],
  ["K", "K2O"],
  ["N", "NO3"],
  ["N", "NH4"],
  ["P", "PO4"],
  ["S", "SO4"],
  ["B", "H3BO3"],
] as const;
const fractionRules = fractions.map(([atom, formula]) =>
  rule(`${atom}_from_${formula}_mg`, ["mass_mg"], ({ mass_mg }) => mass_mg * share(atom, formula)),
);

/** "20-10-20" as shares of N, P2O5 and K2O. */
const grade = (text: string): readonly number[] => text.split("-").map((each) => Number(each) / 100);
const at = (text: string, place: number): number => grade(text)[place] ?? 0;
const g_per_ounce = units.toCanonical({ value: 1, kind: "mass", unit: "oz" });
const g_per_pound = units.toCanonical({ value: 1, kind: "mass", unit: "lb" });
const L_per_US_gallon = units.toCanonical({ value: 1, kind: "volume", unit: "US gal" }) / 1000;
const mL_per_US_fluid_ounce = units.toCanonical({ value: 1, kind: "volume", unit: "US fl oz" });
const spoon_g = (spoons: number): number => spoons * mL_per_US_teaspoon * feed.USUAL_BULK_DENSITY_g_mL;
const mL_per_US_teaspoon = units.toCanonical({ value: 1, kind: "volume", unit: "US tsp" });
/** g/L of stock as ounces a US gallon. */
const ounces = (g_L: number): number => (g_L * L_per_US_gallon) / g_per_ounce;
const perHundredGallons = (wanted_mg_L: number, content_frac: number): number =>
  (feed.doseForConcentration_g_L({ wanted_mg_L, content_frac }) * 100 * L_per_US_gallon) / g_per_ounce;
const stock = (wanted_mg_L: number, N_pct: number, injectorParts: number): number =>
  ounces(feed.stockStrength_g_L({ wanted_mg_L, content_frac: N_pct / 100, injectorParts }));

type Label = {
  readonly NO3N_pct: number;
  readonly NH4N_pct: number;
  readonly ureaN_pct: number;
  readonly P2O5_pct: number;
  readonly K2O_pct: number;
  readonly Ca_pct: number;
  readonly Mg_pct: number;
};

/** Conductivity of a feed from a whole label at a strength of nitrogen. */
function labelConductivity({ label, N_ppm, N_pct }: { label: Label; N_ppm: number; N_pct: number }) {
  const { contents_mg } = feed.readLabel({
    form: "solid",
    N_frac: N_pct / 100,
    nitrateN_frac: (label.NO3N_pct ?? 0) / 100,
    ammoniumN_frac: (label.NH4N_pct ?? 0) / 100,
    ureaN_frac: (label.ureaN_pct ?? 0) / 100,
    P_frac: (label.P2O5_pct ?? 0) / 100,
    K_frac: (label.K2O_pct ?? 0) / 100,
    pAs: "oxide",
    kAs: "oxide",
    Ca_frac: (label.Ca_pct ?? 0) / 100,
    Mg_frac: (label.Mg_pct ?? 0) / 100,
    caAs: "element",
    mgAs: "element",
  });
  const dose_g_L = feed.doseForConcentration_g_L({ wanted_mg_L: N_ppm, content_frac: N_pct / 100 });
  return feed.conductivity_mS_cm(feed.closedIons(feed.ionsOf(feed.sumAmounts([[contents_mg, dose_g_L]]))));
}

type TwoSalts = {
  readonly K_target_mg_L: number;
  readonly P_target_mg_L: number;
  readonly KNO3_label: string;
  readonly MAP_label: string;
  readonly P_factor: number;
  readonly K_factor: number;
};
const twoNeeds = [
  "K_target_mg_L",
  "P_target_mg_L",
  "KNO3_label",
  "MAP_label",
  "P_factor",
  "K_factor",
] as const;
const saltOfK = (v: TwoSalts) =>
  feed.doseForConcentration_g_L({
    wanted_mg_L: v.K_target_mg_L,
    content_frac: at(v.KNO3_label, 2) * v.K_factor,
  });
const saltOfP = (v: TwoSalts) =>
  feed.doseForConcentration_g_L({
    wanted_mg_L: v.P_target_mg_L,
    content_frac: at(v.MAP_label, 1) * v.P_factor,
  });

const twoSaltRules = [
  ruleOn<TwoSalts>("KNO3_g_L", twoNeeds, saltOfK),
  ruleOn<TwoSalts>("MAP_g_L", twoNeeds, saltOfP),
  // The page doses to two decimals, and prints what those give.
  ruleOn<TwoSalts>("N_mg_L", twoNeeds, (v) =>
    feed.doseConcentration_mg_L({
      dose_g_L: saltOfK(v),
      content_frac: at(v.KNO3_label, 0),
      water_mg_L: feed.doseConcentration_mg_L({ dose_g_L: saltOfP(v), content_frac: at(v.MAP_label, 0) }),
    }),
  ),
  ruleOn<TwoSalts>("P_mg_L", twoNeeds, (v) =>
    feed.doseConcentration_mg_L({
      dose_g_L: Math.round(saltOfP(v) * 100) / 100,
      content_frac: at(v.MAP_label, 1) * v.P_factor,
    }),
  ),
];

type Grade = { readonly N_ppm: number; readonly label: string; readonly volume_usgal: number };
const gradeNeeds = ["N_ppm", "label", "volume_usgal"] as const;
const gradeDose_g_L = ({ N_ppm, label }: Grade) =>
  feed.doseForConcentration_g_L({ wanted_mg_L: N_ppm, content_frac: at(label, 0) });
const gradeRules = [
  ruleOn<Grade>("mass_g", gradeNeeds, (v) => gradeDose_g_L(v) * v.volume_usgal * L_per_US_gallon),
  ruleOn<Grade>("P2O5_ppm", gradeNeeds, (v) =>
    feed.doseConcentration_mg_L({ dose_g_L: gradeDose_g_L(v), content_frac: at(v.label, 1) }),
  ),
  ruleOn<Grade>("K2O_ppm", gradeNeeds, (v) =>
    feed.doseConcentration_mg_L({ dose_g_L: gradeDose_g_L(v), content_frac: at(v.label, 2) }),
  ),
];

type ThreeSalts = {
  readonly N_ppm: number;
  readonly P2O5_ppm: number;
  readonly K2O_ppm: number;
  readonly tank_usgal: number;
  readonly injector_ratio: number;
  readonly labels: Readonly<Record<string, string>>;
};
/** Salts of a stock of which each brings what those before it left open: phosphate, then potash, then nitrogen. */
function threeSalts(v: ThreeSalts): Readonly<Record<string, number>> {
  const open = [v.N_ppm, v.P2O5_ppm, v.K2O_ppm];
  const doses: Record<string, number> = {};
  for (const place of [1, 2, 0]) {
    const found = Object.entries(v.labels).find(([name, label]) => at(label, place) > 0 && !(name in doses));
    if (!found) continue;
    const [name, label] = found;
    const dose_g_L = feed.doseForConcentration_g_L({
      wanted_mg_L: open[place] ?? 0,
      content_frac: at(label, place),
    });
    open.forEach((left, of) => {
      open[of] = Math.max(0, left - feed.doseConcentration_mg_L({ dose_g_L, content_frac: at(label, of) }));
    });
    doses[name] =
      (dose_g_L * feed.thinning({ injectorParts: v.injector_ratio }) * v.tank_usgal * L_per_US_gallon) /
      g_per_pound;
  }
  return doses;
}
const threeNeeds = ["N_ppm", "P2O5_ppm", "K2O_ppm", "tank_usgal", "injector_ratio", "labels"] as const;
const threeRules = ["NH4NO3", "KH2PO4", "KCl", "KNO3", "urea"].map((name) =>
  ruleOn<ThreeSalts>(`${name}_lb`, threeNeeds, (v) => threeSalts(v)[name]),
);

export const doseAliases: readonly Alias[] = [
  alias("formula", "salt"),
  alias("volume_L", "volume_usgal", (gallons) => gallons * L_per_US_gallon),
];

export const doseRules: readonly Rule[] = [
  ...oxideRules,
  ...fractionRules,
  ...twoSaltRules,
  ...gradeRules,
  ...threeRules,
  rule("NO3N_mg_L", ["NO3_mg_L"], ({ NO3_mg_L }) => NO3_mg_L * share("N", "NO3")),
  rule("mg_L", ["mass_oz", "volume_usgal"], (v) =>
    feed.doseConcentration_mg_L({
      dose_g_L: (v.mass_oz * g_per_ounce) / (v.volume_usgal * L_per_US_gallon),
      content_frac: 1,
    }),
  ),
  rule("N_ppm", ["N_pct", "mass_oz", "volume_usgal"], (v) =>
    feed.doseConcentration_mg_L({
      dose_g_L: (v.mass_oz * g_per_ounce) / (v.volume_usgal * L_per_US_gallon),
      content_frac: v.N_pct / 100,
    }),
  ),
  rule("oz_per_100_usgal", ["N_ppm", "N_pct"], (v) => perHundredGallons(v.N_ppm, v.N_pct / 100)),
  rule("CaNO3_oz", ["N_ppm_each", "N_pct_CaNO3"], (v) =>
    perHundredGallons(v.N_ppm_each, v.N_pct_CaNO3 / 100),
  ),
  rule("AN_oz", ["N_ppm_each", "N_pct_AN"], (v) => perHundredGallons(v.N_ppm_each, v.N_pct_AN / 100)),
  rule("oz_per_usgal_stock", ["N_ppm", "N_pct", "injector_ratio"], (v) =>
    stock(v.N_ppm, v.N_pct, v.injector_ratio),
  ),
  rule("oz", ["oz_per_usgal_stock", "tank_usgal"], (v) => v.oz_per_usgal_stock * v.tank_usgal),
  rule("lb", ["oz"], ({ oz }) => Math.floor((oz * g_per_ounce) / g_per_pound + 1e-9)),
  rule("rest_oz", ["oz", "lb"], ({ oz, lb }) => oz - (lb * g_per_pound) / g_per_ounce),
  rule(
    "mass_g",
    ["N_ppm", "N_pct", "volume_L"],
    (v) => v.volume_L * feed.doseForConcentration_g_L({ wanted_mg_L: v.N_ppm, content_frac: v.N_pct / 100 }),
  ),
  rule("mass_oz", ["mass_g"], ({ mass_g }) => mass_g / g_per_ounce),
  // The one value for a spoon of crystals that nobody weighed.
  rule("mass_g", ["volume_tsp"], ({ volume_tsp }) => spoon_g(volume_tsp)),
  rule("mass_oz", ["volume_tsp"], ({ volume_tsp }) => spoon_g(volume_tsp) / g_per_ounce),
  // The state of hydration stands in the key of the share.
  ...["anhydrous", "tetrahydrate", "dihydrate", "double_salt"].map((hydrate) =>
    rule("Ca_mg_L", ["mass_g", "volume_L", `Ca_pct_${hydrate}`], (v) =>
      feed.doseConcentration_mg_L({
        dose_g_L: (v.mass_g as number) / (v.volume_L as number),
        content_frac: (v[`Ca_pct_${hydrate}`] as number) / 100,
      }),
    ),
  ),
  ...[15, 100, 200, 300, 500].flatMap((parts) => [
    rule(`oz_gal_1to${parts}`, ["N_ppm", "N_pct"], (v) => stock(v.N_ppm, v.N_pct, parts)),
    rule(`oz_1to${parts}`, ["N_ppm", "N_pct"], (v) => stock(v.N_ppm, v.N_pct, parts)),
  ]),
  ruleOn<{ label: Label; N_ppm: number; N_pct: number; charge_closed_with: string }>(
    "EC_mS_cm",
    ["label", "N_ppm", "N_pct", "charge_closed_with"],
    labelConductivity,
  ),
  rule(
    "product_mg_L",
    ["Ca_mg_L", "Ca_pct"],
    (v) => 1000 * feed.doseForConcentration_g_L({ wanted_mg_L: v.Ca_mg_L, content_frac: v.Ca_pct / 100 }),
  ),
  rule("N_mg_L_at_1g_L", ["N_pct"], ({ N_pct }) =>
    feed.doseConcentration_mg_L({ dose_g_L: 1, content_frac: N_pct / 100 }),
  ),
  rule("lb_N_per_usgal", ["N_pct", "density_lb_usgal"], ({ N_pct, density_lb_usgal }) => {
    const density_g_mL = (density_lb_usgal * g_per_pound) / (1000 * L_per_US_gallon);
    const content = feed.liquidContent_mg_mL({ content_frac: N_pct / 100, basis: "by mass", density_g_mL });
    return (content * L_per_US_gallon) / g_per_pound;
  }),
  rule(
    "product_lb",
    ["fl_oz", "density_lb_usgal"],
    (v) => (v.fl_oz * mL_per_US_fluid_ounce * v.density_lb_usgal) / (1000 * L_per_US_gallon),
  ),
  ...(["N", "P", "K", "Ca", "Mg", "Fe", "Mn", "Zn", "B"] as const).flatMap((of) => [
    rule(`${of}_lb`, ["fl_oz", "density_lb_usgal", `${of}_pct`], (v) => {
      const density_g_mL = (v.density_lb_usgal * g_per_pound) / (1000 * L_per_US_gallon);
      const content = feed.liquidContent_mg_mL({
        content_frac: (v[`${of}_pct`] as number) / 100,
        basis: "by mass",
        density_g_mL,
      });
      return (content * v.fl_oz * mL_per_US_fluid_ounce) / 1000 / g_per_pound;
    }),
    rule(
      `${of}_mg_L`,
      ["dose_mL_L", `${of}_pct_mm`, "density_g_mL"],
      (v) =>
        v.dose_mL_L *
        feed.liquidContent_mg_mL({
          content_frac: (v[`${of}_pct_mm`] as number) / 100,
          basis: "by mass",
          density_g_mL: v.density_g_mL,
        }),
    ),
    rule(
      `${of}_mg_L`,
      ["dose_mL_L", `${of}_pct_mv`],
      (v) =>
        v.dose_mL_L *
        feed.liquidContent_mg_mL({
          content_frac: (v[`${of}_pct_mv`] as number) / 100,
          basis: "by volume",
          density_g_mL: 1.2,
        }),
    ),
    rule(`${of}_mg_L`, ["dose_g_L", `${of}_pct`], (v) =>
      feed.doseConcentration_mg_L({ dose_g_L: v.dose_g_L, content_frac: (v[`${of}_pct`] as number) / 100 }),
    ),
    rule(`${of}_mg_L`, ["product_g_L", `${of}_pct`], (v) =>
      feed.doseConcentration_mg_L({
        dose_g_L: v.product_g_L,
        content_frac: (v[`${of}_pct`] as number) / 100,
      }),
    ),
  ]),
  // Fifty pounds of an even grade, with the factors that the page uses.
  rule(/^(N|P2O5|K2O)_lb$/, ["mass_lb"], ({ mass_lb }) => mass_lb * at("20-20-20", 0)),
  rule("P_lb", ["mass_lb", "P_factor"], (v) => v.mass_lb * at("20-20-20", 1) * v.P_factor),
  rule("K_lb", ["mass_lb", "K_factor"], (v) => v.mass_lb * at("20-20-20", 2) * v.K_factor),
  ruleOn<{ formula: string }>("Ca_pct", ["formula"], ({ formula }) => percent(share("Ca", formula))),
  ...(["K", "Mg", "P", "S", "Na", "Cl"] as const).map((atom) =>
    ruleOn<{ formula: string }>(`${atom}_pct`, ["formula"], ({ formula }) => percent(share(atom, formula))),
  ),
  ruleOn<{ formula: string }>(/^N(_total)?_pct$/, ["formula"], ({ formula }) => percent(share("N", formula))),
  ruleOn<{ formula: string }>("NH4N_pct", ["formula"], ({ formula }) => percent(ammonium(formula))),
  ruleOn<{ formula: string }>("NO3N_pct", ["formula"], ({ formula }) =>
    percent(share("N", formula) - ammonium(formula)),
  ),
];

/** Share of ammonium nitrogen: one in each NH4 written. */
function ammonium(formula: string): number {
  const groups = [...formula.matchAll(/(?:^|\.)(\d*)(?:\()?NH4(?:\))?(\d*)/g)];
  const count = groups.reduce((sum, [, times, after]) => sum + Number(times || 1) * Number(after || 1), 0);
  return (count * feed.atomicMass_g_mol.N) / feed.molarMass_g_mol(formula);
}

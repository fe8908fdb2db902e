import * as light from "@sillwood/science/light";
import * as sun from "@sillwood/science/sun";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

type Many = number | readonly number[];
const each = <Result>(value: Many, run: (one: number) => Result): Result | Result[] =>
  typeof value === "number" ? run(value) : value.map(run);

type Pane = { readonly tau_normal: number; readonly n: number; readonly angle_deg: Many };
const paneNeeds = ["tau_normal", "n", "angle_deg"] as const;
const paneAt = (v: Pane, pick: (of: ReturnType<typeof light.paneAtAngle>) => number) =>
  each(v.angle_deg, (glassAngle_deg) =>
    pick(light.paneAtAngle({ glassAngle_deg, paneTransmittance_frac: v.tau_normal, refraction: v.n })),
  );
type Unit = Pane & { readonly panes: number };
const unitAt = (v: Unit) =>
  each(v.angle_deg, (glassAngle_deg) =>
    light.glazingTransmittance_frac({
      glassAngle_deg,
      panes_n: v.panes,
      paneTransmittance_frac: v.tau_normal,
      refraction: v.n,
    }),
  );

const count: Readonly<Record<string, number>> = { single: 1, double: 2, triple: 3 };
const normalNeeds = ["tau_normal_single", "n"] as const;
const stack = (kind: string) =>
  rule(`${kind}_normal`, normalNeeds, (v) =>
    light.glazingTransmittance_frac({
      glassAngle_deg: 0,
      panes_n: count[kind] ?? 1,
      paneTransmittance_frac: v.tau_normal_single,
      refraction: v.n,
    }),
  );
const diffuse = (kind: string) =>
  rule(`${kind}_diffuse`, normalNeeds, (v) =>
    light.diffuseTransmittance_frac({
      panes_n: count[kind] ?? 1,
      paneTransmittance_frac: v.tau_normal_single,
      refraction: v.n,
    }),
  );

const glassRules: readonly Rule[] = [
  ruleOn<Pane>(/^tau(_visible|_solar|_direct)?$/, paneNeeds, (v) => paneAt(v, (of) => of.transmitted_frac)),
  ruleOn<Pane>(/^(rho|reflectance)(_visible|_solar)?$/, paneNeeds, (v) =>
    paneAt(v, (of) => of.reflected_frac),
  ),
  ruleOn<Unit>(/^tau(_visible|_solar|_direct)?$/, [...paneNeeds, "panes"], unitAt),
  ruleOn<{ n: number; KL: number; angle_deg: Many }>("iam", ["n", "KL", "angle_deg"], (v) =>
    each(v.angle_deg, (glassAngle_deg) =>
      light.incidenceModifier({ glassAngle_deg, refraction: v.n, extinctionDepth: v.KL }),
    ),
  ),
  rule("KL", ["K_1_m", "L_m"], (v) => v.K_1_m * v.L_m),
  ...["single", "double", "triple"].flatMap((kind) => [stack(kind), diffuse(kind)]),
];

const ratio = (gives: RegExp, overcast: boolean) =>
  ruleOn<{ sky: string }>(gives, ["sky"], () => light.uprightOverLevel_frac(overcast));

type Centred = { readonly d_m: Many; readonly width_m: number; readonly height_m: number };
const centred = (v: Centred, pick: (of: ReturnType<typeof light.openPaneFactors>) => number) =>
  each(v.d_m, (distance_m) =>
    pick(
      light.openPaneFactors({
        left_m: -v.width_m / 2,
        right_m: v.width_m / 2,
        bottom_m: 0,
        top_m: v.height_m,
        distance_m,
      }),
    ),
  );
/** A window whose size stands in the row's words: "1.2 m wide x 1.4 m tall". */
const sizeIn = (what: string): readonly [number, number] | undefined => {
  const found = /(\d+(?:\.\d+)?) m wide (?:x|by) (\d+(?:\.\d+)?) m (?:tall|high)/.exec(what);
  return found ? [Number(found[1]), Number(found[2])] : undefined;
};
const byWords = (gives: RegExp, pick: (of: ReturnType<typeof light.openPaneFactors>) => number): Rule =>
  ruleOn<{ d_m: Many; what: string }>(gives, ["d_m", "what"], (v) => {
    const size = sizeIn(v.what);
    return size && centred({ d_m: v.d_m, width_m: size[0], height_m: size[1] }, pick);
  });

const factorRules: readonly Rule[] = [
  ruleOn<{ sky: string }>(/^(ev_over_eh|vertical_over_horizontal)$/, ["sky"], (v) =>
    light.uprightOverLevel_frac(/sin|overcast/.test(v.sky)),
  ),
  ratio(/^ev_over_eh_overcast$/, true),
  ratio(/^ev_over_eh_uniform$/, false),
  rule("F", ["a_m", "b_m", "c_m"], (v) =>
    light.parallelCornerFactor_frac({ sideLength_m: v.a_m, sideWidth_m: v.b_m, distance_m: v.c_m }),
  ),
  // Fire texts give the panel by its area over the squared distance and its narrow side over the other.
  rule("F", ["alpha_hw_over_d2", "S_w_over_h"], (v) =>
    light.parallelCornerFactor_frac({
      sideLength_m: Math.sqrt(v.alpha_hw_over_d2 / v.S_w_over_h),
      sideWidth_m: Math.sqrt(v.alpha_hw_over_d2 * v.S_w_over_h),
      distance_m: 1,
    }),
  ),
  rule("F", ["b_width_m", "h_m", "d_m"], (v) =>
    light.wallCornerFactor_frac({ sideWidth_m: v.b_width_m, sideHeight_m: v.h_m, distance_m: v.d_m }),
  ),
  ruleOn<Centred>(/^F_(horizontal|h|level)$/, ["d_m", "width_m", "height_m"], (v) =>
    centred(v, (of) => of.level_frac),
  ),
  ruleOn<Centred>(/^F_(facing_window|vertical|v)$/, ["d_m", "width_m", "height_m"], (v) =>
    centred(v, (of) => of.facing_frac),
  ),
  byWords(/^F_(horizontal|h|level)$/, (of) => of.level_frac),
  byWords(/^F_(facing_window|vertical|v)$/, (of) => of.facing_frac),
];

const chainNeeds = [
  "lat_deg",
  "date",
  "window_w_m",
  "window_h_m",
  "sill_above_leaf_m",
  "distance_m",
  "window_azimuth_deg",
  "tau_normal_each",
  "refractive_index",
  "panes",
  "step_min",
  "par_mol_per_MJ",
] as const;
type Chain = { readonly [Name in (typeof chainNeeds)[number]]: number } & { readonly date: string };

const dayOfYear_d = (date: string): number =>
  (Date.parse(`${date}T00:00:00Z`) - Date.UTC(Number(date.slice(0, 4)), 0, 1)) / 86_400_000 + 1;

function geometryOf(v: Chain) {
  return {
    left_m: -v.window_w_m / 2,
    right_m: v.window_w_m / 2,
    bottom_m: v.sill_above_leaf_m,
    top_m: v.sill_above_leaf_m + v.window_h_m,
    distance_m: v.distance_m,
  };
}
const glazingOf = (v: Chain) => ({
  panes_n: v.panes,
  paneTransmittance_frac: v.tau_normal_each,
  refraction: v.refractive_index,
});

/** The worked days see no ground: their window begins at the leaf, or its lower part shows nothing. */
const dayOf = (v: Chain) =>
  light.windowDay({
    views: [
      light.paneView({
        ...geometryOf(v),
        facing_deg: v.window_azimuth_deg,
        glazing: glazingOf(v),
        groundAlbedo: 0,
        overcastBelow_frac: 0,
      }),
    ],
    latitude_deg: v.lat_deg,
    dayOfYear_d: dayOfYear_d(v.date),
    step_min: v.step_min,
    parShare_frac: 0.45,
    daylightPhotons_umol_J: v.par_mol_per_MJ / 0.45,
  });

/** Diffuse radiation of the clear day outdoors [mol m⁻² d⁻¹]: what an open sky without a beam would give a level leaf. */
function outdoorDiffuse(v: Chain): number {
  const { diffuse } = light.windowDay({
    views: light.openSkyViews({ groundAlbedo: 0 }),
    latitude_deg: v.lat_deg,
    dayOfYear_d: dayOfYear_d(v.date),
    step_min: v.step_min,
    parShare_frac: 0.45,
    daylightPhotons_umol_J: v.par_mol_per_MJ / 0.45,
  });
  return diffuse.level_mol_m2_d;
}

const chain = (gives: string, compute: (v: Chain) => number): Rule =>
  ruleOn<Chain>(gives, chainNeeds, compute);

/** The printed chain takes the sky through the closed form and the diffuse transmittance, not direction by direction. */
const skyOf = (v: Chain): number =>
  outdoorDiffuse(v) *
  light.openPaneFactors(geometryOf(v)).level_frac *
  light.diffuseTransmittance_frac(glazingOf(v));

const chainRules: readonly Rule[] = [
  chain("dli_outdoor_mol", (v) => dayOf(v).outdoors_mol_m2_d),
  chain("dli_direct_mol", (v) => dayOf(v).direct.level_mol_m2_d),
  chain("dli_sky_mol", skyOf),
  chain("dli_total_mol", (v) => dayOf(v).direct.level_mol_m2_d + skyOf(v)),
  ruleOn<{ date: string }>("day_of_year", ["date"], (v) => dayOfYear_d(v.date)),
  rule(
    "dni_clear_W_m2",
    ["ghi_W_m2", "apparent_elevation_deg", "e0_W_m2"],
    (v) =>
      sun.diffuseSplit({
        hourGlobal_W_m2: v.ghi_W_m2,
        elevation_deg: v.apparent_elevation_deg,
        normalExtraterrestrial_W_m2: v.e0_W_m2,
      }).direct_W_m2,
  ),
];

/** Rows about glass, windows and whole days behind them. */
export const windowRules: readonly Rule[] = [...glassRules, ...factorRules, ...chainRules];

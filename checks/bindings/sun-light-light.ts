import * as light from "@sillwood/science/light";
import * as units from "@sillwood/science/units";
import { type Rule, rule, ruleOn } from "../src/rules.ts";

type Many = number | readonly number[];
const each = <Result>(value: Many, run: (one: number) => Result): Result | Result[] =>
  typeof value === "number" ? run(value) : value.map(run);

const sourceNames: readonly (readonly [RegExp, light.LightSource])[] = [
  [/blue sky/, "blue sky"],
  [/sun|daylight/, "sun and sky"],
  [/halide/, "metal halide"],
  [/sodium/, "high pressure sodium"],
  [/fluorescent|cool white/, "fluorescent"],
  [/incandescent|tungsten/, "incandescent"],
  [/CRI (8\d|80)/, "white LED, CRI 80"],
  [/CRI (9\d|90)/, "white LED, CRI 90"],
  [/LED/, "white LED"],
];
const sourceOf = (name: string) => {
  const found = sourceNames.find(([words]) => words.test(name));
  return found && light.lightSourceRatios[found[1]];
};
/** The standard spectrum that stands for a source, where a row compares with an integral of our own. */
const spectrumOf: Readonly<Record<string, keyof typeof light.standardSpectra>> = {
  sunlight: "D55",
  incandescent: "A",
  "cool white": "FL2",
};
const named = (spectrum: string) => {
  const key = Object.keys(light.standardSpectra)
    .toSorted((a, b) => b.length - a.length)
    .find((name) => new RegExp(`(^| )${name}( |\\(|,|$)`).test(spectrum));
  return key === undefined ? undefined : light.standardSpectra[key as keyof typeof light.standardSpectra];
};

const constantRules: readonly Rule[] = [
  ruleOn<{ source: string }>("lux_per_umol_m2_s", ["source"], (v) => sourceOf(v.source)?.light_lx_per_umol),
  ruleOn<{ source: string }>("umol_per_J_par", ["source"], (v) => sourceOf(v.source)?.photons_umol_J),
  ruleOn<{ spectrum: string }>(
    "lux_per_umol_m2_s",
    ["spectrum"],
    (v) => named(v.spectrum)?.light_lx_per_umol,
  ),
  ruleOn<{ spectrum: string }>("umol_per_J_par", ["spectrum"], (v) => named(v.spectrum)?.photons_umol_J),
  ruleOn<{ source: readonly string[] | string }>("lux_per_umol", ["source"], (v) => {
    const one = (name: string): number | undefined =>
      light.standardSpectra[spectrumOf[name] ?? "D65"].light_lx_per_umol;
    return typeof v.source === "string" ? one(v.source) : v.source.map(one);
  }),
  ruleOn<{ ppfd_umol_m2_s: Many; lux_per_umol: number }>(/^lux$/, ["ppfd_umol_m2_s", "lux_per_umol"], (v) =>
    each(v.ppfd_umol_m2_s, (ppfd_umol_m2_s) =>
      light.luxFromPpfd_lx({ ppfd_umol_m2_s, source: "sun and sky", light_lx_per_umol: v.lux_per_umol }),
    ),
  ),
  ruleOn<{ lux: Many; lux_per_umol: number }>(/^ppfd(_umol_m2_s)?$/, ["lux", "lux_per_umol"], (v) =>
    each(v.lux, (illuminance_lx) =>
      light.ppfdFromLux_umol_m2_s({
        illuminance_lx,
        source: "sun and sky",
        light_lx_per_umol: v.lux_per_umol,
      }),
    ),
  ),
  ruleOn<{ foot_candles: Many }>(/^lux$/, ["foot_candles"], (v) =>
    each(v.foot_candles, (value) => units.toCanonical({ value, kind: "illuminance", unit: "fc" })),
  ),
  ruleOn<{ lux: Many }>(/^foot_candles?$/, ["lux"], (v) =>
    each(v.lux, (value) => units.fromCanonical({ value, kind: "illuminance", unit: "fc" })),
  ),
  rule("lux_per_foot_candle", ["what"], () => units.lx_per_footcandle),
];

const photonRules: readonly Rule[] = [
  rule("mol_per_MJ", ["par_fraction", "umol_per_J"], (v) =>
    light.photonsOfDaylight_mol_MJ({ parShare_frac: v.par_fraction, daylightPhotons_umol_J: v.umol_per_J }),
  ),
  rule("mol_per_Wh", ["mol_per_MJ"], (v) => v.mol_per_MJ * units.MJ_m2_h_per_W_m2),
  rule("mol_per_MJ", ["conversion_mol_per_kWh"], (v) => v.conversion_mol_per_kWh / units.MJ_per_kWh),
  rule("mol_per_MJ", ["conversion_mol_per_Wh"], (v) => v.conversion_mol_per_Wh / units.MJ_m2_h_per_W_m2),
  rule(/^dli(_outdoor)?_mol(_m2_d)?$/, ["rs_MJ_m2_d", "mol_per_MJ"], (v) => v.rs_MJ_m2_d * v.mol_per_MJ),
  ruleOn<{ ppfd_umol_m2_s: Many; hours: Many }>("dli_mol_m2_d", ["ppfd_umol_m2_s", "hours"], (v) =>
    each(v.ppfd_umol_m2_s, (ppfd_umol_m2_s) =>
      each(v.hours, (lit_h) => light.dailyLight_mol_m2_d({ ppfd_umol_m2_s, lit_h })),
    ),
  ),
  ruleOn<{ ppe_umol_J: Many }>("mol_per_kWh", ["ppe_umol_J"], (v) =>
    each(v.ppe_umol_J, light.photonsPerEnergy_mol_kWh),
  ),
];

const height = (value: Many, run: (height_m: number) => number) => each(value, run);
type Fit = { readonly height_m: readonly number[]; readonly ppfd_umol_m2_s: readonly number[] };
const fit = (v: Fit) => light.fitLamp({ heights_m: v.height_m, readings_umol_m2_s: v.ppfd_umol_m2_s });
const fitted = (gives: string | RegExp, pick: (of: light.LampFit) => unknown): Rule =>
  ruleOn<Fit>(gives, ["height_m", "ppfd_umol_m2_s"], (v) => pick(fit(v)));
/** "ppfd_at_0_45" is the light 0.45 m below the lamp. */
const atHeight = (height_m: string): Rule =>
  fitted(`ppfd_at_${height_m}`, ({ strength_umol_s, size_m }) =>
    strength_umol_s === null || size_m === null
      ? undefined
      : light.fittedLamp_umol_m2_s({ strength_umol_s, size_m, height_m: Number(height_m.replace("_", ".")) }),
  );
const tenths = Array.from({ length: 60 }, (_, i) =>
  ((i + 1) * 0.05).toFixed(2).replace(/0$/, "").replace(".", "_"),
);

const lampRules: readonly Rule[] = [
  ruleOn<{ height_over_radius: Many }>("true_over_inverse_square", ["height_over_radius"], (v) =>
    each(v.height_over_radius, (times) => light.inverseSquareShare_frac({ radius_m: 1, height_m: times })),
  ),
  ruleOn<{ ppf_umol_s: number; radius_m: number; height_m: Many }>(
    "ppfd_umol_m2_s",
    ["ppf_umol_s", "radius_m", "height_m"],
    (v) =>
      height(v.height_m, (height_m) =>
        light.discLamp_umol_m2_s({ flux_umol_s: v.ppf_umol_s, radius_m: v.radius_m, height_m }),
      ),
  ),
  ruleOn<{ ppf_umol_s: number; side_m: number; height_m: Many }>(
    "ppfd_umol_m2_s",
    ["ppf_umol_s", "side_m", "height_m"],
    (v) =>
      height(v.height_m, (height_m) =>
        light.rectangleLamp_umol_m2_s({
          flux_umol_s: v.ppf_umol_s,
          length_m: v.side_m,
          width_m: v.side_m,
          height_m,
        }),
      ),
  ),
  ruleOn<{ ppf_umol_s: number; length_m: number; width_m: number; height_m: Many }>(
    "ppfd_umol_m2_s",
    ["ppf_umol_s", "length_m", "width_m", "height_m"],
    (v) =>
      height(v.height_m, (height_m) =>
        light.rectangleLamp_umol_m2_s({ ...v, flux_umol_s: v.ppf_umol_s, height_m }),
      ),
  ),
  ruleOn<{ ppf_umol_s: number; length_m: number; height_m: Many }>(
    "ppfd_umol_m2_s",
    ["ppf_umol_s", "length_m", "height_m"],
    (v) =>
      height(v.height_m, (height_m) =>
        light.stripLamp_umol_m2_s({ ...v, flux_umol_s: v.ppf_umol_s, height_m }),
      ),
  ),
  ruleOn<{ ppf_umol_s: number; height_m: Many }>("ppfd_umol_m2_s", ["ppf_umol_s", "height_m"], (v) =>
    height(v.height_m, (height_m) => light.pointLamp_umol_m2_s({ flux_umol_s: v.ppf_umol_s, height_m })),
  ),
  ruleOn<{ ppf_umol_s: number; beam_deg: number; height_m: Many }>(
    "ppfd_umol_m2_s",
    ["ppf_umol_s", "beam_deg", "height_m"],
    (v) =>
      height(v.height_m, (height_m) =>
        light.pointLamp_umol_m2_s({ flux_umol_s: v.ppf_umol_s, beam_deg: v.beam_deg, height_m }),
      ),
  ),
  rule("ppfd_umol_m2_s", ["ppf_umol_s", "beam_deg", "height_m", "lateral_m"], (v) =>
    light.pointLamp_umol_m2_s({ ...v, flux_umol_s: v.ppf_umol_s }),
  ),
  ruleOn<{ beam_deg: Many }>(/^(m|exponent)$/, ["beam_deg"], (v) => each(v.beam_deg, light.beamExponent)),
  fitted("c_m", (of) => of.size_m ?? undefined),
  fitted(/^K(_umol_s)?$/, (of) => of.strength_umol_s ?? undefined),
  fitted(/^rejected$/, (of) => of.quality === "rejected"),
  ...tenths.map(atHeight),
  ...tenths.filter((each) => !each.includes("_")).map((each) => atHeight(`${each}_0`)),
  rule(
    "hours",
    ["dli_target", "dli_nat", "ppfd_umol_m2_s"],
    (v) =>
      light.lampHours({
        target_mol_m2_d: v.dli_target,
        natural_mol_m2_d: v.dli_nat,
        ppfd_umol_m2_s: v.ppfd_umol_m2_s,
        cap_h: 24,
      }).exact_h,
  ),
];

const needRules: readonly Rule[] = [
  ruleOn<{ crop: readonly string[] | string }>("optimum_photoperiod_h", ["crop"], (v) => {
    const one = (crop: string): number | undefined =>
      /pepper/.test(crop)
        ? light.publishedDayLengths.sweetPepperOptimum_h
        : /tomato/.test(crop)
          ? light.publishedDayLengths.tomatoOptimum_h
          : undefined;
    return typeof v.crop === "string" ? one(v.crop) : v.crop.map(one);
  }),
  ruleOn<{ species: string }>("no_flowers_above_h", ["species"], (v) =>
    /frutescens/.test(v.species) ? light.publishedDayLengths.frutescensNoFlowersAbove_h : undefined,
  ),
  ruleOn<{ crop_group: string }>("yield_change_pct_low", ["crop_group"], () => light.yieldPerLight.low),
  ruleOn<{ crop_group: string }>("yield_change_pct_high", ["crop_group"], () => light.yieldPerLight.high),
];

/** Rows about units of light, lamps and what plants need. */
export const lightRules: readonly Rule[] = [...constantRules, ...photonRules, ...lampRules, ...needRules];

import { within } from "../errors/index.ts";
import { elementShare_frac } from "./atoms.ts";
import { type LabelBasis, liquidContent_mg_mL } from "./doses.ts";
import type { Amounts } from "./species.ts";

/** What a label prints, shares by mass or by volume. A nutrient given as oxide says so; one not printed is not there. */
export type Label = {
  readonly form: "solid" | "liquid";
  readonly basis?: LabelBasis;
  readonly density_g_mL?: number;
  readonly N_frac: number;
  readonly nitrateN_frac?: number;
  readonly ammoniumN_frac?: number;
  readonly ureaN_frac?: number;
  /** slow or organic: not dissolved at once */
  readonly otherN_frac?: number;
  readonly P_frac?: number;
  readonly K_frac?: number;
  readonly Ca_frac?: number;
  readonly Mg_frac?: number;
  readonly S_frac?: number;
  readonly pAs?: "oxide" | "element";
  readonly kAs?: "oxide" | "element";
  readonly caAs?: "oxide" | "element";
  readonly mgAs?: "oxide" | "element";
  readonly sAs?: "oxide" | "element";
  readonly Na_frac?: number;
  readonly Cl_frac?: number;
  readonly B_frac?: number;
  readonly Cu_frac?: number;
  readonly Fe_frac?: number;
  readonly Mn_frac?: number;
  readonly Mo_frac?: number;
  readonly Zn_frac?: number;
};

/** What is wrong with a label as it was typed, or must be asked before it can be used. */
export type LabelDoubt = {
  readonly doubt:
    | "oxide or element"
    | "no nitrogen split"
    | "split is not the total"
    | "more than all"
    | "no density"
    | "no basis";
  /** the nutrient it concerns */
  readonly of?: string;
  /** what was given and what it may be, as shares */
  readonly given_frac?: number;
  readonly expected_frac?: number;
  /** without an answer the label cannot be used at all */
  readonly firm: boolean;
};

export type ReadLabel = {
  /** by species, in a unit of the product: a gram of a solid, a millilitre of a liquid [mg] */
  readonly contents_mg: Amounts;
  /** nitrogen that comes later [mg] */
  readonly slowN_mg: number;
  /** whether the split of nitrogen is known; unknown is taken as half ammonium, the worse case */
  readonly splitKnown: boolean;
  readonly doubts: readonly LabelDoubt[];
};

const oxides = {
  P: elementShare_frac({ formula: "P2O5", atom: "P" }),
  K: elementShare_frac({ formula: "K2O", atom: "K" }),
  Ca: elementShare_frac({ formula: "CaO", atom: "Ca" }),
  Mg: elementShare_frac({ formula: "MgO", atom: "Mg" }),
  S: elementShare_frac({ formula: "SO3", atom: "S" }),
} as const;

/** Forms of nitrogen may miss their total by printed rounding. @source our assumption */
const SPLIT_MISSES_frac = 0.002;
/** An unknown split is taken as half ammonium and urea. @source our assumption, the pessimistic bound */
const UNKNOWN_AMMONIUM_frac = 0.5;
/** A liquid whose density nobody weighed. @source common practice, no source: 1.1 to 1.3 */
export const USUAL_DENSITY_g_mL = 1.2;
/** Crystals in a spoon that nobody weighed: 6 g a level US teaspoon. @source common practice, no source: 4 to 6.5 g */
export const USUAL_BULK_DENSITY_g_mL = 1.22;

const shares = [
  "N_frac",
  "nitrateN_frac",
  "ammoniumN_frac",
  "ureaN_frac",
  "otherN_frac",
  "P_frac",
  "K_frac",
  "Ca_frac",
  "Mg_frac",
  "S_frac",
  "Na_frac",
  "Cl_frac",
  "B_frac",
  "Cu_frac",
  "Fe_frac",
  "Mn_frac",
  "Mo_frac",
  "Zn_frac",
] as const satisfies readonly (keyof Label)[];

/**
 * A label read: what a unit of the product holds by species, and what must be asked because it is missing or cannot be.
 *
 * @param label as printed, shares 0 to 1 (to 1.5 by volume)
 * @returns contents of a gram (solid) or millilitre (liquid), with doubts; firm ones must be answered first
 * @throws QuantityError for shares outside that range, or a density outside 0.7 to 2.2 g/mL
 * @source IUPAC2013 for oxides; our assumption for what is asked
 * @see checks/feed.json FEED-001 to 006 and 030 to 036
 */
export function readLabel(label: Label): ReadLabel {
  for (const name of shares) within(name, label[name] ?? 0, 0, 1.5);
  if (label.density_g_mL !== undefined) within("density_g_mL", label.density_g_mL, 0.7, 2.2);
  const unit_mg = (share_frac = 0): number =>
    label.form === "solid"
      ? 1000 * share_frac
      : liquidContent_mg_mL({
          content_frac: share_frac,
          basis: label.basis ?? "by mass",
          density_g_mL: label.density_g_mL ?? USUAL_DENSITY_g_mL,
        });
  const element = (of: keyof typeof oxides, as: "oxide" | "element" | undefined): number =>
    unit_mg((label[`${of}_frac`] ?? 0) * (as === "oxide" ? oxides[of] : 1));
  const { nitrateN_frac, ammoniumN_frac, ureaN_frac, otherN_frac } = label;
  const slow_frac = otherN_frac ?? 0;
  const named_frac = (nitrateN_frac ?? 0) + (ammoniumN_frac ?? 0) + (ureaN_frac ?? 0) + slow_frac;
  const forms = [nitrateN_frac, ammoniumN_frac, ureaN_frac, otherN_frac];
  const splitKnown = label.N_frac === 0 || forms.some((each) => each !== undefined);
  const soluble_frac = Math.max(0, label.N_frac - slow_frac);
  const split = splitKnown
    ? { NO3N: nitrateN_frac ?? 0, NH4N: ammoniumN_frac ?? 0, ureaN: ureaN_frac ?? 0 }
    : {
        NO3N: soluble_frac * (1 - UNKNOWN_AMMONIUM_frac),
        NH4N: soluble_frac * UNKNOWN_AMMONIUM_frac,
        ureaN: 0,
      };
  const contents_mg: Amounts = {
    NO3N: unit_mg(split.NO3N),
    NH4N: unit_mg(split.NH4N),
    ureaN: unit_mg(split.ureaN),
    P: element("P", label.pAs),
    K: element("K", label.kAs),
    Ca: element("Ca", label.caAs),
    Mg: element("Mg", label.mgAs),
    S: element("S", label.sAs),
    Na: unit_mg(label.Na_frac),
    Cl: unit_mg(label.Cl_frac),
    B: unit_mg(label.B_frac),
    Cu: unit_mg(label.Cu_frac),
    Fe: unit_mg(label.Fe_frac),
    Mn: unit_mg(label.Mn_frac),
    Mo: unit_mg(label.Mo_frac),
    Zn: unit_mg(label.Zn_frac),
  };
  return {
    contents_mg: Object.fromEntries(Object.entries(contents_mg).filter(([, amount]) => amount > 0)),
    slowN_mg: unit_mg(slow_frac),
    splitKnown,
    doubts: doubtsOf(label, splitKnown, named_frac),
  };
}

/** Oxygen and hydrogen that come with what is declared: the least mass that the declared content can have. */
function leastMass_frac(label: Label): number {
  const oxide = (of: keyof typeof oxides, as: "oxide" | "element" | undefined) =>
    as === "oxide" ? (label[`${of}_frac`] ?? 0) : (label[`${of}_frac`] ?? 0) / oxides[of];
  const ions =
    (label.nitrateN_frac ?? 0) / 0.2259 +
    (label.ammoniumN_frac ?? 0) / 0.77648 +
    (label.ureaN_frac ?? 0) / 0.4665;
  const known = (label.nitrateN_frac ?? 0) + (label.ammoniumN_frac ?? 0) + (label.ureaN_frac ?? 0);
  return (
    ions +
    Math.max(0, label.N_frac - known) +
    oxide("P", label.pAs) +
    oxide("K", label.kAs) +
    (["Na", "Cl", "B", "Cu", "Fe", "Mn", "Mo", "Zn"] as const).reduce(
      (sum, of) => sum + (label[`${of}_frac`] ?? 0),
      0,
    )
  );
}

function doubtsOf(label: Label, splitKnown: boolean, named_frac: number): LabelDoubt[] {
  const doubts: LabelDoubt[] = [];
  for (const [of, as] of [
    ["P", label.pAs],
    ["K", label.kAs],
    ["Ca", label.caAs],
    ["Mg", label.mgAs],
    ["S", label.sAs],
  ] as const) {
    const given_frac = label[`${of}_frac`] ?? 0;
    if (given_frac > 0 && as === undefined)
      doubts.push({
        doubt: "oxide or element",
        of,
        given_frac,
        expected_frac: given_frac * oxides[of],
        firm: true,
      });
  }
  if (label.N_frac > 0 && !splitKnown) doubts.push({ doubt: "no nitrogen split", of: "N", firm: false });
  if (splitKnown && Math.abs(named_frac - label.N_frac) > SPLIT_MISSES_frac + 1e-9)
    doubts.push({
      doubt: "split is not the total",
      of: "N",
      given_frac: named_frac,
      expected_frac: label.N_frac,
      firm: true,
    });
  const most_frac = label.form === "liquid" && label.basis === "by volume" ? (label.density_g_mL ?? 1.5) : 1;
  const least_frac = leastMass_frac(label);
  // Waters and the rest of a salt come on top; what is declared alone may not be more than there is.
  if (least_frac > most_frac + 0.02)
    doubts.push({ doubt: "more than all", given_frac: least_frac, expected_frac: most_frac, firm: true });
  if (label.form === "liquid" && label.basis === undefined) doubts.push({ doubt: "no basis", firm: true });
  if (label.form === "liquid" && label.basis === "by mass" && label.density_g_mL === undefined)
    doubts.push({ doubt: "no density", expected_frac: USUAL_DENSITY_g_mL, firm: false });
  return doubts;
}

import {
  blendedWater,
  type Label,
  type MixProduct,
  type ReadLabel,
  readLabel,
  usualWater,
  type WaterReport,
} from "@sillwood/science/feed";
import type { SupplyLabel } from "../../supplies/label.ts";
import type { Supplies, Supply } from "../../supplies/supplies.ts";

/** A bottle or bag that can be mixed with: what a unit of it holds, and the tool that measures it. */
export interface Bottle {
  readonly supply: Supply;
  readonly label: SupplyLabel;
  readonly read: ReadLabel;
  readonly unit: "mL" | "g";
  readonly step: number;
}

const USUAL_SYRINGE_mL = 0.5;
const USUAL_SCALE_g = 0.1;
/** A level quarter teaspoon of crystals. @source common practice, no source: 6 g a level teaspoon, weigh ten */
const USUAL_SPOON_g = 1.5;
const USUAL_SPOON_mL = 1.25;
/** No mix is stronger than this: beyond it the sums of dilute solutions do not hold. */
const DILUTE_g_L = 3;
const DILUTE_mL_L = 20;

/** A label as the field of feeds reads it: what was left out stays out. */
const plainLabel = ({
  tool: _,
  step_mL: __,
  step_g: ___,
  most_mL_L: ____,
  most_g_L: _____,
  ...label
}: SupplyLabel): Label => label as Label;

function stepOf(label: SupplyLabel): number {
  if (label.form === "liquid")
    return label.step_mL ?? (label.tool === "spoon" ? USUAL_SPOON_mL : USUAL_SYRINGE_mL);
  return label.step_g ?? (label.tool === "spoon" ? USUAL_SPOON_g : USUAL_SCALE_g);
}

export const bottlesOf = (supplies: Supplies): readonly Bottle[] =>
  [...supplies.values()].flatMap((supply) =>
    supply.what === "feed" && supply.label
      ? [
          {
            supply,
            label: supply.label,
            read: readLabel(plainLabel(supply.label)),
            unit: supply.label.form === "liquid" ? ("mL" as const) : ("g" as const),
            step: stepOf(supply.label),
          },
        ]
      : [],
  );

/** Most of it in a tank: by its label, by what is left, and by what dilute sums hold for. */
export function asProduct({ supply, label, read, unit, step }: Bottle, volume_L: number): MixProduct {
  const byLabel = unit === "mL" ? label.most_mL_L : label.most_g_L;
  const most = Math.min(
    volume_L * Math.min(byLabel ?? Number.POSITIVE_INFINITY, unit === "mL" ? DILUTE_mL_L : DILUTE_g_L),
    supply.unit === unit ? supply.onHand : Number.POSITIVE_INFINITY,
  );
  return {
    id: supply.id,
    contents_mg: read.contents_mg,
    declaresChloride: (read.contents_mg.Cl ?? 0) > 0,
    step,
    most_n: Math.max(0, Math.floor(most / step + 1e-9)),
  };
}

export const USUAL_WATER = "usual";

/** Waters that somebody tested, latest first, and the usual one that nobody did. */
export const watersOf = (supplies: Supplies): readonly Supply[] =>
  [...supplies.values()]
    .filter(({ water }) => water !== undefined)
    .toSorted((one, other) => (other.readAt_ms ?? 0) - (one.readAt_ms ?? 0));

/** Rain holds next to nothing. @source our assumption */
const RAIN: WaterReport = { Ca_mg_L: 1, Na_mg_L: 1, Cl_mg_L: 1.5, alkalinity_mg_L: 3 };

const components = [
  "Ca_mg_L",
  "Mg_mg_L",
  "K_mg_L",
  "Na_mg_L",
  "Cl_mg_L",
  "sulphateS_mg_L",
  "nitrateN_mg_L",
  "P_mg_L",
  "B_mg_L",
  "Fe_mg_L",
  "alkalinity_mg_L",
] as const;

/** What is poured into the can: a tested water, or the usual one, thinned with rain. */
export function waterPoured(supply: Supply | undefined, pure_frac: number): WaterReport {
  const tested = supply?.water;
  const tap: WaterReport = tested
    ? Object.fromEntries(
        components.flatMap((name) => (tested[name] === undefined ? [] : [[name, tested[name]]])),
      )
    : usualWater;
  return pure_frac > 0 ? blendedWater(tap, RAIN, pure_frac) : tap;
}

import { plantLeafArea } from "@sillwood/science/growth";
import { leafSize_cm, type PlantFacts } from "../../plants/facts.ts";
import type { Sight } from "../craft.ts";
import { type Clockwork, growthSettings } from "./settings.ts";
import { changed, type GrowthSlice } from "./slice.ts";

const CM2_PER_M2 = 10_000;
const DAY_ms = 86_400_000;
/** Doubt of an area from a count alone, and with the size of a leaf measured. @source our assumption, as for the usual leaf area */
const COUNT_SD = { sizeGuessed: 0.35, sizeMeasured: 0.2 } as const;
/** Doubt of an area that another craft measured without saying how well. @source our assumption */
const MEASURED_SD = 0.15;
/** Doubt that a trim adds where all leaves are cut off. @source our assumption */
const TRIM_SD = 0.2;
/** Beyond this the reckoned area tells no more than the usual one. */
const LARGEST_SD_ln = 0.6;

/** Doubt of the ln leaf area now: as it was last known, grown with what has grown since and with time. */
export function leafAreaSd_ln(slice: GrowthSlice, sight: Pick<Sight, "assumed">): number {
  const { growthSpread_frac, leafWander_frac } = growthSettings(sight);
  const { leaves, grown_ln, at_ms } = slice;
  const days = Math.max(0, at_ms - leaves.at_ms) / DAY_ms;
  const grown = growthSpread_frac * grown_ln;
  return Math.min(
    LARGEST_SD_ln,
    Math.sqrt(leaves.sd_ln * leaves.sd_ln + grown * grown + leafWander_frac * leafWander_frac * days),
  );
}

/** Whether more is known of the leaf area than what is usual for kind and pot. */
export const knowsLeafArea = ({ leaves, leafArea_m2 }: GrowthSlice): boolean =>
  leaves.from === "counted" || (leaves.from !== "usual" && leafArea_m2 < leaves.usual_m2);

interface Known {
  readonly leafArea_m2: number;
  readonly sd_ln: number;
  readonly leaf_cm2: number;
  readonly leaves_n: number;
}

function known(
  slice: GrowthSlice,
  at_ms: number,
  { leafArea_m2, sd_ln, leaf_cm2, leaves_n }: Known,
): GrowthSlice {
  return changed(slice, {
    leaves: { ...slice.leaves, from: "counted", at_ms, sd_ln, leaf_cm2, leaves_n },
    leafArea_m2: Math.min(20, leafArea_m2),
    grown_ln: 0,
  });
}

/** All leaves counted, and the size of one measured or guessed. */
export function counted(slice: GrowthSlice, at_ms: number, plant: PlantFacts, sight: Sight): GrowthSlice {
  const leaves_n = plant.leaves_n?.value ?? 0;
  const leaf_cm2 = leafOf_cm2(plant, sight);
  const sd_ln = plant.leafLength_cm ? COUNT_SD.sizeMeasured : COUNT_SD.sizeGuessed;
  return known(slice, at_ms, { leafArea_m2: (leaves_n * leaf_cm2) / CM2_PER_M2, sd_ln, leaf_cm2, leaves_n });
}

/** The size of a leaf measured some time after the leaves were counted. */
export function sized(slice: GrowthSlice, at_ms: number, plant: PlantFacts, sight: Sight): GrowthSlice {
  const { leaves } = slice;
  if (leaves.from !== "counted" || !(leaves.leaf_cm2 > 0)) return slice;
  const leaf_cm2 = leafOf_cm2(plant, sight);
  const leafArea_m2 = (slice.leafArea_m2 * leaf_cm2) / leaves.leaf_cm2;
  const sd_ln = Math.max(COUNT_SD.sizeMeasured, leafAreaSd_ln(slice, sight) - COUNT_SD.sizeMeasured / 2);
  return known(slice, at_ms, { leafArea_m2, sd_ln, leaf_cm2, leaves_n: leaves.leaves_n });
}

function leafOf_cm2(plant: PlantFacts, sight: Sight): number {
  const { length_cm, width_cm } = leafSize_cm(plant);
  return length_cm * width_cm * sight.assumed("leafShape");
}

/** A few leaves measured and all counted. @throws QuantityError when a leaf is none */
export function measured(
  slice: GrowthSlice,
  at_ms: number,
  leaves: {
    readonly lengths_cm: readonly number[];
    readonly widths_cm: readonly number[];
    readonly leaves_n: number;
  },
  sight: Sight,
): GrowthSlice {
  const { plant } = growthSettings(sight).clockworks[slice.pepper_n] as Clockwork;
  const { leaves_n } = leaves;
  const found = plantLeafArea({
    ...plant,
    leaves_n,
    length_cm: leaves.lengths_cm,
    width_cm: leaves.widths_cm,
  });
  return known(slice, at_ms, {
    leafArea_m2: found.leafArea_m2,
    sd_ln: found.leafArea_m2 > 0 ? found.sd_m2 / found.leafArea_m2 : MEASURED_SD,
    leaf_cm2: (found.leafArea_m2 * CM2_PER_M2) / leaves_n,
    leaves_n,
  });
}

/** An area that another craft has measured. */
export const reported = (slice: GrowthSlice, at_ms: number, leafArea_m2: number): GrowthSlice =>
  known(slice, at_ms, { leafArea_m2, sd_ln: MEASURED_SD, leaf_cm2: 0, leaves_n: 0 });

/** What a cut or plucking left. */
export function kept(slice: GrowthSlice, at_ms: number, kept_frac: number, sight: Sight): GrowthSlice {
  const share = Math.min(1, Math.max(0, kept_frac));
  const { leaves } = slice;
  const sd_ln = Math.min(LARGEST_SD_ln, Math.hypot(leafAreaSd_ln(slice, sight), TRIM_SD * (1 - share)));
  return changed(slice, {
    leaves: {
      ...leaves,
      from: leaves.from === "usual" ? "cut" : leaves.from,
      at_ms,
      sd_ln,
      leaves_n: Math.round(leaves.leaves_n * share),
    },
    leafArea_m2: slice.leafArea_m2 * share,
    grown_ln: 0,
  });
}

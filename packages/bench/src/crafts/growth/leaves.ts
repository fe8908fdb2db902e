import { plantLeafArea } from "@sillwood/science/growth";
import { leafSize_cm, type PlantFacts } from "../../plants/facts.ts";
import type { Sight } from "../craft.ts";
import { type Clockwork, growthSettings, type Settings } from "./settings.ts";
import { changed, type Growing, type Leaves } from "./slice.ts";

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
export function leafAreaSd_ln(leaves: Leaves, grown_ln: number, at_ms: number, settings: Settings): number {
  const days = Math.max(0, at_ms - leaves.at_ms) / DAY_ms;
  const grown = settings.growthSpread_frac * grown_ln;
  const wander = settings.leafWander_frac;
  return Math.min(
    LARGEST_SD_ln,
    Math.sqrt(leaves.sd_ln * leaves.sd_ln + grown * grown + wander * wander * days),
  );
}

const sdNow_ln = ({ leaves, grown_ln, at_ms }: Growing, sight: Pick<Sight, "assumed">): number =>
  leafAreaSd_ln(leaves, grown_ln, at_ms, growthSettings(sight));

/** Whether more is known of the leaf area than what is usual for kind and pot. */
export const knowsLeafArea = (leaves: Leaves, leafArea_m2: number): boolean =>
  leaves.from === "counted" || (leaves.from !== "usual" && leafArea_m2 < leaves.usual_m2);

interface Counted {
  readonly leafArea_m2: number;
  readonly sd_ln: number;
  readonly leaf_cm2: number;
  readonly leaves_n: number;
}

function known(
  growing: Growing,
  at_ms: number,
  { leafArea_m2, sd_ln, leaf_cm2, leaves_n }: Counted,
): Growing {
  return changed(growing, {
    leaves: { ...growing.leaves, from: "counted", at_ms, sd_ln, leaf_cm2, leaves_n },
    leafArea_m2: Math.min(20, leafArea_m2),
    grown_ln: 0,
  });
}

/** All leaves counted, and the size of one measured or guessed. */
export function counted(growing: Growing, at_ms: number, plant: PlantFacts, sight: Sight): Growing {
  const leaves_n = plant.leaves_n?.value ?? 0;
  const leaf_cm2 = leafOf_cm2(plant, sight);
  const sd_ln = plant.leafLength_cm ? COUNT_SD.sizeMeasured : COUNT_SD.sizeGuessed;
  return known(growing, at_ms, {
    leafArea_m2: (leaves_n * leaf_cm2) / CM2_PER_M2,
    sd_ln,
    leaf_cm2,
    leaves_n,
  });
}

/** The size of a leaf measured some time after the leaves were counted. */
export function sized(growing: Growing, at_ms: number, plant: PlantFacts, sight: Sight): Growing {
  const { leaves } = growing;
  if (leaves.from !== "counted" || !(leaves.leaf_cm2 > 0)) return growing;
  const leaf_cm2 = leafOf_cm2(plant, sight);
  const leafArea_m2 = (growing.leafArea_m2 * leaf_cm2) / leaves.leaf_cm2;
  const sd_ln = Math.max(COUNT_SD.sizeMeasured, sdNow_ln(growing, sight) - COUNT_SD.sizeMeasured / 2);
  return known(growing, at_ms, { leafArea_m2, sd_ln, leaf_cm2, leaves_n: leaves.leaves_n });
}

function leafOf_cm2(plant: PlantFacts, sight: Sight): number {
  const { length_cm, width_cm } = leafSize_cm(plant);
  return length_cm * width_cm * sight.assumed("leafShape");
}

/** A few leaves measured and all counted. @throws QuantityError when a leaf is none */
export function measured(
  growing: Growing,
  at_ms: number,
  leaves: {
    readonly lengths_cm: readonly number[];
    readonly widths_cm: readonly number[];
    readonly leaves_n: number;
  },
  sight: Sight,
): Growing {
  const { plant } = growthSettings(sight).clockworks[growing.pepper_n] as Clockwork;
  const { leaves_n } = leaves;
  const found = plantLeafArea({
    ...plant,
    leaves_n,
    length_cm: leaves.lengths_cm,
    width_cm: leaves.widths_cm,
  });
  return known(growing, at_ms, {
    leafArea_m2: found.leafArea_m2,
    sd_ln: found.leafArea_m2 > 0 ? found.sd_m2 / found.leafArea_m2 : MEASURED_SD,
    leaf_cm2: (found.leafArea_m2 * CM2_PER_M2) / leaves_n,
    leaves_n,
  });
}

/** An area that another craft has measured. */
export const reported = (growing: Growing, at_ms: number, leafArea_m2: number): Growing =>
  known(growing, at_ms, { leafArea_m2, sd_ln: MEASURED_SD, leaf_cm2: 0, leaves_n: 0 });

/** What a cut or plucking left. */
export function leftBy(growing: Growing, at_ms: number, kept_frac: number, sight: Sight): Growing {
  const share = Math.min(1, Math.max(0, kept_frac));
  const { leaves } = growing;
  const sd_ln = Math.min(LARGEST_SD_ln, Math.hypot(sdNow_ln(growing, sight), TRIM_SD * (1 - share)));
  return changed(growing, {
    leaves: {
      ...leaves,
      from: leaves.from === "usual" ? "cut" : leaves.from,
      at_ms,
      sd_ln,
      leaves_n: Math.round(leaves.leaves_n * share),
    },
    leafArea_m2: growing.leafArea_m2 * share,
    grown_ln: 0,
  });
}

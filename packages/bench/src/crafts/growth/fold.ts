import type { EntryId } from "../../book/entry.ts";
import type { PlantFacts } from "../../plants/facts.ts";
import type { Happening, Sight } from "../craft.ts";
import { areFactsNew, atRest, seen, withFacts } from "./clock.ts";
import {
  LEAVES,
  type LeavesMeasured,
  leavesOf,
  NODES,
  type NodesCounted,
  STAGED,
  type Staged,
} from "./kinds.ts";
import { counted, leftBy, measured, reported, sized } from "./leaves.ts";
import { growthSettings } from "./settings.ts";
import { changed, type Growing, type GrowthSlice, growingAt, kept } from "./slice.ts";
import { isStageName, STAGE_WORDS, type StageWord } from "./stages.ts";

const PROBLEMS_n = 8;
/** A count this small, of a plant that nobody knows more of, is that of a seedling on its first shoot. */
const SEEDLING_LEAVES_n = 9;
/** Doubt of counted nodes. @source our assumption */
const NODES_SD_n = 0.5;

/** What happened to the plant, folded into the slice. Total: what makes no sense becomes a problem of the slice. */
export function growthFold(slice: GrowthSlice, happening: Happening, sight: Sight): GrowthSlice {
  if (!concerns(happening, sight.plant) && !areFactsNew(slice.known, sight)) return slice;
  return kept(folded(growingAt(slice, sight.at_ms), happening, sight));
}

/** Most entries are water and walks: they leave growth as it is. */
function concerns(
  { effects, own, entry }: Happening,
  { leaves_n, leafLength_cm, leafWidth_cm, stage }: PlantFacts,
) {
  if (own) return true;
  for (const { effect } of effects) if (effect === "leaf area" || effect === "structure") return true;
  return (
    stage?.entry === entry ||
    leaves_n?.entry === entry ||
    leafLength_cm?.entry === entry ||
    leafWidth_cm?.entry === entry
  );
}

function folded(growing: Growing, happening: Happening, sight: Sight): Growing {
  let next = withFacts(growing, sight);
  const { effects, own } = happening;
  if (effects.length > 0) next = withEffects(next, happening, sight);
  next = withMeasured(next, happening.entry, happening.at_ms, sight);
  if (!own) return next;
  try {
    return withOwn(next, own.kind, own.data, happening.at_ms, sight);
  } catch {
    // Data that passed no gate (an older book, a foreign hand) must not stop the fold.
    const problem = { entry: happening.entry, at_ms: happening.at_ms, what: "cannot be read" as const };
    return changed(next, { problems: [...next.problems.slice(1 - PROBLEMS_n), problem] });
  }
}

function withEffects(growing: Growing, { effects, at_ms, own }: Happening, sight: Sight): Growing {
  let next = growing;
  let left_frac = 1;
  let cut = false;
  for (const effect of effects) {
    if (effect.effect === "structure") cut ||= effect.what === "cut";
    else if (effect.effect === "leaf area") {
      const { kept_frac, measured_m2 } = effect;
      if (kept_frac !== undefined && Number.isFinite(kept_frac)) {
        left_frac *= Math.min(1, Math.max(0, kept_frac));
        next = leftBy(next, at_ms, kept_frac, sight);
      }
      // Of its own measuring the craft knows more than the effect tells the others.
      if (measured_m2 !== undefined && own === undefined && measured_m2 >= 0 && Number.isFinite(measured_m2))
        next = reported(next, at_ms, measured_m2);
    }
  }
  const settings = growthSettings(sight);
  if (!cut || left_frac > settings.hardCut_frac) return next;
  return changed(atRest(next, at_ms, "cut", settings), {
    nodes: { from: "unknown", at_ms, nodes_n: 0, sd_n: 0 },
    made_n: 0,
  });
}

/** What the house measured just now: leaves and stage. */
function withMeasured(growing: Growing, entry: EntryId, at_ms: number, sight: Sight): Growing {
  const { plant } = sight;
  let next = growing;
  if (plant.leaves_n?.entry === entry) {
    next = counted(next, at_ms, plant, sight);
    next = byLeaves(next, at_ms, plant, sight);
  } else if (plant.leafLength_cm?.entry === entry || plant.leafWidth_cm?.entry === entry) {
    next = sized(next, at_ms, plant, sight);
  }
  const { stage } = plant;
  if (stage?.entry === entry && isStageName(stage.value)) next = looked(next, at_ms, stage.value, sight);
  return next;
}

/** A count tells the stage of a seedling that nobody knows more of, and that bare wood must break buds first. */
function byLeaves(growing: Growing, at_ms: number, plant: PlantFacts, sight: Sight): Growing {
  const leaves_n = plant.leaves_n?.value ?? 0;
  const settings = growthSettings(sight);
  if (leaves_n === 0 && growing.rest_Cd === 0 && growing.clock.how !== "sown")
    return atRest(growing, at_ms, "seen", settings);
  if (growing.clock.how !== "guess" || leaves_n < 1 || leaves_n > SEEDLING_LEAVES_n) return growing;
  const bbch = 10 + leaves_n;
  return seen(growing, at_ms, { bbch, bbchLow: bbch, bbchHigh: 19 }, settings);
}

function looked(growing: Growing, at_ms: number, name: keyof typeof STAGE_WORDS, sight: Sight): Growing {
  const settings = growthSettings(sight);
  if (name === "at rest") return atRest(growing, at_ms, "seen", settings);
  return seen(growing, at_ms, STAGE_WORDS[name], settings);
}

function withOwn(growing: Growing, kind: string, data: unknown, at_ms: number, sight: Sight): Growing {
  if (kind === STAGED) {
    const { bbch, stage } = data as Staged;
    if (stage !== undefined && isStageName(stage)) return looked(growing, at_ms, stage, sight);
    return seen(growing, at_ms, exactly(bbch), growthSettings(sight));
  }
  if (kind === LEAVES) return measured(growing, at_ms, leavesOf(data as LeavesMeasured), sight);
  if (kind === NODES) {
    const { nodes_n } = data as NodesCounted;
    if (!(nodes_n >= 0 && nodes_n <= 500)) throw new RangeError("not a count of nodes");
    return changed(growing, { nodes: { from: "counted", at_ms, nodes_n, sd_n: NODES_SD_n }, made_n: 0 });
  }
  return growing;
}

function exactly(bbch: number | undefined): StageWord {
  if (bbch === undefined || !(bbch >= 0 && bbch <= 99)) throw new RangeError("not a code of a stage");
  const whole = Math.floor(bbch);
  return { bbch: whole, bbchLow: whole, bbchHigh: whole };
}

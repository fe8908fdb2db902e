import type { PlantFacts } from "../../plants/facts.ts";
import type { Reading } from "../../working/reading.ts";
import type { Sight } from "../craft.ts";
import { waterNow_mL } from "./fold.ts";
import { massOf } from "./ledger.ts";
import { heldBy, strength_mS_cm } from "./salts.ts";
import { type PotSlice, potSeen } from "./slice.ts";
import { pottingWords } from "./words.ts";

/** Doubt of a ledger that nobody read: what the tap brings, uptake and leaching are guesses. @source our assumption */
const LEDGER_SD_frac = 0.5;
/** Depletion at which a pot is usually watered: the driest that its salts get. @source our assumption */
export const DRIEST_frac = 0.65;

const salts = (value: number): Reading => ({
  value,
  sd: LEDGER_SD_frac * value,
  origin: "assumed",
  from: (say) => pottingWords(say).fromLedger,
});

const held =
  (of: (masses: readonly number[]) => number) =>
  (slice: PotSlice, _plant: PlantFacts, sight: Sight): Reading =>
    salts(of(heldBy(slice, waterNow_mL(slice, sight), sight)));

/** Salts of the pore water once the plant has drawn the pot down to `used_frac` of its store. */
export function saltWhen_mS_cm(slice: PotSlice, used_frac: number, sight: Sight): number {
  const seen = potSeen(sight.plant, slice.fill, sight);
  const water_mL = seen.unavailable_mL + (1 - used_frac) * sight.read("capacity_g").value;
  return strength_mS_cm(heldBy(slice, water_mL, sight), water_mL);
}

/** Readings that the other crafts may use. */
export const potOffers = {
  capacityPrior_g: (slice: PotSlice, plant: PlantFacts, sight: Sight): Reading => {
    const seen = potSeen(plant, slice.fill, sight);
    return {
      value: seen.available_g,
      sd: seen.sd_frac * seen.available_g,
      origin: seen.by === "test" ? "measured" : "assumed",
      from: (say) =>
        pottingWords(say).capacityFrom(seen.by, seen.medium_mL, seen.available_g / seen.medium_mL),
    };
  },
  saltAtRefill_mS_cm: (slice: PotSlice, _plant: PlantFacts, sight: Sight) =>
    salts(saltWhen_mS_cm(slice, 0, sight)),
  saltAtDriest_mS_cm: (slice: PotSlice, _plant: PlantFacts, sight: Sight) =>
    salts(saltWhen_mS_cm(slice, DRIEST_frac, sight)),
  nitrogen_mg: held((of) => massOf(of, "NO3N") + massOf(of, "NH4N") + massOf(of, "ureaN")),
  phosphorus_mg: held((of) => massOf(of, "P")),
  potassium_mg: held((of) => massOf(of, "K")),
  calcium_mg: held((of) => massOf(of, "Ca")),
  magnesium_mg: held((of) => massOf(of, "Mg")),
} as const;

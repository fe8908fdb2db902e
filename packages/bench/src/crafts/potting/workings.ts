import type { Working } from "../../working/working.ts";
import type { Outward } from "../craft.ts";
import type { RepotDue, SaltsDue } from "./due.ts";
import { type PotSlice, potSeen } from "./slice.ts";
import { pottingWords } from "./words.ts";

const Z80 = 1.2816;

/** How much a pot holds for its plant, from shape and medium. */
export function capacityWorking(slice: PotSlice, sight: Outward): Working {
  const { say } = sight;
  const words = pottingWords(say).working;
  const seen = potSeen(sight.plant, slice.fill, sight);
  const origin = seen.by === "test" ? "measured" : "assumed";
  const held_frac = seen.available_g / seen.medium_mL;
  return {
    title: words.capacity,
    result: say.volume(seen.available_g),
    value: seen.available_g,
    unit: "g",
    low: seen.available_g * Math.max(0, 1 - Z80 * seen.sd_frac),
    high: seen.available_g * (1 + Z80 * seen.sd_frac),
    origin,
    formula: words.capacityFormula,
    sum: `${say.volume(seen.medium_mL)} × ${say.percent(held_frac)} = ${say.volume(seen.available_g)}`,
    inputs: [
      {
        name: words.volume,
        said: say.volume(seen.medium_mL),
        value: seen.medium_mL,
        unit: "mL",
        origin: sight.plant.pot ? "measured" : "assumed",
        from: words.fromShape,
      },
      {
        name: words.water,
        said: say.percent(seen.drained_frac),
        value: seen.drained_frac,
        unit: "",
        origin,
        from: words.fillFrom(seen.by),
      },
      {
        name: words.air,
        said: say.percent(seen.air_frac),
        value: seen.air_frac,
        unit: "",
        origin,
        from: words.fillFrom(seen.by),
      },
      {
        name: words.unavailable,
        said: say.volume(seen.unavailable_mL),
        value: seen.unavailable_mL,
        unit: "mL",
        origin: "assumed",
        from: words.ours,
        assumption: "unavailable_frac",
      },
    ],
    source: "Milks, Fonteno & Larson 1989, J. Amer. Soc. Hort. Sci. 114; van Genuchten 1980",
    movesMost: words.testIt,
    notes: [],
  };
}

/** The salts of a pot beside the caution. */
export function saltWorking(due: SaltsDue, slice: PotSlice, sight: Outward): Working {
  const { say } = sight;
  const words = pottingWords(say).working;
  const ec = (value: number) => `${say.number(value, 1)} mS/cm`;
  const held_mg = slice.ledger.held_mg.reduce((sum, each) => sum + each, 0);
  return {
    title: words.salts,
    result: ec(due.extract_mS_cm),
    value: due.extract_mS_cm,
    unit: "mS/cm",
    origin: "assumed",
    formula: words.saltFormula,
    sum: `${say.mass(held_mg / 1000)} / ${say.volume(due.capacity_mL)} → ${ec(due.refill_mS_cm)} → ${ec(due.extract_mS_cm)}`,
    inputs: [
      {
        name: words.held,
        said: say.mass(held_mg / 1000),
        value: held_mg,
        unit: "mg",
        origin: "assumed",
        from: words.ledger,
      },
      {
        name: words.waterAll,
        said: say.volume(due.capacity_mL),
        value: due.capacity_mL,
        unit: "mL",
        origin: sight.read("capacity_g").origin,
        from: sight.read("capacity_g").from(say),
      },
      {
        name: words.refill,
        said: ec(due.refill_mS_cm),
        value: due.refill_mS_cm,
        unit: "mS/cm",
        origin: "assumed",
        from: words.ledger,
      },
      {
        name: words.driest,
        said: ec(due.driest_mS_cm),
        value: due.driest_mS_cm,
        unit: "mS/cm",
        origin: "assumed",
        from: words.ledger,
      },
      {
        name: words.caution,
        said: ec(due.caution_mS_cm),
        value: due.caution_mS_cm,
        unit: "mS/cm",
        origin: "assumed",
        from: words.ours,
        assumption: "saltCaution_mS_cm",
      },
      {
        name: words.tap,
        said: ec(due.water_mS_cm),
        value: due.water_mS_cm,
        unit: "mS/cm",
        origin: "assumed",
        from: words.ours,
        assumption: "tapHCO3_mg_L",
      },
    ],
    source: "Maas 1990 for the threshold; UC ANR for flushes; our assumption for the ledger",
    movesMost: words.readIt,
    notes: [words.cautionOnly],
  };
}

/** When a pot wants fresh medium. */
export function repotWorking(due: RepotDue, slice: PotSlice, sight: Outward): Working {
  const { say } = sight;
  const words = pottingWords(say).working;
  return {
    title: words.repot,
    result: say.day(due.due_ms, sight.now_ms),
    value: due.due_ms,
    unit: "",
    origin: "assumed",
    formula: words.repotFormula,
    sum: words.repotSum(due.age_d, due.score),
    inputs: [
      {
        name: words.age,
        said: words.days(due.age_d),
        value: due.age_d,
        unit: "d",
        origin: "measured",
        from: say.day(slice.mediumSince_ms, sight.now_ms),
      },
      {
        name: words.storeLeft,
        said: say.percent(due.storeLeft_frac),
        value: due.storeLeft_frac,
        unit: "",
        origin: slice.storeThen_g === undefined ? "assumed" : "learned",
        from: slice.storeThen_g === undefined ? words.noMark : words.sinceMark,
      },
      {
        name: words.after,
        said: words.days(sight.assumed("repotAfter_d")),
        value: sight.assumed("repotAfter_d"),
        unit: "d",
        origin: "assumed",
        from: words.trade,
        assumption: "repotAfter_d",
      },
    ],
    source: "common practice, no source",
    notes: [],
  };
}

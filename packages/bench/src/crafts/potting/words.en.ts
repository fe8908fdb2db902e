import type { Say } from "../../words/say.ts";
import type { PottingWords } from "./words-shape.ts";

const METHOD = {
  "one to two": "one part in two of water",
  saturated: "saturated extract",
  "pour-through": "pour-through",
};

export const english = (say: Say): PottingWords => {
  const ec = (value: number) => `${say.number(value, 1)} mS/cm`;
  const days = (value: number) =>
    `${say.number(Math.round(value))} ${Math.round(value) === 1 ? "day" : "days"}`;
  return {
    part: (name) => name,
    filled: ({ recipe }) =>
      `filled with ${say.list(recipe.map(({ part, scoops_n }) => `${say.number(scoops_n)} ${scoops_n === 1 ? "scoop" : "scoops"} of ${part}`))}`,
    tested: ({ medium_mL, saturated_g, drained_g }) =>
      `medium tested: ${say.volume(saturated_g - drained_g)} ran out of ${say.volume(medium_mL)}`,
    prepared: ({ water_C, medium_C }) =>
      `potting day begun: water ${say.temperature(water_C)}, medium ${say.temperature(medium_C)}`,
    lifted: "lifted",
    cutBack: ({ leavesKept_frac }) =>
      `cut back for potting, ${say.percent(leavesKept_frac)} of the leaves left`,
    washed: ({ rootsKept_frac }) => `roots washed, ${say.percent(rootsKept_frac)} of them kept`,
    drained: "drained after potting",
    placed: ({ to }) =>
      to === undefined ? "placed after potting" : `placed after potting at ${say.name(to)}`,
    saltsRead: ({ ec_mS_cm, method }) => `salts read: ${ec(ec_mS_cm)}, ${METHOD[method]}`,
    rootsLooked: ({ rootsCircling, standing_s }) =>
      `roots looked at: ${rootsCircling ? "circling" : "not circling"}, water stands ${say.number(standing_s)} s`,
    cannotRead: "An entry on this pot cannot be read.",
    fromLedger: "everything poured, drained and drawn since it was potted, with usual tap water",
    capacityFrom: (by, medium_mL, held_frac) =>
      `${say.volume(medium_mL)} of ${by === "test" ? "a tested medium" : by === "recipe" ? "a mix of known parts" : "such a medium"} at this depth, ${say.percent(held_frac)} of it water for the plant`,
    care: "Gloves; damp dry medium before you stir it, its dust is not for lungs. Clean the blade. Sap burns eyes and skin.",
    limit: {
      cut: "roots were washed: no cut for three weeks",
      spray: "roots were washed: no spray on a plant that can't drink its fill",
      wash: "roots were washed: let them grow back",
      sell: "roots were washed: not yet settled in",
      feed: "fresh medium: new roots first, its charge feeds meanwhile",
      repot: "just potted",
    },
    task: {
      repot: "REPOT",
      samePot: "fresh medium, same pot",
      wider: "fresh medium, a pot at most 5 cm wider",
      repotWhy: (age_d, score) =>
        `${say.number(Math.round(age_d / 30.4))} months in its medium${score >= 2 ? `, ${say.number(score)} signs of a bound pot` : ""}`,
      flush: "FLUSH",
      doses: (doses_n, each_mL, wait_min) =>
        `${say.number(doses_n)} times ${say.volume(each_mL)}, ${say.minutes(wait_min)} apart, at room warmth`,
      emptySaucer: "empty the saucer each time",
      flushWhy: (extract, caution) => `salts about ${ec(extract)}, caution from ${ec(caution)}`,
    },
    working: {
      capacity: "What the pot holds for its plant",
      capacityFormula:
        "volume × (water after draining, as far as a watering reaches − what roots can't draw)",
      volume: "volume of medium",
      water: "water after draining at this depth",
      air: "air after draining at this depth",
      unavailable: "water that roots can't draw",
      fromShape: "inner measures of the pot, to the soil line",
      fillFrom: (by) =>
        by === "test"
          ? "your porosity test"
          : by === "recipe"
            ? "printed and remembered values of its parts"
            : "what is usual for such a medium",
      ours: "our assumption",
      trade: "common practice, no source",
      testIt: "A porosity test of this medium narrows it most.",
      salts: "Salts of the medium, as a saturated extract reads them",
      saltFormula: "what is dissolved / water at capacity, thinned as a paste thins it",
      held: "dissolved in the pot",
      waterAll: "water at capacity",
      refill: "when just watered",
      driest: "when driest",
      caution: "caution from",
      tap: "water from the tap",
      ledger: "poured in less drained and drawn",
      readIt: "One pour-through reading narrows it most.",
      cautionOnly: "A caution, never a forecast of yield.",
      repot: "Fresh medium due",
      repotFormula: "a year after potting, sooner with two signs of a bound pot",
      repotSum: (age_d, score) => `${days(age_d)} old, ${say.number(score)} signs`,
      age: "age of the medium",
      storeLeft: "store left of what it was",
      after: "medium lasts",
      noMark: "not known yet: no mark from after potting",
      sinceMark: "learned store beside that of two months after potting",
      days,
    },
  };
};

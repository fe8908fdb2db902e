import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

export function workingsEnglish(say: Say): WorkingWords {
  return {
    when: "when it wants water",
    howMuch: "how much water",
    store: "water left",
    capacity: "water it can hold for the plant",
    capacityModel: "C₀, by pot and medium",
    capacityLearned: "Δ, what this pot has shown since",
    use: "water it uses in a day",
    useLeaves: "leaves",
    useSurface: "bare medium",
    leafArea: "leaf area",
    leafFactor: "this plant beside the leaf model",
    leafModel: "leaf model, per m² of leaf",
    surfaceFactor: "this pot beside the surface model",
    surfaceModel: "surface model, as dry as it is now",
    air: "air",
    light: "light",
    depletion: "water gone since it drained",
    threshold: "share of its water used when it should be watered",
    risk: "accepted chance of too dry before the next visit",
    capture: "share of a pour that stays",
    leaching: "share meant to run out",
    neighbours: "its neighbours' weights",
    drained: "weight just drained",
    fullPot: "just drained",
    perDay: "a day",
    days: "days",
    drawn: (draws_n) => `${draws_n} dry-downs drawn with the doubts of every input; the range holds 8 of 10`,
    thresholdDry: "our assumption for a plant that is let dry between waterings",
    thresholdFlowering: "our assumption while it flowers or fills fruit",
    notSeen: "never weighed or watered here: a guess between wet and dry",
    seen: (what, at) => (what === "weighed" ? `weighed ${at}` : `watered ${at}`),
    weighedAs: (weight_g, at) => `weighed ${say.mass(weight_g)} ${at}`,
    learnedFrom: (weights_n, looks_n) =>
      `learned from this pot: ${say.number(weights_n)} weights, ${say.number(looks_n)} looks and pours`,
    fromModel: "not learned yet: the model as it is",
    ourAssumption: "our assumption",
    dryDown: "weighed at lasting wilt",
    chance: (share_frac) => `${say.number(share_frac * 20)} in 20 that it is too dry by the visit after`,
    neighboursFrom: (count_n) => `${say.number(count_n)} weights of the bench in the last week`,
    unheard: (draws_n, later_n, pours_n) =>
      `${say.number(draws_n)} of them begin just watered: ${say.number(later_n)} of ${say.number(pours_n)} past pours were written later in the day than it is now, so today's may not be in the book yet`,
    movesCapacity:
      "Most of the range comes from what the pot can hold: one weight at first lasting wilt would settle it.",
    movesDepletion: "Most of the range comes from how wet it is now: one weighing would settle it.",
    movesUse:
      "Most of the range comes from what it uses a day: two weighings some days apart would settle it.",
    sourceDate: "lognormal crossing time of a drying pot, drawn; noise sizes are our assumption",
    sourceAmount:
      "leaching fraction: Million JB, Yeager TH, UF/IFAS ENH1268; share that stays is our assumption",
    sourceUse:
      "leaf energy balance: Campbell GS, Norman JM (1998) An introduction to environmental biophysics; outdoors Allen RG et al. (1998) FAO-56",
    sourceStore: "water balance of the pot, weighed and learned (Kalman filter)",
    noteLater: (days_n) => `some draws are still moist after ${say.number(days_n)} days`,
    notePours: (count_n) =>
      `in ${say.number(count_n)} pours: a very dry medium lets one fast pour run past; common practice, no source`,
  };
}

import type { Say } from "../../words/say.ts";
import type { PageOnlyWords } from "./words-page-shape.ts";

/** English sentences of the mixing desk. */
export function pageEnglish(say: Say): PageOnlyWords {
  const percent = (share_frac: number) => say.percent(share_frac);
  const grade = (share_frac: number) => say.number(100 * share_frac, 1);
  const rain = (pure_frac: number) => (pure_frac > 0 ? `, ${percent(pure_frac)} rain in it` : "");
  return {
    group: (stage, strength_frac, pots_n, litres) =>
      `${stage}${strength_frac < 1 ? `, ${percent(strength_frac)} strength` : ""}: ${pots_n === 0 ? "no pot waits" : pots_n === 1 ? "1 pot" : `${pots_n} pots`}, ${litres}`,
    dose: (tool, steps_n, step, amount) =>
      ({
        syringe: `${steps_n} ${steps_n === 1 ? "stroke" : "strokes"} of the ${step} syringe (${amount})`,
        scale: `${amount} on the scale`,
        spoon: `${steps_n} level ${steps_n === 1 ? "spoon" : "spoons"} of ${step} (${amount})`,
      })[tool],
    pour: (volume) => `Pour ${volume} of it, lukewarm`,
    stir: "stir until it is gone",
    stirAll: "stir well",
    fill: (volume) => `fill to ${volume}`,
    measure: "read the meter before you pour",
    trade: (products_n, misfit, isSame) =>
      `${products_n} ${isSame ? "same" : misfit <= 0.05 ? "good" : misfit <= 0.3 ? "fair" : "poor"}`,
    meter: (low, high) => `meter should read ${low} to ${high} mS/cm`,
    drift: { up: "pH drifts up", stable: "pH stays about where it is", down: "pH drifts down" },
    cost: (money) => `costs ${money}`,
    smallDose: (name, amount, stock, portion) =>
      `${name} is too little to measure well: dissolve ${amount} in ${stock}, and take ${portion} of that each time.`,
    noSplit: (name) => `${name}: forms of nitrogen not known, half taken as ammonium`,
    noDensity: (name) => `${name}: density not known, 1.2 g/mL taken; weigh 50 mL`,
    neverTogether: "Never pour two concentrates together: calcium falls out with sulphate and phosphate.",
    shortfall: ({ name, kind, by_frac }) =>
      kind === "limit"
        ? `limit on ${name} passed by ${percent(by_frac)}`
        : `${name} ${percent(by_frac)} ${kind === "too little" ? "too low" : "too high"}`,
    element: (of, value, sd, low, high, state) =>
      `${of} ${value} ± ${sd} mg/L, wanted ${low} to ${high}${{ low: ": low", in: "", high: ": high" }[state]}`,
    waterOf: (name, pure_frac) => `${name}${rain(pure_frac)}`,
    usualWater: (pure_frac) => `a usual tap, nobody tested it${rain(pure_frac)}`,
    unbalanced: (imbalance_frac) =>
      `The report is out of balance by ${percent(imbalance_frac)}; expected 5 % at most: a number is missing or in another unit.`,
    lookAgain: (imbalance_frac) =>
      `The report is out of balance by ${percent(imbalance_frac)}: look at it again.`,
    softened: "Softened water carries its sodium into the pot: never for routine use.",
    alkaline: (alkalinity) => `Alkalinity ${alkalinity} mg/L: iron locks up in time; blend with rain.`,
    hard: "Hard water: scale on leaves and pots.",
    empty: "none left",
    leftOut: "left out",
    bottle: (n_frac, p_frac, k_frac) => `${grade(n_frac)}-${grade(p_frac)}-${grade(k_frac)}`,
    noBottle: "No bottle on the shelf yet. Read one label.",
    waterBreaks: (limits) => `The water alone is past the limit on ${limits}.`,
    thin: (pure_frac) =>
      pure_frac > 0 ? `${percent(pure_frac)} rain or pure water would do.` : "Other water would do.",
    notMet: (short) => `These bottles do not reach the goal: ${short}.`,
    oneMore: "Nearest is shown; another bottle or other water gets closer.",
    readGood: (reads) => `${reads} mS/cm is as it should be.`,
    readWrong: (reads, band) => `Meter ${reads}, ${band}. Do not pour yet.`,
    slip: ({ slip, part, scale }, reads) =>
      ({
        "wrong unit": `the number is in µS/cm: ${reads} mS/cm`,
        "wrong scale": `the meter shows ${scale ?? "ppm"}, not mS/cm`,
        "water only": "only water was read: was it stirred?",
        "one part twice": `${part ?? ""} taken twice`,
        "one part missing": `${part ?? ""} left out`,
        "half the water": "filled to half only",
        "twice the water": "filled to twice as much",
        "not compensated": "the meter does not count the temperature",
      })[slip],
    cautions: [
      "Label and safety sheet first: they override this. Gloves; lock concentrates away from children, food and pets.",
      "Nitrates are oxidisers: keep them dry, away from fuels. No acids here. Never reuse drink bottles; kitchen spoons leave the kitchen.",
      "Fruit to eat: only what is labelled for edible crops. What runs off may be regulated.",
    ],
    working: {
      title: "mix",
      formula:
        "least of the sum of weight × ((value - edge) / aim)² outside the ranges, in whole steps of the tools",
      sum: (misfit) => `what is left of it: ${misfit}`,
      aimed: (aim, low, high, value) => `${value} mg/L of ${aim} (${low} to ${high})`,
      label: "its label",
      source: "our assumption for aims and weights; every mix of whole steps looked through, none is nearer",
      minimum: "A label prints the least it holds; there may be more.",
    },
  };
}

import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

const COMING = {
  9: "when seedlings come up",
  61: "when the first flower opens",
  81: "when the first fruit is ripe",
  "new leaves": "when new leaves come",
} as const;

export function workingsEnglish(_say: Say): WorkingWords {
  return {
    stage: "stage of growth",
    when: (milestone) => COMING[milestone],
    leafArea: "leaf area",
    nodes: "nodes on the main stem",
    pace: "how fast it grows today",
    sum: "S, warmth since then",
    start: "code at the start",
    base: "Tb, temperature at which it stands still",
    optimum: "To, temperature from which it is fastest",
    wait: "θ, warmth that this takes",
    perDay: "a day",
    air: "air of today",
    light: "light of today",
    areaThen: "A₀, leaf area then",
    areaUsual: "leaf area usual for kind and pot",
    areaMost: "Am, greatest leaf area in this pot",
    grown: "r t, growth by warmth and light since",
    madeSince: "nodes made since, by warmth",
    nodesThen: "nodes then",
    newNode: "P, warmth between two nodes",
    guessed: "nobody has said a sowing date or a stage",
    sown: (date) => `sown ${date}`,
    seen: (at) => `seen ${at}`,
    cut: (at) => `cut back ${at}; it starts at the first new leaf`,
    sinceStart: "air of its spots, day by day",
    nursery: "air of its spots, and before it came into the book air that we assume",
    byHabit: "species guessed from the kind of fruit",
    byCultivar: "species of its cultivar",
    byPot: "by kind and pot",
    notKnown: "not known",
    areaFrom: (from, at) =>
      ({
        usual: "usual for kind and pot: nobody counted",
        sown: "grown from seed leaves since it was sown",
        cut: `left by the cut of ${at}`,
        counted: `counted or measured ${at}`,
      })[from],
    nodesFrom: (from, at) =>
      ({ unknown: "not known", sown: "made since it was sown", counted: `counted ${at}` })[from],
    days: "days",
    runOut:
      "it is past its first ripe fruit: flowers, fruit and new leaves go on side by side, and no clock tells which",
    drawn: "twenty dates that are equally likely; the range holds 8 of 10",
    moves: {
      stage: "Most of the range comes from how plants differ: one look at its stage would settle it.",
      area: "Most of the range comes from growth since the last count: counting again would settle it.",
    },
    source: {
      stage:
        "thermal sums: our assumption, from published days and rates (DSSAT 4.8 pepper; Dickson et al. 2024); codes: Feller et al. 1995 (BBCH)",
      area: "leaf area 0.63 × length × width: Salau et al. 2008; logistic growth by light and warmth is our assumption",
      nodes: "leaf appearance: DSSAT 4.8 pepper; chinense: plastochron of biquinho peppers, 2019",
      pace: "linear function of four temperatures: DSSAT 4.8; bases by species: our assumption between published values",
    },
  };
}

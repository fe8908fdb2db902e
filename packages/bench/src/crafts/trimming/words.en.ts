import type { Say } from "../../words/say.ts";
import type { TrimmingWords } from "./words-shape.ts";

const BY = { guy: "a guy", wire: "wire", weight: "a weight", spacer: "a spacer" } as const;
const WOOD = { green: "green stem", semi: "half-woody stem", woody: "woody stem" } as const;
const PLANS = { light: "light", middle: "middle", bold: "bold", own: "own" } as const;
const FORMS = {
  dome: "dome",
  triangle: "triangle",
  slanting: "slanting form",
  broad: "broad crown",
} as const;
const cuts = (n: number) => (n === 1 ? "1 cut" : `${n} cuts`);
const days = (n: number) => (Math.round(n) === 1 ? "1 day" : `${Math.round(n)} days`);

/** The craft in English. */
export const english = (say: Say): TrimmingWords => ({
  sketched: ({ height_mm, trunk_mm, leaves_n }) =>
    `sketched: ${say.length(height_mm / 10)} tall, trunk ${say.thickness(trunk_mm)}, ${leaves_n} leaves`,
  traced: ({ nodes, error_mm }) =>
    `traced over two photos: ${nodes.length} joints${error_mm === undefined ? "" : `, heights agree within ${say.number(error_mm, 1)} mm`}`,
  aimed: ({ form, top_mm, width_mm }) =>
    `is to become a ${FORMS[form]}, ${say.length(top_mm / 10)} tall and ${say.length(width_mm / 10)} wide`,
  planned: ({ plan, cuts: planned }) =>
    `plan kept: ${PLANS[plan]}, ${cuts(planned.length)}. Nothing is cut yet`,
  cut: ({ letter, lit_frac }) =>
    `${letter === undefined ? "cut" : `made cut ${letter}`}, took ${say.percent(lit_frac)} of the lit leaf`,
  plucked: ({ leaves_n }) => `plucked ${leaves_n === 1 ? "1 leaf" : `${leaves_n} leaves`}`,
  bent: ({ by, target_deg }) => `bent with ${BY[by]} to ${say.number(target_deg)}° from upright`,
  freed: ({ node }) => `took the bend off joint ${node}`,
  looked: ({ bites }) => (bites ? "the wire bites" : "the wire does not bite"),
  sprouted: ({ watched_n, grown_n }) => `after the cut ${grown_n} of ${watched_n} buds grew`,
  notBefore: (at_ms) => `not before ${say.day(at_ms)}`,
  cannotRead: "this entry about its structure can't be read",
  care: {
    blade: "Care: clean blade between plants, cut away from your hand. Sap and hot fruit burn skin and eyes.",
  },
  limit: {
    regrows: (at_ms, lit_frac) =>
      `cut on ${say.day(at_ms)}: ${say.percent(lit_frac)} of the lit leaf has to grow again`,
    roots: (at_ms) => `roots worked on ${say.day(at_ms)}: no hard cut until they have taken`,
    brittle: (share) => `full of water (${say.percent(share)}): green shoots snap`,
  },
  task: {
    cut: (letter) => `CUT ${letter}`,
    cutSaid: ({ node, lit_frac }) => `above joint ${node}, takes ${say.percent(lit_frac)} of the lit leaf`,
    cutWhy: (left_n) => `your kept plan, ${cuts(left_n)} left`,
    free: "TAKE OFF THE BEND",
    freeSaid: ({ by, node }) => `${BY[by]} at joint ${node}`,
    look: "LOOK: DOES IT BITE?",
    lookSaid: ({ by, node }) => `${BY[by]} at joint ${node}`,
    bites: "it bites: take it off now",
    bentWhy: (at_ms, after) => `bent on ${say.day(at_ms)}; due after ${days(after)}`,
  },
  working: {
    limit: "leaf that a trim may take",
    upTo: (share) => `up to ${say.percent(share)}`,
    limitFormula: "share of leaf, each leaf weighed by its light",
    warn: "warned of from",
    most: "most that a plan takes",
    a300: "ANSI A300 part 1, from memory",
    ours: "our assumption",
    trade: "common practice, no source",
    limitNote: "No trial with peppers was found. A plant in poor light or just washed stands less.",
    rest: "next trim",
    restResult: (at_ms) => `not before ${say.day(at_ms)}`,
    restSum: (f, r, t) => `ln(1/(1 − ${say.number(f, 2)})) / ${say.number(r, 3)} = ${days(t)}`,
    taken: "lit leaf taken",
    cutOn: (at_ms) => `cut on ${say.day(at_ms)}`,
    pace: "growth of leaf",
    perDay: (pace) => `${say.number(pace * 100, 1)} % a day`,
    paceMoves: "The pace of growth moves it most: slower in winter.",
    cut: (letter) => `cut ${letter}`,
    takes: (f) => `${say.percent(f)} of the lit leaf`,
    area: "leaf area taken",
    fromTrace: "from the traced plant",
    trimNote: "Pruning costs yield: leaf makes fruit.",
    bend: "how long it stays bent",
    days,
    bendFormula: "by the age of the stem",
    bendSum: (off, look) => `off after ${days(off)}, looked at every ${days(look)}`,
    wood: (wood) => WOOD[wood],
  },
});

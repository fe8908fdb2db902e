import type { Say } from "../../words/say.ts";
import type { Found, Looked } from "./kinds.ts";
import type { LookedAt, Pest, Tool } from "./pests.ts";
import { fraction, list } from "./said-numbers.ts";
import type { ScoutingWords } from "./words-shape.ts";
import { causesEnglish, looksEnglish, signEnglish } from "./words-signs.en.ts";

const TOOLS: Readonly<Record<Tool, string>> = {
  soap: "soap",
  oil: "oil",
  wash: "washed off with water",
  bti: "Bti",
  nematodes: "nematodes",
  other: "treatment",
};
const MANY: Readonly<Partial<Record<Pest, string>>> = {
  aphid: "aphids",
  "spider mite": "spider mites",
  "broad mite": "broad mites",
  "fungus gnat": "fungus gnats",
  mealybug: "mealybugs",
  caterpillar: "caterpillars",
  slug: "slugs",
  leafminer: "leafminers",
  ant: "ants",
  other: "other animals",
};
const many = (pest: Pest): string => MANY[pest] ?? pest;
const WAYS = {
  lens: "with lens",
  eye: "with the naked eye",
  glance: "at a glance",
  tap: "tapped over white paper",
  disc: "potato disc, two days",
};

function method({ way, tips_n, leaves_n, stem }: LookedAt): string {
  const places = [
    ...(tips_n ? [tips_n === 1 ? "tip of 1 shoot" : `tips of ${tips_n} shoots`] : []),
    ...(leaves_n ? [leaves_n === 1 ? "under 1 leaf" : `under ${leaves_n} leaves`] : []),
    ...(stem ? ["stem and soil line"] : []),
  ];
  return [...places, WAYS[way]].join(", ");
}
const foundSaid = (found: readonly Found[]): string =>
  found
    .map(
      ({ pest, count_n, stage }) =>
        `${count_n} ${count_n === 1 ? pest : many(pest)}${stage ? ` (${stage})` : ""}`,
    )
    .join(", ");

export function english(say: Say): ScoutingWords {
  const hours = (h: number) => `${say.number(h)} h`;
  return {
    pest: many,
    tool: (tool) => TOOLS[tool],
    method,
    looked: (data: Looked) =>
      `looked: ${method(data)}. ${data.found.length === 0 ? "Clean." : `Found ${foundSaid(data.found)}.`}`,
    card: ({ out_d, cards_n = 1, lost, caught }) =>
      lost
        ? "sticky card lost: says nothing"
        : `${cards_n === 1 ? "sticky card" : `${cards_n} sticky cards`} out ${say.number(out_d ?? 0)} d: ${caught.length === 0 ? "nothing caught" : foundSaid(caught)}`,
    treated: ({ tool, product, against, strength_frac, reentry_h, preharvest_d }) =>
      `treated: ${product ?? TOOLS[tool]}${strength_frac ? ` ${say.number(strength_frac * 100, 2)} %` : ""} against ${list(against.map(many))}${reentry_h === undefined ? "" : `; not to be touched for ${hours(reentry_h)}`}${preharvest_d === undefined ? "" : `, not picked for ${say.number(preharvest_d)} d`}`,
    arrived: ({ from, washed }) =>
      `${{ bought: "bought in", borrowed: "borrowed", outdoors: "brought in from outdoors", "own room": "from our own room" }[from]}${washed ? ", roots washed" : ""}: kept apart until clean`,
    exposed: ({ pest, how }) =>
      `next to a find of ${many(pest)}${how === "near" ? "" : how === "hands" ? " (same hands and tools)" : " (same room)"}`,
    released: ({ to, free_frac, low_frac, high_frac, looks_n, reason }) =>
      `released to ${to}: ${fraction(free_frac)} clean as far as looked (${fraction(low_frac)} to ${fraction(high_frac)}), ${looks_n} looks${reason ? `; ${reason}` : ""}`,
    confirmed: ({ cause }) => `case settled: ${causesEnglish[cause] ?? cause}`,
    cause: (key) => causesEnglish[key] ?? key,
    limit: {
      touch: (until) => `treated: not to be touched until ${until} (label)`,
      pick: (until) => `treated: not to be picked until ${until} (label)`,
      sell: "waits for clean evidence: not released",
      recalled: (pest) => `next to a find of ${pest} since its release`,
      found: (pest) => `${pest} found and not cleared`,
      move: "kept apart: too little clean evidence to move",
    },
    task: {
      look: "LOOK",
      again: "LOOK AGAIN",
      spray: "TREAT AGAIN",
      seenAny: "seen any? open Scouting and tap them instead of DONE",
      lookWhy: (since) =>
        since === undefined
          ? "kept apart, not looked at yet"
          : `kept apart, last look ${say.number(since)} d ago`,
      quarantineCare: "clean plants first; then wash hands and tools",
      sprayWhy: (given, of, pests) => `${given} of ${of} treatments against ${pests}`,
      sprayCare: "the label is the law: gloves, eyes, air; what it does not list is not allowed",
    },
    head: "clean",
    headSaid: (free) => `${free} as far as looked`,
    found: "found, not cleared",
    line: "sell",
    lineSaid: (best) => `about ${best} if looks stay clean`,
    lineFrom: (from, to) =>
      to ? `${from} to ${to} if looks stay clean` : `not before ${from}; 10 weeks may not be enough`,
    noDate: "no date yet: these looks can't clear it within 10 weeks",
    cannotRead: "an entry of scouting could not be read",
    question: "Look at it once with a lens (1 min): it would count towards both gates.",
    sign: signEnglish,
    looks: () => looksEnglish,
    working: {
      title: "clean, as far as looked",
      formula:
        "P = Π P(pest); P(pest) = free / (free + Σ weights of ways it may have come); each clean look multiplies a way by its chance to have missed it",
      sum: (parts, result) => `${parts.join(" × ")} = ${result}`,
      part: (pest, free) => `${pest} ${free}`,
      pestFrom: (looks_n) =>
        looks_n === 0
          ? "no look yet that could have shown it"
          : looks_n === 1
            ? "1 look that could have shown it"
            : `${looks_n} looks that could have shown it`,
      odds: "odds at the start",
      oddsFrom: "our assumption, for a pest nobody saw",
      looks: "looks and cards",
      looksSaid: (count) => `${count}`,
      fromBook: "in the book",
      source:
        "Bayes with a hidden infestation that grows by the hour; pest clocks by their own papers (science/pests); sights and odds are our assumption",
      notLooked: "nothing looked at yet",
      asFar:
        "As good as eyes and starting odds: the range has half and twice the sight, a fifth less and more growth.",
      unseen: (pests) => `Not looked for: ${pests}.`,
      together: "One look serves all pests, so the product is on the careful side.",
      interval: "days between looks",
      intervalFrom: "common practice, no source",
      lookTitle: "next look",
      lookFormula: "last look + days between looks",
      sprayTitle: "next treatment",
      sprayFormula: "last treatment + its interval",
    },
  };
}

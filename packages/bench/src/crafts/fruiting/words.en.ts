import type { Say } from "../../words/say.ts";
import type { FruitingWords } from "./words-shape.ts";
import { workingEnglish } from "./words-workings.en.ts";

const fruits = (n: number) => (n === 1 ? "1 fruit" : `${n} fruits`);
const flowers = (n: number) => (n === 1 ? "1 flower" : `${n} flowers`);
const buds = (n: number) => (n === 1 ? "1 bud" : `${n} buds`);
const things = { buds, flowers, fruits } as const;
const on = (branch: string | undefined) => (branch === undefined ? "" : ` on branch ${branch}`);
const tagged = (tag: string | undefined) => (tag === undefined ? "" : ` (tag ${tag})`);
const rough = (roughly: boolean | undefined) => (roughly ? ", counted roughly" : "");

const COLOURS = {
  set: "just set",
  "half size": "half size",
  "full green": "full size, green",
  breaker: "first colour",
  turning: "turning",
  colouring: "colouring",
  ripe: "ripe",
  "over-ripe": "over-ripe",
} as const;

export const english = (say: Say): FruitingWords => ({
  sentence: {
    flowered: ({ open_n, buds_n, branch, roughly }) =>
      `${flowers(open_n)} open${buds_n === undefined ? "" : `, ${buds(buds_n)}`}${on(branch)}${rough(roughly)}`,
    brushed: ({ open_n, how }) =>
      `${flowers(open_n)} ${{ brush: "brushed", tap: "tapped", vibration: "shaken" }[how]}`,
    counted: ({ fruits_n, branch, roughly }) => `${fruits(fruits_n)} hanging${on(branch)}${rough(roughly)}`,
    thinned: ({ what, removed_n, branch }) => `pinched out ${things[what](removed_n)}${on(branch)}`,
    dropped: ({ what, dropped_n, branch }) => `${things[what](dropped_n)} dropped${on(branch)}`,
    tagged: ({ fruits_n, openedOn, tag, branch }) =>
      `tagged ${fruits(fruits_n)}${on(branch)}${tagged(tag)}${openedOn === undefined ? "" : `, opened ${say.date(openedOn)}`}`,
    coloured: ({ colour, tag }) => `fruit ${COLOURS[colour]}${tagged(tag)}`,
    picked: ({ fruits_n, mass_g, colour, branch, tag }) =>
      `picked ${fruits(fruits_n)}${mass_g === undefined ? "" : `, ${say.mass(mass_g)}`}${colour === undefined ? "" : `, ${COLOURS[colour]}`}${on(branch)}${tagged(tag)}`,
    aimed: ({ aim }) => (aim === "many" ? "wanted: many, small" : "wanted: fewer, full size"),
    assayed: ({ content_ug_g, heat_n, basis, method }) =>
      `laboratory: ${content_ug_g === undefined ? `${say.number(heat_n ?? 0)} SHU` : `${say.number(content_ug_g)} µg/g of capsaicin and its like`}, ${basis} basis${method === undefined ? "" : `, ${method}`}`,
    seeded: ({ lot, fruits_n, seeds_n, kept }) =>
      `seed lot ${lot} from ${fruits(fruits_n)}${seeds_n === undefined ? "" : `, ${say.number(seeds_n)} seeds`}, ${{ none: "open, may be crossed", bagged: "flowers bagged", caged: "plant caged", alone: "no other pepper in flower" }[kept]}`,
    tested: ({ lot, tested_n, germinated_n }) => `seed lot ${lot}: ${germinated_n} of ${tested_n} germinated`,
  },
  colour: COLOURS,
  head: "fruit",
  feeds: (n, low, high) => `light feeds about ${n} (${low} to ${high})`,
  fruits,
  flowers,
  flowersFrom: (day) => `counted ${day}`,
  ripe: (what, range) => `${what} ${range}`,
  ripeNow: (what) => `${what} ripe`,
  cannotRipen: (air, floor) =>
    `at ${air} it will not ripen: bring it warm (${floor} at least), or pick at a third coloured`,
  task: {
    brush: "BRUSH",
    brushSaid: (flowers) => `${flowers}, before noon`,
    brushHow: (again) => `touch each with a soft brush, or tap the stem${again ? "; again tomorrow" : ""}`,
    brushWhy: (still, brushed) => `in still air about ${still} set, brushed about ${brushed}`,
    thin: "THIN",
    thinSaid: (removed, keep) => `pinch out ${removed}, keep ${keep}`,
    thinHow: "the youngest and outermost first, none that show colour",
    thinWhy: (has, low, high, size) =>
      `${has} hang, light feeds ${low} to ${high}; all kept, each would reach about ${size} of full size`,
    pick: "PICK",
    pickHow: "cut the stalk, do not pull; leave green ones",
    pickWhy: (day) => `seen ripe ${day}`,
    pickGuess: (range) => `should be ripe (${range}); look first`,
  },
  care: "Hot fruit: gloves, no hands to eyes; away from children and pets. Wash hands and blade.",
  sprayLimit: "ripe fruit hangs: pick it first",
  problem: ({ what, days_n }) =>
    ({
      "cannot be read": "This entry on fruit cannot be read; it changes nothing.",
      "ripe too soon": `${days_n ?? 0} days from flower to ripe is faster than any record (25 at least). Right flower?`,
      "opens later": "The flower opens after the day it was written. Right date?",
    })[what],
  looks: () => [
    { key: "flowers drop", where: "tip", said: "flowers or buds drop" },
    { key: "small fruit", where: "fruit", said: "fruit stays small or drops" },
  ],
  sign: {
    hungry: "more fruit than the light feeds",
    pollen: "no pollen moved",
    warmth: "too hot or too cold for flowers",
    chance: (now, brushed) => `chance of set now about ${now}, brushed about ${brushed}`,
    load: (has, fed) => `${has} fruits counted, light feeds about ${fed}`,
    air: (day, night) => `${day} by day, ${night} at night`,
    lookQuestion: "Does the stalk of a dropped flower still carry its small green fruit?",
    lookAnswers: ["yes, a tiny fruit", "no, the flower only"],
    hungryDo: "thin to the number advised; give more light",
    pollenDo: "brush open flowers each morning for two days",
    warmthDo: "16 to 21 °C at night, 20 to 29 °C by day",
    doNot: "do not feed more or water more for it",
  },
  working: workingEnglish,
});

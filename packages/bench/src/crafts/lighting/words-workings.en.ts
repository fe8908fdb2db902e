import type { Say } from "../../words/say.ts";
import type { WorkingWords } from "./words-shape.ts";

/** English sentences of the workings. */
export const workingsEnglish = (say: Say): WorkingWords => ({
  need: "daily light needed",
  needFormula: "least, aim and most of the stage, moved with the aim",
  needSum: (least, aim, most) => `least ${least}, aim ${aim}, most useful ${most}`,
  needNote: "A need is a prior, ±25 %: length between leaves and flowers that set tell more.",
  stage: "stage",
  aim: "daily light aimed at",
  windowPart: "through the window",
  lampPart: "from the lamp",
  skyPart: "from the open sky",
  week: "light of the last week",
  weekFormula: "running mean of the daily light, mean age three and a half days",
  weekSum: (week, today) => `${week}; today ${today}`,
  sourceLight:
    "sun, sky and glass: Collares-Pereira & Rabl 1979, Erbs 1982, Moon & Spencer 1942; lamps: form and inverse square",
  movesLamp: "What the lamp gives at the leaves moves it most: read it there once.",
  movesWindow: "What of the sky reaches the leaves moves it most: read lux there and outdoors once.",
  turn: "quarter turn",
  turnFormula: "due when days since the turn × share of light from one side reach the days allowed",
  turnSum: (oneSided_d, after_d, side_frac) =>
    `${say.number(oneSided_d, 1)} of ${say.number(after_d, 1)} one-sided days, ${say.percent(side_frac)} a day`,
  sideShare: "share of the light from one side",
  fromPlace: "window and lamp of its spot, mean of a week",
  sinceTurn: "since the last turn",
  turnWritten: (day) => `turned ${day}`,
  neverTurned: "no turn written: since it was brought in",
  turnAfter: "one-sided days allowed",
  lean: "lean towards the window",
  leanSeen: (day) => `seen ${day}`,
  turnTogether: (plants_n) => `The bench turns together: mean of its ${plants_n} pots.`,
  natural: "daylight of a dull day (3 of 10 are duller)",
  lampLight: "lamp at the leaves",
  cap: "longest day, lamp and daylight together",
  lampHours: "lamp hours",
  lampFormula:
    "hours = (needed − daylight) / (0.0036 × lamp), to the quarter of an hour, at most the longest day",
  lampSum: (need, natural, ppfd, hours) => `(${need} − ${natural}) / (0.0036 × ${ppfd}) → ${hours}`,
  lampWho: (number, plants_n) =>
    plants_n === 1
      ? `Worked out for ${number}.`
      : `Worked out for ${number}: three of four of its ${plants_n} pots then have enough.`,
  lampSeason: (date) => `Season of ${date}.`,
  lampCapped: (number, cap) => `Held at ${cap}: ${number} bears no longer day.`,
  lampCheap: "Inside the daylight first; what is beyond burns in the cheaper hours.",
  lampEnds: "Inside the daylight first; what is beyond is shared between morning and evening.",
  power: "power of the lamps",
  lampWritten: "lamp as written",
  hours: "hours a day",
  timer: "timer",
  price: "price of a kWh",
  cheapHours: "of these in cheap hours",
  written: (day) => `written ${day}`,
  energy: "electricity",
  energyFormula: "power × hours / 1000, times the price",
  energySum: (power_W, hours, energy_kWh) => `${power_W} W × ${hours} = ${energy_kWh} kWh a day`,
  arithmetic: "arithmetic",
  monthNote: (days_n) => `A month counts ${days_n} days.`,
});

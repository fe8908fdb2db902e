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
  monthLight: (month) => `daily light in ${month}`,
  monthFormula: "window + lamp + sky, mean of the days of the season",
  monthSum: (window, lamp, sky, all) => `${window} + ${lamp} + ${sky} = ${all} mol/m²d`,
  bandNote: (dull, sunny) => `Two days in ten are duller than ${dull}, two are brighter than ${sunny}.`,
  doubt: "doubt about the place",
  doubtFrom: "glass, distance, what stands opposite, lamp; one standard deviation",
  short: "when light is short",
  shortFormula: "dates between which the usual daily light stays below the least that is needed",
  shortSum: (darkest, low, high, need) =>
    `${darkest} (${low} to ${high}) in the darkest month, ${need} needed`,
  darkest: (month) => `light in ${month}`,
  dates: (from, until) => `From ${from}, until ${until}: the ranges come from the doubt about the place.`,
  before: (was, read) => `Before the last reading (${read}): ${was}.`,
  notWeather: "A dull or bright week may move it by a few days; that is not in the range.",
  lampTooLong: (wanted, cap, endless) =>
    endless
      ? `This lamp cannot close the gap in the darkest month; its kind bears a day of ${cap}.`
      : `${wanted} of this lamp would close the gap in the darkest month, but its kind bears a day of ${cap}: a stronger lamp, or another seat.`,
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
  lightAt: (number, spot) => `light for ${number} at ${spot}`,
  needOf: (number) => `light aimed at for ${number}`,
  seat: "better seat",
  seatFormula: "need not met before − after, summed over the pots that move",
  seatSum: (pots, gain) =>
    `${pots.map(({ number, before, after }) => `${number}: ${before} → ${after}`).join("; ")}; gain ${gain}`,
  sourceSeat: "assignment problem, Kuhn 1955; weights our assumption",
  seatNote:
    "Missing light counts in full, too much of it a tenth, an hour of lamp past its longest day one mole.",
  worth: "the reading worth most",
  worthFormula: "doubt now against doubt with this reading in the book, if it came out as expected",
  worthSum: (now, then) => `±${now} → ±${then}`,
  lightHere: "light there today",
  sourceWorth: "our assumption: a pair halves what geometry, glass and sky model leave open",
  worthLampNote: "At leaf height, the meter level, daylight kept out; nobody leans over it.",
  worthNote:
    "A pair counts best under an evenly grey sky, both readings within two minutes, the meter level.",
});

import type { Say } from "../../words/say.ts";
import { pageEnglish } from "./words-page.en.ts";
import type { LightingWords, SignWords } from "./words-shape.ts";
import { workingsEnglish } from "./words-workings.en.ts";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** English sentences of the craft. */
export function english(say: Say): LightingWords {
  const days = (value: number) => {
    const whole = Math.round(value);
    return whole === 1 ? "1 day" : `${say.number(whole)} days`;
  };
  return {
    turned: ({ clockwise_deg }) =>
      clockwise_deg < 0
        ? `turned ${say.number(-clockwise_deg)}° the other way round`
        : clockwise_deg === 90
          ? "turned a quarter, clockwise"
          : `turned ${say.number(clockwise_deg)}° clockwise`,
    leaning: ({ towards, lean_deg }) =>
      lean_deg === 0
        ? "stands upright"
        : `leans ${say.number(lean_deg)}° ${{ window: "towards the window", away: "away from the window", left: "to the left", right: "to the right" }[towards]}`,
    stage: { seedling: "seedling", training: "in leaf", fruiting: "from bud to fruit", holding: "at rest" },
    glazing: {
      single: "single glass",
      double: "double glass",
      triple: "triple glass",
      "double low-e": "double heat-saving glass",
      "triple low-e": "triple heat-saving glass",
    },
    month: (month) => MONTHS[month - 1] as string,
    days,
    hours: (hours) => `${say.number(hours, 2)} h`,
    range: (low, high) => `${low} to ${high}`,
    ofNeeded: (light, need) => `${light} of ${need}`,
    dateBand: (date, low, high) => `${date} (${low} to ${high})`,
    head: "light",
    task: {
      turn: "TURN",
      quarter: "a quarter, clockwise seen from above",
      together: (plants_n) => `the whole bench together, ${plants_n} pots`,
      why: (since_d, side_frac) =>
        `not turned for ${days(since_d)}, ${say.percent(side_frac)} of its light from one side`,
      whyLean: (lean_deg) => `leans ${say.number(lean_deg)}° towards the window`,
    },
    question: (number, now, then) =>
      `Read lux at the leaves of ${number}, then outdoors, under an evenly grey sky (2 min): ${now} mol a day would become about ${then}.`,
    cannotRead: "This entry cannot be read as a lean. It is kept and not used.",
    debt: {
      said: (debt, outSince, catchUp) =>
        [
          outSince === undefined
            ? `${debt} mol behind over two weeks.`
            : `${debt} mol behind; the lamp is out since ${outSince}.`,
          catchUp ? `${catchUp.hours} of lamp a day make it up in about ${days(catchUp.days)}.` : "",
        ]
          .filter(Boolean)
          .join(" "),
    },
    ...pageEnglish(say),
    seats: {
      better: (first) => `Better seat: ${first}`,
      best: "Every pot stands where it stands best this month.",
      few: "Too few pots to change seats.",
      swap: (number, other, before, after, otherEnough) =>
        `${number} and ${other} swap: ${number} gets ${after} instead of ${before}, ${other} ${otherEnough ? "still has enough" : "can spare it"}.`,
      move: (number, to, before, after) => `${number} to ${to}: ${after} instead of ${before}.`,
      gain: (gain) => `${gain} mol a day more need met`,
    },
    worth: {
      pair: (spot, time, change) =>
        `Worth ${time}: lux at ${spot}, then outdoors, under an evenly grey sky. ${change}`,
      lamp: (spot, time, change) => `Worth ${time}: light under the lamp at ${spot}. ${change}`,
      dates: (now, then) => `Short from ${now} would become about ${then}.`,
      light: (now, then) => `${now} mol a day would become about ${then}.`,
    },
    caution: {
      water:
        "Water and mains: a protected outlet, a drip loop in the cable, nothing wired above pots that are watered. Unplug before misting.",
      eyes: "Do not look into lit LED arrays.",
      load: (power_W) =>
        `Up to ${power_W} W on one bench: no chains of extension leads, at most four fifths of what the circuit bears.`,
      tooClose: (bench, distance) =>
        `The lamp of ${bench} hangs closer than ${distance}: hold a hand at leaf height for half a minute; raise it if that is hot.`,
      hot: "Sodium and halide lamps are hot: far from curtains and leaves, glass whole, hung from two points.",
      sun: "Never look at the sun to find a direction.",
    },
    working: workingsEnglish(say),
    looks: () => [
      { key: "long shoots", where: "tip", said: "long, pale shoots" },
      { key: "bleached leaves", where: "leaf", said: "leaves bleached, papery" },
      { key: "leaning", where: "whole", said: "leans to one side" },
    ],
    sign: signs(say, days),
  };
}

const signs = (say: Say, days: (value: number) => string): SignWords => ({
  tooLittle: "too little light",
  scald: "too much light at once: leaves were not used to it",
  oneSide: "it grows towards its light",
  week: (light, need) => `light of the last week ${light} of ${need} needed`,
  moved: (moved_d, before, now) => `moved ${days(moved_d)} ago, from ${before} to ${now} mol a day`,
  notMoved: (now) => `not moved for two weeks or more, ${now} mol a day`,
  sideShare: (since_d, side_frac) =>
    `not turned for ${days(since_d)}, ${say.percent(side_frac)} of its light from one side`,
  leavesQuestion: "Which are pale?",
  shootsPale: "the new shoots, leaves far apart",
  oldPale: "the old leaves, shoots short",
  scaldQuestion: "Where are the pale patches?",
  litSide: "only on the side towards the light",
  bothSides: "on both sides, or in rings",
  doCloser: "Closer to the glass, or to a brighter seat.",
  doLamp: "Longer lamp hours, within the day its kind bears.",
  doShade: "Shade it for five days: a cloth, or a step back from the glass.",
  doHarden: "Then an hour more of sun each day, for a week or more.",
  doTurn: "Turn it half round once, then a quarter at a time.",
  doRoots: "Light is even here: see whether it stands firm in its pot.",
  notFeedFirst: "Do not feed it longer still: light first.",
  notSunAtOnce: "Not into full sun in one step.",
  notPluck: "Do not pluck the marked leaves yet: they shade the others.",
  notMisting: "No misting in the sun.",
  notStraighten: "Do not bend it straight by force.",
});

import type { Say } from "../../words/say.ts";
import type { LightingWords, SignWords } from "./words-shape.ts";
import { workingsEnglish } from "./words-workings.en.ts";

/** English sentences of the craft. */
export function english(say: Say): LightingWords {
  const days = (value: number) => {
    const whole = Math.round(value);
    return whole === 1 ? "1 day" : `${say.number(whole)} days`;
  };
  const hours = (value: number) => `${say.number(value, 2)} h`;
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
    days,
    hours,
    range: (low, high) => `${low} to ${high}`,
    ofNeeded: (light, need) => `${light} of ${need}`,
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
    lamp: {
      set: (on, off, hours_h) => `lamp ${on} to ${off}, ${hours(hours_h)}`,
      stayOff: "lamp off: daylight is enough",
      out: "the lamp is out",
      outSince: (day) => `out since ${day}`,
      isSet: (on, off, hours_h, written) =>
        `${written ? "set" : "taken as set"} ${on} to ${off}, ${hours(hours_h)}`,
      isOff: "set to stay off",
      near: (difference) => `a change of ${difference} mol a day is not worth a hand`,
      onceAWeek: (since_d) =>
        `set ${since_d < 1 ? "today" : `${say.number(Math.max(1, Math.floor(since_d)))} d ago`}: at most one change a week`,
      short: (short, cap_h, wanted) =>
        `${short} mol a day stay open within a day of ${hours(cap_h)}${wanted === undefined ? "" : `; ${wanted} µmol/m²s at the leaves would do`}.`,
      energy: (kWh_d, cost, perPlant) =>
        `${kWh_d} kWh a day${cost === undefined ? "" : `, ${cost}`}${perPlant === undefined ? "" : `; ${perPlant} a plant and month`}`,
      ask: (bench, on, off, now) => `Set the lamp of ${bench}: ${on} to ${off}. Now ${now}.`,
      askOff: (bench, now) => `Switch off the lamp of ${bench}: daylight is enough. Now ${now}.`,
      isSetNow: "It is set",
    },
    caughtFrom: "light of about a week from all around, on its leaves, their own shade taken off",
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

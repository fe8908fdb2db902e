import type { Say } from "../../words/say.ts";
import type { LightingWords, SignWords } from "./words-shape.ts";
import { workingsGerman } from "./words-workings.de.ts";

/** German sentences of the craft. */
export function german(say: Say): LightingWords {
  const days = (value: number) => {
    const whole = Math.round(value);
    return whole === 1 ? "1 Tag" : `${say.number(whole)} Tage`;
  };
  const sinceDays = (value: number) =>
    Math.round(value) === 1 ? "1 Tag" : `${say.number(Math.round(value))} Tagen`;
  const hours = (value: number) => `${say.number(value, 2)} h`;
  return {
    turned: ({ clockwise_deg }) =>
      clockwise_deg < 0
        ? `um ${say.number(-clockwise_deg)}° gegen den Uhrzeigersinn gedreht`
        : clockwise_deg === 90
          ? "um ein Viertel gedreht, im Uhrzeigersinn"
          : `um ${say.number(clockwise_deg)}° gedreht, im Uhrzeigersinn`,
    leaning: ({ towards, lean_deg }) =>
      lean_deg === 0
        ? "steht aufrecht"
        : `neigt sich ${say.number(lean_deg)}° ${{ window: "zum Fenster", away: "vom Fenster weg", left: "nach links", right: "nach rechts" }[towards]}`,
    stage: {
      seedling: "Sämling",
      training: "im Laub",
      fruiting: "von Knospe bis Frucht",
      holding: "in Ruhe",
    },
    days,
    hours,
    range: (low, high) => `${low} bis ${high}`,
    ofNeeded: (light, need) => `${light} von ${need}`,
    head: "Licht",
    task: {
      turn: "DREHEN",
      quarter: "ein Viertel, im Uhrzeigersinn von oben gesehen",
      together: (plants_n) => `das ganze Brett zusammen, ${plants_n} Töpfe`,
      why: (since_d, side_frac) =>
        `seit ${sinceDays(since_d)} nicht gedreht, ${say.percent(side_frac)} des Lichts von einer Seite`,
      whyLean: (lean_deg) => `neigt sich ${say.number(lean_deg)}° zum Fenster`,
    },
    question: (number, now, then) =>
      `Lux an den Blättern von ${number} lesen, dann draußen, bei gleichmäßig grauem Himmel (2 min): aus ${now} mol am Tag würden etwa ${then}.`,
    cannotRead: "Dieser Eintrag ist nicht als Neigung zu lesen. Er bleibt und zählt nicht.",
    lamp: {
      set: (on, off, hours_h) => `Lampe ${on} bis ${off}, ${hours(hours_h)}`,
      stayOff: "Lampe aus: das Tageslicht reicht",
      out: "die Lampe ist ausgefallen",
      outSince: (day) => `ausgefallen seit ${day}`,
      isSet: (on, off, hours_h, written) =>
        `${written ? "gestellt auf" : "angenommen"} ${on} bis ${off}, ${hours(hours_h)}`,
      isOff: "auf aus gestellt",
      near: (difference) => `${difference} mol am Tag anders: keinen Handgriff wert`,
      onceAWeek: (since_d) =>
        `${since_d < 1 ? "heute" : `vor ${say.number(Math.max(1, Math.floor(since_d)))} d`} gestellt: höchstens eine Änderung in der Woche`,
      short: (short, cap_h, wanted) =>
        `${short} mol am Tag bleiben offen bei einem Tag von ${hours(cap_h)}${wanted === undefined ? "" : `; ${wanted} µmol/m²s an den Blättern würden reichen`}.`,
      energy: (kWh_d, cost, perPlant) =>
        `${kWh_d} kWh am Tag${cost === undefined ? "" : `, ${cost}`}${perPlant === undefined ? "" : `; ${perPlant} je Pflanze und Monat`}`,
      ask: (bench, on, off, now) => `Lampe von ${bench} stellen: ${on} bis ${off}. Jetzt ${now}.`,
      askOff: (bench, now) => `Lampe von ${bench} ausschalten: das Tageslicht reicht. Jetzt ${now}.`,
      isSetNow: "Ist gestellt",
    },
    caughtFrom:
      "Licht von etwa einer Woche von allen Seiten auf ihrem Laub, dessen eigener Schatten abgezogen",
    working: workingsGerman(say),
    looks: () => [
      { key: "long shoots", where: "tip", said: "lange, blasse Triebe" },
      { key: "bleached leaves", where: "leaf", said: "Blätter ausgebleicht, papieren" },
      { key: "leaning", where: "whole", said: "neigt sich zu einer Seite" },
    ],
    sign: signs(say, sinceDays),
  };
}

const signs = (say: Say, sinceDays: (value: number) => string): SignWords => ({
  tooLittle: "zu wenig Licht",
  scald: "zu viel Licht auf einmal: die Blätter waren es nicht gewohnt",
  oneSide: "sie wächst zu ihrem Licht hin",
  week: (light, need) => `Licht der letzten Woche ${light} von ${need} nötigen`,
  moved: (moved_d, before, now) =>
    `vor ${sinceDays(moved_d)} umgestellt, von ${before} auf ${now} mol am Tag`,
  notMoved: (now) => `seit zwei Wochen oder länger nicht umgestellt, ${now} mol am Tag`,
  sideShare: (since_d, side_frac) =>
    `seit ${sinceDays(since_d)} nicht gedreht, ${say.percent(side_frac)} des Lichts von einer Seite`,
  leavesQuestion: "Was ist blass?",
  shootsPale: "die neuen Triebe, Blätter weit auseinander",
  oldPale: "die alten Blätter, Triebe kurz",
  scaldQuestion: "Wo sind die blassen Flecken?",
  litSide: "nur auf der Seite zum Licht",
  bothSides: "auf beiden Seiten, oder in Ringen",
  doCloser: "Näher ans Glas, oder auf einen helleren Platz.",
  doLamp: "Länger Lampe, so lang ihre Art den Tag verträgt.",
  doShade: "Fünf Tage beschatten: ein Tuch, oder einen Schritt vom Glas weg.",
  doHarden: "Dann jeden Tag eine Stunde mehr Sonne, eine Woche oder länger.",
  doTurn: "Einmal halb herum drehen, dann immer ein Viertel.",
  doRoots: "Das Licht ist hier gleichmäßig: sehen, ob sie fest im Topf steht.",
  notFeedFirst: "Nicht noch länger füttern: erst Licht.",
  notSunAtOnce: "Nicht in einem Schritt in die volle Sonne.",
  notPluck: "Die gezeichneten Blätter noch nicht zupfen: sie beschatten die anderen.",
  notMisting: "In der Sonne nicht sprühen.",
  notStraighten: "Nicht mit Gewalt gerade biegen.",
});

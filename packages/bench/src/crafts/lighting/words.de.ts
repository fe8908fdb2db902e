import type { Say } from "../../words/say.ts";
import { pageGerman } from "./words-page.de.ts";
import type { LightingWords, SignWords } from "./words-shape.ts";
import { workingsGerman } from "./words-workings.de.ts";

const MONTHS = [
  "Januar",
  "Februar",
  "März",
  "April",
  "Mai",
  "Juni",
  "Juli",
  "August",
  "September",
  "Oktober",
  "November",
  "Dezember",
] as const;

/** German sentences of the craft. */
export function german(say: Say): LightingWords {
  const days = (value: number) => {
    const whole = Math.round(value);
    return whole === 1 ? "1 Tag" : `${say.number(whole)} Tage`;
  };
  const sinceDays = (value: number) =>
    Math.round(value) === 1 ? "1 Tag" : `${say.number(Math.round(value))} Tagen`;
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
    glazing: {
      single: "einfach verglast",
      double: "doppelt verglast",
      triple: "dreifach verglast",
      "double low-e": "zweifaches Wärmeschutzglas",
      "triple low-e": "dreifaches Wärmeschutzglas",
    },
    month: (month) => MONTHS[month - 1] as string,
    days,
    hours: (hours) => `${say.number(hours, 2)} h`,
    range: (low, high) => `${low} bis ${high}`,
    ofNeeded: (light, need) => `${light} von ${need}`,
    dateBand: (date, low, high) => `${date} (${low} bis ${high})`,
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
    debt: {
      said: (debt, outSince, catchUp) =>
        [
          outSince === undefined
            ? `${debt} mol im Rückstand in zwei Wochen.`
            : `${debt} mol im Rückstand; die Lampe ist seit ${outSince} aus.`,
          catchUp ? `${catchUp.hours} Lampe am Tag holen es in etwa ${sinceDays(catchUp.days)} auf.` : "",
        ]
          .filter(Boolean)
          .join(" "),
    },
    ...pageGerman(say),
    seats: {
      better: (first) => `Besserer Platz: ${first}`,
      best: "Jeder Topf steht in diesem Monat dort, wo er am besten steht.",
      few: "Zu wenige Töpfe, um Plätze zu tauschen.",
      swap: (number, other, before, after, otherEnough) =>
        `${number} und ${other} tauschen: ${number} bekommt ${after} statt ${before}, ${other} ${otherEnough ? "hat weiter genug" : "kann es entbehren"}.`,
      move: (number, to, before, after) => `${number} nach ${to}: ${after} statt ${before}.`,
      gain: (gain) => `${gain} mol am Tag mehr Bedarf gedeckt`,
    },
    worth: {
      pair: (spot, time, change) =>
        `${time} wert: Lux bei ${spot}, dann draußen, bei gleichmäßig grauem Himmel. ${change}`,
      lamp: (spot, time, change) => `${time} wert: Licht unter der Lampe bei ${spot}. ${change}`,
      dates: (now, then) => `Aus knapp ab ${now} würde etwa ${then}.`,
      light: (now, then) => `Aus ${now} mol am Tag würden etwa ${then}.`,
    },
    caution: {
      water:
        "Wasser und Strom: Steckdose mit Fehlerstromschutz, Kabel mit Tropfschlaufe, nichts Verdrahtetes über Töpfen, die gegossen werden. Vor dem Sprühen ausstecken.",
      eyes: "Nicht in leuchtende LED-Felder schauen.",
      load: (power_W) =>
        `Bis zu ${power_W} W an einem Brett: keine Ketten von Verlängerungen, höchstens vier Fünftel dessen, was der Stromkreis trägt.`,
      tooClose: (bench, distance) =>
        `Die Lampe von ${bench} hängt näher als ${distance}: eine halbe Minute die Hand in Blatthöhe halten; wird es heiß, höher hängen.`,
      hot: "Natrium- und Halogenlampen sind heiß: weg von Vorhang und Blatt, Glas heil, an zwei Punkten aufgehängt.",
      sun: "Nie in die Sonne schauen, um eine Richtung zu finden.",
    },
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

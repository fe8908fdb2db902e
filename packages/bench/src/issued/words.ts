import type { Work } from "../round/task.ts";
import { workSaid } from "../round/words.ts";
import type { Say } from "../words/say.ts";
import type { Score } from "./score.ts";

/** What the pages say of forecasts as issued. */
export interface IssuedWords {
  readonly title: string;
  none(): string;
  few(score: Score): string;
  said(score: Score): string;
  compared(score: Score): string | undefined;
  waiting(n: number): string;
  unreadable(n: number): string;
  readonly formula: string;
  sum(score: Score): string;
  result(score: Score): string;
  readonly unit: string;
  kept(): string;
  keptFrom(): string;
  came(): string;
  cameSaid(score: Score): string;
  cameFrom(score: Score): string;
  again(): string;
  againFrom(): string;
  range(): string;
  rangeFrom(): string;
  days(days_d: number): string;
  notes(
    counts: {
      readonly unseen_n: number;
      readonly unsure_n: number;
      readonly unforecast_n: number;
      readonly waiting_n: number;
    },
    score: Score,
  ): readonly string[];
  readonly source: string;
}

export const issuedWords = (say: Say, work: Work): IssuedWords =>
  say.language === "de" ? german(say, work) : english(say, work);

const SOURCE =
  "Gneiting T, Raftery AE (2007) Strictly proper scoring rules, prediction, and estimation. Journal of the American Statistical Association 102";
/** Below this an error is neither late nor early. */
const NOT_LATE_d = 0.05;

function english(say: Say, work: Work): IssuedWords {
  const days = (days_d: number) => `${say.number(days_d, 1)} d`;
  const since = ({ n, first_ms }: Score) =>
    `${n} ${n === 1 ? "forecast" : "forecasts"} since ${say.day(first_ms)}`;
  const late = ({ late_d }: Score) =>
    Math.abs(late_d) < NOT_LATE_d
      ? "neither early nor late"
      : `${days(Math.abs(late_d))} ${late_d > 0 ? "late" : "early"}`;
  const doing = workSaid(work, say);
  return {
    title: "How good have we been?",
    none: () =>
      `Too few to say: a kept date (${doing}) is judged once somebody weighed the pot or looked at it in the second half of its wait.`,
    few: (score) => `${since(score)}: too few to say.`,
    said: (score) =>
      `${since(score)}: ${score.held_n} of ${score.n} fell in the range (8 in 10 promised); off by ${days(score.off_d)} on average, ${late(score)}.`,
    compared: ({ sameAgain }) =>
      sameAgain &&
      `“As long again as last time” would have been off by ${days(sameAgain.crps_d)}, we by ${days(sameAgain.oursOff_d)} over the same ${sameAgain.n}.`,
    waiting: (n) => (n === 1 ? "1 more waits for its file." : `${n} more wait for their files.`),
    unreadable: (n) =>
      n === 1 ? "1 file of kept forecasts can't be read." : `${n} files of kept forecasts can't be read.`,
    formula:
      "share = dates within p10 to p90 / all; score = mean |x − y| − ½ mean |x − x′|; late = middle − y",
    sum: (score) =>
      `${score.held_n} / ${score.n} = ${say.percent(score.held_frac)}; score ${say.number(score.crps_d, 2)} d; late ${say.number(score.late_d, 2)} d`,
    result: (score) => `${score.held_n} of ${score.n}`,
    unit: "share of dates in their range",
    kept: () => "dates x, as issued",
    keptFrom: () =>
      "kept in the book by the first round opened on each day; of each wait the first forecast that knew of its beginning",
    came: () => "dates y that came",
    cameSaid: (score) => `known to about ${days(score.truthSd_d)}`,
    cameFrom: (score) =>
      `as believed now: ${score.weighed_n} by a weight, ${score.n - score.weighed_n} by a look; done early, the date it would have come due`,
    again: () => "as long again as last time",
    againFrom: () => "the plain guess, over waits that had one before them; its score is its distance",
    range: () => "width of the range",
    rangeFrom: () => "p10 to p90, on average",
    days,
    notes: ({ unseen_n, unsure_n, unforecast_n, waiting_n }, { n, usual }) => [
      ...(unseen_n > 0
        ? [
            `${unseen_n} not judged: nothing was weighed or seen in the second half of the wait, so nobody knows the date better.`,
          ]
        : []),
      ...(unsure_n > 0
        ? [`${unsure_n} not judged: the date that came is no better known than the forecast knew it.`]
        : []),
      ...(unforecast_n > 0
        ? [`${unforecast_n} not judged: no round was opened between the time before and the due date.`]
        : []),
      ...(waiting_n > 0 ? [english(say, work).waiting(waiting_n)] : []),
      `Chance alone makes the share wander: of ${n} dates whose ranges hold 8 times in 10, ${usual.low_n} to ${usual.high_n} usually fall in.`,
    ],
    source: `${SOURCE}; which waits count: our assumption`,
  };
}

function german(say: Say, work: Work): IssuedWords {
  const days = (days_d: number) => `${say.number(days_d, 1)} d`;
  const since = ({ n, first_ms }: Score) =>
    `${n} ${n === 1 ? "Vorhersage" : "Vorhersagen"} seit ${say.day(first_ms)}`;
  const late = ({ late_d }: Score) =>
    Math.abs(late_d) < NOT_LATE_d
      ? "weder zu früh noch zu spät"
      : `${days(Math.abs(late_d))} zu ${late_d > 0 ? "spät" : "früh"}`;
  const doing = workSaid(work, say);
  return {
    title: "Wie gut waren wir?",
    none: () =>
      `Noch zu wenige: Ein aufgehobener Termin (${doing}) wird beurteilt, wenn der Topf in der zweiten Hälfte der Wartezeit gewogen oder angesehen wurde.`,
    few: (score) => `${since(score)}: noch zu wenige.`,
    said: (score) =>
      `${since(score)}: ${score.held_n} von ${score.n} fielen in die Spanne (8 von 10 versprochen); im Mittel ${days(score.off_d)} daneben, ${late(score)}.`,
    compared: ({ sameAgain }) =>
      sameAgain &&
      `„So lange wie letztes Mal“ hätte ${days(sameAgain.crps_d)} danebengelegen, wir ${days(sameAgain.oursOff_d)}, bei denselben ${sameAgain.n}.`,
    waiting: (n) => (n === 1 ? "1 weitere wartet auf ihre Datei." : `${n} weitere warten auf ihre Dateien.`),
    unreadable: (n) =>
      n === 1
        ? "1 Datei mit aufgehobenen Vorhersagen ist nicht lesbar."
        : `${n} Dateien mit aufgehobenen Vorhersagen sind nicht lesbar.`,
    formula:
      "Anteil = Termine von p10 bis p90 / alle; Wertung = Mittel |x − y| − ½ Mittel |x − x′|; zu spät = Mitte − y",
    sum: (score) =>
      `${score.held_n} / ${score.n} = ${say.percent(score.held_frac)}; Wertung ${say.number(score.crps_d, 2)} d; zu spät ${say.number(score.late_d, 2)} d`,
    result: (score) => `${score.held_n} von ${score.n}`,
    unit: "Anteil der Termine in ihrer Spanne",
    kept: () => "Termine x, wie vorhergesagt",
    keptFrom: () =>
      "aufgehoben von der ersten Runde jedes Tages; je Wartezeit die erste Vorhersage, die von ihrem Beginn wusste",
    came: () => "eingetretene Termine y",
    cameSaid: (score) => `auf etwa ${days(score.truthSd_d)} bekannt`,
    cameFrom: (score) =>
      `nach heutigem Wissen: ${score.weighed_n} durch ein Gewicht, ${score.n - score.weighed_n} durch einen Blick; wenn früher getan, der Tag, an dem es fällig geworden wäre`,
    again: () => "so lange wie letztes Mal",
    againFrom: () => "die einfache Schätzung, wo es eine Wartezeit davor gab; ihre Wertung ist ihr Abstand",
    range: () => "Breite der Spanne",
    rangeFrom: () => "p10 bis p90, im Mittel",
    days,
    notes: ({ unseen_n, unsure_n, unforecast_n, waiting_n }, { n, usual }) => [
      ...(unseen_n > 0
        ? [
            `${unseen_n} nicht beurteilt: In der zweiten Hälfte wurde nichts gewogen oder angesehen; niemand kennt den Termin besser.`,
          ]
        : []),
      ...(unsure_n > 0
        ? [
            `${unsure_n} nicht beurteilt: Der eingetretene Termin ist nicht genauer bekannt, als die Vorhersage ihn kannte.`,
          ]
        : []),
      ...(unforecast_n > 0
        ? [
            `${unforecast_n} nicht beurteilt: Zwischen dem letzten Mal und der Fälligkeit wurde keine Runde geöffnet.`,
          ]
        : []),
      ...(waiting_n > 0 ? [german(say, work).waiting(waiting_n)] : []),
      `Schon der Zufall lässt den Anteil schwanken: Von ${n} Terminen, deren Spannen 8 von 10 Mal halten, fallen meist ${usual.low_n} bis ${usual.high_n} hinein.`,
    ],
    source: `${SOURCE}; welche Wartezeiten zählen: unsere Annahme`,
  };
}

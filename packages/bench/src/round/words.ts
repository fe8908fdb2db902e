import type { Say } from "../words/say.ts";
import type { Work } from "./task.ts";

interface RoundWords {
  nothing(): string;
  summary(tasks_n: number, minutes: number, benches_n: number): string;
  bench(counts: readonly (readonly [Work, number])[]): string;
  over(pressing_min: number, minutes: number): string;
  nowhere(): string;
  laidLater(bench: string, day: string): string;
  carry(water_mL: number): string;
  next(day: string, mid_n: number, low_n: number, high_n: number): string;
  sameNumber(number: string): string;
  newNumber(number: number): string;
  wateredTwice(number: string, first: string, second: string): string;
  both(): string;
  onlyFirst(): string;
  leftFor(number: string, text: string, who: string): string;
  seenTo(): string;
  asksFor(number: string, work: string, who: string, reason: string): string;
  allowIt(): string;
  notToday(): string;
}

const WORK_EN: Readonly<Record<Work, string>> = {
  water: "water",
  feed: "feed",
  flush: "flush",
  cut: "cut",
  pluck: "pluck",
  bend: "bend",
  repot: "repot",
  wash: "wash",
  spray: "spray",
  brush: "brush",
  pick: "pick",
  move: "move",
  touch: "handle",
  turn: "turn",
  sell: "sell",
  look: "look",
  weigh: "weigh",
};
const WORK_DE: Readonly<Record<Work, string>> = {
  water: "gießen",
  feed: "düngen",
  flush: "spülen",
  cut: "schneiden",
  pluck: "zupfen",
  bend: "biegen",
  repot: "umtopfen",
  wash: "auswaschen",
  spray: "spritzen",
  brush: "bestäuben",
  pick: "ernten",
  move: "umstellen",
  touch: "anfassen",
  turn: "drehen",
  sell: "verkaufen",
  look: "ansehen",
  weigh: "wiegen",
};

/** The word of a work; one that a newer version added stands as it was written. */
export const workSaid = (work: Work, say: Say): string =>
  (say.language === "de" ? WORK_DE : WORK_EN)[work] ?? work;

export const roundWords = (say: Say): RoundWords => (say.language === "de" ? german(say) : english(say));

const english = (say: Say): RoundWords => ({
  nothing: () => "Nothing needs hands today.",
  summary: (tasks_n, minutes, benches_n) =>
    `${tasks_n} ${tasks_n === 1 ? "task" : "tasks"}, ${say.minutes(minutes)}, ${benches_n} ${benches_n === 1 ? "bench" : "benches"}`,
  bench: (counts) =>
    counts.length === 0 ? "nothing today" : counts.map(([work, n]) => `${WORK_EN[work]} ${n}`).join(", "),
  over: (pressing_min, minutes) =>
    `What can't wait takes ${say.minutes(pressing_min)} alone, more than ${say.minutes(minutes)}.`,
  nowhere: () => "No spot written",
  laidLater: (bench, day) => `${bench}, laid on ${day}: later than this moment`,
  carry: (water_mL) => `Carry about ${say.volume(water_mL)} of water.`,
  next: (day, mid_n, low_n, high_n) =>
    `Next: ${day}, about ${mid_n} ${mid_n === 1 ? "pot" : "pots"} (${low_n} to ${high_n}).`,
  sameNumber: (number) =>
    `Two plants were given the number ${number.replace("?", "")}. The later one, ${number}, needs a new number and a new label.`,
  newNumber: (number) => `Call it ${number}`,
  wateredTwice: (number, first, second) => `${number} was watered twice: ${first}, ${second}. Both true?`,
  both: () => "Both",
  onlyFirst: () => "One of them",
  leftFor: (number, text, who) => `${number}, left by ${who}: ${text}`,
  seenTo: () => "Seen to",
  asksFor: (number, work, who, reason) => `${number}, ${work} though it is held: ${who} asks. ${reason}`,
  allowIt: () => "Allow it today",
  notToday: () => "Not today",
});

const german = (say: Say): RoundWords => ({
  nothing: () => "Heute braucht nichts Hände.",
  summary: (tasks_n, minutes, benches_n) =>
    `${tasks_n} ${tasks_n === 1 ? "Aufgabe" : "Aufgaben"}, ${say.minutes(minutes)}, ${benches_n} ${benches_n === 1 ? "Bank" : "Bänke"}`,
  bench: (counts) =>
    counts.length === 0 ? "heute nichts" : counts.map(([work, n]) => `${WORK_DE[work]} ${n}`).join(", "),
  over: (pressing_min, minutes) =>
    `Was nicht warten kann, dauert allein ${say.minutes(pressing_min)}, mehr als ${say.minutes(minutes)}.`,
  nowhere: () => "Ohne Platz",
  laidLater: (bench, day) => `${bench}, erst am ${day} aufgestellt`,
  carry: (water_mL) => `Etwa ${say.volume(water_mL)} Wasser mitnehmen.`,
  next: (day, mid_n, low_n, high_n) =>
    `Als Nächstes: ${day}, etwa ${mid_n} ${mid_n === 1 ? "Topf" : "Töpfe"} (${low_n} bis ${high_n}).`,
  sameNumber: (number) =>
    `Zwei Pflanzen haben die Nummer ${number.replace("?", "")} bekommen. Die spätere, ${number}, braucht eine neue Nummer und ein neues Etikett.`,
  newNumber: (number) => `Sie heißt ${number}`,
  wateredTwice: (number, first, second) =>
    `${number} wurde zweimal gegossen: ${first}, ${second}. Stimmt beides?`,
  both: () => "Beides",
  onlyFirst: () => "Nur eines",
  leftFor: (number, text, who) => `${number}, ${who} schrieb: ${text}`,
  seenTo: () => "Erledigt",
  asksFor: (number, work, who, reason) =>
    `${number}, ${work}, obwohl zurückgehalten: ${who} bittet darum. ${reason}`,
  allowIt: () => "Heute erlauben",
  notToday: () => "Heute nicht",
});

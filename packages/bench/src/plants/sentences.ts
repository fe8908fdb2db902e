import type { Say } from "../words/say.ts";
import { stageSaid } from "../words/stage-names.ts";
import type { Branched } from "./branches.ts";
import type { Brought, PlantMeasured, Potted } from "./kinds.ts";
import type { Pot } from "./pot.ts";

/** How the book says what happened to a plant. One catalogue a language; a missing sentence does not compile. */
interface PlantSentences {
  brought(data: Brought): string;
  numbered(number: number): string;
  potted(data: Potted): string;
  described(): string;
  moved(spot: string): string;
  measured(data: PlantMeasured): string;
  branched(data: Branched): string;
  noted(text: string): string;
  ended(how: "died" | "thrown out" | "sold" | "given"): string;
  reopened(): string;
}

export const plantSentences = (say: Say): PlantSentences =>
  say.language === "de" ? german(say) : english(say);

export const HABIT_WORDS = {
  en: {
    thin: "thin-fruited",
    fat: "fat-fruited",
    lantern: "lantern-fruited",
    tiny: "tiny, upright",
    unknown: "kind not known",
  },
  de: {
    thin: "dünnfrüchtig",
    fat: "dickfrüchtig",
    lantern: "laternenfrüchtig",
    tiny: "klein, aufrecht",
    unknown: "Art unbekannt",
  },
} as const;
export const MEDIUM_WORDS = {
  en: {
    spongy: "dark, spongy medium",
    bark: "chunky bark",
    gritty: "gritty medium",
    unknown: "medium not known",
  },
  de: {
    spongy: "dunkles, schwammiges Substrat",
    bark: "grobe Rinde",
    gritty: "körniges Substrat",
    unknown: "Substrat unbekannt",
  },
} as const;

/** "12 cm across, 9 cm deep". */
export function potSaid(pot: Pot, say: Say): string {
  const across =
    pot.form === "round"
      ? say.length(pot.top_cm)
      : `${say.length(pot.length_cm)} × ${say.length(pot.width_cm)}`;
  return say.language === "de"
    ? `${across} weit, ${say.length(pot.depth_cm)} tief`
    : `${across} across, ${say.length(pot.depth_cm)} deep`;
}

const english = (say: Say): PlantSentences => ({
  brought: (data) =>
    say.list([
      `brought in, ${HABIT_WORDS.en[data.habit]}`,
      ...(data.pot ? [`pot ${potSaid(data.pot, say)}`] : []),
      // An entry may leave out what has a default; it is kept as it was written.
      MEDIUM_WORDS.en[data.medium ?? "unknown"],
      ...(data.spot ? [`on ${say.name(data.spot)}`] : []),
    ]),
  numbered: (number) => `has the number ${number} now`,
  potted: (data) =>
    `potted into ${MEDIUM_WORDS.en[data.medium]}${data.pot ? `, ${potSaid(data.pot, say)}` : ", same pot"}`,
  described: () => "described more closely",
  moved: (spot) => `moved to ${say.name(spot)}`,
  measured: (data) =>
    `measured: ${say.list([
      ...(data.height_cm === undefined ? [] : [`height ${say.length(data.height_cm)}`]),
      ...(data.caliper_mm === undefined ? [] : [`stem ${say.thickness(data.caliper_mm)}`]),
      ...(data.leaves_n === undefined ? [] : [`${data.leaves_n} leaves`]),
      ...(data.leafLength_cm === undefined ? [] : [`leaf ${say.length(data.leafLength_cm)} long`]),
      ...(data.leafWidth_cm === undefined ? [] : [`leaf ${say.length(data.leafWidth_cm)} wide`]),
      ...(data.stage === undefined ? [] : [data.stage]),
    ])}`,
  branched: ({ branch, gone, thickness_mm = 0, length_cm = 0, lean_deg = 0, leaves_n }) =>
    gone
      ? `branch ${branch} is gone`
      : `branch ${branch}: ${say.thickness(thickness_mm)} thick, ${say.length(length_cm)} long, ${say.number(lean_deg)}° over level${leaves_n === undefined ? "" : `, ${leaves_n} ${leaves_n === 1 ? "leaf" : "leaves"}`}`,
  noted: (text) => `“${text}”`,
  ended: (how) => ({ died: "died", "thrown out": "thrown out", sold: "sold", given: "given away" })[how],
  reopened: () => "taken back into the book",
});

const german = (say: Say): PlantSentences => ({
  brought: (data) =>
    say.list([
      `aufgenommen, ${HABIT_WORDS.de[data.habit]}`,
      ...(data.pot ? [`Topf ${potSaid(data.pot, say)}`] : []),
      MEDIUM_WORDS.de[data.medium ?? "unknown"],
      ...(data.spot ? [`auf ${say.name(data.spot)}`] : []),
    ]),
  numbered: (number) => `hat jetzt die Nummer ${number}`,
  potted: (data) =>
    `umgetopft in ${MEDIUM_WORDS.de[data.medium]}${data.pot ? `, ${potSaid(data.pot, say)}` : ", selber Topf"}`,
  described: () => "genauer beschrieben",
  moved: (spot) => `umgestellt auf ${say.name(spot)}`,
  measured: (data) =>
    `gemessen: ${say.list([
      ...(data.height_cm === undefined ? [] : [`Höhe ${say.length(data.height_cm)}`]),
      ...(data.caliper_mm === undefined ? [] : [`Stamm ${say.thickness(data.caliper_mm)}`]),
      ...(data.leaves_n === undefined ? [] : [`${data.leaves_n} Blätter`]),
      ...(data.leafLength_cm === undefined ? [] : [`Blatt ${say.length(data.leafLength_cm)} lang`]),
      ...(data.leafWidth_cm === undefined ? [] : [`Blatt ${say.length(data.leafWidth_cm)} breit`]),
      ...(data.stage === undefined ? [] : [stageSaid(data.stage, say)]),
    ])}`,
  branched: ({ branch, gone, thickness_mm = 0, length_cm = 0, lean_deg = 0, leaves_n }) =>
    gone
      ? `Ast ${branch} ist weg`
      : `Ast ${branch}: ${say.thickness(thickness_mm)} dick, ${say.length(length_cm)} lang, ${say.number(lean_deg)}° über der Waagerechten${leaves_n === undefined ? "" : `, ${leaves_n} ${leaves_n === 1 ? "Blatt" : "Blätter"}`}`,
  noted: (text) => `„${text}“`,
  ended: (how) =>
    ({ died: "eingegangen", "thrown out": "weggeworfen", sold: "verkauft", given: "verschenkt" })[how],
  reopened: () => "wieder ins Buch genommen",
});

/** What a person calls a stage, as the code in its middle and the codes between which it may lie. */
export interface StageWord {
  readonly bbch: number;
  readonly bbchLow: number;
  readonly bbchHigh: number;
}

const word = (bbch: number, bbchLow = bbch, bbchHigh = bbch): StageWord => ({ bbch, bbchLow, bbchHigh });

/** Words for a look in place of a code. @source codes Feller 1995 (BBCH, solanaceous fruit); which word means which is our assumption */
export const STAGE_WORDS = {
  "just up": word(9),
  "seed leaves": word(10),
  seedling: word(12, 11, 14),
  "in leaf": word(17, 13, 19),
  "in bud": word(55, 51, 59),
  "first flower": word(61),
  "in flower": word(65, 61, 69),
  "in fruit": word(73, 66, 79),
  "ripe fruit": word(85, 81, 89),
  "at rest": word(0),
  "new leaves": word(15),
} as const satisfies Readonly<Record<string, StageWord>>;

export type StageName = keyof typeof STAGE_WORDS;
export const stageNames = Object.keys(STAGE_WORDS) as [StageName, ...StageName[]];

export const isStageName = (text: string): text is StageName => Object.hasOwn(STAGE_WORDS, text);

/** The plain word for a code; the catalogue says it in every language. */
export type PlainStage =
  | "seed"
  | "up"
  | "seed leaves"
  | "in leaf"
  | "branching"
  | "in bud"
  | "in flower"
  | "in fruit"
  | "ripening"
  | "ripe"
  | "over";

export function plainStage(bbch: number): PlainStage {
  if (bbch < 9) return "seed";
  if (bbch < 10) return "up";
  if (bbch < 11) return "seed leaves";
  if (bbch < 20) return "in leaf";
  if (bbch < 50) return "branching";
  if (bbch < 60) return "in bud";
  if (bbch < 70) return "in flower";
  if (bbch < 80) return "in fruit";
  if (bbch < 89) return "ripening";
  return bbch < 90 ? "ripe" : "over";
}

/** Last code that a clock can know; later ones are seen. */
export const LAST_CLOCKED = 81;

import type { Say } from "../../words/say.ts";
import type { LeavesMeasured } from "./kinds.ts";
import type { Pace } from "./pace.ts";
import type { GrowthWords, PlainSaid, StageSaid } from "./words-shape.ts";
import { workingsEnglish } from "./words-workings.en.ts";

const US_PER_METRIC = 1.8;
const IN2_PER_M2 = 1550;
const CM2_PER_M2 = 10_000;

const STAGES: StageSaid = {
  "just up": "just up",
  "seed leaves": "seed leaves open",
  seedling: "seedling",
  "in leaf": "in leaf",
  "in bud": "in bud",
  "first flower": "first flower open",
  "in flower": "in flower",
  "in fruit": "in fruit",
  "ripe fruit": "with ripe fruit",
  "at rest": "at rest",
  "new leaves": "first new leaf longer than 1 cm",
};
const PLAIN: PlainSaid = {
  seed: "in the seed",
  up: "just up",
  "seed leaves": "seed leaves open",
  "in leaf": "in leaf",
  branching: "branching",
  "in bud": "in bud",
  "in flower": "in flower",
  "in fruit": "in fruit",
  ripening: "ripening",
  ripe: "ripe",
  over: "past its season",
};
const COMING = {
  9: "seedlings up",
  61: "first flower",
  81: "first ripe fruit",
  "new leaves": "new leaves",
} as const;

/** English sentences of the craft. */
export function english(say: Say): GrowthWords {
  const warmth = (sum_Cd: number) =>
    say.units === "us"
      ? `${say.number(sum_Cd * US_PER_METRIC, sum_Cd < 5 ? 1 : 0)} °F d`
      : `${say.number(sum_Cd, sum_Cd < 10 ? 1 : 0)} °C d`;
  const slow = ({ air_C, nodeWarmth_Cd, slow: how }: Pace) =>
    how === "stopped"
      ? `at ${say.temperature(air_C)} it does not grow`
      : `at ${say.temperature(air_C)} it hardly grows: ${warmth(nodeWarmth_Cd)} a day`;
  return {
    staged: ({ stage, bbch }) => `seen: ${stage ? STAGES[stage] : `BBCH ${bbch}`}`,
    leaves: (data) => `${leafCount(data)} of ${data.leaves_n} leaves measured`,
    nodes: ({ nodes_n }) => `${nodes_n} nodes counted`,
    head: "stage",
    stage: (plain, bbch, low, high) =>
      `${PLAIN[plain]} (BBCH ${bbch})${low === high ? "" : `, 80 % ${low} to ${high}`}`,
    guess: "not known, taken as in leaf",
    resting: "at rest until new leaves come",
    runOut: "past its first ripe fruit, not known further",
    slow,
    warmth,
    area: (area_m2) =>
      say.units === "us"
        ? `${say.number(area_m2 * IN2_PER_M2, 0)} sq in`
        : `${say.number(area_m2 * CM2_PER_M2, area_m2 < 0.001 ? 1 : 0)} cm²`,
    coming: (milestone, best, range, same) => `${COMING[milestone]} ${same ? best : `${best} (${range})`}`,
    task: {
      look: "LOOK",
      newLeaf: "is there a new leaf longer than 1 cm?",
      newLeafWhy: "cut back: its clock starts at the first new leaf, not at the cut",
    },
    question: {
      stage: (number, seconds) =>
        `Look at ${number} (${seconds} s): buds, flowers or fruit? With them it is watered earlier.`,
      count: (number, seconds) =>
        `Count the leaves of ${number} and measure one (${seconds} s): its use is then known better.`,
    },
    cannotBeRead: "This entry cannot be read as a stage, leaves or nodes. It is kept and not used.",
    offered: {
      stage: {
        sown: "by the warmth since it was sown",
        seen: "by the warmth since it was seen",
        cut: "by the warmth since it broke buds",
        just: "seen",
        old: "seen too long ago to tell",
        rest: "seen at rest",
        cutBack: "cut back: at rest until new leaves come",
      },
      area: {
        usual: "usual for kind and pot",
        sown: "grown since it was sown, by warmth and light",
        cut: "left by the cut, grown since by warmth and light",
        counted: "leaves counted or measured, grown since by warmth and light",
      },
      warmth: {
        sown: "warmth since it was sown",
        seen: "warmth since its stage was seen",
        cut: "warmth since it broke buds",
      },
      nodes: { sown: "made since it was sown, by warmth", counted: "counted, and made since by warmth" },
    },
    working: workingsEnglish(say),
    looks: () => [{ key: "no new leaves", where: "tip", said: "no new leaves for two weeks" }],
    sign: {
      cold: "it stands too cold to grow",
      rest: "at rest: its buds have not broken yet",
      pace: (pace) =>
        pace.slow === "no"
          ? `at ${say.temperature(pace.air_C)} one new leaf in about ${say.number(1 / pace.nodes_per_d, 0)} days`
          : slow(pace),
      restLeft: (rest_Cd, wasCut) =>
        `${wasCut ? "cut back" : "seen at rest"}; about ${warmth(rest_Cd)} more until new leaves`,
      warmer: (air_C) => `stand it at ${say.temperature(air_C)} or warmer, day and night taken together`,
      wait: "wait, keep it bright and just moist",
      notFeed: "do not feed it to make it grow",
      notWater: "do not water more: it uses little",
      notCut: "do not cut again before it has leaves",
    },
  };
}

const leafCount = ({ lengths_cm, measured_n }: LeavesMeasured) => lengths_cm?.length ?? measured_n ?? 1;

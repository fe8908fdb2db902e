import type { Say } from "../../words/say.ts";
import type { Looked, Watered, Weighed } from "./kinds.ts";
import type { WaterProblem } from "./slice.ts";
import type { WateringWords } from "./words-shape.ts";
import { looksEnglish, signsEnglish } from "./words-signs.en.ts";
import { workingsEnglish } from "./words-workings.en.ts";

/** English sentences of the craft. */
export function english(say: Say): WateringWords {
  return {
    watered: (data) => watered(data, say),
    weighed: ({ weight_g, state, confirmed }: Weighed) =>
      `weighed ${say.mass(weight_g)}${state === "as found" ? "" : `, ${state}`}${confirmed ? ", looked at again" : ""}`,
    looked,
    task: {
      water: "WATER",
      look: "LOOK",
      amount: (volume_mL) => say.volume(volume_mL),
      pours: (volumes_mL, wait_min) =>
        `in ${volumes_mL.length} pours of about ${say.volume(volumes_mL[0] ?? 0)}, ${say.minutes(wait_min)} apart; or stand it in water up to the rim for 20 to 30 min`,
      saucer: "tip the saucer out once, after half an hour at the latest",
      why: (left_frac, use_g_d) => `${say.percent(left_frac)} left, uses ${say.mass(use_g_d)} a day`,
      rootsSaid: (number) => `look at the roots of ${number}, do not water`,
      rootsWhy: (left_frac) => `it hangs, yet about ${say.percent(left_frac)} of its water is there`,
      rootsThen: "slide it out of the pot: brown and soft, or white and firm?",
      againSaid: "look again: does it stand?",
      againWhy: "it wilted from dryness and was watered; it should stand within a day",
    },
    limit: {
      feedDry: (used_frac) =>
        `the medium is too dry to feed: ${say.percent(1 - used_frac)} of its water left; with the next water, or after it`,
      feedWilted: "it wilted from dryness: plain water first, feed a day after it stands again",
      cutWilted: "it is wilting: no hard cut before it stands again",
      waterDrowned: "it hangs though the pot is wet: look at the roots, do not water",
    },
    date: (best, range, same) => (same ? best : `${best} (${range})`),
    later: (days_n) => `later than ${say.number(days_n)} days from now`,
    dateLong: (from, to) => `could be any day from ${from} to ${to}; 8 times in 10 it is`,
    left: (left_frac) => say.percent(left_frac),
    head: "water",
    question: {
      weigh: (number, seconds, now, then) =>
        `Weigh ${number} once (${seconds} s): ${now} would become about ${then}.`,
      weighDrained: (number, seconds) =>
        `Weigh ${number} once when it has just drained (${seconds} s): from then on every weight tells what is left.`,
      lift: (number, seconds, now, then) =>
        `Lift ${number} (${seconds} s): heavy or light? ${now} would become about ${then}.`,
    },
    problem: (problem) => problemSaid(problem, say),
    demandFar: (factor) =>
      `It uses ${say.number(factor, 1)} times what leaves of this size should. Leaf count wrong, a leak, or heated air?`,
    chart: { name: "water left", waterHere: "water here" },
    letter: { watered: "w", weighed: "g", looked: "l" },
    offered: {
      capacity: {
        measured: "weighed at lasting wilt",
        learned: "learned from weights, pours and looks of this pot",
        assumed: "by pot and medium",
      },
      held: { unseen: "never seen: a guess between wet and dry", balance: "water balance of this pot" },
    },
    working: workingsEnglish(say),
    looks: looksEnglish,
    sign: signsEnglish(say),
  };
}

function watered({ volume_mL, drained, leachate_mL, way }: Watered, say: Say): string {
  const how = way === "soaked" ? "soaked in" : "watered";
  const ran =
    leachate_mL === undefined
      ? { yes: ", drained", no: ", nothing ran out", unknown: "" }[drained]
      : `, ${say.volume(leachate_mL)} ran out`;
  return `${how} ${say.volume(volume_mL)}${ran}`;
}

function looked({ look, yes }: Looked): string {
  const seen = {
    dry: ["looked dry", "did not look dry"],
    light: ["light when lifted", "not light when lifted"],
    drooping: ["leaves droop", "leaves stand"],
    heavy: ["heavy when lifted", "not heavy when lifted"],
    moist: ["medium moist", "medium not moist"],
    wet: ["medium wet", "medium not wet"],
  }[look];
  return (yes ? seen[0] : seen[1]) as string;
}

function problemSaid(problem: WaterProblem, say: Say): string {
  switch (problem.what) {
    case "held weight":
      return `${say.mass(problem.weight_g)}, expected ${say.mass(problem.low_g)} to ${say.mass(problem.high_g)}. Same pot? Saucer empty? Anything added? It is held, not used.`;
    case "two weights":
      return `${say.mass(problem.weight_g)} and ${say.mass(problem.other_g)} within a minute. Was the scale at 0?`;
    case "gained without water":
      return `${say.mass(problem.gain_g)} heavier without water written. Water in the saucer, another pot, or a pour not written?`;
    case "more than it holds":
      return `${say.volume(problem.volume_mL)} is more than the pot can hold, about ${say.volume(problem.capacity_g)}. Litres typed for millilitres?`;
    case "drained weight rising":
      return `Just drained it weighs ${say.percent(problem.gain_frac)} more than before. Salts, moss or roots: let it dry down once under watch.`;
    case "cannot be read":
      return "This entry cannot be read as a weight or a look. It is kept and not used.";
  }
}

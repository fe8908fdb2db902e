import type { PlantFacts } from "../../plants/facts.ts";
import type { Said } from "../../words/said.ts";
import type { Reading } from "../../working/reading.ts";
import type { Sight } from "../craft.ts";
import { knowsLeafArea, leafAreaSd_ln } from "./leaves.ts";
import { growthSettings } from "./settings.ts";
import type { GrowthSlice } from "./slice.ts";
import { codeNow, stageNow, stateNow } from "./stage-now.ts";
import { growthWords } from "./words.ts";
import type { OfferedWords } from "./words-shape.ts";

const Z80 = 1.2816;
/** A stage that was seen so little warmth ago is still what was seen. @source our assumption: about a week at 22 °C */
const JUST_SEEN_Cd = 80;
/** Doubt of a code at the very least, and of one that was seen too long ago. @source our assumption */
const CODE_SD = { least: 1, rest: 5, old: 20 } as const;

const offered =
  (of: (words: OfferedWords) => string): Said =>
  (say) =>
    of(growthWords(say).offered);

/** Readings that the other crafts may use. */
export const growthOffers = {
  /** Asked in every step of every pot: no more is made than what is handed over. */
  leafArea_m2: ({ known, now }: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { leaves } = known;
    const leafArea_m2 = now[4];
    const grown_ln = now[5];
    if (!knowsLeafArea(leaves, leafArea_m2)) return undefined;
    return {
      value: leafArea_m2,
      sd: leafArea_m2 * leafAreaSd_ln(leaves, grown_ln, sight.at_ms, growthSettings(sight)),
      origin:
        leaves.from !== "counted"
          ? "assumed"
          : grown_ln === 0 && leaves.leaf_cm2 > 0
            ? "measured"
            : "learned",
      from: offered(({ area }) => area[leaves.from]),
    };
  },
  /** The doubt is worked out for who asks for it: watering asks for the code at every pour. */
  stage_bbch: ({ known, now }: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { clock, pepper_n } = known;
    const growing = { pepper_n, clock, sum_Cd: now[0], rest_Cd: now[1] };
    const state = stateNow(growing, sight);
    if (state === "guess" || (state === "run out" && clock.how !== "seen")) return undefined;
    if (state === "run out")
      return {
        value: clock.bbch,
        sd: CODE_SD.old,
        origin: "assumed",
        from: offered(({ stage }) => stage.old),
      };
    if (state === "resting") {
      const isSeen = clock.how === "seen";
      return {
        value: 0,
        sd: CODE_SD.rest,
        origin: isSeen ? "measured" : "learned",
        from: offered(({ stage }) => (isSeen ? stage.rest : stage.cutBack)),
      };
    }
    const { how } = clock;
    if (how === "guess") return undefined;
    const isJust = how === "seen" && growing.sum_Cd < JUST_SEEN_Cd;
    return {
      value: codeNow(growing, state, sight),
      get sd() {
        const { bbchLow, bbchHigh } = stageNow(growing, sight);
        return Math.max(CODE_SD.least, (bbchHigh - bbchLow) / (2 * Z80));
      },
      origin: isJust ? "measured" : how === "seen" ? "learned" : "assumed",
      from: offered(({ stage }) => (isJust ? stage.just : stage[how])),
    };
  },
  thermalTime_Cd: ({ known, now }: GrowthSlice): Reading | undefined => {
    const { clock } = known;
    const { how } = clock;
    if (how === "guess") return undefined;
    return {
      value: now[0],
      sd: clock.sd_Cd,
      origin: how === "sown" && clock.sd_Cd > 0 ? "assumed" : "learned",
      from: offered(({ warmth }) => warmth[how]),
    };
  },
  nodes_n: ({ known, now }: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { nodes } = known;
    const made_n = now[3];
    const { from } = nodes;
    if (from === "unknown") return undefined;
    return {
      value: Math.min(500, nodes.nodes_n + made_n),
      sd: Math.hypot(nodes.sd_n, growthSettings(sight).nodeSpread_frac * made_n),
      origin: from === "sown" ? "assumed" : made_n < 0.5 ? "measured" : "learned",
      from: offered((words) => words.nodes[from]),
    };
  },
};

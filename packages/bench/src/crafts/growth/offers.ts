import type { PlantFacts } from "../../plants/facts.ts";
import type { Reading } from "../../working/reading.ts";
import type { Sight } from "../craft.ts";
import { knowsLeafArea, leafAreaSd_ln } from "./leaves.ts";
import { growthSettings } from "./settings.ts";
import type { GrowthSlice } from "./slice.ts";
import { codeNow, stageNow, stateNow } from "./stage-now.ts";

const Z80 = 1.2816;
/** A stage that was seen so little warmth ago is still what was seen. @source our assumption: about a week at 22 °C */
const JUST_SEEN_Cd = 80;
/** Doubt of a code at the very least, and of one that was seen too long ago. @source our assumption */
const CODE_SD = { least: 1, rest: 5, old: 20 } as const;

const STAGE_FROM = {
  guess: "not known",
  sown: "by the warmth since it was sown",
  seen: "by the warmth since it was seen",
  cut: "by the warmth since it broke buds",
  just: "seen",
  old: "seen too long ago to tell",
  rest: "seen at rest",
  cutBack: "cut back: at rest until new leaves come",
} as const;

const AREA_FROM = {
  usual: "usual for kind and pot",
  sown: "grown since it was sown, by warmth and light",
  cut: "left by the cut, grown since by warmth and light",
  counted: "leaves counted or measured, grown since by warmth and light",
} as const;

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
      from: AREA_FROM[leaves.from],
    };
  },
  /** The doubt is worked out for who asks for it: watering asks for the code at every pour. */
  stage_bbch: ({ known, now }: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { clock, pepper_n } = known;
    const growing = { pepper_n, clock, sum_Cd: now[0], rest_Cd: now[1] };
    const state = stateNow(growing, sight);
    if (state === "guess" || (state === "run out" && clock.how !== "seen")) return undefined;
    if (state === "run out")
      return { value: clock.bbch, sd: CODE_SD.old, origin: "assumed", from: STAGE_FROM.old };
    if (state === "resting") {
      const isSeen = clock.how === "seen";
      return {
        value: 0,
        sd: CODE_SD.rest,
        origin: isSeen ? "measured" : "learned",
        from: isSeen ? STAGE_FROM.rest : STAGE_FROM.cutBack,
      };
    }
    const isJust = clock.how === "seen" && growing.sum_Cd < JUST_SEEN_Cd;
    return {
      value: codeNow(growing, state, sight),
      get sd() {
        const { bbchLow, bbchHigh } = stageNow(growing, sight);
        return Math.max(CODE_SD.least, (bbchHigh - bbchLow) / (2 * Z80));
      },
      origin: isJust ? "measured" : clock.how === "seen" ? "learned" : "assumed",
      from: isJust ? STAGE_FROM.just : STAGE_FROM[clock.how],
    };
  },
  thermalTime_Cd: ({ known, now }: GrowthSlice): Reading | undefined => {
    const { clock } = known;
    if (clock.how === "guess") return undefined;
    return {
      value: now[0],
      sd: clock.sd_Cd,
      origin: clock.how === "sown" && clock.sd_Cd > 0 ? "assumed" : "learned",
      from: {
        sown: "warmth since it was sown",
        seen: "warmth since its stage was seen",
        cut: "warmth since it broke buds",
      }[clock.how],
    };
  },
  nodes_n: ({ known, now }: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { nodes } = known;
    const made_n = now[3];
    if (nodes.from === "unknown") return undefined;
    return {
      value: Math.min(500, nodes.nodes_n + made_n),
      sd: Math.hypot(nodes.sd_n, growthSettings(sight).nodeSpread_frac * made_n),
      origin: nodes.from === "sown" ? "assumed" : made_n < 0.5 ? "measured" : "learned",
      from: nodes.from === "sown" ? "made since it was sown, by warmth" : "counted, and made since by warmth",
    };
  },
};

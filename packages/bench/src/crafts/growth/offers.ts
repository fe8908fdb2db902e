import type { PlantFacts } from "../../plants/facts.ts";
import type { Reading } from "../../working/reading.ts";
import type { Sight } from "../craft.ts";
import { knowsLeafArea, leafAreaSd_ln } from "./leaves.ts";
import { growthSettings } from "./settings.ts";
import type { GrowthSlice } from "./slice.ts";
import { stageNow } from "./stage-now.ts";

const Z80 = 1.2816;
/** A stage that was seen so little warmth ago is still what was seen. @source our assumption: about a week at 22 °C */
const JUST_SEEN_Cd = 80;
/** Doubt of a code at the very least, and of one that was seen too long ago. @source our assumption */
const CODE_SD = { least: 1, old: 20 } as const;

const AREA_FROM = {
  usual: "usual for kind and pot",
  sown: "grown since it was sown, by warmth and light",
  cut: "left by the cut, grown since by warmth and light",
  counted: "leaves counted or measured, grown since by warmth and light",
} as const;

/** Readings that the other crafts may use. */
export const growthOffers = {
  leafArea_m2: (slice: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    if (!knowsLeafArea(slice)) return undefined;
    const { leaves, leafArea_m2, grown_ln } = slice;
    return {
      value: leafArea_m2,
      sd: leafArea_m2 * leafAreaSd_ln(slice, sight),
      origin:
        leaves.from === "counted"
          ? grown_ln === 0 && leaves.leaf_cm2 > 0
            ? "measured"
            : "learned"
          : "assumed",
      from: AREA_FROM[leaves.from],
    };
  },
  stage_bbch: (slice: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { clock } = slice;
    const now = stageNow(slice, sight);
    if (now.state === "guess") return undefined;
    if (now.state === "run out")
      return clock.how === "seen"
        ? { value: clock.bbch, sd: CODE_SD.old, origin: "assumed", from: "seen too long ago to tell" }
        : undefined;
    if (now.state === "resting")
      return {
        value: 0,
        sd: 5,
        origin: clock.how === "seen" ? "measured" : "learned",
        from: clock.how === "seen" ? "seen at rest" : "cut back: at rest until new leaves come",
      };
    const sd = Math.max(CODE_SD.least, (now.bbchHigh - now.bbchLow) / (2 * Z80));
    if (clock.how !== "seen")
      return {
        value: now.bbch,
        sd,
        origin: "assumed",
        from: clock.how === "sown" ? "by the warmth since it was sown" : "by the warmth since it broke buds",
      };
    const just = slice.sum_Cd < JUST_SEEN_Cd;
    return {
      value: now.bbch,
      sd,
      origin: just ? "measured" : "learned",
      from: just ? "seen" : "by the warmth since it was seen",
    };
  },
  thermalTime_Cd: (slice: GrowthSlice): Reading | undefined => {
    const { clock } = slice;
    if (clock.how === "guess") return undefined;
    return {
      value: slice.sum_Cd,
      sd: clock.sd_Cd,
      origin: clock.how === "sown" && clock.sd_Cd > 0 ? "assumed" : "learned",
      from: {
        sown: "warmth since it was sown",
        seen: "warmth since its stage was seen",
        cut: "warmth since it broke buds",
      }[clock.how],
    };
  },
  nodes_n: (slice: GrowthSlice, _plant: PlantFacts, sight: Sight): Reading | undefined => {
    const { nodes, made_n } = slice;
    if (nodes.from === "unknown") return undefined;
    return {
      value: Math.min(500, nodes.nodes_n + made_n),
      sd: Math.hypot(nodes.sd_n, growthSettings(sight).nodeSpread_frac * made_n),
      origin: nodes.from === "sown" ? "assumed" : made_n < 0.5 ? "measured" : "learned",
      from: nodes.from === "sown" ? "made since it was sown, by warmth" : "counted, and made since by warmth",
    };
  },
};

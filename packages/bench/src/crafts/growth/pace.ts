import type { Sight } from "../craft.ts";
import { dayGrowth } from "./day-growth.ts";
import type { Growing } from "./slice.ts";
import { clockworkOf } from "./stage-now.ts";

/** Air at which growth is called usual. @source our assumption, as for the relative growth of the field */
const USUAL_C = 25;
/** Below this share of the usual pace of leaves a plant is said to stand still. @source our assumption */
const HARDLY_frac = 0.2;
/** Less than this and it does not move at all. */
const NOTHING_frac = 0.01;

/** How fast a plant makes leaves today. */
export interface Pace {
  readonly air_C: number;
  /** Of development, above the base of its species. */
  readonly warmth_Cd: number;
  /** Above the base of its nodes, which may be another. */
  readonly nodeWarmth_Cd: number;
  readonly nodeBase_C: number;
  readonly nodes_per_d: number;
  readonly usual_frac: number;
  readonly slow: "no" | "hardly" | "stopped";
}

export function paceToday(growing: Growing, sight: Sight, at_ms: number): Pace {
  const clockwork = clockworkOf(growing, sight);
  const day = dayGrowth(sight.airAt(sight.plant.spot, sight.dateOf(at_ms)), clockwork);
  const usual = clockwork.nodePace(USUAL_C);
  const nodes_per_d = day.nodes.day;
  const usual_frac = usual > 0 ? Math.min(1, nodes_per_d / usual) : 0;
  return {
    air_C: day.air_C,
    warmth_Cd: day.development.day,
    nodeWarmth_Cd: nodes_per_d * clockwork.nodes.plastochron_Cd,
    nodeBase_C: clockwork.nodes.base_C,
    nodes_per_d,
    usual_frac,
    slow: usual_frac < NOTHING_frac ? "stopped" : usual_frac < HARDLY_frac ? "hardly" : "no",
  };
}

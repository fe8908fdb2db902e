import type { HowGood } from "@sillwood/bench/issued";
import type { PlantView } from "@sillwood/bench/pages";
import { iso } from "./instants.ts";

/** How good kept forecasts have been, one for each work. */
export const howGoodShape = ({ score, ...good }: HowGood) => ({
  work: good.work,
  said: [good.said, good.compared, ...good.waits].filter(Boolean).join(" "),
  few: good.few,
  n: score?.n ?? 0,
  from: score ? iso(score.first_ms) : null,
  to: score ? iso(score.last_ms) : null,
  held_n: score?.held_n ?? 0,
  held_frac: score?.held_frac ?? null,
  crps_d: score?.crps_d ?? null,
  off_d: score?.off_d ?? null,
  late_d: score?.late_d ?? null,
  range_d: score?.range_d ?? null,
  truthSd_d: score?.truthSd_d ?? null,
  weighed_n: score?.weighed_n ?? 0,
  sameAgain: score?.sameAgain ?? null,
  waiting_n: good.waiting_n,
  unseen_n: good.unseen_n,
  unsure_n: good.unsure_n,
  unforecast_n: good.unforecast_n,
  unreadable_n: good.unreadable_n,
});

/** What a craft expects of each of the coming days, by name: amounts over stretches that end at local midnights. */
export function byDayShape(view: PlantView | undefined, craft: string) {
  const daily = view?.outlooks.find((one) => one.craft === craft)?.outlook.daily;
  if (!daily) return {};
  return {
    [daily.name]: daily.stretches.map(({ date, from_ms, to_ms, mean, sd, p10, p90 }) => ({
      date,
      from: iso(from_ms),
      to: iso(to_ms),
      mean,
      sd,
      p10,
      p90,
    })),
  };
}

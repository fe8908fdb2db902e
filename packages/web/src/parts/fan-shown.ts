import type { Fan } from "@sillwood/bench/crafts";
import type { UnitSystem } from "@sillwood/bench/words";
import { shownUnit } from "../pages/fields/shown-unit.ts";

/** A chart as its reader counts: every value in the unit that stands beside its name. */
export interface ShownFan extends Fan {
  /** Decimals that tell one value from the next. */
  readonly digits_n: number;
}

/** Turns a chart of kept units into one of the person's. */
export function fanShown(chart: Fan, units: UnitSystem): ShownFan {
  const { symbol, shown } = shownUnit(chart.unit, units);
  if (symbol === chart.unit) return { ...chart, digits_n: 0 };
  return {
    ...chart,
    unit: symbol,
    digits_n: 1,
    past: chart.past.map(({ at_ms, value }) => ({ at_ms, value: shown(value) })),
    ahead: chart.ahead.map(({ at_ms, p10, p25, p50, p75, p90 }) => ({
      at_ms,
      p10: shown(p10),
      p25: shown(p25),
      p50: shown(p50),
      p75: shown(p75),
      p90: shown(p90),
    })),
    ...(chart.threshold ? { threshold: { ...chart.threshold, value: shown(chart.threshold.value) } } : {}),
  };
}

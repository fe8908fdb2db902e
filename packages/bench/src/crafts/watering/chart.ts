import { CAPACITY, meanOf, quantileOf } from "@sillwood/science/water";
import type { Fan, Outward } from "../craft.ts";
import type { WaterForecast } from "./forecast.ts";
import { demandOrigin } from "./origins.ts";
import { wateringWords } from "./words.ts";

/** Water left against time: behind as believed, ahead as a fan of draws. */
export function waterChart(forecast: WaterForecast, sight: Outward): Fan {
  const words = wateringWords(sight.say);
  const { slice, draws, ends_ms } = forecast;
  const capacity_g = meanOf(slice.state, CAPACITY);
  const ahead = draws.held_g.map((held_g, day) => ({
    at_ms: ends_ms[day] as number,
    p10: quantileOf(held_g, 0.1),
    p25: quantileOf(held_g, 0.25),
    p50: quantileOf(held_g, 0.5),
    p75: quantileOf(held_g, 0.75),
    p90: quantileOf(held_g, 0.9),
  }));
  return {
    name: words.chart.name,
    unit: "g",
    past: slice.past.map(({ at_ms, held_g }) => ({ at_ms, value: held_g })),
    ahead,
    threshold: { value: (1 - forecast.threshold_frac) * capacity_g, said: words.chart.waterHere },
    events: [
      ...slice.pours.map((pour) => ({
        at_ms: pour.at_ms,
        letter: words.letter.watered,
        said: words.watered({ volume_mL: pour.volume_mL, drained: pour.drained }),
      })),
      ...slice.weights.map((weight) => ({
        at_ms: weight.at_ms,
        letter: words.letter.weighed,
        said: words.weighed({ weight_g: weight.weight_g, state: weight.state }),
      })),
    ].sort((a, b) => a.at_ms - b.at_ms),
    origin: demandOrigin(slice),
  };
}

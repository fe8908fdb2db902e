import type { DeviceId, PlantId } from "@sillwood/bench/book";
import { penOf } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite, deskAt } from "@sillwood/bench/pages";
import { growingExposure, pestPace } from "@sillwood/science/pests";

const ASKED = { now_ms: Date.UTC(2026, 2, 12, 8), language: "en", units: "metric" } as const;
const CAREFUL_frac = 0.3;

/** First weekly clean look, lens and leaf turning, after which one aphid in two plants is ruled out to 95 %, at 20 °C. */
export function cleanDays(): { readonly computed_days_at_20C_careful: number } {
  const { rate_per_d, firstBirth_d } = pestPace({ pest: "green peach aphid", air_C: 20 });
  for (let day = 7; day <= 140; day += 7) {
    const looks_d = Array.from({ length: day / 7 }, (_, i) => 7 * (i + 1));
    const seen = growingExposure({
      rate_per_d,
      lag_d: firstBirth_d / 2,
      sight_frac: CAREFUL_frac,
      founders_n: 1,
      looks_d,
      odds: 1,
    });
    if (seen.free_frac >= 0.95) return { computed_days_at_20C_careful: day };
  }
  return { computed_days_at_20C_careful: Number.POSITIVE_INFINITY };
}

/** What a find of gnats asks of today's round at a grown plant: looks, and nothing that can't wait. */
export function gnatUrgency(): { readonly urgency: string } {
  const site = assumedSite("Europe/Berlin", ASKED);
  const ledger = createLedger({ crafts, site });
  const plant = "01980000-0000-7000-8000-00000000000b" as PlantId;
  const pen = penOf({
    device: "01980000-0000-7000-8000-00000000000a" as DeviceId,
    by: "01980000-0000-7000-8000-00000000000a",
    zone: site.zone,
    kinds: ledger.kinds,
    now_ms: () => ASKED.now_ms - 8 * 86_400_000,
    random: () => 0.5,
  });
  ledger.add([
    pen.write({ kind: "plant.brought", on: [plant], data: { habit: "thin", medium: "spongy" } }),
    pen.write({
      kind: "scouting.looked",
      on: [plant],
      data: { way: "eye", stem: true, found: [{ pest: "fungus gnat", count_n: 3 }] },
    }),
  ]);
  const tasks =
    deskAt(ledger, ASKED)
      .view(plant)
      ?.tasks.filter(({ craft }) => craft === "scouting") ?? [];
  return { urgency: tasks.length > 0 && tasks.every(({ must }) => !must) ? "low for grown plants" : "high" };
}

import type { DeviceId, Json, PlantId } from "@sillwood/bench/book";
import { penOf } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite, deskAt } from "@sillwood/bench/pages";

const START_ms = Date.UTC(2026, 2, 12, 8);
const DAY_ms = 86_400_000;
const ASKED = { now_ms: START_ms, language: "en", units: "metric" } as const;
const SITE = assumedSite("Europe/Berlin", ASKED);
const PLANT = "01980000-0000-7000-8000-00000000000b" as PlantId;

/** Days after potting on which a pot is fed when every day does what is advised: a growing plant on a sill. */
function feedDays(until_d: number): readonly number[] {
  const ledger = createLedger({ crafts, site: SITE });
  let at_ms = START_ms;
  const pen = penOf({
    device: "01980000-0000-7000-8000-00000000000a" as DeviceId,
    by: "01980000-0000-7000-8000-00000000000a",
    zone: SITE.zone,
    kinds: ledger.kinds,
    now_ms: () => at_ms,
    random: () => 0.5,
  });
  const write = (kind: string, data: Json) => ledger.add([pen.write({ kind, on: [PLANT], data })]);
  write("plant.brought", {
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
  });
  const days: number[] = [];
  for (let day = 1; day <= until_d; day++) {
    at_ms = START_ms + day * DAY_ms;
    // Somebody mixes a tank of what the sheet aims at in leaf, once a week.
    if (day % 6 === 1)
      write("feeding.mixed", {
        tank: "A",
        volume_L: 4,
        doses: [],
        solution: { NO3N_mg_L: 130, P_mg_L: 15, K_mg_L: 140, Ca_mg_L: 60, Mg_mg_L: 20 },
        expected_mS_cm: 1.5,
      });
    const tasks = deskAt(ledger, { ...ASKED, now_ms: at_ms }).view(PLANT)?.tasks ?? [];
    const due = (work: string) =>
      tasks.find((task) => task.work === work && task.best_ms <= at_ms + DAY_ms / 2);
    const task = due("feed") ?? due("water");
    if (!task) continue;
    if (task.work === "feed") days.push(day);
    write(task.act.kind, task.act.data);
  }
  return days;
}

/** Rhythm in spent medium: the middle time from one feed to the next. */
export function feedRhythm() {
  const days = feedDays(90);
  const gaps = days
    .slice(1)
    .map((day, at) => day - (days[at] as number))
    .toSorted((one, other) => one - other);
  return { feed_interval_d: gaps[gaps.length >> 1] };
}

/** When a freshly potted plant is first fed. */
export const firstFeed = () => ({ first_feed_day_after_potting: feedDays(60)[0] });

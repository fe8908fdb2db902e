import type { Json, PlantId } from "@sillwood/bench/book";
import { penOf } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import type { FruitPage } from "@sillwood/bench/crafts/fruiting";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite, craftPage, deskAt } from "@sillwood/bench/pages";
import type { CheckRow } from "../src/row.ts";

/** Habits of the trade on fruit, held against what the page says to a grower. Common practice, no source. */
const NOW_ms = Date.UTC(2026, 2, 12, 8);
const ASKED = { now_ms: NOW_ms, language: "en", units: "metric" } as const;
const SITE = assumedSite("Europe/Berlin", ASKED);
const PLANT = "01980000-0000-7000-8000-00000000000b" as PlantId;

/** A small trained plant of three stems on a south sill, its buds on each, as the page shows it. */
async function smallPlant(habit: string, buds_n: number, brushed: boolean): Promise<FruitPage> {
  const ledger = createLedger({ crafts, site: SITE });
  let at_ms = NOW_ms - 9 * 86_400_000;
  const pen = penOf({
    device: "01980000-0000-7000-8000-00000000000a" as never,
    by: "01980000-0000-7000-8000-00000000000a",
    zone: SITE.zone,
    kinds: ledger.kinds,
    now_ms: () => at_ms,
    random: () => 0.5,
  });
  const write = (kind: string, on: string, data: Json) => ledger.add([pen.write({ kind, on: [on], data })]);
  write("bench.laid", "sill", {
    name: "Sill",
    place: "sill",
    outdoors: false,
    order_n: 0,
    spots: [{ id: "s", name: "1" }],
    windowFaces_deg: 180,
  });
  write("plant.brought", PLANT, {
    habit,
    medium: "spongy",
    pot: { form: "round", top_cm: 15, depth_cm: 12 },
    spot: "s",
  });
  for (const branch of ["A", "B", "C"]) {
    write("plant.branched", PLANT, { branch, thickness_mm: 6, length_cm: 12, lean_deg: 50, wood: "semi" });
    write("fruiting.counted", PLANT, { branch, fruits_n: buds_n });
  }
  at_ms = NOW_ms - 3_600_000;
  write("fruiting.flowered", PLANT, { open_n: 3 });
  if (brushed) write("fruiting.brushed", PLANT, { open_n: 3 });
  return (await craftPage(deskAt(ledger, ASKED), "fruiting", { plant: PLANT })) as FruitPage;
}

// A binding answers at once while the page of a craft is loaded on demand: what rows of these shapes ask is asked ahead.
const HABITS = ["thin", "fat", "lantern"] as const;
const ahead = new Map<number, readonly FruitPage[]>();
for (const buds_n of [3, 4, 5, 6])
  ahead.set(buds_n, await Promise.all(HABITS.map((habit) => smallPlant(habit, buds_n, false))));
const still = await smallPlant("thin", 1, false);
const brushed = await smallPlant("thin", 1, true);

/** Fruits kept on the best stem, fewest and most over the kinds of medium and large fruit. */
export function keptOnStem(row: CheckRow) {
  const pages = ahead.get(row.inputs["buds_on_stem"] as number);
  const kept =
    pages?.map(({ plant }) => Math.max(...(plant?.branches ?? []).map(({ keep_n }) => keep_n))) ?? [];
  return kept.length === 0
    ? {}
    : { keep_count: kept, keep_low: Math.min(...kept), keep_high: Math.max(...kept) };
}

/** Chance of set in still air, where it is below that of a brushed flower, and neither is certain. */
export function setIndoors() {
  const alone = still.plant?.set.working.value ?? Number.NaN;
  const byHand = brushed.plant?.set.working.value ?? Number.NaN;
  const isClear = alone < 0.6 * byHand && byHand < 1;
  return { set_share: isClear ? alone : undefined, set_share_below_1: isClear };
}

/** The stage at which the page tells to pick hot kinds; the fat-fruited, eaten green, may be picked so. */
export function pickedStage() {
  const [thin, fat, lantern] = ahead.get(4) as readonly FruitPage[];
  const hot = [thin?.plant?.pickStage, lantern?.plant?.pickStage];
  return {
    hot_types:
      hot.every((stage) => stage === "ripe") && fat?.plant?.pickStage === "green or ripe"
        ? "ripe"
        : undefined,
  };
}

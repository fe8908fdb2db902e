import type { DeviceId, PlantId } from "@sillwood/bench/book";
import { penOf } from "@sillwood/bench/book";
import { type AnyCraft, crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite, deskAt, firstAnswer } from "@sillwood/bench/pages";
import { rewettingPlan } from "@sillwood/science/water";
import type { Binding, CheckRow } from "../src/row.ts";
import { budBelowCutBreaks } from "./trade-cuts.ts";
import { feedRhythm, firstFeed } from "./trade-feed.ts";
import { keptOnStem, pickedStage, setIndoors } from "./trade-fruit.ts";
import { cleanDays, gnatUrgency } from "./trade-pests.ts";
import { coldMedium, repotting } from "./trade-potting.ts";

/**
 * Habits of the trade, held against what a person would be told: the whole engine is asked, not a formula.
 * All of them are common practice, no source.
 */
const NOW_ms = Date.UTC(2026, 2, 12, 8);
const ASKED = { now_ms: NOW_ms, language: "en", units: "metric" } as const;
const SITE = assumedSite("Europe/Berlin", ASKED);
/** What each craft can say of troubles, in the order of the registry. */
const troubles = await Promise.all(crafts.map((craft: AnyCraft) => craft.wrong?.()));
const number = (row: CheckRow, key: string) => row.inputs[key] as number;

/** The first answer of a newcomer: use a day with its 80 % range, before any weighing. */
function usualUse(row: CheckRow) {
  const pot = {
    form: "round",
    top_cm: number(row, "pot_top_cm"),
    depth_cm: number(row, "pot_depth_cm"),
  } as const;
  const page = firstAnswer(
    crafts,
    { habit: "unknown", pot, medium: "spongy", place: { window_deg: 180 } },
    SITE,
    ASKED,
  );
  const figures = page?.figures["watering"] ?? {};
  return {
    use_mL_d_80pct_must_cover: [figures["useLow_g_d"], figures["useHigh_g_d"]],
    use_mL_d_median: figures["use_g_d"],
  };
}

/** A plant that has hung in a dry pot: what both the desk and the round say, and when to look again. */
function afterWilting(row: CheckRow) {
  const plant = "01980000-0000-7000-8000-00000000000b" as PlantId;
  const ledger = createLedger({ crafts, site: SITE });
  const wilted_ms = NOW_ms - number(row, "days_wilted") * 86_400_000;
  let at_ms = wilted_ms - 9 * 86_400_000;
  const pen = penOf({
    device: "01980000-0000-7000-8000-00000000000a" as DeviceId,
    by: "01980000-0000-7000-8000-00000000000a",
    zone: SITE.zone,
    kinds: ledger.kinds,
    now_ms: () => at_ms,
    random: () => 0.5,
  });
  const write = (kind: string, data: never) => ledger.add([pen.write({ kind, on: [plant], data })]);
  write("plant.brought", {
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
  } as never);
  at_ms = wilted_ms;
  write("watering.looked", { look: "drooping", yes: true } as never);
  const desk = deskAt(ledger, ASKED);
  const view = desk.view(plant);
  const seen = ["droops", "light pot"];
  const signs = troubles.flatMap((wrong, n) =>
    view && wrong ? wrong.signs(view.state.slices[n], view.outwards[n] as never, seen) : [],
  );
  const first = signs.toSorted((one, other) => other.weight - one.weight)[0];
  const said = JSON.stringify(first?.doNot ?? []);
  const pours = desk.view(plant)?.tasks.find(({ work }) => work === "water")?.pours ?? [];
  const slow = pours.length >= 2 && /discard|throw/.test(said) && /feed/.test(said);
  return { recheck_within_h: slow ? first?.lookAgainIn_h : undefined };
}

function dryMedium(row: CheckRow) {
  const store_g = 250;
  const plan = rewettingPlan({
    depletion_g: number(row, "r_depletion") * store_g,
    store_g,
    leaching_frac: 0,
    rewetting: "peat",
  });
  return { pours: plan.pours_g.length, wait_min: plan.wait_min };
}

export const binding: Binding = {
  field: "trade",
  compute(row) {
    if ("pot_top_cm" in row.inputs) return usualUse(row);
    if ("days_wilted" in row.inputs) return afterWilting(row);
    if ("r_depletion" in row.inputs) return dryMedium(row);
    if ("months_since_potting" in row.inputs) return repotting();
    if ("indoor_C" in row.inputs) return coldMedium(row);
    if ("bud_below_cut_breaks" in row.expect) return budBelowCutBreaks();
    if ("buds_on_stem" in row.inputs) return keptOnStem(row);
    if ("set_share_below_1" in row.expect) return setIndoors();
    if ("hot_types" in row.expect) return pickedStage();
    if ("pest" in row.inputs) return cleanDays();
    if ("urgency" in row.expect) return gnatUrgency();
    if ("label_examples_NPK" in row.inputs) return feedRhythm();
    if ("medium_age_d" in row.inputs) return firstFeed();
    return {};
  },
  waits: (row) => {
    if ("pest" in row.inputs || "urgency" in row.expect) return undefined;
    if ("label_examples_NPK" in row.inputs || "medium_age_d" in row.inputs) return undefined;
    if (["set_share_below_1", "hot_types"].some((key) => key in row.expect) || "buds_on_stem" in row.inputs)
      return undefined;
    const built = ["pot_top_cm", "days_wilted", "r_depletion", "months_since_potting", "indoor_C"].some(
      (key) => key in row.inputs,
    );
    return built || "bud_below_cut_breaks" in row.expect
      ? undefined
      : "concerns a craft that is not built yet";
  },
};

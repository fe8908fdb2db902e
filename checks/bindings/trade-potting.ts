import type { DeviceId, PlantId } from "@sillwood/bench/book";
import { penOf } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger } from "@sillwood/bench/house";
import { assumedSite, craftPage, deskAt } from "@sillwood/bench/pages";
import type { CheckRow } from "../src/row.ts";

const NOW_ms = Date.UTC(2026, 2, 12, 8);
const ASKED = { now_ms: NOW_ms, language: "en", units: "metric" } as const;
const SITE = assumedSite("Europe/Berlin", ASKED);

/** One plant in the usual pot, and a pen that writes about it at any instant. */
function onePlant(from_ms: number) {
  const plant = "01980000-0000-7000-8000-00000000000b" as PlantId;
  const ledger = createLedger({ crafts, site: SITE });
  let at_ms = from_ms;
  const pen = penOf({
    device: "01980000-0000-7000-8000-00000000000a" as DeviceId,
    by: "01980000-0000-7000-8000-00000000000a",
    zone: SITE.zone,
    kinds: ledger.kinds,
    now_ms: () => at_ms,
    random: () => 0.5,
  });
  const write = (then_ms: number, kind: string, data: object) => {
    at_ms = then_ms;
    ledger.add([pen.write({ kind, on: [plant], data: data as never })]);
  };
  write(from_ms, "plant.brought", {
    habit: "thin",
    medium: "spongy",
    pot: { form: "round", top_cm: 12, depth_cm: 9 },
  });
  return { plant, ledger, write };
}

/** A plant that has stood in its medium for so many months: whether a task says so, and how much wider its next pot may be. */
export function repotting() {
  const { plant, ledger } = onePlant(NOW_ms);
  const seen = [12, 15].map((months) => {
    const desk = deskAt(ledger, { ...ASKED, now_ms: NOW_ms + months * 30.44 * 86_400_000 });
    return { months, view: desk.view(plant) };
  });
  const due = seen.filter(({ view }) => view?.tasks.some(({ work }) => work === "repot"));
  const figures = seen[0]?.view?.outlooks.find(({ craft }) => craft === "potting")?.outlook.figures;
  return {
    repot_task_present_at_months: due.length === seen.length ? due.map(({ months }) => months) : [],
    next_pot_wider_cm: figures?.["widerAtMost_cm"],
  };
}

/** What a potting day says of a medium of this temperature; a frozen one can't even be written down. */
async function coldSteps(temperatures_C: readonly number[]) {
  return Promise.all(
    temperatures_C.map(async (medium_C) => {
      try {
        const { ledger, write } = onePlant(NOW_ms);
        write(NOW_ms + 60_000, "potting.prepared", { water_C: 18, medium_C, room_C: 20 });
        const desk = deskAt(ledger, { ...ASKED, now_ms: NOW_ms + 120_000 });
        const page = (await craftPage(desk, "potting", { what: "day" })) as {
          readonly warmth?: { readonly state: string };
        };
        return { medium_C, state: page.warmth?.state };
      } catch {
        return { medium_C, state: "refused" };
      }
    }),
  );
}
/** The page of a craft is loaded on demand, while a binding answers at once: what rows of this shape may ask is asked ahead. */
const coldAsked = await coldSteps([10, 12.8, 15.6, 4.4, -1.1]);

export function coldMedium(row: CheckRow) {
  const stateOf = (medium_C: number) => coldAsked.find((each) => each.medium_C === medium_C)?.state;
  const bounds = row.bounds ?? {};
  const all = (key: string, state: string) =>
    (bounds[key] ?? []).every((medium_C) => medium_C !== null && stateOf(medium_C) === state);
  return {
    passes_with_note_C: all("passes_with_note_C", "note") || undefined,
    refused_C: all("refused_C", "refused") || undefined,
  };
}

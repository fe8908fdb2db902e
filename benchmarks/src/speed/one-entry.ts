import type { Entry, PlantId } from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, type Ledger } from "@sillwood/bench/house";
import { assumedSite, type Desk, deskAt, plantPage } from "@sillwood/bench/pages";
import { theRound } from "@sillwood/bench/round";
import { type BigBookSize, bigBook } from "./big-book.ts";
import { median } from "./measured.ts";

/** What one new entry costs a book that is open, and whether its pages are those of a fold from nothing. */
export interface OneEntrySpeed {
  readonly plant_ms: number;
  readonly fastest_ms: number;
  readonly refold_ms: number;
  /** All other plants of its bench, after the page. */
  readonly bench_ms: number;
  readonly neighbours_n: number;
  readonly pages_n: number;
  readonly differing_n: number;
}

const ASKED = { language: "en", units: "metric" } as const;
const MINUTE_ms = 60_000;

/** Weighs a few plants one after another and asks each time for the page, then for the rest of the bench. */
export function oneEntrySpeed(size: BigBookSize, times_n: number): OneEntrySpeed {
  const book = bigBook(size);
  const entries = [...book.portions()].flat().map(({ text }) => JSON.parse(text) as Entry);
  const fold = (more: readonly Entry[]): Ledger => {
    const ledger = createLedger({ crafts, site: assumedSite("UTC", ASKED) });
    ledger.add([...entries, ...more]);
    for (const { file, text } of book.series) ledger.addSeries(file, text);
    return ledger;
  };
  const start_ms = performance.now();
  const ledger = fold([]);
  for (const plant of ledger.plants()) ledger.lastState(plant);
  const refold_ms = performance.now() - start_ms;
  theRound(deskAt(ledger, { now_ms: size.until_ms, ...ASKED }));
  const pattern = entries.findLast(({ kind }) => kind === "watering.weighed") as Entry;
  const added: Entry[] = [];
  const pages: { plant: PlantId; now_ms: number; text: string }[] = [];
  const [plant_ms, bench_ms, neighbours_n]: number[][] = [[], [], []];
  for (let i = 0; i < times_n; i++) {
    const plants = ledger.plants();
    const plant = plants[Math.floor(((i + 0.5) / times_n) * plants.length)] as PlantId;
    const now_ms = size.until_ms + (i + 1) * MINUTE_ms;
    const at_ms = now_ms - MINUTE_ms / 2;
    const id = `${(at_ms.toString(16).padStart(12, "0")).replace(/^(.{8})/, "$1-")}${pattern.id.slice(13)}`;
    const entry = { ...pattern, id: id as Entry["id"], at_ms, on: [plant] };
    added.push(entry);
    const start_ms = performance.now();
    ledger.add([entry]);
    const desk = deskAt(ledger, { now_ms, ...ASKED });
    const page = plantPage(desk, plant);
    const page_ms = performance.now();
    const others = neighboursOf(desk, plant);
    for (const other of others) desk.view(other);
    const end_ms = performance.now();
    plant_ms?.push(page_ms - start_ms);
    bench_ms?.push(end_ms - page_ms);
    neighbours_n?.push(others.length);
    pages.push({ plant, now_ms, text: JSON.stringify(page) });
    for (const other of others.slice(0, 5))
      pages.push({ plant: other, now_ms, text: JSON.stringify(plantPage(desk, other)) });
  }
  return {
    plant_ms: median(plant_ms ?? []),
    fastest_ms: Math.min(...(plant_ms ?? [])),
    refold_ms,
    bench_ms: median(bench_ms ?? []),
    neighbours_n: median(neighbours_n ?? []),
    pages_n: pages.length,
    differing_n: differing(fold, added, pages),
  };
}

/** Pages that a fold from nothing, of what the book held at that moment, would have drawn otherwise. */
function differing(
  fold: (more: readonly Entry[]) => Ledger,
  added: readonly Entry[],
  pages: readonly { readonly plant: PlantId; readonly now_ms: number; readonly text: string }[],
): number {
  let differing_n = 0;
  const moments = [...new Set(pages.map(({ now_ms }) => now_ms))];
  // Each refold of a big book takes seconds: the first, the middle and the last moment are looked at.
  const looked = new Set([moments[0], moments[moments.length >> 1], moments.at(-1)]);
  for (const now_ms of moments.filter((moment) => looked.has(moment))) {
    const desk = deskAt(fold(added.filter(({ at_ms }) => at_ms < now_ms)), { now_ms, ...ASKED });
    for (const page of pages)
      if (page.now_ms === now_ms && JSON.stringify(plantPage(desk, page.plant)) !== page.text) differing_n++;
  }
  return differing_n;
}

function neighboursOf(desk: Desk, plant: PlantId): readonly PlantId[] {
  const { benchOfSpot } = desk.ledger.house().places;
  const benchOf = (one: PlantId) => benchOfSpot.get(desk.facts(one)?.spot ?? "");
  const bench = benchOf(plant);
  return desk.living().filter((one) => one !== plant && benchOf(one) === bench);
}

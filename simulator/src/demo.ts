import { benchReadings } from "./book/bench-readings.ts";
import { bookWriter } from "./book/book-writer.ts";
import { lineText } from "./book/line.ts";
import type { Names } from "./book/notes-to-book.ts";
import { demoAir } from "./demo/air.ts";
import { BENCHES, COLD, CULTIVARS, ROLES, SHELF, SILL, SITE } from "./demo/cast.ts";
import { fruitWritten } from "./demo/fruit.ts";
import { lightWritten } from "./demo/light.ts";
import { demoPots } from "./demo/pots.ts";
import { scoutingWritten } from "./demo/scouting.ts";
import { liveThrough } from "./demo/season.ts";
import { demoSeries } from "./demo/series.ts";
import { grower, type Hands, type Pending, settingUp } from "./demo/setting-up.ts";
import { shapesWritten } from "./demo/shape.ts";
import { writeNotes } from "./demo/slips.ts";
import { stories } from "./demo/stories.ts";
import type { BenchAir } from "./nursery/bench-air.ts";
import { dateAt, dayAfter, HOUR_ms, instantOf, type LocalDay, localDays } from "./nursery/calendar.ts";
import { chanceOf } from "./nursery/chance.ts";
import { copyOf, potAvailable_g, potDepletion_g } from "./nursery/potted-plant.ts";
import { shiftTo } from "./seattle.ts";

export interface DemoAsk {
  /** The demo day's present, epoch milliseconds; nothing in the book is later. */
  readonly now_ms: number;
  readonly seed: number;
}

export interface DemoBook {
  /** One entry each, in the order in which they were typed; canonical JSON. */
  readonly entries: readonly string[];
  /** Text of the series files by lower-case SHA-256. */
  readonly files: ReadonlyMap<string, string>;
  readonly people: { readonly grower: string; readonly helper: string };
  /** The hidden state on the demo day, for tests. */
  readonly truth: readonly DemoTruth[];
}

export interface DemoTruth {
  readonly plant: string;
  readonly number: number;
  readonly bench: string;
  readonly depletion_g: number;
  readonly available_g: number;
}

const HISTORY_d = 150;

/**
 * The book of an invented grower on the real weather of Seattle, about five months of it up to `now_ms`. The same
 * arguments give the same book.
 *
 * @throws RangeError when now_ms lies outside the years 2016 to 2190
 */
export function demoBook({ now_ms, seed }: DemoAsk): DemoBook {
  if (!(now_ms >= Date.UTC(2016, 0, 1) && now_ms < Date.UTC(2190, 0, 1)))
    throw new RangeError(`now is ${now_ms} ms; expected the years 2016 to 2190`);
  const chance = chanceOf(`demo ${seed}`);
  const today = dateAt(SITE.zone, now_ms);
  const days = localDays(SITE.zone, dayAfter(today, -HISTORY_d), HISTORY_d + 1);
  const first = days[0] as LocalDay;
  const shift_years = shiftTo(today);
  const benches = demoAir(days, shift_years, chance.under("air"));
  const tended = demoPots(first.midnight_ms + 18 * HOUR_ms, days.length, chance.under("pots"));
  const started = tended.map((each) => ({ ...each, pot: copyOf(each.pot) }));
  const season = liveThrough(benches, tended, days, now_ms, chance.under("people"));

  const hands = handsOf(first, chance);
  const series = demoSeries(hands, days, benches, shift_years, now_ms, chance.under("series"));
  writeAll([
    ...settingUp(hands, first, started, chance.under("setting up")),
    ...stories(hands, days, started, chance.under("stories")),
    ...lightWritten(hands, days, chance.under("light")),
    ...fruitWritten(hands, days),
    ...shapesWritten(hands, days, chance.under("shapes")),
    ...scoutingWritten(hands, days),
    ...readings(hands, days, benches, chance),
    ...series.pending,
    ...writeNotes(hands, season.notes, (at_ms) => instantOf(SITE.zone, dateAt(SITE.zone, at_ms), 20.4)),
  ]);
  return {
    entries: hands.book.lines.map(lineText),
    files: series.files,
    people: { grower: hands.grower.id, helper: hands.helper.id },
    truth: season.truth.map(({ key, pot }) => ({
      plant: hands.names.plant(key),
      number: ROLES[key]?.number ?? 0,
      bench: BENCHES[pot.bench]?.id ?? "",
      depletion_g: potDepletion_g(pot),
      available_g: potAvailable_g(pot),
    })),
  };
}

function handsOf(first: LocalDay, chance: ReturnType<typeof chanceOf>): Hands {
  const book = bookWriter(SITE.zone, chance.under("book"));
  const at_ms = first.midnight_ms + 17 * HOUR_ms;
  const someone = () => ({ id: book.name(at_ms), device: book.name(at_ms) });
  const growerIs = someone();
  const helperIs = someone();
  const plants = ROLES.map(() => book.name(at_ms));
  const names: Names = {
    plant: (key) => plants[key] as string,
    bench: (index) => BENCHES[index]?.id ?? "",
    spot: (bench, place) => `${BENCHES[bench]?.id}-${place + 1}`,
    person: (key) => (key === "helper" ? helperIs : growerIs),
  };
  return {
    book,
    names,
    grower: growerIs,
    helper: helperIs,
    batches: { spring: book.name(at_ms), early: book.name(at_ms), late: book.name(at_ms) },
    cultivars: Object.fromEntries(CULTIVARS.map(({ key }) => [key, book.name(at_ms)])),
  };
}

/** The thermometer of the three rooms; the yard has the weather. What is said of their light stands in demo/light.ts. */
function readings(
  hands: Hands,
  days: readonly LocalDay[],
  benches: readonly BenchAir[],
  chance: ReturnType<typeof chanceOf>,
): Pending[] {
  return [SILL, SHELF, COLD].flatMap((bench) =>
    benchReadings(
      benches[bench] as BenchAir,
      bench,
      bench === SHELF ? "lamp" : "window",
      days.slice(0, -1),
      chance.under(`readings ${bench}`),
    )
      .filter(({ kind }) => kind === "bench.air")
      .map(({ at_ms, kind, data }) => grower(hands, at_ms, kind, [hands.names.bench(bench)], data)),
  );
}

/** Writes what is pending in the order of typing; what an act asks for later takes its turn among the rest. */
function writeAll(pending: readonly Pending[]): void {
  const queue = [...pending].sort((a, b) => a.typed_ms - b.typed_ms);
  for (let i = 0; i < queue.length; i++) {
    const more = queue[i]?.act() ?? [];
    for (const one of more) {
      let at = i + 1;
      while (at < queue.length && (queue[at] as Pending).typed_ms <= one.typed_ms) at++;
      queue.splice(at, 0, one);
    }
  }
}

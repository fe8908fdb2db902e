import {
  type AcceptedEntry,
  accept,
  acceptedKinds,
  type Clock,
  type DeviceId,
  type Entry,
  FIRST_CLOCK,
  type Pen,
  type Problem,
  penOf,
} from "@sillwood/bench/book";
import { crafts } from "@sillwood/bench/crafts";
import { createLedger, type Ledger, type Snapshot } from "@sillwood/bench/house";
import { FORECAST_ISSUED } from "@sillwood/bench/issued";
import { assumedSite, type Desk, deskAt, logLine } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import { answerAt } from "./answers.ts";
import type { Identity } from "./messages.ts";
import type { AnswerOf, ArgsOf, Asking, AsOf, QuestionName } from "./questions.ts";

/** The folded book in the worker: pure of storage and network, so that tests can hold one too. */
export interface Book {
  readonly ledger: Ledger;
  /** The latest logical clock in it. */
  readonly clock: Clock;
  add(entries: readonly Entry[]): void;
  addSeries(sha256: string, text: string): void;
  /** A file of forecasts kept as issued. */
  addIssued(sha256: string, text: string): void;
  /** The desk at which a question is answered now. */
  deskFor(asking: Asking): Desk;
  ask<Name extends QuestionName>(name: Name, args: ArgsOf<Name>, asking: Asking): Promise<AnswerOf<Name>>;
  /** Gives drafts their envelopes; all pass the gate or none does. */
  write(
    drafts: readonly Draft[],
    who: Pick<Identity, "device" | "person">,
    asking: Asking,
  ): { readonly accepted: readonly AcceptedEntry[] } | { readonly refused: readonly Problem[] };
  /** The sentence of each entry as the book says it. */
  said(entries: readonly Entry[], asking: Asking): readonly string[];
  /** The same for a draft that did not become an entry. */
  saidOf(draft: Draft, asking: Asking): string;
}

interface Standing {
  readonly revision: number;
  /** Language, units and zone in which it speaks. */
  readonly how: string;
  readonly at_ms: number;
  readonly desk: Desk;
}

/** A page asked within a minute of another stands at the same desk: nothing dries in a minute. */
const SAME_DESK_ms = 60_000;

/** @param snapshot a kept fold to start from: such a book answers, but has not got its history and must not be written into */
export function newBook(asking: Asking, random: () => number, snapshot?: Snapshot): Book {
  const site = assumedSite(asking.zone, asking);
  const ledger = createLedger({ crafts, site, ...(snapshot ? { snapshot } : {}) });
  const kinds = acceptedKinds(ledger.kinds);
  const entries: Entry[] = [];
  const series = new Map<string, string>();
  let lastClock: Clock | undefined;
  let pen: { readonly by: string; readonly zone: string; readonly pen: Pen } | undefined;
  let now_ms = asking.now_ms;
  let desk: Standing | undefined;

  function deskFor(asked: Asking): Desk {
    const { revision } = ledger;
    const how = `${asked.language} ${asked.units} ${asked.zone}`;
    if (desk?.revision !== revision || desk.how !== how || Math.abs(asked.now_ms - desk.at_ms) > SAME_DESK_ms)
      desk = { revision, how, at_ms: asked.now_ms, desk: deskAt(ledger, asked) };
    return desk.desk;
  }

  /** A change that no plant rests on leaves the desk: its plants need not be looked at again. */
  function besideDesk(change: () => void): void {
    const before = ledger.revision;
    change();
    if (desk?.revision === before) desk = { ...desk, revision: ledger.revision };
  }

  /** The book as it stood at an earlier moment, folded from nothing: a printed sheet is typed back seldom. */
  function deskAsOf(at_ms: number, asked: Asking): Desk {
    const earlier = createLedger({ crafts, site, at_ms });
    earlier.add(entries);
    for (const [sha256, text] of series) earlier.addSeries(sha256, text);
    return deskAt(earlier, { ...asked, now_ms: at_ms });
  }

  function penFor({ device, person }: Pick<Identity, "device" | "person">, zone: string): Pen {
    const by = `${device} ${person}`;
    if (pen?.by !== by || pen.zone !== zone) {
      const clock = pen?.pen.clock ?? lastClock;
      const options = { device: device as DeviceId, by: person, zone, kinds: ledger.kinds, random };
      pen = { by, zone, pen: penOf({ ...options, now_ms: () => now_ms, ...(clock ? { clock } : {}) }) };
    }
    return pen.pen;
  }

  return {
    ledger,
    get clock() {
      return pen?.pen.clock ?? lastClock ?? FIRST_CLOCK;
    },
    add(more) {
      entries.push(...more);
      for (const { clock } of more) {
        if (lastClock === undefined || clock > lastClock) lastClock = clock;
        pen?.pen.see(clock, now_ms);
      }
      if (more.every(({ kind }) => kind === FORECAST_ISSUED)) besideDesk(() => ledger.add(more));
      else ledger.add(more);
    },
    addIssued: (sha256, text) => besideDesk(() => ledger.addIssued(sha256, text)),
    deskFor,
    addSeries(sha256, text) {
      series.set(sha256, text);
      ledger.addSeries(sha256, text);
    },
    async ask(name, args, asked) {
      const { at_ms } = args as AsOf;
      const at = at_ms === undefined ? deskFor(asked) : deskAsOf(at_ms, asked);
      return answerAt(at, name, args);
    },
    write(drafts, who, asked) {
      now_ms = asked.now_ms;
      const own = penFor(who, asked.zone);
      const judged = drafts.map((draft) => accept(own.write(draft), kinds));
      const refused = judged.flatMap((result) => (result.ok ? [] : result.problems));
      if (refused.length > 0) return { refused };
      return { accepted: judged.filter((result) => result.ok) };
    },
    said(written, asked) {
      const at = deskFor(asked);
      return written.flatMap(({ id }) => {
        const line = logLine(at, id);
        return line ? [[line.on, line.said].filter(Boolean).join(" ")] : [];
      });
    },
    saidOf({ kind, on, data }, asked) {
      const { say } = deskFor(asked);
      const names = say.list(on.map((id) => say.name(id)));
      return `${names} ${ledger.kinds.find(kind)?.sentence(data, say, {} as Entry) ?? kind}`;
    },
  };
}

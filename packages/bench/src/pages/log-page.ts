import { parseClock } from "../book/clock.ts";
import type { Content } from "../book/correct.ts";
import type { Entry, EntryId } from "../book/entry.ts";
import type { AnyEntryKind } from "../book/kinds.ts";
import { inBookOrder, type Record } from "../house/records.ts";
import type { LogFilter, LogLine } from "../round/pages.ts";
import type { Desk } from "./desk.ts";
import { pageWords } from "./words.ts";

/** An entry typed so long after it happened says "written later" (our choice). */
const LATER_ms = 6 * 3_600_000;
const USUAL_MOST_n = 200;

/** The book as a log, newest first: who, when, which pot, one sentence; corrections ruled through, never erased. */
export function logPage(desk: Desk, filter: LogFilter = {}): readonly LogLine[] {
  const most_n = filter.most_n ?? USUAL_MOST_n;
  const records = filter.plant
    ? plantRecords(desk, filter.plant, filter, most_n)
    : [...desk.ledger.records()];
  const timed = records
    .map((record) => ({ record, at: timeOf(record) }))
    .filter(({ record, at }) => matches(desk, record, at, filter))
    .sort((a, b) => inBookOrder(b.at, a.at));
  return timed.slice(0, most_n).map(({ record, at }) => lineOf(desk, record, at));
}

/** One line by id, for the screen that puts it right. */
export function logLine(desk: Desk, id: EntryId): LogLine | undefined {
  const record = desk.ledger.record(id);
  return record && lineOf(desk, record, record.acting ?? record.standing.first);
}

const timeOf = (record: Record): Entry =>
  record.acting ?? { ...record.first, at_ms: record.standing.content.at_ms };

/** Enough of a plant's records for the newest lines; its line lies in book order, so that its end will do. */
function plantRecords(
  desk: Desk,
  plant: NonNullable<LogFilter["plant"]>,
  filter: LogFilter,
  most_n: number,
): Record[] {
  const events = desk.ledger.eventsOf(plant);
  const found: Record[] = [];
  for (let i = events.length - 1; i >= 0 && found.length < most_n; i--) {
    const record = desk.ledger.record(events[i]?.entry.id as EntryId);
    if (record && matches(desk, record, timeOf(record), filter)) found.push(record);
  }
  // Withdrawn entries no longer lie on the plant's line but stay in its log.
  return [...found, ...desk.ledger.idle().filter(({ standing }) => standing.content.on.includes(plant))];
}

function matches(desk: Desk, { kind }: Record, at: Entry, filter: LogFilter): boolean {
  if (
    at.at_ms > desk.now_ms &&
    filter.to_ms === undefined &&
    at.atFrom === "clock" &&
    at.at_ms > desk.now_ms + LATER_ms
  )
    return false;
  if (filter.craft && kind?.kind.split(".")[0] !== filter.craft) return false;
  if (filter.by && at.by !== filter.by) return false;
  if (filter.from_ms !== undefined && at.at_ms < filter.from_ms) return false;
  return filter.to_ms === undefined || at.at_ms < filter.to_ms;
}

function lineOf(desk: Desk, { standing, kind, idle, acting }: Record, at: Entry): LogLine {
  const { say, ledger } = desk;
  const words = pageWords(say);
  const { first, versions } = standing;
  const sentence = (content: Content) => sentenceOf(kind, content, desk, first);
  const earlier = versions
    .slice(0, -1)
    .map(({ said, content, state }, i) => ({
      said,
      content,
      state,
      next: versions[i + 1],
      afterNext: versions[i + 2],
    }))
    // What was withdrawn and taken back in stands as it stood, and what stays withdrawn is ruled through once, below.
    .filter(
      ({ state, next, afterNext }) =>
        state !== "withdrawn" &&
        next?.state !== "restored" &&
        !(next?.state === "withdrawn" && (!afterNext || afterNext.state === "restored")),
    )
    .map(({ said, content }) => ({
      said: sentence(content),
      by: say.name(said.by),
      at_ms: writtenAt_ms(said),
    }));
  const refused =
    kind?.growerOnly &&
    acting &&
    ledger.house().people.roles.get(first.by) !== "grower" &&
    ledger.house().people.roles.size > 0;
  const state =
    idle === "newer" || idle === "broken"
      ? "newer"
      : idle === "withdrawn"
        ? "withdrawn"
        : refused
          ? "request"
          : "in force";
  const on = standing.content.on;
  const written_ms = writtenAt_ms(first);
  return {
    id: first.id,
    kind: first.kind,
    at_ms: at.at_ms,
    date: ledger.calendar.dateOf(at.at_ms),
    time: say.time(at.at_ms),
    on:
      on.length === 1
        ? say.name(on[0] as string)
        : kind?.subject === "plant"
          ? words.plants(on.length)
          : say.list(on.map((id) => say.name(id))),
    onIds: on,
    ...(state === "withdrawn"
      ? {}
      : { said: state === "newer" ? words.newer() : sentence(standing.content) }),
    ruledThrough:
      state === "withdrawn"
        ? [
            ...earlier,
            {
              said: sentence(standing.content),
              by: say.name((versions[versions.length - 1] ?? { said: first }).said.by),
              at_ms: written_ms,
            },
          ].slice(-4)
        : earlier,
    by: say.name(first.by),
    ...(written_ms - at.at_ms > LATER_ms ? { writtenLater: words.writtenLater(say.day(written_ms)) } : {}),
    state,
    data: standing.content.data,
    files: first.files ?? [],
  };
}

function sentenceOf(kind: AnyEntryKind | undefined, content: Content, desk: Desk, first: Entry): string {
  if (!kind || content.v > kind.v) return pageWords(desk.say).newer();
  const data = content.v < kind.v ? (kind.upcast?.(content.v, content.data) ?? content.data) : content.data;
  try {
    return kind.sentence(data, desk.say, first);
  } catch {
    return pageWords(desk.say).unmet();
  }
}

/** When an entry was written: its logical clock, which never goes back. */
const writtenAt_ms = ({ clock, at_ms }: Entry) => parseClock(clock)?.at_ms ?? at_ms;

import type { PlantId } from "@sillwood/bench/book";
import { logPage } from "@sillwood/bench/pages";
import type { LogLine } from "@sillwood/bench/round";
import { readBook } from "../book/session.ts";
import { instantOf, WHEN_FORMS } from "../book/when.ts";
import { type Call, type Outcome, textOption } from "../command.ts";
import { TAIL_n } from "../entering/wrote.ts";
import { dataError, UsageError } from "../errors.ts";
import { askedShape } from "../shapes/asked-shape.ts";
import { iso } from "../shapes/instants.ts";
import { widthFor } from "../text/width.ts";
import { wrap } from "../text/wrap.ts";
import { findThing } from "../typed/find-thing.ts";
import { cliWords } from "../words/words.ts";

const MOST_n = 100_000;

/** The log, newest first: day, time, which plants, one sentence, who; corrections ruled through. */
export async function bookLog(call: Call, words: readonly string[]): Promise<Outcome> {
  if (words.length > 1) throw new UsageError("the log is of one plant, or of the whole book.");
  const reading = await readBook(call, { whole: true });
  const { desk, calendar, now_ms } = reading;
  const [word] = words;
  const found = word === undefined ? undefined : findThing(desk, "plant", word);
  if (found && "wrong" in found) throw dataError("plant", found.wrong, word);
  const day = (name: string) => {
    const text = textOption(call, name);
    if (text === undefined) return undefined;
    const at_ms = instantOf(text, calendar, now_ms);
    if (at_ms === undefined)
      throw new UsageError(`--${name} is ${JSON.stringify(text)}; expected ${WHEN_FORMS}.`);
    return at_ms;
  };
  const [from_ms, to_ms] = [day("from"), day("to")];
  const craft = textOption(call, "craft");
  const who = textOption(call, "by");
  const by = who === undefined ? undefined : personOf(who, desk.ledger.house().people.roles);
  const most_n = countOf(textOption(call, "most"));
  const lines = logPage(desk, {
    ...(found ? { plant: found.id as PlantId } : {}),
    ...(craft === undefined ? {} : { craft }),
    ...(by === undefined ? {} : { by }),
    ...(from_ms === undefined ? {} : { from_ms }),
    ...(to_ms === undefined ? {} : { to_ms }),
    ...(most_n === undefined ? {} : { most_n }),
  });
  return {
    json: { ...askedShape(reading), lines: lines.map(lineShape) },
    text: logText(lines, widthFor(call), cliWords(call.language).noEntries),
  };
}

function personOf(who: string, roles: ReadonlyMap<string, string>): string {
  const fitting = [...roles].filter(
    ([person, role]) => person === who || role === who || person.endsWith(who),
  );
  if (fitting.length !== 1)
    throw new UsageError(`--by is ${JSON.stringify(who)}; expected grower, helper or the id of one person.`);
  return (fitting[0] as [string, string])[0];
}

function countOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const count_n = /^\d{1,6}$/.test(text) ? Number(text) : 0;
  if (!(count_n >= 1 && count_n <= MOST_n))
    throw new UsageError(`--most is ${JSON.stringify(text)}; expected 1 to ${MOST_n}.`);
  return count_n;
}

const lineShape = (line: LogLine) => ({
  id: line.id,
  kind: line.kind,
  at: iso(line.at_ms),
  on: line.onIds,
  onSaid: line.on,
  said: line.said ?? null,
  by: line.by,
  state: line.state,
  writtenLater: line.writtenLater ?? null,
  ruledThrough: line.ruledThrough.map(({ said, by, at_ms }) => ({ said, by, at: iso(at_ms) })),
  data: line.data,
  files: line.files,
});

function logText(lines: readonly LogLine[], width_n: number, none: string): string {
  if (lines.length === 0) return none;
  const text: string[] = [];
  let day = "";
  for (const line of lines) {
    if (line.date !== day) {
      day = line.date;
      text.push(...(text.length > 0 ? [""] : []), day);
    }
    const old = line.ruledThrough.map(({ said }) => `-${said}-`).join(" ");
    const sentence = [line.time, line.on, old, line.said ?? `(${line.state})`].filter(Boolean).join("  ");
    const sign = [line.by, line.writtenLater].filter(Boolean).join(", ");
    text.push(...wrap(`${sentence} · ${sign} · ${line.id.slice(-TAIL_n)}`, width_n, 2, 9));
  }
  return text.join("\n");
}

import { penOf, readersFrom } from "@sillwood/bench/book";
import { forecastsToKeep, isIssueDue } from "@sillwood/bench/issued";
import type { Call } from "../command.ts";
import { deviceId } from "./device.ts";
import { gate, kinds } from "./kinds.ts";
import { judge, openBoth, type Reading } from "./session.ts";
import { writerOf } from "./writer.ts";

const readersOf = readersFrom(gate);

/**
 * The first round opened on a book day keeps its forecasts in the book as issued, so that they can be scored. A round of a past
 * moment keeps none, nor does somebody who may only look. The round has been shown by then and does not fail with it: a book
 * that another program is writing just now is tried again by the next round.
 */
export async function keepForecasts(call: Call, reading: Reading): Promise<void> {
  const { clock, desk, ledger, place, calendar } = reading;
  const { roles } = ledger.house().people;
  if (clock === undefined || roles.size === 0 || !isIssueDue(desk)) return;
  const by = writerOf(call, ledger, nobodyNew);
  if (roles.get(by) === "viewer") return;
  const open = await openBoth(place, () => undefined).catch(() => undefined);
  if (!open) return;
  try {
    const kept = forecastsToKeep(desk, await open.reading.summary(readersOf));
    if (!kept) return;
    const { now_ms, random } = call.around;
    const pen = penOf({
      device: deviceId(call.around),
      by,
      zone: calendar.zone,
      kinds,
      now_ms,
      random,
      clock,
    });
    const entries = judge(pen, [kept.draft]);
    await open.writer.putFile(kept.sha256, kept.type, new TextEncoder().encode(kept.text));
    await open.writer.append({ entries, redacted: [] });
  } catch (error) {
    call.around.err(`The day's forecasts could not be kept in the book: ${(error as Error).message}\n`);
  } finally {
    await open.close();
  }
}

const nobodyNew = (): never => {
  throw new Error("a book with people has a writer");
};

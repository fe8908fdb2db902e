import type { LogFilter, LogLine } from "@sillwood/bench/round";
import { useState, useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { zoneOf } from "../../device/settings.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./book.module.css";
import { DayOfLog } from "./day-of-log.tsx";
import { addDays } from "./days.ts";
import { EntrySlip } from "./entry-slip.tsx";
import { Filters, type Shown } from "./filters.tsx";
import { fromLocal_ms } from "./when.ts";

/** So many entries at first, and so many more with each press. */
const PAGE_n = 120;

/** Screen 4: a log as on a ship. */
export function LogScreen() {
  const { log: words } = useWords();
  const engine = useEngine();
  const settings = useSettings();
  const say = useSay();
  const [, go] = useLocation();
  const mark = useSyncExternalStore(engine.listen, engine.mark);
  const [shown, setShown] = useState<Shown>({});
  const [most_n, setMost] = useState(PAGE_n);
  const [opened, setOpened] = useState<LogLine>();
  const { value: log, error } = useAsk("log", { ...filterOf(shown, zoneOf(settings)), most_n });

  const keys = (
    <>
      <KeyRow>
        <Key
          pressed={shown.date !== undefined}
          onPress={() => setShown({ ...shown, date: shown.date === undefined ? "" : undefined })}
        >
          {shown.date === undefined ? words.findADay : words.everyDay}
        </Key>
        <Key onPress={() => go("/book/take")}>{words.export}</Key>
      </KeyRow>
      <Key main onPress={() => go("/write")}>
        {words.write}
      </Key>
    </>
  );
  const isFiltered = Object.values(shown).some((value) => value !== undefined && value !== "");
  return (
    <Frame where={words.title} keys={keys}>
      <Filters shown={shown} onShow={setShown} />
      {mark.away_n > 0 && (
        <p className={styles["onlyHere"]}>
          {words.onlyHere(mark.away_n, mark.oldest_ms === undefined ? "" : say.time(mark.oldest_ms))}
        </p>
      )}
      {!log && <ReadingNote error={error} />}
      {log?.length === 0 && <p className="serif">{isFiltered ? words.noneHere : words.empty}</p>}
      {log && byDay(log).map(([date, lines]) => <DayOfLog key={date} lines={lines} onOpen={setOpened} />)}
      {log?.length === most_n && (
        <KeyRow>
          <Key onPress={() => setMost(most_n + PAGE_n)}>{words.older}</Key>
        </KeyRow>
      )}
      {opened && <EntrySlip line={opened} onClose={() => setOpened(undefined)} />}
    </Frame>
  );
}

function filterOf({ craft, by, plant, date }: Shown, zone: string): LogFilter {
  const from_ms = date ? fromLocal_ms(date, "00:00", zone) : undefined;
  const to_ms = date ? fromLocal_ms(addDays(date, 1), "00:00", zone) : undefined;
  return {
    ...(craft ? { craft } : {}),
    ...(by ? { by } : {}),
    ...(plant ? { plant } : {}),
    ...(from_ms === undefined || to_ms === undefined ? {} : { from_ms, to_ms }),
  };
}

/** Lines come newest first; days stay in that order. */
export function byDay(lines: readonly LogLine[]): readonly (readonly [string, readonly LogLine[]])[] {
  const days = new Map<string, LogLine[]>();
  for (const line of lines) {
    const day = days.get(line.date);
    if (day) day.push(line);
    else days.set(line.date, [line]);
  }
  return [...days];
}

import type { LogLine } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation } from "wouter";
import { zoneOf } from "../../device/settings.ts";
import type { Engine } from "../../engine/client.ts";
import { nowMs } from "../../engine/clock.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./book.module.css";
import { BringIn } from "./bring-in.tsx";
import { logTable } from "./csv.ts";
import { localDate } from "./when.ts";
import { YearPrint } from "./year-print.tsx";
import { zipOf } from "./zip.ts";

/** Take it all: entries as plain files, the log as a table, the year on paper; and a book brought in. */
export function TakeOut() {
  const { take: words } = useWords();
  const engine = useEngine();
  const zone = zoneOf(useSettings());
  const [, go] = useLocation();
  const [year, setYear] = useState<{ readonly name: string; readonly lines: readonly LogLine[] }>();
  const today = localDate(nowMs(), zone);

  const whole = async () => {
    const { lines, files, entries_n } = await engine.takeOut();
    if (files.length === 0) save(lines, `sillwood-${today}.ndjson`);
    else
      save(
        zipOf([
          { name: "book.ndjson", bytes: new Uint8Array(await lines.arrayBuffer()) },
          ...files.map(({ sha256, bytes }) => ({ name: `files/${sha256}`, bytes: new Uint8Array(bytes) })),
        ]),
        `sillwood-${today}.zip`,
      );
    sayLast({ text: words.done(entries_n) });
  };
  const table = async () => {
    const lines = await allLines(engine);
    save(new Blob(["\uFEFF", logTable(lines)], { type: "text/csv" }), `sillwood-log-${today}.csv`);
    sayLast({ text: words.done(lines.length) });
  };
  const print = async () => {
    const name = today.slice(0, 4);
    setYear({ name, lines: (await allLines(engine)).filter(({ date }) => date.startsWith(name)) });
  };

  return (
    <Frame
      where={words.title}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => void table()}>{words.table}</Key>
            <Key onPress={() => void print()}>{words.print}</Key>
          </KeyRow>
          <Key main onPress={() => void whole()}>
            {words.whole}
          </Key>
        </>
      }
    >
      <div className={`${styles["steps"]} ${styles["onScreen"]}`}>
        <p className="serif measure">{words.said}</p>
        <BringIn />
        <KeyRow>
          <Key onPress={() => go("/book")}>{words.back}</Key>
        </KeyRow>
      </div>
      {year && <YearPrint name={year.name} lines={year.lines} onPrinted={() => setYear(undefined)} />}
    </Frame>
  );
}

const ALL_n = 10_000_000;
const allLines = (engine: Engine) => engine.ask("log", { most_n: ALL_n });

/** Hands a file to the browser's own way of keeping files. */
function save(blob: Blob, name: string): void {
  const url = URL.createObjectURL(blob);
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The browser has begun to read it by the next turn; the address must outlive that.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

import type { LogLine } from "@sillwood/bench/round";
import { useEffect } from "react";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./book.module.css";
import { Sentence } from "./day-of-log.tsx";
import { byDay } from "./log-screen.tsx";

interface YearPrintProps {
  readonly name: string;
  readonly lines: readonly LogLine[];
  readonly onPrinted: () => void;
}

/** The year book, two columns, oldest day first; only paper sees it. */
export function YearPrint({ name, lines, onPrinted }: YearPrintProps) {
  const { take: words } = useWords();
  const say = useSay();
  useEffect(() => {
    addEventListener("afterprint", onPrinted, { once: true });
    print();
    return () => removeEventListener("afterprint", onPrinted);
  }, [onPrinted]);
  return (
    <div className={styles["printed"]}>
      <h1>{words.printTitle(name)}</h1>
      {byDay([...lines].reverse()).map(([date, day]) => (
        <section key={date}>
          <h2>{say.day(day[0]?.at_ms ?? 0)}</h2>
          {day.map((line) => (
            <p key={line.id}>
              {line.time} <Sentence line={line} />
            </p>
          ))}
        </section>
      ))}
    </div>
  );
}

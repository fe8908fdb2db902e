import type { DayLine } from "@sillwood/bench/crafts";
import type { PlantPage } from "@sillwood/bench/round";
import type { Working } from "@sillwood/bench/working";
import { useState } from "react";
import { screensOf } from "../../crafts/index.ts";
import { Beads } from "../../parts/beads.tsx";
import { DayBar } from "../../parts/day-bar.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import styles from "./day-lines.module.css";

interface Props {
  readonly page: PlantPage;
  readonly onWorking: (working: Working) => void;
}

/** One row a craft over the same fourteen days; opening a row shows its twenty beads. */
export function DayLines({ page, onWorking }: Props) {
  const { plant: words, working: workingWords } = useWords();
  const slip = useSlip();
  const [opened, setOpened] = useState<{ readonly craft: string; readonly line: DayLine }>();
  const first = page.days[0];
  const last = page.days.at(-1);
  if (!first || !last || page.lines.length === 0) return null;
  const workingOf = ({ craft }: { readonly craft: string }) =>
    page.tasks.find((task) => task.craft === craft)?.working ?? page.workings[0];
  return (
    <section aria-label={words.days}>
      <ol className={styles["days"]} aria-hidden="true">
        {page.days.map(({ date, said }) => (
          <li key={date}>{said.slice(0, 2)}</li>
        ))}
      </ol>
      {page.lines.map(({ craft, line }) => {
        const Mark = screensOf(craft)?.mark;
        return (
          <button
            key={craft}
            type="button"
            className={styles["row"]}
            onClick={() => {
              setOpened({ craft, line });
              slip.open();
            }}
          >
            <span className={styles["name"]}>
              {Mark && <Mark />}
              {words.crafts[craft as keyof typeof words.crafts] ?? craft}
            </span>
            <span className={styles["said"]}>{line.said}</span>
            <span className={styles["bar"]}>
              <DayBar
                dates_ms={line.dates_ms}
                from_ms={first.from_ms}
                to_ms={last.to_ms}
                origin={line.origin}
                said={words.dayBar(line.said)}
              />
            </span>
          </button>
        );
      })}
      <Slip slip={slip} title={words.beads}>
        {opened && (
          <>
            <p className={styles["open"]}>{opened.line.said}</p>
            <Beads line={opened.line} days={page.days} />
            <KeyRow>
              <Key
                onPress={() => {
                  const working = workingOf(opened);
                  slip.close();
                  if (working) onWorking(working);
                }}
              >
                {workingWords.why} &gt;
              </Key>
            </KeyRow>
          </>
        )}
      </Slip>
    </section>
  );
}

import type { DayLine } from "@sillwood/bench/crafts";
import type { PlantPage } from "@sillwood/bench/round";
import { useState } from "react";
import { useWords } from "../words/words.ts";
import { beadsBefore, beadsByDay } from "./bead-days.ts";
import styles from "./beads.module.css";
import { Key, KeyRow } from "./key.tsx";

interface BeadsProps {
  readonly line: DayLine;
  readonly days: PlantPage["days"];
}

/** Twenty beads stacked on the days, each one chance in twenty, and a line that can be moved. */
export function Beads({ line, days }: BeadsProps) {
  const { plant } = useWords();
  const { columns, beyond_n } = beadsByDay(line.dates_ms, days);
  const [at_n, setAt] = useState(
    () =>
      Math.max(
        0,
        columns.findIndex((count_n) => count_n > 0),
      ) + 1,
  );
  const day = days[Math.min(at_n, days.length - 1)];
  const before_n = day ? beadsBefore(line.dates_ms, day.from_ms) : 0;
  return (
    <div>
      <p className="serif">{plant.beadsSaid}</p>
      <ol className={styles["beads"]}>
        {days.map(({ date, said }, place_n) => (
          <li key={date} className={`${styles["day"]} ${place_n === at_n ? styles["line"] : ""}`}>
            <span className={styles["stack"]} aria-hidden="true">
              {Array.from({ length: columns[place_n] ?? 0 }, (_, bead_n) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: beads are alike
                <span key={bead_n} className={`${styles["bead"]} ${styles[line.origin]}`} />
              ))}
            </span>
            <span className={styles["name"]} aria-hidden="true">
              {said.slice(0, 2)}
            </span>
            <span className="for-readers">
              {said}: {columns[place_n]}
            </span>
          </li>
        ))}
      </ol>
      {beyond_n > 0 && (
        <p className="serif">
          {beyond_n} {plant.beyond}
        </p>
      )}
      {day && (
        <p className={styles["said"]} aria-live="polite">
          {plant.beadsBefore(before_n, day.said)}
        </p>
      )}
      <KeyRow>
        <Key shut={at_n <= 0} onPress={() => setAt(at_n - 1)}>
          {plant.beadsEarlier}
        </Key>
        <Key shut={at_n >= days.length - 1} onPress={() => setAt(at_n + 1)}>
          {plant.beadsLater}
        </Key>
      </KeyRow>
    </div>
  );
}

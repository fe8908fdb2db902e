import type { Evidence } from "@sillwood/bench/crafts/scouting";
import styles from "./scout.module.css";
import { useScoutWords } from "./use-scout.ts";

const share = (value: number) => `${(100 * value).toFixed(1)}%`;

/** Evidence on a staff of three stretches: today's belief with its band, and where one more clean look would bring it. */
export function Staff({ lines }: { readonly lines: readonly Evidence[] }) {
  const words = useScoutWords();
  return (
    <div className={styles["staff"]}>
      <div className={styles["staffHead"]} aria-hidden="true">
        {words.staff.map((said) => (
          <span key={said}>{said}</span>
        ))}
      </div>
      {lines.map((line) => (
        <div key={line.key} className={styles["line"]} data-pest={line.key}>
          <div className={styles["bar"]} aria-hidden="true">
            <span className={styles["gate"]} style={{ insetInlineStart: share(1 / 3) }} />
            <span className={styles["gate"]} style={{ insetInlineStart: share(2 / 3) }} />
            <span
              className={styles["band"]}
              style={{
                insetInlineStart: share(line.low),
                width: share(Math.max(0.01, line.high - line.low)),
              }}
            />
            <span className={styles["ghost"]} style={{ insetInlineStart: share(line.ghost) }} />
            <span className={styles["belief"]} style={{ insetInlineStart: share(line.mid) }} />
          </div>
          <p>{words.alone(line.name, line.said, line.dateSaid)}</p>
        </div>
      ))}
    </div>
  );
}

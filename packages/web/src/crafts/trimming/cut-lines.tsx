import type { CutShown } from "@sillwood/bench/crafts/trimming";
import type { Working } from "@sillwood/bench/working";
import { Sourced } from "../../parts/origin.tsx";
import styles from "./trim.module.css";
import { useTrimWords } from "./use-trim.ts";

const LINES = ["takes", "brings", "opens", "loses", "outline", "again"] as const;

/** What one cut does, words first. */
export function CutLines({
  cut,
  onWorking,
}: {
  readonly cut: CutShown;
  readonly onWorking?: (working: Working) => void;
}) {
  const words = useTrimWords();
  return (
    <section className={styles["cutLines"]} aria-label={`${words.where} ${cut.letter ?? ""} ${cut.where}`}>
      <p>
        <strong>
          {words.where} {cut.letter} {cut.where}
        </strong>
      </p>
      {cut.why !== undefined && <p role="alert">{cut.why}</p>}
      <dl className={styles["lines"]}>
        {LINES.map((line) => (
          <div key={line}>
            <dt>{words[line]}</dt>
            <dd>
              {line === "takes" && onWorking ? (
                <Sourced origin={cut.working.origin} onOpen={() => onWorking(cut.working)}>
                  {cut.takes}
                </Sourced>
              ) : (
                cut[line]
              )}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

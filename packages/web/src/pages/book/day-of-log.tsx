import type { LogLine } from "@sillwood/bench/round";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./book.module.css";

/** One day of the log under its rule, newest first. */
export function DayOfLog({
  lines,
  onOpen,
}: {
  readonly lines: readonly LogLine[];
  readonly onOpen: (line: LogLine) => void;
}) {
  const say = useSay();
  const first = lines[0];
  if (!first) return null;
  return (
    <section>
      <h2 className={styles["day"]}>{say.day(first.at_ms)}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line.id}>
            <button type="button" className={styles["entry"]} onClick={() => onOpen(line)}>
              <time className={styles["time"]}>{line.time}</time>
              <Sentence line={line} />
              <span aria-hidden="true">&gt;</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What the entry says, with what it said before ruled through, each signed. */
export function Sentence({ line }: { readonly line: LogLine }) {
  const { log: words } = useWords();
  const say = useSay();
  const putRight = line.ruledThrough.length > 0 && line.state !== "withdrawn";
  return (
    <span className={styles["sentence"]}>
      <span className={styles["on"]}>{line.on}</span>{" "}
      {line.ruledThrough.map(({ said, by, at_ms }) => (
        <span key={`${said} ${at_ms}`}>
          <s>{said}</s>{" "}
          <span className={styles["signed"]}>
            {by}, {say.day(at_ms)} {say.time(at_ms)}
          </span>
        </span>
      ))}
      {line.said}
      {line.state === "withdrawn" && <em>{words.withdrawn}</em>}
      {line.state === "request" && <span className={styles["signed"]}>{words.request}</span>}
      <span className={styles["signed"]}>
        {[
          putRight ? words.putRightNow(line.by) : words.by(line.by),
          line.writtenLater,
          line.files.length > 0 && !line.kind.startsWith("series.") && words.photos(line.files.length),
        ]
          .filter(Boolean)
          .join(", ")}
      </span>
    </span>
  );
}

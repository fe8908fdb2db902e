import { Ledger, Row } from "../../parts/ledger.tsx";
import { useWords } from "../../words/words.ts";
import type { PageQuestions } from "../questions.ts";
import styles from "./read-list.module.css";

/** What stops the list, each by line and column; else the first rows as they will stand. */
export function Preview({ read }: { readonly read: PageQuestions["list"]["answer"] }) {
  const { list: words } = useWords();
  if (read.problems.length > 0)
    return (
      <section>
        <h2 className={styles["head"]}>
          {words.problems(new Set(read.problems.map(({ line }) => line)).size)}
        </h2>
        <Ledger>
          {read.problems.map(({ line, column, message }) => (
            <Row key={`${line} ${column} ${message}`}>{words.problem(line, column, message)}</Row>
          ))}
        </Ledger>
      </section>
    );
  return (
    <section>
      <h2 className={styles["head"]}>{words.firstRows(read.firstRows.length)}</h2>
      <ol className={styles["rows"]}>
        {read.firstRows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows of a file have no other name than their line
          <li key={i}>{row}</li>
        ))}
      </ol>
    </section>
  );
}

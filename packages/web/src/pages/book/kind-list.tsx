import { useLocation } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import type { KindShape } from "../fields/form-shape.ts";
import styles from "./book.module.css";

const LAST_n = 5;
const LOOKED_THROUGH_n = 120;

/** What kind of entry: the last five first, then all by what they are about. */
export function KindList({ on }: { readonly on: string | undefined }) {
  const { write: words, fields } = useWords();
  const [, go] = useLocation();
  const { value: kinds, error } = useAsk("kinds", {});
  const { value: log } = useAsk("log", { most_n: LOOKED_THROUGH_n });
  if (!kinds)
    return (
      <Frame where={words.title}>
        <ReadingNote error={error} />
      </Frame>
    );
  const writable = kinds.filter(({ subject }) => on === undefined || subject === "plant");
  const last = [...new Set(log?.map(({ kind }) => kind) ?? [])]
    .flatMap((kind) => writable.find((one) => one.kind === kind) ?? [])
    .slice(0, LAST_n);
  const rest = writable.filter((one) => !last.includes(one));
  const subjects = [...new Set(rest.map(({ subject }) => subject))];
  const rows = (list: readonly KindShape[], label: string) => (
    <Ledger label={label}>
      {list.map(({ kind }) => (
        <Row key={kind} onOpen={() => go(on ? `/write/${kind}/${on}` : `/write/${kind}`)}>
          {fields.kinds[kind] ?? kind}
        </Row>
      ))}
    </Ledger>
  );
  return (
    <Frame where={words.title}>
      <div className={styles["steps"]}>
        {last.length > 0 && (
          <section>
            <h2 className={styles["step"]}>{words.lastKinds}</h2>
            {rows(last, words.lastKinds)}
          </section>
        )}
        {subjects.map((subject) => (
          <section key={subject}>
            <h2 className={styles["step"]}>{words.about[subject] ?? subject}</h2>
            {rows(
              rest.filter((one) => one.subject === subject),
              words.about[subject] ?? subject,
            )}
          </section>
        ))}
      </div>
    </Frame>
  );
}

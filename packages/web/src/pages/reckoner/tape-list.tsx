import { Key, KeyRow } from "../../parts/key.tsx";
import { Sourced } from "../../parts/origin.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import styles from "./reckoner.module.css";
import { setTape, useTape } from "./tape.ts";

/** The paper tape: what was kept, oldest first. It prints as it stands. */
export function Tape() {
  const { reckoner: words } = useWords();
  const tape = useTape();
  if (tape.length === 0) return null;
  return (
    <section className={styles["tape"]}>
      <h2 className={styles["head"]}>{words.tape}</h2>
      <ol>
        {tape.map(({ title, said, origin }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines of a tape have no other name than their place
          <li key={i} className={styles["line"]}>
            <span className={styles["what"]}>{title}</span>
            <Sourced origin={origin}>{said}</Sourced>
          </li>
        ))}
      </ol>
      <KeyRow>
        <Key onPress={() => print()}>{words.printTape}</Key>
        <Key
          onPress={() => {
            setTape([]);
            sayLast({ text: words.tornOff, undo: () => setTape(tape) });
          }}
        >
          {words.tearOff}
        </Key>
      </KeyRow>
    </section>
  );
}

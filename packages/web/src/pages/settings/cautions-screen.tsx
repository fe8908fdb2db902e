import { Care } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";
import { Citations } from "./citations.tsx";

/** Everything that can hurt, in one place; each also stands before the step it belongs to. Sources and licence below. */
export function CautionsScreen() {
  const { settings: words } = useWords();
  return (
    <Frame where={words.cautions}>
      {words.cautionLines.map((line) => (
        <Care key={line} word={words.care}>
          {line}
        </Care>
      ))}
      <section className={styles["part"]}>
        <h2>{words.sources}</h2>
        {words.sourceLines.map((line) => (
          <p key={line} className={`serif ${styles["lead"]}`}>
            {line}
          </p>
        ))}
        <Citations />
      </section>
    </Frame>
  );
}

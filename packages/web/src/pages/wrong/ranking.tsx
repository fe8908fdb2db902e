import type { Sign } from "@sillwood/bench/crafts";
import { useWords } from "../../words/words.ts";
import styles from "./wrong.module.css";

const SHOWN_n = 4;

/** Likeliest first: a ranking, and said to be one. Each with what the book itself knows for and against it. */
export function Ranking({ signs }: { readonly signs: readonly Sign[] }) {
  const { wrong: words } = useWords();
  return (
    <section>
      <h2 className={styles["part"]}>{words.ranking}</h2>
      <ol className={styles["ranking"]}>
        {signs.slice(0, SHOWN_n).map(({ key, cause, evidence }, place_n) => (
          <li key={key}>
            <span className={styles["rank"]}>{place_n === 0 ? words.likeliest : words.then}</span>
            <span>
              <span className={styles["cause"]}>{cause}</span>
              {evidence.map((line) => (
                <p key={line} className={styles["evidence"]}>
                  {line}
                </p>
              ))}
            </span>
          </li>
        ))}
      </ol>
      <p className={styles["evidence"]}>{words.floor}</p>
    </section>
  );
}

import type { Ask } from "@sillwood/bench/round";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import styles from "./round-screen.module.css";

/** Questions of the book to people: the same task done twice, one number on two plants. Nothing is dropped meanwhile. */
export function Asks({ asks }: { readonly asks: readonly Ask[] }) {
  const { round: words } = useWords();
  const engine = useEngine();
  const isGrower = engine.who()?.role === "grower";
  if (asks.length === 0) return null;
  return (
    <section className={styles["part"]}>
      <h2>{words.theBookAsks}</h2>
      {asks.map((ask) => (
        <div key={ask.key}>
          <p>{ask.said}</p>
          {(isGrower || !ask.growerOnly) && (
            <KeyRow>
              {ask.answers.map((answer) => (
                <Key
                  key={answer.said}
                  onPress={() => void write(engine, answer.entries, { said: answer.said })}
                >
                  {answer.said}
                </Key>
              ))}
            </KeyRow>
          )}
        </div>
      ))}
    </section>
  );
}

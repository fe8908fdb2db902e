import { useState, useSyncExternalStore } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { PairPage } from "./pair-screen.tsx";
import styles from "./people.module.css";
import { usePeopleWords } from "./people-words.ts";

/** All that a phone shows which the grower has shut out. */
export function ClosedPage() {
  const words = usePeopleWords();
  const engine = useEngine();
  const mark = useSyncExternalStore(engine.listen, engine.mark);
  const [next, setNext] = useState<"pair" | "forget">();
  const aside_n = mark.aside_n ?? 0;
  const more_n = Math.max(0, mark.away_n - aside_n);
  if (next === "pair") return <PairPage onPaired={() => location.reload()} />;
  return (
    <div className={styles["page"]}>
      <main className={styles["reading"]}>
        <h1>{words.closed(aside_n)}</h1>
        <p className="serif">{words.closedSaid}</p>
        {more_n > 0 && <p className="serif">{words.closedMore(more_n)}</p>}
        {next === "forget" && <p className="serif">{words.forgetSaid}</p>}
      </main>
      <section className={styles["keys"]} aria-label={words.pairAgain}>
        {/* Not before all is handed in: what is on this phone alone would be gone. */}
        {more_n === 0 &&
          (next === "forget" ? (
            <Key wide onPress={() => void engine.forget().then(() => location.reload())}>
              {words.forgetSure}
            </Key>
          ) : (
            <Key wide quiet onPress={() => setNext("forget")}>
              {words.forget}
            </Key>
          ))}
        <Key main onPress={() => setNext("pair")}>
          {words.pairAgain}
        </Key>
      </section>
    </div>
  );
}

import type { Sign } from "@sillwood/bench/crafts";
import { nowMs } from "../../engine/clock.ts";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./wrong.module.css";

/** Do now, do not, look again: what is safe while the cause is only a ranking. */
export function SafeActs({ sign, again_ms }: { readonly sign: Sign; readonly again_ms: number }) {
  const { wrong: words } = useWords();
  const say = useSay();
  const lines = (title: string, said: readonly string[]) =>
    said.length > 0 && (
      <section>
        <h2>{title}</h2>
        {said.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </section>
    );
  return (
    <div className={styles["acts"]}>
      {lines(words.doNow, sign.doNow)}
      {lines(words.doNot, sign.doNot)}
      {lines(words.lookAgain, [`${say.day(again_ms, nowMs())} ${say.time(again_ms)}`])}
    </div>
  );
}

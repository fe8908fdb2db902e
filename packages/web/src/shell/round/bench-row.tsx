import type { BenchRound } from "@sillwood/bench/round";
import { SpotStrip } from "../../parts/spot-strip.tsx";
import { useWords } from "../../words/words.ts";
import { useSay } from "../say.ts";
import styles from "./bench-row.module.css";
import { potsWithWork_n, stripMarks } from "./use-round.ts";

/** One bench of the round: its pots in standing order, and what waits there. */
export function BenchRow({ bench, onOpen }: { readonly bench: BenchRound; readonly onOpen: () => void }) {
  const { round: words } = useWords();
  const say = useSay();
  const pots_n = potsWithWork_n(bench);
  return (
    <li>
      <button type="button" className={styles["bench"]} onClick={onOpen}>
        <span className={styles["head"]}>
          <span className={styles["name"]}>{bench.name}</span>
          <span>{words.pots(pots_n)}</span>
          <span className={styles["minutes"]}>{say.minutes(bench.minutes)}</span>
        </span>
        <SpotStrip marks={stripMarks(bench)} said={words.shelfOf(bench.name, bench.said)} />
        <span className={styles["said"]}>{bench.said}</span>
        {bench.weatherSaid && <span className="serif">{bench.weatherSaid}</span>}
      </button>
    </li>
  );
}

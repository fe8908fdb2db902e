import type { Seats } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { write } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import styles from "./light.module.css";
import { useLightWords } from "./use-light.ts";

interface BetterSeatsProps {
  readonly seats: Seats;
  readonly onWorking: (working: Working) => void;
}

/** Who would stand better elsewhere; each swap is one key, written and taken back together. */
export function BetterSeats({ seats, onWorking }: BetterSeatsProps) {
  const words = useLightWords();
  const { working: workingWords } = useWords();
  const engine = useEngine();
  const all = seats.working;
  return (
    <section className={styles["part"]}>
      <h2>{words.seats}</h2>
      <p>{seats.said}</p>
      {all && (
        <KeyRow>
          <Key onPress={() => onWorking(all)}>{workingWords.why}</Key>
        </KeyRow>
      )}
      {seats.swaps.map((swap) => (
        <div key={swap.key} className={styles["case"]}>
          {/* The first is said above already. */}
          {!seats.said.includes(swap.said) && <p className={styles["begins"]}>{swap.said}</p>}
          <KeyRow>
            <Key onPress={() => void write(engine, swap.drafts)}>
              {swap.other ? words.swap(swap.number, swap.other.number) : words.moveTo(swap.number)}
            </Key>
            <Key onPress={() => onWorking(swap.working)}>{workingWords.why}</Key>
          </KeyRow>
        </div>
      ))}
    </section>
  );
}

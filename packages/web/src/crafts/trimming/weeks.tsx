import type { PlanShown } from "@sillwood/bench/crafts/trimming";
import { useEffect, useId, useState } from "react";
import { Key, KeyRow } from "../../parts/key.tsx";
import styles from "./trim.module.css";
import { useTrimWords } from "./use-trim.ts";

const STEP_ms = 500;

interface WeeksProps {
  readonly plan: PlanShown;
  readonly week: number;
  readonly onWeek: (week: number) => void;
}

/** The eight weeks after, by a slider or played by a key; nothing moves by itself. */
export function Weeks({ plan, week, onWeek }: WeeksProps) {
  const words = useTrimWords();
  const id = useId();
  const [isPlaying, setPlaying] = useState(false);
  const last = plan.weeks.at(-1)?.week ?? 0;
  useEffect(() => {
    if (!isPlaying) return undefined;
    if (week >= last) {
      setPlaying(false);
      return undefined;
    }
    const next = setTimeout(() => onWeek(week + 1), STEP_ms);
    return () => clearTimeout(next);
  }, [isPlaying, week, last, onWeek]);
  const said = plan.weeks.find((each) => each.week === week)?.said;
  return (
    <section aria-label={words.weeks}>
      <label htmlFor={id}>{words.weeks}</label>
      <input
        id={id}
        className={styles["week"]}
        type="range"
        min={0}
        max={last}
        step={1}
        value={week}
        aria-valuetext={said}
        onChange={(event) => onWeek(Number(event.target.value))}
      />
      <KeyRow>
        <Key
          onPress={() => {
            if (!isPlaying && week >= last) onWeek(0);
            setPlaying(!isPlaying);
          }}
        >
          {isPlaying ? words.stop : words.play}
        </Key>
      </KeyRow>
      <p>{said}</p>
    </section>
  );
}

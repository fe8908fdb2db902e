import { Key, KeyRow } from "../../parts/key.tsx";
import styles from "./light.module.css";
import { useLightWords } from "./use-light.ts";

interface MonthChooserProps {
  readonly month: number;
  readonly said: string;
  readonly onMonth: (month: number) => void;
  /** Leads to all benches; left out where they are shown. */
  readonly all: (() => void) | undefined;
}

/** < January > [all] */
export function MonthChooser({ month, said, onMonth, all }: MonthChooserProps) {
  const words = useLightWords();
  const by = (months: number) => onMonth(((month - 1 + months + 12) % 12) + 1);
  return (
    <KeyRow label={words.month} inOrder>
      <Key label={words.monthBefore} onPress={() => by(-1)}>
        {"<"}
      </Key>
      <output className={styles["month"]}>{said}</output>
      <Key label={words.monthAfter} onPress={() => by(1)}>
        {">"}
      </Key>
      {all && <Key onPress={all}>{words.all}</Key>}
    </KeyRow>
  );
}

import { Key, KeyRow } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import styles from "./light.module.css";

interface MonthChooserProps {
  readonly month: number;
  readonly said: string;
  readonly onMonth: (month: number) => void;
  /** Leads to all benches; left out where they are shown. */
  readonly all: (() => void) | undefined;
}

/** < January > [all] */
export function MonthChooser({ month, said, onMonth, all }: MonthChooserProps) {
  const { light: words } = useWords();
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

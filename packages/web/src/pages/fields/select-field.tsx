import { useWords } from "../../words/words.ts";
import styles from "./fields.module.css";

interface SelectFieldProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly said: string }[];
  readonly value: string;
  readonly onChoose: (value: string) => void;
  /** The words for choosing none; left out where one must be chosen and is. */
  readonly none?: string | false;
}

/** The system's own list: many choices, one line. */
export function SelectField({ label, options, value, onChoose, none }: SelectFieldProps) {
  const { fields } = useWords();
  return (
    <label className={styles["field"]}>
      <span className={styles["label"]}>{label}</span>
      <select className={styles["input"]} value={value} onChange={(event) => onChoose(event.target.value)}>
        {none !== false && <option value="">{none ?? fields.notSaid}</option>}
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.said}
          </option>
        ))}
      </select>
    </label>
  );
}

import { type ReactNode, useId } from "react";
import styles from "./fields.module.css";

export interface Option<Value extends string> {
  readonly value: Value;
  readonly said: string;
  /** A small drawing over the words. */
  readonly drawn?: ReactNode;
}

interface ChoicesProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly Option<Value>[];
  readonly value: Value | undefined;
  readonly onChoose: (value: Value) => void;
  /** The legend is read but not shown: the heading over it says the same. */
  readonly quiet?: boolean;
}

/** One of a few: radio buttons that look like keys, so that arrows, readers and thumbs all know them. */
export function Choices<Value extends string>({
  legend,
  options,
  value,
  onChoose,
  quiet,
}: ChoicesProps<Value>) {
  const name = useId();
  return (
    <fieldset className={styles["choices"]}>
      <legend className={quiet ? "for-readers" : undefined}>{legend}</legend>
      <div className={styles["options"]}>
        {options.map((option) => (
          <label key={option.value} className={styles["option"]}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            {option.drawn}
            <span>{option.said}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

import { type ReactNode, useId } from "react";
import styles from "./fields.module.css";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onType: (text: string) => void;
  readonly onLeave?: () => void;
  /** Behind the field: its unit. */
  readonly unit?: string;
  readonly decimal?: boolean;
  readonly type?: "text" | "date" | "time" | "search";
  readonly short?: boolean;
  readonly problem?: ReactNode;
  readonly origin?: "measured" | "learned" | "assumed" | undefined;
  readonly beside?: ReactNode;
  readonly id?: string;
}

/** A field with its label above. Numbers are typed as text: number inputs drop letters in silence and step on scroll. */
export function TextField({
  label,
  value,
  onType,
  onLeave,
  unit,
  decimal,
  type = "text",
  short,
  problem,
  origin,
  beside,
  id: given,
}: TextFieldProps) {
  const made = useId();
  const id = given ?? made;
  const looks = [styles["input"], short && styles["short"], origin && styles[origin]]
    .filter(Boolean)
    .join(" ");
  return (
    <div className={styles["field"]}>
      <label className={styles["label"]} htmlFor={id}>
        {label}
        {unit && <span className="for-readers">, {unit}</span>}
      </label>
      <div className={styles["line"]}>
        <input
          id={id}
          className={looks}
          type={type}
          inputMode={decimal ? "decimal" : undefined}
          autoComplete="off"
          value={value}
          onChange={(event) => onType(event.target.value)}
          onBlur={onLeave}
          aria-invalid={problem ? true : undefined}
          aria-describedby={problem ? `${id}-problem` : undefined}
        />
        {unit && (
          <span className={styles["unit"]} aria-hidden="true">
            {unit}
          </span>
        )}
        {beside}
      </div>
      {problem && (
        <div id={`${id}-problem`} className={styles["problem"]} role="alert">
          {problem}
        </div>
      )}
    </div>
  );
}

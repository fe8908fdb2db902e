import { useId } from "react";
import { Key } from "../../parts/key.tsx";
import styles from "./potting.module.css";

interface MeasureProps {
  readonly label: string;
  readonly said: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly less: string;
  readonly more: string;
  readonly onChange: (value: number) => void;
}

/** A measure of the pot: dragged, or set by a centimetre at a time. */
export function Measure({ label, said, value, min, max, less, more, onChange }: MeasureProps) {
  const id = useId();
  const to = (next: number) => onChange(Math.min(max, Math.max(min, next)));
  return (
    <div className={styles["measure"]}>
      <label htmlFor={id}>
        {label}: {said}
      </label>
      <Key label={less} onPress={() => to(value - 1)}>
        −
      </Key>
      <input
        id={id}
        type="range"
        min={min}
        max={max}
        step={1}
        value={value}
        aria-valuetext={said}
        onChange={(event) => to(Number(event.target.value))}
      />
      <Key label={more} onPress={() => to(value + 1)}>
        +
      </Key>
    </div>
  );
}

import { Key } from "./key.tsx";
import styles from "./pad.module.css";

interface PadProps {
  readonly onDigit: (digit: string) => void;
  readonly left: { readonly said: string; readonly onPress: () => void };
  readonly right?: { readonly said: string; readonly onPress: () => void };
  readonly label: string;
}

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/** Our own pad: no field, no focus, no system keyboard over half the page. */
export function Pad({ onDigit, left, right, label }: PadProps) {
  return (
    <fieldset className={styles["pad"]} aria-label={label}>
      {DIGITS.map((digit) => (
        <Key key={digit} onPress={() => onDigit(digit)}>
          <span className={styles["digit"]}>{digit}</span>
        </Key>
      ))}
      <Key onPress={left.onPress}>{left.said}</Key>
      <Key onPress={() => onDigit("0")}>
        <span className={styles["digit"]}>0</span>
      </Key>
      {right ? <Key onPress={right.onPress}>{right.said}</Key> : <span />}
    </fieldset>
  );
}

/** Seven digits would be a crop, not a pot. */
export const addDigit = (text: string, digit: string, most_n: number): string =>
  text.length >= most_n ? text : `${text === "0" ? "" : text}${digit}`;

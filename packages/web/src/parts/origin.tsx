import type { Origin } from "@sillwood/bench/working";
import type { ReactNode } from "react";
import { useWords } from "../words/words.ts";
import styles from "./origin.module.css";

const MARKS: Readonly<Record<Origin, string>> = { measured: "●", learned: "◐", assumed: "○" };

/** ● measured, ◐ learned, ○ assumed; spoken as the word. */
export function OriginMark({ origin }: { readonly origin: Origin }) {
  const { shell } = useWords();
  return (
    <span className={styles["mark"]} role="img" aria-label={shell[origin]}>
      {MARKS[origin]}
    </span>
  );
}

interface NumberProps {
  readonly origin: Origin;
  readonly children: ReactNode;
  /** Opens the working. Without it the number only shows where it comes from. */
  readonly onOpen?: () => void;
  readonly size?: "task" | "amount" | "row" | "body";
}

/** A number as map-makers draw lines: solid where measured, dashed where learned, dotted where assumed. */
export function Sourced({ origin, children, onOpen, size = "body" }: NumberProps) {
  const { shell } = useWords();
  const looks = `${styles["number"]} ${styles[origin]} ${styles[size]}`;
  const spoken = <span className="for-readers">, {shell[origin]}</span>;
  if (!onOpen)
    return (
      <span className={looks}>
        {children}
        {spoken}
      </span>
    );
  return (
    <button type="button" className={`${looks} ${styles["opens"]}`} onClick={onOpen} data-working="">
      {children}
      {spoken}
    </button>
  );
}

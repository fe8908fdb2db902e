import type { Origin } from "@sillwood/bench/working";
import type { ReactNode } from "react";
import { useWords } from "../words/words.ts";
import styles from "./origin.module.css";

/** ● measured, ◐ learned, ○ assumed; drawn, so that no font fills the empty one; spoken as the word. */
export function OriginMark({ origin }: { readonly origin: Origin }) {
  const { shell } = useWords();
  return (
    <svg className={styles["mark"]} viewBox="0 0 12 12" role="img" aria-label={shell[origin]}>
      <circle cx="6" cy="6" r="4.5" className={styles["ring"]} />
      {origin !== "assumed" && (
        <path
          d={
            origin === "measured" ? "M6 1.5a4.5 4.5 0 0 1 0 9a4.5 4.5 0 0 1 0-9" : "M6 1.5a4.5 4.5 0 0 0 0 9z"
          }
        />
      )}
    </svg>
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

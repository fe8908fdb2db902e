import type { ReactNode } from "react";
import styles from "./ledger.module.css";

/** Ruled rows, as in a ledger. */
export function Ledger({ children, label }: { readonly children: ReactNode; readonly label?: string }) {
  return (
    <ul className={styles["ledger"]} aria-label={label}>
      {children}
    </ul>
  );
}

interface RowProps {
  readonly children: ReactNode;
  /** Opens more; the row ends in a wedge then. */
  readonly onOpen?: (() => void) | undefined;
  readonly ruledThrough?: boolean;
}

export function Row({ children, onOpen, ruledThrough }: RowProps) {
  const looks = `${styles["row"]} ${ruledThrough ? styles["through"] : ""}`;
  return (
    <li>
      {onOpen ? (
        <button type="button" className={`${looks} ${styles["opens"]}`} onClick={onOpen}>
          <span className={styles["what"]}>{children}</span>
          <span aria-hidden="true">&gt;</span>
        </button>
      ) : (
        <div className={looks}>{children}</div>
      )}
    </li>
  );
}

/** A caution before the step that can hurt: one line between a thick and a thin rule. */
export function Care({ word, children }: { readonly word: string; readonly children: ReactNode }) {
  return (
    <p className={styles["care"]}>
      <strong>{word}</strong> {children}
    </p>
  );
}

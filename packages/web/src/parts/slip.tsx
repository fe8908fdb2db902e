import { type ReactNode, useEffect, useId, useRef } from "react";
import { settings } from "../device/settings.ts";
import { pageChanged } from "../shell/guard.ts";
import { useWords } from "../words/words.ts";
import styles from "./slip.module.css";
import type { SlipState } from "./use-slip.ts";

interface SlipProps {
  readonly slip: SlipState;
  readonly title: string;
  readonly children: ReactNode;
  /** Up to three deep it stays a slip; then it takes the page. */
  readonly full?: boolean;
}

/**
 * A slip of paper that rises over at most 60 % of the page, beside it on the desktop. Esc and a tap beside it close it;
 * the browser gives the focus back to where it was opened.
 */
export function Slip({ slip, title, children, full }: SlipProps) {
  const { shell } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const heading = useId();
  useEffect(() => {
    const element = dialog.current;
    if (!element || !slip.isOpen) return;
    const before = document.activeElement;
    // A drip that opened a slip must not press its first key; a dry hand need not wait.
    const change = () => settings().wet && pageChanged();
    change();
    element.showModal();
    return () => {
      element.close();
      change();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, [slip.isOpen]);
  useEffect(() => {
    // The key that was pressed may be gone with what it opened: the focus stays in the slip, at its head.
    if (slip.isOpen && !dialog.current?.contains(document.activeElement)) head.current?.focus();
  });
  if (!slip.isOpen) return null;
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Esc closes a dialog already
    <dialog
      ref={dialog}
      className={`${styles["slip"]} ${full ? styles["full"] : ""}`}
      aria-labelledby={heading}
      onClose={slip.close}
      onClick={(event) => {
        if (event.target === dialog.current) slip.close();
      }}
    >
      <div className={styles["paper"]}>
        <header className={styles["head"]}>
          <h2 id={heading} ref={head} tabIndex={-1} className={styles["title"]}>
            {title}
          </h2>
          <button type="button" className={styles["close"]} onClick={slip.close}>
            {shell.close}
          </button>
        </header>
        <div className={styles["body"]}>{children}</div>
      </div>
    </dialog>
  );
}

import type { ReactNode } from "react";
import styles from "./key.module.css";

interface KeyProps {
  readonly onPress: () => void;
  readonly children: ReactNode;
  /** The one key under the thumb: filled, full width, Enter presses it. */
  readonly main?: boolean;
  /** Resting for a moment, or shut with its reason in its words. */
  readonly shut?: boolean;
  readonly pressed?: boolean;
  readonly label?: string;
  readonly wide?: boolean;
  readonly quiet?: boolean;
  readonly undo?: boolean;
  readonly id?: string;
}

/** A key: verbs on a bordered field, never smaller than a thumb. */
export function Key({ onPress, children, main, shut, pressed, label, wide, quiet, undo, id }: KeyProps) {
  const looks = [styles["key"], main && styles["main"], wide && styles["wide"], quiet && styles["quiet"]];
  return (
    <button
      type="button"
      id={id}
      className={looks.filter(Boolean).join(" ")}
      onClick={() => {
        if (!shut) onPress();
      }}
      aria-disabled={shut || undefined}
      aria-pressed={pressed}
      aria-label={label}
      data-main-key={main ? "" : undefined}
      data-undo={undo ? "" : undefined}
    >
      {children}
    </button>
  );
}

interface KeyRowProps {
  readonly children: ReactNode;
  readonly label?: string;
  /** Before stays left of after, whatever hand holds the device. */
  readonly inOrder?: boolean;
}

/** Keys side by side that wrap when words grow. */
export function KeyRow({ children, label, inOrder }: KeyRowProps) {
  const looks = `${styles["row"]} ${inOrder ? styles["inOrder"] : ""}`;
  if (label === undefined) return <div className={looks}>{children}</div>;
  return (
    <fieldset className={looks} aria-label={label}>
      {children}
    </fieldset>
  );
}

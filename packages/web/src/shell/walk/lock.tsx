import { useState } from "react";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import styles from "./lock.module.css";

/** All keys rest but two in the corners, pressed one after the other: a phone in a wet pocket writes nothing. */
export function Lock({ where, onOpen }: { readonly where: string; readonly onOpen: () => void }) {
  const { pot: words } = useWords();
  const [isHalfOpen, setHalf] = useState(false);
  return (
    <Frame where={where} strip={false} beside={words.lockedTitle}>
      <div className={styles["lock"]}>
        <button
          type="button"
          className={styles["first"]}
          onClick={() => setHalf(true)}
          aria-pressed={isHalfOpen}
        >
          {words.cornerOne}
        </button>
        <p className="serif">{words.lockedSaid}</p>
        <button
          type="button"
          className={styles["second"]}
          aria-disabled={!isHalfOpen}
          onClick={() => isHalfOpen && onOpen()}
        >
          {words.cornerTwo}
        </button>
      </div>
    </Frame>
  );
}

import { type ReactNode, useEffect, useRef, useSyncExternalStore } from "react";
import { useWords } from "../words/words.ts";
import styles from "./frame.module.css";
import { pageChanged } from "./guard.ts";
import { lastLine, onLastLine } from "./last-line.ts";
import { SaveMark } from "./save-mark.tsx";
import { Strip } from "./strip.tsx";
import { WalkingList } from "./walking-list.tsx";

interface FrameProps {
  /** Where you are: the one h1. */
  readonly where: string;
  /** Beside it, small: "6 of 14", "Tue 14 Jan". */
  readonly beside?: ReactNode;
  readonly children: ReactNode;
  /** Lowest 45 % of the page. */
  readonly keys?: ReactNode;
  /** Walks hide the strip, so that no wet touch leads out. */
  readonly strip?: boolean;
  /** Shown instead of the walking list on the desktop. */
  readonly list?: ReactNode;
  /** Changes when the page under the same screen changes (the next pot). */
  readonly page?: string;
}

/** What all screens share: top line, reading, last line, keys, strip. On the desktop the walking list stands at the left. */
export function Frame({ where, beside, children, keys, strip = true, list, page }: FrameProps) {
  const { shell } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  const reading = useRef<HTMLElement>(null);
  const first = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new page under the same screen starts at its top
  useEffect(() => {
    pageChanged();
    reading.current?.scrollTo(0, 0);
    const whole = reading.current?.parentElement;
    whole?.scrollTo(0, 0);
    // With very large words all of it scrolls. On a walk the pot comes first then; where one is stands a push above.
    if (!strip && whole && reading.current)
      whole.scrollTo(0, reading.current.getBoundingClientRect().top - whole.getBoundingClientRect().top);
    if (first.current) heading.current?.focus({ preventScroll: true });
    first.current = false;
  }, [page]);
  useEffect(() => {
    document.title = `${where} · Sillwood`;
  }, [where]);
  return (
    <div className={styles["house"]}>
      <aside className={styles["list"]}>{list ?? <WalkingList />}</aside>
      <div className={styles["page"]}>
        <header className={styles["top"]}>
          <h1 ref={heading} tabIndex={-1} className={styles["where"]}>
            {where}
          </h1>
          {beside !== undefined && <span className={styles["beside"]}>{beside}</span>}
          <SaveMark />
        </header>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
        <main ref={reading} className={styles["reading"]} tabIndex={0}>
          {children}
        </main>
        <LastLineBar />
        {keys && (
          <section className={styles["keys"]} aria-label={shell.keys}>
            {keys}
          </section>
        )}
        {strip && <Strip />}
      </div>
    </div>
  );
}

function LastLineBar() {
  const { shell } = useWords();
  const line = useSyncExternalStore(onLastLine, lastLine);
  return (
    <div className={styles["last"]}>
      <p role="status" aria-live="polite" className={line?.trouble ? styles["trouble"] : undefined}>
        {line?.text}
        {line?.after && <span className="for-readers"> {line.after}</span>}
      </p>
      {line?.undo && (
        <button type="button" className={styles["undo"]} onClick={line.undo} data-undo="">
          {shell.undo}
        </button>
      )}
    </div>
  );
}

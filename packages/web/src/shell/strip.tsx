import { Link, useLocation } from "wouter";
import { useWords } from "../words/words.ts";
import { stripPlaces } from "./routes.ts";
import styles from "./strip.module.css";

/** The lowest strip: words, not pictures. */
export function Strip() {
  const { shell } = useWords();
  const [path] = useLocation();
  return (
    <nav className={styles["strip"]} aria-label={shell.placesToGo}>
      {stripPlaces.map(({ name, to, holds }) => (
        <Link
          key={name}
          href={to}
          className={styles["place"]}
          aria-current={
            holds.some((start) => (start === "/" ? path === "/" : path.startsWith(start)))
              ? "page"
              : undefined
          }
        >
          {shell[name]}
        </Link>
      ))}
    </nav>
  );
}

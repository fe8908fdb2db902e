import { Link, useLocation } from "wouter";
import { useWords } from "../words/words.ts";
import { benchesWithWork, hasWork, useRound } from "./round/use-round.ts";
import styles from "./walking-list.module.css";

/** The desktop's left column: the same round, pot by pot. Rendered for wide pages only. */
export function WalkingList() {
  const { round: words } = useWords();
  const { value: round } = useRound();
  const [path] = useLocation();
  if (!round) return null;
  return (
    <nav className={styles["walk"]} aria-label={words.title}>
      <p className={styles["said"]}>{round.tasks_n > 0 ? round.said : words.nothingToday}</p>
      {benchesWithWork(round).map((bench) => (
        <section key={bench.bench}>
          <h2 className={styles["bench"]}>{bench.name}</h2>
          <ul>
            {bench.spots.filter(hasWork).map((spot) => (
              <li key={spot.spot + spot.plant}>
                <Link
                  href={`/plant/${spot.plant}`}
                  className={styles["pot"]}
                  aria-current={path === `/plant/${spot.plant}` ? "page" : undefined}
                >
                  <span className={styles["number"]}>{spot.number}</span>
                  <span className={styles["task"]}>
                    {spot.tasks.map(({ title, said }) => `${title.toLocaleLowerCase()} ${said}`).join(", ")}
                  </span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}

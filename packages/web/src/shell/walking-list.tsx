import { Link, useLocation } from "wouter";
import { useWords } from "../words/words.ts";
import { benchesWithWork, hasWork, useRound } from "./round/use-round.ts";
import { lineOf } from "./walk/acts.ts";
import { walkTo } from "./walk/use-walk.ts";
import { useWalkPlace } from "./walk/walk-place.ts";
import styles from "./walking-list.module.css";

/** The desktop's left column: the same round, pot by pot. Rendered for wide pages only. */
export function WalkingList() {
  const { round: words } = useWords();
  const { value: round } = useRound();
  const [path] = useLocation();
  const place = useWalkPlace();
  if (!round) return null;
  const isWalking = path.startsWith("/walk/");
  const isCurrent = (plant: string | undefined) =>
    isWalking ? place?.stops[place.at_n] === plant : path === `/plant/${plant}`;
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
                  href={isWalking ? `/walk/${encodeURIComponent(bench.bench)}` : `/plant/${spot.plant}`}
                  className={styles["pot"]}
                  onClick={() => isWalking && spot.plant && walkTo(bench, spot.plant)}
                  aria-current={isCurrent(spot.plant) ? "page" : undefined}
                >
                  <span className={styles["number"]}>{spot.number}</span>
                  <span className={styles["task"]}>{spot.tasks.map(lineOf).join(", ")}</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  );
}

import { useEffect, useState } from "react";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";

/** A work as science names it. */
interface Cited {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  readonly place: string;
  readonly seen: string;
}

/** Every work that a sum of the house cites, fetched with the sums themselves. */
async function allCited(): Promise<readonly Cited[]> {
  const [air, chance, growth, sun, units, water] = await Promise.all([
    import("@sillwood/science/air"),
    import("@sillwood/science/chance"),
    import("@sillwood/science/growth"),
    import("@sillwood/science/sun"),
    import("@sillwood/science/units"),
    import("@sillwood/science/water"),
  ]);
  const all: readonly Cited[] = [
    air.airSources,
    chance.chanceSources,
    growth.growthSources,
    sun.sunSources,
    units.unitSources,
    water.waterSources,
  ].flatMap((sources) => Object.values(sources));
  const once = new Map(all.map((one) => [`${one.authors} ${one.year} ${one.title}`, one]));
  return [...once.values()].sort((a, b) => a.authors.localeCompare(b.authors) || a.year - b.year);
}

/** The works in full, and how much of each was before our eyes. */
export function Citations() {
  const { settings: words } = useWords();
  const [cited, setCited] = useState<readonly Cited[]>();
  useEffect(() => {
    void allCited().then(setCited);
  }, []);
  if (!cited) return null;
  return (
    <details className={styles["part"]}>
      <summary className={styles["lead"]}>{words.allSources(cited.length)}</summary>
      <ul>
        {cited.map(({ authors, year, title, place, seen }) => (
          <li key={`${authors} ${year} ${title}`} className={styles["note"]}>
            {authors} ({year}): {title}. {place}. {words.seen[seen] ?? seen}.
          </li>
        ))}
      </ul>
    </details>
  );
}

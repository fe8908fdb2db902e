import { useLocation } from "wouter";
import { Key } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import styles from "./scout.module.css";
import { useScout, useScoutWords } from "./use-scout.ts";

/** Everything that is kept apart or looked at: clean rooms first, what waits today in front. */
export function ScoutList() {
  const words = useScoutWords();
  const [, go] = useLocation();
  const { page, refused, error } = useScout({});
  if (!page)
    return (
      <Frame where={words.title}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  const open = (plant: string) => go(`/craft/scout/${encodeURIComponent(plant)}`);
  const first = page.rows.find(({ isDue }) => isDue) ?? page.rows[0];
  const begin = first?.plant ?? page.others[0]?.plant;
  const number = first?.number ?? page.others[0]?.number ?? "";
  return (
    <Frame
      where={words.title}
      keys={
        begin !== undefined && (
          <Key main onPress={() => open(begin)}>
            {words.look(number)}
          </Key>
        )
      }
    >
      <p className="serif">{page.said}</p>
      <ul className={styles["rows"]}>
        {page.rows.map((row) => (
          <li key={row.plant}>
            <button type="button" className={styles["row"]} onClick={() => open(row.plant)}>
              <span className={styles["number"]}>{row.number}</span>
              <span>{row.said}</span>
              {row.isDue && <span className={styles["due"]}>{words.look(row.number)}</span>}
              <span className={styles["small"]}>{[row.bench, row.kind].filter(Boolean).join(", ")}</span>
            </button>
          </li>
        ))}
      </ul>
      {page.others.length > 0 && (
        <details className={styles["part"]}>
          <summary>{words.begin}</summary>
          <div className={styles["counts"]}>
            {page.others.map(({ plant, number: said }) => (
              <button key={plant} type="button" className={styles["count"]} onClick={() => open(plant)}>
                {said}
              </button>
            ))}
          </div>
        </details>
      )}
      {page.cautions.map((said) => (
        <Care key={said} word={words.care}>
          {said}
        </Care>
      ))}
    </Frame>
  );
}

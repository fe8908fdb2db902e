import { useId } from "react";
import { useWords } from "../../words/words.ts";
import styles from "./first-run.module.css";

type Place = "outdoors" | "unknown" | number;

interface CompassProps {
  readonly legend: string;
  readonly value: Place | undefined;
  readonly onChoose: (place: Place) => void;
  /** Without the outdoors and not-sure keys, where only a direction is asked. */
  readonly onlyDirections?: boolean;
}

/** Where each direction stands in the square of nine; the middle is the plant. */
const PLACES = [
  { deg: 315, area: "1 / 1" },
  { deg: 0, area: "1 / 2" },
  { deg: 45, area: "1 / 3" },
  { deg: 270, area: "2 / 1" },
  { deg: 90, area: "2 / 3" },
  { deg: 225, area: "3 / 1" },
  { deg: 180, area: "3 / 2" },
  { deg: 135, area: "3 / 3" },
] as const;

/** Which way the window faces: eight radio buttons around the plant. */
export function Compass({ legend, value, onChoose, onlyDirections }: CompassProps) {
  const { firstRun: words } = useWords();
  const name = useId();
  const point = (key: Place, said: string, spoken?: string, area?: string) => (
    <label key={key} className={styles["point"]} style={area ? { gridArea: area } : undefined}>
      <input
        type="radio"
        name={name}
        checked={value === key}
        onChange={() => onChoose(key)}
        aria-label={spoken}
      />
      <span>{said}</span>
    </label>
  );
  return (
    <fieldset className={styles["facts"]}>
      <legend>{legend}</legend>
      <div className={styles["where"]}>
        <div className={styles["compass"]}>
          {PLACES.map(({ deg, area }) =>
            point(deg, words.compass[deg / 45] ?? "", words.compassSaid[deg / 45], area),
          )}
          <svg className={styles["middle"]} viewBox="0 0 24 24" aria-hidden="true">
            <path d="M7 14 h10 l-1.500 8 h-7 z M12 14 V5 M12 10 l5 -4 M12 8 l-4 -3" />
          </svg>
        </div>
        {!onlyDirections && (
          <div className={styles["besideCompass"]}>
            {point("outdoors", words.outdoors)}
            {point("unknown", words.notSure)}
          </div>
        )}
      </div>
    </fieldset>
  );
}

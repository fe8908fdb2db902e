import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import type { SpotSeen } from "../answers/seen.ts";
import styles from "./shelf.module.css";

interface ShelfProps {
  readonly spots: readonly SpotSeen[];
  /** The pot that is about to move. */
  readonly moving: string | undefined;
  readonly onPress: (spot: SpotSeen) => void;
}

/** Light at which the line over the shelf stands highest; brighter spots stay there. @source our assumption: a lamp shelf in full leaf */
const HIGHEST_mol_m2_d = 20;

/** The bench as it is walked past: pots on the edge of the board, and over them today's light as a line that rises and falls. */
export function Shelf({ spots, moving, onPress }: ShelfProps) {
  const { benches: words } = useWords();
  const say = useSay();
  return (
    <ol className={styles["shelf"]}>
      {spots.map((spot) => {
        const numbers = spot.plants.map(({ number }) => number).join(" ");
        const light = say.number(spot.dli_mol_m2_d, 1);
        return (
          <li key={spot.id} className={styles["place"]}>
            <button
              type="button"
              className={styles["spot"]}
              aria-pressed={moving !== undefined && spot.plants.some(({ plant }) => plant === moving)}
              aria-label={words.spotSaid(spot.name, numbers, words.dli(light))}
              onClick={() => onPress(spot)}
            >
              <span
                className={`${styles["light"]} ${styles[spot.light.origin]}`}
                style={{ marginTop: `${(1 - Math.min(spot.dli_mol_m2_d / HIGHEST_mol_m2_d, 1)) * 1.5}rem` }}
              >
                {light}
              </span>
              <span className={numbers ? styles["pot"] : styles["bare"]}>{numbers}</span>
            </button>
            <span className={styles["edge"]}>{spot.name}</span>
          </li>
        );
      })}
    </ol>
  );
}

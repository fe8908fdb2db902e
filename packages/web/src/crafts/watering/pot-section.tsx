import type { PlantPage } from "@sillwood/bench/round";
import { useWords } from "../../words/words.ts";
import styles from "./pot-section.module.css";

const TOP = 14;
const FLOOR = 66;

/** The pot cut open with its water line: where the jug stops being needed. */
export function PotSection({ page }: { readonly page: PlantPage }) {
  const { pot } = useWords();
  const head = page.heads.find(({ craft }) => craft === "watering")?.head;
  if (!head || !Number.isFinite(head.value)) return null;
  const share = Math.min(Math.max(head.unit === "%" ? head.value / 100 : head.value, 0), 1);
  const level = FLOOR - (FLOOR - TOP) * share;
  // The pot narrows downwards; the water line is as wide as the pot there.
  const inset = (y: number) => 8 + ((y - 6) / (FLOOR + 2 - 6)) * 12;
  return (
    <svg className={styles["pot"]} viewBox="0 0 96 76" role="img" aria-label={pot.level(head.said)}>
      <title>{pot.level(head.said)}</title>
      <path
        d={`M${inset(level)} ${level}H${96 - inset(level)}L${96 - inset(FLOOR)} ${FLOOR}H${inset(FLOOR)}Z`}
        className={styles["water"]}
      />
      <path d={`M${inset(TOP)} ${TOP}H${96 - inset(TOP)}`} className={styles["medium"]} />
      <path d={`M6 6H10L20 ${FLOOR + 2}H76L86 6H90`} className={styles["wall"]} />
      <path
        d={`M${inset(level)} ${level}H${96 - inset(level)}`}
        className={`${styles["level"]} ${styles[head.working.origin]}`}
      />
    </svg>
  );
}

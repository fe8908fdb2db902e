import type { Origin } from "@sillwood/bench/working";
import styles from "./day-bar.module.css";
import { quantile } from "./quantile.ts";

interface DayBarProps {
  /** Twenty equally likely instants, ascending. */
  readonly dates_ms: readonly number[];
  readonly from_ms: number;
  readonly to_ms: number;
  readonly origin: Origin;
  readonly said: string;
}

/** Pale is 8 times in 10, dark the middle half, the notch the best day. No end caps: nothing starts or stops there. */
export function DayBar({ dates_ms, from_ms, to_ms, origin, said }: DayBarProps) {
  const at = (share: number) =>
    Math.min(Math.max((quantile(dates_ms, share) - from_ms) / (to_ms - from_ms), 0), 1) * 100;
  const [wide, low, middle, high, far] = [at(0.1), at(0.25), at(0.5), at(0.75), at(0.9)];
  if (![wide, low, middle, high, far].every(Number.isFinite)) return null;
  const least = (width: number) => Math.max(width, 0.8);
  return (
    <svg
      className={styles["bar"]}
      role="img"
      aria-label={said}
      preserveAspectRatio="none"
      viewBox="0 0 100 20"
    >
      <title>{said}</title>
      <line x1="0" x2="100" y1="17" y2="17" className={styles["ground"]} />
      <rect x={wide} width={least(far - wide)} y="5" height="10" className={styles["pale"]} />
      <rect x={low} width={least(high - low)} y="5" height="10" className={styles["dark"]} />
      <line x1={middle} x2={middle} y1="1" y2="17" className={`${styles["notch"]} ${styles[origin]}`} />
    </svg>
  );
}

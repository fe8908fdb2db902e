import styles from "./spot-strip.module.css";

export interface StripMark {
  readonly key: string;
  readonly state: "due" | "nothing" | "empty";
  readonly here?: boolean;
}

/** The bench as it stands: one mark a pot in standing order; hollow has nothing to do today, the wedge is you. */
export function SpotStrip({ marks, said }: { readonly marks: readonly StripMark[]; readonly said: string }) {
  return (
    <span className={styles["strip"]} role="img" aria-label={said}>
      {marks.map(({ key, state, here }) => (
        <span key={key} className={`${styles[state]} ${here ? styles["here"] : ""}`} />
      ))}
    </span>
  );
}

import styles from "./first-run.module.css";

/** Fruits as they hang, in one ink line each: drawn, so that no name has to be known. */
const PATHS = {
  thin: ["M12 4 v4", "M9 8 h6", "M10 8 c-1 8 -2 13 3 20 c2 -6 2 -12 1 -20"],
  fat: ["M12 4 v4", "M7 8 h10", "M7 8 c-4 8 -2 18 5 20 c7 -2 9 -12 5 -20"],
  lantern: [
    "M12 4 v4",
    "M8 8 h8",
    "M8 8 c-5 4 -5 9 -2 12 c1 3 4 4 5 8 c2 -3 5 -4 7 -8 c3 -3 3 -8 -2 -12",
    "M9 13 c2 2 2 5 0 7",
    "M15 13 c-2 2 -2 5 0 7",
  ],
  tiny: [
    "M12 28 v-8",
    "M6 27 v-6",
    "M18 27 v-6",
    "M9 20 h6",
    "M10 20 c-1 -6 0 -11 2 -14 c2 3 3 8 2 14",
    "M4.500 21 h3 c1 -4 0 -7 -1.500 -9 c-1.500 2 -2.500 5 -1.500 9",
    "M16.500 21 h3 c1 -4 0 -7 -1.500 -9 c-1.500 2 -2.500 5 -1.500 9",
  ],
} as const;

export function FruitDrawing({ of }: { readonly of: keyof typeof PATHS }) {
  return (
    <svg className={styles["fruit"]} viewBox="0 0 24 32" aria-hidden="true">
      {PATHS[of].map((path) => (
        <path key={path} d={path} />
      ))}
    </svg>
  );
}

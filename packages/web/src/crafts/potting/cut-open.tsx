import type { CutOpen as Cut } from "@sillwood/bench/crafts/potting";
import styles from "./potting.module.css";

interface CutOpenProps {
  readonly cut: Cut;
  readonly depth_cm: number;
  /** Reading for those who do not see it. */
  readonly said: string;
  readonly words: { readonly soil: string; readonly wetLayer: string };
}

const FLOOR = 150;
const WIDE = 220;
/** The deepest pot that the picture holds at its scale; deeper ones are drawn smaller. */
const TALLEST_cm = 20;

/** The pot cut open after draining: darker where it is wetter, the wet layer ruled off. */
export function CutOpen({ cut, depth_cm, said, words }: CutOpenProps) {
  const scale = 130 / Math.max(TALLEST_cm, depth_cm);
  const y = (height_cm: number) => FLOOR - height_cm * scale;
  const rows = cut.profile.slice(1).map((above, i) => {
    const below = cut.profile[i] as (typeof cut.profile)[number];
    const wet = (above.water_frac + below.water_frac) / 2 / cut.porosity_frac;
    return { top: y(above.height_cm), high: (above.height_cm - below.height_cm) * scale, wet };
  });
  return (
    <svg className={styles["cut"]} viewBox="0 0 300 160" role="img" aria-label={said}>
      <title>{said}</title>
      {rows.map(({ top, high, wet }) => (
        <rect
          key={top}
          x={(300 - WIDE) / 2 + 2}
          y={top}
          width={WIDE - 4}
          height={high + 0.4}
          className={styles["wetness"]}
          style={{ opacity: Math.max(0, (wet - 0.3) / 0.7) * 0.75 }}
        />
      ))}
      <path
        d={`M${(300 - WIDE) / 2} ${y(depth_cm)}V${FLOOR}H${(300 + WIDE) / 2}V${y(depth_cm)}`}
        className={styles["wall"]}
      />
      <path d={`M${(300 - WIDE) / 2} ${y(cut.fill_cm)}H${(300 + WIDE) / 2}`} className={styles["soilLine"]} />
      <text x={(300 + WIDE) / 2 - 4} y={y(cut.fill_cm) - 4} textAnchor="end" className={styles["label"]}>
        {words.soil}
      </text>
      <g data-wet-share={(cut.wetLayer_cm / cut.fill_cm).toFixed(3)}>
        <path
          d={`M${(300 - WIDE) / 2 - 6} ${y(cut.wetLayer_cm)}H${(300 + WIDE) / 2 + 6}`}
          className={styles["layer"]}
        />
        <text
          x={(300 - WIDE) / 2 + 6}
          y={Math.min(FLOOR - 4, y(cut.wetLayer_cm) + 14)}
          className={styles["label"]}
        >
          {words.wetLayer}
        </text>
      </g>
    </svg>
  );
}

import { useRef } from "react";
import { Key } from "../../parts/key.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { ACROSS_cm, DEEP_cm } from "./facts.ts";
import styles from "./first-run.module.css";

interface PotDrawingProps {
  readonly top_cm: number;
  readonly depth_cm: number;
  readonly onChange: (size: { readonly top_cm: number; readonly depth_cm: number }) => void;
}

const CM_PER_INCH = 2.54;
/** Viewbox units to a centimetre, so that a pot of 24 cm fills the picture; larger ones are drawn smaller. */
const WIDE = 120;
const HIGH = 72;
const TAPER_frac = 0.75;

/** A pot from above and cut open. It is sized by its handles, or by the keys, which wet hands and readers need. */
export function PotDrawing({ top_cm, depth_cm, onChange }: PotDrawingProps) {
  const { firstRun: words } = useWords();
  const { units } = useSettings();
  const say = useSay();
  const section = useRef<SVGSVGElement>(null);
  const step_cm = units === "us" ? CM_PER_INCH / 2 : 1;
  const scale = Math.min(80 / top_cm, 56 / depth_cm, 5);
  const [half, deep] = [(top_cm * scale) / 2, depth_cm * scale];
  const middle = WIDE / 2;
  const rim = 8;
  const base = half * TAPER_frac;

  const set = (top: number, depth: number) =>
    onChange({
      top_cm: clamp(Math.round(top * 10) / 10, ACROSS_cm),
      depth_cm: clamp(Math.round(depth * 10) / 10, DEEP_cm),
    });
  /** A handle follows the finger in whole steps at the scale that stood when it was taken up. */
  const drag = (side: "across" | "deep") => (down: React.PointerEvent<SVGCircleElement>) => {
    const box = section.current?.getBoundingClientRect();
    if (!box) return;
    const handle = down.currentTarget;
    handle.setPointerCapture(down.pointerId);
    const perPixel = WIDE / box.width / scale;
    const from = { x: down.clientX, y: down.clientY };
    const snap = (size_cm: number) => Math.round(size_cm / step_cm) * step_cm;
    handle.onpointermove = (move) => {
      if (side === "across") set(snap(top_cm + 2 * (move.clientX - from.x) * perPixel), depth_cm);
      else set(top_cm, snap(depth_cm + (move.clientY - from.y) * perPixel));
    };
    handle.onpointerup = handle.onpointercancel = () => {
      handle.onpointermove = null;
    };
  };

  const steppers = (what: string, size_cm: number, apply: (next_cm: number) => void) => (
    <div className={styles["stepper"]}>
      <Key label={words.less(what, say.length(step_cm))} onPress={() => apply(size_cm - step_cm)}>
        −
      </Key>
      <span className={styles["size"]}>
        {say.length(size_cm)} {what}
      </span>
      <Key label={words.more(what, say.length(step_cm))} onPress={() => apply(size_cm + step_cm)}>
        +
      </Key>
    </div>
  );

  return (
    <div className={styles["pot"]}>
      <div className={styles["drawings"]}>
        <svg viewBox={`0 0 ${WIDE} ${HIGH}`} className={styles["drawing"]} aria-hidden="true">
          <circle cx={middle} cy={HIGH / 2} r={Math.min(half, 34)} />
          <circle cx={middle} cy={HIGH / 2} r={Math.min(half, 34) * 0.86} className={styles["hatched"]} />
          <line
            x1={middle - Math.min(half, 34)}
            x2={middle + Math.min(half, 34)}
            y1={HIGH / 2}
            y2={HIGH / 2}
            className={styles["measure"]}
          />
        </svg>
        <svg
          ref={section}
          viewBox={`0 0 ${WIDE} ${HIGH}`}
          className={styles["drawing"]}
          role="img"
          aria-label={words.potDrawn}
        >
          <path
            d={`M${middle - half} ${rim} L${middle - base} ${rim + deep} H${middle + base} L${middle + half} ${rim}`}
          />
          <path
            className={styles["hatched"]}
            d={`M${middle - half * 0.97} ${rim + deep * 0.1} L${middle - base} ${rim + deep} H${middle + base} L${middle + half * 0.97} ${rim + deep * 0.1} Z`}
          />
          <circle
            className={styles["handle"]}
            cx={middle + half}
            cy={rim}
            r="5"
            onPointerDown={drag("across")}
          />
          <circle
            className={styles["handle"]}
            cx={middle}
            cy={rim + deep}
            r="5"
            onPointerDown={drag("deep")}
          />
        </svg>
      </div>
      {steppers(words.across, top_cm, (next_cm) => set(next_cm, depth_cm))}
      {steppers(words.deep, depth_cm, (next_cm) => set(top_cm, next_cm))}
    </div>
  );
}

const clamp = (value: number, { min, max }: { readonly min: number; readonly max: number }) =>
  Math.min(Math.max(value, min), max);

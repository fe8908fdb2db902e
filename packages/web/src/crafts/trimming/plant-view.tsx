import type { CutShown, PlanShown, View, WeekShown } from "@sillwood/bench/crafts/trimming";
import { useId } from "react";
import styles from "./trim.module.css";
import { usePicture } from "./use-picture.ts";
import { useTrimWords } from "./use-trim.ts";

const MARGIN_frac = 0.35;

/** The part of the photo in which the plant stands, with room for the shoots to come. */
function boxOf({ stems, leaves, aim, width, height }: View) {
  const points = [...stems.flatMap(({ from, to }) => [from, to]), ...leaves.map(({ at }) => at), ...aim];
  if (points.length === 0) return { x: 0, y: 0, width, height };
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const tall = Math.max(...ys) - Math.min(...ys);
  const pad = MARGIN_frac * Math.max(tall, 1);
  const x = Math.min(...xs) - pad;
  const y = Math.min(...ys) - pad;
  return { x, y, width: Math.max(...xs) + pad - x, height: Math.max(...ys) + pad / 2 - y };
}

interface PlantViewProps {
  readonly view: View;
  readonly which: "front" | "side";
  readonly plan: Pick<PlanShown, "name" | "cuts" | "goneNodes">;
  readonly week?: WeekShown | undefined;
  readonly chosen?: string | undefined;
  readonly onNode?: ((node: string) => void) | undefined;
}

/** The plant over its own photo: stems in ink, leaves as rings, cuts as slanted bars, what goes hatched, shoots to come as fans. */
export function PlantView({ view, which, plan, week, chosen, onNode }: PlantViewProps) {
  const words = useTrimWords();
  const hatch = useId();
  const picture = usePicture(view.photo);
  const gone = new Set(plan.goneNodes);
  const box = boxOf(view);
  const line = box.height / 260;
  const points = (list: readonly (readonly [number, number])[]) =>
    list.map((each) => each.join(",")).join(" ");
  return (
    <>
      <svg
        className={styles["view"]}
        viewBox={`${box.x} ${box.y} ${box.width} ${box.height}`}
        role="img"
        aria-label={words.drawn(plan.name, words[which])}
      >
        <defs>
          <pattern
            id={hatch}
            width={line * 4}
            height={line * 4}
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <line x1="0" y1="0" x2="0" y2={line * 4} className={styles["hatch"]} strokeWidth={line * 1.5} />
          </pattern>
        </defs>
        {picture && (
          <image href={picture} width={view.width} height={view.height} className={styles["photo"]} />
        )}
        <polygon
          points={points(view.aim)}
          className={styles["aim"]}
          strokeWidth={line}
          strokeDasharray={`${line * 4} ${line * 3}`}
        />
        {view.leaves.map(({ node, at, radius }) => (
          <circle
            key={node}
            cx={at[0]}
            cy={at[1]}
            r={radius}
            className={styles["leaf"]}
            strokeWidth={line}
            {...(gone.has(node) ? { fill: `url(#${hatch})` } : {})}
            data-gone={gone.has(node) || undefined}
          />
        ))}
        {view.stems.map(({ node, from, to, thick }) => (
          <line
            key={node}
            x1={from[0]}
            y1={from[1]}
            x2={to[0]}
            y2={to[1]}
            strokeWidth={Math.max(line * 1.5, thick)}
            className={styles["stem"]}
            data-gone={gone.has(node) || undefined}
            data-chosen={node === chosen || undefined}
          />
        ))}
        {week?.[which].map((course, shoot) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: shoots of a week have no names, and their order is fixed
          <polyline key={shoot} points={points(course)} className={styles["shoot"]} strokeWidth={line * 2} />
        ))}
        {plan.cuts.map((cut) => (
          <CutMark key={cut.gone} cut={cut} which={which} line={line} />
        ))}
        {onNode &&
          view.stems.map(({ node, to }) => (
            // biome-ignore lint/a11y/noStaticElementInteractions: the list of joints has a key for each of them
            <circle
              key={node}
              cx={to[0]}
              cy={to[1]}
              r={line * 7}
              className={styles["target"]}
              onClick={() => onNode(node)}
            />
          ))}
      </svg>
      {picture === null && <p className={styles["note"]}>{words.pictureMissing}</p>}
    </>
  );
}

function CutMark({
  cut,
  which,
  line,
}: {
  readonly cut: CutShown;
  readonly which: "front" | "side";
  readonly line: number;
}) {
  const { from, to } = cut.marks[which];
  return (
    <g>
      <line
        x1={from[0]}
        y1={from[1]}
        x2={to[0]}
        y2={to[1]}
        className={styles["halo"]}
        strokeWidth={line * 7}
      />
      <line
        x1={from[0]}
        y1={from[1]}
        x2={to[0]}
        y2={to[1]}
        className={styles["cut"]}
        strokeWidth={line * 3.5}
      />
      <text
        x={to[0] + line * 4}
        y={to[1]}
        className={styles["letter"]}
        fontSize={line * 16}
        strokeWidth={line * 4}
      >
        {cut.letter}
      </text>
    </g>
  );
}

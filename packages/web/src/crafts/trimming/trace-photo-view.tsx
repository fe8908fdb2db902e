import type { Photo, Tap, Tracing } from "@sillwood/bench/crafts/trimming/tracing";
import type { MouseEvent } from "react";
import styles from "./trim.module.css";
import { usePicture } from "./use-picture.ts";
import { useTrimWords } from "./use-trim.ts";

interface TracePhotoViewProps {
  readonly photo: Photo;
  readonly which: "front" | "side";
  readonly joints: Tracing["joints"];
  readonly from: string | undefined;
  readonly card: readonly Tap[];
  readonly pending: Tap | undefined;
  readonly line: readonly Tap[];
  readonly loupe: Tap | undefined;
  readonly onTap: (tap: Tap) => void;
}

/** How much of the photo the loupe shows. */
const LOUPE_frac = 0.12;

/** One photo with what was tapped on it; a loupe under it shows the last tap that the finger hid. */
export function TracePhotoView({
  photo,
  which,
  joints,
  from,
  card,
  pending,
  line,
  loupe,
  onTap,
}: TracePhotoViewProps) {
  const words = useTrimWords();
  const picture = usePicture(photo.photo);
  const { width_px, height_px } = photo;
  const unit = height_px / 260;
  const at = (joint: Tracing["joints"][number]) => joint[which];
  const tap = (event: MouseEvent<SVGSVGElement>) => {
    const matrix = event.currentTarget.getScreenCTM();
    if (!matrix) return;
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
    onTap([Math.round(point.x * 10) / 10, Math.round(point.y * 10) / 10]);
  };
  const drawn = (
    <>
      {picture && <image href={picture} width={width_px} height={height_px} />}
      {line.length > 0 && (
        <polyline
          points={line.map((each) => each.join(",")).join(" ")}
          className={styles["epipolar"]}
          strokeWidth={unit * 1.5}
        />
      )}
      {joints.map((joint) => {
        const below = joints.find(({ id }) => id === joint.below);
        const [x, y] = at(joint);
        return (
          <g key={joint.id}>
            {below && (
              <line
                x1={at(below)[0]}
                y1={at(below)[1]}
                x2={x}
                y2={y}
                className={styles["stem"]}
                strokeWidth={unit * 2}
              />
            )}
            <circle
              cx={x}
              cy={y}
              r={unit * (joint.id === from ? 5 : 3.5)}
              className={joint.id === from ? styles["tapped"] : styles["placed"]}
              strokeWidth={unit * 1.5}
            />
          </g>
        );
      })}
      {[...card, ...(pending ? [pending] : [])].map(([x, y]) => (
        <path
          key={`${x} ${y}`}
          d={`M${x - unit * 6} ${y}h${unit * 12}M${x} ${y - unit * 6}v${unit * 12}`}
          className={styles["tapped"]}
          strokeWidth={unit * 1.5}
        />
      ))}
    </>
  );
  return (
    <>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the arrow keys of the page move the last tap */}
      <svg
        className={styles["view"]}
        viewBox={`0 0 ${width_px} ${height_px}`}
        role="img"
        aria-label={words.trace.photo(words[which])}
        data-trace={which}
        onClick={tap}
      >
        {drawn}
      </svg>
      {loupe && (
        <svg
          className={styles["loupe"]}
          viewBox={`${loupe[0] - (LOUPE_frac * width_px) / 2} ${loupe[1] - (LOUPE_frac * width_px) / 2} ${LOUPE_frac * width_px} ${LOUPE_frac * width_px}`}
          role="img"
          aria-label={words.trace.loupe}
        >
          {drawn}
        </svg>
      )}
    </>
  );
}

import type { BenchLight } from "@sillwood/bench/crafts/lighting";
import { useMemo } from "react";
import { useSay } from "../../shell/say.ts";
import { type HeightLine, heightLines, type Place } from "./contour-lines.ts";
import styles from "./plan.module.css";

interface Props {
  readonly bench: BenchLight;
  readonly from_m: number;
  readonly to_m: number;
  readonly width_px: number;
  readonly height_px: number;
  /** Height on the sheet of a place so far from the glass. */
  readonly top_px: (fromGlass_m: number) => number;
}

/** The ground of one sheet: window edge, light as height lines with their numbers, lamps as they hang. Read by the eye only. */
export function HeightLines({ bench, from_m, to_m, width_px, height_px, top_px }: Props) {
  const say = useSay();
  const { contours, windows } = bench;
  const isGuessed = windows.length > 0 && windows.every(({ origin }) => origin === "assumed");
  const lines = useMemo(() => (contours ? linesOf(contours, isGuessed) : []), [contours, isGuessed]);
  const left_px = (along_m: number) => ((along_m - from_m) / (to_m - from_m)) * width_px;
  const at = ({ along_m, fromGlass_m }: Place) =>
    `${left_px(along_m).toFixed(1)} ${top_px(fromGlass_m).toFixed(1)}`;
  const labels = labelsOf(
    lines,
    from_m,
    to_m,
    (place) => ({
      x: left_px(place.along_m),
      y: top_px(place.fromGlass_m),
    }),
    width_px,
    height_px,
  );
  return (
    <svg
      className={styles["ground"]}
      width={width_px}
      height={height_px}
      viewBox={`0 0 ${width_px} ${height_px}`}
      aria-hidden="true"
    >
      {lines.map(({ level, places }) => (
        <path
          key={`${level} ${at(places[0] as Place)}`}
          d={`M${places.map(at).join("L")}`}
          className={styles["line"]}
        />
      ))}
      {bench.lamps.map((lamp) => {
        const long_m = lamp.length_m ?? 0.1;
        const deep_m = lamp.width_m ?? (lamp.form === "disc" ? long_m : 0.06);
        const x = left_px(lamp.along_m - long_m / 2);
        const y = top_px(lamp.fromGlass_m - deep_m / 2);
        return (
          <rect
            key={lamp.lamp_n}
            x={x}
            y={y}
            width={Math.max(4, left_px(lamp.along_m + long_m / 2) - x)}
            height={Math.max(4, top_px(lamp.fromGlass_m + deep_m / 2) - y)}
            rx={lamp.form === "disc" || lamp.form === "point" ? 99 : 1}
            className={styles["lampAbove"]}
          />
        );
      })}
      {labels.map(({ level, x, y }) => (
        <text key={`${level} ${x}`} x={x} y={y} className={styles["level"]}>
          {say.number(level, 1)}
        </text>
      ))}
      {bench.windows
        .filter(({ faces_deg }) => faces_deg === bench.windows[0]?.faces_deg)
        .map(({ window_n, width_m, origin }) => (
          <line
            key={window_n}
            x1={isGuessed ? 0 : Math.max(0, left_px(-width_m / 2))}
            x2={isGuessed ? width_px : Math.min(width_px, left_px(width_m / 2))}
            y1="3"
            y2="3"
            className={`${styles["glass"]} ${styles[origin]}`}
          />
        ))}
    </svg>
  );
}

/** So many lines tell a slope; more would hide the pots. */
const LINES_n = 4;

/** Of a window whose size nobody knows the pots are taken as before its middle: so are the lines, at heights of their own. */
function linesOf(
  { along_m, fromGlass_m, light_mol_m2_d, levels_mol_m2_d }: NonNullable<BenchLight["contours"]>,
  isGuessed: boolean,
): readonly HeightLine[] {
  if (!isGuessed) return heightLines({ along_m, fromGlass_m, values: light_mol_m2_d }, levels_mol_m2_d);
  const depth = light_mol_m2_d.map((row) => row[Math.floor(row.length / 2)] ?? 0);
  const [least, most] = [Math.min(...depth), Math.max(...depth)];
  const step = [0.2, 0.5, 1, 2, 5, 10].find((one) => (most - least) / one <= LINES_n) ?? 20;
  const levels = Array.from({ length: LINES_n }, (_, i) => (Math.ceil(least / step) + i) * step);
  return heightLines(
    { along_m, fromGlass_m, values: depth.map((value) => along_m.map(() => value)) },
    levels.filter((level) => level > least && level < most),
  );
}

interface Label {
  readonly level: number;
  readonly x: number;
  readonly y: number;
}

/** Numbers stand so far from one another and from the edge. */
const APART_px = 26;

/** One number for each line where it runs over the sheet, where no other number stands. */
function labelsOf(
  lines: readonly HeightLine[],
  from_m: number,
  to_m: number,
  at: (place: Place) => { readonly x: number; readonly y: number },
  width_px: number,
  height_px: number,
): readonly Label[] {
  const labels: Label[] = [];
  for (const { level, places } of lines) {
    const free = places
      .filter(({ along_m }) => along_m >= from_m && along_m <= to_m)
      .map(at)
      .filter(({ x, y }) => x > 14 && x < width_px - 14 && y > 18 && y < height_px - 8)
      .filter(({ x, y }) => labels.every((one) => Math.hypot(one.x - x, one.y - y) > APART_px));
    // Towards the left edge, one line after another, as the heights on a slope.
    const best = free.sort((a, b) => a.x - b.x)[0];
    if (best) labels.push({ level, ...best });
  }
  return labels;
}

import type { BranchSaid } from "@sillwood/bench/crafts/fruiting";
import styles from "./fruit.module.css";

const WIDTH = 320;
const HEIGHT = 200;
const BASE_y = 188;
/** Never more marks than an eye counts on a line. */
const MOST_MARKS_n = 8;

interface BranchDrawingProps {
  readonly branches: readonly BranchSaid[];
  readonly chosen: string | undefined;
  readonly said: string;
}

/** Branches from the trunk, left and right in turn, by length, thickness and lean; dots are fruits, rings are open flowers. */
export function BranchDrawing({ branches, chosen, said }: BranchDrawingProps) {
  const longest_cm = Math.max(...branches.map(({ length_cm }) => length_cm));
  return (
    <svg className={styles["drawing"]} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
      <title>{said}</title>
      <line x1={WIDTH / 2} y1={HEIGHT - 4} x2={WIDTH / 2} y2={BASE_y - 100} className={styles["trunk"]} />
      {branches.map((branch, each) => (
        <Limb
          key={branch.branch}
          branch={branch}
          side={each % 2 === 0 ? -1 : 1}
          from_y={BASE_y - 30 - (70 * each) / Math.max(1, branches.length - 1)}
          scale={110 / longest_cm}
          isChosen={branch.branch === chosen}
        />
      ))}
    </svg>
  );
}

interface LimbProps {
  readonly branch: BranchSaid;
  readonly side: 1 | -1;
  readonly from_y: number;
  readonly scale: number;
  readonly isChosen: boolean;
}

function Limb({ branch, side, from_y, scale, isChosen }: LimbProps) {
  const { length_cm, lean_deg, thickness_mm, has_n = 0, open_n = 0 } = branch;
  const lean = (lean_deg * Math.PI) / 180;
  const from_x = WIDTH / 2;
  const dx = side * Math.cos(lean) * length_cm * scale;
  const dy = -Math.sin(lean) * length_cm * scale;
  const at = (share: number) => ({ cx: from_x + dx * share, cy: from_y + dy * share });
  const fruits_n = Math.min(MOST_MARKS_n, has_n);
  const rings_n = Math.min(MOST_MARKS_n, open_n);
  const end = at(1);
  return (
    <g className={isChosen ? styles["chosen"] : undefined}>
      <line
        x1={from_x}
        y1={from_y}
        x2={end.cx}
        y2={end.cy}
        className={styles["limb"]}
        strokeWidth={Math.min(9, Math.max(1.5, thickness_mm))}
      />
      {Array.from({ length: fruits_n }, (_, each) => {
        const { cx, cy } = at(0.4 + (0.5 * (each + 0.5)) / fruits_n);
        // biome-ignore lint/suspicious/noArrayIndexKey: marks differ by their place only
        return <circle key={each} cx={cx} cy={cy + 8} r="4.5" className={styles["dot"]} />;
      })}
      {Array.from({ length: rings_n }, (_, each) => {
        const { cx, cy } = at(0.55 + (0.42 * (each + 0.5)) / rings_n);
        // biome-ignore lint/suspicious/noArrayIndexKey: marks differ by their place only
        return <circle key={each} cx={cx} cy={cy - 8} r="4" className={styles["ring"]} />;
      })}
      <text
        x={end.cx + side * 12}
        y={Math.max(12, end.cy - 4)}
        textAnchor="middle"
        className={styles["letter"]}
      >
        {branch.branch}
      </text>
    </g>
  );
}

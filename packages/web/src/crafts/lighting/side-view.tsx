import type { BenchLight, SpotLit, WindowDrawn } from "@sillwood/bench/crafts/lighting";
import { useSay } from "../../shell/say.ts";
import styles from "./side-view.module.css";
import { useLightWords } from "./use-light.ts";

interface SideViewProps {
  readonly bench: Pick<BenchLight, "windows" | "lamps" | "windowSaid">;
  /** The pot whose distance is drawn; without one, the usual place. */
  readonly spot: Pick<SpotLit, "fromGlass_m" | "placeOrigin"> | undefined;
}

/** Metres shown outside the glass and over the leaves, where no lamp hangs higher; and the drawing's own size. */
const OUTSIDE_m = 0.8;
const OVER_m = 0.52;
const WIDE = 320;
const HIGH = 118;
const PANES: Readonly<Record<WindowDrawn["glazing"], number>> = {
  single: 1,
  double: 2,
  "double low-e": 2,
  triple: 3,
  "triple low-e": 3,
};

/** The window cut open: pane, what stands opposite, the distance to the leaves, and the lamp over them. */
export function SideView({ bench, spot }: SideViewProps) {
  const words = useLightWords();
  const say = useSay();
  const [pane] = bench.windows;
  const [lamp] = bench.lamps;
  if (!pane && !lamp) return null;
  const distance_m = spot?.fromGlass_m ?? 0.25;
  const inside_m = Math.max(distance_m + 0.3, lamp ? lamp.fromGlass_m + 0.45 : 0, 0.9);
  const bottom_m = Math.max(-0.5, Math.min(-0.22, pane ? pane.sill_m - 0.08 : 0));
  // A high window runs off the drawing: what counts is where the leaves are.
  const top_m = Math.max(
    Math.min(OVER_m, pane ? pane.sill_m + pane.height_m + 0.08 : 0.3),
    lamp ? lamp.above_m + 0.12 : 0,
    0.3,
  );
  const outside_m = pane ? OUTSIDE_m : 0.1;
  const scale = Math.min(WIDE / (outside_m + inside_m), HIGH / (top_m - bottom_m));
  const x = (m: number) => (m + outside_m) * scale;
  const y = (m: number) => (top_m - m) * scale;
  const wide = (outside_m + inside_m) * scale;
  const high = (top_m - bottom_m) * scale;
  const distance = say.length(distance_m * 100);
  const said = words.sideSaid(
    pane ? bench.windowSaid : "",
    pane ? words.leavesFromGlass(distance) : "",
    lamp ? words.lampAbove(say.length(lamp.above_m * 100)) : "",
  );
  const leaf = x(distance_m);
  const origin = spot?.placeOrigin ?? "assumed";
  return (
    <figure className={styles["side"]}>
      <svg
        className={styles["drawing"]}
        viewBox={`-2 -2 ${(wide + 4).toFixed(1)} ${(high + 4).toFixed(1)}`}
        preserveAspectRatio="xMinYMid meet"
        role="img"
        aria-label={`${words.sideTitle}: ${said}`}
      >
        {pane && <Wall pane={pane} x={x} y={y} top={0} bottom={high} />}
        {pane && <Opposite pane={pane} leaf_m={distance_m} x={x} y={y} outside_m={outside_m} />}
        <line x1={pane ? x(0) : 0} x2={wide} y1={y(0)} y2={y(0)} className={styles["leafLine"]} />
        <path
          d={`M${leaf - 0.07 * scale} ${y(-0.09)}H${leaf + 0.07 * scale}L${leaf + 0.05 * scale} ${y(-0.2)}H${leaf - 0.05 * scale}Z`}
          className={styles["pot"]}
        />
        <path
          d={`M${leaf} ${y(-0.09)}V${y(0.01)}M${leaf} ${y(-0.05)}l${0.05 * scale} ${-0.05 * scale}M${leaf} ${y(-0.03)}l${-0.05 * scale} ${-0.04 * scale}`}
          className={styles["plant"]}
        />
        <line x1={pane ? x(0) : 0} x2={wide} y1={y(-0.2)} y2={y(-0.2)} className={styles["sill"]} />
        {pane && (
          <line
            x1={x(0.01)}
            x2={leaf}
            y1={y(0)}
            y2={y(0)}
            className={`${styles["distance"]} ${styles[origin]}`}
          />
        )}
        {lamp && (
          <path
            d={`M${x(lamp.fromGlass_m) - 14} ${y(lamp.above_m)}h28M${x(lamp.fromGlass_m) - 8} ${y(lamp.above_m) + 5}l-4 7M${x(lamp.fromGlass_m)} ${y(lamp.above_m) + 5}v8M${x(lamp.fromGlass_m) + 8} ${y(lamp.above_m) + 5}l4 7`}
            className={styles["lamp"]}
          />
        )}
      </svg>
      <figcaption className={styles["said"]}>{said}</figcaption>
    </figure>
  );
}

interface WallProps {
  readonly pane: WindowDrawn;
  readonly x: (m: number) => number;
  readonly y: (m: number) => number;
  readonly top: number;
  readonly bottom: number;
}

/** The wall over and under the glass, as deep as its recess; the glass as many lines as it has panes. */
function Wall({ pane, x, y, top, bottom }: WallProps) {
  const deep_px = Math.max(5, x(0) - x(-pane.recess_m));
  const head = Math.max(top, y(pane.sill_m + pane.height_m));
  const foot = y(pane.sill_m);
  return (
    <>
      {head > top && (
        <rect x={x(0) - deep_px} y={top} width={deep_px} height={head - top} className={styles["wall"]} />
      )}
      {bottom > foot && (
        <rect x={x(0) - deep_px} y={foot} width={deep_px} height={bottom - foot} className={styles["wall"]} />
      )}
      {Array.from({ length: PANES[pane.glazing] }, (_, i) => x(0) - i * 4).map((at) => (
        <line
          key={at}
          x1={at}
          x2={at}
          y1={head}
          y2={foot}
          className={`${styles["glass"]} ${styles[pane.origin]}`}
        />
      ))}
    </>
  );
}

/** How high the sky is hidden by what stands opposite, as seen from the leaf. */
function Opposite({
  pane,
  leaf_m,
  x,
  y,
  outside_m,
}: {
  readonly pane: WindowDrawn;
  readonly leaf_m: number;
  readonly x: (m: number) => number;
  readonly y: (m: number) => number;
  readonly outside_m: number;
}) {
  const rise = Math.tan((Math.min(80, pane.opposite_deg) * Math.PI) / 180);
  const top_m = rise * (leaf_m + outside_m);
  return (
    <>
      <line x1={x(leaf_m)} y1={y(0)} x2={x(-outside_m)} y2={y(top_m)} className={styles["ray"]} />
      <path d={`M${x(-outside_m)} ${y(-0.22)}V${y(top_m)}h6`} className={styles["roof"]} />
    </>
  );
}

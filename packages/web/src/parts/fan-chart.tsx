import type { Fan } from "@sillwood/bench/crafts";
import { useEffect, useMemo, useRef, useState } from "react";
import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import { useSay } from "../shell/say.ts";
import { usePaper } from "../shell/use-paper.ts";
import { useWords } from "../words/words.ts";
import { lettersLaid } from "./event-letters.ts";
import styles from "./fan-chart.module.css";
import { fanShown } from "./fan-shown.ts";
import { FanTable } from "./fan-table.tsx";
import { Key, KeyRow } from "./key.tsx";

const HEIGHT_px = 220;
/** An event's mark on the base line, and what its letter needs of 13 px type with a gap. */
const TICK_px = 4;
const LETTER_px = 13;
/** As much of the past as of the future: older waterings crowd the letters and decide nothing. */
const PAST_SHOWN_ms = 14 * 86_400_000;

const recent = (chart: Fan, now_ms: number): Fan => ({
  ...chart,
  past: chart.past.filter(({ at_ms }) => at_ms >= now_ms - PAST_SHOWN_ms),
  events: chart.events.filter(({ at_ms }) => at_ms >= now_ms - PAST_SHOWN_ms),
});

/** A quantity against time: past solid, ahead as a fan in two greys; now is a line with its word. Its table is one tap away. */
export function FanChart({ chart: whole, now_ms }: { readonly chart: Fan; readonly now_ms: number }) {
  const { plant } = useWords();
  const say = useSay();
  const paper = usePaper();
  const chart = useMemo(() => fanShown(recent(whole, now_ms), say.units), [whole, now_ms, say.units]);
  const box = useRef<HTMLDivElement>(null);
  const [isTable, setTable] = useState(false);
  const now = chart.ahead[0]?.p50 ?? chart.past.at(-1)?.value;
  const last = chart.ahead.at(-1);
  const said =
    now !== undefined && last
      ? plant.chartSaid(
          chart.name,
          `${say.number(now, chart.digits_n)} ${chart.unit}`,
          `${say.number(last.p50, chart.digits_n)} ${chart.unit}`,
          say.day(last.at_ms),
        )
      : plant.noChart;
  // biome-ignore lint/correctness/useExhaustiveDependencies: colours are read off the paper when it is drawn
  useEffect(() => {
    const element = box.current;
    if (!element || isTable || (chart.past.length === 0 && chart.ahead.length === 0)) return;
    let plot: uPlot | undefined;
    const draw = () => {
      plot?.destroy();
      plot = new uPlot(optionsOf(chart, now_ms, element, plant.now, say), dataOf(chart), element);
    };
    const sized = new ResizeObserver(draw);
    sized.observe(element);
    return () => {
      sized.disconnect();
      plot?.destroy();
    };
  }, [chart, now_ms, isTable, paper, say]);
  return (
    <figure className={styles["figure"]}>
      <figcaption className={styles["caption"]}>
        {chart.name}, {chart.unit}
      </figcaption>
      {isTable ? (
        <FanTable chart={chart} />
      ) : (
        <div ref={box} className={styles["chart"]} role="img" aria-label={said} />
      )}
      <p className="serif">{said}</p>
      <KeyRow>
        <Key onPress={() => setTable(!isTable)}>{isTable ? plant.asChart : plant.asTable}</Key>
      </KeyRow>
    </figure>
  );
}

type Edge = Exclude<keyof Fan["ahead"][number], "at_ms">;
/** Wide band first, so that the narrow one and the lines lie over it. */
const EDGES: readonly Edge[] = ["p90", "p10", "p75", "p25", "p50"];

/** Columns: instant, the five edges of the fan, the past. The fan starts where the past ends. */
function dataOf({ past, ahead }: Fan): uPlot.AlignedData {
  const last = past.at(-1);
  const start = last ? [last] : [];
  const behind = past.slice(0, -1);
  const edge = (key: Edge) => [
    ...behind.map(() => null),
    ...start.map(({ value }) => value),
    ...ahead.map((one) => one[key]),
  ];
  return [
    [...past, ...ahead].map(({ at_ms }) => at_ms / 1000),
    ...EDGES.map(edge),
    [...past.map(({ value }) => value), ...ahead.map(() => null)],
  ];
}

const DASHES = { measured: [], learned: [8, 5], assumed: [2, 5] };

function optionsOf(
  chart: Fan,
  now_ms: number,
  element: HTMLElement,
  nowWord: string,
  say: ReturnType<typeof useSay>,
): uPlot.Options {
  const css = getComputedStyle(element);
  const colour = (name: string) => css.getPropertyValue(name).trim();
  const [ink, ink2, edge, hair] = ["--ink", "--ink2", "--edge", "--hair"].map(colour) as [
    string,
    string,
    string,
    string,
  ];
  const font = `13px ${css.getPropertyValue("--sans")}`;
  const thin = { stroke: edge, width: 1, points: { show: false } };
  return {
    width: element.clientWidth,
    height: HEIGHT_px,
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: true }, y: { range: (_plot, _low, high) => [0, Math.max(high * 1.08, 1)] } },
    axes: [
      {
        stroke: ink2,
        font,
        grid: { show: false },
        ticks: { stroke: hair, width: 1 },
        space: 64,
        // "17 Oct": the weekday stands on the day line above.
        values: (_plot, ticks) =>
          ticks.map((at_s) =>
            say
              .day(at_s * 1000)
              .split(" ")
              .slice(1)
              .join(" "),
          ),
      },
      { stroke: ink2, font, size: 48, grid: { stroke: hair, width: 1 }, ticks: { show: false }, space: 30 },
    ],
    series: [
      {},
      thin,
      thin,
      { ...thin, stroke: "transparent" },
      { ...thin, stroke: "transparent" },
      { stroke: ink, width: 2, dash: DASHES[chart.origin], points: { show: false } },
      { stroke: ink, width: 2, points: { show: false } },
    ],
    bands: [
      { series: [1, 2], fill: colour("--fan-wide") },
      { series: [3, 4], fill: colour("--fan-mid") },
    ],
    hooks: { draw: [(plot) => drawMarks(plot, chart, now_ms, nowWord, ink, font)] },
  };
}

/** Now, the threshold with its words at its end, and letters of events on the base line. */
function drawMarks(plot: uPlot, chart: Fan, now_ms: number, nowWord: string, ink: string, font: string) {
  const { ctx, bbox } = plot;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.strokeStyle = ink;
  ctx.fillStyle = ink;
  ctx.font = font.replace("13px", `${13 * ratio}px`);
  const x = plot.valToPos(now_ms / 1000, "x", true);
  if (x >= bbox.left && x <= bbox.left + bbox.width) {
    ctx.lineWidth = 2 * ratio;
    ctx.beginPath();
    ctx.moveTo(x, bbox.top);
    ctx.lineTo(x, bbox.top + bbox.height);
    ctx.stroke();
    ctx.textAlign = "left";
    ctx.fillText(nowWord, x + 4 * ratio, bbox.top + 12 * ratio);
  }
  if (chart.threshold) {
    const y = plot.valToPos(chart.threshold.value, "y", true);
    ctx.lineWidth = ratio;
    ctx.beginPath();
    ctx.moveTo(bbox.left, y);
    ctx.lineTo(bbox.left + bbox.width, y);
    ctx.stroke();
    ctx.textAlign = "right";
    ctx.fillText(chart.threshold.said, bbox.left + bbox.width - 2 * ratio, y - 4 * ratio);
  }
  ctx.textAlign = "center";
  const base = bbox.top + bbox.height;
  const events = chart.events
    .map(({ at_ms, letter }) => ({ x: plot.valToPos(at_ms / 1000, "x", true), letter }))
    .filter(({ x: at }) => at >= bbox.left && at <= bbox.left + bbox.width);
  ctx.lineWidth = ratio;
  ctx.beginPath();
  for (const { x: at } of events) {
    ctx.moveTo(at, base);
    ctx.lineTo(at, base - TICK_px * ratio);
  }
  ctx.stroke();
  ctx.textBaseline = "bottom";
  for (const { x: at, letter, row_n } of lettersLaid(events, LETTER_px * ratio))
    ctx.fillText(letter, at, base - (TICK_px + row_n * LETTER_px) * ratio);
  ctx.restore();
}

import type { PlantTrim, View } from "@sillwood/bench/crafts/trimming";
import { wrap } from "./wrap.ts";

const GAP = 40;

/** Front and side of a traced plant as one SVG picture, black on white, joints with their ids. */
export function shapeSvg({ number, views }: PlantTrim): string | undefined {
  if (!views) return undefined;
  const { front, side } = views;
  const width = front.width + GAP + side.width;
  const height = Math.max(front.height, side.height);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-label="${number}">`,
    viewSvg(front, 0),
    viewSvg(side, front.width + GAP),
    "</svg>",
  ].join("\n");
}

function viewSvg(view: View, x: number): string {
  const line = view.height / 260;
  return [
    `<g transform="translate(${x} 0)" fill="none" stroke="#000">`,
    ...view.leaves.map(
      ({ at, radius }) => `<circle cx="${at[0]}" cy="${at[1]}" r="${radius}" stroke-width="${line / 2}"/>`,
    ),
    ...view.stems.map(
      ({ from, to, thick }) =>
        `<line x1="${from[0]}" y1="${from[1]}" x2="${to[0]}" y2="${to[1]}" stroke-width="${Math.max(line, thick)}"/>`,
    ),
    ...view.stems.map(
      ({ node, to }) =>
        `<text x="${to[0] + line * 2}" y="${to[1]}" font-size="${line * 7}" fill="#000" stroke="none">${node}</text>`,
    ),
    "</g>",
  ].join("\n");
}

/** The structure in words: joint after joint, with what may not be cut. */
export const shapeText = (plant: PlantTrim, width_n: number): string =>
  [
    ...wrap(`${plant.number}  ${plant.kind}: ${plant.levelSaid}`, width_n),
    ...plant.nodes.flatMap(({ id, name, why }) =>
      wrap(`${id}  ${name}${why ? `: ${why}` : ""}`, width_n, 2, 6),
    ),
  ].join("\n");

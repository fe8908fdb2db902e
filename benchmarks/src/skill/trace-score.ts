import { type Tracing, tracedOf } from "@sillwood/bench/crafts/trimming/tracing";
import { chanceOf } from "../../../simulator/src/nursery/chance.ts";
import { type DrawnJoint, drawnPlant } from "../../../simulator/src/shape/drawn-plant.ts";
import { pixelOf, tapNear, trueCamera } from "../../../simulator/src/shape/photographed.ts";

/** How far a trace lies from the plant that was photographed, by a camera that the tracer knows only roughly. */
export interface TraceScore {
  readonly plants_n: number;
  readonly joints_n: number;
  readonly position_mm: number;
  /** Internodes whose length is right to 1.5 mm or 6 %, whichever is larger. */
  readonly internodesWithin_frac: number;
  readonly internode_mm: number;
  /** Every joint hangs on the one it grows on. */
  readonly isOrderExact: boolean;
}

const CARD_mm = 85.6;
const CLICK_px = 3;
const WIDTH_px = 3024;
const HEIGHT_px = 4032;
/** What the tracer takes the camera for: a phone of 26 mm, the card read off the photo. */
const BELIEVED = {
  distance_mm: 900,
  focal_px: (26 / 36) * HEIGHT_px,
  width_px: WIDTH_px,
  height_px: HEIGHT_px,
  lens_mm: 110,
} as const;

const visible = (plant: readonly DrawnJoint[]): readonly DrawnJoint[] => plant.slice(0, 24);

/** Traces drawn plants with taps that miss, a turn that is no quarter, a distance and a lens that are off. */
export function traceScore(plants_n: number, seed: string): TraceScore {
  const squares: number[] = [];
  const lengths: { readonly true_mm: number; readonly traced_mm: number }[] = [];
  let isOrderExact = true;
  for (let plant = 0; plant < plants_n; plant += 1) {
    const chance = chanceOf(`${seed} ${plant}`);
    const joints = visible(drawnPlant(chance.under("plant"), 30));
    const camera = trueCamera(chance.under("camera"), BELIEVED);
    const taps = chance.under("taps");
    const tap = (joint: Pick<DrawnJoint, "right_mm" | "away_mm" | "up_mm">, which: "front" | "side") =>
      tapNear(taps, pixelOf(camera, joint, which), CLICK_px);
    const photo = (name: string) => ({ photo: name, width_px: WIDTH_px, height_px: HEIGHT_px });
    const tracing: Tracing = {
      front: photo("front"),
      side: photo("side"),
      card: [0, CARD_mm].map((up_mm) => tap({ right_mm: 40, away_mm: 0, up_mm }, "front")),
      card_mm: CARD_mm,
      trunk_mm: 10,
      leaves_n: 1,
      joints: joints.map((joint) => ({
        id: joint.id,
        ...(joint.below === undefined ? {} : { below: joint.below }),
        front: tap(joint, "front"),
        side: tap(joint, "side"),
        leaves_n: joint.leaves_n,
      })),
    };
    const { nodes } = tracedOf(tracing);
    joints.forEach((joint, at) => {
      const node = nodes[at];
      if (!node || node.id !== joint.id || node.below !== joint.below) isOrderExact = false;
      if (!node || at === 0) return;
      squares.push(
        (node.right_mm - joint.right_mm) ** 2 +
          (node.away_mm - joint.away_mm) ** 2 +
          (node.up_mm - joint.up_mm) ** 2,
      );
      const below = joints.findIndex(({ id }) => id === joint.below);
      lengths.push({ true_mm: apart(joint, joints[below]), traced_mm: apart(node, nodes[below]) });
    });
  }
  const rms = (values: readonly number[]) =>
    Math.sqrt(values.reduce((sum, each) => sum + each, 0) / Math.max(1, values.length));
  return {
    plants_n,
    joints_n: squares.length,
    position_mm: rms(squares),
    internode_mm: rms(lengths.map(({ true_mm, traced_mm }) => (true_mm - traced_mm) ** 2)),
    internodesWithin_frac:
      lengths.filter(
        ({ true_mm, traced_mm }) => Math.abs(true_mm - traced_mm) <= Math.max(1.5, 0.06 * true_mm),
      ).length / Math.max(1, lengths.length),
    isOrderExact,
  };
}

type Place = Pick<DrawnJoint, "right_mm" | "away_mm" | "up_mm">;
const apart = (a: Place, b: Place | undefined): number =>
  b === undefined ? 0 : Math.hypot(a.right_mm - b.right_mm, a.away_mm - b.away_mm, a.up_mm - b.up_mm);

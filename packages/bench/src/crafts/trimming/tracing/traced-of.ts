import { placeOfMatch } from "@sillwood/science/shape";
import type { Traced } from "../kinds.ts";
import type { TraceNode, TracePhoto } from "../trace-fields.ts";
import { distance_mm, focal_px, matchOf, type Photo, type Tap, type Tracing, turnSign } from "./tracing.ts";

const round = (value: number): number => Math.round(value * 10) / 10;

/** The entry of a finished trace: places from the base of the trunk, and how well the two heights agree. */
export function tracedOf(tracing: Tracing): Traced {
  const front = tracing.front as Photo;
  const camera = { distance_mm: distance_mm(tracing), focal_px: focal_px(front) };
  const sign = turnSign(tracing);
  const places = tracing.joints.map(({ front: a, side: b }) =>
    placeOfMatch({ ...matchOf(tracing, a, b, sign), ...camera }),
  );
  const base = places[0];
  if (!base) throw new RangeError("nothing was traced; expected the base of the trunk first");
  const nodes = tracing.joints.map((joint, at): TraceNode => {
    const place = places[at] as typeof base;
    return {
      id: joint.id,
      ...(joint.below === undefined ? {} : { below: joint.below }),
      right_mm: round(place.right_mm - base.right_mm),
      away_mm: round(place.away_mm - base.away_mm),
      up_mm: round(place.up_mm - base.up_mm),
      ...(at === 0 ? { caliper_mm: tracing.trunk_mm } : {}),
      ...(joint.leaves_n > 0 ? { leaves_n: joint.leaves_n } : {}),
    };
  });
  const squares = places.slice(1).reduce((sum, { residual_mm }) => sum + residual_mm ** 2, 0);
  const [first] = tracing.joints;
  return {
    nodes,
    distance_mm: round(camera.distance_mm),
    focal_px: round(camera.focal_px),
    front: framed(front, first?.front as Tap),
    // A pot turned the other way shows the other side: such a photo is not laid under the drawing.
    ...(sign === 1 && tracing.side ? { side: framed(tracing.side, first?.side as Tap) } : {}),
    error_mm: Math.min(500, round(places.length > 1 ? Math.sqrt(squares / (places.length - 1)) : 0)),
  };
}

const framed = (photo: Photo, base: Tap): TracePhoto => ({
  photo: photo.photo,
  width_px: photo.width_px,
  height_px: photo.height_px,
  baseX_px: round(base[0]),
  baseY_px: round(base[1]),
});

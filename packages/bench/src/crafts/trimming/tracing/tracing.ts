import {
  cardDistance_mm,
  type Match,
  matchingLine,
  matchVerdict,
  placeOfMatch,
} from "@sillwood/science/shape";

/** A photo in hand: what it is kept under and how large it is. */
export interface Photo {
  readonly photo: string;
  readonly width_px: number;
  readonly height_px: number;
}

/** A tap: pixels from the left and from the top. */
export type Tap = readonly [number, number];

/** A joint as tapped in both photos. */
export interface TracedJoint {
  readonly id: string;
  readonly below?: string;
  readonly front: Tap;
  readonly side: Tap;
  readonly leaves_n: number;
}

export interface Trouble {
  readonly verdict: "doubtful" | "wrong";
  readonly residual_mm: number;
}

/** Everything of a trace under way; taps only, nothing dragged. */
export interface Tracing {
  readonly front?: Photo;
  readonly side?: Photo;
  readonly card: readonly Tap[];
  readonly card_mm: number;
  readonly trunk_mm: number;
  readonly joints: readonly TracedJoint[];
  /** From which joint the next grows. */
  readonly from?: string;
  /** Tapped in the front photo, not yet in the other. */
  readonly pending?: Tap;
  readonly leaves_n: number;
  /** The last match, where the two heights do not agree. */
  readonly trouble?: Trouble;
  readonly snapped?: string;
}

export type Phase =
  | "front photo"
  | "side photo"
  | "card"
  | "base"
  | "base in side"
  | "joint"
  | "joint in side";

/** A bank card stood on its short side: everybody has one. ISO/IEC 7810, format ID-1 */
const BANK_CARD_mm = 85.6;

export const START: Tracing = { card: [], card_mm: BANK_CARD_mm, trunk_mm: 8, joints: [], leaves_n: 1 };

/** The lens of most phones, as of a 35-mm film. @source our assumption */
const EQUIVALENT_mm = 26;
const FILM_mm = 36;
/** A finger's tap is off by so much. @source shape-trim sheet section 9 */
const CLICK_px = 3;
/** A tap this near to a traced joint means that joint, as share of the photo's longer side. */
const SNAP_frac = 0.009;
const CROWN_frac = 0.35;
const LEAST_n = 3;

export function phaseOf(tracing: Tracing): Phase {
  if (!tracing.front) return "front photo";
  if (!tracing.side) return "side photo";
  if (tracing.card.length < 2) return "card";
  if (tracing.joints.length === 0) return tracing.pending ? "base in side" : "base";
  return tracing.pending ? "joint in side" : "joint";
}

export const withPhoto = (tracing: Tracing, photo: Photo): Tracing =>
  tracing.front ? { ...tracing, side: photo } : { ...tracing, front: photo };

/** Focal length in pixels of a photo whose lens nobody named. */
export const focal_px = ({ width_px, height_px }: Photo): number =>
  (EQUIVALENT_mm / FILM_mm) * Math.max(width_px, height_px);

export function distance_mm(tracing: Tracing): number {
  const [low, high] = tracing.card;
  if (!tracing.front || !low || !high) return 800;
  const card_px = Math.hypot(high[0] - low[0], high[1] - low[1]);
  return Math.max(
    60,
    Math.min(
      19_000,
      cardDistance_mm({
        focal_px: focal_px(tracing.front),
        card_mm: tracing.card_mm,
        card_px: Math.max(5, card_px),
      }),
    ),
  );
}

const camera = (tracing: Tracing) => ({
  distance_mm: distance_mm(tracing),
  focal_px: focal_px(tracing.front as Photo),
});

const right = (tap: Tap, photo: Photo) => tap[0] - photo.width_px / 2;
const up = (tap: Tap, photo: Photo) => photo.height_px / 2 - tap[1];

export function matchOf(tracing: Tracing, front: Tap, side: Tap, sign: 1 | -1 = 1): Match {
  const a = tracing.front as Photo;
  const b = tracing.side as Photo;
  return {
    right1_px: right(front, a),
    up1_px: up(front, a),
    right2_px: sign * right(side, b),
    up2_px: up(side, b),
  };
}

/** The pot is asked to be turned so that its right goes away; photos level with the crown can't tell against that. */
const OTHER_WAY_ratio = 0.5;

/** Which way the pot was turned: as asked, unless the differences of height speak clearly for the other way. */
export function turnSign(tracing: Tracing): 1 | -1 {
  const sum = (sign: 1 | -1) =>
    tracing.joints.reduce(
      (total, { front, side }) =>
        total +
        Math.abs(placeOfMatch({ ...matchOf(tracing, front, side, sign), ...camera(tracing) }).residual_mm),
      0,
    );
  return sum(-1) < OTHER_WAY_ratio * sum(1) ? -1 : 1;
}

/** The line in the side photo on which the pending joint must lie, as points. */
export function lineInSide(tracing: Tracing): readonly Tap[] {
  const { pending, side, front } = tracing;
  if (!pending || !side || !front) return [];
  const cam = camera(tracing);
  const radius_mm = Math.min(
    cam.distance_mm * 0.45,
    (CROWN_frac * front.height_px * cam.distance_mm) / cam.focal_px,
  );
  const { rights_px, ups_px } = matchingLine({
    right1_px: right(pending, front),
    up1_px: up(pending, front),
    radius_mm: Math.max(1, radius_mm),
    points_n: 24,
    ...cam,
  });
  return rights_px.map((x, at) => [x + side.width_px / 2, side.height_px / 2 - (ups_px[at] as number)]);
}

/** A tap in the photo that the phase asks for. */
export function tapped(tracing: Tracing, tap: Tap): Tracing {
  const { trouble: _trouble, snapped: _snapped, ...rest } = tracing;
  switch (phaseOf(tracing)) {
    case "card":
      return { ...rest, card: [...tracing.card, tap] };
    case "base":
      return { ...rest, pending: tap };
    case "joint": {
      const near = nearest(tracing, tap);
      return near ? { ...rest, from: near.id, snapped: near.id } : { ...rest, pending: tap };
    }
    case "base in side":
    case "joint in side":
      return placed(tracing, tap);
    default:
      return tracing;
  }
}

function nearest({ joints, front }: Tracing, tap: Tap): TracedJoint | undefined {
  const reach = SNAP_frac * Math.max(front?.width_px ?? 0, front?.height_px ?? 0);
  const far = (joint: TracedJoint) => Math.hypot(joint.front[0] - tap[0], joint.front[1] - tap[1]);
  const [first] = joints.toSorted((a, b) => far(a) - far(b));
  return first && far(first) <= reach ? first : undefined;
}

function placed(tracing: Tracing, side: Tap): Tracing {
  const { pending, trouble: _trouble, snapped: _snapped, ...rest } = tracing;
  if (!pending) return tracing;
  const id = String(1 + Math.max(0, ...tracing.joints.map((joint) => Number(joint.id))));
  const isBase = tracing.joints.length === 0;
  const joint: TracedJoint = {
    id,
    ...(tracing.from === undefined ? {} : { below: tracing.from }),
    front: pending,
    side,
    leaves_n: isBase ? 0 : tracing.leaves_n,
  };
  const cam = camera(tracing);
  const residuals = ([1, -1] as const).map(
    (sign) => placeOfMatch({ ...matchOf(tracing, pending, side, sign), ...cam }).residual_mm,
  );
  const residual_mm = residuals.toSorted((a, b) => Math.abs(a) - Math.abs(b))[0] as number;
  const { verdict } = matchVerdict({ residual_mm, click_px: CLICK_px, ...cam });
  return {
    ...rest,
    joints: [...tracing.joints, joint],
    from: id,
    ...(verdict === "good" || isBase ? {} : { trouble: { verdict, residual_mm } }),
  };
}

/** The last tap taken back, whatever it was. */
export function takenBack(tracing: Tracing): Tracing {
  const { pending, trouble: _trouble, snapped: _snapped, from: _from, ...rest } = tracing;
  const from = tracing.from === undefined ? {} : { from: tracing.from };
  if (pending) return { ...rest, ...from };
  const last = tracing.joints.at(-1);
  if (last) {
    const left = { ...rest, joints: tracing.joints.slice(0, -1), pending: last.front };
    return last.below === undefined ? left : { ...left, from: last.below };
  }
  return { ...rest, card: tracing.card.slice(0, -1) };
}

/** The last tap moved by pixels. */
export function nudged(tracing: Tracing, dx: number, dy: number): Tracing {
  const moved = (tap: Tap): Tap => [tap[0] + dx, tap[1] + dy];
  if (tracing.pending) return { ...tracing, pending: moved(tracing.pending) };
  const last = tracing.joints.at(-1);
  if (last) return { ...tracing, joints: tracing.joints.with(-1, { ...last, side: moved(last.side) }) };
  const end = tracing.card.at(-1);
  return end ? { ...tracing, card: tracing.card.with(-1, moved(end)) } : tracing;
}

/** Where the last tap stands, for the loupe. */
export function placedPoint(
  tracing: Tracing,
): { readonly in: "front" | "side"; readonly at: Tap } | undefined {
  if (tracing.pending) return { in: "front", at: tracing.pending };
  const last = tracing.joints.at(-1);
  if (last) return { in: "side", at: last.side };
  const end = tracing.card.at(-1);
  return end ? { in: "front", at: end } : undefined;
}

/** Stems beside the trunk: joints that are not the first to grow from theirs. */
export const branches_n = ({ joints }: Tracing): number =>
  joints.filter(
    (joint, at) => joint.below !== undefined && joints.findIndex(({ below }) => below === joint.below) !== at,
  ).length;

export const isEnough = ({ joints }: Tracing): boolean => joints.length >= LEAST_n;

import { deflateSync } from "node:zlib";
import type { DrawnJoint } from "./drawn-plant.ts";
import { type Pixel, pixelOf, type TrueCamera } from "./photographed.ts";

type Colour = readonly [number, number, number];
const PAPER: Colour = [226, 222, 210];
const WOOD: Colour = [104, 82, 58];
const LEAF: Colour = [58, 112, 62];
const POT: Colour = [150, 92, 66];
const CARD: Colour = [20, 20, 20];
const CLUTTER: Colour = [196, 190, 176];

/** A drawn photo of a plant: pot, card beside the trunk, stems, leaves that hide some joints, something in the background. */
export function drawnPhoto(
  joints: readonly DrawnJoint[],
  camera: TrueCamera,
  which: "front" | "side",
  card_mm: number,
): Uint8Array {
  const { width_px: width, height_px: height } = camera;
  const pixels = new Uint8Array(width * height * 3);
  for (let at = 0; at < pixels.length; at += 1) pixels[at] = PAPER[at % 3] as number;
  const dot = (x: number, y: number, radius: number, colour: Colour) => {
    for (
      let j = Math.max(0, Math.floor(y - radius));
      j <= Math.min(height - 1, Math.ceil(y + radius));
      j += 1
    )
      for (
        let i = Math.max(0, Math.floor(x - radius));
        i <= Math.min(width - 1, Math.ceil(x + radius));
        i += 1
      )
        if ((i - x) ** 2 + (j - y) ** 2 <= radius * radius) pixels.set(colour, (j * width + i) * 3);
  };
  const line = (a: Pixel, b: Pixel, radius: number, colour: Colour) => {
    const steps = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / Math.max(1, radius)));
    for (let step = 0; step <= steps; step += 1)
      dot(a[0] + ((b[0] - a[0]) * step) / steps, a[1] + ((b[1] - a[1]) * step) / steps, radius, colour);
  };
  const at = (right_mm: number, away_mm: number, up_mm: number) =>
    pixelOf(camera, { right_mm, away_mm, up_mm }, which);
  const scale = camera.focal_px / camera.distance_mm;
  for (let stripe = 0; stripe < 6; stripe += 1)
    line(
      [width * 0.08, height * (0.1 + stripe * 0.13)],
      [width * 0.16, height * (0.12 + stripe * 0.13)],
      5,
      CLUTTER,
    );
  for (let up = -60; up < 0; up += 2) line(at(-45, 0, up), at(45, 0, up), 1.5 * scale, POT);
  if (which === "front") line(at(40, 0, 0), at(40, 0, card_mm), 1.2 * scale, CARD);
  const byId = new Map(joints.map((joint) => [joint.id, joint]));
  for (const joint of joints) {
    const below = joint.below === undefined ? undefined : byId.get(joint.below);
    if (below)
      line(
        pixelOf(camera, below, which),
        pixelOf(camera, joint, which),
        Math.max(1, (joint.caliper_mm / 2) * scale),
        WOOD,
      );
  }
  for (const joint of joints) {
    if (joint.leaves_n === 0) continue;
    const turn = (joint.leafTowards_deg * Math.PI) / 180;
    const reach = joint.leafLength_mm;
    const tip = {
      right_mm: joint.right_mm + reach * Math.cos(turn),
      away_mm: joint.away_mm + reach * Math.sin(turn),
      up_mm: joint.up_mm + 4,
    };
    const foot = pixelOf(camera, joint, which);
    const end = pixelOf(camera, tip, which);
    for (let part = 2; part <= 10; part += 1) {
      const wide = Math.sin((part / 10) * Math.PI * 0.9) * (joint.leafWidth_mm / 2) * scale;
      dot(
        foot[0] + ((end[0] - foot[0]) * part) / 10,
        foot[1] + ((end[1] - foot[1]) * part) / 10,
        Math.max(1, wide),
        LEAF,
      );
    }
  }
  return png(pixels, width, height);
}

const CRC = Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (CRC[(crc ^ byte) & 255] as number) ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

/** PNG of 8-bit colour, rows unfiltered. ISO/IEC 15948. */
function png(pixels: Uint8Array, width: number, height: number): Uint8Array {
  const rows = Buffer.alloc(height * (width * 3 + 1));
  for (let y = 0; y < height; y += 1)
    rows.set(pixels.subarray(y * width * 3, (y + 1) * width * 3), y * (width * 3 + 1) + 1);
  const chunk = (type: string, body: Uint8Array): Buffer => {
    const data = Buffer.concat([Buffer.from(type, "latin1"), body]);
    const whole = Buffer.alloc(data.length + 8);
    whole.writeUInt32BE(body.length, 0);
    data.copy(whole, 4);
    whole.writeUInt32BE(crc32(data), data.length + 4);
    return whole;
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

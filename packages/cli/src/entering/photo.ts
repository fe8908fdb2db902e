import { readFile } from "node:fs/promises";
import { basename, resolve } from "node:path";
import { sha256Hex } from "@sillwood/bench/book";
import { FILE_MAX_B } from "@sillwood/store/entry-store";
import type { NewFile } from "../book/session.ts";
import { dataError } from "../errors.ts";

const JPEG_START = 0xd8;
const JPEG_SCAN = 0xda;
const JPEG_LAST_APP = 0xef;
const JPEG_FIRST_APP = 0xe1;
const JPEG_ADOBE = 0xee;
const JPEG_COMMENT = 0xfe;
const PNG_SIGN = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Chunks of a PNG that make the picture; all others (text, EXIF, time) are left out. */
const PNG_KEPT = [
  "IHDR",
  "PLTE",
  "IDAT",
  "IEND",
  "tRNS",
  "gAMA",
  "cHRM",
  "sRGB",
  "iCCP",
  "sBIT",
  "bKGD",
  "pHYs",
];

/** A photo for an entry, without where and when it was taken. */
export async function readPhoto(cwd: string, path: string): Promise<NewFile> {
  let bytes: Buffer;
  try {
    bytes = await readFile(resolve(cwd, path));
  } catch {
    throw dataError("photo", `there is no file ${JSON.stringify(basename(path))}`, path);
  }
  const photo = stripped(bytes);
  if (!photo)
    throw dataError(
      "photo",
      `${JSON.stringify(basename(path))} is no whole JPEG or PNG, so its location data can't be taken out here. The app takes any picture your browser shows.`,
      path,
    );
  if (photo.bytes.length > FILE_MAX_B)
    throw dataError(
      "photo",
      `the photo is ${photo.bytes.length} bytes; expected at most ${FILE_MAX_B} B`,
      path,
    );
  return { hash: sha256Hex(photo.bytes), ...photo };
}

/** The picture alone; undefined when it is neither JPEG nor PNG, or broken. */
export function stripped(bytes: Buffer): { readonly type: string; readonly bytes: Uint8Array } | undefined {
  if (bytes[0] === 0xff && bytes[1] === JPEG_START) {
    const kept = strippedJpeg(bytes);
    return kept && { type: "image/jpeg", bytes: kept };
  }
  if (!bytes.subarray(0, 8).equals(PNG_SIGN)) return undefined;
  const kept = strippedPng(bytes);
  return kept && { type: "image/png", bytes: kept };
}

/** Drops APP1 to APP15 (EXIF, GPS, XMP, maker notes) but Adobe's colour mark, and comments. */
function strippedJpeg(bytes: Buffer): Buffer | undefined {
  const kept: Buffer[] = [bytes.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1] as number;
    const end = at + 2 + bytes.readUInt16BE(at + 2);
    if (end > bytes.length) return undefined;
    const tells = marker >= JPEG_FIRST_APP && marker <= JPEG_LAST_APP && marker !== JPEG_ADOBE;
    if (marker === JPEG_SCAN) return Buffer.concat([...kept, pictureOnly(bytes.subarray(at))]);
    if (!tells && marker !== JPEG_COMMENT) kept.push(bytes.subarray(at, end));
    at = end;
  }
  return undefined;
}

/** Up to the end mark: phones hang a second picture, with its own location data, behind the first. */
function pictureOnly(scan: Buffer): Buffer {
  const end = scan.indexOf(Buffer.from([0xff, 0xd9]));
  return end < 0 ? scan : scan.subarray(0, end + 2);
}

function strippedPng(bytes: Buffer): Buffer | undefined {
  const kept: Buffer[] = [PNG_SIGN];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const end = at + 12 + bytes.readUInt32BE(at);
    if (end > bytes.length) return undefined;
    const name = bytes.toString("latin1", at + 4, at + 8);
    if (PNG_KEPT.includes(name)) kept.push(bytes.subarray(at, end));
    if (name === "IEND") return Buffer.concat(kept);
    at = end;
  }
  return undefined;
}

/** A picture as it goes into the book: re-encoded, so that place and camera data stay behind. */
export interface Picture {
  readonly sha256: string;
  readonly type: "image/jpeg";
  readonly bytes: ArrayBuffer;
  readonly width_px: number;
  readonly height_px: number;
}

const LONGEST_SIDE_px = 2000;
const QUALITY = 0.85;

/** @throws when the file is no picture that this browser can read */
export async function takePicture(file: Blob): Promise<Picture> {
  const image = await createImageBitmap(file, { imageOrientation: "from-image" });
  const scale = Math.min(1, LONGEST_SIDE_px / Math.max(image.width, image.height));
  const width_px = Math.max(1, Math.round(image.width * scale));
  const height_px = Math.max(1, Math.round(image.height * scale));
  const canvas = document.createElement("canvas");
  canvas.width = width_px;
  canvas.height = height_px;
  const context = canvas.getContext("2d");
  if (!context) throw new Error("this browser gave no canvas");
  context.drawImage(image, 0, 0, width_px, height_px);
  image.close();
  const blob = await new Promise<Blob>((resolve, reject) =>
    canvas.toBlob(
      (made) => (made ? resolve(made) : reject(new Error("no picture was made"))),
      "image/jpeg",
      QUALITY,
    ),
  );
  const bytes = await blob.arrayBuffer();
  return { sha256: await sha256Of(bytes), type: "image/jpeg", bytes, width_px, height_px };
}

async function sha256Of(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

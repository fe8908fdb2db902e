/** Files in pieces: over a bad line a photo goes on where it broke off. */

type Ask = (url: string, init: RequestInit) => Promise<Response>;

/** What two bars carry in a few seconds. @source our assumption */
export const PIECE_B = 256 * 1024;

/** Sends a file; returns the status of the last answer, 201 when it is kept there. Throws what the line throws. */
export async function putInPieces(ask: Ask, url: string, type: string, bytes: ArrayBuffer): Promise<number> {
  const size_B = bytes.byteLength;
  if (size_B <= PIECE_B)
    return (await ask(url, { method: "PUT", headers: { "content-type": type }, body: bytes })).status;
  let at_B = 0;
  // Twice around is enough for a server that forgot a half while this ran.
  for (let tries_n = 2 * Math.ceil(size_B / PIECE_B); tries_n > 0; tries_n--) {
    const until_B = Math.min(size_B, at_B + PIECE_B);
    const response = await ask(url, {
      method: "PUT",
      headers: { "content-type": type, "content-range": `bytes ${at_B}-${until_B - 1}/${size_B}` },
      body: bytes.slice(at_B, until_B),
    });
    if (response.status !== 202 && response.status !== 409) return response.status;
    at_B = ((await response.json()) as { have_B: number }).have_B;
  }
  return 409;
}

/** Beginnings of files whose line broke, until the next try. */
const begun = new Map<string, { readonly pieces: ArrayBuffer[]; have_B: number }>();
const BEGUN_MAX_n = 4;

/** Fetches a file; undefined where there is none. Throws what the line throws, and goes on from there when asked again. */
export async function getInPieces(
  ask: Ask,
  url: string,
): Promise<{ readonly type: string; readonly bytes: ArrayBuffer } | undefined> {
  const part = begun.get(url) ?? { pieces: [], have_B: 0 };
  begun.delete(url);
  begun.set(url, part);
  if (begun.size > BEGUN_MAX_n) begun.delete(begun.keys().next().value as string);
  for (;;) {
    const range = `bytes=${part.have_B}-${part.have_B + PIECE_B - 1}`;
    const response = await ask(url, { headers: { range } });
    const type = response.headers.get("content-type") ?? "application/octet-stream";
    if (response.status === 200) {
      begun.delete(url);
      return { type, bytes: await response.arrayBuffer() };
    }
    const size_B = Number(/\/(\d+)$/.exec(response.headers.get("content-range") ?? "")?.[1]);
    if (response.status !== 206 || !(size_B > 0)) {
      begun.delete(url);
      return undefined;
    }
    const piece = await response.arrayBuffer();
    part.pieces.push(piece);
    part.have_B += piece.byteLength;
    if (part.have_B < size_B) continue;
    begun.delete(url);
    return { type, bytes: await new Blob(part.pieces).arrayBuffer() };
  }
}

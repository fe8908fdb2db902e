import type { ListPreview } from "@sillwood/bench/pages";
import type { Draft } from "@sillwood/bench/round";
import type { Engine } from "../../engine/client.ts";

/** Series files are kept first, each under its hash, and their entries name them. */
export async function keepList(engine: Engine, { drafts, files }: ListPreview): Promise<readonly Draft[]> {
  const named = new Map<number, string>();
  for (const { draft, text } of files) {
    const bytes = new TextEncoder().encode(text).buffer as ArrayBuffer;
    const sha256 = await sha256Of(bytes);
    await engine.keepFile(sha256, "text/csv", bytes);
    named.set(draft, sha256);
  }
  return drafts.map((draft, i) => {
    const file = named.get(i);
    return file ? { ...draft, files: [file] } : draft;
  });
}

async function sha256Of(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

import { rm } from "node:fs/promises";

/**
 * Removes a temporary folder. Helpers of a killed browser may write for a moment longer; what then still
 * lies there is left to the system, since tidying up must not fail a test that held.
 */
export async function throwAway(folder: string): Promise<void> {
  for (let attempt = 0; attempt < 20; attempt += 1) {
    try {
      await rm(folder, { recursive: true, force: true });
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 250));
    }
  }
}

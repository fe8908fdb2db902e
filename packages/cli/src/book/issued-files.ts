import type { PlantId } from "@sillwood/bench/book";
import { issuedMissing } from "@sillwood/bench/issued";
import type { Desk } from "@sillwood/bench/pages";
import type { ReadStore } from "@sillwood/store/read-only";
import { findThing } from "../typed/find-thing.ts";
import { textOf } from "./load-book.ts";

/** Hands the ledger the kept forecasts by which a plant's are judged, as far as the store has them. */
export async function addIssuedFiles(
  desk: Desk,
  plantTyped: string,
  files: ReadStore["files"],
): Promise<void> {
  const found = findThing(desk, "plant", plantTyped);
  if ("wrong" in found) return;
  for (const file of issuedMissing(desk, { plant: found.id as PlantId })) {
    const text = await textOf(files, file);
    if (text !== undefined) desk.ledger.addIssued(file, text);
  }
}

import type { PlantId } from "@sillwood/bench/book";
import { useRef } from "react";
import { takePicture } from "../../device/photo.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";
import { sayLast, write } from "../last-line.ts";

/** Opens the camera or the gallery; the picture is re-encoded, kept under its hash and named by an entry. */
export function usePhoto(plant: PlantId) {
  const { plant: words } = useWords();
  const engine = useEngine();
  const field = useRef<HTMLInputElement>(null);
  const chosen = async (file: File | undefined) => {
    if (!file) return;
    try {
      const { sha256, type, bytes } = await takePicture(file);
      await engine.keepFile(sha256, type, bytes);
      await write(engine, [
        { kind: "plant.noted", on: [plant], data: { text: words.photoKept }, files: [sha256] },
      ]);
    } catch {
      sayLast({ text: words.photoFailed, trouble: true });
    }
  };
  return {
    take: () => field.current?.click(),
    input: (
      <input
        ref={field}
        type="file"
        accept="image/*"
        capture="environment"
        hidden
        aria-label={words.photo}
        onChange={(event) => {
          void chosen(event.target.files?.[0]);
          event.target.value = "";
        }}
      />
    ),
  };
}

import { useState } from "react";
import { takePicture } from "../../device/photo.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";
import { FilePicker } from "../read-list/file-picker.tsx";

/** A photo for the entry: re-encoded on this device, so that place and camera data stay behind. */
export function PhotoKey({
  count_n,
  onKept,
}: {
  readonly count_n: number;
  readonly onKept: (sha256: string) => void;
}) {
  const { write: words, plant } = useWords();
  const engine = useEngine();
  const [failed, setFailed] = useState(false);
  const take = async (file: File) => {
    setFailed(false);
    try {
      const picture = await takePicture(file);
      await engine.keepFile(picture.sha256, picture.type, picture.bytes);
      onKept(picture.sha256);
    } catch {
      setFailed(true);
    }
  };
  return (
    <>
      <FilePicker said={words.photos(count_n)} accept="image/*" camera onFile={(file) => void take(file)} />
      {failed && <p role="alert">{plant.photoFailed}</p>}
    </>
  );
}

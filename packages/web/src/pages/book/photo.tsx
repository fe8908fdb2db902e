import { useEffect, useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";

/** A photo of the book by its hash, from this device or the server; says so when it is on neither. */
export function Photo({ sha256, on }: { readonly sha256: string; readonly on: string }) {
  const { plant: words } = useWords();
  const engine = useEngine();
  const [url, setUrl] = useState<string | null>();
  useEffect(() => {
    let made: string | undefined;
    let over = false;
    void engine.file(sha256).then((file) => {
      if (over) return;
      // Series are files too, and no pictures.
      made = file?.type.startsWith("image/")
        ? URL.createObjectURL(new Blob([file.bytes], { type: file.type }))
        : undefined;
      setUrl(made ?? (file ? undefined : null));
    });
    return () => {
      over = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [engine, sha256]);
  if (url === null) return <p className="serif">{words.photoNotHere}</p>;
  return url ? (
    <img src={url} alt={words.photoAlt(on)} style={{ maxWidth: "100%", maxHeight: "40dvh" }} />
  ) : null;
}

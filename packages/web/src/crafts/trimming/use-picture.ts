import { useEffect, useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";

/** The address of a photo kept in the book; null where it has not come yet. */
export function usePicture(sha256: string | undefined): string | null | undefined {
  const engine = useEngine();
  const [address, setAddress] = useState<string | null>();
  useEffect(() => {
    let made: string | undefined;
    let over = false;
    if (sha256 === undefined) {
      setAddress(undefined);
      return undefined;
    }
    void engine.file(sha256).then((file) => {
      if (over) return;
      made = file ? URL.createObjectURL(new Blob([file.bytes], { type: file.type })) : undefined;
      setAddress(made ?? null);
    });
    return () => {
      over = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [engine, sha256]);
  return address;
}

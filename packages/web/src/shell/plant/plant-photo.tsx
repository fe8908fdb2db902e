import { useEffect, useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";
import styles from "./plant-screen.module.css";

/** The newest photo. Entry first, picture later: a picture that is not here yet is a state, not a gap. */
export function PlantPhoto({ sha256, number }: { readonly sha256: string; readonly number: string }) {
  const { plant: words } = useWords();
  const engine = useEngine();
  const [address, setAddress] = useState<string | null>();
  useEffect(() => {
    let made: string | undefined;
    let over = false;
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
  if (address === undefined) return null;
  if (address === null) return <p className="serif">{words.photoNotHere}</p>;
  return <img src={address} alt={words.photoAlt(number)} className={styles["photo"]} />;
}

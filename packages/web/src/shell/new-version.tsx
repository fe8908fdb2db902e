import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import { Key } from "../parts/key.tsx";
import { useWords } from "../words/words.ts";
import styles from "./new-version.module.css";

/** A newer Sillwood waits for a word and for the end of the walk; it never comes by itself. */
export function NewVersion() {
  const { shell } = useWords();
  const [path] = useLocation();
  const [update, setUpdate] = useState<() => Promise<void>>();
  useEffect(() => {
    let over = false;
    // Only where it is built and served; a page opened from a file has no such worker.
    void import("virtual:pwa-register").then(
      ({ registerSW }) => {
        if (over) return;
        const change = registerSW({
          immediate: true,
          onNeedRefresh: () => setUpdate(() => () => change(true)),
        });
      },
      () => undefined,
    );
    return () => {
      over = true;
    };
  }, []);
  const isWalking = ["/walk", "/whole", "/weigh", "/sheet"].some((start) => path.startsWith(start));
  if (!update || isWalking) return null;
  return (
    <div className={styles["note"]} role="status">
      <p>{shell.newVersion}</p>
      <Key onPress={() => void update()}>{shell.changeNow}</Key>
    </div>
  );
}

import { useEffect, useState } from "react";
import { askToKeep, isKeptForGood } from "../../device/persist.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import styles from "./round-screen.module.css";

const ASKED = "sillwood.asked-to-keep";
const WEEK_ms = 7 * 86_400_000;

/** Before the first round and weekly: this browser has not promised to keep the book. */
export function SaveRoom({ onLater }: { readonly onLater: () => void }) {
  const { shell } = useWords();
  const engine = useEngine();
  const [isAsking, setAsking] = useState(false);
  useEffect(() => {
    const last_ms = Number(localStorage.getItem(ASKED) ?? 0);
    if (Date.now() - last_ms > WEEK_ms) void isKeptForGood().then((kept) => setAsking(!kept));
  }, []);
  if (!isAsking) return null;
  const over = () => {
    localStorage.setItem(ASKED, String(Date.now()));
    onLater();
  };
  return (
    <section className={styles["part"]}>
      <p>{shell.storageRefused}</p>
      <KeyRow>
        <Key onPress={() => void askToKeep().then(over)}>{shell.allowKeeping}</Key>
        <Key onPress={() => void engine.sync().then(over)}>{shell.sendNow}</Key>
      </KeyRow>
    </section>
  );
}

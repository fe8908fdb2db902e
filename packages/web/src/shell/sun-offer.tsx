import { changeSettings } from "../device/settings.ts";
import { useWords } from "../words/words.ts";
import styles from "./save-mark.module.css";
import { usePaper } from "./use-paper.ts";

const DAYLIGHT_h = { from: 7, to: 20 } as const;

/** Outdoors by day the top line offers the paper for bright light. */
export function SunOffer({ outdoors }: { readonly outdoors: boolean }) {
  const { shell } = useWords();
  const paper = usePaper();
  const hour_h = new Date().getHours();
  if (!outdoors || paper === "sun" || hour_h < DAYLIGHT_h.from || hour_h >= DAYLIGHT_h.to) return null;
  return (
    <button
      type="button"
      className={styles["mark"]}
      aria-label={shell.sunAskSaid}
      onClick={() => changeSettings({ paper: "sun" })}
    >
      {shell.sunAsk}
    </button>
  );
}

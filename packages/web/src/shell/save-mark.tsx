import { useSyncExternalStore } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../engine/use-ask.ts";
import { Key, KeyRow } from "../parts/key.tsx";
import { Slip } from "../parts/slip.tsx";
import { useSlip } from "../parts/use-slip.ts";
import { useWords } from "../words/words.ts";
import styles from "./save-mark.module.css";
import { useSay } from "./say.ts";

const CLOCK_TOLD_ms = 120_000;

/** "3 on phone": kept here, not yet on the server. "all on server": on both. */
export function SaveMark() {
  const { shell } = useWords();
  const engine = useEngine();
  const mark = useSyncExternalStore(engine.listen, engine.mark);
  const slip = useSlip();
  const say = useSay();
  const [, go] = useLocation();
  const aside_n = mark.aside_n ?? 0;
  // What waits for the grower is not on this phone alone.
  const here_n = Math.max(0, mark.away_n - aside_n);
  const said =
    here_n > 0
      ? shell.onPhone(here_n)
      : mark.server === "answers"
        ? shell.allOnServer
        : mark.server === "unknown"
          ? ""
          : shell.onPhone(0);
  const ahead_ms = mark.ahead_ms ?? 0;
  const explained =
    mark.server === "unpaired"
      ? shell.unpaired
      : mark.server === "silent"
        ? shell.noConnection
        : here_n > 0
          ? shell.notYetHome(here_n)
          : shell.onServerToo;
  if (said === "") return null;
  return (
    <>
      <button type="button" className={styles["mark"]} onClick={slip.open} aria-label={shell.saveMark(said)}>
        {said}
      </button>
      <Slip slip={slip} title={said}>
        <p className="serif">{explained}</p>
        {Math.abs(ahead_ms) > CLOCK_TOLD_ms && (
          <p className="serif">
            {ahead_ms > 0
              ? shell.clockFast(say.minutes(ahead_ms / 60_000))
              : shell.clockSlow(say.minutes(-ahead_ms / 60_000))}
          </p>
        )}
        {aside_n > 0 && <p className="serif">{shell.waitsForGrower(aside_n)}</p>}
        {mark.server === "unpaired" && (
          <KeyRow>
            <Key
              onPress={() => {
                slip.close();
                go("/pair");
              }}
            >
              {shell.letInAgain}
            </Key>
          </KeyRow>
        )}
        {here_n > 0 && mark.server !== "unpaired" && (
          <KeyRow>
            <Key onPress={() => void engine.sync()}>{shell.sendNow}</Key>
          </KeyRow>
        )}
      </Slip>
    </>
  );
}

import { useSyncExternalStore } from "react";
import { nowMs } from "../engine/clock.ts";
import { useAsk, useEngine } from "../engine/use-ask.ts";
import { useWords } from "../words/words.ts";
import { othersMissing } from "./others-missing.ts";
import { useSay } from "./say.ts";

/** Beside what depends on others: whose entries are not here yet, and since when. */
export function OthersMissing() {
  const { shell } = useWords();
  const engine = useEngine();
  const say = useSay();
  const mark = useSyncExternalStore(engine.listen, engine.mark);
  const { value: people } = useAsk("people", {});
  const now_ms = nowMs();
  const missing = othersMissing(mark, people ?? [], engine.who()?.person, now_ms);
  return missing?.roles.map((role) => (
    <p key={role} className="serif">
      {shell.notHereYet[role](`${say.day(missing.since_ms, now_ms)} ${say.time(missing.since_ms)}`)}
    </p>
  ));
}

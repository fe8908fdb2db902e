import type { Task } from "@sillwood/bench/round";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Slip } from "../../parts/slip.tsx";
import type { SlipState } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import { lineOf, skipOf } from "./acts.ts";

interface Props {
  readonly slip: SlipState;
  readonly task: Task;
  readonly onLeave: () => void;
}

/** A reason in one tap; what was not done is written too. */
export function SkipSlip({ slip, task, onLeave }: Props) {
  const { pot: words } = useWords();
  const engine = useEngine();
  const reasons = [
    ["no time", words.noTime],
    ["not sure", words.notSure],
    ["too wet", words.tooWet],
    ["told to", words.toldTo],
  ] as const;
  const leave = (reason: (typeof reasons)[number][0]) => {
    slip.close();
    onLeave();
    if (reason === "not sure")
      void write(engine, skipOf(task, reason, words.leftNotSure(lineOf(task))), { said: words.notSureSaid });
    else void write(engine, skipOf(task, reason));
  };
  return (
    <Slip slip={slip} title={words.whyLeft}>
      <KeyRow>
        {reasons.slice(0, 2).map(([reason, said]) => (
          <Key key={reason} onPress={() => leave(reason)}>
            {said}
          </Key>
        ))}
      </KeyRow>
      <KeyRow>
        {reasons.slice(2).map(([reason, said]) => (
          <Key key={reason} onPress={() => leave(reason)}>
            {said}
          </Key>
        ))}
      </KeyRow>
    </Slip>
  );
}

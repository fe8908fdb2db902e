import type { Task } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation } from "wouter";
import { fromCrafts } from "../../crafts/index.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { addDigit, Pad } from "../../parts/pad.tsx";
import { Slip } from "../../parts/slip.tsx";
import type { SlipState } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import { hasPage } from "../routes.ts";
import { useSay, useSettings } from "../say.ts";
import { skipOf, stepOf } from "./acts.ts";
import { doubtful, typedVolume_mL, volumeTyped } from "./amount-typed.ts";
import styles from "./other-slip.module.css";

interface Props {
  readonly slip: SlipState;
  readonly task: Task;
  readonly number: string;
  readonly amount: number | undefined;
  /** What the pot holds when full, if a craft knows. */
  readonly most_mL: number | undefined;
  readonly onAmount: (value: number) => void;
  readonly onLeave: () => void;
}

/** Something other than the advice: less, more, an amount of one's own, already wet, looks wrong. */
export function OtherSlip({ slip, task, number, amount, most_mL, onAmount, onLeave }: Props) {
  const { pot: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const { jugStep_mL } = useSettings();
  const [, go] = useLocation();
  const [isTyping, setTyping] = useState(false);
  const close = () => {
    setTyping(false);
    slip.close();
  };
  const change = (by: number) => {
    onAmount(Math.max(stepOf(task, jugStep_mL), (amount ?? 0) + by));
    close();
  };
  const foundWet = fromCrafts("foundWet");
  const wet = () => {
    close();
    onLeave();
    void write(engine, [...skipOf(task, "too wet"), ...(foundWet ? [foundWet(task.plant)] : [])]);
  };
  const hasDesk = hasPage("/wrong/:plant");
  const volume = task.amount?.unit === "mL" && amount !== undefined;
  return (
    <Slip slip={{ ...slip, close }} title={words.amountTitle(number)}>
      {isTyping && amount !== undefined ? (
        <TypedAmount
          number={number}
          most_mL={most_mL}
          onKeep={(value) => {
            onAmount(value);
            close();
          }}
        />
      ) : (
        <>
          {volume && (
            <>
              <p className={styles["now"]}>{say.volume(amount)}</p>
              <KeyRow>
                <Key onPress={() => change(-stepOf(task, jugStep_mL))}>{words.less}</Key>
                <Key onPress={() => change(stepOf(task, jugStep_mL))}>{words.more}</Key>
                <Key onPress={() => setTyping(true)}>{words.typeIt}</Key>
              </KeyRow>
            </>
          )}
          <KeyRow>
            <Key onPress={wet}>{words.alreadyWet}</Key>
            {hasDesk && <Key onPress={() => go(`/wrong/${task.plant}?back=walk`)}>{words.looksWrong}</Key>}
          </KeyRow>
        </>
      )}
    </Slip>
  );
}

export function TypedAmount({
  number,
  most_mL,
  onKeep,
}: {
  readonly number: string;
  readonly most_mL: number | undefined;
  readonly onKeep: (value: number) => void;
}) {
  const { pot: words, number: numberWords } = useWords();
  const say = useSay();
  const { units } = useSettings();
  const [text, setText] = useState("");
  const [isDoubted, setDoubted] = useState(false);
  const value = typedVolume_mL(text, units);
  const doubt = value === undefined ? undefined : doubtful(value, most_mL);
  const keep = () => {
    if (value === undefined) return;
    if (doubt) setDoubted(true);
    else onKeep(value);
  };
  if (isDoubted && doubt && value !== undefined)
    return (
      <>
        <p className="serif">
          {words.tooMuch(say.volume(value), number, say.volume(doubt.most_mL))}{" "}
          {words.meant(say.volume(doubt.meant_mL))}
        </p>
        <KeyRow>
          <Key onPress={() => onKeep(doubt.meant_mL)}>{say.volume(doubt.meant_mL)}</Key>
          <Key onPress={() => onKeep(value)}>{words.right(say.volume(value))}</Key>
          <Key
            onPress={() => {
              setDoubted(false);
              setText("");
            }}
          >
            {words.change}
          </Key>
        </KeyRow>
      </>
    );
  return (
    <>
      <p className={styles["now"]} aria-live="polite">
        {value === undefined ? volumeTyped("0", units) : volumeTyped(text, units)}
      </p>
      <Pad
        label={words.amountTitle(number)}
        onDigit={(digit) => setText(addDigit(text, digit, 6))}
        left={{ said: numberWords.wipe, onPress: () => setText("") }}
        {...(units === "us"
          ? { right: { said: ".", onPress: () => setText(text.includes(".") ? text : `${text || "0"}.`) } }
          : {})}
      />
      <Key main shut={value === undefined} onPress={keep}>
        {value === undefined ? words.doneNoAmount : say.volume(value)}
      </Key>
    </>
  );
}

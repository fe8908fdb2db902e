import { useEffect, useState } from "react";
import { useLocation, useSearchParams } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { addDigit, Pad } from "../../parts/pad.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useKeys } from "../keyboard.ts";
import styles from "./number-screen.module.css";

const NUMBER_MOST_n = 5;
const SHEET_n = 8;

/** A pot's number on a big pad, from a keyboard, or from a scanner that types like one. Opens that plant from anywhere. */
export function NumberScreen() {
  const { number: words } = useWords();
  const [search] = useSearchParams();
  const [, go] = useLocation();
  const [text, setText] = useState(search.get("typed") ?? "");
  const [asked, setAsked] = useState<number>();
  const { value: found } = useAsk("number", { number: asked ?? -1 });
  const isSheet = text.length === SHEET_n;
  const isShut = text === "" || (text.length > NUMBER_MOST_n && !isSheet);

  const opened = asked !== undefined && found?.length === 1 ? found[0]?.plant : undefined;
  useEffect(() => {
    if (opened) go(`/plant/${opened}`, { replace: true });
  }, [opened, go]);

  const digit = (typed: string) => {
    setAsked(undefined);
    setText((before) => addDigit(before, typed, SHEET_n));
  };
  const enter = () => {
    if (isShut) return;
    if (isSheet) go(`/sheet/${text}`);
    else setAsked(Number(text));
  };
  useKeys({
    digit: (event) => digit(event.key),
    backspace: () => setText((before) => before.slice(0, -1)),
    enter: enter,
    escape: () => (text === "" ? history.back() : setText("")),
  });

  return (
    <Frame
      where={words.title}
      keys={
        <>
          <Pad
            label={words.ask}
            onDigit={digit}
            left={{ said: words.wipe, onPress: () => setText("") }}
            right={{ said: words.back, onPress: () => setText((before) => before.slice(0, -1)) }}
          />
          <Key main shut={isShut} onPress={enter}>
            {text === "" ? words.go : words.goTo(text)}
          </Key>
        </>
      }
    >
      <p className={styles["ask"]}>{words.ask}</p>
      <output className={styles["typed"]} aria-label={words.typed(text)}>
        {text || "\u00a0"}
      </output>
      {asked !== undefined && found?.length === 0 && <p role="alert">{words.none(String(asked))}</p>}
      {asked !== undefined && found && found.length > 1 && (
        <>
          <p role="alert">{words.several(String(asked))}</p>
          <Ledger>
            {found.map(({ plant, number, kind, ended }) => (
              <Row key={plant} onOpen={() => go(`/plant/${plant}`)}>
                {number} {kind} {ended}
              </Row>
            ))}
          </Ledger>
        </>
      )}
      <p className={styles["note"]}>{words.sheet}</p>
    </Frame>
  );
}

import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Pad } from "../../parts/pad.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useKeys } from "../keyboard.ts";
import styles from "./number-screen.module.css";
import { SHEET_n, setTyped, typeDigit, useTyped } from "./typed-number.ts";

const NUMBER_MOST_n = 5;

/** A pot's number on a big pad, from a keyboard, or from a scanner that types like one. Opens that plant from anywhere. */
export function NumberScreen() {
  const { number: words } = useWords();
  const [, go] = useLocation();
  const text = useTyped();
  const [asked, setAsked] = useState<number>();
  const { value: found } = useAsk("number", { number: asked ?? -1 });
  const isSheet = text.length === SHEET_n;
  const isShut = text === "" || (text.length > NUMBER_MOST_n && !isSheet);

  const opened = asked !== undefined && found?.length === 1 ? found[0]?.plant : undefined;
  useEffect(() => {
    if (opened) go(`/plant/${opened}`, { replace: true });
  }, [opened, go]);

  useEffect(() => () => setTyped(""), []);

  const digit = (typed: string) => {
    setAsked(undefined);
    typeDigit(typed);
  };
  const enter = () => {
    if (isShut) return;
    if (isSheet) go(`/sheet/${text}`);
    else setAsked(Number(text));
  };
  useKeys({
    digit: (event) => digit(event.key),
    backspace: () => setTyped(text.slice(0, -1)),
    enter: enter,
    escape: () => (text === "" ? history.back() : setTyped("")),
  });

  return (
    <Frame
      where={words.title}
      keys={
        <>
          <Pad
            label={words.ask}
            onDigit={digit}
            left={{ said: words.wipe, onPress: () => setTyped("") }}
            right={{ said: words.back, onPress: () => setTyped(text.slice(0, -1)) }}
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

import type { Json } from "@sillwood/bench/book";
import type { FeedAsk, FeedPage, FeedRecipe, MeterCheck } from "@sillwood/bench/crafts/feeding";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Pad } from "../../parts/pad.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { typeOn } from "../../shell/weigh/weight-typed.ts";
import styles from "./feed.module.css";
import { CRAFT, useFeedWords } from "./use-feed.ts";

type Scale = NonNullable<FeedAsk["read"]>["scale"];

interface MeterScreenProps {
  readonly ask: FeedAsk;
  readonly recipe: FeedRecipe;
  readonly onBack: () => void;
}

/** "It reads 2.1": as it should be, or do not pour yet, with what likely happened. */
export function MeterScreen({ ask, recipe, onBack }: MeterScreenProps) {
  const words = useFeedWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const [typed, setTyped] = useState("");
  const [scale, setScale] = useState<Scale>("mS/cm");
  const [check, setCheck] = useState<MeterCheck>();
  const [refused, setRefused] = useState<string>();
  const value = typed === "" || Number.isNaN(Number(typed)) ? undefined : Number(typed);
  const change = (next: (text: string) => string) => {
    setCheck(undefined);
    setRefused(undefined);
    setTyped(next);
  };
  const judge = async () => {
    if (value === undefined) return;
    const asked = { ...ask, read: { value, scale } };
    const answer = await engine.ask("craft page", { craft: CRAFT, ask: asked as unknown as Json });
    if ("refused" in answer) setRefused(answer.refused);
    else setCheck((answer.page as FeedPage).reading);
  };
  const keep = async () => {
    const written = await write(engine, check?.act ?? []);
    if ("kept" in written) go("/");
  };
  const isGood = check?.state === "good";
  const enter = () => void (isGood ? keep() : judge());
  useKeys({
    digit: (event) => change((text) => typeOn(text, event.key)),
    ".": () => change((text) => typeOn(text, ".")),
    ",": () => change((text) => typeOn(text, ".")),
    backspace: () => change((text) => text.slice(0, -1)),
    enter,
  });
  const main = () => {
    if (isGood) return words.mixed(recipe.tank);
    if (check) return words.mixedShut;
    return value === undefined ? words.checkShut : words.check;
  };
  return (
    <Frame
      where={words.reading}
      strip={false}
      keys={
        <>
          <Pad
            label={words.reading}
            onDigit={(digit) => change((text) => typeOn(text, digit))}
            left={{ said: words.again, onPress: () => change(() => "") }}
            right={{ said: ".", onPress: () => change((text) => typeOn(text, ".")) }}
          />
          <Key main shut={value === undefined || (check !== undefined && !isGood)} onPress={enter}>
            {main()}
          </Key>
        </>
      }
    >
      <p className="serif">{recipe.meterSaid}</p>
      <p className={styles["steps"]} aria-live="polite">
        {typed || "–"} {scale}
      </p>
      <Choices
        legend={words.scale}
        options={[
          { value: "mS/cm", said: words.mS },
          { value: "uS/cm", said: words.uS },
          { value: "ppm 500", said: words.ppm500 },
          { value: "ppm 700", said: words.ppm700 },
        ]}
        value={scale}
        onChoose={(next) => {
          setCheck(undefined);
          setScale(next);
        }}
      />
      {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
      {check && (
        <div role="alert" className={styles["ask"]}>
          <p>
            <strong>{check.said}</strong>
          </p>
          {check.slips.length > 0 && (
            <>
              <p>{words.likely}</p>
              <ul className={styles["plain"]}>
                {check.slips.map((slip) => (
                  <li key={slip}>{slip}</li>
                ))}
              </ul>
            </>
          )}
        </div>
      )}
      <KeyRow>
        <Key onPress={onBack}>{words.title}</Key>
      </KeyRow>
    </Frame>
  );
}

import type { PlantId } from "@sillwood/bench/book";
import type { WeighingRow } from "@sillwood/bench/round";
import { useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { addDigit, Pad } from "../../parts/pad.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useKeys } from "../keyboard.ts";
import { useSay, useSettings } from "../say.ts";
import styles from "./weigh-run.module.css";
import { typedWeight_g, typeOn } from "./weight-typed.ts";

interface Props {
  readonly where: string;
  readonly row: WeighingRow;
  readonly weight_g: number;
  readonly onTrue: () => void;
  readonly onLess: (weight_g: number) => void;
  readonly onOther: (plant: PlantId) => void;
  readonly onAgain: () => void;
}

/** A weight far from what the pot should have: held, not lost, not used, until a person says why. */
export function HeldWeight(props: Props) {
  const { row, weight_g, onTrue, onAgain } = props;
  const { weigh: words } = useWords();
  const say = useSay();
  const [asks, setAsks] = useState<"why" | "tare" | "pot">("why");
  if (asks === "tare") return <Tare {...props} />;
  if (asks === "pot") return <WhichPot {...props} />;
  return (
    <Frame
      where={props.where}
      beside={row.number}
      strip={false}
      page="held"
      keys={
        <>
          <KeyRow>
            <Key onPress={onTrue}>{words.sameTrue}</Key>
            <Key onPress={() => setAsks("tare")}>{words.saucer}</Key>
          </KeyRow>
          <KeyRow>
            <Key onPress={() => setAsks("pot")}>{words.otherPot}</Key>
            <Key onPress={onAgain}>{words.typeAgain}</Key>
          </KeyRow>
        </>
      }
    >
      <p className={styles["number"]}>{row.number}</p>
      <p role="alert" style={{ fontSize: "var(--t-title)" }}>
        {words.held(say.mass(weight_g), say.mass(row.low_g), say.mass(row.high_g))}
      </p>
      <p className="serif">{words.heldSaid}</p>
    </Frame>
  );
}

/** What stood on the pot is weighed alone and taken off. */
function Tare({ where, row, weight_g, onLess }: Props) {
  const { weigh: words } = useWords();
  const say = useSay();
  const { units } = useSettings();
  const [text, setText] = useState("");
  const tare_g = typedWeight_g(text, units);
  const left_g = tare_g === undefined ? undefined : Math.round((weight_g - tare_g) * 10) / 10;
  const isShut = left_g === undefined || left_g <= 0;
  const keep = () => {
    if (!isShut) onLess(left_g);
  };
  useKeys({ digit: (event) => setText((was) => typeOn(was, event.key)), enter: keep });
  return (
    <Frame
      where={where}
      beside={row.number}
      strip={false}
      page="tare"
      keys={
        <>
          <Pad
            label={words.tareQuestion}
            onDigit={(digit) => setText((was) => typeOn(was, digit))}
            left={{ said: words.wipe, onPress: () => setText("") }}
            right={{ said: ".", onPress: () => setText((was) => typeOn(was, ".")) }}
          />
          <Key main shut={isShut} onPress={keep}>
            {isShut ? words.keep : words.tareKeep(say.mass(left_g))}
          </Key>
        </>
      }
    >
      <p>{words.tareQuestion}</p>
      <output className={styles["typed"]} aria-label={words.typed(text)}>
        {text || "\u00a0"}
        <span className={styles["unit"]}>{units === "us" ? "oz" : "g"}</span>
      </output>
    </Frame>
  );
}

/** It was another pot that stood on the scale: the weight goes to that one. */
function WhichPot({ where, row, onOther }: Props) {
  const { weigh: words, number: numberWords } = useWords();
  const engine = useEngine();
  const [text, setText] = useState("");
  const [missed, setMissed] = useState<string>();
  const find = async () => {
    if (text === "") return;
    const [found] = await engine.ask("number", { number: Number(text) });
    if (found) onOther(found.plant);
    else setMissed(text);
  };
  useKeys({ digit: (event) => setText((was) => addDigit(was, event.key, 5)), enter: () => void find() });
  return (
    <Frame
      where={where}
      beside={row.number}
      strip={false}
      page="pot"
      keys={
        <>
          <Pad
            label={words.whichPot}
            onDigit={(digit) => setText((was) => addDigit(was, digit, 5))}
            left={{ said: words.wipe, onPress: () => setText("") }}
          />
          <Key main shut={text === ""} onPress={() => void find()}>
            {words.keep} {text}
          </Key>
        </>
      }
    >
      <p>{words.whichPot}</p>
      <output className={styles["typed"]} aria-label={words.typed(text)}>
        {text || "\u00a0"}
      </output>
      {missed !== undefined && <p role="alert">{numberWords.none(missed)}</p>}
    </Frame>
  );
}

import { useState } from "react";
import { useLocation, useParams, useSearchParams } from "wouter";
import { fromCrafts } from "../../crafts/index.ts";
import { sayAloud } from "../../device/listen.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Pad } from "../../parts/pad.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useKeys } from "../keyboard.ts";
import { write } from "../last-line.ts";
import { ReadingNote } from "../reading-note.tsx";
import { useRound } from "../round/use-round.ts";
import { useSay, useSettings } from "../say.ts";
import { HeldWeight } from "./held-weight.tsx";
import { useListening } from "./use-listening.ts";
import { type Run, useRun } from "./use-run.ts";
import { WeighDone } from "./weigh-done.tsx";
import styles from "./weigh-run.module.css";
import { HEAVIEST_g, isOutside, LIGHTEST_g, typedWeight_g, typeOn } from "./weight-typed.ts";

/** Screen 1c: one weight after another in walking order, on a pad of our own. */
export function WeighRun() {
  const { weigh: words } = useWords();
  const { bench = "" } = useParams<{ bench: string }>();
  const [search] = useSearchParams();
  const { run, error } = useRun(decodeURIComponent(bench), search.get("pot"));
  const { value: round } = useRound();
  const name = round?.benches.find((one) => one.bench === decodeURIComponent(bench))?.name ?? "";
  if (!run)
    return (
      <Frame where={words.title(name)}>
        <ReadingNote error={error} />
      </Frame>
    );
  return <Weighing run={run} where={words.title(name)} back={search.get("back") === "walk"} />;
}

function Weighing({
  run,
  where,
  back,
}: {
  readonly run: Run;
  readonly where: string;
  readonly back: boolean;
}) {
  const { weigh: words, pot, plant: plantWords } = useWords();
  const say = useSay();
  const { units, language } = useSettings();
  const engine = useEngine();
  const [, go] = useLocation();
  const [heardSaid, setHeardSaid] = useState<string>();
  const [at_n, setAt] = useState(0);
  const [text, setText] = useState("");
  const [held_g, setHeld] = useState<number>();
  const [kept, setKept] = useState<readonly string[]>([]);
  const weighed = fromCrafts("weighed");
  const row = run.rows[at_n];
  const next = run.rows[at_n + 1];
  const before = run.rows[at_n - 1];
  const weight_g = typedWeight_g(text, units);
  const isImpossible = weight_g !== undefined && (weight_g < LIGHTEST_g || weight_g > HEAVIEST_g);

  const leave = () => (back ? history.back() : go("/"));
  const to = (place_n: number) => {
    setText("");
    setHeld(undefined);
    setHeardSaid(undefined);
    setAt(Math.min(Math.max(place_n, 0), run.rows.length));
  };
  const keep = (value_g: number, isConfirmed: boolean) => {
    if (!row || !weighed) return;
    const place_n = at_n;
    to(at_n + 1);
    setKept([...kept, row.plant]);
    void write(engine, [weighed(row.plant, value_g, isConfirmed)], {
      onUndo: (undone) => {
        if (!undone) return;
        setKept((all) => all.filter((plant) => plant !== row.plant));
        to(place_n);
      },
    });
  };
  const enter = () => {
    if (weight_g === undefined || isImpossible || !row) return;
    if (isOutside(weight_g, row)) {
      setHeld(weight_g);
      navigator.vibrate?.([40, 60, 40]);
    } else keep(weight_g, false);
  };
  const type = (key: string) => setText((was) => typeOn(was, key));
  const ears = useListening((heard) => {
    if (held_g !== undefined || !row) return;
    if ("unknown" in heard) setHeardSaid(words.notHeard(heard.unknown));
    else if ("digits" in heard) {
      // Read back before it is kept: nothing is written from hearing alone.
      const digits = [...heard.digits].reduce(typeOn, "");
      setText(digits);
      setHeardSaid(words.heard(digits.split("").join(" ")));
      sayAloud(digits.split("").join(" "), language);
    } else if (heard.word === "next") enter();
    else if (heard.word === "skip") to(at_n + 1);
    else if (heard.word === "back") to(at_n - 1);
    else to(at_n);
  });
  useKeys(
    held_g === undefined
      ? {
          digit: (event) => type(event.key),
          ".": () => type("."),
          ",": () => type(","),
          backspace: () => setText((was) => was.slice(0, -1)),
          enter: enter,
          arrowright: () => to(at_n + 1),
          arrowleft: () => to(at_n - 1),
        }
      : { digit: () => undefined },
  );

  if (run.rows.length === 0)
    return (
      <Frame
        where={where}
        keys={
          <Key main onPress={leave}>
            {words.finish}
          </Key>
        }
      >
        <p className="serif">{words.nothing}</p>
      </Frame>
    );
  if (!row) return <WeighDone where={where} kept={kept} before={run.before} onLeave={leave} />;
  if (held_g !== undefined)
    return (
      <HeldWeight
        where={where}
        row={row}
        weight_g={held_g}
        onTrue={() => keep(held_g, true)}
        onLess={(value_g) => {
          if (isOutside(value_g, row)) setHeld(value_g);
          else keep(value_g, false);
        }}
        onOther={(plant) => {
          setHeld(undefined);
          setText("");
          if (weighed) void write(engine, [weighed(plant, held_g, true)]);
        }}
        onAgain={() => to(at_n)}
      />
    );
  return (
    <Frame
      where={where}
      beside={pot.place(at_n + 1, run.rows.length)}
      page={`${at_n}`}
      strip={false}
      keys={
        <>
          <Pad
            label={units === "us" ? words.ounces : words.grams}
            onDigit={type}
            left={
              units === "us"
                ? { said: ".", onPress: () => type(".") }
                : { said: words.wipe, onPress: () => setText("") }
            }
            right={{ said: words.skip, onPress: () => to(at_n + 1) }}
          />
          <Key main shut={weight_g === undefined || isImpossible} onPress={enter}>
            {next ? words.keepNext(next.number) : words.keepLast}
          </Key>
          <KeyRow inOrder>
            <Key shut={!before} onPress={() => to(at_n - 1)} label={pot.previousSaid(before?.number ?? "")}>
              {pot.previous(before?.number ?? "")}
            </Key>
            {units === "us" && <Key onPress={() => setText("")}>{words.wipe}</Key>}
            <Key onPress={leave}>{pot.pause}</Key>
            {ears.can && (
              <Key pressed={ears.isOpen} onPress={ears.toggle}>
                {words.listen}
              </Key>
            )}
            <Key shut={!next} onPress={() => to(at_n + 1)} label={pot.nextSaid(next?.number ?? "")}>
              {pot.next(next?.number ?? "")}
            </Key>
          </KeyRow>
        </>
      }
    >
      <div className={styles["pot"]}>
        <p className={styles["alone"]}>{words.potAlone}</p>
        <div className={styles["line"]}>
          <span className={styles["number"]}>{row.number}</span>
          <span>{words.expected(say.mass(row.low_g), say.mass(row.high_g))}</span>
        </div>
        <output className={styles["typed"]} aria-label={words.typed(text)}>
          {text === "" ? "\u00a0" : text}
          <span className={styles["unit"]}>{units === "us" ? "oz" : "g"}</span>
        </output>
      </div>
      {ears.isOpen && (
        <p className="serif" aria-live="polite">
          {heardSaid ?? words.listening}
        </p>
      )}
      {ears.ended !== undefined && <p role="alert">{words.notListening}</p>}
      {isImpossible && <p role="alert">{words.outOf(say.mass(LIGHTEST_g), say.mass(HEAVIEST_g))}</p>}
      {at_n === 0 && kept.length === 0 && run.all_n > 1 && !back && (
        <div className={styles["choice"]}>
          <Key pressed={!run.onlyFew} onPress={() => run.chooseFew(false)}>
            {words.all(run.all_n)}
          </Key>
          <Key pressed={run.onlyFew} onPress={() => run.chooseFew(true)}>
            {words.few}
          </Key>
          <span>{words.fiveSaid}</span>
        </div>
      )}
      <span className="for-readers">{plantWords.title(row.number)}</span>
    </Frame>
  );
}

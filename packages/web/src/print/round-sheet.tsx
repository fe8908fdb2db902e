import { useState } from "react";
import { useLocation } from "wouter";
import { nowMs } from "../engine/clock.ts";
import { useAsk } from "../engine/use-ask.ts";
import { Key, KeyRow } from "../parts/key.tsx";
import { Frame } from "../shell/frame.tsx";
import { ReadingNote } from "../shell/reading-note.tsx";
import { useSay, useSettings } from "../shell/say.ts";
import { lineOf } from "../shell/walk/acts.ts";
import { useWords } from "../words/words.ts";
import { Code } from "./code.tsx";
import { byBench, sheetRows } from "./rows.ts";
import styles from "./sheet.module.css";
import { sheetCode, wholeMinute_ms } from "./sheet-code.ts";

/** The round on paper: pencil, wet hands, boxes; its code brings it back in the same order. */
export function RoundSheet() {
  const { print: words, round: roundWords } = useWords();
  const say = useSay();
  const weight = words.weights[useSettings().units];
  const [, go] = useLocation();
  const [at_ms] = useState(() => wholeMinute_ms(nowMs()));
  const { value: round, error } = useAsk("round", { at_ms });
  if (!round)
    return (
      <Frame where={words.roundTitle}>
        <ReadingNote error={error} />
      </Frame>
    );
  const code = sheetCode(at_ms);
  return (
    <Frame
      where={words.roundTitle}
      beside={say.day(at_ms)}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go("/")}>{words.backTo}</Key>
            <Key onPress={() => go("/print/labels")}>{words.labelsTitle}</Key>
            <Key onPress={() => go("/number")}>{roundWords.typeBack}</Key>
          </KeyRow>
          <Key main onPress={() => window.print()}>
            {words.printIt}
          </Key>
        </>
      }
    >
      <article className={styles["sheet"]}>
        <header className={styles["head"]}>
          <div className={styles["facts"]}>
            <h2>
              {words.roundTitle} {say.day(at_ms)}
            </h2>
            <p>{round.said}</p>
            <p>{words.asOf(`${say.day(at_ms)} ${say.time(at_ms)}`)}</p>
            <p>
              {words.code} <strong>{code}</strong>
            </p>
            <p>{words.potLine(weight.name)}</p>
          </div>
          <Code text={code} size="18mm" />
        </header>
        <div className={styles["columns"]}>
          {byBench(sheetRows(round)).map((bench) => (
            <section key={bench.name}>
              <div className={`${styles["row"]} ${styles["names"]}`}>
                <h3 className={styles["bench"]}>{bench.name}</h3>
                {[words.less, words.more, words.not].map((box) => (
                  <span key={box} className={styles["boxName"]} aria-hidden="true">
                    {box}
                  </span>
                ))}
                <span aria-hidden="true">{weight.unit}</span>
              </div>
              {bench.rows.map(({ number, task }) => (
                <div key={task.id} className={styles["row"]}>
                  <span className={styles["number"]}>{number}</span>
                  <span>{lineOf(task)}</span>
                  <span className={styles["box"]} />
                  <span className={styles["box"]} />
                  <span className={styles["box"]} />
                  <span className={styles["write"]} />
                </div>
              ))}
            </section>
          ))}
        </div>
      </article>
    </Frame>
  );
}

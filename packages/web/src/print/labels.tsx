import { useState } from "react";
import { useLocation } from "wouter";
import { Key, KeyRow } from "../parts/key.tsx";
import { Frame } from "../shell/frame.tsx";
import { ReadingNote } from "../shell/reading-note.tsx";
import { useRound } from "../shell/round/use-round.ts";
import { useWords } from "../words/words.ts";
import { Code } from "./code.tsx";
import styles from "./sheet.module.css";

/** Labels with a code for every pot of a bench, and for the benches themselves. */
export function Labels() {
  const { print: words } = useWords();
  const [, go] = useLocation();
  const { value: round, error } = useRound();
  const [chosen, setChosen] = useState<string>();
  if (!round)
    return (
      <Frame where={words.labelsTitle}>
        <ReadingNote error={error} />
      </Frame>
    );
  const bench = round.benches.find((one) => one.bench === chosen);
  return (
    <Frame
      where={words.labelsTitle}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go("/print/round")}>{words.backTo}</Key>
          </KeyRow>
          <Key main onPress={() => window.print()}>
            {words.printIt}
          </Key>
        </>
      }
    >
      <KeyRow label={words.labelsTitle}>
        <Key pressed={bench === undefined} onPress={() => setChosen(undefined)}>
          {words.benchLabels}
        </Key>
        {round.benches.map((one) => (
          <Key key={one.bench} pressed={one.bench === chosen} onPress={() => setChosen(one.bench)}>
            {one.name}
          </Key>
        ))}
      </KeyRow>
      <div className={styles["labels"]} style={{ marginTop: "var(--s4)" }}>
        {bench
          ? bench.spots.flatMap(({ plant, number, kind }) =>
              plant && number ? (
                <div key={plant} className={styles["label"]}>
                  <div>
                    <strong>{number}</strong>
                    <span>{kind}</span>
                  </div>
                  <Code text={number} size="18mm" />
                </div>
              ) : (
                []
              ),
            )
          : round.benches.map(({ bench: id, name, spots }) => (
              <div key={id} className={`${styles["label"]} ${styles["wide"]}`}>
                <div>
                  <strong>{name}</strong>
                  <span>{words.pots(spots.filter(({ plant }) => plant !== undefined).length)}</span>
                </div>
                <Code text={spots.find(({ number }) => number)?.number ?? name} size="18mm" />
              </div>
            ))}
      </div>
    </Frame>
  );
}

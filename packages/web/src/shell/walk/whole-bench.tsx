import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger } from "../../parts/ledger.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { write } from "../last-line.ts";
import { ReadingNote } from "../reading-note.tsx";
import { hasWork, useRound } from "../round/use-round.ts";
import { actOf, isWeighing, lineOf } from "./acts.ts";
import styles from "./whole-bench.module.css";

/** A whole bench at once: amounts listed, tap the exceptions, one key writes the rest; it undoes as one. */
export function WholeBench() {
  const { pot: words } = useWords();
  const { bench: id = "" } = useParams<{ bench: string }>();
  const engine = useEngine();
  const [, go] = useLocation();
  const { value: round, error } = useRound();
  const [without, setWithout] = useState<ReadonlySet<string>>(new Set());
  const bench = round?.benches.find((one) => one.bench === decodeURIComponent(id));
  if (!bench)
    return (
      <Frame where={words.wholeBench}>
        <ReadingNote error={error} />
      </Frame>
    );
  const rows = bench.spots
    .filter(hasWork)
    .map((spot) => ({ spot, tasks: spot.tasks.filter((task) => !isWeighing(task)) }))
    .filter(({ tasks }) => tasks.length > 0);
  const toggle = (plant: string) => {
    const next = new Set(without);
    if (!next.delete(plant)) next.add(plant);
    setWithout(next);
  };
  const done = () => {
    const tasks = rows.flatMap(({ spot, tasks }) => (without.has(spot.plant ?? "") ? [] : tasks));
    void write(
      engine,
      [
        ...tasks.map((task) => actOf(task)),
        {
          kind: "round.walked",
          on: rows.map(({ spot }) => spot.plant as string),
          data: { bench: bench.bench, tasks_n: tasks.length },
        },
      ],
      { said: `${bench.name}, ${tasks.length}` },
    );
    go("/");
  };
  return (
    <Frame
      where={bench.name}
      beside={words.wholeBench}
      strip={false}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => history.back()}>{words.pause}</Key>
          </KeyRow>
          <Key main onPress={done} shut={without.size === rows.length}>
            {words.doneButThese(without.size)}
          </Key>
        </>
      }
    >
      <p className="serif">{words.tapExceptions}</p>
      <Ledger label={bench.name}>
        {rows.map(({ spot, tasks }) => {
          const isOut = without.has(spot.plant ?? "");
          return (
            <li key={spot.plant}>
              <button
                type="button"
                className={styles["row"]}
                aria-pressed={isOut}
                onClick={() => toggle(spot.plant ?? "")}
              >
                <span className={styles["number"]}>{spot.number}</span>
                <span className={styles["what"]}>{tasks.map(lineOf).join(", ")}</span>
                {isOut && <span>{words.leftOut}</span>}
              </button>
            </li>
          );
        })}
      </Ledger>
    </Frame>
  );
}

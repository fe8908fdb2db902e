import type { PlantRow } from "@sillwood/bench/pages";
import { useState } from "react";
import { useLocation } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import { TextField } from "../fields/text-field.tsx";
import { BatchRows } from "./batch-rows.tsx";
import { EndedRows } from "./ended-rows.tsx";
import { isFound } from "./find.ts";
import styles from "./plants.module.css";

const FIND = "find-a-plant";

/** Screen 17: the benches as ruled lists in walking order. */
export function Plants() {
  const { plants: words } = useWords();
  const { value: seen, error } = useAsk("plants", {});
  const [find, setFind] = useState("");
  const [, go] = useLocation();
  useKeys({ "/": () => document.getElementById(FIND)?.focus() });

  const keys = (
    <>
      <KeyRow>
        <Key onPress={() => go("/bench/new")}>{words.newBench}</Key>
        <Key onPress={() => go("/new/batch.started")}>{words.newBatch}</Key>
        <Key onPress={() => go("/plants/list")}>{words.readAList}</Key>
      </KeyRow>
      <Key main onPress={() => go("/new/plant.brought")}>
        {words.new}
      </Key>
    </>
  );
  if (!seen)
    return (
      <Frame where={words.title} keys={keys}>
        <ReadingNote error={error} />
      </Frame>
    );

  const wanted = find.trim();
  const row = (plant: PlantRow) => (
    <Row key={plant.plant} onOpen={() => go(`/plant/${plant.plant}`)}>
      <PlantLine row={plant} />
    </Row>
  );
  const benches = seen.benches.map((bench) => ({
    ...bench,
    found: bench.rows.flatMap(({ plants }) => plants).filter((plant) => isFound(plant, bench.name, wanted)),
  }));
  const nowhere = seen.nowhere.filter((plant) => isFound(plant, words.nowhere, wanted));
  const found_n = benches.reduce((sum_n, { found }) => sum_n + found.length, nowhere.length);
  const all_n = seen.benches.reduce(
    (sum_n, { rows }) => sum_n + rows.reduce((in_n, { plants }) => in_n + plants.length, 0),
    seen.nowhere.length,
  );
  return (
    <Frame where={words.title} beside={words.count(all_n)} keys={keys}>
      {all_n === 0 && seen.batches.length === 0 ? (
        <div className={styles["empty"]}>
          <p className="serif">{words.empty}</p>
          <KeyRow>
            <Key onPress={() => go("/first")}>{words.fourFacts}</Key>
          </KeyRow>
        </div>
      ) : (
        <TextField id={FIND} label={words.find} type="search" value={find} onType={setFind} />
      )}
      {wanted !== "" && (
        <p className={styles["found"]} role="status">
          {found_n === 0 ? words.noneFound(wanted) : words.found(found_n)}
        </p>
      )}
      {benches.map(
        (bench) =>
          (wanted === "" || bench.found.length > 0) && (
            <section key={bench.id} className={styles["bench"]}>
              <h2 className={styles["head"]}>
                <button
                  type="button"
                  className={styles["benchName"]}
                  onClick={() => go(`/bench/${bench.id}`)}
                >
                  {bench.name} <span aria-hidden="true">&gt;</span>
                </button>
                <span className={styles["beside"]}>
                  {bench.quarantine ? `${words.quarantine}, ` : ""}
                  {words.count(bench.found.length)}
                </span>
              </h2>
              {bench.found.length > 0 ? (
                <Ledger label={bench.name}>{bench.found.map(row)}</Ledger>
              ) : (
                <p className={styles["bare"]}>{words.bare(bench.rows.length)}</p>
              )}
            </section>
          ),
      )}
      {nowhere.length > 0 && (
        <section className={styles["bench"]}>
          <h2 className={styles["head"]}>{words.nowhere}</h2>
          <Ledger label={words.nowhere}>{nowhere.map(row)}</Ledger>
        </section>
      )}
      {wanted === "" && <BatchRows batches={seen.batches} problems={seen.problems} />}
      <EndedRows rows={seen.ended.filter((plant) => isFound(plant, "", wanted))} />
    </Frame>
  );
}

function PlantLine({ row: { number, kind, next, spotName } }: { readonly row: PlantRow }) {
  return (
    <span className={styles["line"]}>
      <span className={styles["number"]}>{number}</span>
      <span className={styles["kind"]}>
        {kind}
        {spotName && <span className={styles["spot"]}> {spotName}</span>}
      </span>
      {next && (
        <span className={styles["next"]}>
          {next.title.toLocaleLowerCase()} {next.said}
        </span>
      )}
    </span>
  );
}

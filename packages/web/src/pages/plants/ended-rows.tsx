import type { PlantRow } from "@sillwood/bench/pages";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { write } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import styles from "./plants.module.css";

/** Plants that have left the bench: folded away, never gone. */
export function EndedRows({ rows }: { readonly rows: readonly PlantRow[] }) {
  const { plants: words, fields } = useWords();
  const engine = useEngine();
  const slip = useSlip();
  const [opened, setOpened] = useState<PlantRow>();
  const [, go] = useLocation();
  if (rows.length === 0) return null;
  return (
    <details className={styles["bench"]}>
      <summary className={styles["head"]}>{words.ended(rows.length)}</summary>
      <Ledger label={words.ended(rows.length)}>
        {rows.map((row) => (
          <Row
            key={row.plant}
            onOpen={() => {
              setOpened(row);
              slip.open();
            }}
          >
            <span className={styles["line"]}>
              <span className={styles["number"]}>{row.number}</span>
              <span className={styles["kind"]}>{row.kind}</span>
              <span className={styles["next"]}>{fields.options[row.ended ?? ""] ?? row.ended}</span>
            </span>
          </Row>
        ))}
      </Ledger>
      <Slip slip={slip} title={`${opened?.number ?? ""} ${opened?.kind ?? ""}`}>
        <KeyRow>
          <Key onPress={() => go(`/plant/${opened?.plant ?? ""}`)}>{words.itsPage}</Key>
          <Key
            onPress={() => {
              slip.close();
              if (opened) void write(engine, [{ kind: "plant.reopened", on: [opened.plant], data: {} }]);
            }}
          >
            {words.reopen}
          </Key>
        </KeyRow>
      </Slip>
    </details>
  );
}

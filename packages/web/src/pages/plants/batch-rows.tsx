import { useState } from "react";
import { useLocation } from "wouter";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import type { PlantsSeen } from "../answers/seen.ts";
import styles from "./plants.module.css";

interface BatchRowsProps {
  readonly batches: PlantsSeen["batches"];
  readonly problems: readonly string[];
}

/** Plants that are counted together, and what can happen to their count. */
export function BatchRows({ batches, problems }: BatchRowsProps) {
  const { plants: words } = useWords();
  const slip = useSlip();
  const [opened, setOpened] = useState<PlantsSeen["batches"][number]>();
  const [, go] = useLocation();
  if (batches.length === 0) return null;
  const to = (kind: string) => go(`/write/${kind}/${opened?.id ?? ""}`);
  return (
    <section className={styles["bench"]}>
      <h2 className={styles["head"]}>{words.batches}</h2>
      <Ledger label={words.batches}>
        {batches.map((batch) => (
          <Row
            key={batch.id}
            onOpen={() => {
              setOpened(batch);
              slip.open();
            }}
          >
            <span className={styles["line"]}>
              <span className={styles["number"]}>{batch.count_n}</span>
              <span className={styles["kind"]}>
                {batch.name} <span className={styles["spot"]}>{batch.kind}</span>
              </span>
              {(batch.lost_n > 0 || batch.from) && (
                <span className={styles["next"]}>
                  {[batch.from && words.from(batch.from), batch.lost_n > 0 && words.lost(batch.lost_n)]
                    .filter(Boolean)
                    .join(", ")}
                </span>
              )}
            </span>
          </Row>
        ))}
      </Ledger>
      {problems.map((problem) => (
        <p key={problem} className={styles["bare"]}>
          {problem}
        </p>
      ))}
      <Slip slip={slip} title={opened?.name ?? ""}>
        <p>{opened && words.inBatch(opened.count_n)}</p>
        <KeyRow>
          <Key onPress={() => to("batch.split")}>{words.split}</Key>
          {batches.length > 1 && <Key onPress={() => to("batch.merged")}>{words.merge}</Key>}
          <Key onPress={() => to("batch.lost")}>{words.lose}</Key>
        </KeyRow>
      </Slip>
    </section>
  );
}

import { useState } from "react";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { OriginMark } from "../../parts/origin.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { NumberField } from "../fields/number-field.tsx";
import { shownUnit } from "../fields/shown-unit.ts";
import styles from "../pages.module.css";
import type { AssumedRow } from "../questions.ts";

/** Every value that is ours: what it is now, its source, and the one measurement that replaces it. */
export function AssumedScreen() {
  const { settings: words } = useWords();
  const { value: rows, error } = useAsk("assumed", {});
  const engine = useEngine();
  const say = useSay();
  const slip = useSlip();
  const [opened, setOpened] = useState<AssumedRow>();
  const [value, setValue] = useState<number | undefined | null>();
  const keep = async (next: number) => {
    if (!opened) return;
    slip.close();
    await write(engine, [{ kind: "assumption.set", on: ["book"], data: { key: opened.key, value: next } }]);
  };
  const said = (number: number, unit: string) => {
    const { symbol, shown } = shownUnit(unit, say.units);
    return unit === "share" ? say.percent(number) : `${say.number(shown(number), 3)} ${symbol}`.trim();
  };
  return (
    <Frame where={words.assumed} beside={rows && `${rows.length}`}>
      <p className={`serif ${styles["lead"]}`}>{words.assumedLead}</p>
      {!rows && <ReadingNote error={error} />}
      {rows && (
        <Ledger label={words.assumed}>
          {rows.map((row) => (
            <Row
              key={row.key}
              onOpen={() => {
                setOpened(row);
                setValue(row.now);
                slip.open();
              }}
            >
              <span className={styles["line"]}>
                <span>{row.what}</span>
                <strong>
                  {said(row.now, row.unit)} <OriginMark origin={row.changed ? "measured" : "assumed"} />
                </strong>
              </span>
              <span className={styles["beside"]}>{words.replacedBy(row.replacedBy)}</span>
            </Row>
          ))}
        </Ledger>
      )}
      <Slip slip={slip} title={opened?.what ?? ""}>
        {opened && (
          <div className={styles["form"]}>
            <p className="serif">{words.sourceIs(opened.source)}</p>
            <NumberField
              label={words.value}
              range={{ unit: opened.unit === "share" ? "" : opened.unit, min: opened.min, max: opened.max }}
              value={value ?? undefined}
              onValue={setValue}
            />
            {opened.changed && (
              <Key onPress={() => void keep(opened.value)}>
                {words.asBefore(said(opened.value, opened.unit))}
              </Key>
            )}
            <Key
              wide
              shut={typeof value !== "number"}
              onPress={() => typeof value === "number" && void keep(value)}
            >
              {words.keepValue}
            </Key>
          </div>
        )}
      </Slip>
    </Frame>
  );
}

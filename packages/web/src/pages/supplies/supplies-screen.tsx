import { useState } from "react";
import { useLocation } from "wouter";
import { zoneOf } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care, Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { localDate } from "../book/when.ts";
import styles from "../pages.module.css";
import type { SupplyRow } from "../questions.ts";

/** What is on hand, by kind, with lot, price and expiry. */
export function Supplies() {
  const { supplies: words, fields } = useWords();
  const { value: rows, error } = useAsk("supplies", {});
  const say = useSay();
  const slip = useSlip();
  const [opened, setOpened] = useState<SupplyRow>();
  const [, go] = useLocation();
  const today = localDate(nowMs(), zoneOf(useSettings()));
  const onHand = ({ onHand: amount, unit }: SupplyRow) =>
    unit === "mL"
      ? say.volume(amount)
      : unit === "g"
        ? say.mass(amount)
        : `${say.number(amount)} ${fields.unit(unit)}`;
  const to = (kind: string) => go(`/write/${kind}/${opened?.id ?? ""}`);
  return (
    <Frame
      where={words.title}
      keys={
        <Key main onPress={() => go("/new/supply.bought")}>
          {words.bought}
        </Key>
      }
    >
      <Care word={words.care}>{words.labelCare}</Care>
      {!rows && <ReadingNote error={error} />}
      {rows?.length === 0 && <p className="serif">{words.empty}</p>}
      {rows && (
        <Ledger label={words.title}>
          {rows.map((row) => (
            <Row
              key={row.id}
              onOpen={() => {
                setOpened(row);
                slip.open();
              }}
            >
              <span className={styles["line"]}>
                <span>{row.name}</span>
                <strong>{onHand(row)}</strong>
              </span>
              <span className={styles["beside"]}>
                {[
                  words.what[row.what] ?? row.what,
                  row.lot && words.lot(row.lot),
                  row.price_minor !== undefined && say.money(row.price_minor, row.currency ?? "EUR"),
                  row.expires &&
                    (row.expires < today ? words.expired : words.goodUntil)(say.date(row.expires)),
                  row.counted && words.counted(row.counted),
                ]
                  .filter(Boolean)
                  .join(", ")}
              </span>
            </Row>
          ))}
        </Ledger>
      )}
      <Slip slip={slip} title={opened?.name ?? ""}>
        <KeyRow>
          <Key onPress={() => to("supply.used")}>{words.used}</Key>
          <Key onPress={() => to("supply.counted")}>{words.count}</Key>
          <Key onPress={() => to("supply.thrown")}>{words.thrown}</Key>
        </KeyRow>
      </Slip>
    </Frame>
  );
}

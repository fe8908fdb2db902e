import type { Waiting } from "../../device/house-calls.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { sayLast } from "../../shell/last-line.ts";
import styles from "../pages.module.css";
import { usePeopleWords } from "./people-words.ts";
import type { HouseSeen } from "./use-house.ts";

/** What a phone wrote that it may not write by itself: the grower takes or drops each. */
export function WaitingList({ house }: { readonly house: HouseSeen }) {
  const own = usePeopleWords();
  const engine = useEngine();
  const waiting = house.seen?.waiting ?? [];
  const drafts = waiting.map(({ entry: { kind, on, data, by, at_ms } }) => ({ kind, on, data, by, at_ms }));
  const { value: said } = useAsk("sentences", { drafts });
  if (waiting.length === 0) return null;
  const settle = async (take: readonly Waiting[], drop: readonly Waiting[]) => {
    const { taken_n, dropped_n } = await house.calls.settle(take, drop);
    sayLast({ text: take.length > 0 ? own.took(taken_n) : own.dropped(dropped_n) });
    await engine.sync();
    await house.look();
  };
  return (
    <section className={styles["part"]}>
      <h2>{own.waits}</h2>
      <p className={styles["note"]}>{own.waitsSaid}</p>
      <Ledger label={own.waits}>
        {waiting.map((one, i) => (
          <Row key={`${one.id}/${one.hash}`}>
            <p>{said?.[i]}</p>
            <p className={styles["beside"]}>{own.why[one.why]}</p>
            <KeyRow>
              <Key label={`${own.take}: ${said?.[i] ?? ""}`} onPress={() => void settle([one], [])}>
                {own.take}
              </Key>
              <Key label={`${own.drop}: ${said?.[i] ?? ""}`} onPress={() => void settle([], [one])}>
                {own.drop}
              </Key>
            </KeyRow>
          </Row>
        ))}
      </Ledger>
      {waiting.length > 1 && (
        <KeyRow>
          <Key onPress={() => void settle(waiting.slice(0, 500), [])}>{own.takeAll(waiting.length)}</Key>
          <Key onPress={() => void settle([], waiting.slice(0, 500))}>{own.dropAll}</Key>
        </KeyRow>
      )}
    </section>
  );
}

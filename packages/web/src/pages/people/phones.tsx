import type { PairedDevice } from "../../device/house-calls.ts";
import { nowMs } from "../../engine/clock.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";
import { usePeopleWords } from "./people-words.ts";
import type { HouseSeen } from "./use-house.ts";

/** The phones that were let in. One tap closes one: that is an entry, which goes out with the next sync. */
export function Phones({ house }: { readonly house: HouseSeen }) {
  const own = usePeopleWords();
  const { settings: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const devices = house.seen?.devices ?? [];
  const close = async ({ device, name }: PairedDevice) => {
    const written = await engine.write([{ kind: "device.closed", on: [device], data: { name } }]);
    // Not to be taken back by Undo: the phone would stay outside all the same. A new code lets it in.
    if ("kept" in written) sayLast({ text: own.closedNow(name) });
    await engine.sync();
    await house.look();
  };
  return (
    <section className={styles["part"]}>
      <h2>{own.phones}</h2>
      {devices.length === 0 && <p className={styles["note"]}>{own.noPhones}</p>}
      <Ledger label={own.phones}>
        {devices.map((one) => (
          <Row key={one.device}>
            <span className={styles["line"]}>
              <span>
                {one.name}
                <br />
                <span className={styles["beside"]}>
                  {house.seen?.cards.get(one.person)?.name ?? words.roles[one.role]},{" "}
                  {one.closed_ms === undefined
                    ? own.seen(`${say.day(one.seen_ms, nowMs())} ${say.time(one.seen_ms)}`)
                    : own.isClosed}
                </span>
              </span>
              {one.closed_ms === undefined && one.device !== engine.who()?.device && (
                <Key label={`${own.closePhone}: ${one.name}`} onPress={() => void close(one)}>
                  {own.closePhone}
                </Key>
              )}
            </span>
          </Row>
        ))}
      </Ledger>
    </section>
  );
}

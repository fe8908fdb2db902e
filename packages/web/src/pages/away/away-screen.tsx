import { useState } from "react";
import { zoneOf } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { addDays } from "../book/days.ts";
import { fromLocal_ms } from "../book/when.ts";
import { TextField } from "../fields/text-field.tsx";
import styles from "../pages.module.css";

const USUAL_d = 7;
const REMEDIES_n = 3;

/** An absence, planned: two dates, what will not last, what helps with its sum, a sheet for the sitter. */
export function Away() {
  const { away: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const zone = zoneOf(useSettings());
  const today = new Intl.DateTimeFormat("sv-SE", { timeZone: zone }).format(nowMs());
  const [from, setFrom] = useState(addDays(today, 1));
  const [to, setTo] = useState(addDays(today, 1 + USUAL_d));
  const from_ms = fromLocal_ms(from, "08:00", zone);
  const to_ms = fromLocal_ms(to, "08:00", zone);
  const { value: plan, error } = useAsk("away", { from_ms: from_ms ?? 0, to_ms: to_ms ?? 0 });
  const canKeep = plan !== undefined && "plans" in plan && from_ms !== undefined && to_ms !== undefined;
  const plans = plan && "plans" in plan ? plan.plans : [];
  return (
    <Frame
      where={words.title}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => print()}>{words.print}</Key>
          </KeyRow>
          <Key
            main
            shut={!canKeep}
            onPress={() =>
              canKeep && void write(engine, [{ kind: "round.away", on: ["book"], data: { from_ms, to_ms } }])
            }
          >
            {words.keep}
          </Key>
        </>
      }
    >
      <div className={`${styles["form"]} ${styles["pair"]} ${styles["noPrint"]}`}>
        <TextField label={words.from} type="date" value={from} onType={setFrom} />
        <TextField label={words.to} type="date" value={to} onType={setTo} />
      </div>
      {!plan && <ReadingNote error={error} />}
      {plan && "refused" in plan && <p role="alert">{words.refused(plan.refused)}</p>}
      {plans.map(({ craft, plan: one }) => {
        // Remedies are offered where the chance passes what the grower accepts.
        const telling = one.plants.filter(({ remedies }) => remedies.length > 0);
        return (
          <div key={craft}>
            <p className={styles["lead"]}>
              <strong>{one.said}</strong>{" "}
              {telling.length < one.plants.length && words.others(one.plants.length - telling.length)}
            </p>
            <div className={styles["noPrint"]}>
              <Ledger label={words.wontLast}>
                {telling.map(({ plant, said, remedies }) => (
                  <Row key={plant}>
                    <span>{said}</span>
                    {remedies.length > 0 && (
                      <ol className={styles["remedies"]}>
                        {remedies.slice(0, REMEDIES_n).map((remedy) => (
                          <li key={remedy.key}>
                            {remedy.said} <span className={styles["beside"]}>{remedy.sum}</span>
                          </li>
                        ))}
                      </ol>
                    )}
                  </Row>
                ))}
              </Ledger>
            </div>
            <section className={styles["part"]}>
              <h2>{words.sitter}</h2>
              {one.sitterHow.map((line) => (
                <p key={line} className={`serif ${styles["lead"]}`}>
                  {line}
                </p>
              ))}
              <Ledger label={words.sitter}>
                {one.sitter.map(({ plant, at_ms, said }) => (
                  <Row key={`${plant} ${at_ms}`}>
                    <span className={styles["line"]}>
                      <span>{say.day(at_ms)}</span>
                      <span>{said}</span>
                    </span>
                  </Row>
                ))}
              </Ledger>
            </section>
            {one.back.length > 0 && (
              <section className={styles["part"]}>
                <h2>{words.back}</h2>
                <Ledger label={words.back}>
                  {one.back.slice(0, 12).map(({ plant, said }) => (
                    <Row key={`${plant} ${said}`}>{said}</Row>
                  ))}
                </Ledger>
              </section>
            )}
          </div>
        );
      })}
    </Frame>
  );
}

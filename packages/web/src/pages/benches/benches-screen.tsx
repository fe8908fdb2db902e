import { useLocation } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";

/** The benches with the air and light they are reckoned with, one row a shelf; their light as a map is the craft's own page. */
export function Benches() {
  const { benches: words } = useWords();
  const { value: seen, error } = useAsk("benches", {});
  const say = useSay();
  const [, go] = useLocation();
  return (
    <Frame
      where={words.title}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go("/plants")}>{words.toPlants}</Key>
          </KeyRow>
          <Key main onPress={() => go("/bench/new")}>
            {words.newBench}
          </Key>
        </>
      }
    >
      {!seen && <ReadingNote error={error} />}
      {seen?.benches.length === 0 && <p className="serif">{words.empty}</p>}
      {seen && seen.missing.length > 0 && (
        <p className={styles["note"]}>{words.missing(seen.missing.join(", "))}</p>
      )}
      {seen && (
        <Ledger label={words.title}>
          {seen.benches.map((bench) => (
            <Row key={bench.id} onOpen={() => go(`/bench/${bench.id}`)}>
              <span className={styles["line"]}>
                <strong>{bench.name}</strong>
                <span className={styles["beside"]}>
                  {[
                    words.places[bench.place],
                    bench.outdoors && words.outdoors,
                    bench.quarantine && words.quarantine,
                  ]
                    .filter(Boolean)
                    .join(", ")}
                </span>
              </span>
              <span className={styles["beside"]}>
                {words.airToday(say.temperature(bench.dayAir_C), say.temperature(bench.nightAir_C))}{" "}
                {words.lightToday(say.number(bench.spots[0]?.dli_mol_m2_d ?? 0, 1))}{" "}
                {words.plantsOn(
                  bench.spots.reduce((sum_n, { plants }) => sum_n + plants.length, 0),
                  bench.spots.length,
                )}
              </span>
            </Row>
          ))}
        </Ledger>
      )}
    </Frame>
  );
}

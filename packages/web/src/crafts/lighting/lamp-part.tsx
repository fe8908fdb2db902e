import type { BenchLight, Caution } from "@sillwood/bench/crafts/lighting";
import type { Working } from "@sillwood/bench/working";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { write } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import { Cares } from "./cares.tsx";
import styles from "./light.module.css";
import { useLightWords } from "./use-light.ts";

interface LampPartProps {
  readonly bench: BenchLight;
  readonly cautions: readonly Caution[];
  readonly onWorking: (working: Working) => void;
}

/** What the lamps of a bench do and should do: cautions first, then the clock, what it costs, and what to do when they are out. */
export function LampPart({ bench, cautions, onWorking }: LampPartProps) {
  const words = useLightWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const { timer, advice, energy } = bench;
  if (bench.lamps.length === 0) return null;
  const isOut = timer?.outSince_ms !== undefined;
  return (
    <section className={styles["part"]}>
      <h2>{words.lamp}</h2>
      <Cares cautions={cautions} of={["water", "heat"]} />
      {advice && (
        <>
          <p>
            <Sourced origin={advice.working.origin} size="row" onOpen={() => onWorking(advice.working)}>
              {advice.said}
            </Sourced>{" "}
            <OriginMark origin={advice.working.origin} />
          </p>
          {advice.waitSaid && <p className="serif">{advice.waitSaid}</p>}
          {advice.shortSaid && <p className="serif">{advice.shortSaid}</p>}
          <p>
            <Sourced origin={advice.energy.working.origin} onOpen={() => onWorking(advice.energy.working)}>
              {advice.energy.said}
            </Sourced>
          </p>
        </>
      )}
      {timer && (
        <p>
          {words.timer}: {timer.said} <OriginMark origin={timer.origin} />{" "}
          {timer.origin === "assumed" && <span className={styles["beside"]}>{words.timerAssumed}</span>}
        </p>
      )}
      {energy && !advice && (
        <p>
          <Sourced origin={energy.working.origin} onOpen={() => onWorking(energy.working)}>
            {energy.said}
          </Sourced>
        </p>
      )}
      {timer?.outSince_ms !== undefined && (
        <p role="status">
          <strong>{words.outSince(`${say.day(timer.outSince_ms)} ${say.time(timer.outSince_ms)}`)}</strong>
        </p>
      )}
      <KeyRow>
        <Key onPress={() => go(`/craft/light/${encodeURIComponent(bench.bench)}/draw/timer`)}>
          {words.setLamp}
        </Key>
        <Key
          onPress={() =>
            void write(engine, [
              {
                kind: "bench.outage",
                on: [bench.bench],
                data: { what: "lamps", is: isOut ? "back" : "out" },
              },
            ])
          }
        >
          {isOut ? words.lampsBack : words.lampsOut}
        </Key>
      </KeyRow>
    </section>
  );
}

import type { Round } from "@sillwood/bench/round";
import { useEffect } from "react";
import { useLocation } from "wouter";
import { nowMs } from "../../engine/clock.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { SpotStrip } from "../../parts/spot-strip.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { benchesWithWork, hasWork, stripMarks } from "../round/use-round.ts";
import { useSay } from "../say.ts";
import type { Walking } from "./use-walk.ts";
import { setWalk } from "./walk-place.ts";

/** The end of a bench: what was done, what was left, and the next bench. The walk itself becomes an entry. */
export function BenchDone({ walking, round }: { readonly walking: Walking; readonly round: Round }) {
  const { pot: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const { place, bench } = walking;
  const minutes = Math.max(1, Math.round((place.touchedAt_ms - place.startedAt_ms) / 60_000));
  useEffect(() => {
    if (place.closed || place.stops.length === 0) return;
    setWalk({ ...place, closed: true });
    // Not through the last line: the pot written last keeps its Undo there.
    void engine.write([
      {
        kind: "round.walked",
        on: place.stops,
        data: { bench: place.bench, minutes, tasks_n: place.done_n },
        at_ms: nowMs(),
      },
    ]);
  }, [place, engine, minutes]);
  const left_n = bench.spots.filter((spot) => hasWork(spot) || spot.skipped).length;
  const next = benchesWithWork(round).find((one) => one.bench !== bench.bench);
  const last = place.stops.length - 1;
  return (
    <Frame
      where={bench.name}
      strip={false}
      keys={
        <>
          <KeyRow>
            <Key
              onPress={() => {
                setWalk({ ...place, at_n: last, closed: false });
              }}
            >
              {words.previous(walking.numberAt(last) ?? "")}
            </Key>
            {next && <Key onPress={() => go("/")}>{words.pause}</Key>}
          </KeyRow>
          <Key main onPress={() => go(next ? `/walk/${encodeURIComponent(next.bench)}` : "/")}>
            {next ? words.nextBench(next.name) : words.finish}
          </Key>
        </>
      }
    >
      <p style={{ fontSize: "var(--t-title)" }}>{words.benchDone(bench.name)}</p>
      <SpotStrip marks={stripMarks(bench)} said={words.benchDone(bench.name)} />
      <p className="serif">{words.benchDoneSaid(say.minutes(minutes), place.done_n)}</p>
      {left_n > 0 && <p className="serif">{words.left(left_n)}</p>}
    </Frame>
  );
}

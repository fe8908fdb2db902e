import { useEffect, useState } from "react";
import { useEngine, useRevision } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useSay } from "../say.ts";

interface Props {
  readonly where: string;
  readonly kept: readonly string[];
  readonly before: Readonly<Record<string, number>>;
  readonly onLeave: () => void;
}

/** Ranges that became narrower by so little are not worth a word, days (our choice). */
const WORTH_SAYING_d = 0.05;

/** What the run bought: "14 ranges, on average 1.1 days narrower." */
export function WeighDone({ where, kept, before, onLeave }: Props) {
  const { weigh: words } = useWords();
  const engine = useEngine();
  const revision = useRevision();
  const say = useSay();
  const [after, setAfter] = useState<Readonly<Record<string, number>>>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again when the last weight has been folded
  useEffect(() => {
    void engine.ask("ranges", { plants: kept }).then(setAfter);
  }, [engine, kept, revision]);
  const gains = kept.flatMap((plant) => {
    const gain_d = (before[plant] ?? Number.NaN) - (after?.[plant] ?? Number.NaN);
    return gain_d > WORTH_SAYING_d ? [gain_d] : [];
  });
  const mean_d = gains.reduce((sum, gain_d) => sum + gain_d, 0) / Math.max(1, gains.length);
  return (
    <Frame
      where={where}
      strip={false}
      keys={
        <Key main onPress={onLeave}>
          {words.finish}
        </Key>
      }
    >
      <p style={{ fontSize: "var(--t-title)" }}>{words.allWeighed(kept.length)}</p>
      {after && kept.length > 0 && (
        <p className="serif">
          {gains.length > 0
            ? words.bought(gains.length, words.days(say.number(mean_d, 1)))
            : words.boughtNothing}
        </p>
      )}
    </Frame>
  );
}

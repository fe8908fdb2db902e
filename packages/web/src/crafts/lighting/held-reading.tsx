import type { ReadingCheck } from "@sillwood/bench/crafts/lighting";
import type { Draft } from "@sillwood/bench/round";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useWords } from "../../words/words.ts";
import { useLightWords } from "./use-light.ts";

interface HeldReadingProps {
  readonly where: string;
  readonly check: ReadingCheck;
  readonly onAgain: () => void;
  readonly onAnswer: (drafts: readonly Draft[]) => void;
  /** Only where it may be true all the same. */
  readonly onRight: (() => void) | undefined;
}

/** A reading that can't be true, or hardly: held, not lost, not used, with its ways out. */
export function HeldReading({ where, check, onAgain, onAnswer, onRight }: HeldReadingProps) {
  const words = useLightWords();
  const { weigh } = useWords();
  return (
    <Frame
      where={where}
      strip={false}
      page="held"
      keys={
        <>
          <KeyRow>
            {check.answers.map(({ said, drafts }) => (
              <Key key={said} onPress={() => onAnswer(drafts)}>
                {said}
              </Key>
            ))}
            {onRight && <Key onPress={onRight}>{words.itIsRight}</Key>}
          </KeyRow>
          <Key main onPress={onAgain}>
            {words.typeAgain}
          </Key>
        </>
      }
    >
      <p role="alert" style={{ fontSize: "var(--t-row)" }}>
        {check.said}
      </p>
      <p className="serif">{weigh.heldSaid}</p>
      {check.then && <p className="serif">{check.then.said}</p>}
    </Frame>
  );
}

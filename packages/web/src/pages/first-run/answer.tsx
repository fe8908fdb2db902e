import { useAsk } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { fourFacts, isAnything, type Said } from "./facts.ts";
import styles from "./first-run.module.css";

interface AnswerProps {
  readonly said: Said;
  readonly onLift: (lifted: "heavy" | "light") => void;
}

/** The live answer with the guesses that are in it, and at once the one question that sharpens it. */
export function Answer({ said, onLift }: AnswerProps) {
  const { firstRun: words } = useWords();
  if (!isAnything(said))
    return (
      <div className={styles["answer"]} aria-live="polite">
        <p className={styles["said"]}>{words.noAnswer}</p>
      </div>
    );
  return (
    <>
      <Live said={said} />
      <div className={styles["lift"]}>
        <span>{words.lift}</span>
        <Key pressed={said.lifted === "heavy"} onPress={() => onLift("heavy")}>
          {words.heavy}
        </Key>
        <Key pressed={said.lifted === "light"} onPress={() => onLift("light")}>
          {words.light}
        </Key>
      </div>
    </>
  );
}

function Live({ said }: { readonly said: Said }) {
  const { firstRun: words } = useWords();
  const say = useSay();
  const { value: answer, error } = useAsk("first", { facts: fourFacts(said) });
  const isUnsaid = (fact: string | number | undefined) => fact === undefined || fact === "unknown";
  const guessed = [
    ...(isUnsaid(said.habit) ? [words.kindGuess] : []),
    ...(isUnsaid(said.place) ? [words.lightGuess] : []),
    ...(answer?.guessed ?? []),
  ];
  return (
    <div className={styles["answer"]} aria-live="polite">
      {answer ? (
        <>
          <p className={styles["said"]}>
            <Sourced origin={answer.origin}>{words.water(answer.said)}</Sourced>
          </p>
          {guessed.length > 0 && (
            <p className={styles["guesses"]}>
              {words.guesses(guessed.length)} <OriginMark origin="assumed" /> {say.list(guessed)}
            </p>
          )}
        </>
      ) : (
        <ReadingNote error={error} />
      )}
    </div>
  );
}

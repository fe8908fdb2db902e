import { useEffect } from "react";
import { useParams, useSearchParams } from "wouter";
import { keepAwake } from "../../device/keep-awake.ts";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { ReadingNote } from "../reading-note.tsx";
import { useRound } from "../round/use-round.ts";
import { AtThePot } from "./at-the-pot.tsx";
import { BenchDone } from "./bench-done.tsx";
import { useWalk } from "./use-walk.ts";

/** Screen 1b: carries two wet hands past every pot of a bench that needs something. */
export function Walk() {
  const { round: words } = useWords();
  const { bench = "" } = useParams<{ bench: string }>();
  const [search] = useSearchParams();
  const { value: round, error } = useRound();
  const walking = useWalk(round, decodeURIComponent(bench), search.get("pot"));
  useEffect(keepAwake, []);
  if (!round || !walking)
    return (
      <Frame where={words.title}>
        <ReadingNote error={error} />
      </Frame>
    );
  return walking.isOver ? <BenchDone walking={walking} round={round} /> : <AtThePot walking={walking} />;
}

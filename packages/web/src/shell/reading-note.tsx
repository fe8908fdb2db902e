import { useEffect, useState, useSyncExternalStore } from "react";
import { useEngine } from "../engine/use-ask.ts";
import { useWords } from "../words/words.ts";
import { useSay } from "./say.ts";

const PATIENCE_ms = 300;

/** "Reading the book: 180,000 of 250,000 entries." Only after 300 ms; no empty grey shapes. */
export function ReadingNote({ error }: { readonly error?: Error | undefined }) {
  const { shell } = useWords();
  const engine = useEngine();
  const reading = useSyncExternalStore(engine.listen, engine.reading);
  const say = useSay();
  const [isLate, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), PATIENCE_ms);
    return () => clearTimeout(timer);
  }, []);
  if (error) return <p className="serif">{shell.notRead}</p>;
  if (!isLate) return null;
  return (
    <p className="serif" role="status">
      {reading ? shell.readingBook(say.number(reading.read_n), say.number(reading.of_n)) : shell.reading}
    </p>
  );
}

import type { Caution } from "@sillwood/bench/crafts/lighting";
import { Care } from "../../parts/ledger.tsx";
import { useLightWords } from "./use-light.ts";

interface CaresProps {
  readonly cautions: readonly Caution[];
  /** What the hands are about to do here. */
  readonly of: readonly Caution["key"][];
}

/** The cautions that belong before this step, one line each. */
export function Cares({ cautions, of }: CaresProps) {
  const words = useLightWords();
  return cautions
    .filter(({ key }) => of.includes(key))
    .map(({ key, said }) => (
      <Care key={key} word={words.care}>
        {said}
      </Care>
    ));
}

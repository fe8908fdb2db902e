import { Key, KeyRow } from "../../parts/key.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import type { SaidDoubt } from "../questions.ts";

interface DoubtKeysProps {
  readonly doubt: SaidDoubt;
  readonly onMeant: () => void;
  readonly onRight: () => void;
  readonly onChange: () => void;
}

/** Possible but hardly meant: what was typed, what the pot can hold, the likely slip, and the ways out. */
export function DoubtKeys({ doubt, onMeant, onRight, onChange }: DoubtKeysProps) {
  const { pot: words } = useWords();
  const say = useSay();
  const [typed, most, meant] = [doubt.value, doubt.most, doubt.meant].map((value) => say.volume(value)) as [
    string,
    string,
    string,
  ];
  return (
    <div role="alert">
      <p>
        {words.tooMuch(typed, doubt.number, most)} {words.meant(meant)}
      </p>
      <KeyRow>
        <Key onPress={onMeant}>{meant}</Key>
        <Key onPress={onRight}>{words.right(typed)}</Key>
        <Key onPress={onChange}>{words.change}</Key>
      </KeyRow>
    </div>
  );
}

import { useState } from "react";
import { useParams } from "wouter";
import type { Identity } from "../../engine/messages.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Pad } from "../../parts/pad.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import styles from "./people.module.css";
import { usePeopleWords } from "./people-words.ts";

const CODE_n = 8;

/** A phone's first page at a door that asks for a key: eight digits, and it is in. */
export function PairPage({
  onPaired,
  given = "",
}: {
  readonly onPaired: (identity: Identity) => void;
  readonly given?: string;
}) {
  const words = usePeopleWords();
  const engine = useEngine();
  const [code, setCode] = useState(given);
  const [name, setName] = useState("");
  const [refused, setRefused] = useState<number>();
  const [asking, setAsking] = useState(false);
  const digit = (typed: string) => setCode((before) => (before.length < CODE_n ? before + typed : before));
  const isShut = code.length < CODE_n || asking;
  const pair = () => {
    if (isShut) return;
    setAsking(true);
    setRefused(undefined);
    engine.pair(code, name.trim() || words.phoneNameUsual).then(
      (answer) => {
        setAsking(false);
        if ("identity" in answer) return onPaired(answer.identity);
        setCode("");
        setRefused(answer.refused);
      },
      () => {
        setAsking(false);
        setRefused(0);
      },
    );
  };
  useKeys({ digit: (event) => digit(event.key), backspace: () => setCode(code.slice(0, -1)), enter: pair });
  return (
    <div className={styles["page"]}>
      <main className={styles["reading"]}>
        <h1>{words.pairTitle}</h1>
        <p className="serif">{words.pairSaid}</p>
        <label className={styles["field"]}>
          <span>{words.phoneName}</span>
          <input
            type="text"
            value={name}
            maxLength={60}
            autoComplete="off"
            placeholder={words.phoneNameUsual}
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        {refused !== undefined && <p role="alert">{words.refused[refused] ?? words.refusedOther}</p>}
        <output className={styles["code"]} aria-label={words.typed(code)}>
          {code.padEnd(CODE_n, "·").replace(/^..../, "$& ")}
        </output>
      </main>
      <section className={styles["keys"]} aria-label={words.pairTitle}>
        <Pad
          label={words.pairTitle}
          onDigit={digit}
          left={{ said: words.wipe, onPress: () => setCode("") }}
          right={{ said: words.back, onPress: () => setCode(code.slice(0, -1)) }}
        />
        <Key main shut={isShut} onPress={pair}>
          {asking ? words.pairing : words.pairKey}
        </Key>
      </section>
    </div>
  );
}

/** The same page where the phone was let in before: reached from the save mark, or from the code of a grower's screen. */
export function PairScreen() {
  const { code } = useParams<{ code?: string }>();
  return (
    <PairPage
      given={/^\d{8}$/.test(code ?? "") ? (code as string) : ""}
      onPaired={() => {
        location.hash = "#/";
        location.reload();
      }}
    />
  );
}

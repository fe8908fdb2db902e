import { useState } from "react";
import type { Identity } from "../../engine/messages.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import styles from "./first-start.module.css";

/** Who holds this device: chosen once, no account. The card's name stays here and never enters the book. */
export function FirstStart({ onChosen }: { readonly onChosen: (identity: Identity) => void }) {
  const { first, shell } = useWords();
  const engine = useEngine();
  const { value: people } = useAsk("people", {});
  const [card, setCard] = useState("");
  const be = (role: "grower" | "helper") => {
    const known = people?.find((person) => person.role === role)?.id;
    void engine
      .be({ role, ...(known ? { person: known } : {}), ...(card.trim() ? { card: card.trim() } : {}) })
      .then(onChosen);
  };
  return (
    <div className={styles["page"]}>
      <main className={styles["reading"]}>
        <h1>{first.title}</h1>
        <p className="serif">{first.said}</p>
        {people && <p className="serif">{people.length > 0 ? first.foundPeople : first.newBook}</p>}
        <label className={styles["card"]}>
          <span>{first.card}</span>
          <input
            type="text"
            value={card}
            maxLength={60}
            autoComplete="off"
            onChange={(event) => setCard(event.target.value)}
          />
          <small>{first.cardSaid}</small>
        </label>
      </main>
      <section className={styles["keys"]} aria-label={shell.keys}>
        <p className={styles["role"]}>{first.helperSaid}</p>
        <Key wide shut={!people} onPress={() => be("helper")}>
          {first.helper}
        </Key>
        <p className={styles["role"]}>{first.growerSaid}</p>
        <Key main shut={!people} onPress={() => be("grower")}>
          {first.grower}
        </Key>
      </section>
    </div>
  );
}

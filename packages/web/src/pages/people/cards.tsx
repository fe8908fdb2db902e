import { useState } from "react";
import type { Card } from "../../device/house-calls.ts";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import { TextField } from "../fields/text-field.tsx";
import styles from "../pages.module.css";
import { usePeopleWords } from "./people-words.ts";
import type { HouseSeen } from "./use-house.ts";

/** Names of people: on the server alone, to be changed and erased at any time. */
export function Cards({ house }: { readonly house: HouseSeen }) {
  const own = usePeopleWords();
  const { settings: words } = useWords();
  const { value: people } = useAsk("people", {});
  const [open, setOpen] = useState<string>();
  return (
    <section className={styles["part"]}>
      <h2>{own.card}</h2>
      <p className={styles["note"]}>{own.cardSaid}</p>
      <Ledger label={own.card}>
        {(people ?? []).map(({ id, role }) => (
          <Row key={id} onOpen={open === id ? undefined : () => setOpen(id)}>
            <span className={styles["line"]}>
              <span>{house.seen?.cards.get(id)?.name ?? words.roles[role]}</span>
              <span className={styles["beside"]}>{id.slice(-6)}</span>
            </span>
            {open === id && (
              <CardForm
                card={house.seen?.cards.get(id)}
                onKeep={async (card) => {
                  await house.calls.keepCard(id, card);
                  sayLast({ text: own.cardKept });
                  setOpen(undefined);
                  await house.look();
                }}
                onErase={async () => {
                  await house.calls.eraseCard(id);
                  sayLast({ text: own.cardErased });
                  setOpen(undefined);
                  await house.look();
                }}
              />
            )}
          </Row>
        ))}
      </Ledger>
    </section>
  );
}

interface CardFormProps {
  readonly card: Partial<Card> | undefined;
  readonly onKeep: (card: Card) => Promise<void>;
  readonly onErase: () => Promise<void>;
}

function CardForm({ card, onKeep, onErase }: CardFormProps) {
  const own = usePeopleWords();
  const [name, setName] = useState(card?.name ?? "");
  const [shown, setShown] = useState(card?.shown ?? "");
  const isEmpty = name.trim() === "";
  const keep = () => onKeep({ name: name.trim(), ...(shown.trim() ? { shown: shown.trim() } : {}) });
  return (
    <div className={styles["form"]}>
      <TextField label={own.cardName} value={name} onType={(text) => setName(text.slice(0, 100))} />
      <TextField label={own.cardShown} value={shown} onType={(text) => setShown(text.slice(0, 60))} />
      <KeyRow>
        <Key shut={isEmpty} onPress={() => void keep()}>
          {own.keepCard}
        </Key>
        {card && <Key onPress={() => void onErase()}>{own.eraseCard}</Key>}
      </KeyRow>
    </div>
  );
}

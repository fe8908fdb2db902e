import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";

/** Who is known to the book, and who holds this device. Names stand on cards outside the book. */
export function PeopleScreen() {
  const { settings: words } = useWords();
  const { value: people } = useAsk("people", {});
  const engine = useEngine();
  const hold = (role: "grower" | "helper", person?: string) =>
    void engine.be({ role, ...(person ? { person } : {}) }).then(() => location.reload());
  const helper = people?.find(({ role }) => role === "helper");
  return (
    <Frame where={words.people}>
      <p className={`serif ${styles["lead"]}`}>{words.peopleLead}</p>
      <Ledger label={words.people}>
        {(people ?? []).map(({ id, role }) => (
          <Row key={id} onOpen={role === "viewer" ? undefined : () => hold(role, id)}>
            <span className={styles["line"]}>
              <span>{words.roles[role]}</span>
              <span className={styles["beside"]}>{id.slice(-6)}</span>
            </span>
          </Row>
        ))}
      </Ledger>
      {!helper && <Key onPress={() => hold("helper")}>{words.newHelper}</Key>}
    </Frame>
  );
}

import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useWords } from "../../words/words.ts";
import styles from "../pages.module.css";
import { Cards } from "./cards.tsx";
import { LetIn } from "./let-in.tsx";
import { usePeopleWords } from "./people-words.ts";
import { Phones } from "./phones.tsx";
import { useHouse } from "./use-house.ts";
import { WaitingList } from "./waiting-list.tsx";

/** Who writes into this book, on which devices; for the grower also who may come in, and what waits for a word. */
export function PeopleScreen() {
  const { settings: words } = useWords();
  const own = usePeopleWords();
  const engine = useEngine();
  const me = engine.who();
  return (
    <Frame where={words.people}>
      {me?.paired ? (
        <p className={`serif ${styles["lead"]}`}>{own.mine(words.roles[me.role])}</p>
      ) : (
        <Holder />
      )}
      {me?.role === "grower" && <ForTheGrower />}
      {me?.paired && <Leave />}
    </Frame>
  );
}

/** This computer's own browser is nobody's in particular: whoever stands before it says so. */
function Holder() {
  const { settings: words } = useWords();
  const { value: people } = useAsk("people", {});
  const engine = useEngine();
  const hold = (role: "grower" | "helper", person?: string) =>
    void engine.be({ role, ...(person ? { person } : {}) }).then(() => location.reload());
  const helper = people?.find(({ role }) => role === "helper");
  return (
    <>
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
    </>
  );
}

function ForTheGrower() {
  const own = usePeopleWords();
  const house = useHouse();
  if (house.silent) return <p className={`serif ${styles["lead"]}`}>{own.notNow}</p>;
  if (!house.seen) return null;
  return (
    <>
      <WaitingList house={house} />
      <Phones house={house} />
      <LetIn house={house} />
      <Cards house={house} />
    </>
  );
}

function Leave() {
  const own = usePeopleWords();
  const { calls } = useHouse();
  const engine = useEngine();
  return (
    <section className={styles["part"]}>
      <p className={styles["note"]}>{own.leaveSaid}</p>
      <Key onPress={() => void calls.leave().then(() => engine.sync())}>{own.leave}</Key>
    </section>
  );
}

import type { Role } from "@sillwood/bench/people";
import { useState } from "react";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Code } from "../../print/code.tsx";
import { useSay } from "../../shell/say.ts";
import pages from "../pages.module.css";
import styles from "./people.module.css";
import { usePeopleWords } from "./people-words.ts";
import type { HouseSeen } from "./use-house.ts";

interface Given {
  readonly code: string;
  readonly until_ms: number;
  readonly address?: string;
}

/** A code for one phone. Somebody new is written into the book first: who may come in is the book's business. */
export function LetIn({ house }: { readonly house: HouseSeen }) {
  const own = usePeopleWords();
  const engine = useEngine();
  const say = useSay();
  const { value: people } = useAsk("people", {});
  const [choosing, setChoosing] = useState(false);
  const [given, setGiven] = useState<Given>();
  const letIn = async (role: Role) => {
    setChoosing(false);
    const person = people?.find((one) => one.role === role)?.id ?? (await joined(role));
    if (person) setGiven(await house.calls.code(person, role));
  };
  const joined = async (role: Role) => {
    const [person] = await engine.ask("ids", { n: 1 });
    const written = await engine.write([{ kind: "person.joined", on: [person as string], data: { role } }]);
    await engine.sync();
    return "kept" in written ? person : undefined;
  };
  if (house.seen?.address === undefined) return <p className={pages["note"]}>{own.noDoor}</p>;
  const link = given && `${(given.address ?? house.seen.address).replace(/\/$/, "")}/#/pair/${given.code}`;
  return (
    <section className={pages["part"]}>
      {given && link && (
        <div className={styles["given"]}>
          <Code text={link} size="44mm" />
          <div>
            <p>{own.openThere}</p>
            <p>
              <strong>{given.address ?? house.seen.address}</strong>
            </p>
            <output className={styles["code"]} aria-label={`${own.code} ${given.code.split("").join(" ")}`}>
              {given.code.replace(/^..../, "$& ")}
            </output>
            <p className={pages["note"]}>{own.codeSaid(say.time(given.until_ms))}</p>
          </div>
        </div>
      )}
      {choosing ? (
        <>
          <p>{own.forWhom}</p>
          <KeyRow label={own.forWhom}>
            <Key onPress={() => void letIn("helper")}>{own.whom.helper}</Key>
            <Key onPress={() => void letIn("grower")}>{own.whom.grower}</Key>
            <Key onPress={() => void letIn("viewer")}>{own.whom.viewer}</Key>
          </KeyRow>
        </>
      ) : (
        <Key wide onPress={() => setChoosing(true)}>
          {own.letIn}
        </Key>
      )}
    </section>
  );
}

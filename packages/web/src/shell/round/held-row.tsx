import type { Held, Round } from "@sillwood/bench/round";
import { useState } from "react";
import { useEngine } from "../../engine/use-ask.ts";
import { TextField } from "../../pages/fields/text-field.tsx";
import { Key } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import { useSay } from "../say.ts";
import { lineOf } from "../walk/acts.ts";
import styles from "./round-screen.module.css";

/** Who holds which task, why, and from when it is free. */
export function HeldRow({ held }: { readonly held: readonly Held[] }) {
  const { round: words } = useWords();
  const slip = useSlip();
  if (held.length === 0) return null;
  return (
    <>
      <Ledger>
        <Row onOpen={slip.open}>{words.heldBack(held.length)}</Row>
      </Ledger>
      <Slip slip={slip} title={words.heldTitle}>
        <HeldList held={held} />
      </Slip>
    </>
  );
}

export function HeldList({ held }: { readonly held: readonly Held[] }) {
  const { round: words } = useWords();
  const say = useSay();
  return (
    <Ledger>
      {held.map(({ task, limit }) => (
        <Row key={task.id}>
          <s>{task.title}</s>
          <span className="serif">
            {words.heldBy(limit.by, task.title, limit.why)}
            {limit.until_ms !== undefined && `; ${words.heldUntil(say.day(limit.until_ms))}`}
          </span>
          {!limit.firm && <Anyway held={{ task, limit }} />}
        </Row>
      ))}
    </Ledger>
  );
}

/**
 * The grower may do what a craft holds back, with a reason that the book keeps; anybody else's is kept as a request, and said to
 * be one. Labels' intervals have no such key.
 */
function Anyway({ held: { task } }: { readonly held: Held }) {
  const { round: words } = useWords();
  const engine = useEngine();
  const [reason, setReason] = useState<string>();
  const isGrower = engine.who()?.role === "grower";
  if (reason === undefined)
    return <Key onPress={() => setReason("")}>{isGrower ? words.anyway : words.askGrower}</Key>;
  const why = reason.trim();
  const keep = () =>
    void write(
      engine,
      [{ kind: "round.overrode", on: [task.plant], data: { work: task.work, reason: why } }],
      isGrower ? {} : { said: words.asked(task.title, why) },
    ).then((written) => {
      if ("kept" in written) setReason(undefined);
    });
  return (
    <>
      {!isGrower && <p className="serif">{words.askSaid}</p>}
      <TextField label={words.anywayWhy} value={reason} onType={setReason} />
      <Key shut={why === ""} onPress={keep}>
        {why === "" ? words.anywayShut : isGrower ? words.anywayKeep : words.askKeep}
      </Key>
    </>
  );
}

/** What does not fit into the minutes, each with its own latest day: nothing is dropped in silence. */
export function MovedRow({ round }: { readonly round: Round }) {
  const { round: words } = useWords();
  const say = useSay();
  const moved = round.benches.flatMap(({ spots }) =>
    spots.flatMap(({ number, moved: tasks }) => tasks.map((task) => ({ number: number ?? "", task }))),
  );
  if (moved.length === 0) return null;
  return (
    <section className={styles["part"]}>
      <h2>{words.movedOn(moved.length)}</h2>
      <Ledger>
        {moved.map(({ number, task }) => (
          <Row key={task.id}>
            {words.movedRow(number, lineOf(task), say.day(task.latest_ms, round.now_ms))}
          </Row>
        ))}
      </Ledger>
    </section>
  );
}

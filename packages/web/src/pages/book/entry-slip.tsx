import type { Json, PlantId } from "@sillwood/bench/book";
import type { LogLine } from "@sillwood/bench/round";
import { useMemo, useState } from "react";
import { useLocation } from "wouter";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Slip } from "../../parts/slip.tsx";
import { sayLast, write } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import styles from "./book.module.css";
import { watchMoves } from "./moves.ts";
import { Photo } from "./photo.tsx";

/** One entry opened: put it right, withdraw it, take it back in, or see what stands in it. */
export function EntrySlip({ line, onClose }: { readonly line: LogLine; readonly onClose: () => void }) {
  const { log: words, fields, write: writeWords } = useWords();
  const { value: shape } = useAsk("shape", { kind: line.kind });
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const [isOpen, setOpen] = useState(false);
  const [isSure, setSure] = useState(false);
  const slip = useMemo(() => ({ isOpen: true, open: () => {}, close: onClose }), [onClose]);
  const correct = async (data: Json, said: string) => {
    onClose();
    const plant =
      shape?.subject === "plant" && line.onIds.length === 1 ? (line.onIds[0] as PlantId) : undefined;
    const moves =
      plant && (await watchMoves(engine, plant, (day_ms) => say.day(day_ms, nowMs()), writeWords.moves));
    const written = await write(engine, [{ kind: "book.corrected", on: [], data, corrects: [line.id] }], {
      said,
      onUndo: () => void moves?.tell(),
    });
    if ("kept" in written) await moves?.tell();
  };
  /** For good, so it is asked twice and offers no Undo. */
  const makeUnreadable = async () => {
    onClose();
    const written = await engine.write(await engine.ask("unreadable", { entry: line.id }));
    if ("kept" in written) sayLast({ text: words.unreadableDone });
  };
  const whole = `${line.on} ${line.said ?? line.ruledThrough.at(-1)?.said ?? ""}`.trim();
  const canCorrect = line.state !== "newer" && line.state !== "redacted";
  return (
    <Slip slip={slip} title={`${line.on}, ${say.day(line.at_ms)} ${line.time}`}>
      <p className="serif">{line.said ?? line.ruledThrough.at(-1)?.said}</p>
      {line.files.map((sha256) => (
        <Photo key={sha256} sha256={sha256} on={line.on} />
      ))}
      {canCorrect && (
        <KeyRow>
          {line.state === "withdrawn" ? (
            <Key onPress={() => void correct({ restored: true }, words.gave(whole))}>{words.restore}</Key>
          ) : (
            <>
              <Key onPress={() => go(`/right/${line.id}`)}>{words.putRight}</Key>
              <Key onPress={() => void correct({ withdrawn: true }, words.took(whole))}>{words.withdraw}</Key>
            </>
          )}
          <Key pressed={isOpen} onPress={() => setOpen(!isOpen)}>
            {words.working}
          </Key>
        </KeyRow>
      )}
      {isOpen && engine.who()?.role === "grower" && (
        <KeyRow>
          {isSure && <p className="serif">{words.unreadableSaid}</p>}
          <Key quiet={!isSure} onPress={() => (isSure ? void makeUnreadable() : setSure(true))}>
            {isSure ? words.unreadableSure : words.unreadable}
          </Key>
        </KeyRow>
      )}
      {isOpen && (
        <dl className={styles["facts"]}>
          <dt>{words.kind}</dt>
          <dd>{fields.kinds[line.kind] ?? line.kind}</dd>
          <dt>{words.signed}</dt>
          <dd>{line.by}</dd>
          {line.writtenLater && (
            <>
              <dt>{words.written}</dt>
              <dd>{line.writtenLater}</dd>
            </>
          )}
          {valuesOf(line.data).map(([key, value]) => (
            <ValueRow key={key} name={fields.names[key] ?? key} value={value} />
          ))}
          {line.ruledThrough.map(({ said, by, at_ms }) => (
            <ValueRow
              key={`${said} ${at_ms}`}
              name={words.version}
              value={`${said}: ${by}, ${say.day(at_ms)} ${say.time(at_ms)}`}
            />
          ))}
        </dl>
      )}
    </Slip>
  );
}

function ValueRow({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </>
  );
}

/** The data as it lies in the book, in the units of the book: this is the place to see exactly that. */
function valuesOf(data: Json): readonly (readonly [string, string])[] {
  if (data === null || typeof data !== "object" || Array.isArray(data)) return [];
  return Object.entries(data).map(([key, value]) => [
    key,
    typeof value === "object"
      ? JSON.stringify(value)
      : `${value} ${key.includes("_") ? key.slice(key.indexOf("_") + 1) : ""}`.trim(),
  ]);
}

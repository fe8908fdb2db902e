import { useState } from "react";
import type { BroughtIn } from "../../engine/bring-in.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { sayLast } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import { FilePicker } from "../read-list/file-picker.tsx";
import styles from "./book.module.css";

/** A book brought in: seen first, kept after. Entries that are here already stay once. */
export function BringIn() {
  const { take: words } = useWords();
  const engine = useEngine();
  const [text, setText] = useState<string>();
  const [seen, setSeen] = useState<BroughtIn>();
  const [files, setFiles] = useState<readonly { sha256: string; type: string }[]>([]);
  const [taken_n, setTaken] = useState(0);
  const [unknown, setUnknown] = useState("");
  const look = async (file: File) => {
    const read = await file.text();
    setText(read);
    setSeen(await engine.bringIn(read, false));
  };
  const keep = async () => {
    if (text === undefined || !seen) return;
    await engine.bringIn(text, true);
    sayLast({ text: words.kept(seen.fresh_n) });
    setFiles(seen.files);
    setText(undefined);
    setSeen(undefined);
  };
  const takeFile = async (file: File) => {
    const bytes = await file.arrayBuffer();
    const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
    const sha256 = Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
    const named = files.find((one) => one.sha256 === sha256);
    setUnknown(named ? "" : file.name);
    if (!named) return;
    await engine.keepFile(sha256, named.type, bytes);
    setTaken((before_n) => before_n + 1);
  };
  return (
    <section>
      <h2 className={styles["step"]}>{words.bring}</h2>
      <p className="serif measure">{words.bringSaid}</p>
      <KeyRow>
        <FilePicker
          said={words.choose}
          accept=".ndjson,.jsonl,application/x-ndjson"
          onFile={(file) => void look(file)}
        />
        {seen && seen.fresh_n > 0 && <Key onPress={() => void keep()}>{words.keep(seen.fresh_n)}</Key>}
      </KeyRow>
      {seen && (
        <div role="status">
          <p>{words.preview(seen.entries_n, seen.fresh_n)}</p>
          {seen.redacted_n > 0 && <p>{words.redacted(seen.redacted_n)}</p>}
        </div>
      )}
      {seen && seen.damaged.length > 0 && (
        <>
          <h3 className={styles["step"]}>{words.damagedTitle(seen.damaged.length)}</h3>
          <Ledger>
            {seen.damaged.map(({ line, message }) => (
              <Row key={`${line} ${message}`}>{words.damaged(line, message)}</Row>
            ))}
          </Ledger>
        </>
      )}
      {files.length > 0 && (
        <>
          <p>{words.files(files.length)}</p>
          <KeyRow>
            <FilePicker said={words.chooseFiles} accept="*/*" many onFile={(file) => void takeFile(file)} />
          </KeyRow>
          {taken_n > 0 && <p role="status">{words.filesTaken(taken_n)}</p>}
          {unknown && <p role="alert">{words.fileUnknown(unknown)}</p>}
        </>
      )}
    </section>
  );
}

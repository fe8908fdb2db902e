import type { ListKind } from "@sillwood/bench/pages";
import { useState } from "react";
import { useLocation } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import { Choices } from "../fields/choices.tsx";
import { SelectField } from "../fields/select-field.tsx";
import type { PageQuestions } from "../questions.ts";
import { cutRows } from "./cut-rows.ts";
import { FilePicker } from "./file-picker.tsx";
import { keepList } from "./keep-list.ts";
import { Mapping } from "./mapping.tsx";
import { Preview } from "./preview.tsx";

type Read = PageQuestions["list"]["answer"];

interface Sheet {
  readonly name: string;
  readonly cells: readonly (readonly string[])[];
}

/** What a file may hold. */
const KINDS = ["plants", "weighings", "logger", "weather"] as const;

/** *Read a list*: our words beside the file's columns, ten rows as they will stand, and every problem by its place. */
export function ReadList() {
  const { list: words } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { value: things } = useAsk("things", {});
  const [kind, setKind] = useState<ListKind>("plants");
  const [bench, setBench] = useState("");
  const [sheet, setSheet] = useState<Sheet>();
  const [read, setRead] = useState<Read>();
  const [trouble, setTrouble] = useState("");
  const [busy, setBusy] = useState(false);

  const reread = async (now: {
    sheet?: Sheet | undefined;
    kind?: ListKind;
    bench?: string;
    mapping?: Read["mapping"];
  }) => {
    const cut = now.sheet ?? sheet;
    if (!cut) return;
    const place = now.bench ?? bench;
    const asked = {
      kind: now.kind ?? kind,
      cells: cut.cells,
      ...(now.mapping ? { mapping: now.mapping } : {}),
      ...(place ? { bench: place } : {}),
    };
    try {
      setRead(await engine.ask("list", asked));
    } catch (error) {
      setTrouble(words.notRead((error as Error).message));
    }
  };
  const take = async (file: File) => {
    setTrouble("");
    const cut = await cutRows(file);
    if ("problem" in cut) {
      setSheet(undefined);
      setRead(undefined);
      setTrouble(cut.problem === "too large" ? words.tooLarge(cut.said) : words.notRead(cut.said));
      return;
    }
    const next = { name: file.name, cells: cut.cells };
    setSheet(next);
    await reread({ sheet: next });
  };
  const keep = async () => {
    if (!read || read.drafts.length === 0) return;
    setBusy(true);
    const drafts = await keepList(engine, read);
    const written = await write(engine, drafts, { said: words.kept(read.rows_n) });
    setBusy(false);
    if ("kept" in written) go(kind === "plants" ? "/plants" : "/book");
  };

  const isOpen = !busy && read !== undefined && read.drafts.length > 0;
  const said = !read
    ? words.keepShut
    : read.problems.length > 0
      ? words.keepStopped
      : words.keep(read.rows_n);
  return (
    <Frame
      where={words.title}
      keys={
        <>
          {read && (
            <KeyRow>
              <FilePicker said={words.anotherFile} onFile={(file) => void take(file)} />
            </KeyRow>
          )}
          <Key main shut={!isOpen} onPress={() => void keep()}>
            {said}
          </Key>
        </>
      }
    >
      <div style={{ display: "grid", gap: "var(--s4)" }}>
        <p className="serif measure">{words.said}</p>
        <Choices
          legend={words.whatKind}
          options={KINDS.map((value) => ({ value, said: words.kinds[value] }))}
          value={kind}
          onChoose={(next) => {
            setKind(next);
            void reread({ kind: next });
          }}
        />
        {kind !== "weighings" && (things?.benches.length ?? 0) > 0 && (
          <SelectField
            label={
              kind === "logger" ? words.onWhich : kind === "weather" ? words.inWeather : words.whereStand
            }
            options={things?.benches.map(({ id, name }) => ({ value: id, said: name })) ?? []}
            value={bench}
            onChoose={(next) => {
              setBench(next);
              void reread({ bench: next, ...(read ? { mapping: read.mapping } : {}) });
            }}
          />
        )}
        {!sheet && (
          <KeyRow>
            <FilePicker said={words.choose} onFile={(file) => void take(file)} />
          </KeyRow>
        )}
        {trouble && <p role="alert">{trouble}</p>}
        {sheet && read && (
          <>
            <p>{words.chosen(sheet.name, read.rows_n)}</p>
            <Mapping
              read={read}
              header={sheet.cells[0] ?? []}
              onMap={(mapping) => void reread({ mapping })}
            />
            <Preview read={read} />
          </>
        )}
      </div>
    </Frame>
  );
}

import { useState } from "react";
import { useLocation } from "wouter";
import { useAsk } from "../../engine/use-ask.ts";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import { TextField } from "../fields/text-field.tsx";

/** Which plant looks wrong, when one comes from the desk and not from a pot. */
export function WrongWhich() {
  const { wrong: words } = useWords();
  const [, go] = useLocation();
  const [find, setFind] = useState("");
  const { value: things, error } = useAsk("things", {});
  const found = things?.plants.filter(
    ({ name, beside }) =>
      name.startsWith(find.trim()) || beside.toLocaleLowerCase().includes(find.trim().toLocaleLowerCase()),
  );
  return (
    <Frame where={words.title}>
      <TextField label={words.which} value={find} onType={setFind} />
      {!found && <ReadingNote error={error} />}
      {things?.plants.length === 0 && <p className="serif">{words.noPlants}</p>}
      <Ledger label={words.which}>
        {found?.map(({ id, name, beside }) => (
          <Row key={id} onOpen={() => go(`/wrong/${id}`)}>
            <strong>{name}</strong> {beside}
          </Row>
        ))}
      </Ledger>
    </Frame>
  );
}

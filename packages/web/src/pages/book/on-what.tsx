import { useState } from "react";
import { useAsk } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useWords } from "../../words/words.ts";
import type { Thing, ThingsSeen } from "../answers/seen.ts";
import fields from "../fields/fields.module.css";
import { TextField } from "../fields/text-field.tsx";
import styles from "./book.module.css";

interface OnWhatProps {
  readonly subject: string;
  readonly on: readonly string[];
  readonly onChange: (on: readonly string[]) => void;
}

/** Which lists an entry of a subject may be about. Light may be written for a spot as well as for its bench. */
const LISTS: Readonly<Record<string, readonly (keyof ThingsSeen)[]>> = {
  plant: ["plants"],
  bench: ["benches", "spots"],
  batch: ["batches"],
  supply: ["supplies"],
};
/** So many rows are shown before one has to type. */
const SHOWN_n = 60;

/** The plants (or benches, batches, supplies) an entry is about: numbers typed, a whole bench at once, or rows pressed. */
export function OnWhat({ subject, on, onChange }: OnWhatProps) {
  const { write: words } = useWords();
  const { value: seen } = useAsk("things", {});
  const [find, setFind] = useState("");
  if (!seen) return null;
  const all = (LISTS[subject] ?? ["plants"]).flatMap((name) => seen[name]);
  const chosen = new Set(on);
  const toggle = (ids: readonly string[]) => {
    const isAll = ids.every((id) => chosen.has(id));
    onChange(isAll ? on.filter((id) => !ids.includes(id)) : [...on, ...ids.filter((id) => !chosen.has(id))]);
  };
  const numbers = numbersIn(find);
  const typed =
    numbers.length > 1 ? all.filter(({ number }) => number !== undefined && numbers.includes(number)) : [];
  const shown = all.filter((thing) => chosen.has(thing.id) || isWanted(thing, find)).slice(0, SHOWN_n);
  const benches = subject === "plant" ? seen.benches : [];
  return (
    <div className={fields["form"]}>
      {all.length === 0 && <p className="serif">{words.nothingToChoose}</p>}
      {all.length > 8 && (
        <TextField
          label={subject === "plant" ? words.numbers : words.findThing}
          value={find}
          onType={setFind}
          beside={
            typed.length > 0 && (
              <Key
                onPress={() => {
                  onChange([...new Set([...on, ...typed.map(({ id }) => id)])]);
                  setFind("");
                }}
              >
                {words.takeThese(typed.length)}
              </Key>
            )
          }
        />
      )}
      {benches.length > 0 && (
        <KeyRow label={words.wholeBench}>
          {benches.map(({ id, name }) => {
            const ids = seen.plants.filter(({ bench }) => bench === id).map((plant) => plant.id);
            return (
              ids.length > 0 && (
                <Key key={id} pressed={ids.every((plant) => chosen.has(plant))} onPress={() => toggle(ids)}>
                  {words.benchOf(name, ids.length)}
                </Key>
              )
            );
          })}
        </KeyRow>
      )}
      <ul className={styles["things"]}>
        {shown.map((thing) => (
          <li key={thing.id}>
            <label className={styles["thing"]}>
              <input type="checkbox" checked={chosen.has(thing.id)} onChange={() => toggle([thing.id])} />
              <span>
                <strong>{thing.name}</strong> {thing.beside}
              </span>
            </label>
          </li>
        ))}
      </ul>
      {all.length > SHOWN_n && shown.length === SHOWN_n && (
        <p className="serif">{words.moreByNumber(all.length)}</p>
      )}
    </div>
  );
}

/** "127 128, 130-133" as numbers. */
export function numbersIn(text: string): number[] {
  return text.split(/[\s,;]+/).flatMap((part) => {
    const range = /^(\d{1,5})[-–](\d{1,5})$/.exec(part);
    if (!range) return /^\d{1,5}$/.test(part) ? [Number(part)] : [];
    const [from, to] = [Number(range[1]), Number(range[2])];
    return to >= from && to - from < 1000 ? Array.from({ length: to - from + 1 }, (_, i) => from + i) : [];
  });
}

function isWanted({ name, beside, number }: Thing, find: string): boolean {
  const wanted = find.trim().toLocaleLowerCase();
  if (wanted === "") return true;
  const numbers = numbersIn(find);
  if (numbers.length > 1) return number !== undefined && numbers.includes(number);
  return name.toLocaleLowerCase().startsWith(wanted) || beside.toLocaleLowerCase().includes(wanted);
}

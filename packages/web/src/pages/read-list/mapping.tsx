import { useWords } from "../../words/words.ts";
import { SelectField } from "../fields/select-field.tsx";
import type { PageQuestions } from "../questions.ts";
import styles from "./read-list.module.css";

interface MappingProps {
  readonly read: PageQuestions["list"]["answer"];
  readonly header: readonly string[];
  readonly onMap: (mapping: Readonly<Record<string, string>>) => void;
}

/** Our words and which column of the file each one is. */
export function Mapping({ read, header, onMap }: MappingProps) {
  const { list: words, fields } = useWords();
  const options = header
    .map((name) => ({ value: name.trim(), said: name.trim() }))
    .filter(({ value }) => value !== "");
  return (
    <section>
      <h2 className={styles["head"]}>{words.columns}</h2>
      <div className={styles["mapping"]}>
        {read.columns.map(({ key, what, needed }) => (
          <SelectField
            key={key}
            label={needed ? `${fields.columns[key] ?? what}, ${words.needed}` : (fields.columns[key] ?? what)}
            none={words.none}
            options={options}
            value={read.mapping[key] ?? ""}
            onChoose={(theirs) => {
              const { [key]: _was, ...rest } = read.mapping;
              onMap(theirs === "" ? rest : { ...rest, [key]: theirs });
            }}
          />
        ))}
      </div>
      {read.unmapped.length > 0 && (
        <p className={styles["aside"]}>{words.unmapped(read.unmapped.join(", "))}</p>
      )}
    </section>
  );
}

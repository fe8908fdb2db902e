import { useState } from "react";
import { useLocation } from "wouter";
import { changeSettings } from "../../device/settings.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { TextField } from "../fields/text-field.tsx";
import { findSums } from "./reckon.ts";
import styles from "./reckoner.module.css";
import { sumName } from "./sum-name.ts";
import { Tape } from "./tape-list.tsx";
import { useCatalogue } from "./use-catalogue.ts";

const FIND = "find-a-sum";

/** Screen 13: every formula of the house. */
export function Reckoner() {
  const { reckoner: words } = useWords();
  const { sums, error } = useCatalogue();
  const { units, language } = useSettings();
  const [find, setFind] = useState("");
  const [, go] = useLocation();
  useKeys({ "/": () => document.getElementById(FIND)?.focus() });
  const found = sums && findSums(sums, find, (name) => sumName(name, language));
  const fields = [...new Set(found?.map(({ field }) => field) ?? [])];
  return (
    <Frame
      where={words.title}
      keys={
        <KeyRow>
          <Key onPress={() => changeSettings({ units: units === "us" ? "metric" : "us" })}>
            {words.units(units === "us" ? words.us : words.metric)}
          </Key>
        </KeyRow>
      }
    >
      <div className={styles["both"]}>
        <div>
          <TextField id={FIND} label={words.find} type="search" value={find} onType={setFind} />
          {!found && !error && <ReadingNote />}
          {error && <p role="alert">{words.notFetched}</p>}
          {found?.length === 0 && <p className="serif">{words.noneFound(find)}</p>}
          {fields.map((field) => (
            <section key={field}>
              <h2 className={styles["head"]}>{words.fields[field] ?? field}</h2>
              <Ledger label={words.fields[field] ?? field}>
                {found
                  ?.filter((sum) => sum.field === field)
                  .map((sum) => (
                    <Row key={sum.name} onOpen={() => go(`/reckon/${sum.name}`)}>
                      <span className={styles["sum"]}>{sumName(sum.name, language)}</span>
                      <span className={styles["what"]}>{sum.what}</span>
                    </Row>
                  ))}
              </Ledger>
            </section>
          ))}
        </div>
        <Tape />
      </div>
    </Frame>
  );
}

import type { PlantId } from "@sillwood/bench/book";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";
import fields from "../fields/fields.module.css";
import { TextField } from "../fields/text-field.tsx";
import styles from "./book.module.css";

/** What of the book is shown. An empty date asks for one. */
export interface Shown {
  readonly craft?: string | undefined;
  readonly by?: string | undefined;
  readonly plant?: PlantId | undefined;
  readonly number?: string | undefined;
  readonly date?: string | undefined;
}

/** Filters are words in a row; the number has a field, since two hundred words would be no row. */
export function Filters({
  shown,
  onShow,
}: {
  readonly shown: Shown;
  readonly onShow: (shown: Shown) => void;
}) {
  const { log: words } = useWords();
  const engine = useEngine();
  const { value: crafts } = useAsk("crafts", {});
  const { value: things } = useAsk("things", {});
  const me = engine.who()?.person;
  const isAll = !shown.craft && !shown.by && !shown.plant && !shown.date;
  const word = (said: string, isOn: boolean, press: () => void) => (
    <button key={said} type="button" className={styles["filter"]} aria-pressed={isOn} onClick={press}>
      {said}
    </button>
  );
  return (
    <fieldset className={fields["choices"]} aria-label={words.filters}>
      <div className={styles["filters"]}>
        {word(words.all, isAll, () => onShow({}))}
        {crafts?.map(({ craft }) =>
          word(words.crafts[craft] ?? craft, shown.craft === craft, () =>
            onShow({ ...shown, craft: shown.craft === craft ? undefined : craft }),
          ),
        )}
        {me &&
          word(words.me, shown.by === me, () => onShow({ ...shown, by: shown.by === me ? undefined : me }))}
        <label className={fields["line"]}>
          <span className={fields["label"]}>{words.number}</span>
          <input
            className={`${fields["input"]} ${fields["short"]}`}
            style={{ flexBasis: "5rem" }}
            inputMode="numeric"
            value={shown.number ?? ""}
            onChange={({ target }) => {
              const number = target.value.trim();
              const plant = things?.plants.find((one) => one.name === number)?.id as PlantId | undefined;
              onShow({ ...shown, number: number === "" ? undefined : number, plant });
            }}
          />
        </label>
      </div>
      {shown.date !== undefined && (
        <TextField
          label={words.day}
          type="date"
          short
          value={shown.date}
          onType={(date) => onShow({ ...shown, date })}
        />
      )}
    </fieldset>
  );
}

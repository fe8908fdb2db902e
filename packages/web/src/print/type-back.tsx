import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { fromCrafts } from "../crafts/index.ts";
import { useAsk, useEngine } from "../engine/use-ask.ts";
import { Key } from "../parts/key.tsx";
import { Frame } from "../shell/frame.tsx";
import { write } from "../shell/last-line.ts";
import { ReadingNote } from "../shell/reading-note.tsx";
import { useSay, useSettings } from "../shell/say.ts";
import { actOf, isWeighing, lineOf, skipOf, stepOf } from "../shell/walk/acts.ts";
import { typedWeight_g } from "../shell/weigh/weight-typed.ts";
import { useWords } from "../words/words.ts";
import { byBench, type SheetRow, sheetRows } from "./rows.ts";
import { sheetMoment_ms } from "./sheet-code.ts";
import styles from "./type-back.module.css";

/** What the pencil said of a row. */
interface Marked {
  readonly mark: "done" | "less" | "more" | "not";
  readonly grams: string;
}
const WALKED = "round.walked";
const MARKS = ["less", "more", "not"] as const;
const UNMARKED: Marked = { mark: "done", grams: "" };

/** The sheet again, in the same order: all are taken as done, the exceptions are tapped. */
export function TypeBack() {
  const { print: words } = useWords();
  const { code = "" } = useParams<{ code: string }>();
  const at_ms = sheetMoment_ms(code);
  if (at_ms === undefined)
    return (
      <Frame where={words.typeBackTitle}>
        <p role="alert">{words.noSheet}</p>
      </Frame>
    );
  return <Sheet at_ms={at_ms} code={code} />;
}

function Sheet({ at_ms, code }: { readonly at_ms: number; readonly code: string }) {
  const { print: words } = useWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const { units, jugStep_mL } = useSettings();
  const { value: round, error } = useAsk("round", { at_ms });
  const { value: since } = useAsk("log", { from_ms: at_ms, to_ms: at_ms + 1 });
  const [marks, setMarks] = useState<Readonly<Record<string, Marked>>>({});
  if (!round)
    return (
      <Frame where={words.typeBackTitle}>
        <ReadingNote error={error} />
      </Frame>
    );
  const rows = sheetRows(round);
  const markOf = ({ task }: SheetRow) => marks[task.id] ?? UNMARKED;
  const mark = ({ task }: SheetRow, change: Partial<Marked>) =>
    setMarks({ ...marks, [task.id]: { ...(marks[task.id] ?? UNMARKED), ...change } });
  // Entries typed back carry the very moment of the sheet, so a second typing shows.
  const already_n = since?.filter(({ state, kind }) => state === "in force" && kind !== WALKED).length ?? 0;

  const acts = rows.flatMap((row): readonly Draft[] => {
    const { task } = row;
    const { mark: said, grams } = markOf(row);
    const weight_g = typedWeight_g(grams, units);
    const weighed = weight_g === undefined ? undefined : fromCrafts("weighed")?.(task.plant, weight_g, false);
    const step = stepOf(task, jugStep_mL);
    const amount = task.amount && {
      done: undefined,
      less: task.amount.value - step,
      more: task.amount.value + step,
    };
    const acts = isWeighing(task)
      ? []
      : said === "not"
        ? skipOf(task, "no reason said")
        : [actOf(task, amount?.[said] && Math.max(1, amount[said]))];
    return [...(weighed ? [weighed] : []), ...acts].map((draft) => ({ ...draft, at_ms }));
  });
  // A round on paper passed every pot of its sheet, as a round with the phone does.
  const walked = byBench(rows).map(
    ({ bench, rows: passed }): Draft => ({
      kind: WALKED,
      on: [...new Set(passed.map(({ task }) => task.plant))],
      data: { bench, tasks_n: passed.filter((row) => markOf(row).mark !== "not").length },
      at_ms,
    }),
  );
  const keep = async () => {
    const written = await write(engine, [...acts, ...walked], { said: words.typedBack(rows.length) });
    if ("kept" in written) go("/");
  };
  return (
    <Frame
      where={words.typeBackTitle}
      beside={`${say.day(at_ms)} ${say.time(at_ms)}`}
      keys={
        <Key main shut={acts.length === 0} onPress={() => void keep()}>
          {words.keepSheet(acts.length)}
        </Key>
      }
    >
      <p className="serif">{rows.length === 0 ? words.nothing : words.typeBackSaid}</p>
      {already_n > 0 && <p role="alert">{words.alreadyBack(already_n)}</p>}
      {byBench(rows).map((bench) => (
        <section key={bench.name}>
          <h2 className={styles["bench"]}>{bench.name}</h2>
          {bench.rows.map((row) => (
            <fieldset
              key={row.task.id}
              className={styles["row"]}
              aria-label={`${row.number} ${row.task.title}`}
            >
              <span className={styles["number"]}>{row.number}</span>
              <span className={styles["what"]}>{lineOf(row.task)}</span>
              {!isWeighing(row.task) &&
                MARKS.map((one) => (
                  <Key
                    key={one}
                    pressed={markOf(row).mark === one}
                    onPress={() => mark(row, { mark: markOf(row).mark === one ? "done" : one })}
                  >
                    {words[one]}
                  </Key>
                ))}
              <input
                className={styles["grams"]}
                inputMode="decimal"
                autoComplete="off"
                aria-label={`${words.weights[units].name} ${row.number}`}
                placeholder={words.weights[units].unit}
                value={markOf(row).grams}
                onChange={(event) => mark(row, { grams: event.target.value })}
              />
            </fieldset>
          ))}
        </section>
      ))}
      <span className="for-readers">
        {words.code} {code}
      </span>
    </Frame>
  );
}

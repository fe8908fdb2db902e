import type { EntryId, Json, PlantId } from "@sillwood/bench/book";
import type { LogLine } from "@sillwood/bench/round";
import { useEffect, useRef, useState } from "react";
import { useLocation, useParams } from "wouter";
import { zoneOf } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { EntryForm, type FormData, isWhole } from "../fields/entry-form.tsx";
import type { KindShape } from "../fields/form-shape.ts";
import { TextField } from "../fields/text-field.tsx";
import { useBroken } from "../fields/use-broken.ts";
import styles from "./book.module.css";
import { DayOfLog } from "./day-of-log.tsx";
import { watchMoves } from "./moves.ts";
import { fromLocal_ms, localDate, localTime } from "./when.ts";

/** The same form, filled, for an entry that was written wrongly. */
export function PutRight() {
  const { entry } = useParams();
  const { write: words } = useWords();
  const { value: line, error } = useAsk("entry", { entry: entry as EntryId });
  const { value: shape } = useAsk("shape", { kind: line?.kind ?? "" });
  if (!line || !shape)
    return (
      <Frame where={words.putRight}>
        {line === null ? <p className="serif">{words.notFound}</p> : <ReadingNote error={error} />}
      </Frame>
    );
  return <Filled key={line.id} line={line} shape={shape} />;
}

function Filled({ line, shape }: { readonly line: LogLine; readonly shape: KindShape }) {
  const { write: words } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const zone = zoneOf(useSettings());
  const say = useSay();
  const [data, setData] = useState<FormData>((line.data ?? {}) as FormData);
  const [date, setDate] = useState(localDate(line.at_ms, zone));
  const [time, setTime] = useState(localTime(line.at_ms, zone));
  const [busy, setBusy] = useState(false);
  const { broken, onBroken } = useBroken();
  const form = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The first number is nearly always what was written wrongly: it is ready to be typed over.
    const field = form.current?.querySelector<HTMLInputElement>("input[inputmode=decimal]");
    field?.focus();
    field?.select();
  }, []);
  const at_ms = fromLocal_ms(date, time, zone);
  const hasMoved = at_ms !== undefined && Math.abs(at_ms - line.at_ms) >= 60_000;
  const whole = isWhole(shape.fields, data) && broken.size === 0 && at_ms !== undefined;
  const keep = async () => {
    setBusy(true);
    const plant =
      shape.subject === "plant" && line.onIds.length === 1 ? (line.onIds[0] as PlantId) : undefined;
    const moves =
      plant && (await watchMoves(engine, plant, (day_ms) => say.day(day_ms, nowMs()), words.moves));
    const written = await write(
      engine,
      [
        {
          kind: "book.corrected",
          on: [],
          data: { data: data as Json, ...(hasMoved ? { at_ms } : {}) },
          corrects: [line.id],
        },
      ],
      {
        said: words.putRightTitle(line.on).toLocaleLowerCase(),
        before: { data: line.data, ...(hasMoved ? { at_ms: line.at_ms } : {}) },
        onUndo: () => void moves?.tell(),
      },
    );
    setBusy(false);
    if (!("kept" in written)) return;
    await moves?.tell();
    history.length > 1 ? history.back() : go("/book");
  };
  return (
    <Frame
      where={words.putRightTitle(line.on)}
      keys={
        <Key main shut={!whole || busy} onPress={() => void keep()}>
          {broken.size > 0 ? words.keepBroken : words.putRight}
        </Key>
      }
    >
      <div ref={form} className={styles["steps"]}>
        <DayOfLog lines={[line]} onOpen={() => go("/book")} />
        <EntryForm fields={shape.fields} data={data} onChange={setData} onBroken={onBroken} />
        <TextField label={words.day} type="date" short value={date} onType={setDate} />
        <TextField label={words.time} type="time" short value={time} onType={setTime} />
      </div>
    </Frame>
  );
}

import type { Json } from "@sillwood/bench/book";
import { useEffect, useState } from "react";
import { useLocation, useParams } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useWords } from "../../words/words.ts";
import { EntryForm, type FormData, isWhole } from "../fields/entry-form.tsx";
import { useBroken } from "../fields/use-broken.ts";

/** Where one goes once the new thing is in the book. */
const AFTER: Readonly<Record<string, (id: string) => string>> = {
  "plant.brought": (id) => `/plant/${id}`,
  "supply.bought": () => "/supplies",
};

/** Something new for the book (plant, batch, cultivar, supply): its kind's own form on an id of its own. */
export function NewThing() {
  const { kind = "" } = useParams();
  const { write: words, fields } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { value: shape, error } = useAsk("shape", { kind });
  const { value: house } = useAsk("house", {});
  const [data, setData] = useState<FormData>();
  const { broken, onBroken } = useBroken();
  const [busy, setBusy] = useState(false);
  useEffect(() => {
    if (data || !shape || !house) return;
    const keys = new Set(shape.fields.map(({ key }) => key));
    setData({
      ...(kind === "plant.brought" ? { number: house.highest + 1 } : {}),
      ...(keys.has("habit") ? { habit: "unknown" } : {}),
      ...(keys.has("medium") ? { medium: "unknown" } : {}),
      ...(keys.has("currency") ? { currency: house.site.currency } : {}),
    });
  }, [data, shape, house, kind]);

  const title = fields.kinds[kind] ?? kind;
  if (!shape || !data)
    return (
      <Frame where={title}>
        {shape === null ? <p className="serif">{words.noSuchKind}</p> : <ReadingNote error={error} />}
      </Frame>
    );
  const whole = isWhole(shape.fields, data) && broken.size === 0;
  const keep = async () => {
    setBusy(true);
    const [id = ""] = await engine.ask("ids", { n: 1 });
    const written = await write(engine, [{ kind, on: [id], data: data as Json }]);
    setBusy(false);
    if ("kept" in written) go(AFTER[kind]?.(id) ?? "/plants");
  };
  return (
    <Frame
      where={title}
      keys={
        <Key main shut={!whole || busy} onPress={() => void keep()}>
          {whole ? words.keep : broken.size > 0 ? words.keepBroken : words.keepMissing}
        </Key>
      }
    >
      <EntryForm fields={shape.fields} data={data} onChange={setData} onBroken={onBroken} />
    </Frame>
  );
}

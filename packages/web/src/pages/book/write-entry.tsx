import type { Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import { useEffect, useState } from "react";
import { useLocation, useParams, useSearchParams } from "wouter";
import { zoneOf } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { EntryForm, type FormData, isWhole } from "../fields/entry-form.tsx";
import type { KindShape } from "../fields/form-shape.ts";
import { useBroken } from "../fields/use-broken.ts";
import type { HouseFacts, SaidDoubt } from "../questions.ts";
import { filledFrom } from "../reckoner/fits.ts";
import styles from "./book.module.css";
import { DoubtKeys } from "./doubt-keys.tsx";
import { KindList } from "./kind-list.tsx";
import { OnWhat } from "./on-what.tsx";
import { PhotoKey } from "./photo-key.tsx";
import { instantOf, NOW, type When } from "./when.ts";
import { WhenRow } from "./when-row.tsx";

/** An id field that names something new gets a new id instead of a question. */
const NEW_IDS: Readonly<Record<string, string>> = { "batch.split": "into" };

/** WRITE AN ENTRY: kind, then on what, then the values that its kind asks for. */
export function WriteEntry() {
  const { kind, on } = useParams();
  const { write: words } = useWords();
  const [search] = useSearchParams();
  const { value: shape, error } = useAsk("shape", { kind: kind ?? "" });
  if (kind === undefined || kind === "-") return <KindList on={on} />;
  if (!shape)
    return (
      <Frame where={words.title}>
        {shape === null ? <p className="serif">{words.noSuchKind}</p> : <ReadingNote error={error} />}
      </Frame>
    );
  const filled = filledFrom(search, shape.fields);
  return <Values key={`${kind} ${on}`} shape={shape} given={on ? on.split(",") : []} filled={filled} />;
}

/** What the house says now of itself: one changes a value of it, not all. */
function standing(kind: string, { site, habits, tariff }: HouseFacts): FormData | undefined {
  if (kind === "supply.tariff") return tariff?.data as FormData | undefined;
  if (kind === "site.habits") return habits as unknown as FormData;
  if (kind !== "site.described") return undefined;
  const { assumed: _assumed, ...written } = site;
  return written;
}

interface ValuesProps {
  readonly shape: KindShape;
  readonly given: readonly string[];
  /** Values that somebody brings along, such as a result of the Reckoner. */
  readonly filled: FormData;
}

function Values({ shape, given, filled }: ValuesProps) {
  const { write: words, fields } = useWords();
  const engine = useEngine();
  const settings = useSettings();
  const [, go] = useLocation();
  const { value: things } = useAsk("things", {});
  const { value: house } = useAsk("house", {});
  const [on, setOn] = useState(given);
  const [isChoosing, setChoosing] = useState(given.length === 0);
  const [data, setData] = useState<FormData>(filled);
  const [when, setWhen] = useState<When>(NOW);
  const [photos, setPhotos] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);
  const [doubt, setDoubt] = useState<SaidDoubt>();
  const { broken, onBroken } = useBroken();
  const newId = NEW_IDS[shape.kind];
  const shown = shape.fields.filter(({ key }) => key !== newId);
  useEffect(() => {
    if (newId)
      void engine.ask("ids", { n: 1 }).then(([id]) => setData((before) => ({ ...before, [newId]: id })));
  }, [engine, newId]);
  useEffect(() => {
    const stands = house && standing(shape.kind, house);
    if (stands) setData((before) => (Object.keys(before).length === 0 ? stands : before));
  }, [house, shape.kind]);

  const at_ms = instantOf(when, nowMs(), zoneOf(settings));
  const name = fields.kinds[shape.kind] ?? shape.kind;
  const whole = isWhole(shape.fields, data) && broken.size === 0 && at_ms !== null;
  const said = () => {
    if (on.length === 0) return words.chooseFirst[shape.subject] ?? words.chooseFirst["plant"];
    if (broken.size > 0) return words.keepBroken;
    return whole ? words.keepOn(name, on.length, shape.subject) : words.keepMissing;
  };
  const names = [...(things ? Object.values(things).flat() : [])];
  const keep = async (values: FormData, isSure = false) => {
    const draft: Draft = {
      kind: shape.kind,
      on,
      data: values as Json,
      ...(typeof at_ms === "number" ? { at_ms } : {}),
      ...(photos.length > 0 ? { files: photos } : {}),
    };
    setBusy(true);
    const found = isSure ? [] : await engine.ask("doubts", { drafts: [draft] });
    setDoubt(found[0]);
    if (found.length > 0) {
      setBusy(false);
      return;
    }
    const written = await write(engine, [draft]);
    setBusy(false);
    if ("kept" in written) history.length > 1 ? history.back() : go("/book");
  };
  return (
    <Frame
      where={name}
      keys={
        <>
          {doubt && (
            <DoubtKeys
              doubt={doubt}
              onMeant={() => {
                const meant = { ...data, [doubt.key]: doubt.meant };
                setData(meant);
                void keep(meant);
              }}
              onRight={() => void keep(data, true)}
              onChange={() => setDoubt(undefined)}
            />
          )}
          <KeyRow>
            <PhotoKey count_n={photos.length} onKept={(sha256) => setPhotos([...photos, sha256])} />
            <Key onPress={() => go("/write")}>{words.otherKind}</Key>
          </KeyRow>
          <Key main shut={!whole || on.length === 0 || busy} onPress={() => void keep(data)}>
            {said()}
          </Key>
        </>
      }
    >
      <div className={styles["steps"]}>
        {/* What is said of the whole book has nothing to be chosen. */}
        {shape.subject !== "book" && (
          <section>
            <h2 className={styles["step"]}>{words.onWhat}</h2>
            {isChoosing ? (
              <OnWhat subject={shape.subject} on={on} onChange={setOn} />
            ) : (
              <p className={styles["chosen"]}>
                <span>
                  {on.map((id) => names.find((thing) => thing.id === id)?.name ?? words.unmet).join(", ")}
                </span>
                <Key onPress={() => setChoosing(true)}>{words.change}</Key>
              </p>
            )}
          </section>
        )}
        {shown.length > 0 && (
          <section>
            <h2 className={styles["step"]}>{words.values}</h2>
            <EntryForm fields={shown} data={data} onChange={setData} onBroken={onBroken} />
          </section>
        )}
        <WhenRow when={when} onChange={setWhen} />
      </div>
    </Frame>
  );
}

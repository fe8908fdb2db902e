import type { Json } from "@sillwood/bench/book";
import type { BenchLight, LightPage, ReadAsk, ReadingCheck, SpotLit } from "@sillwood/bench/crafts/lighting";
import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Pad } from "../../parts/pad.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { typeOn } from "../../shell/weigh/weight-typed.ts";
import { HeldReading } from "./held-reading.tsx";
import styles from "./light.module.css";
import {
  isPossible,
  lampData,
  type Meter,
  pairData,
  rangeOf,
  readingOf,
  type Sky,
  type Where,
} from "./reading-typed.ts";
import { CRAFT, useLight, useLightWords } from "./use-light.ts";

/** TAKE A READING: at the leaf, then outdoors; or under the lamp. Our own pad, no field, no system keyboard. */
export function ReadScreen() {
  const { bench: id = "", spot: spotId = "" } = useParams<{ bench: string; spot: string }>();
  const words = useLightWords();
  const { page, refused, error } = useLight({ bench: id });
  const bench = page?.benches.find((one) => one.bench === id);
  const spot = bench?.spots.find((one) => one.spot === spotId) ?? bench?.spots[0];
  if (!page || !bench || !spot)
    return (
      <Frame where={words.title}>
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {page && <p className="serif">{words.noSuchBench}</p>}
        {!page && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  return <Reading key={spot.spot} bench={bench} spot={spot} />;
}

function Reading({ bench, spot }: { readonly bench: BenchLight; readonly spot: SpotLit }) {
  const words = useLightWords();
  const { units } = useSettings();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const hasWindow = bench.windows.length > 0 || bench.lamps.length === 0;
  const [what, setWhat] = useState<"pair" | "lamp">(
    bench.worth?.spot === spot.spot && bench.worth.kind === "light.lamp"
      ? "lamp"
      : hasWindow
        ? "pair"
        : "lamp",
  );
  const [meter, setMeter] = useState<Meter>(units === "us" ? "fc" : "lux");
  const [sky, setSky] = useState<Sky>("evenly grey");
  const [typed, setTyped] = useState<Readonly<Record<Where, string>>>({ inside: "", outside: "", lamp: "" });
  const [isOutside, setOutside] = useState(false);
  const [held, setHeld] = useState<ReadingCheck>();
  const [busy, setBusy] = useState(false);
  const at: Where = what === "lamp" ? "lamp" : isOutside ? "outside" : "inside";
  const change = (next: (text: string) => string) => setTyped((was) => ({ ...was, [at]: next(was[at]) }));
  const type = (key: string) => change((text) => typeOn(text, key));
  const value = (where: Where) => readingOf(typed[where], meter);
  const fits = (where: Where) => {
    const read = value(where);
    return read !== undefined && isPossible(read, where, meter);
  };
  const unit = { lux: words.lux, fc: words.footCandles, umol: words.umol }[meter];
  const shown = (where: Where) => `${typed[where]} ${unit}`;

  const leave = () => go(`/craft/light/${encodeURIComponent(bench.bench)}`);
  const kind: ReadAsk["kind"] = what === "lamp" ? "light.lamp" : "light.pair";
  const data = (): Json =>
    what === "lamp"
      ? lampData(value("lamp") ?? 0, meter)
      : pairData(value("inside") ?? 0, value("outside") ?? 0, meter, sky);
  const keep = async (drafts: readonly Draft[], then?: string) => {
    const written = await write(engine, drafts, then === undefined ? {} : { after: then });
    if ("kept" in written) leave();
  };
  const judge = async () => {
    setBusy(true);
    const read: ReadAsk = { spot: spot.spot, kind, data: data() };
    const answer = await engine.ask("craft page", {
      craft: CRAFT,
      ask: { bench: bench.bench, read } as unknown as Json,
    });
    setBusy(false);
    const check = "page" in answer ? (answer.page as LightPage).reading : undefined;
    if ("refused" in answer) setHeld({ state: "refused", said: answer.refused, answers: [] });
    else if (check && check.state !== "good") setHeld(check);
    else await keep([{ kind, on: [spot.spot], data: data() }], check?.then?.said);
  };
  const isLast = what === "lamp" || isOutside;
  const isReady =
    what === "lamp" ? fits("lamp") : isOutside ? fits("inside") && fits("outside") : fits("inside");
  const enter = () => {
    if (!isReady || busy) return;
    if (isLast) void judge();
    else setOutside(true);
  };
  useKeys(
    held
      ? { digit: () => undefined }
      : {
          digit: (event) => type(event.key),
          ".": () => type("."),
          ",": () => type("."),
          backspace: () => change((text) => text.slice(0, -1)),
          enter,
        },
  );
  if (held)
    return (
      <HeldReading
        where={words.readTitle(spot.name)}
        check={held}
        onAgain={() => setHeld(undefined)}
        onAnswer={(drafts) => void keep(drafts)}
        onRight={
          held.state === "doubtful"
            ? () => void keep([{ kind, on: [spot.spot], data: data() }], held.then?.said)
            : undefined
        }
      />
    );
  const read = value(at);
  const isWrong = read !== undefined && !isPossible(read, at, meter);
  const [least, most] = rangeOf(at, meter);
  const mainSaid = () => {
    if (!isReady) return words.typeFirst;
    if (what === "lamp") return words.keepOne(shown("lamp"));
    return isOutside ? words.keepPair(shown("inside"), shown("outside")) : words.nextOutdoors;
  };
  const box = (where: Where, name: string) => (
    <button
      key={where}
      type="button"
      className={styles["box"]}
      aria-pressed={at === where}
      aria-label={`${name}: ${words.typed(typed[where])}, ${unit}`}
      onClick={() => setOutside(where === "outside")}
    >
      <span className={styles["boxName"]}>{name}</span>
      <span className={styles["boxValue"]}>
        {typed[where] || "\u2013"} <span className={styles["unit"]}>{unit}</span>
      </span>
    </button>
  );
  return (
    <Frame
      where={words.readTitle(spot.name)}
      beside={bench.name}
      page={spot.spot}
      strip={false}
      keys={
        <>
          <Pad
            label={{ inside: words.atLeaf, outside: words.outdoors, lamp: words.underLamp }[at]}
            onDigit={type}
            left={{ said: words.wipe, onPress: () => change(() => "") }}
            right={
              meter === "lux"
                ? { said: words.backKey, onPress: () => (isOutside ? setOutside(false) : leave()) }
                : { said: ".", onPress: () => type(".") }
            }
          />
          <Key main shut={!isReady || busy} onPress={enter}>
            {mainSaid()}
          </Key>
        </>
      }
    >
      <div className={styles["read"]}>
        <div className={styles["boxes"]}>
          {what === "lamp"
            ? box("lamp", words.underLamp)
            : [box("inside", words.atLeaf), box("outside", words.outdoors)]}
        </div>
        {isWrong && (
          <p role="alert">{words.outOf(shown(at), say.number(least, 2), `${say.number(most)} ${unit}`)}</p>
        )}
        <p className={styles["note"]}>{what === "lamp" ? words.readHowLamp : words.readHow}</p>
        {what === "pair" && (
          <>
            <Choices
              legend={words.sky}
              options={(["evenly grey", "broken", "clear"] as const).map((one) => ({
                value: one,
                said: words.skies[one] ?? one,
              }))}
              value={sky}
              onChoose={setSky}
            />
            <p className={styles["note"]}>{words.skyNote[sky]}</p>
          </>
        )}
        <Choices
          legend={words.meter}
          options={[
            ...(units === "us" ? [{ value: "fc" as const, said: words.footCandles }] : []),
            { value: "lux" as const, said: words.lux },
            { value: "umol" as const, said: words.umol },
          ]}
          value={meter}
          onChoose={setMeter}
        />
        {bench.lamps.length > 0 && (
          <Choices
            legend={words.readWhat}
            options={[
              { value: "pair", said: words.readWindow },
              { value: "lamp", said: words.readLamp },
            ]}
            value={what}
            onChoose={setWhat}
          />
        )}
        <OtherSpots bench={bench} spot={spot} />
        <KeyRow>
          <Key onPress={leave}>{words.backKey}</Key>
        </KeyRow>
      </div>
    </Frame>
  );
}

/** The reading is of one spot; another is one choice away. */
function OtherSpots({ bench, spot }: { readonly bench: BenchLight; readonly spot: SpotLit }) {
  const words = useLightWords();
  const [, go] = useLocation();
  return (
    <Choices
      legend={words.readSpot}
      options={bench.spots.map(({ spot: id, name, number }) => ({
        value: id,
        said: number ? `${name} (${number})` : name,
      }))}
      value={spot.spot}
      onChoose={(id) =>
        go(`/craft/light/${encodeURIComponent(bench.bench)}/read/${encodeURIComponent(id)}`, {
          replace: true,
        })
      }
    />
  );
}

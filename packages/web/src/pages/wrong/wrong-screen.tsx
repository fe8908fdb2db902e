import type { PlantId } from "@sillwood/bench/book";
import type { Sign } from "@sillwood/bench/crafts";
import { useState } from "react";
import { useLocation, useParams, useSearchParams } from "wouter";
import { fromCrafts } from "../../crafts/index.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { nextLook } from "./next-look.ts";
import { PlantPlaces, type Where } from "./plant-places.tsx";
import { Ranking } from "./ranking.tsx";
import { SafeActs } from "./safe-acts.tsx";
import styles from "./wrong.module.css";

/** Screen 12: one observation at a time, until an act is safe. */
export function WrongScreen() {
  const plant = useParams()["plant"] as PlantId;
  const { wrong: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const [search] = useSearchParams();
  // The whole plant is looked at first: hanging leaves, the sign that cannot wait, are one press away.
  const [where, setWhere] = useState<Where>("whole");
  const [seen, setSeen] = useState<readonly string[]>([]);
  /** Looks that could not be told: asked no more, and they move nothing. */
  const [untold, setUntold] = useState<readonly string[]>([]);
  const [busy, setBusy] = useState(false);
  /** The drawing is asked for again, to add another sign. */
  const [again, setAgain] = useState(false);
  const isLooking = seen.length === 0 || again;
  const { value, error } = useAsk("wrong", { plant, seen });

  const see = (key: string) => {
    setAgain(false);
    setSeen(seen.includes(key) ? seen.filter((one) => one !== key) : [...seen, key]);
  };
  const here = value?.looks.filter((look) => look.where === where) ?? [];
  useKeys({
    digit: ({ key }) => {
      const look = here[Number(key) - 1];
      if (look) see(look.key);
    },
  });
  if (!value)
    return (
      <Frame where={words.title}>
        <ReadingNote error={error} />
      </Frame>
    );

  const saidOf = (key: string) =>
    value.looks.find((look) => look.key === key)?.said ?? answerSaid(value.signs, key) ?? key;
  const signs = seen.length > 0 ? value.signs : [];
  const asking = nextLook(
    signs.map(({ sign }) => sign),
    seen,
    untold,
  );
  const best = signs[0]?.sign;
  const tell = async () => {
    setBusy(true);
    const text = [say.list(seen.map(saidOf)), best && words.likeliestIs(best.cause)]
      .filter(Boolean)
      .join("; ");
    // What was seen counts for the crafts at once; the case is for the grower.
    const written = await write(
      engine,
      [
        ...(fromCrafts("seen")?.(plant, seen) ?? []),
        { kind: "round.left", on: [plant], data: { text, case: seen } },
      ],
      { said: `${value.number} ${text}` },
    );
    setBusy(false);
    if (!("kept" in written)) return;
    // Whoever came from a walk stands before that pot still: the round goes on there.
    if (search.get("back") === "walk") history.back();
    else go(`/plant/${plant}`);
  };
  return (
    <Frame
      where={words.title}
      beside={value.number}
      page={plant}
      keys={
        <>
          {asking && (
            <fieldset className={styles["places"]}>
              <legend>
                {words.oneLook} {asking.question}
              </legend>
              <KeyRow>
                {asking.answers.map(({ key, said }) => (
                  <Key key={key} onPress={() => see(key)}>
                    {said}
                  </Key>
                ))}
                <Key onPress={() => setUntold([...untold, asking.question])}>{words.cantTell}</Key>
              </KeyRow>
            </fieldset>
          )}
          <KeyRow>
            <Key onPress={() => go(`/write/plant.noted/${plant}`)}>{words.photoNote}</Key>
            <Key onPress={() => print()}>{words.print}</Key>
          </KeyRow>
          <Key main shut={seen.length === 0 || busy} onPress={() => void tell()}>
            {seen.length === 0 ? words.writeShut : words.write}
          </Key>
        </>
      }
    >
      <div className={styles["page"]}>
        {isLooking && (
          <div>
            <PlantPlaces where={where} onChoose={setWhere} />
            <section aria-live="polite">
              <h2 className={styles["part"]}>{words.whatThere}</h2>
              {here.length > 0 ? (
                <KeyRow label={words.whatThere}>
                  {here.map(({ key, said }) => (
                    <Key key={key} pressed={seen.includes(key)} onPress={() => see(key)}>
                      {said}
                    </Key>
                  ))}
                </KeyRow>
              ) : (
                <p className="serif">{words.noSignHere}</p>
              )}
            </section>
          </div>
        )}
        <div aria-live="polite">
          {seen.length > 0 && (
            <p className={styles["seen"]}>
              <span className={styles["rank"]}>{words.youSee}</span>
              {seen.map((key) => (
                <Key key={key} label={words.unsay(saidOf(key))} onPress={() => see(key)}>
                  {saidOf(key)} ×
                </Key>
              ))}
              {!isLooking && <Key onPress={() => setAgain(true)}>{words.seeMore}</Key>}
            </p>
          )}
          {best && <SafeActs sign={best} again_ms={nowMs() + best.lookAgainIn_h * 3_600_000} />}
          {signs.length > 0 && <Ranking signs={signs.map(({ sign }) => sign)} />}
          {seen.length > 0 && signs.length === 0 && <p className="serif">{words.nothingFits}</p>}
          {seen.length === 0 && <p className="serif measure">{words.start}</p>}
        </div>
      </div>
    </Frame>
  );
}

/** A sign that was said as the answer to a look has its words there. */
const answerSaid = (signs: readonly { readonly sign: Sign }[], key: string): string | undefined =>
  signs.flatMap(({ sign }) => sign.lookApart?.answers ?? []).find((answer) => answer.key === key)?.said;

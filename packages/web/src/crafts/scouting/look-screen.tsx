import type { Json, PlantId } from "@sillwood/bench/book";
import type { Pest, PlantScout, ScoutPage } from "@sillwood/bench/crafts/scouting";
import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Sourced } from "../../parts/origin.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { lookDrafts, type Seen, type Ticks } from "./look-typed.ts";
import styles from "./scout.module.css";
import { Staff } from "./staff.tsx";
import { useScout, useScoutWords } from "./use-scout.ts";

/** Screen 7: one minute of looking that counts. The key stays shut until a place is ticked. */
export function LookScreen() {
  const { plant: id = "" } = useParams<{ plant: string }>();
  const words = useScoutWords();
  const { page, refused, error } = useScout({ plant: id });
  if (!page?.plant)
    return (
      <Frame where={words.title}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  return <Looking key={page.plant.plant} page={page} at={page.plant} />;
}

const NOTHING: Ticks = { tips: false, leaves: false, stem: false, tap: false };
const FEW_n = 3;
const CARD_DAYS = ["3", "7", "14"] as const;

function Looking({ page, at }: { readonly page: ScoutPage; readonly at: PlantScout }) {
  const words = useScoutWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const [ticks, setTicks] = useState(NOTHING);
  const [card, setCard] = useState(false);
  const [cardDays, setCardDays] = useState<(typeof CARD_DAYS)[number] | "lost">();
  const [seen, setSeen] = useState<Seen>({});
  const [showsAll, setShowsAll] = useState(false);
  const [unsure, setUnsure] = useState(false);
  const [found, setFound] = useState<string>();
  const slip = useSlip();
  const pests = page.pests.filter(({ hasClock }, i) => showsAll || i < FEW_n || (hasClock && showsAll));
  const tick = (place: keyof Ticks) => setTicks((was) => ({ ...was, [place]: !was[place] }));
  const count = (pest: Pest) => setSeen((was) => ({ ...was, [pest]: (was[pest] ?? 0) + 1 }));
  const isLooked = Object.values(ticks).some(Boolean);
  const isReady = isLooked || (card && cardDays !== undefined);
  const places = [
    ticks.tips && words.tips,
    ticks.leaves && words.leaves,
    ticks.stem && words.stem,
    ticks.tap && words.tap,
    card && words.card,
  ].filter((each) => each !== false);
  const nameOf = (pest: Pest) => page.pests.find(({ key }) => key === pest)?.said ?? pest;
  const finds = Object.entries(seen) as [Pest, number][];
  const findsSaid = say.list(finds.map(([pest, n]) => `${n} ${nameOf(pest)}`));
  const keep = async () => {
    if (!isReady) return;
    const drafts = lookDrafts(
      at.plant,
      at.near.map(({ plant }) => plant),
      ticks,
      seen,
      card ? cardDays : undefined,
    );
    const written = await write(engine, drafts);
    if (!("kept" in written)) return;
    setFound(
      finds.length > 0
        ? words.foundNow(at.number, findsSaid, say.list(at.near.map(({ number }) => number)))
        : undefined,
    );
    setTicks(NOTHING);
    setCard(false);
    setCardDays(undefined);
    setSeen({});
  };
  const arrive = async (from: string) => {
    await write(engine, [{ kind: "scouting.arrived", on: [at.plant], data: { from } as Json }]);
  };
  const release = at.release;
  useKeys({
    digit: ({ key }) => {
      const pest = pests[Number(key) - 1];
      if (pest) count(pest.key);
    },
    enter: () => void keep(),
  });
  const mainSaid = !isReady
    ? words.shut
    : finds.length > 0
      ? words.writeFound(findsSaid)
      : words.wrote(say.list(places));
  return (
    <Frame
      where={words.look(at.number)}
      beside={at.place}
      page={at.plant}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => setUnsure(!unsure)} pressed={unsure}>
              {words.none}
            </Key>
            <Key onPress={() => go(`/craft/scout/${encodeURIComponent(at.plant)}/treat`)}>{words.treat}</Key>
          </KeyRow>
          {release && !isReady ? (
            <Key main onPress={() => void write(engine, [release as Draft])}>
              {words.release(at.number)}
            </Key>
          ) : (
            <Key main shut={!isReady} onPress={() => void keep()}>
              {mainSaid}
            </Key>
          )}
        </>
      }
    >
      {found && (
        <section className={styles["part"]} role="status">
          <p>
            <strong>{found}</strong>
          </p>
          <Key onPress={() => go(`/craft/scout/${encodeURIComponent(at.plant)}/treat`)}>{words.whatToDo}</Key>
        </section>
      )}
      {at.labelSaid && <p role="alert">{at.labelSaid}</p>}
      <fieldset className={styles["places"]}>
        <legend>{words.places}</legend>
        {(["tips", "leaves", "stem", "tap"] as const).map((place) => (
          <label key={place} className={styles["place"]}>
            <input type="checkbox" checked={ticks[place]} onChange={() => tick(place)} />
            <span>{words[place]}</span>
          </label>
        ))}
        <label className={styles["place"]}>
          <input type="checkbox" checked={card} onChange={() => setCard(!card)} />
          <span>{words.card}</span>
        </label>
      </fieldset>
      {card && (
        <>
          {cardDays === undefined && <p>{words.cardSays}</p>}
          <Choices
            legend={words.cardDays}
            options={[
              ...CARD_DAYS.map((value) => ({ value, said: words.days(Number(value)) })),
              { value: "lost" as const, said: words.lost },
            ]}
            value={cardDays}
            onChoose={setCardDays}
          />
        </>
      )}
      <section className={styles["part"]}>
        <h2>{words.count}</h2>
        <div className={styles["counts"]}>
          {pests.map(({ key, said }) => (
            <button
              key={key}
              type="button"
              className={styles["count"]}
              data-seen={seen[key] ? "" : undefined}
              onClick={() => count(key)}
            >
              {said} {seen[key] ?? 0}
            </button>
          ))}
          <button type="button" className={styles["count"]} onClick={() => setShowsAll(!showsAll)}>
            {showsAll ? words.fewer : words.more}
          </button>
        </div>
        {unsure && (
          <>
            {words.alike.map((said) => (
              <p key={said}>{said}</p>
            ))}
            <p className={styles["small"]}>{words.stillNot}</p>
          </>
        )}
      </section>
      <Gates at={at} onWorking={slip.open} />
      {!at.isWatched && (
        <Choices
          legend={words.from}
          options={Object.entries(words.froms).map(([value, said]) => ({ value, said }))}
          value={undefined}
          onChoose={(from) => void arrive(from)}
        />
      )}
      {at.after && (
        <KeyRow>
          <Key onPress={() => go(`/craft/scout/${encodeURIComponent(at.after as PlantId)}`)}>
            {words.next}
          </Key>
        </KeyRow>
      )}
      <WorkingSlip slip={slip} working={at.working} />
    </Frame>
  );
}

/** The staff, the two gates with their dates, what holds, and the habit of two weeks beside it. */
function Gates({ at, onWorking }: { readonly at: PlantScout; readonly onWorking: () => void }) {
  const words = useScoutWords();
  const lines = [...at.evidence, ...(at.together ? [at.together] : [])];
  const said = [
    at.holderSaid,
    at.unseenSaid,
    ...at.courses,
    at.cheapestSaid,
    at.warmSaid,
    at.trendSaid,
    at.staleSaid,
  ];
  return (
    <section className={styles["part"]}>
      <h2>{words.staffTitle}</h2>
      <p data-gate="move">{at.gates.move.said}</p>
      <p data-gate="sell">
        {at.working ? (
          <Sourced origin="learned" onOpen={onWorking}>
            {at.gates.sell.said}
          </Sourced>
        ) : (
          at.gates.sell.said
        )}
      </p>
      <Staff lines={lines} />
      {said.map((line) => line && <p key={line}>{line}</p>)}
      {at.habitSaid && <p className={styles["small"]}>{at.habitSaid}</p>}
    </section>
  );
}

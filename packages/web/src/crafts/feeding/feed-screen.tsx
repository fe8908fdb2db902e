import type { FeedAsk, FeedPage } from "@sillwood/bench/crafts/feeding";
import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { MixingTabs } from "../mixing-tabs.tsx";
import styles from "./feed.module.css";
import { MeterScreen } from "./meter-screen.tsx";
import { useFeed, useFeedWords } from "./use-feed.ts";

/** Sizes of a tank that a grower owns, litres. */
const SIZES_L = [0.5, 1, 2, 3, 4, 5, 8, 10, 15, 20, 40, 60, 100] as const;

/** The mixing desk: what, with which tool, in which order, how it should read. */
export function FeedScreen() {
  const words = useFeedWords();
  const [ask, setAsk] = useState<FeedAsk>({});
  const { page, refused, error } = useFeed(ask);
  const [isReading, setReading] = useState(false);
  if (!page)
    return (
      <Frame where={words.title}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  if (isReading && page.recipe)
    return <MeterScreen ask={ask} recipe={page.recipe} onBack={() => setReading(false)} />;
  return (
    <Card
      page={page}
      onAsk={(more) => setAsk((was) => ({ ...was, ...more }))}
      onRead={() => setReading(true)}
    />
  );
}

interface CardProps {
  readonly page: FeedPage;
  readonly onAsk: (more: FeedAsk) => void;
  readonly onRead: () => void;
}

function Card({ page, onAsk, onRead }: CardProps) {
  const words = useFeedWords();
  const say = useSay();
  const engine = useEngine();
  const slip = useSlip();
  const [, go] = useLocation();
  const { recipe, chosen, water, shelf, trouble } = page;
  const size = (up: boolean) =>
    up ? SIZES_L.find((each) => each > chosen.volume_L) : SIZES_L.findLast((each) => each < chosen.volume_L);
  const resize = (up: boolean) => {
    const volume_L = size(up);
    if (volume_L !== undefined) onAsk({ volume_L });
  };
  const keep = (drafts: readonly Draft[]) =>
    void write(engine, drafts).then((kept) => "kept" in kept && go("/"));
  return (
    <Frame
      where={words.title}
      beside={say.volume(1000 * chosen.volume_L)}
      keys={
        <>
          <KeyRow>
            <Key shut={!recipe} onPress={onRead}>
              {words.reads}
            </Key>
            <Key shut={size(false) === undefined} onPress={() => resize(false)}>
              {words.less}
            </Key>
            <Key shut={size(true) === undefined} onPress={() => resize(true)}>
              {words.more}
            </Key>
          </KeyRow>
          {recipe && recipe.doses.length > 0 ? (
            <Key main onPress={() => keep(recipe.act)}>
              {words.mixed(recipe.tank)}
            </Key>
          ) : (
            <Key main onPress={() => go("/craft/feeding/label")}>
              {words.readLabel}
            </Key>
          )}
        </>
      }
    >
      <MixingTabs at="feed" />
      <div className={styles["part"]}>
        {page.groups.length > 1 ? (
          <Choices
            legend={words.for}
            options={page.groups.map(({ key, said }) => ({ value: key, said }))}
            value={chosen.key}
            onChoose={(group) => onAsk({ group })}
          />
        ) : (
          <p className="serif">{page.said}</p>
        )}
        {chosen.pots.length > 0 && (
          <p className={styles["small"]}>{say.list(chosen.pots.map(({ number }) => number))}</p>
        )}
        <p>
          {words.water}: {water.said} <OriginMark origin={water.origin} />
        </p>
        {water.notes.map((note) => (
          <p key={note} className="serif">
            {note}
          </p>
        ))}
      </div>
      <Care word={words.care}>{page.cautions[0]}</Care>
      {trouble && (
        <div role="status" className={styles["ask"]}>
          <p>{trouble.said}</p>
          {trouble.ways.map((way) => (
            <p key={way} className={styles["small"]}>
              {way}
            </p>
          ))}
        </div>
      )}
      {recipe && (
        <>
          <section className={styles["part"]}>
            <h2>{words.recipe(say.volume(1000 * recipe.volume_L))}</h2>
            <ol className={styles["steps"]}>
              {recipe.steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
            <p>
              <Sourced origin={recipe.working.origin} size="row" onOpen={() => slip.open()}>
                {recipe.meterSaid}
              </Sourced>{" "}
              <OriginMark origin={water.origin} />
            </p>
            <p className={styles["small"]}>
              {[recipe.driftSaid, recipe.costSaid].filter(Boolean).join(". ")}
            </p>
            {recipe.notes.map((note) => (
              <p key={note} className="serif">
                {note}
              </p>
            ))}
          </section>
          <section className={styles["part"]}>
            <h2>{words.bottles}</h2>
            <p>{recipe.trade.map(({ said }) => said).join(" | ")}</p>
            <ul className={styles["plain"]}>
              {recipe.elements.map(({ of, said }) => (
                <li key={of}>{said}</li>
              ))}
            </ul>
          </section>
        </>
      )}
      <section className={styles["part"]}>
        <h2>{words.shelf}</h2>
        {shelf.length === 0 && <p className="serif">{words.emptyShelf}</p>}
        <ul className={styles["plain"]}>
          {shelf.map(({ id, name, said, isUsed, why }) => (
            <li key={id}>
              {name} {said}
              {why !== undefined ? `, ${why}` : isUsed ? `, ${words.takesPart}` : ""}
            </li>
          ))}
        </ul>
        <KeyRow>
          <Key onPress={() => go("/craft/feeding/label")}>{words.readLabel}</Key>
        </KeyRow>
        {page.cautions.slice(1).map((caution) => (
          <Care key={caution} word={words.care}>
            {caution}
          </Care>
        ))}
      </section>
      <WorkingSlip slip={slip} working={recipe?.working} />
    </Frame>
  );
}

import { useState } from "react";
import { useLocation } from "wouter";
import { changeSettings } from "../../device/settings.ts";
import { nowMs } from "../../engine/clock.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { onDemand } from "../../words/on-demand.ts";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { OthersMissing } from "../others-missing-line.tsx";
import { ReadingNote } from "../reading-note.tsx";
import { hasPage } from "../routes.ts";
import { useSay, useSettings } from "../say.ts";
import { isResumable, resumedAt, setWalk, useWalkPlace } from "../walk/walk-place.ts";
import { Asks } from "./asks.tsx";
import { BenchRow } from "./bench-row.tsx";
import { HeldRow, MovedRow } from "./held-row.tsx";
import styles from "./round-screen.module.css";
import { SaveRoom } from "./save-room.tsx";
import { useStoppedElsewhere } from "./stopped.ts";
import { benchesWithWork, hasWork, turnRound, useRound, workOf } from "./use-round.ts";

/** Minutes that can be chosen; undefined is all of it. */
const CHOICES = [30, 45, 60, undefined] as const;

/** The first screen of an empty book; a full one never fetches it. */
const FirstRun = onDemand(async () => (await import("../../pages/first-run/first-run.tsx")).FirstRun);

/** Screen 1a: what can't wait, in walking order, in the minutes there are. */
export function RoundScreen() {
  const { round: words, shell } = useWords();
  const { value: round, error } = useRound();
  const { minutes } = useSettings();
  const say = useSay();
  const [, go] = useLocation();
  const place = useWalkPlace();
  const elsewhere = useStoppedElsewhere(round);
  const [keepRoom, setKeepRoom] = useState(true);
  if (!round)
    return (
      <Frame where={words.title}>
        <ReadingNote error={error} />
      </Frame>
    );

  const benches = benchesWithWork(round);
  const first = benches[0];
  const pot = first?.spots.find(hasWork);
  const numberOf = (plant: string | undefined) =>
    round.benches.flatMap(({ spots }) => spots).find((spot) => spot.plant === plant)?.number ?? "";
  const resumable = isResumable(place, nowMs()) ? place : undefined;
  const stoppedAt = resumable && numberOf(resumable.stops[resumedAt(resumable, workOf(round))]);
  const ago = (at_ms: number) => {
    const since_min = Math.floor((nowMs() - at_ms) / 60_000);
    return since_min < 1 ? words.justNow : say.minutes(since_min);
  };
  const isEmpty = round.benches.every(({ spots }) => spots.every(({ plant }) => plant === undefined));

  if (isEmpty && round.asks.length === 0) return <FirstRun />;

  const mainKey = () => {
    if (resumable)
      return (
        <Key main onPress={() => go(`/walk/${encodeURIComponent(resumable.bench)}`)}>
          {words.goOn(stoppedAt || "")}
        </Key>
      );
    if (first && pot)
      return (
        <Key main onPress={() => go(`/walk/${encodeURIComponent(first.bench)}`)}>
          {words.start(first.name, pot.number ?? "")}
        </Key>
      );
    if (isEmpty && hasPage("/first"))
      return (
        <Key main onPress={() => go("/first")}>
          {words.firstPlant}
        </Key>
      );
    if (hasPage("/plants"))
      return (
        <Key main onPress={() => go("/plants")}>
          {words.toPlants}
        </Key>
      );
    return null;
  };

  const keys = (
    <>
      {resumable && (
        <KeyRow>
          <Key onPress={() => setWalk(undefined)}>{words.fromTheStart}</Key>
        </KeyRow>
      )}
      {first && (
        <KeyRow>
          <Key onPress={turnRound}>{words.otherEnd}</Key>
          <Key onPress={() => go(`/weigh/${encodeURIComponent(first.bench)}`)}>{words.weighRun}</Key>
          <Key onPress={() => go("/print/round")}>{words.print}</Key>
          {hasPage("/away") && <Key onPress={() => go("/away")}>{words.away}</Key>}
        </KeyRow>
      )}
      {mainKey()}
    </>
  );

  return (
    <Frame where={words.title} beside={say.day(round.now_ms)} keys={keys}>
      {resumable && stoppedAt ? (
        <p className={styles["stopped"]}>{words.stopped(stoppedAt, ago(resumable.touchedAt_ms))}</p>
      ) : (
        elsewhere && (
          <p className={styles["stopped"]}>
            {words.somebodyStopped(elsewhere.by, elsewhere.number, ago(elsewhere.at_ms))}
          </p>
        )
      )}
      {round.tasks_n > 0 ? (
        <p className={styles["said"]}>{round.said}</p>
      ) : (
        <p className={styles["said"]}>
          {isEmpty ? words.noPlants : words.nothingToday}{" "}
          {!isEmpty && round.next && words.nextDay(round.next.said)}
        </p>
      )}
      {round.tasks_n > 0 && (
        <div className={styles["minutes"]}>
          <span className={styles["caption"]}>{words.iHave}</span>
          <KeyRow label={words.iHave} inOrder>
            {CHOICES.map((choice) => (
              <Key
                key={choice ?? "all"}
                pressed={minutes === choice}
                label={choice === undefined ? words.allMinutes : words.minutesChoice(choice)}
                onPress={() => changeSettings({ minutes: choice })}
              >
                {choice ?? words.allOfIt}
              </Key>
            ))}
          </KeyRow>
          {round.overSaid && <p className="serif">{round.overSaid}</p>}
        </div>
      )}
      {round.tasks_n > 0 && (
        <dl className={styles["counts"]}>
          {(
            [
              [words.must, round.must_n],
              [words.fits, round.fits_n],
              [words.canWait, round.wait_n],
            ] as const
          ).map(([name, count_n]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{count_n}</dd>
            </div>
          ))}
        </dl>
      )}
      <OthersMissing />
      <Asks asks={round.asks} />
      {!isEmpty && (
        <Ledger>
          {benches.map((bench) => (
            <BenchRow
              key={bench.bench}
              bench={bench}
              onOpen={() => go(`/walk/${encodeURIComponent(bench.bench)}`)}
            />
          ))}
        </Ledger>
      )}
      <HeldRow held={round.held} />
      <MovedRow round={round} />
      {round.beforeYouGo.length > 0 && (
        <section className={styles["part"]}>
          <h2>{words.beforeYouGo}</h2>
          {round.beforeYouGo.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </section>
      )}
      {round.questions.length > 0 && (
        <section className={styles["part"]}>
          <h2>{words.worth}</h2>
          <Ledger>
            {round.questions.map(({ plant, said }) => (
              <Row key={`${plant} ${said}`} onOpen={() => go(`/plant/${plant}`)}>
                {said}
              </Row>
            ))}
          </Ledger>
        </section>
      )}
      {keepRoom && <SaveRoom onLater={() => setKeepRoom(false)} />}
      {error && <p className="serif">{shell.notRead}</p>}
    </Frame>
  );
}

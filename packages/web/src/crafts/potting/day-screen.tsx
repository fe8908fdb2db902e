import type { PlantId } from "@sillwood/bench/book";
import type { DayPage, OnTheRail, StepName } from "@sillwood/bench/crafts/potting";
import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care, Ledger, Row } from "../../parts/ledger.tsx";
import { addDigit, Pad } from "../../parts/pad.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import { fromCrafts } from "../index.ts";
import { BeginDay } from "./begin-day.tsx";
import { Held } from "./held.tsx";
import styles from "./potting.module.css";
import { usePotting, usePottingWords } from "./use-potting.ts";

const STEPS: readonly StepName[] = ["lift", "cut", "wash", "pot", "drain", "place"];
const MOST_DIGITS_n = 5;

/** Screen 9: the rail of a potting day: where each plant stands, what comes next, which clock runs. */
export function DayScreen() {
  const words = usePottingWords();
  const { page, refused, error } = usePotting({ what: "day" });
  if (!page)
    return (
      <Frame where={words.dayTitle}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  return page.rail.length === 0 ? <BeginDay page={page} /> : <Rail page={page} />;
}

function Rail({ page }: { readonly page: DayPage }) {
  const words = usePottingWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const [chosen, setChosen] = useState<PlantId>();
  const [typed, setTyped] = useState("");
  const [accepted, setAccepted] = useState(false);
  const hand = page.rail.find(({ plant }) => plant === chosen) ?? inHand(page.rail);
  const { next } = hand;
  const waits = page.warmth?.state === "wait" || page.warmth?.state === "refused" ? page.warmth : undefined;
  const isHeld = waits !== undefined && !accepted && (next === "wash" || next === "pot");
  const here = page.rail.filter((each) => each.next === next);
  const weight_g = Number(typed);
  const keep = async (drafts: readonly Draft[]) => {
    const written = await write(engine, drafts);
    if ("kept" in written) {
      setTyped("");
      setChosen(undefined);
    }
  };
  const together = (of: readonly OnTheRail[]): readonly Draft[] => {
    const drafts = of[0]?.drafts ?? [];
    return drafts.every((draft) => same(draft, of))
      ? drafts.map((draft) => ({ ...draft, on: of.map(({ plant }) => plant) }))
      : of.flatMap((each) => each.drafts);
  };
  const weighed = (): readonly Draft[] => {
    const draft = fromCrafts("weighed")?.(hand.plant, weight_g, false);
    const drained = draft && {
      ...draft,
      data: { ...(draft.data as object), state: "just drained" } as Draft["data"],
    };
    return [...(drained ? [drained] : []), ...hand.drafts];
  };
  return (
    <Frame
      where={words.dayTitle}
      beside={next && words.next(hand.number, words.steps[next])}
      page={`${hand.plant} ${next}`}
      keys={
        <>
          {hand.asksWeight && (
            <Pad
              label={words.weight(hand.number)}
              onDigit={(digit) => setTyped((was) => addDigit(was, digit, MOST_DIGITS_n))}
              left={{ said: words.wipe, onPress: () => setTyped("") }}
            />
          )}
          {isHeld && (
            <KeyRow>
              <Key onPress={() => setAccepted(true)}>{words.goOn}</Key>
            </KeyRow>
          )}
          {!hand.asksWeight && !isHeld && next && (
            <KeyRow>
              {here.length > 1 && (
                <Key onPress={() => void keep(together(here))}>
                  {words.all(say.number(here.length), words.steps[next])}
                </Key>
              )}
              {hand.leftOut && (
                <Key onPress={() => void keep(hand.leftOut?.drafts ?? [])}>
                  {words.leaveOut(words.steps[hand.leftOut.step])}
                </Key>
              )}
            </KeyRow>
          )}
          {next &&
            (hand.asksWeight ? (
              <Key main shut={!(weight_g >= 1)} onPress={() => void keep(weighed())}>
                {weight_g >= 1 ? words.keepWeight(typed) : words.typeWeight}
              </Key>
            ) : (
              <Key main shut={isHeld} onPress={() => void keep(hand.drafts)}>
                {!isHeld
                  ? words.done[next](hand.number)
                  : waits.until_ms === undefined
                    ? words.tooCold
                    : words.waterStands(say.time(waits.until_ms))}
              </Key>
            ))}
        </>
      }
    >
      <p className="serif">{page.said}</p>
      {page.warmth && <p role={page.warmth.state === "good" ? undefined : "alert"}>{page.warmth.said}</p>}
      <Care word={words.care}>{page.care}</Care>
      {next && (
        <section className={pages["part"]}>
          <h2>{words.next(hand.number, words.steps[next])}</h2>
          <ul>
            {[...hand.clocks.map(({ said }) => said), ...hand.how].map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          {hand.asksWeight && (
            <>
              <p className={pages["note"]}>{words.weightWhy}</p>
              <p className={styles["weight"]}>
                <output aria-label={words.weight(hand.number)}>{typed} g</output>
              </p>
            </>
          )}
        </section>
      )}
      <Ledger label={words.rail}>
        {page.rail.map((each) => (
          <Row key={each.plant} onOpen={() => setChosen(each.plant)}>
            <span className={pages["line"]}>
              <span className={pages["number"]}>{each.number}</span>
              <span className={pages["beside"]}>
                {each.plant === hand.plant ? words.here : each.next ? words.steps[each.next] : ""}
              </span>
            </span>
            <span className={styles["rail"]}>
              {STEPS.map((step) => (
                <span
                  key={step}
                  className={each.done.some((one) => one.step === step) ? styles["passed"] : styles["step"]}
                >
                  {words.steps[step]}
                </span>
              ))}
            </span>
            {each.clocks.map(({ key, said }) => (
              <span key={key} className={pages["beside"]}>
                {said}
              </span>
            ))}
          </Row>
        ))}
      </Ledger>
      {page.held.length > 0 && <Held page={page} />}
      <Key quiet onPress={() => go("/craft/potting/mix")}>
        {words.mixDesk}
      </Key>
    </Frame>
  );
}

/** The plant furthest behind is in hand: bare roots before what only drains. */
function inHand(rail: readonly OnTheRail[]): OnTheRail {
  const behind = (each: OnTheRail) => (each.next ? STEPS.indexOf(each.next) : STEPS.length);
  return rail.reduce((one, other) => (behind(other) < behind(one) ? other : one));
}

const same = (draft: Draft, of: readonly OnTheRail[]): boolean =>
  of.every(({ drafts }) =>
    drafts.some(
      ({ kind, data }) => kind === draft.kind && JSON.stringify(data) === JSON.stringify(draft.data),
    ),
  );

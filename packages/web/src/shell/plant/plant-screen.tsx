import type { PlantId } from "@sillwood/bench/book";
import type { Working } from "@sillwood/bench/working";
import { lazy, Suspense, useState } from "react";
import { useLocation, useParams } from "wouter";
import { nowMs } from "../../engine/clock.ts";
import type { PlantSheet } from "../../engine/questions.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Ledger, Row } from "../../parts/ledger.tsx";
import { OriginMark, Sourced } from "../../parts/origin.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { HowGood } from "../how-good.tsx";
import { useKeys } from "../keyboard.ts";
import { write } from "../last-line.ts";
import { OthersMissing } from "../others-missing-line.tsx";
import { ReadingNote } from "../reading-note.tsx";
import { HeldList } from "../round/held-row.tsx";
import { hasPage } from "../routes.ts";
import { useSay } from "../say.ts";
import { actOf, isWeighing, lineOf } from "../walk/acts.ts";
import { DayLines } from "./day-lines.tsx";
import { EnterSlip } from "./enter-slip.tsx";
import { MediumAsk } from "./medium-ask.tsx";
import { PlantFacts } from "./plant-facts.tsx";
import { PlantPhoto } from "./plant-photo.tsx";
import styles from "./plant-screen.module.css";
import { usePhoto } from "./use-photo.tsx";

const FanChart = lazy(async () => ({ default: (await import("../../parts/fan-chart.tsx")).FanChart }));

/** Screen 2: everything about one plant for the next fourteen days, on one day line. */
export function PlantScreen() {
  const { plant: words } = useWords();
  const { plant = "" } = useParams<{ plant: string }>();
  const { value: page, error, asOf_ms } = useAsk("plant", { plant: plant as PlantId });
  if (page === undefined)
    return (
      <Frame where={words.title("")}>
        <ReadingNote error={error} />
      </Frame>
    );
  if (page === null)
    return (
      <Frame where={words.title("")}>
        <p className="serif">{words.notHere}</p>
      </Frame>
    );
  return <PlantRead page={page} now_ms={asOf_ms ?? nowMs()} />;
}

function PlantRead({ page, now_ms }: { readonly page: PlantSheet; readonly now_ms: number }) {
  const { plant: words } = useWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const enter = useSlip();
  const slip = useSlip();
  const [working, setWorking] = useState<Working>();
  const photo = usePhoto(page.plant);
  const task = page.tasks[0];
  const isNew = page.heads.length > 0 && page.heads.every(({ head }) => head.working.origin === "assumed");
  const open = (shown: Working) => {
    setWorking(shown);
    slip.open();
  };
  useKeys({
    "[": () => page.before && go(`/plant/${page.before}`),
    "]": () => page.after && go(`/plant/${page.after}`),
  });
  const hasDesk = hasPage("/wrong/:plant");

  const weigh = () => go(`/weigh/${encodeURIComponent(page.spot?.bench ?? "")}?pot=${page.plant}&back=walk`);

  const mainKey =
    task && !page.ended ? (
      isWeighing(task) ? (
        <Key main onPress={weigh}>
          {lineOf(task)}
        </Key>
      ) : (
        <Key main onPress={() => void write(engine, [actOf(task)])}>
          {words.doIt(task.title, task.amount ? task.said : "")}
        </Key>
      )
    ) : (
      <Key main onPress={enter.open}>
        {words.writeAnEntry}
      </Key>
    );

  return (
    <Frame
      where={page.number}
      beside={page.spot?.name}
      page={page.plant}
      keys={
        <>
          <KeyRow>
            <Key onPress={enter.open}>{words.enter}</Key>
            <Key onPress={photo.take}>{words.photo}</Key>
            {hasDesk && <Key onPress={() => go(`/wrong/${page.plant}`)}>{words.wrong}</Key>}
            <Key onPress={() => go(`/print/plant/${page.plant}`)}>{words.print}</Key>
          </KeyRow>
          {mainKey}
        </>
      }
    >
      {photo.input}
      <div className={styles["sheet"]}>
        <p className={styles["kind"]}>{page.kind}</p>
        {page.ended !== undefined && <p className="serif">{words.ended(page.ended)}</p>}
        {page.photo !== undefined && <PlantPhoto sha256={page.photo} number={page.number} />}
        <DayLines page={page} onWorking={open} />
        {page.heads.length > 0 && (
          <p className={styles["heads"]}>
            {page.heads.map(({ craft, head }) => (
              <span key={craft}>
                {head.name}{" "}
                <Sourced origin={head.working.origin} size="row" onOpen={() => open(head.working)}>
                  {head.said}
                </Sourced>{" "}
                <OriginMark origin={head.working.origin} />
              </span>
            ))}
          </p>
        )}
        {isNew && <p className="serif">{words.newHere}</p>}
        {page.isMediumUnknown && <MediumAsk plant={page.plant} />}
        {page.charts.map(({ craft, chart }) => (
          <Suspense key={craft} fallback={<div className={styles["chart"]} />}>
            <FanChart chart={chart} now_ms={now_ms} />
          </Suspense>
        ))}
        {page.placeSaid && <p className="serif">{page.placeSaid}</p>}
        {page.weatherSaid && <p className="serif">{page.weatherSaid}</p>}
        <OthersMissing />
        {page.held.length > 0 && (
          <section>
            <h2 className={styles["part"]}>{words.held}</h2>
            <HeldList held={page.held} />
          </section>
        )}
        {page.question && (
          <Ledger>
            <Row onOpen={page.question.work === "weigh" && page.spot ? weigh : undefined}>
              {page.question.said}
            </Row>
          </Ledger>
        )}
        {page.last && (
          <p className={styles["last"]}>
            <span className={styles["label"]}>{words.last}</span> {say.day(page.last.at_ms, now_ms)}{" "}
            {say.time(page.last.at_ms)}: {page.last.said}
          </p>
        )}
        {page.problems.map((problem) => (
          <p key={problem} className="serif">
            {problem}
          </p>
        ))}
        <PlantFacts page={page} />
        <HowGood whose={{ plant: page.plant }} />
      </div>
      <WorkingSlip slip={slip} working={working} onChange={() => go("/settings/assumed")} />
      <EnterSlip slip={enter} page={page} />
    </Frame>
  );
}

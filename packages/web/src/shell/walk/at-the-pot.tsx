import type { PlantId } from "@sillwood/bench/book";
import type { Task } from "@sillwood/bench/round";
import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import { fromCrafts } from "../../crafts/index.ts";
import { nowMs } from "../../engine/clock.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { SpotStrip } from "../../parts/spot-strip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { Frame } from "../frame.tsx";
import { useKeys } from "../keyboard.ts";
import { write } from "../last-line.ts";
import { stripMarks } from "../round/use-round.ts";
import { useSay } from "../say.ts";
import { SunOffer } from "../sun-offer.tsx";
import { actOf, isWeighing, lineOf } from "./acts.ts";
import styles from "./at-the-pot.module.css";
import { Lock } from "./lock.tsx";
import { NotHereSlip } from "./not-here-slip.tsx";
import { OtherSlip } from "./other-slip.tsx";
import { SkipSlip } from "./skip-slip.tsx";
import { TaskRead } from "./task-read.tsx";
import { useInert } from "./use-inert.ts";
import type { Walking } from "./use-walk.ts";
import { setWalk } from "./walk-place.ts";

/** One pot: what to do, how much, then, why; one key writes it and brings the next. */
export function AtThePot({ walking }: { readonly walking: Walking }) {
  const { pot: words } = useWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const { place, bench, spot, tasks } = walking;
  const task = tasks[0];
  const [amounts, setAmounts] = useState<Readonly<Record<string, number>>>({});
  const amount = task && amounts[task.id];
  const inert = useInert(`${place.at_n} ${task?.id ?? ""}`);
  const [isLocked, setLocked] = useState(false);
  const other = useSlip();
  const notHere = useSlip();
  const skip = useSlip();
  const { value: page } = useAsk("plant", { plant: (spot?.plant ?? "") as PlantId });
  const before = walking.numberAt(place.at_n - 1);
  const after = walking.numberAt(place.at_n + 1);

  const saidOf = (one: Task) =>
    amounts[one.id] === undefined ? one.said : amountSaid(one.amount?.unit, amounts[one.id] as number, say);

  const done = () => {
    if (!task || inert) return;
    const at_n = place.at_n;
    const isLastHere = tasks.length === 1;
    walking.noteDone(task);
    setWalk({ ...place, done_n: place.done_n + 1, at_n: at_n + (isLastHere ? 1 : 0), touchedAt_ms: nowMs() });
    const next = isLastHere ? walking.markAt(at_n + 1) : spot;
    const coming = isLastHere ? next?.tasks[0] : tasks[1];
    void write(engine, [actOf(task, amount)], {
      ...(next?.number && coming ? { after: words.nextIs(next.number, lineOf(coming)) } : {}),
      onUndo: (undone) => {
        if (undone) {
          walking.noteUndone(task);
          walking.goTo(at_n);
        } else walking.noteDone(task);
      },
    });
  };

  useKeys({ arrowright: () => walking.step(1), arrowleft: () => walking.step(-1) });
  // biome-ignore lint/correctness/useExhaustiveDependencies: slips belong to the pot at which they were opened
  useEffect(() => {
    other.close();
    notHere.close();
    skip.close();
  }, [place.at_n]);

  const Drawing = fromCrafts("atThePot");
  if (isLocked) return <Lock where={bench.name} onOpen={() => setLocked(false)} />;

  const keys = (
    <>
      {task && (
        <KeyRow>
          {!isWeighing(task) && <Key onPress={other.open}>{words.other}</Key>}
          <Key onPress={notHere.open}>{words.notHere}</Key>
          <Key onPress={skip.open}>{words.skip}</Key>
        </KeyRow>
      )}
      {task && isWeighing(task) ? (
        <Key
          main
          shut={inert}
          onPress={() => go(`/weigh/${encodeURIComponent(bench.bench)}?pot=${task.plant}&back=walk`)}
        >
          {lineOf(task)}
        </Key>
      ) : task ? (
        <Key main shut={inert} onPress={done}>
          {task.amount ? words.done(saidOf(task)) : words.doneNoAmount}
        </Key>
      ) : (
        <Key main onPress={() => walking.step(1)}>
          {after ? words.goNext(after) : words.finish}
        </Key>
      )}
      <KeyRow inOrder>
        <Key
          onPress={() => walking.step(-1)}
          shut={!before}
          label={before ? words.previousSaid(before) : words.previousSaid("")}
        >
          {words.previous(before ?? "")}
        </Key>
        <Key onPress={() => go("/")}>{words.pause}</Key>
        <Key onPress={() => setLocked(true)}>{words.lock}</Key>
        <Key onPress={() => walking.step(1)} label={words.nextSaid(after ?? "")}>
          {words.next(after ?? "")}
        </Key>
      </KeyRow>
    </>
  );

  return (
    <Frame
      where={bench.name}
      beside={
        <>
          {words.place(place.at_n + 1, place.stops.length)}
          <SunOffer outdoors={bench.outdoors} />
        </>
      }
      page={`${place.at_n}`}
      strip={false}
      keys={keys}
    >
      <div key={place.at_n} className={styles["pot"]}>
        <div className={styles["shelf"]}>
          <SpotStrip
            marks={stripMarks(bench, spot?.plant)}
            said={words.shelf(bench.name, (spot ? bench.spots.indexOf(spot) : -1) + 1, bench.spots.length)}
          />
          <button
            type="button"
            className={styles["whole"]}
            onClick={() => go(`/whole/${encodeURIComponent(bench.bench)}`)}
          >
            {words.wholeBench} &gt;
          </button>
        </div>
        <div className={styles["who"]}>
          <p className={styles["number"]}>
            <span className={styles["digits"]}>{spot?.number}</span>
            <span className={styles["kind"]}>{spot?.kind}</span>
          </p>
          {page && page.plant === spot?.plant && Drawing && <Drawing page={page} />}
        </div>
        {task ? (
          <TaskRead task={task} said={saidOf(task)} more={tasks.slice(1)} held={spot?.held ?? []} />
        ) : (
          <p className="serif">{words.nothingHere}</p>
        )}
      </div>
      {task && (
        <>
          <OtherSlip
            slip={other}
            task={task}
            number={spot?.number ?? ""}
            amount={amount ?? task.amount?.value}
            most_mL={page ? fromCrafts("most_mL")?.(page) : undefined}
            onAmount={(value) => setAmounts({ ...amounts, [task.id]: value })}
            onLeave={() => walking.step(1)}
          />
          <NotHereSlip
            slip={notHere}
            task={task}
            number={spot?.number ?? ""}
            onLeave={() => walking.step(1)}
          />
          <SkipSlip slip={skip} task={task} onLeave={() => walking.step(1)} />
        </>
      )}
    </Frame>
  );
}

const amountSaid = (unit: string | undefined, value: number, say: ReturnType<typeof useSay>) =>
  unit === "mL" ? say.volume(value) : unit === "g" ? say.mass(value) : say.number(value);

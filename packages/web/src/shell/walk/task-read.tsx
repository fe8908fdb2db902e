import type { Held, Task } from "@sillwood/bench/round";
import { Amount } from "../../parts/amount.tsx";
import { Care } from "../../parts/ledger.tsx";
import { Sourced } from "../../parts/origin.tsx";
import { Slip } from "../../parts/slip.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { useWords } from "../../words/words.ts";
import { HeldList } from "../round/held-row.tsx";
import { lineOf } from "./acts.ts";
import styles from "./task-read.module.css";

interface TaskReadProps {
  readonly task: Task;
  readonly said: string;
  readonly more: readonly Task[];
  readonly held: readonly Held[];
}

/** A task as it is read at the pot: verb and amount first, then what follows, then why. */
export function TaskRead({ task, said, more, held }: TaskReadProps) {
  const { pot: words, print } = useWords();
  const working = useSlip();
  const heldSlip = useSlip();
  return (
    <div className={styles["task"]}>
      {task.care && <Care word={print.care}>{task.care}</Care>}
      <p className={styles["act"]}>
        <span className={styles["verb"]}>{task.title}</span>{" "}
        <Sourced origin={task.working.origin} onOpen={working.open} size={task.amount ? "task" : "amount"}>
          <Amount said={said} />
        </Sourced>
      </p>
      <dl className={styles["more"]}>
        {task.then && (
          <div>
            <dt>{words.thenDo}</dt>
            <dd>{task.then}</dd>
          </div>
        )}
        <div>
          <dt>{words.why}</dt>
          <dd>
            <button type="button" className={styles["opens"]} onClick={working.open}>
              {task.why} &gt;
            </button>
          </dd>
        </div>
        {held.length > 0 && (
          <div>
            <dt>{words.held}</dt>
            <dd>
              <button type="button" className={styles["opens"]} onClick={heldSlip.open}>
                {held
                  .map(({ task: kept, limit }) => `${kept.title.toLocaleLowerCase()}: ${limit.why}`)
                  .join("; ")}{" "}
                &gt;
              </button>
            </dd>
          </div>
        )}
        {more.map((next) => (
          <div key={next.id}>
            <dt>{words.thenDo}</dt>
            <dd>{lineOf(next)}</dd>
          </div>
        ))}
      </dl>
      <WorkingSlip slip={working} working={task.working} />
      <Slip slip={heldSlip} title={words.held}>
        <HeldList held={held} />
      </Slip>
    </div>
  );
}

import { createContext, useCallback, useContext, useMemo, useSyncExternalStore } from "react";
import { onSettings, settings } from "../device/settings.ts";
import { stretchTexts } from "../words/stretch.ts";
import { asking, type Engine } from "./client.ts";
import type { AnswerOf, ArgsOf, QuestionName } from "./questions.ts";

/** The last answer stays readable while a newer one is on its way. */
export interface Answered<Answer> {
  readonly value?: Answer;
  readonly error?: Error;
  readonly asOf_ms?: number;
}

interface Cell {
  state: Answered<unknown>;
  /** Book revision and settings with which it was asked last. */
  askedWith: string;
  users_n: number;
  ask(): void;
  readonly listeners: Set<() => void>;
}

/** One cache per engine: a question asked on two places of a page is reckoned once. */
export interface Answers {
  readonly engine: Engine;
  cell(name: QuestionName, args: object): Cell;
}

const UNUSED_MAX_n = 40;

export function answersOf(engine: Engine): Answers {
  const cells = new Map<string, Cell>();
  const stamp = () => {
    const { language, units, zone, now_ms } = asking();
    // A quarter of an hour moves no advice; a finer stamp would reckon the round again on every glance.
    const { stretched } = settings();
    return `${engine.revision()} ${language} ${units} ${zone} ${stretched} ${Math.floor(now_ms / 900_000)}`;
  };
  const refresh = () => {
    for (const cell of cells.values()) if (cell.users_n > 0 && cell.askedWith !== stamp()) cell.ask();
  };
  engine.listen(refresh);
  onSettings(refresh);
  setInterval(refresh, 60_000);
  document.addEventListener("visibilitychange", refresh);
  return {
    engine,
    cell(name, args) {
      const key = `${name} ${JSON.stringify(args)}`;
      let cell = cells.get(key);
      if (!cell) {
        cell = newCell(engine, name, args, stamp);
        cells.set(key, cell);
        forgetUnused(cells);
      }
      return cell;
    },
  };
}

function newCell(engine: Engine, name: QuestionName, args: object, stamp: () => string): Cell {
  const set = (state: Answered<unknown>) => {
    cell.state = state;
    for (const listener of cell.listeners) listener();
  };
  const cell: Cell = {
    state: {},
    askedWith: "",
    users_n: 0,
    listeners: new Set(),
    ask() {
      const with_ = stamp();
      if (cell.askedWith === with_) return;
      cell.askedWith = with_;
      engine.opened
        .then(() => engine.ask(name, args as never))
        .then(
          // An older answer that comes late must not overwrite a newer one.
          (value) =>
            cell.askedWith === with_ &&
            set({ value: settings().stretched ? stretchTexts(value) : value, asOf_ms: asking().now_ms }),
          (error: Error) => cell.askedWith === with_ && set({ ...cell.state, error }),
        );
    },
  };
  return cell;
}

function forgetUnused(cells: Map<string, Cell>) {
  let spare_n = cells.size - UNUSED_MAX_n;
  for (const [key, cell] of cells) {
    if (spare_n <= 0) return;
    if (cell.users_n > 0) continue;
    cells.delete(key);
    spare_n--;
  }
}

export const AnswersContext = createContext<Answers | undefined>(undefined);

export function useEngine(): Engine {
  const answers = useContext(AnswersContext);
  if (!answers) throw new Error("no engine above this screen");
  return answers.engine;
}

/** The engine's answer, kept fresh: asked again when the book, the settings or the quarter of an hour change. */
export function useAsk<Name extends QuestionName>(name: Name, args: ArgsOf<Name>): Answered<AnswerOf<Name>> {
  const answers = useContext(AnswersContext);
  if (!answers) throw new Error("no engine above this screen");
  const key = JSON.stringify(args);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the arguments are compared by what they say
  const cell = useMemo(() => answers.cell(name, args), [answers, name, key]);
  const subscribe = useCallback(
    (listener: () => void) => {
      cell.users_n += 1;
      cell.listeners.add(listener);
      cell.ask();
      return () => {
        cell.users_n -= 1;
        cell.listeners.delete(listener);
      };
    },
    [cell],
  );
  return useSyncExternalStore(subscribe, () => cell.state) as Answered<AnswerOf<Name>>;
}

/** The revision of the folded book; changes with every entry. */
export function useRevision(): number {
  const engine = useEngine();
  return useSyncExternalStore(engine.listen, engine.revision);
}

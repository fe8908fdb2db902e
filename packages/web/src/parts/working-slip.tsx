import type { Working } from "@sillwood/bench/working";
import { useEffect, useState } from "react";
import { useWords } from "../words/words.ts";
import { Key, KeyRow } from "./key.tsx";
import { OriginMark, Sourced } from "./origin.tsx";
import { Slip } from "./slip.tsx";
import type { SlipState } from "./use-slip.ts";
import styles from "./working-slip.module.css";

interface WorkingSlipProps {
  readonly slip: SlipState;
  readonly working: Working | undefined;
  /** Leads to the assumption's own line in the settings; left out where nobody may change it. */
  readonly onChange?: ((assumption: string) => void) | undefined;
}

/** A slip's depth from which it takes the whole page. */
const DEEP_n = 3;

/** How a number came about; each input opens its own. */
export function WorkingSlip({ slip, working, onChange }: WorkingSlipProps) {
  const words = useWords();
  const [opened, setOpened] = useState<readonly Working[]>([]);
  useEffect(() => {
    if (!slip.isOpen) setOpened([]);
  }, [slip.isOpen]);
  const shown = opened.at(-1) ?? working;
  if (!shown) return null;
  return (
    <Slip slip={slip} title={shown.title} full={opened.length >= DEEP_n}>
      <p className={styles["result"]}>
        <Sourced origin={shown.origin} size="amount">
          {shown.result}
        </Sourced>
      </p>
      <Sum working={shown} />
      <Inputs working={shown} onOpen={(inner) => setOpened([...opened, inner])} onChange={onChange} />
      {shown.movesMost && (
        <Part title={words.working.movesMost}>
          <p>{shown.movesMost}</p>
        </Part>
      )}
      {shown.notes.length > 0 && (
        <Part title={words.working.notes}>
          {shown.notes.map((note) => (
            <p key={note}>{note}</p>
          ))}
        </Part>
      )}
      <Part title={words.working.source}>
        <p className="serif">{shown.source}</p>
      </Part>
      {opened.length > 0 && (
        <KeyRow>
          <Key onPress={() => setOpened(opened.slice(0, -1))}>{words.working.back}</Key>
        </KeyRow>
      )}
    </Slip>
  );
}

function Sum({ working }: { readonly working: Working }) {
  const words = useWords();
  return (
    <Part title={words.working.sum}>
      <p className={styles["formula"]}>{working.formula}</p>
      {working.sum !== working.formula && <p className={styles["formula"]}>{working.sum}</p>}
    </Part>
  );
}

function Inputs({
  working,
  onOpen,
  onChange,
}: {
  readonly working: Working;
  readonly onOpen: (inner: Working) => void;
  readonly onChange: ((assumption: string) => void) | undefined;
}) {
  const words = useWords();
  if (working.inputs.length === 0) return null;
  return (
    <Part title={words.working.inputs}>
      <ul className={styles["inputs"]}>
        {working.inputs.map((input) => {
          const { working: inner, assumption } = input;
          return (
            <li key={`${input.name} ${input.from}`} className={styles["input"]}>
              <span className={styles["name"]}>{input.name}</span>
              <span className={styles["said"]}>
                <Sourced origin={input.origin} {...(inner ? { onOpen: () => onOpen(inner) } : {})}>
                  {input.said}
                </Sourced>{" "}
                <OriginMark origin={input.origin} />
              </span>
              <span className={styles["from"]}>{input.from}</span>
              {assumption !== undefined && onChange && (
                <button type="button" className={styles["change"]} onClick={() => onChange(assumption)}>
                  {words.working.change} &gt;
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </Part>
  );
}

function Part({ title, children }: { readonly title: string; readonly children: React.ReactNode }) {
  return (
    <section>
      <h3 className={styles["part"]}>{title}</h3>
      {children}
    </section>
  );
}

import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { TextField } from "../../pages/fields/text-field.tsx";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useSay } from "../../shell/say.ts";
import styles from "./feed.module.css";
import {
  apartOf,
  doubled,
  emptyLabel,
  isWhole,
  type LabelTyped,
  labelDrafts,
  numberOf,
  others,
  oxideOf,
  unsaid,
} from "./label-typed.ts";
import { useFeedWords } from "./use-feed.ts";

/** A form that reads like a label and asks what a label leaves open. */
export function LabelScreen() {
  const words = useFeedWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const [typed, setTyped] = useState<LabelTyped>(emptyLabel);
  const set = (more: Partial<LabelTyped>) => setTyped((was) => ({ ...was, ...more }));
  const field = (key: string, label: string, unit: string, most = 150) => {
    const value = numberOf(typed, key);
    const isOut = unit === "%" && value !== undefined && (value < 0 || value > most);
    return (
      <TextField
        key={key}
        label={label}
        value={typed.numbers[key] ?? ""}
        onType={(text) => setTyped((was) => ({ ...was, numbers: { ...was.numbers, [key]: text } }))}
        unit={unit}
        decimal
        short
        {...(isOut ? { problem: <p>{words.outside(say.number(value, 1), say.number(most))}</p> } : {})}
      />
    );
  };
  const open = unsaid(typed);
  const asked = open === undefined ? undefined : numberOf(typed, open);
  const isReady = isWhole(typed) && open === undefined;
  const unit = typed.form === "liquid" ? "mL" : "g";
  const keep = async () => {
    const [id] = await engine.ask("ids", { n: 1 });
    if (id === undefined) return;
    const written = await write(engine, labelDrafts(typed, id));
    if ("kept" in written) go("/craft/feeding");
  };
  const split = ["nitrate", "ammonium", "urea"] as const;
  const isSplit = split.some((key) => numberOf(typed, key) !== undefined);
  return (
    <Frame
      where={words.labelTitle}
      keys={
        <>
          {open !== undefined && asked !== undefined && (
            <div role="alert" className={styles["ask"]}>
              <p>{words.ask(open, say.number(asked, 1), apartOf[open], oxideOf[open])}</p>
              <KeyRow>
                <Key onPress={() => set({ as: { ...typed.as, [open]: "oxide" } })}>{oxideOf[open]}</Key>
                <Key onPress={() => set({ as: { ...typed.as, [open]: "element" } })}>{open}</Key>
              </KeyRow>
            </div>
          )}
          <Key main shut={!isReady} onPress={() => void keep()}>
            {isReady ? words.keep : open === undefined ? words.keepShut : words.keepAsk}
          </Key>
        </>
      }
    >
      <div className={pages["form"]}>
        <p className="serif">{words.labelHow}</p>
        <TextField label={words.name} value={typed.name} onType={(name) => set({ name })} />
        <Choices
          legend={words.form}
          options={(["liquid", "solid"] as const).map((value) => ({ value, said: words.forms[value] }))}
          value={typed.form}
          onChoose={(form) => set({ form, tool: form === "liquid" ? "syringe" : "scale" })}
        />
        {typed.form === "liquid" && (
          <>
            <Choices
              legend={words.basis}
              options={(["by mass", "by volume"] as const).map((value) => ({
                value,
                said: words.bases[value],
              }))}
              value={typed.basis}
              onChoose={(basis) => set({ basis })}
            />
            {typed.basis === "by mass" && field("density", words.density, "g/mL")}
            {typed.basis === "by mass" && <p className={pages["note"]}>{words.densityHow}</p>}
          </>
        )}
        {field("N", words.nitrogen, "%")}
        <p className={pages["note"]}>{words.split}</p>
        <div className={pages["pair"]}>{split.map((key) => field(key, words[key], "%"))}</div>
        {!isSplit && (numberOf(typed, "N") ?? 0) > 0 && <p className={pages["note"]}>{words.splitMissing}</p>}
        {doubled.map((of) => (
          <div key={of}>
            {field(of, words.contents[of], "%")}
            {(numberOf(typed, of) ?? 0) > 0 && typed.as[of] !== undefined && (
              <Choices
                legend={words.printed(words.contents[of])}
                options={[
                  { value: "oxide", said: oxideOf[of] },
                  { value: "element", said: of },
                ]}
                value={typed.as[of]}
                onChoose={(as) => set({ as: { ...typed.as, [of]: as } })}
              />
            )}
          </div>
        ))}
        {others.map((of) => field(of, words.contents[of], "%"))}
        <Choices
          legend={words.tool}
          options={(typed.form === "liquid"
            ? (["syringe", "spoon"] as const)
            : (["scale", "spoon"] as const)
          ).map((value) => ({ value, said: words.tools[value] }))}
          value={typed.tool}
          onChoose={(tool) => set({ tool })}
        />
        {field("step", words.step, unit)}
        {field("most", words.most, `${unit}/L`)}
        {field("amount", words.amount, unit)}
      </div>
    </Frame>
  );
}

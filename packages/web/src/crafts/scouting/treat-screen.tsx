import type { Json } from "@sillwood/bench/book";
import type { ClockedPest, PlantScout, ScoutPage, Tool } from "@sillwood/bench/crafts/scouting";
import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { nowMs } from "../../engine/clock.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { Sourced } from "../../parts/origin.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { useSay } from "../../shell/say.ts";
import styles from "./scout.module.css";
import { isNumber, numberOf, type Typed, treatedData } from "./treat-typed.ts";
import { useScout, useScoutWords } from "./use-scout.ts";

const START: Typed = {
  product: "",
  reentry: "",
  preharvest: "",
  strength: "",
  volume: "500",
  every: "5",
  times: "3",
};

/** The spray: gates first, then whether it can win, then the label, then what it forbids and until when. */
export function TreatScreen() {
  const { plant: id = "" } = useParams<{ plant: string }>();
  const words = useScoutWords();
  const [tool, setTool] = useState<Tool>("soap");
  const [pest, setPest] = useState<ClockedPest>("aphid");
  const [typed, setTyped] = useState(START);
  const every_d = numberOf(typed.every);
  const treatments_n = numberOf(typed.times);
  const fits =
    every_d !== undefined &&
    every_d >= 1 &&
    every_d <= 60 &&
    treatments_n !== undefined &&
    treatments_n >= 1 &&
    treatments_n <= 20;
  const { page, refused, error } = useScout({
    plant: id,
    ...(fits ? { course: { tool, pest, every_d, treatments_n: Math.round(treatments_n) } } : {}),
  });
  if (!page?.plant)
    return (
      <Frame where={words.title}>
        {refused === undefined ? <ReadingNote error={error} /> : <p role="alert">{words.refused(refused)}</p>}
      </Frame>
    );
  return (
    <Treating
      page={page}
      at={page.plant}
      chosen={{ tool, pest }}
      typed={typed}
      onTool={setTool}
      onPest={setPest}
      onType={(name, value) => setTyped((was) => ({ ...was, [name]: value }))}
    />
  );
}

interface TreatingProps {
  readonly page: ScoutPage;
  readonly at: PlantScout;
  readonly chosen: { readonly tool: Tool; readonly pest: ClockedPest };
  readonly typed: Typed;
  readonly onTool: (tool: Tool) => void;
  readonly onPest: (pest: ClockedPest) => void;
  readonly onType: (name: keyof Typed, value: string) => void;
}

function Treating({ page, at, chosen, typed, onTool, onPest, onType }: TreatingProps) {
  const words = useScoutWords();
  const engine = useEngine();
  const say = useSay();
  const [, go] = useLocation();
  const [refused, setRefused] = useState<string>();
  const slip = useSlip();
  const isWash = chosen.tool === "wash";
  const isShut = at.sprayGates.some(({ state }) => state === "shut");
  const field = (name: keyof Typed, label: string, mode: "decimal" | "text" = "decimal") => (
    <label className={styles["field"]}>
      <span>{label}</span>
      <input
        inputMode={mode}
        value={typed[name]}
        aria-invalid={mode === "decimal" && typed[name] !== "" && !isNumber(typed[name])}
        onChange={(event) => onType(name, event.target.value)}
      />
    </label>
  );
  const reentry_h = numberOf(typed.reentry);
  const preharvest_d = numberOf(typed.preharvest);
  const strength = numberOf(typed.strength);
  const volume_mL = numberOf(typed.volume);
  const until = (ms: number) => `${say.day(nowMs() + ms, nowMs())} ${say.time(nowMs() + ms)}`;
  const keep = async () => {
    if (!isWash && reentry_h === undefined) return setRefused(words.noReentry);
    if (!isWash && preharvest_d === undefined) return setRefused(words.noPreharvest);
    setRefused(undefined);
    const written = await write(engine, [
      { kind: "scouting.treated", on: [at.plant], data: treatedData(chosen, typed) as unknown as Json },
    ]);
    if ("refused" in written) return setRefused(written.refused.map(({ message }) => message).join(". "));
    if ("kept" in written) go(`/craft/scout/${encodeURIComponent(at.plant)}`);
  };
  return (
    <Frame
      where={words.spray(at.number)}
      beside={at.place}
      page={at.plant}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/craft/scout/${encodeURIComponent(at.plant)}`)}>{words.back}</Key>
          </KeyRow>
          <Key main shut={isShut} onPress={() => void keep()}>
            {isShut ? words.notNow : words.treated}
          </Key>
        </>
      }
    >
      {page.cautions.slice(0, 2).map((said) => (
        <Care key={said} word={words.care}>
          {said}
        </Care>
      ))}
      <section className={styles["part"]}>
        <h2>{words.gates}</h2>
        {at.sprayGates.map(({ key, state, said }) => (
          <p key={key} data-gate={state}>
            <strong>{words.gateWords[state]}</strong> {said}
          </p>
        ))}
      </section>
      <Choices
        legend={words.against}
        options={page.pests
          .filter(({ hasClock }) => hasClock)
          .map(({ key, said }) => ({ value: key as ClockedPest, said }))}
        value={chosen.pest}
        onChoose={onPest}
      />
      <Choices
        legend={words.tool}
        options={page.tools.map(({ key, said }) => ({ value: key, said }))}
        value={chosen.tool}
        onChoose={onTool}
      />
      <section className={styles["part"]}>
        {field("every", words.every)}
        {field("times", words.times)}
        {at.course?.said.map((said, i) => (
          <p key={said}>
            {i === 0 ? (
              <Sourced origin="assumed" onOpen={slip.open}>
                {said}
              </Sourced>
            ) : (
              said
            )}
          </p>
        ))}
      </section>
      {!isWash && (
        <section className={styles["part"]}>
          <h2>{words.writeIt}</h2>
          {field("product", words.product, "text")}
          {field("reentry", words.reentry)}
          {field("preharvest", words.preharvest)}
          {field("strength", words.strength)}
          {field("volume", words.volume)}
          {strength !== undefined && volume_mL !== undefined && strength > 0 && strength <= 100 && (
            <p>
              <strong>{words.pours(say.volume((volume_mL * strength) / 100), say.volume(volume_mL))}</strong>
            </p>
          )}
          {reentry_h !== undefined && <p>{words.touchUntil(until(reentry_h * 3_600_000))}</p>}
          {preharvest_d !== undefined && <p>{words.pickUntil(until(preharvest_d * 86_400_000))}</p>}
        </section>
      )}
      {refused && <p role="alert">{refused}</p>}
      <WorkingSlip slip={slip} working={at.course?.working} />
    </Frame>
  );
}

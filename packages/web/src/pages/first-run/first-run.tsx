import { useState } from "react";
import { useLocation } from "wouter";
import { changeSettings } from "../../device/settings.ts";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { Choices } from "../fields/choices.tsx";
import { Answer } from "./answer.tsx";
import { Compass } from "./compass.tsx";
import { fourFacts, isAnything, isPipe, NOTHING_SAID, type Said } from "./facts.ts";
import styles from "./first-run.module.css";
import { FruitDrawing } from "./fruit-drawing.tsx";
import { keepFirst } from "./keep-first.ts";
import { PotDrawing } from "./pot-drawing.tsx";

const HABITS = ["thin", "fat", "lantern", "tiny"] as const;
const MEDIA = ["spongy", "bark", "gritty"] as const;

/** Screen 14: four facts, and the answer stands from the first one on. */
export function FirstRun() {
  const { firstRun: words } = useWords();
  const engine = useEngine();
  const { units } = useSettings();
  const say = useSay();
  const [, go] = useLocation();
  const [said, setSaid] = useState<Said>(NOTHING_SAID);
  const [busy, setBusy] = useState(false);
  const { value: house } = useAsk("house", {});
  const { value: seen } = useAsk("plants", {});
  const change = (more: Partial<Said>) => setSaid({ ...said, ...more });
  const canKeep = isAnything(said) && !busy && house !== undefined && seen !== undefined;

  const keep = async (another: boolean) => {
    if (!house || !seen) return;
    setBusy(true);
    const number = house.highest + 1;
    const { drafts, plant } = await keepFirst(engine, {
      facts: fourFacts(said),
      number,
      benches: seen.benches,
      words,
    });
    const written = await write(engine, drafts, { said: words.kept(`${number}`) });
    setBusy(false);
    if (!("kept" in written)) return;
    if (another) setSaid({ ...NOTHING_SAID, ...(said.place === undefined ? {} : { place: said.place }) });
    else go(`/plant/${plant}`);
  };

  const keys = (
    <>
      <Answer said={said} onLift={(lifted) => change({ lifted })} />
      <KeyRow>
        <Key shut={!canKeep} onPress={() => void keep(true)}>
          {words.another}
        </Key>
        <Key onPress={() => changeSettings({ units: units === "us" ? "metric" : "us" })}>
          {words.units(units === "us" ? words.us : words.metric)}
        </Key>
      </KeyRow>
      <Key main shut={!canKeep} onPress={() => void keep(false)}>
        {isAnything(said) ? words.keep : words.keepShut}
      </Key>
    </>
  );

  return (
    <Frame where={words.title} keys={keys}>
      <div className={styles["page"]}>
        <Choices
          legend={words.what}
          options={[
            ...HABITS.map((value) => ({ value, said: words[value], drawn: <FruitDrawing of={value} /> })),
            { value: "unknown" as const, said: words.notSure },
          ]}
          value={said.habit}
          onChoose={(habit) => change({ habit })}
        />
        <section aria-label={words.pot} className={styles["page"]}>
          <h2 className={styles["title"]}>{words.pot}</h2>
          <PotDrawing
            top_cm={said.top_cm}
            depth_cm={said.depth_cm}
            onChange={(size) => change({ ...size, potSaid: true, potUnknown: false })}
          />
          {isPipe(said) && (
            <div role="alert">
              <p>{words.pipe(say.length(said.top_cm), say.length(said.depth_cm))}</p>
              <KeyRow>
                <Key onPress={() => change({ depth_cm: said.depth_cm / 10 })}>
                  {words.meantDeep(say.length(said.depth_cm / 10))}
                </Key>
              </KeyRow>
            </div>
          )}
          <KeyRow>
            <Key
              pressed={said.potUnknown}
              label={words.potNotSure}
              onPress={() => change({ potUnknown: !said.potUnknown, potSaid: false })}
            >
              {words.notSure}
            </Key>
          </KeyRow>
        </section>
        <Choices
          legend={words.filledWith}
          options={[
            ...MEDIA.map((value) => ({ value, said: words[value] })),
            { value: "unknown" as const, said: words.notSure },
          ]}
          value={said.medium}
          onChoose={(medium) => change({ medium })}
        />
        <Compass legend={words.spot} value={said.place} onChoose={(place) => change({ place })} />
      </div>
    </Frame>
  );
}

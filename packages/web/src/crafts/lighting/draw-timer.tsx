import type { BenchLight, LightPage } from "@sillwood/bench/crafts/lighting";
import type { Draft } from "@sillwood/bench/round";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import { TextField } from "../../pages/fields/text-field.tsx";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { Cares } from "./cares.tsx";
import { clockOf, hourOf, timerData } from "./timer-typed.ts";
import { useLightWords } from "./use-light.ts";

interface DrawTimerProps {
  readonly page: LightPage;
  readonly bench: BenchLight;
}

/** The timer as it is set: on and off on the clock, or off altogether. */
export function DrawTimer({ page, bench }: DrawTimerProps) {
  const words = useLightWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { timer, advice } = bench;
  const start = timer ?? { from_h: 6, hours_h: 14 };
  const [burns, setBurns] = useState<"on" | "off">(start.hours_h > 0 ? "on" : "off");
  const [on, setOn] = useState(clockOf(start.from_h));
  const [off, setOff] = useState(clockOf(start.from_h + start.hours_h));
  const data = burns === "off" ? { from_h: start.from_h, hours_h: 0 } : timerData(hourOf(on), hourOf(off));
  const keep = async (draft: Draft) => {
    const written = await write(engine, [draft]);
    if ("kept" in written) go(`/craft/light/${encodeURIComponent(bench.bench)}`);
  };
  const said = burns === "off" ? words.offSaid : words.timerSaid(on, off);
  return (
    <Frame
      where={words.timerTitle(bench.name)}
      keys={
        <>
          {advice?.change && (
            <KeyRow>
              <Key onPress={() => void keep(advice.draft)}>
                {advice.on && advice.off
                  ? words.setLampTo(words.timerSaid(advice.on, advice.off))
                  : words.keepOff}
              </Key>
            </KeyRow>
          )}
          <Key
            main
            shut={!data}
            onPress={() => data && void keep({ kind: "bench.timer", on: [bench.bench], data })}
          >
            {data ? words.keepTimer(said) : words.keepShut}
          </Key>
        </>
      }
    >
      <div className={pages["form"]}>
        <Cares cautions={page.cautions} of={["water", "heat"]} />
        {advice && <p>{advice.said}</p>}
        {advice?.waitSaid && <p className="serif">{advice.waitSaid}</p>}
        <Choices
          legend={words.timer}
          options={[
            { value: "on", said: words.burns },
            { value: "off", said: words.staysOff },
          ]}
          value={burns}
          onChoose={setBurns}
        />
        {burns === "on" && (
          <div className={pages["pair"]}>
            <TextField label={words.on} type="time" value={on} onType={setOn} />
            <TextField label={words.off} type="time" value={off} onType={setOff} />
          </div>
        )}
      </div>
    </Frame>
  );
}

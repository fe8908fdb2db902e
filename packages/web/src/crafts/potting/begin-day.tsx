import type { PlantId } from "@sillwood/bench/book";
import type { DayPage } from "@sillwood/bench/crafts/potting";
import { useState } from "react";
import { useLocation } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { TextField } from "../../pages/fields/text-field.tsx";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useSay, useSettings } from "../../shell/say.ts";
import { Held } from "./held.tsx";
import styles from "./potting.module.css";
import { usePottingWords } from "./use-potting.ts";

/** What was typed, in °C; undefined where it is no warmth that a shed has. */
const warmth_C = (text: string, isUs: boolean): number | undefined => {
  const typed = Number(text.replace(",", "."));
  const value = isUs ? Math.round((typed - 32) * 5.5556) / 10 : typed;
  return text.trim() !== "" && Number.isFinite(value) && value >= 0 && value <= 50 ? value : undefined;
};

/** Nobody is on the rail: who is due, and the warmth of water, medium and room before hands get wet. */
export function BeginDay({ page }: { readonly page: DayPage }) {
  const words = usePottingWords();
  const say = useSay();
  const engine = useEngine();
  const [, go] = useLocation();
  const [chosen, setChosen] = useState<readonly PlantId[]>([]);
  const [water, setWater] = useState("");
  const [medium, setMedium] = useState("");
  const [room, setRoom] = useState("");
  const isUs = useSettings().units === "us";
  const unit = isUs ? "°F" : "°C";
  const [water_C, medium_C, room_C] = [warmth_C(water, isUs), warmth_C(medium, isUs), warmth_C(room, isUs)];
  const isReady =
    chosen.length > 0 && water_C !== undefined && medium_C !== undefined && room_C !== undefined;
  const toggle = (plant: PlantId) =>
    setChosen((was) => (was.includes(plant) ? was.filter((each) => each !== plant) : [...was, plant]));
  const begin = () =>
    isReady &&
    write(engine, [{ kind: "potting.prepared", on: [...chosen], data: { water_C, medium_C, room_C } }]);
  return (
    <Frame
      where={words.dayTitle}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go("/craft/potting/mix")}>{words.mixDesk}</Key>
          </KeyRow>
          <Key main shut={!isReady} onPress={() => void begin()}>
            {isReady ? words.beginKey(say.number(chosen.length)) : words.chooseOne}
          </Key>
        </>
      }
    >
      <p className="serif">{page.said}</p>
      {page.held.length > 0 && <Held page={page} />}
      <div className={pages["form"]}>
        <fieldset className={styles["bags"]}>
          <legend>{words.begin}</legend>
          {page.due.map(({ plant, number, said }) => (
            <Key key={plant} pressed={chosen.includes(plant)} onPress={() => toggle(plant)}>
              {number}, {said}
            </Key>
          ))}
        </fieldset>
        <div className={pages["pair"]}>
          <TextField label={words.water} value={water} onType={setWater} unit={unit} decimal />
          <TextField label={words.medium} value={medium} onType={setMedium} unit={unit} decimal />
          <TextField label={words.room} value={room} onType={setRoom} unit={unit} decimal />
        </div>
      </div>
    </Frame>
  );
}

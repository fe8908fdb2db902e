import { useState } from "react";
import { useLocation } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useWords } from "../../words/words.ts";
import { Choices } from "../fields/choices.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { TextField } from "../fields/text-field.tsx";
import styles from "../pages.module.css";

const PLACES = ["sill", "shelf", "table", "bed"] as const;
const POINTS = [0, 45, 90, 135, 180, 225, 270, 315] as const;
const SPOTS = { unit: "", min: 1, max: 200, whole: true } as const;

/** A bench in few words: what it is, its name, how many spots, which way its window faces. Spots are numbered from the left. */
export function NewBench() {
  const { benches: words, firstRun, fields } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { value: seen } = useAsk("benches", {});
  const [place, setPlace] = useState<(typeof PLACES)[number]>("sill");
  const [name, setName] = useState("");
  const [spots_n, setSpots] = useState<number | undefined | null>(6);
  const [faces, setFaces] = useState<string>("unknown");
  const [where, setWhere] = useState<"indoors" | "outdoors" | "quarantine">("indoors");
  const isWhole = name.trim() !== "" && typeof spots_n === "number" && seen !== undefined;
  const keep = async () => {
    if (typeof spots_n !== "number" || !seen) return;
    const [bench = "", ...spots] = await engine.ask("ids", { n: spots_n + 1 });
    const data = {
      name: name.trim(),
      place,
      outdoors: where === "outdoors",
      order_n: seen.benches.reduce((most, { order_n }) => Math.max(most, order_n), 0) + 1,
      spots: spots.map((id, i) => ({ id, name: `${i + 1}` })),
      ...(where === "quarantine" ? { quarantine: true } : {}),
      ...(where !== "outdoors" && faces !== "unknown" ? { windowFaces_deg: Number(faces) } : {}),
    };
    const written = await write(engine, [{ kind: "bench.laid", on: [bench], data }]);
    if ("kept" in written) go(`/bench/${bench}`);
  };
  return (
    <Frame
      where={words.newBenchTitle}
      keys={
        <Key main shut={!isWhole} onPress={() => void keep()}>
          {isWhole ? words.keepBench : words.keepBenchShut}
        </Key>
      }
    >
      <div className={styles["form"]}>
        <Choices
          legend={words.whatIsIt}
          options={PLACES.map((value) => ({ value, said: words.places[value] ?? value }))}
          value={place}
          onChoose={setPlace}
        />
        <TextField label={fields.names["name"] ?? ""} value={name} onType={setName} />
        <NumberField
          label={words.howManySpots}
          range={SPOTS}
          value={spots_n ?? undefined}
          onValue={setSpots}
        />
        <Choices
          legend={words.where}
          options={[
            { value: "indoors", said: words.indoors },
            { value: "outdoors", said: words.outdoors },
            { value: "quarantine", said: words.quarantine },
          ]}
          value={where}
          onChoose={setWhere}
        />
        {where !== "outdoors" && (
          <Choices
            legend={words.windowFaces}
            options={[
              ...POINTS.map((degrees, i) => ({
                value: `${degrees}`,
                said: firstRun.compass[i] ?? `${degrees}`,
              })),
              { value: "unknown", said: firstRun.notSure },
            ]}
            value={faces}
            onChoose={setFaces}
          />
        )}
      </div>
    </Frame>
  );
}

import { useState } from "react";
import { useLocation } from "wouter";
import { fromCrafts } from "../../crafts/index.ts";
import type { PlantSheet } from "../../engine/questions.ts";
import { useEngine } from "../../engine/use-ask.ts";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Slip } from "../../parts/slip.tsx";
import type { SlipState } from "../../parts/use-slip.ts";
import { useWords } from "../../words/words.ts";
import { write } from "../last-line.ts";
import { SpotList } from "../walk/not-here-slip.tsx";
import { TypedAmount } from "../walk/other-slip.tsx";
import styles from "./enter-slip.module.css";

/** What was done or seen, outside the advice: watered, weighed, moved, a note. */
export function EnterSlip({ slip, page }: { readonly slip: SlipState; readonly page: PlantSheet }) {
  const { plant: words } = useWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const [asks, setAsks] = useState<"what" | "water" | "spot" | "note">("what");
  const [note, setNote] = useState("");
  const watered = fromCrafts("watered");
  const close = () => {
    setAsks("what");
    slip.close();
  };
  const on = [page.plant];
  return (
    <Slip slip={{ ...slip, close }} title={`${page.number}: ${words.whatToWrite}`}>
      {asks === "what" && (
        <KeyRow>
          {watered && (
            <Key wide onPress={() => setAsks("water")}>
              {words.water}
            </Key>
          )}
          {page.spot && (
            <Key
              wide
              onPress={() =>
                go(`/weigh/${encodeURIComponent(page.spot?.bench ?? "")}?pot=${page.plant}&back=walk`)
              }
            >
              {words.weigh}
            </Key>
          )}
          <Key wide onPress={() => setAsks("spot")}>
            {words.move}
          </Key>
          <Key wide onPress={() => setAsks("note")}>
            {words.note}
          </Key>
        </KeyRow>
      )}
      {asks === "water" && watered && (
        <TypedAmount
          number={page.number}
          most_mL={fromCrafts("most_mL")?.(page)}
          onKeep={(volume_mL) => {
            close();
            void write(engine, [watered(page.plant, volume_mL)]);
          }}
        />
      )}
      {asks === "spot" && (
        <SpotList
          plant={page.plant}
          onChoose={(to) => {
            close();
            void write(engine, [{ kind: "plant.moved", on, data: { to } }]);
          }}
        />
      )}
      {asks === "note" && (
        <>
          <label className={styles["note"]}>
            <span>{words.note}</span>
            <textarea
              rows={3}
              maxLength={2000}
              value={note}
              onChange={(event) => setNote(event.target.value)}
            />
          </label>
          <Key
            main
            shut={note.trim() === ""}
            onPress={() => {
              close();
              setNote("");
              void write(engine, [{ kind: "plant.noted", on, data: { text: note.trim() } }]);
            }}
          >
            {words.keepNote}
          </Key>
        </>
      )}
    </Slip>
  );
}

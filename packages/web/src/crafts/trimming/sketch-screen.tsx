import { useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { NumberField } from "../../pages/fields/number-field.tsx";
import { readNumber } from "../../pages/fields/read-number.ts";
import { TextField } from "../../pages/fields/text-field.tsx";
import pages from "../../pages/pages.module.css";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useTrim, useTrimWords } from "./use-trim.ts";

/** Thirty seconds with a ruler and calipers. */
export function SketchScreen() {
  const { plant = "" } = useParams<{ plant: string }>();
  const words = useTrimWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { page } = useTrim({ plant });
  const [height_mm, setHeight] = useState<number | null>();
  const [trunk_mm, setTrunk] = useState<number | null>();
  const [leaves_n, setLeaves] = useState<number | null>();
  const [branches, setBranches] = useState("");
  const branches_mm = branches
    .split(/[\s;]+/)
    .flatMap((each) => (each === "" ? [] : (readNumber(each) ?? [])));
  const isReady =
    typeof height_mm === "number" && typeof trunk_mm === "number" && typeof leaves_n === "number";
  const save = async () => {
    if (!isReady) return;
    const data = { height_mm, trunk_mm, leaves_n, ...(branches_mm.length > 0 ? { branches_mm } : {}) };
    const written = await write(engine, [{ kind: "trimming.sketched", on: [plant], data }]);
    if ("kept" in written) go(`/craft/trim/${plant}`);
  };
  return (
    <Frame
      where={words.sketchOf.title(page?.plant?.number ?? "")}
      keys={
        <Key main shut={!isReady} onPress={() => void save()}>
          {words.sketchOf.save}
        </Key>
      }
    >
      <div className={pages["form"]}>
        <NumberField
          label={words.sketchOf.height}
          range={{ unit: "mm", min: 10, max: 3000 }}
          value={undefined}
          onValue={setHeight}
        />
        <NumberField
          label={words.sketchOf.trunk}
          range={{ unit: "mm", min: 0.5, max: 300 }}
          value={undefined}
          onValue={setTrunk}
        />
        <TextField label={words.sketchOf.branches} value={branches} onType={setBranches} unit="mm" decimal />
        <NumberField
          label={words.sketchOf.leaves}
          range={{ unit: "", min: 0, max: 20_000, whole: true }}
          value={undefined}
          onValue={setLeaves}
        />
      </div>
    </Frame>
  );
}

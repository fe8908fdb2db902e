import type { PlantId } from "@sillwood/bench/book";
import type { PlantTrim, TrimAsk } from "@sillwood/bench/crafts/trimming";
import type { Origin } from "@sillwood/bench/working";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { OriginMark } from "../../parts/origin.tsx";
import { write } from "../../shell/last-line.ts";
import { useTrimWords } from "./use-trim.ts";

type Aimed = NonNullable<PlantTrim["aim"]>["aimed"];
const FORMS = ["dome", "triangle", "slanting", "broad"] as const;
const STEP_mm = 10;
const SIZES = { least_mm: 30, most_mm: 2000 } as const;

interface AimKeysProps {
  readonly plant: PlantId;
  readonly aimed: Aimed;
  readonly said: string;
  readonly origin: Origin;
  readonly isChanged: boolean;
  readonly onAim: (aim: TrimAsk["aim"]) => void;
}

/** The outline that plans aim at: a classical form, made larger or smaller by keys. */
export function AimKeys({ plant, aimed, said, origin, isChanged, onAim }: AimKeysProps) {
  const words = useTrimWords();
  const engine = useEngine();
  const sized = (key: "top_mm" | "width_mm", by_mm: number) => {
    const least = key === "top_mm" ? aimed.foot_mm + 10 : SIZES.least_mm;
    onAim({ ...aimed, [key]: Math.max(least, Math.min(SIZES.most_mm, aimed[key] + by_mm)) });
  };
  return (
    <section className={pages["part"]}>
      <h2>{words.form}</h2>
      <p>
        {said} <OriginMark origin={origin} />
      </p>
      <Choices
        quiet
        legend={words.form}
        options={FORMS.map((form) => ({ value: form, said: words.forms[form] }))}
        value={aimed.form}
        onChoose={(form) => onAim({ ...aimed, form })}
      />
      <KeyRow>
        <Key onPress={() => sized("top_mm", STEP_mm)}>{words.taller}</Key>
        <Key onPress={() => sized("top_mm", -STEP_mm)}>{words.lower}</Key>
        <Key onPress={() => sized("width_mm", STEP_mm)}>{words.wider}</Key>
        <Key onPress={() => sized("width_mm", -STEP_mm)}>{words.narrower}</Key>
      </KeyRow>
      {isChanged && (
        <Key
          onPress={() => void write(engine, [{ kind: "trimming.aimed", on: [plant], data: aimed as never }])}
        >
          {words.keepAim}
        </Key>
      )}
    </section>
  );
}

import type { Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import type { ReactNode } from "react";
import { useLocation } from "wouter";
import { useAsk, useEngine } from "../../engine/use-ask.ts";
import { EntryForm, type FormData, isWhole } from "../../pages/fields/entry-form.tsx";
import { useBroken } from "../../pages/fields/use-broken.ts";
import pages from "../../pages/pages.module.css";
import { Key } from "../../parts/key.tsx";
import { Frame } from "../../shell/frame.tsx";
import { write } from "../../shell/last-line.ts";
import { useLightWords } from "./use-light.ts";

interface DrawFormProps {
  readonly where: string;
  readonly bench: string;
  readonly kind: string;
  /** Bench or spot. */
  readonly on: string;
  readonly data: FormData;
  readonly onChange: (data: FormData) => void;
  /** Fields with a drawing or a key of their own. */
  readonly without: readonly string[];
  readonly keep: string;
  /** Over the fields: the drawing, cautions. */
  readonly children: ReactNode;
}

/** The values of one entry of light from its own schema, under the drawing of what they mean. */
export function DrawForm({ where, bench, kind, on, data, onChange, without, keep, children }: DrawFormProps) {
  const words = useLightWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const { value: shape } = useAsk("shape", { kind });
  const { broken, onBroken } = useBroken();
  const fields = shape?.fields ?? [];
  const whole = shape !== undefined && shape !== null && isWhole(fields, data) && broken.size === 0;
  const write_ = async () => {
    const draft: Draft = { kind, on: [on], data: data as Json };
    const written = await write(engine, [draft]);
    if ("kept" in written) go(`/craft/light/${encodeURIComponent(bench)}`);
  };
  return (
    <Frame
      where={where}
      keys={
        <Key main shut={!whole} onPress={() => void write_()}>
          {whole ? keep : words.keepShut}
        </Key>
      }
    >
      <div className={pages["form"]}>
        {children}
        <EntryForm
          fields={fields.filter(({ key }) => !without.includes(key))}
          data={data}
          onChange={onChange}
          onBroken={onBroken}
        />
        <p className={pages["note"]}>{words.assumedHere}</p>
      </div>
    </Frame>
  );
}

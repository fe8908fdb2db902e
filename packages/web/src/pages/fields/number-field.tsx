import { useEffect, useState } from "react";
import { Key, KeyRow } from "../../parts/key.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import { readNumber } from "./read-number.ts";
import { inField, shownUnit } from "./shown-unit.ts";
import { type LikelySlip, slipOf } from "./slip-of.ts";
import { TextField } from "./text-field.tsx";

export interface NumberRange {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly whole?: boolean;
  readonly difference?: boolean;
}

interface NumberFieldProps {
  readonly label: string;
  readonly range: NumberRange;
  /** In the kept unit. */
  readonly value: number | undefined;
  /** Undefined when empty; null when what stands there is no value. */
  readonly onValue: (value: number | undefined | null) => void;
  readonly origin?: "measured" | "learned" | "assumed" | undefined;
  readonly beside?: React.ReactNode;
  readonly id?: string;
}

/** A quantity in the person's units. Out of range it says what was typed, the limit, the likely slip and the ways out. */
export function NumberField({ label, range, value, onValue, origin, beside, id }: NumberFieldProps) {
  const { units } = useSettings();
  const { fields } = useWords();
  const say = useSay();
  const unit = shownUnit(range.unit, units, range.difference);
  const [text, setText] = useState(value === undefined ? "" : inField(value, unit));
  const [left, setLeft] = useState(true);
  const typed = readNumber(text);
  const judged = judge(text, typed === undefined ? undefined : unit.kept(typed), range);
  const symbol = fields.unit(unit.symbol);

  // A value that comes from elsewhere (another plant, Undo, other units) replaces what was typed.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new value from outside may overwrite the typing
  useEffect(() => {
    if (value === undefined) {
      if (judged.is === "fine") setText("");
    } else if (judged.is !== "fine" || Math.abs(judged.value - value) > 1e-9 * Math.max(1, Math.abs(value)))
      setText(inField(value, unit));
  }, [value, unit.symbol]);

  const take = (next: string) => {
    setText(next);
    const number = readNumber(next);
    const now = judge(next, number === undefined ? undefined : unit.kept(number), range);
    onValue(now.is === "fine" ? now.value : now.is === "empty" ? undefined : null);
  };
  const said = (kept: number) =>
    `${say.number(unit.shown(kept), unit.digits_n)}${symbol ? ` ${symbol}` : ""}`;

  const problem = () => {
    if (!left) return undefined;
    if (judged.is === "no number") return <p>{fields.noNumber(label, text)}</p>;
    if (judged.is === "not whole") return <p>{fields.notWhole(label, text)}</p>;
    if (judged.is !== "outside") return undefined;
    const slip = slipOf(judged.value, range, units);
    return (
      <>
        <p>
          {fields.outside(label, `${text}${symbol ? ` ${symbol}` : ""}`, said(range.min), said(range.max))}
        </p>
        {slip && (
          <SlipOut slip={slip} said={said(slip.value)} onTake={() => take(inField(slip.value, unit))} />
        )}
      </>
    );
  };

  return (
    <TextField
      label={label}
      value={text}
      onType={(next) => {
        setLeft(false);
        take(next);
      }}
      onLeave={() => setLeft(true)}
      unit={symbol}
      decimal
      short
      problem={problem()}
      origin={origin}
      beside={beside}
      {...(id ? { id } : {})}
    />
  );
}

function SlipOut({ slip, said, onTake }: { slip: LikelySlip; said: string; onTake: () => void }) {
  const { fields } = useWords();
  return (
    <>
      <p>{fields.meant[slip.why](said)}</p>
      <KeyRow>
        <Key onPress={onTake}>{said}</Key>
      </KeyRow>
    </>
  );
}

type Judged =
  | { readonly is: "empty" | "no number" | "not whole" }
  | { readonly is: "fine" | "outside"; readonly value: number };

function judge(text: string, value: number | undefined, { min, max, whole }: NumberRange): Judged {
  if (text.trim() === "") return { is: "empty" };
  if (value === undefined) return { is: "no number" };
  if (whole && !Number.isInteger(value)) return { is: "not whole" };
  // A limit that was converted and back may miss by a rounding.
  const slack = 1e-9 * Math.max(1, Math.abs(value));
  return value < min - slack || value > max + slack
    ? { is: "outside", value }
    : { is: "fine", value: clamp(value, min, max) };
}

const clamp = (value: number, min: number, max: number) => Math.min(Math.max(value, min), max);

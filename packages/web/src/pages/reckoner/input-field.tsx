import type { Origin } from "@sillwood/bench/working";
import type { ScienceInput } from "@sillwood/science/catalogue";
import { useState } from "react";
import { OriginMark } from "../../parts/origin.tsx";
import { useSay, useSettings } from "../../shell/say.ts";
import { useWords } from "../../words/words.ts";
import type { Taking } from "../answers/takings.ts";
import { Choices } from "../fields/choices.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { SelectField } from "../fields/select-field.tsx";
import { inField, shownUnit } from "../fields/shown-unit.ts";
import { TextField } from "../fields/text-field.tsx";
import { type Given, readNumbers, usualSaid } from "./reckon.ts";
import styles from "./reckoner.module.css";

interface InputFieldProps {
  readonly input: ScienceInput;
  readonly given: Given | undefined;
  readonly offers: readonly Taking[];
  readonly onGive: (given: Given | undefined) => void;
  /** Something stands in the field that is no value of it: then there is no result either. */
  readonly onBroken: (isBroken: boolean) => void;
  /** What the sum itself says against this value, beyond its plain range. */
  readonly trouble?: string | undefined;
}

/** One input of a sum: typed, taken from a plant or the tape, or left empty for the usual value. */
export function InputField({ input, given, offers, onGive, onBroken, trouble }: InputFieldProps) {
  const { reckoner: words, fields } = useWords();
  const { units } = useSettings();
  const [isEmpty, setEmpty] = useState(true);
  const typed = (value: Given["value"]): Given => ({ value, origin: "measured", from: words.typed });
  const fitting = offers.filter(
    ({ unit, value }) =>
      input.kind === "number" && sameUnit(unit, input.unit) && value >= input.min && value <= input.max,
  );
  return (
    <div className={styles["input"]}>
      {input.kind === "number" && (
        <NumberField
          label={input.what}
          range={{ unit: input.unit, min: input.min, max: input.max, whole: false }}
          value={typeof given?.value === "number" ? given.value : undefined}
          onValue={(value) => {
            onBroken(value === null);
            setEmpty(value === undefined);
            onGive(typeof value === "number" ? typed(value) : undefined);
          }}
          origin={given?.origin ?? "assumed"}
          beside={<OriginMark origin={given?.origin ?? "assumed"} />}
        />
      )}
      {input.kind === "numbers" && (
        <NumbersField key={units} input={input} given={given} onGive={onGive} onBroken={onBroken} />
      )}
      {input.kind === "choice" && (
        <SelectField
          label={input.what}
          none={words.usualIs(usualSaid(input))}
          options={(input.options ?? []).map((value) => ({ value, said: value }))}
          value={given ? String(given.value) : ""}
          onChoose={(value) => onGive(value === "" ? undefined : typed(value))}
        />
      )}
      {input.kind === "yes or no" && (
        <Choices
          legend={input.what}
          options={[
            { value: "yes", said: fields.yes },
            { value: "no", said: fields.no },
          ]}
          value={given === undefined ? undefined : given.value === true ? "yes" : "no"}
          onChoose={(value) => onGive(typed(value === "yes"))}
        />
      )}
      <RangeLine input={input} />
      {!given && isEmpty && input.kind !== "choice" && <UsualLine input={input} />}
      {given && given.from !== words.typed && <p className={styles["from"]}>{given.from}</p>}
      {fitting.length > 0 && (
        <SelectField
          label={words.takeInstead(input.what)}
          none={words.choose}
          options={fitting.map((one) => ({ value: one.name, said: offered(one) }))}
          value=""
          onChoose={(name) => {
            const one = fitting.find((taking) => taking.name === name);
            if (one) onGive(one);
          }}
        />
      )}
      {trouble && <p role="alert">{trouble}</p>}
    </div>
  );
}

const offered = ({ what, value, unit }: Taking) => `${what}: ${Number(value.toPrecision(4))} ${unit}`;

/** Lengths in cm go into sums in cm only: the catalogue's own unit decides. */
const sameUnit = (a: string, b: string) => a === b || (a === "mol/m²/d" && b.startsWith("mol/m²"));

/** What is accepted, so that nobody has to find it out by a refusal. */
function RangeLine({ input }: { readonly input: ScienceInput }) {
  const { reckoner: words } = useWords();
  const { units } = useSettings();
  const say = useSay();
  if (input.kind !== "number" && input.kind !== "numbers") return null;
  const unit = shownUnit(input.unit, units);
  const said = (value: number) => say.number(unit.shown(value), unit.digits_n);
  const range = words.range(
    Number.isFinite(input.min) ? said(input.min) : undefined,
    Number.isFinite(input.max) ? said(input.max) : undefined,
    unit.symbol,
  );
  return range === "" ? null : <p className={styles["from"]}>{range}</p>;
}

/** What stands in for an empty field, and that it is our guess. */
function UsualLine({ input }: { readonly input: ScienceInput }) {
  const { reckoner: words } = useWords();
  const { units } = useSettings();
  const say = useSay();
  const said =
    input.optional && input.kind === "number" && typeof input.usual === "number"
      ? words.optionalUsual(shown(input.usual))
      : words.usual(typeof input.usual === "number" ? shown(input.usual) : yesNo());
  return (
    <p className={styles["from"]}>
      {said} <OriginMark origin="assumed" />
    </p>
  );

  function shown(value: number): string {
    const unit = shownUnit(input.unit, units);
    return `${say.number(unit.shown(value), 4)} ${unit.symbol}`.trim();
  }
  function yesNo(): string {
    return input.usual === true ? words.yes : input.usual === false ? words.no : usualSaid(input);
  }
}

function NumbersField({
  input,
  given,
  onGive,
  onBroken,
}: Pick<InputFieldProps, "input" | "given" | "onGive" | "onBroken">) {
  const { reckoner: words, fields } = useWords();
  const { units } = useSettings();
  const unit = shownUnit(input.unit, units);
  const [text, setText] = useState(
    Array.isArray(given?.value) ? given.value.map((value: number) => inField(value, unit)).join("; ") : "",
  );
  const numbers = readNumbers(text);
  const origin: Origin = given ? "measured" : "assumed";
  const outside = numbers?.find((value) => unit.kept(value) < input.min || unit.kept(value) > input.max);
  return (
    <TextField
      label={input.what}
      unit={unit.symbol}
      value={text}
      origin={origin}
      onType={(next) => {
        setText(next);
        const read = readNumbers(next);
        const isRefused = read
          ? read.some((value) => unit.kept(value) < input.min || unit.kept(value) > input.max)
          : next.trim() !== "";
        onBroken(isRefused);
        onGive(
          read && !isRefused
            ? { value: read.map((value) => unit.kept(value)), origin: "measured", from: words.typed }
            : undefined,
        );
      }}
      beside={<OriginMark origin={origin} />}
      problem={
        text.trim() !== "" && !numbers ? (
          <p>{fields.noNumber(input.what, text)}</p>
        ) : outside !== undefined ? (
          <p>
            {fields.outside(
              input.what,
              `${outside}`,
              `${inField(input.min, unit)}`,
              `${inField(input.max, unit)}`,
            )}
          </p>
        ) : undefined
      }
    />
  );
}

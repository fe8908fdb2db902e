import type { Json } from "@sillwood/bench/book";
import { useAsk } from "../../engine/use-ask.ts";
import { useWords } from "../../words/words.ts";
import type { ThingsSeen } from "../answers/seen.ts";
import { Choices } from "./choices.tsx";
import styles from "./fields.module.css";
import type { FieldShape } from "./form-shape.ts";
import { MoneyField } from "./money-field.tsx";
import { NumberField } from "./number-field.tsx";
import { TextField } from "./text-field.tsx";

export type FormData = Readonly<Record<string, Json | undefined>>;
/** Keys of fields that hold something which is no value of theirs. */
export type Broken = ReadonlySet<string>;

interface EntryFormProps {
  readonly fields: readonly FieldShape[];
  readonly data: FormData;
  readonly onChange: (data: FormData) => void;
  readonly onBroken: (key: string, isBroken: boolean) => void;
  /** Where the fields stand inside the data: for names that must not clash. */
  readonly path?: string;
}

/** The values of an entry, drawn from its kind's own schema: a new craft brings its forms with its kinds. */
export function EntryForm({ fields, data, onChange, onBroken, path = "" }: EntryFormProps) {
  return (
    <div className={path ? styles["group"] : styles["form"]}>
      {fields
        .filter(({ type }) => type !== "other")
        .map((field) => (
          <Field
            key={field.key}
            field={field}
            value={data[field.key]}
            onValue={(value) => onChange(withValue(data, field.key, value))}
            onBroken={onBroken}
            path={`${path}${field.key}`}
          />
        ))}
    </div>
  );
}

const withValue = (data: FormData, key: string, value: Json | undefined): FormData => {
  const { [key]: _was, ...rest } = data;
  return value === undefined ? rest : { ...rest, [key]: value };
};

interface FieldProps {
  readonly field: FieldShape;
  readonly value: Json | undefined;
  readonly onValue: (value: Json | undefined) => void;
  readonly onBroken: (key: string, isBroken: boolean) => void;
  readonly path: string;
}

function Field({ field, value, onValue, onBroken, path }: FieldProps) {
  const { fields: words } = useWords();
  const named = words.names[field.key] ?? field.what;
  const label = field.optional ? words.mayStayEmpty(named) : named;
  switch (field.type) {
    case "number":
    case "count":
      if (/_minor(_|$)/.test(field.key))
        return <MoneyField label={label} field={field} value={value} onValue={onValue} />;
      return (
        <NumberField
          label={label}
          range={{ ...field, whole: field.type === "count" }}
          value={typeof value === "number" ? value : undefined}
          onValue={(next) => {
            onBroken(path, next === null);
            onValue(next ?? undefined);
          }}
        />
      );
    case "yes":
      return (
        <Choices
          legend={label}
          options={[
            { value: "yes", said: words.yes },
            { value: "no", said: words.no },
          ]}
          value={value === true ? "yes" : value === false ? "no" : undefined}
          onChoose={(next) => onValue(next === "yes")}
        />
      );
    case "choice":
      return (
        <Choices
          legend={label}
          options={(field.options ?? []).map((option) => ({
            value: option,
            said: words.options[option] ?? option,
          }))}
          value={typeof value === "string" ? value : undefined}
          onChoose={(next) => onValue(next)}
        />
      );
    case "id":
      return <ThingField field={field} label={label} value={value} onValue={onValue} />;
    case "variant":
      return (
        <VariantField
          field={field}
          label={label}
          value={value}
          onValue={onValue}
          onBroken={onBroken}
          path={path}
        />
      );
    default:
      return (
        <TextField
          label={label}
          type={field.type === "day" ? "date" : "text"}
          value={typeof value === "string" ? value : ""}
          onType={(text) => onValue(text === "" ? undefined : text)}
        />
      );
  }
}

/** A pot by its form: the form first, then the measures that go with it. */
function VariantField({
  field,
  label,
  value,
  onValue,
  onBroken,
  path,
}: FieldProps & { readonly label: string }) {
  const { fields: words } = useWords();
  const by = field.by ?? "";
  const data = (value ?? {}) as FormData;
  const chosen = typeof data[by] === "string" ? data[by] : undefined;
  const inner = chosen === undefined ? undefined : field.variants?.[chosen];
  return (
    <>
      <Choices
        legend={label}
        options={(field.options ?? []).map((option) => ({
          value: option,
          said: words.options[option] ?? option,
        }))}
        value={chosen}
        onChoose={(next) => onValue({ [by]: next })}
      />
      {inner && (
        <EntryForm
          fields={inner}
          data={data}
          onChange={(next) => onValue(next as Json)}
          onBroken={onBroken}
          path={`${path}.`}
        />
      )}
    </>
  );
}

/** Which list an id is chosen from, by the name of its field. */
const LISTS: Readonly<Record<string, keyof ThingsSeen>> = {
  to: "spots",
  spot: "spots",
  into: "batches",
  batch: "batches",
  cultivar: "cultivars",
  mother: "plants",
  father: "plants",
  bench: "benches",
};

function ThingField({
  field,
  label,
  value,
  onValue,
}: Omit<FieldProps, "onBroken" | "path"> & { readonly label: string }) {
  const { value: things } = useAsk("things", {});
  const { fields: words } = useWords();
  const list = things?.[LISTS[field.key] ?? "plants"] ?? [];
  return (
    <label className={styles["field"]}>
      <span className={styles["label"]}>{label}</span>
      <select
        className={styles["input"]}
        value={typeof value === "string" ? value : ""}
        onChange={(event) => onValue(event.target.value === "" ? undefined : event.target.value)}
      >
        <option value="">{words.notSaid}</option>
        {list.map(({ id, name, beside }) => (
          <option key={id} value={id}>
            {[name, beside].filter(Boolean).join(", ")}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Whether every field that must be said is said. */
export function isWhole(fields: readonly FieldShape[], data: FormData): boolean {
  return fields.every((field) => {
    const value = data[field.key];
    if (value === undefined) return field.optional;
    if (field.type !== "variant") return true;
    const inner = value as FormData;
    return isWhole(field.variants?.[String(inner[field.by ?? ""])] ?? [], inner);
  });
}

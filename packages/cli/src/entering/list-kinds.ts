import type { AnyEntryKind } from "@sillwood/bench/book";
import { kinds } from "../book/kinds.ts";
import { columns } from "../text/columns.ts";
import { type Field, fieldsOf } from "../typed/fields.ts";

/** Kinds that have verbs of their own, or that devices write: not typed with `enter`. */
const NOT_TYPED = ["book.corrected", "book.redacted", "device.clock", "series.part"];

export const typedKinds = (): readonly AnyEntryKind[] =>
  kinds.all.filter(({ kind }) => !NOT_TYPED.includes(kind));

const finite = (value: number) => (Number.isFinite(value) ? value : null);

export const kindShape = (kind: AnyEntryKind) => ({
  kind: kind.kind,
  about: kind.subject,
  growerOnly: kind.growerOnly === true,
  fields: fieldsOf(kind.schema).map((field) => ({
    name: field.name,
    key: field.key,
    what: field.what,
    shape: field.shape,
    needed: field.needed,
    unit: field.unit,
    min: finite(field.min),
    max: finite(field.max),
    options: field.options,
  })),
  example: kind.example,
  typed: exampleOf(kind),
});

/** All kinds with what they take, or one. */
export function kindsText(list: readonly AnyEntryKind[]): string {
  return list
    .map((kind) =>
      [
        `${kind.kind}   about ${kind.subject}${kind.growerOnly ? ", by the grower" : ""}`,
        ...columns(
          fieldsOf(kind.schema).map((field) => [
            `${field.key}${field.needed ? "" : "?"}`,
            field.what,
            rangeOf(field),
          ]),
          { indent_n: 2 },
        ),
        `  sillwood enter ${exampleOf(kind)}`,
      ].join("\n"),
    )
    .join("\n\n");
}

function rangeOf(field: Field): string {
  if (field.options.length > 0) return field.options.join(", ");
  switch (field.shape) {
    case "number":
    case "count":
      return `${field.min} to ${field.max}${field.unit ? ` ${field.unit}` : ""}`;
    case "text":
      return `text, at most ${field.max} letters`;
    case "yes or no":
      return "yes or no";
    case "pot":
      return "12x9, oval 18x12x6, box 20x10x6; cm or any unit";
    case "spots":
      return "names in walking order, or how many";
    case "id":
      return "name or id";
    case "instant":
      return "a time";
    case "date":
      return "a date";
    default:
      return field.shape;
  }
}

/** The example of a kind as somebody would type it. */
function exampleOf(kind: AnyEntryKind): string {
  const data = kind.example as Readonly<Record<string, unknown>>;
  const values = fieldsOf(kind.schema)
    .filter(({ name }) => data[name] !== undefined)
    .map((field) => `${field.key}=${quoted(typedValue(field, data[field.name]))}`);
  const about = { plant: kind.kind === "plant.brought" ? "new" : "127", book: "", device: "" }[
    kind.subject as string
  ];
  return [
    kind.kind,
    about ?? (/laid|described|started|bought|joined/.test(kind.kind) ? "new" : "NAME"),
    ...values,
  ]
    .filter(Boolean)
    .join(" ");
}

const quoted = (text: string) => (/[\s;&|<>()$"'*?]/.test(text) ? `"${text}"` : text);

function typedValue(field: Field, value: unknown): string {
  if (field.shape === "yes or no") return value === true ? "yes" : "no";
  if (field.shape === "spots")
    return (value as readonly { name: string }[]).map(({ name }) => name).join(",");
  if (field.shape === "instant") return new Date(value as number).toISOString().slice(0, 10);
  if (field.suffix === "minor") return ((value as number) / 100).toFixed(2);
  if (field.shape === "pot") {
    const { form, ...sizes } = value as { form: string } & Record<string, number>;
    const measures = Object.values(sizes).join("x");
    return form === "round" ? measures : `${form === "oval" ? "oval" : "box"} ${measures}`;
  }
  return field.unit && field.suffix && typeof value === "number"
    ? `${value}${field.unit.replace(/^mol.*/, "")}`
    : String(value);
}

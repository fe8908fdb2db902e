import type { AnyEntryKind } from "@sillwood/bench/book";
import type { FieldShape, KindShape } from "../fields/form-shape.ts";

/** The parts of a schema object that a form reads; schemas are plain objects. */
interface SchemaLike {
  readonly type: string;
  readonly entries?: Readonly<Record<string, SchemaLike>>;
  readonly wrapped?: SchemaLike;
  readonly options?: readonly unknown[];
  readonly pipe?: readonly (SchemaLike & { readonly metadata?: Readonly<Record<string, unknown>> })[];
  readonly key?: string;
  readonly literal?: unknown;
}

const facts = (schema: SchemaLike) =>
  (schema.pipe ?? []).find(({ type }) => type === "metadata")?.metadata as
    | { readonly what: string; readonly unit: string; readonly min: number; readonly max: number }
    | undefined;

/** Checks in the pipe tell an id from a text and a count from a measure. */
const checks = (schema: SchemaLike, type: string) => (schema.pipe ?? []).some((part) => part.type === type);

const words = (key: string) => (key.split("_")[0] as string).replace(/([A-Z])/g, " $1").toLowerCase();

function fieldShape(key: string, schema: SchemaLike, optional = false): FieldShape {
  if (schema.type === "optional" && schema.wrapped) return fieldShape(key, schema.wrapped, true);
  const known = facts(schema);
  const base = {
    key,
    what: known?.what ?? words(key),
    unit: known?.unit ?? "",
    min: known?.min ?? Number.NEGATIVE_INFINITY,
    max: known?.max ?? Number.POSITIVE_INFINITY,
    optional,
  };
  switch (schema.type) {
    case "number":
      // An instant is typed as a date by the page that knows what it means.
      if (base.unit === "ms") return { ...base, type: "other" };
      return { ...base, type: checks(schema, "integer") ? "count" : "number" };
    case "boolean":
      return { ...base, type: "yes" };
    case "picklist":
      return { ...base, type: "choice", options: (schema.options ?? []).map(String) };
    case "string":
      if (checks(schema, "iso_date")) return { ...base, unit: "", type: "day" };
      return { ...base, type: checks(schema, "regex") && base.max === 64 ? "id" : "text" };
    case "variant": {
      const by = schema.key ?? "";
      const variants: Record<string, readonly FieldShape[]> = {};
      for (const option of (schema.options ?? []) as readonly SchemaLike[]) {
        const { [by]: name, ...rest } = option.entries ?? {};
        variants[String(name?.literal)] = Object.entries(rest).map(([each, inner]) =>
          fieldShape(each, inner),
        );
      }
      return { ...base, type: "variant", options: Object.keys(variants), variants, by };
    }
    default:
      return { ...base, type: "other" };
  }
}

/** The object inside a pipe of checks, or the object itself. */
const entriesOf = (schema: SchemaLike): Readonly<Record<string, SchemaLike>> => schema.entries ?? {};

export function kindShape(kind: AnyEntryKind): KindShape {
  const schema = kind.schema as unknown as SchemaLike;
  return {
    kind: kind.kind,
    subject: kind.subject,
    growerOnly: kind.growerOnly ?? false,
    fields: Object.entries(entriesOf(schema)).map(([key, inner]) => fieldShape(key, inner)),
  };
}

/** Kinds that have a page of their own, since they bring something new into the book or need more than a form. */
const OWN_PAGE = new Set([
  "plant.brought",
  "batch.started",
  "batch.split",
  "cultivar.described",
  "supply.bought",
]);
const WRITABLE_SUBJECTS = new Set(["plant", "batch", "bench", "supply"]);

/** Whether a form alone can write it. */
export function isWritable(shape: KindShape): boolean {
  return (
    WRITABLE_SUBJECTS.has(shape.subject) &&
    !OWN_PAGE.has(shape.kind) &&
    shape.fields.every(({ type, optional }) => optional || type !== "other")
  );
}

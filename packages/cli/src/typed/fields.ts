import { wordsOfName } from "@sillwood/science/errors";

/** How the text of a field is read. */
export type FieldShape =
  | "number"
  | "count"
  | "instant"
  | "text"
  | "choice"
  | "yes or no"
  | "id"
  | "date"
  | "pot"
  | "spots"
  | "list of words"
  | "list of counts"
  | "list of numbers"
  | "anything";

/** One field of an entry, as its schema tells it. */
export interface Field {
  /** As stored, with its unit: `volume_mL`. */
  readonly name: string;
  /** Without the unit: `volume`. */
  readonly key: string;
  /** The suffix of the name: `mL`; empty where there is none. */
  readonly suffix: string;
  readonly shape: FieldShape;
  readonly needed: boolean;
  readonly what: string;
  /** As people read it: `mL`, `°C`. */
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly options: readonly string[];
}

/** The parts of a valibot schema that are looked at; all schemas of entries are made of these. */
interface Schema {
  readonly type: string;
  readonly pipe?: readonly { readonly kind: string; readonly type: string; readonly metadata?: Facts }[];
  readonly wrapped?: Schema;
  readonly entries?: Readonly<Record<string, Schema>>;
  readonly options?: readonly unknown[];
  readonly item?: Schema;
  readonly literal?: unknown;
}
interface Facts {
  readonly what?: string;
  readonly unit?: string;
  readonly min?: number;
  readonly max?: number;
}

/** Instants are told from spans by where they may lie. */
const INSTANT_MAX_ms = 1e12;

/** The fields of the data of an entry kind, in the order of its schema; none for a schema of another form. */
export function fieldsOf(schema: unknown): readonly Field[] {
  const { entries } = schema as Schema;
  return Object.entries(entries ?? {}).map(([name, inner]) => fieldOf(name, inner));
}

function fieldOf(name: string, given: Schema): Field {
  const needed = given.type !== "optional";
  const schema = unwrapped(given);
  const actions = (schema.pipe ?? []).map(({ type }) => type);
  const facts = (schema.pipe ?? []).find(({ type }) => type === "metadata")?.metadata ?? {};
  const cut = name.indexOf("_");
  const options = schema.type === "picklist" ? (schema.options ?? []).map(String) : [];
  return {
    name,
    key: cut < 0 ? name : name.slice(0, cut),
    suffix: cut < 0 ? "" : name.slice(cut + 1),
    shape: shapeOf(schema, actions, facts),
    needed,
    what: facts.what ?? wordsOfName(name),
    unit: facts.unit ?? "",
    min: facts.min ?? Number.NEGATIVE_INFINITY,
    max: facts.max ?? Number.POSITIVE_INFINITY,
    options: options.length > 0 ? options : itemOptions(schema),
  };
}

const unwrapped = (schema: Schema): Schema => (schema.wrapped ? unwrapped(schema.wrapped) : schema);

const itemOptions = ({ item }: Schema): readonly string[] =>
  item && unwrapped(item).type === "picklist" ? (unwrapped(item).options ?? []).map(String) : [];

function shapeOf(schema: Schema, actions: readonly string[], { unit, min, max }: Facts): FieldShape {
  switch (schema.type) {
    case "number":
      if (unit === "ms" && (min ?? -1) >= 0 && (max ?? 0) > INSTANT_MAX_ms) return "instant";
      return actions.includes("integer") ? "count" : "number";
    case "boolean":
    case "literal":
      return "yes or no";
    case "picklist":
      return "choice";
    case "string":
      if (actions.includes("iso_date")) return "date";
      return actions.includes("regex") && max === 64 ? "id" : "text";
    case "variant":
      return "pot";
    case "array":
      return listShape(unwrapped(schema.item as Schema));
    default:
      return "anything";
  }
}

function listShape(item: Schema): FieldShape {
  if (item.type === "number")
    return (item.pipe ?? []).some(({ type }) => type === "integer") ? "list of counts" : "list of numbers";
  return item.type === "strict_object" ? "spots" : "list of words";
}

/** The field that a typed key names: with or without its unit, in any case; `volume_L` names `volume_mL` too. */
export function findField(
  fields: readonly Field[],
  typed: string,
): { readonly field: Field; readonly suffix?: string } | undefined {
  const wanted = typed.toLowerCase();
  const exact = fields.find(({ name, key }) => name.toLowerCase() === wanted || key.toLowerCase() === wanted);
  if (exact)
    return exact.name.toLowerCase() === wanted ? { field: exact, suffix: exact.suffix } : { field: exact };
  const cut = typed.indexOf("_");
  const other = fields.find(({ key }) => key.toLowerCase() === wanted.slice(0, Math.max(0, cut)));
  return other && cut > 0 ? { field: other, suffix: typed.slice(cut + 1) } : undefined;
}

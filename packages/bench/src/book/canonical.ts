import type { Json } from "./entry.ts";

/** A value that has no canonical form: NaN, Infinity, undefined, a function, half a surrogate pair, a cycle. */
export class CanonicalError extends Error {
  override readonly name = "CanonicalError";
}

const LONE_SURROGATE = /\p{Surrogate}/u;

/**
 * The RFC 8785 form of a value: no white space, keys in the order of their UTF-16 code units, numbers and strings as
 * ECMAScript writes them. Two writers of equal content get equal bytes, so a hash over it names the content.
 *
 * @throws CanonicalError when the value is not JSON (the message names the path)
 * @source RFC 8785 (JSON Canonicalization Scheme), sections 3.2.2 and 3.2.3
 * @example canonical({ b: 1.0, a: "ä" }) // '{"a":"ä","b":1}'
 */
export function canonical(value: Json): string {
  return written(value, "$");
}

function written(value: unknown, path: string): string {
  switch (typeof value) {
    case "boolean":
      return value ? "true" : "false";
    case "number":
      if (!Number.isFinite(value)) throw new CanonicalError(`${path} is ${value}; JSON has no such number`);
      return JSON.stringify(value);
    case "string":
      if (LONE_SURROGATE.test(value)) throw new CanonicalError(`${path} holds half a surrogate pair`);
      return JSON.stringify(value);
    case "object":
      if (value === null) return "null";
      return Array.isArray(value) ? list(value, path) : members(value as Record<string, unknown>, path);
    default:
      throw new CanonicalError(`${path} is ${typeof value}; JSON has no such value`);
  }
}

function list(values: readonly unknown[], path: string): string {
  let text = "[";
  for (let i = 0; i < values.length; i++) {
    if (i > 0) text += ",";
    text += written(values[i], `${path}[${i}]`);
  }
  return `${text}]`;
}

function members(value: Record<string, unknown>, path: string): string {
  // The default sort of strings is by UTF-16 code units, as the RFC asks; localeCompare would not be.
  const keys = Object.keys(value).sort();
  let text = "{";
  for (let i = 0; i < keys.length; i++) {
    const key = keys[i] as string;
    if (LONE_SURROGATE.test(key)) throw new CanonicalError(`${path} has a key with half a surrogate pair`);
    if (i > 0) text += ",";
    text += `${JSON.stringify(key)}:${written(value[key], `${path}.${key}`)}`;
  }
  return `${text}}`;
}

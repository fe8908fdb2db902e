import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import type { Binding, CheckRow } from "./row.ts";

const here = fileURLToPath(new URL("../", import.meta.url));

/** Fields of the delivered tables: file names without their ending. */
export const tableFields = (): readonly string[] =>
  readdirSync(here)
    .filter((file) => file.endsWith(".json") && file !== "package.json" && file !== "tsconfig.json")
    .map((file) => basename(file, ".json"))
    .toSorted();

/** Rows of a table, from a file path. */
export function readTable(path: string): readonly CheckRow[] {
  const rows: unknown = JSON.parse(readFileSync(path, "utf8"));
  if (!Array.isArray(rows)) throw new TypeError(`${path} holds no list of rows`);
  return rows as readonly CheckRow[];
}

export const tablePath = (field: string): string => `${here}${field}.json`;

/** The binding of a field, or undefined while nobody has written one. */
export async function bindingOf(field: string): Promise<Binding | undefined> {
  const path = `${here}bindings/${field}.ts`;
  if (!existsSync(path)) return undefined;
  const loaded = (await import(new URL(`../bindings/${field}.ts`, import.meta.url).href)) as {
    readonly binding?: Binding;
  };
  return loaded.binding;
}

/** The field that a table belongs to: its file's name, or the front part of its ids. */
export function fieldOf(path: string, rows: readonly CheckRow[]): string {
  const name = basename(path, ".json");
  if (tableFields().includes(name)) return name;
  const front = (rows[0]?.id ?? "").replace(/-\d+$/, "").toLowerCase();
  return tableFields().find((field) => field === front) ?? name;
}

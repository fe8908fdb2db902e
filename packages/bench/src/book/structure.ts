import type { Json, Problem } from "./entry.ts";
import { LIMITS } from "./envelope.ts";

/** Keys that could reach a prototype when somebody copies an object carelessly. None is a field of any entry. */
const FORBIDDEN_KEYS = new Set(["__proto__", "constructor", "prototype"]);
const LONE_SURROGATE = /\p{Surrogate}/u;
const PROBLEMS_MAX_n = 50;

/** What JSON text can't hold or we won't take, whatever the kind: depth, prototype keys, NaN, half characters. */
export function structureProblems(json: unknown): Problem[] {
  const problems: Problem[] = [];
  walk(json, "", 1, problems);
  return problems;
}

/** The value of a problem, cut to a length that fits on a screen; nothing for lists and objects. */
export function valueShown(input: unknown): { value?: Json } {
  if (input === null || typeof input === "boolean") return { value: input };
  if (typeof input === "number") return Number.isFinite(input) ? { value: input } : { value: String(input) };
  if (typeof input === "string") return { value: input.length > 200 ? `${input.slice(0, 200)}…` : input };
  return {};
}

function walk(value: unknown, path: string, depth: number, problems: Problem[]): void {
  if (problems.length >= PROBLEMS_MAX_n) return;
  const report = (message: string, more: Partial<Problem> = {}) =>
    void problems.push({ path, message, ...more });
  if (typeof value === "string") {
    if (LONE_SURROGATE.test(value)) report("holds half a character (a lone surrogate)");
  } else if (typeof value === "number") {
    if (!Number.isFinite(value)) report(`is ${value}; expected a finite number`, { value: String(value) });
  } else if (value !== null && typeof value === "object") {
    if (depth > LIMITS.depth_n)
      report(`lies more than ${LIMITS.depth_n} levels deep`, {
        limit: `<=${LIMITS.depth_n}`,
        unit: "levels",
      });
    else if (Array.isArray(value))
      for (let i = 0; i < value.length; i++) walk(value[i], join(path, i), depth + 1, problems);
    else walkMembers(value, path, depth, problems);
  } else if (typeof value !== "boolean" && value !== null)
    report(`is ${typeof value}; JSON has no such value`);
}

function walkMembers(value: object, path: string, depth: number, problems: Problem[]): void {
  for (const key of Object.keys(value)) {
    const at = join(path, key.slice(0, 80));
    if (FORBIDDEN_KEYS.has(key)) problems.push({ path: at, message: `${key} can't be the name of a field` });
    else if (LONE_SURROGATE.test(key))
      problems.push({ path, message: "has a field name with half a character" });
    else walk((value as Record<string, unknown>)[key], at, depth + 1, problems);
  }
}

const join = (path: string, key: string | number) => (path === "" ? String(key) : `${path}.${key}`);

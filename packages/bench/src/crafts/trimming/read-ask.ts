import * as v from "valibot";
import type { Json } from "../../book/entry.ts";
import { checkData } from "../../book/kinds.ts";
import { PageError } from "../craft.ts";
import { AIMED, type Aimed, TRACED, type Traced, trimmingKinds } from "./kinds.ts";
import type { TrimAsk } from "./page-shape.ts";

const MOST_TRIES_n = 20_000;

const askSchema = v.strictObject({
  plant: v.optional(v.string()),
  node: v.optional(v.string()),
  aim: v.optional(v.record(v.string(), v.unknown())),
  tries_n: v.optional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MOST_TRIES_n))),
  potAngle: v.optional(v.boolean()),
  own: v.optional(v.array(v.string())),
  trace: v.optional(v.record(v.string(), v.unknown())),
});

/** What is asked, or a refusal that names the field, the value and the limit. */
export function readTrimAsk(json: Json): TrimAsk {
  const read = v.safeParse(askSchema, json);
  if (!read.success) {
    const issue = read.issues[0];
    const field = (issue.path ?? []).map(({ key }) => String(key)).join(".") || "what is asked";
    const expected =
      field === "tries_n"
        ? `1 to ${MOST_TRIES_n}, a whole number`
        : "plant, node, aim, tries_n, own or trace, as text, whole number, list or object";
    throw new PageError(`${field} is ${JSON.stringify(issue.input) ?? "missing"}; expected ${expected}`);
  }
  const { aim, trace, ...plain } = read.output;
  return {
    ...(plain as TrimAsk),
    ...(aim ? { aim: checked<Aimed>(AIMED, "aim", aim) } : {}),
    ...(trace ? { trace: checked<Traced>(TRACED, "trace", trace) } : {}),
  };
}

function checked<Data>(kind: string, field: string, data: unknown): Data {
  const found = trimmingKinds.find((each) => each.kind === kind);
  const [problem] = found ? checkData(found, data) : [];
  if (problem) throw new PageError(`${problem.path.replace(/^data/, field)}: ${problem.message}`);
  return data as Data;
}

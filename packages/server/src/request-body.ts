import type { Json, Problem } from "@sillwood/bench/book";
import type { Context } from "hono";
import * as v from "valibot";
import { HttpProblem } from "./problem.ts";

/**
 * A JSON body, checked. Only `application/json` passes: a page of another origin can't send that without asking first.
 *
 * @throws HttpProblem 415, 413, 400 or 422, with all problems of the body
 */
export async function readJson<Schema extends v.GenericSchema>(
  c: Context,
  schema: Schema,
  max_B: number,
): Promise<v.InferOutput<Schema>> {
  const type = c.req.header("content-type")?.split(";")[0]?.trim().toLowerCase();
  if (type !== "application/json")
    throw new HttpProblem(415, "send application/json", [
      {
        path: "content-type",
        message: `is ${type ?? "missing"}`,
        value: type ?? null,
        limit: "application/json",
      },
    ]);
  const pieces: Uint8Array[] = [];
  for await (const piece of bodyPieces(c, max_B)) pieces.push(piece);
  let json: unknown;
  try {
    json = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(pieces)));
  } catch (error) {
    throw new HttpProblem(400, "the body is not JSON", [
      { path: "", message: (error as Error).message.slice(0, 200) },
    ]);
  }
  const result = v.safeParse(schema, json);
  if (!result.success)
    throw new HttpProblem(422, "the body is not what this address takes", result.issues.map(problemOf));
  return result.output;
}

/**
 * The bytes of a body as they come.
 *
 * @throws HttpProblem 413 as soon as there are more than `max_B`, before any is read where the sender says so
 */
export async function* bodyPieces(c: Context, max_B: number): AsyncGenerator<Uint8Array> {
  const tooLarge = (size_B: number) =>
    new HttpProblem(413, "the body is too large", [
      {
        path: "",
        message: `the body is larger than ${max_B} bytes`,
        value: size_B,
        limit: `<=${max_B}`,
        unit: "B",
      },
    ]);
  const said_B = Number(c.req.header("content-length") ?? 0);
  if (said_B > max_B) throw tooLarge(said_B);
  let size_B = 0;
  for await (const piece of c.req.raw.body ?? []) {
    size_B += piece.length;
    if (size_B > max_B) throw tooLarge(size_B);
    yield piece;
  }
}

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = (issue.path ?? []).map((item) => String(item.key).slice(0, 80)).join(".");
  const unit = /_([A-Za-z0-9]+)$/.exec(path)?.[1];
  return {
    path,
    message: issue.message.slice(0, 500),
    ...(isPlain(issue.input) ? { value: issue.input as Json } : {}),
    ...(issue.expected ? { limit: issue.expected.slice(0, 200) } : {}),
    ...(unit ? { unit } : {}),
  };
}

const isPlain = (input: unknown) =>
  input === null ||
  typeof input === "number" ||
  typeof input === "boolean" ||
  (typeof input === "string" && input.length <= 200);

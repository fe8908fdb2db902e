import { checkData, type Json } from "@sillwood/bench/book";
import type { Draft } from "@sillwood/bench/round";
import { instantOf, WHEN_FORMS } from "../book/when.ts";
import type { Trouble } from "../errors.ts";
import { subjectsOf } from "../typed/subjects.ts";
import type { Typing } from "../typed/typing.ts";
import type { FromFile } from "./from-rows.ts";
import { isKind, kindNamed } from "./typed-words.ts";

/** Lines of JSON, each `{"kind", "on", "when", "data"}` with data in the units of its names. Whole books are `book import`. */
export function fromNdjson(text: string, typing: Typing, at_ms?: number): FromFile {
  const drafts: Draft[] = [];
  const troubles: Trouble[] = [];
  for (const [i, raw] of text
    .replace(/^\uFEFF/, "")
    .split("\n")
    .entries()) {
    if (raw.trim() === "") continue;
    const result = oneLine(raw, typing, at_ms);
    if ("draft" in result) drafts.push(result.draft);
    else troubles.push(...result.troubles.map((trouble) => ({ ...trouble, line: i + 1 })));
  }
  if (drafts.length + troubles.length === 0)
    troubles.push({ path: "file", message: "the file holds no entries" });
  return { drafts, troubles };
}

type Line = { readonly draft: Draft } | { readonly troubles: readonly Trouble[] };
const bad = (path: string, message: string): Line => ({ troubles: [{ path, message }] });

function oneLine(raw: string, typing: Typing, at_ms: number | undefined): Line {
  let line: unknown;
  try {
    line = JSON.parse(raw);
  } catch (error) {
    return bad("", `not JSON: ${(error as Error).message.slice(0, 120)}`);
  }
  if (line === null || typeof line !== "object" || Array.isArray(line))
    return bad("", 'expected an object as {"kind":"watering.weighed","on":[127],"data":{"weight_g":412}}');
  const { kind: name, on = [], when, data = {}, ...rest } = line as Record<string, unknown>;
  const strange = Object.keys(rest)[0];
  if (strange !== undefined)
    return bad(
      strange,
      `${JSON.stringify(strange.slice(0, 60))} is no part of a line; expected kind, on, when, data`,
    );
  const kind = kindNamed(String(name));
  if (!isKind(kind)) return { troubles: [kind] };
  if (!Array.isArray(on)) return bad("on", `on is ${JSON.stringify(on).slice(0, 60)}; expected a list`);
  const subjects = subjectsOf(kind, on.map(String), typing);
  const troubles: Trouble[] = ["troubles" in subjects ? subjects.troubles : [], checkData(kind, data)].flat();
  const when_ms = typeof when === "string" ? instantOf(when, typing.calendar, typing.now_ms) : undefined;
  if (when !== undefined && when_ms === undefined)
    troubles.push({
      path: "when",
      message: `when is ${JSON.stringify(when).slice(0, 60)}; expected ${WHEN_FORMS}`,
    });
  if (troubles.length > 0 || "troubles" in subjects) return { troubles };
  const time_ms = when_ms ?? at_ms;
  return {
    draft: {
      kind: kind.kind,
      on: subjects.on,
      data: data as Json,
      ...(time_ms === undefined ? {} : { at_ms: time_ms }),
    },
  };
}

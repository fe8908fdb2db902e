import { describe, expect, it } from "vitest";
import { AIMED, SPROUTED, TRACED, type Traced } from "./kinds.ts";
import type { CutShown, TrimAsk } from "./page-shape.ts";
import { TRACE, trimHouse } from "./test-kit.ts";
import type { TraceNode } from "./trace-fields.ts";

const AIM = { form: "dome", top_mm: 130, foot_mm: 40, width_mm: 110 } as const;
type Line = "takes" | "brings" | "opens" | "loses" | "outline" | "again";

interface Inputs {
  readonly trace: Traced;
  readonly assumed?: Readonly<Record<string, number>>;
  readonly aim?: TrimAsk["aim"];
  readonly watched_n?: number;
}

function shown({ trace, assumed = {}, aim = AIM, watched_n }: Inputs): CutShown {
  const house = trimHouse();
  house.write(1, TRACED, trace);
  house.write(1.1, AIMED, aim);
  for (const [key, value] of Object.entries(assumed)) {
    const entry = { key, value };
    house.ledger.add([house.write(1.2, "house.assumed", entry)]);
  }
  if (watched_n !== undefined) house.write(1.3, SPROUTED, { watched_n, grown_n: 0 });
  return house.shape(2, { node: "5" }).node as CutShown;
}

const changed = (id: string, more: Partial<TraceNode>): Inputs => ({
  trace: { ...TRACE, nodes: TRACE.nodes.map((node) => (node.id === id ? { ...node, ...more } : node)) },
});

/** Each input, and the lines of the sentence that must say something else when it is another. */
const mutations: readonly (readonly [string, Inputs, readonly Line[]])[] = [
  ["leaves that go", changed("6", { leaves_n: 4 }), ["takes", "loses", "again"]],
  ["leaf length that goes", changed("6", { leafLength_mm: 70, leafWidth_mm: 35 }), ["takes", "loses"]],
  ["flowers that go", changed("7", { flowers_n: 3 }), ["loses"]],
  ["fruits that go", changed("6", { fruit_n: 2 }), ["loses"]],
  ["thickness of what goes", changed("6", { caliper_mm: 9 }), ["loses"]],
  ["direction of the axil below", changed("4", { leafTowards_deg: 180 }), ["brings"]],
  ["a blind bud", changed("4", { blind: true }), ["brings"]],
  ["age of the stem below", changed("4", { wood: "woody" }), ["brings"]],
  ["the outline", { trace: TRACE, aim: { ...AIM, top_mm: 90 } }, ["outline"]],
  ["buds that were watched", { trace: TRACE, watched_n: 20 }, ["brings"]],
];

describe("every number of a cut's sentence changes with its input", () => {
  const before = shown({ trace: TRACE });
  it.each(mutations)("%s", (_what, inputs, lines) => {
    const after = shown(inputs);
    for (const line of lines) expect(after[line], line).not.toBe(before[line]);
  });
  it("and is the same for the same inputs", () => {
    expect(shown({ trace: TRACE })).toEqual(before);
  });
});

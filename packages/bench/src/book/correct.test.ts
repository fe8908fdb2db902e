import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writer } from "../../test/entry-maker.ts";
import { CORRECTED, correctionsByFirst, entryInForce, standing } from "./correct.ts";
import type { Entry, Json } from "./entry.ts";

function history(seed: number) {
  const { write, random } = writer(seed);
  const first = write("test.weighed", { mass_g: 400 }).entry;
  const correct = (data: Json, corrects = [first.id]) => write(CORRECTED, data, { corrects }).entry;
  return { first, correct, random, write };
}

describe("corrections", () => {
  it("show the first content while nothing was said of it", () => {
    const { first } = history(1);
    expect(standing(first, [])).toMatchObject({ inForce: "yes", content: { data: { mass_g: 400 } } });
    expect(entryInForce(standing(first, []))).toEqual(first);
  });

  it("the last by (clock, id) is in force and all stay visible", () => {
    const { first, correct } = history(2);
    const said = [
      correct({ data: { mass_g: 410 } }),
      correct({ withdrawn: true }),
      correct({ restored: true }),
    ];
    const stand = standing(first, said);
    expect(stand.versions.map(({ state }) => state)).toEqual(["said", "corrected", "withdrawn", "restored"]);
    expect(entryInForce(stand)?.data).toEqual({ mass_g: 410 });
    expect(entryInForce(standing(first, said.slice(0, 2)))).toBeUndefined();
    expect(standing(first, said.slice(0, 2)).content.data).toEqual({ mass_g: 410 });
  });

  it("a new content after a withdrawal brings the entry back", () => {
    const { first, correct } = history(3);
    const stand = standing(first, [correct({ withdrawn: true }), correct({ data: { mass_g: 1 } })]);
    expect(stand).toMatchObject({ inForce: "yes", content: { data: { mass_g: 1 } } });
  });

  it("a corrected time is a typed time and stands until somebody types another", () => {
    const { first, correct } = history(4);
    const moved = correct({ data: { mass_g: 400 }, at_ms: 1_780_000_000_000 });
    const stand = standing(first, [moved, correct({ data: { mass_g: 402 } })]);
    expect(stand.content).toMatchObject({ at_ms: 1_780_000_000_000, atFrom: "typed", data: { mass_g: 402 } });
  });

  it("a correction says in which version its data stands", () => {
    const { first, correct } = history(5);
    const old = { ...first, v: 1, data: { mass_kg: 0.4 } };
    expect(standing(old, [correct({ data: { mass_g: 401 }, v: 2 })]).content.v).toBe(2);
    expect(standing(old, [correct({ data: { mass_kg: 0.5 } })]).content.v).toBe(1);
  });

  it("one correction may name a whole bench; a correction is never corrected", () => {
    const { first, correct, write } = history(6);
    const second = write("test.weighed", { mass_g: 500 }).entry;
    const both = correct({ withdrawn: true }, [first.id, second.id]);
    const ofCorrection = correct({ withdrawn: true }, [both.id]);
    const sorted = correctionsByFirst([ofCorrection, second, both, first]);
    expect(sorted.byFirst.get(first.id)).toEqual([both]);
    expect(sorted.byFirst.get(second.id)).toEqual([both]);
    expect(sorted.ofCorrections).toEqual([ofCorrection]);
    expect(sorted.byFirst.has(both.id)).toBe(false);
  });

  it("any arrival order, and hearing one twice, gives the same", () => {
    const said = fc.array(
      fc.oneof(
        fc.constant({ withdrawn: true } as Json),
        fc.constant({ restored: true } as Json),
        fc.integer({ min: 1, max: 999 }).map((mass_g): Json => ({ data: { mass_g } })),
        fc
          .integer({ min: 1, max: 999 })
          .map((n): Json => ({ data: { mass_g: n }, at_ms: 1_780_000_000_000 + n, on: [`p${n}`] })),
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(said, fc.integer(), fc.integer(), (contents, seed, shuffle) => {
        const { first, correct } = history(seed);
        const inOrder: Entry[] = contents.map((data) => correct(data));
        const heard = [...inOrder, ...inOrder.slice(0, 3)];
        const mixed = heard
          .map((entry, i) => ({ entry, key: Math.imul(i + 1, shuffle | 1) >>> 3 }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        expect(standing(first, mixed)).toEqual(standing(first, inOrder));
      }),
    );
  });
});

import type { EntryId } from "@sillwood/bench/book";
import { expect, it } from "vitest";
import { stepOf } from "./last-line.ts";

const first = "01980000-0000-7000-8000-000000000001" as EntryId;
const kept = "01980000-0000-7000-8000-000000000002" as EntryId;

it("takes a new entry back by withdrawing it", () => {
  expect(stepOf({ data: {} }, kept, undefined)).toEqual({
    corrects: [kept],
    back: { withdrawn: true },
    forth: { restored: true },
  });
});

it("takes a withdrawal back on the first entry, since nobody corrects a correction", () => {
  const step = stepOf({ data: { withdrawn: true }, corrects: [first] }, kept, undefined);
  expect(step).toEqual({ corrects: [first], back: { restored: true }, forth: { withdrawn: true } });
});

it("takes what was put right back to what it was before, and offers no way back where that is not known", () => {
  const right = { data: { data: { volume_mL: 160 } }, corrects: [first] };
  const before = { data: { volume_mL: 200 } };
  expect(stepOf(right, kept, before)).toEqual({ corrects: [first], back: before, forth: right.data });
  expect(stepOf(right, kept, undefined)).toBeUndefined();
});

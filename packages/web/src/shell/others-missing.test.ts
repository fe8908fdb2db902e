import { expect, test } from "vitest";
import { othersMissing } from "./others-missing.ts";

const HOUR_ms = 3_600_000;
const people = [
  { id: "g", role: "grower" },
  { id: "h1", role: "helper" },
  { id: "h2", role: "helper" },
] as const;

test("says whose entries may be missing once the server has been silent for a while", () => {
  const silent = { server: "silent", answered_ms: 0 } as const;
  expect(othersMissing(silent, people, "g", HOUR_ms)).toEqual({ roles: ["helper"], since_ms: 0 });
  expect(othersMissing(silent, people, "h1", HOUR_ms)?.roles).toEqual(["grower", "helper"]);
});

test("says nothing while the server answers, has been silent for minutes, never answered, or nobody else writes", () => {
  expect(othersMissing({ server: "answers", answered_ms: 0 }, people, "g", HOUR_ms)).toBeUndefined();
  expect(othersMissing({ server: "silent", answered_ms: 0 }, people, "g", HOUR_ms / 4)).toBeUndefined();
  expect(othersMissing({ server: "silent" }, people, "g", HOUR_ms)).toBeUndefined();
  expect(othersMissing({ server: "silent", answered_ms: 0 }, [people[0]], "g", HOUR_ms)).toBeUndefined();
});

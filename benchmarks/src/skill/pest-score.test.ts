import { causeKeys, signKeys } from "@sillwood/science/pests";
import { describe, expect, it } from "vitest";
import { writtenCases } from "./diagnosis-cases.ts";
import { casesWritten, tableCases, topThree } from "./diagnosis-score.ts";
import { logScores, plantDays, reliability, rulesOf } from "./pest-score.ts";

// A small fixed sample: enough to go red when looks count twice, when pests stand still or when arrivals are left out.
const days = plantDays([1, 2, 3], 40, 50);

describe("clearance against pests of another making", () => {
  it("says about what is so, and beats base rate and habit", () => {
    const all = reliability(days).filter(({ origin }) => origin === "all");
    expect(all.length).toBeGreaterThan(2);
    expect(all.filter(({ holds }) => !holds)).toEqual([]);
    const { ours, base, habit } = logScores(days);
    expect(ours).toBeLessThan(base);
    expect(ours).toBeLessThan(habit);
  });
  it("lets fewer infested plants go than two clean weeks do", () => {
    const [sell, , , habit] = rulesOf(days);
    expect(habit?.released_n).toBeGreaterThan(50);
    expect(sell?.infestedSold_frac).toBeLessThan(habit?.infestedSold_frac ?? 0);
  });
});

describe("what is wrong", () => {
  it("written cases use the signs and causes of the table", () => {
    for (const { seen, absent, cause } of writtenCases) {
      expect(causeKeys).toContain(cause);
      for (const sign of [...seen, ...absent]) expect(signKeys).toContain(sign);
    }
    expect(writtenCases).toHaveLength(30);
  });
  it("has a true cause among the first three far oftener than common causes alone", () => {
    const [table, written] = [topThree(tableCases(300, 2)), topThree(casesWritten)];
    expect(table.ours_frac).toBeGreaterThan(table.priors_frac + 0.2);
    expect(written.ours_frac).toBeGreaterThan(written.priors_frac + 0.2);
  });
});

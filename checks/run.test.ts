import { describe, expect, it } from "vitest";
import { printScore, printSources } from "./src/print.ts";
import { scoreTable } from "./src/score.ts";
import { bindingOf, readTable, tableFields, tablePath } from "./src/tables.ts";

const fields = await Promise.all(
  tableFields().map(async (field) => ({
    field,
    rows: readTable(tablePath(field)),
    binding: await bindingOf(field),
  })),
);
const waiting = fields.filter((each) => !each.binding);

describe("check tables", () => {
  it("name the fields that nothing is bound to yet", () => {
    console.log(
      `without a binding: ${waiting.map((each) => `${each.field} (${each.rows.length})`).join(", ") || "none"}`,
    );
    expect(fields.length).toBeGreaterThan(waiting.length);
  });
});

for (const { field, rows, binding } of fields) {
  if (!binding) continue;
  const due = rows.filter((row) => !binding.waits?.(row));
  const later = rows.filter((row) => binding.waits?.(row));
  const score = scoreTable(due, binding);
  describe(field, () => {
    it("shows its scoreboard", () => {
      console.log(`${printScore(score)}\n${printSources(score)}`);
      if (later.length > 0)
        console.log(`waiting: ${later.map((row) => `${row.id} ${binding.waits?.(row)}`).join("; ")}`);
      expect(score.rows_n + later.length).toBe(rows.length);
      expect(score.rows_n).toBeGreaterThan(0);
    });
    it.each(score.rows.map((row) => [row.id, row.what, row] as const))("%s %s", (_id, _what, row) => {
      expect(row.bound, row.keys.map((key) => `${key.key}: ${key.said}`).join("\n")).toBe(true);
      expect(row.keys.filter((key) => !key.ok)).toEqual([]);
    });
  });
}

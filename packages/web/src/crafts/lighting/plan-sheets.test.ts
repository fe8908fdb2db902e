import { expect, test } from "vitest";
import { planSheets } from "./plan-sheets.ts";

const row = (spots_n: number) =>
  Array.from({ length: spots_n }, (_, i) => ({ along_m: (i - (spots_n - 1) / 2) * 0.16 }));
const plan = { left_m: -1.3, right_m: 1.3 };

test("a long sill is cut into sheets on which every pot has its room", () => {
  const sheets = planSheets(row(16), plan, 350, 50);
  expect(sheets.map(({ spots }) => spots.length)).toEqual([6, 6, 4]);
  for (const { from_m, to_m, width_px, spots } of sheets) {
    expect(width_px).toBeLessThanOrEqual(350);
    for (const [i, { along_m }] of spots.entries()) {
      const x_px = ((along_m - from_m) / (to_m - from_m)) * width_px;
      expect(x_px).toBeGreaterThan(24);
      expect(width_px - x_px).toBeGreaterThan(24);
      const before = spots[i - 1];
      if (before) expect(((along_m - before.along_m) / (to_m - from_m)) * width_px).toBeGreaterThan(47);
    }
  }
});

test("few pots show the window beside them, no further than it goes", () => {
  const [sheet, ...others] = planSheets(row(3), { left_m: -0.4, right_m: 0.4 }, 350, 50);
  expect(others).toEqual([]);
  expect(sheet).toMatchObject({ from_m: -0.4, to_m: 0.4, width_px: 350 });
});

test("pots behind one another are one column; every spot stands on one sheet", () => {
  const spots = [0, 0.01, 0.2, 0.21].map((along_m, i) => ({ along_m, i }));
  const sheets = planSheets(spots, plan, 60, 50);
  expect(sheets.map((sheet) => sheet.spots.map(({ i }) => i))).toEqual([
    [0, 1],
    [2, 3],
  ]);
});

test("a bench without spots is one sheet", () => {
  expect(planSheets([], plan, 300, 50)).toEqual([{ from_m: -1.3, to_m: 1.3, width_px: 300, spots: [] }]);
});

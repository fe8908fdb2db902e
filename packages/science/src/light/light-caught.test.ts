import { expect, it } from "vitest";
import { lightCaught_mol_d } from "./index.ts";

const crown = { dli_mol_m2_d: 12, leafArea_m2: 0.06, crownArea_m2: 0.0314 };

it("catches the share that the worked sum of a crown of 20 cm has: 0.682 of 12 mol on 0.0314 m²", () => {
  expect(lightCaught_mol_d(crown) / (12 * 0.0314)).toBeCloseTo(0.682, 3);
});

it("rises with leaves towards all that falls on the crown, and with light in proportion", () => {
  const more = lightCaught_mol_d({ ...crown, leafArea_m2: 0.12 });
  expect(more).toBeGreaterThan(lightCaught_mol_d(crown));
  expect(more).toBeLessThan(12 * 0.0314);
  expect(lightCaught_mol_d({ ...crown, dli_mol_m2_d: 24 })).toBeCloseTo(2 * lightCaught_mol_d(crown), 12);
  expect(lightCaught_mol_d({ ...crown, leafArea_m2: 0 })).toBe(0);
});

it("refuses what is no crown", () => {
  expect(() => lightCaught_mol_d({ ...crown, crownArea_m2: 0 })).toThrow(/crown/);
  expect(() => lightCaught_mol_d({ ...crown, dli_mol_m2_d: 66 })).toThrow(/65/);
  expect(() => lightCaught_mol_d({ ...crown, extinction: Number.NaN })).toThrow(/extinction/);
});

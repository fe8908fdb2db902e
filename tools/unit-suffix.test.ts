import { expect, it } from "vitest";
import { saysUnit, unitlessNames } from "./unit-suffix.ts";

it.each([
  "air_C",
  "saturationVapourPressure_kPa",
  "dli_mol_m2_d",
  "ppfd_umol_m2_s",
  "slope_kPa_per_C",
  "rate_per_d",
  "leaves_n",
  "price_minor",
  "variance_g2",
  "AVAILABLE_frac",
  "CAPACITY_SD_frac",
])("%s says its unit", (name) => {
  expect(saysUnit(name)).toBe(true);
});

it.each([
  "air",
  "airC",
  "air_",
  "air_F",
  "air_pct",
  "air_degC",
  "air_C_",
  "slope_kPa_per",
  "pot_size_cm",
  "x_per_d_per_m",
  "_C",
  "CAPACITY_SD",
  "mass_g9",
])("%s does not", (name) => {
  expect(saysUnit(name)).toBe(false);
});

it("reads the closed list from the tables under its heading only", () => {
  const page = [
    "# Quantities",
    "| `air_C` | warmth |",
    "## Unitless names",
    "| name | meaning |",
    "|---|---|",
    "| `lai`, `albedo` | leaf over ground; see `other` |",
    "### of chance",
    "| `mean` | middle |",
    "## Units",
    "| `solar` | sun |",
  ].join("\n");
  const { allows, size } = unitlessNames(page);
  expect(size).toBe(3);
  expect(["lai", "albedo", "mean"].every((name) => allows(name, "/science/src/air/a.ts"))).toBe(true);
  expect(["air_C", "other", "solar"].some((name) => allows(name, "/science/src/air/a.ts"))).toBe(false);
});

it("keeps names listed for a folder to that folder", () => {
  const { allows } = unitlessNames(
    ["## Unitless in `chance/`", "| `mean` | |", "## Unitless", "| `lai` | |"].join("\n"),
  );
  expect(allows("mean", "/science/src/chance/normal.ts")).toBe(true);
  expect(allows("mean", "/science/src/air/mean.ts")).toBe(false);
  expect(allows("lai", "/science/src/air/mean.ts")).toBe(true);
});

export * from "../units.ts";
export { decimalDegrees_deg, radians_rad } from "./angle.ts";
export { canonicalUnit, findUnit, fromCanonical, toCanonical } from "./convert.ts";
export { sources as unitSources } from "./sources.ts";
export { canonicalSymbol, type QuantityKind, type UnitRow, unitTable } from "./unit-table.ts";

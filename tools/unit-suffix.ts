/** The units that a name may end in (one unit per quantity; others live only where units are converted). */
const units = new Set(
  "C K Cd Ch N Pa kPa W kW kWh J kJ MJ g mg ug kg L mL m cm mm um nm rad deg frac s ms min h d sqrtd n mol mmol umol S mS uS lx lux klx lm px minor".split(
    " ",
  ),
);

const isUnit = (token: string) => units.has(token.replace(/[1-4]$/, "")) && token !== "per";

/**
 * Whether a name says its unit: the quantity in camelCase, then `_` and the unit, parts of it parted by `_` or `_per_`
 * (`dli_mol_m2_d`, `slope_kPa_per_C`, `rate_per_d`). A constant in capitals may have more words before its unit.
 */
export function saysUnit(name: string): boolean {
  const [quantity = "", ...tokens] = name.split("_");
  if (quantity === "" || tokens.length === 0) return false;
  if (/^[A-Z][A-Z0-9]*$/.test(quantity))
    while (/^[A-Z0-9]{2,}$/.test(tokens[0] ?? "") && tokens.length > 1) tokens.shift();
  const per = tokens.indexOf("per");
  if ((per >= 0 && per === tokens.length - 1) || per !== tokens.lastIndexOf("per")) return false;
  return tokens.every((token) => token === "per" || isUnit(token));
}

/** Says whether a name may go without a unit in a file. */
export type Unitless = (name: string, file: string) => boolean;

/**
 * The closed list of numeric names without a unit: the first column of the tables under a heading with "unitless".
 * A heading that goes on with a folder ("Unitless in `chance/`") allows its names in files of that folder only.
 */
export function unitlessNames(quantities: string): { readonly size: number; readonly allows: Unitless } {
  const foldersByName = new Map<string, string[]>();
  let depth = 0;
  let folder = "";
  for (const line of quantities.split("\n")) {
    const [, marks = "", words = ""] = /^(#+)\s+(.*)$/.exec(line) ?? [];
    if (/unitless/i.test(words)) {
      depth = marks.length;
      folder = /`([^`]*\/)`/.exec(words)?.[1] ?? "";
    } else if (marks !== "" && marks.length <= depth) depth = 0;
    const cell = depth > 0 ? /^\|([^|]*)\|/.exec(line)?.[1] : undefined;
    for (const [, name = ""] of cell?.matchAll(/`([^`]+)`/g) ?? []) {
      foldersByName.set(name, [...(foldersByName.get(name) ?? []), folder]);
    }
  }
  const allows: Unitless = (name, file) =>
    (foldersByName.get(name) ?? []).some((each) => each === "" || file.includes(`/${each}`));
  return { size: foldersByName.size, allows };
}

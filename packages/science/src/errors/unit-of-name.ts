const symbols: Readonly<Record<string, string>> = {
  C: "°C",
  F: "°F",
  Cd: "°C d",
  umol: "µmol",
  deg: "°",
  sqrtd: "d^½",
  frac: "",
  n: "",
};

/** A power written after a unit (`m2`, `g2`, `kPa`): the letters, then the digits. */
const powerOf = /^([A-Za-zµ°]+)([0-9])$/;

const superscripts: Readonly<Record<string, string>> = { "1": "", "2": "²", "3": "³", "4": "⁴" };

function above(token: string): string {
  const power = powerOf.exec(token);
  if (!power) return symbols[token] ?? token;
  const [, letters = "", digit = ""] = power;
  return `${symbols[letters] ?? letters}${superscripts[digit] ?? digit}`;
}

function below(token: string): string {
  if (token === "sqrtd") return "d⁻½";
  const power = powerOf.exec(token);
  const letters = power?.[1] ?? token;
  const digit = power?.[2] ?? "1";
  return `${symbols[letters] ?? letters}⁻${digit === "1" ? "¹" : (superscripts[digit] ?? digit)}`;
}

/**
 * The unit that a name carries in its suffix: the first token stands above the line, the others below.
 *
 * @param name a name of STYLE section 3, such as `solar_MJ_m2_d` or `slope_kPa_per_C`
 * @returns the unit as people write it; empty for shares, counts and unitless names
 * @source our assumption
 * @example unitOfName("solar_MJ_m2_d") // "MJ m⁻² d⁻¹"
 * @example unitOfName("slope_kPa_per_C") // "kPa °C⁻¹"
 */
export function unitOfName(name: string): string {
  const tokens = name.split("_").slice(1);
  const per = tokens.indexOf("per");
  const top = per >= 0 ? tokens.slice(0, per) : tokens.slice(0, 1);
  const bottom = per >= 0 ? tokens.slice(per + 1) : tokens.slice(1);
  return [...top.map(above), ...bottom.map(below)].filter((part) => part !== "").join(" ");
}
